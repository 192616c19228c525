//! The bay in the window: the days that run, and what of them is on screen.

mod carry_out;
mod wish;

pub(super) use wish::{Asking, BayView, BayWish, Trade};

use super::action::Model;
use crate::bay::Event;
use crate::crew::PlanRow;
use crate::file::{day_path, polishing_day_path};
use crate::insight::{Insight, LapStand, PolishWork, lap_stands};
use crate::job::Job;
use crate::scene::{BayFacts, BayScene, LapScene, MapScene, bay_map, bay_scene, lap_map, lap_scene};
use crate::units::Seconds;
use crate::vehicle::{Naming, Template};
use crate::work::{Clock, DayRun, Place, Setup, Windows};
use std::path::Path;
use std::sync::Arc;
use std::task::Waker;
use std::time::Duration;

/// How often a day that runs is drawn anew, so that its clocks run.
const DRAWN_EVERY: Duration = Duration::from_millis(500);

/// The days of a job.
#[derive(Debug)]
pub(super) struct BayState {
    pub(super) clock: Arc<dyn Clock>,
    pub(super) coating: DayRun,
    pub(super) polishing: DayRun,
    /// Places of the last lap; none before somebody walks it.
    stands: Option<Vec<LapStand>>,
    /// What is on screen of the day that is shown.
    pub(super) scene: Option<BayScene>,
    pub(super) lap: Option<LapScene>,
    map: Option<Arc<MapScene>>,
}

/// What the job gives to the bay.
#[derive(Clone, Copy)]
pub(super) struct Given<'a> {
    pub(super) job: &'a Arc<Job>,
    pub(super) insight: &'a Insight,
    pub(super) polishing: &'a PolishWork,
    pub(super) coating: &'a Arc<crate::crew::ProblemSpec>,
}

impl Given<'_> {
    fn setup(&self, trade: Trade) -> Setup {
        match trade {
            Trade::Coating => {
                let Job { air, patch, product, .. } = &**self.job;
                let windows =
                    Windows { window: self.insight.air.window, air: *air, product: product.clone(), patch: *patch };
                Setup { problem: Arc::clone(self.coating), windows: Some(windows) }
            }
            Trade::Polishing => Setup { problem: Arc::clone(&self.polishing.problem), windows: None },
        }
    }
}

impl BayState {
    /// The days as their logs leave them.
    pub(super) fn open(clock: Arc<dyn Clock>, path: Option<&Path>, given: Given<'_>) -> Self {
        let open = |trade: Trade| {
            let place = path.map_or(Place::Nowhere, |p| Place::File(trade.path(p)));
            DayRun::open(Arc::clone(&clock), given.setup(trade), place)
        };
        let (coating, polishing) = (open(Trade::Coating), open(Trade::Polishing));
        Self { clock, coating, polishing, stands: None, scene: None, lap: None, map: None }
    }

    /// Follows a change of the job.
    pub(super) fn follow(&mut self, given: Given<'_>) {
        self.coating.follow(given.setup(Trade::Coating));
        self.polishing.follow(given.setup(Trade::Polishing));
        self.stands = None;
    }

    /// The job has another file now.
    pub(super) fn move_to(&mut self, path: &Path) {
        self.coating.move_to(Trade::Coating.path(path));
        self.polishing.move_to(Trade::Polishing.path(path));
    }

    pub(super) fn run(&self, trade: Trade) -> &DayRun {
        match trade {
            Trade::Coating => &self.coating,
            Trade::Polishing => &self.polishing,
        }
    }

    pub(super) fn run_mut(&mut self, trade: Trade) -> &mut DayRun {
        match trade {
            Trade::Coating => &mut self.coating,
            Trade::Polishing => &mut self.polishing,
        }
    }

    /// Whether a day has begun and is not over.
    pub(super) fn is_running(&self) -> bool {
        self.running().is_some()
    }

