//! "How hard to polish?": given readings and defects, choose the level. The answer is the plan's own.

use crate::crew::Random;
use crate::insight::{Insight, PanelInsight, recommended_spots};
use crate::job::{Defect, Job, PanelRecord, Reading, Spot, cant_read};
use crate::polish::{DefectKind, Level};
use crate::say;
use crate::units::{Micrometres, Millimetres};
use crate::vehicle::{Naming, Surface, Template};
use crate::words::decimal;
use std::collections::BTreeMap;
use std::sync::Arc;

/// Panels made up for one question, until one has the level that is wanted.
const TRIES: usize = 24;
/// Least and greatest thickness made up, in µm (our estimate of what a gauge shows on common vehicles).
const FILM_UM: (f64, f64) = (72.0, 165.0);

/// One question.
#[derive(Debug, Clone)]
pub struct PolishRound {
    /// A job with this one panel read.
    pub job: Arc<Job>,
    /// Its vehicle.
    pub template: Arc<Template>,
    /// The panel, by index.
    pub panel: usize,
    /// What follows for the whole job.
    pub whole: Insight,
}

/// What an answer is worth.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PolishAnswer {
    /// As the plan has it.
    Right,
    /// One level gentler: safe, but less than could be had. Worth half.
    TooGentle,
    /// Two or more levels gentler.
    MuchTooGentle,
    /// Harder than planned: takes more than is needed, or more than may go.
    TooHard,
}

impl PolishAnswer {
    /// From 0 to 1.
    pub fn worth(self) -> f64 {
        match self {
            Self::Right => 1.0,
            Self::TooGentle => 0.5,
            Self::MuchTooGentle | Self::TooHard => 0.0,
        }
    }
}

impl PolishRound {
    /// What follows for the panel: film, budget, plan, reasons.
    pub fn insight(&self) -> &PanelInsight {
        &self.whole.panels[self.panel]
    }

    /// The level that the plan has.
    pub fn level(&self) -> Level {
        self.insight().polish.level
    }

    /// Judges an answer.
    pub fn judge(&self, answer: Level) -> PolishAnswer {
        match (answer as usize, self.level() as usize) {
            (a, b) if a == b => PolishAnswer::Right,
            (a, b) if a + 1 == b => PolishAnswer::TooGentle,
            (a, b) if a < b => PolishAnswer::MuchTooGentle,
            _ => PolishAnswer::TooHard,
        }
    }

    /// The shop's goal in a sentence.
    pub fn wanted(&self) -> String {
        say!("practice-wanted", share = decimal(self.job.goal.share() * 100.0, 0))
    }

    /// A hint: where to look, without the answer.
    pub fn hint(&self) -> String {
        let (budget, needed) = (&self.insight().budget, self.insight().needed());
        if budget.refused.is_some() {
            return say!("practice-look-thinnest").to_owned();
        }
        let (allowed, needed) = (format!("{:.1}", budget.allowed), format!("{needed:.1}"));
        say!("practice-compare-deepest", allowed = allowed, needed = needed)
    }

    /// What is wrong with the panel, a line for each defect.
    pub fn defects(&self) -> Vec<String> {
        let line = |d: &crate::polish::DefectFacts| {
            let (from, to) = (format!("{:.1}", d.depth_um.0), format!("{:.1}", d.depth_um.1));
            say!("practice-depth", defect = crate::units::capital(d.kind.name()), from = from, to = to)
        };
        self.insight().defects.iter().map(line).collect()
    }

    /// The panel's name.
    pub fn name(&self, naming: Naming) -> String {
        self.template.panels[self.panel].name(naming)
    }
}

/// Makes a few questions; their answers are spread over the levels as far as chance finds them.
pub fn polish_rounds(base: &Job, template: &Arc<Template>, seed: u64, count: usize) -> Vec<PolishRound> {
    let mut random = Random::new(seed, 4);
    let readable = |p: &usize| {
        let panel = &template.panels[*p];
        panel.surface == Surface::Paint && panel.skip.is_none() && cant_read(base, panel).is_none()
    };
    let panels: Vec<usize> = (0..template.panels.len()).filter(readable).collect();
    let mut rounds = Vec::new();
    while rounds.len() < count && !panels.is_empty() {
        let wanted = Level::ALL[random.below(Level::ALL.len())];
        let panel = panels[random.below(panels.len())];
        let mut made = invented(base, template, panel, &mut random);
        for _ in 0..TRIES {
            if made.level() == wanted {
                break;
            }
            made = invented(base, template, panel, &mut random);
        }
        rounds.push(made);
    }
    rounds
}

fn invented(base: &Job, template: &Arc<Template>, panel: usize, random: &mut Random) -> PolishRound {
    const KINDS: [DefectKind; 6] = [
        DefectKind::Swirl,
        DefectKind::WashMark,
        DefectKind::Haze,
        DefectKind::DeepScratch,
        DefectKind::BirdEtching,
        DefectKind::OrangePeel,
    ];
    let mean = FILM_UM.0 + (FILM_UM.1 - FILM_UM.0) * random.unit();
    let spots = recommended_spots(&template.panels[panel]).into_iter().map(|at| {
        let here = mean + 2.5 * random.normal();
        let reading = || Reading::of(Micrometres::new(here.round().clamp(20.0, 400.0)).unwrap_or(Micrometres::ZERO));
        Spot { at, edge: false, readings: vec![reading(); 3], note: String::new() }
    });
    let spots = spots.collect();
    let defects = (0..=random.below(2)).map(|_| {
        let at = template.panels[panel].label.centre;
        let spread = random.below(2) == 0;
        Defect {
            size_mm: Millimetres::of(if spread { 400.0 } else { 60.0 }),
            quantity: if spread { 2 + random.below(3) as u8 } else { 1 },
            ..Defect::new(KINDS[random.below(KINDS.len())], at)
        }
    });
    let record = PanelRecord { defects: defects.collect(), spots, ..PanelRecord::default() };
    let mut job = base.clone();
    job.vehicle = crate::job::Vehicle { template: template.id.clone(), ..Default::default() };
    job.panels = BTreeMap::from([(template.panels[panel].id.clone(), Arc::new(record))]);
    job.order = None;
    let job = Arc::new(job);
    let whole = Insight::new(&job, template);
    PolishRound { job, template: Arc::clone(template), panel, whole }
}