    /// The day that has begun and is not over.
    pub(super) fn running(&self) -> Option<Trade> {
        Trade::ALL.into_iter().find(|t| self.run(*t).is_begun() && !self.run(*t).is_over())
    }

    /// Takes in what the threads bring, and lets the clock do its part. Answers when to look again.
    pub(super) fn step(&mut self, planned: [&[PlanRow]; 2], is_open: bool, waker: &Waker) -> Option<Duration> {
        for (run, planned) in [&mut self.coating, &mut self.polishing].into_iter().zip(planned) {
            run.plan_ahead(planned);
            run.listen(waker);
            run.tick(waker);
        }
        let shown = is_open && [&self.coating, &self.polishing].iter().any(|d| d.is_begun());
        (shown || self.is_running()).then_some(DRAWN_EVERY)
    }

    /// Works out what is on screen.
    pub(super) fn bring_up(&mut self, job: &Job, template: &Template, insight: &Insight, view: (&BayView, Naming)) {
        let run = self.run(view.0.trade);
        let on_lap = run.is_begun() && view.0.trade == Trade::Coating && (run.is_over() || view.0.lap);
        if on_lap && self.stands.is_none() {
            self.stands = Some(lap_stands(job, template));
        }
        let stands = self.stands.as_deref().unwrap_or_default();
        let run = self.run(view.0.trade);
        let board = run.board();
        let facts = BayFacts {
            template,
            naming: view.1,
            problem: run.problem(),
            day: run.day(),
            board: &board,
            late: run.late(),
            now_s: run.now_s(),
        };
        let scene = run.is_begun().then(|| bay_scene(&facts));
        let lap = on_lap.then(|| lap_scene(&facts, stands, saved_for_s(run), lap_from(run, template, stands)));
        let map = run.is_begun().then(|| match &lap {
            Some(lap) => lap_map(job, insight, &facts, lap, stands),
            None => bay_map(job, insight, &facts),
        });
        self.map = match (map, self.map.take()) {
            (Some(new), Some(old)) if *old == new => Some(old),
            (new, _) => new.map(Arc::new),
        };
        (self.scene, self.lap) = (scene, lap);
    }

    /// The map of the day that is shown, the same one as long as nothing changes; none before it begins.
    pub(super) fn map(&self) -> Option<&Arc<MapScene>> {
        self.map.as_ref()
    }
}

impl Trade {
    fn path(self, job: &Path) -> std::path::PathBuf {
        match self {
            Self::Coating => day_path(job),
            Self::Polishing => polishing_day_path(job),
        }
    }
}

impl<'a> Model<'a> {
    /// The day that is shown.
    pub(super) fn day_run(&self) -> &'a DayRun {
        self.bay.run(self.view.bay.trade)
    }
}

/// How long a high spot can be saved: shorter when the window is, never longer than the product says.
fn saved_for_s(run: &DayRun) -> Seconds {
    let Some(windows) = &run.setup().windows else { return 0 };
    let label = windows.product.window_max_s.max(1) as f64;
    let factor = run.window().map_or(1.0, |w| (w.max_s as f64 / label).min(1.0));
    (windows.product.high_spot_s as f64 * factor) as Seconds
}

/// Where the walk-round goes on: at the place that was looked at last, before that where the last panel was finished.
fn lap_from(run: &DayRun, template: &Template, stands: &[LapStand]) -> Option<usize> {
    let standing = run.log().standing();
    let place = standing.iter().rev().find_map(|e| match &e.event {
        Event::Looked { place }
        | Event::FoundHighSpot { place }
        | Event::SavedHighSpot { place }
        | Event::LeftForPolishing { place } => Some(place),
        _ => None,
    });
    if let Some(place) = place {
        return stands.iter().find(|s| s.spots.iter().any(|p| p.id == *place)).map(|s| s.stance);
    }
    let last = run.day().last_to_finish().and_then(|w| run.day().last_done(w))?;
    let id = &run.problem().operations[last].stance;
    template.stances.iter().position(|s| s.id == *id)
}
