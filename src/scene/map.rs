//! What the map shows under each overlay.

use super::work::Work;
use crate::geometry::MapPoint;
use crate::insight::{Insight, OrderRow, SurveyFilm};
use crate::job::{Extent, Job};
use crate::polish::{DefectKind, Level, Treatment};
use crate::say;
use crate::units::{Micrometres, Seconds, ShownUnits};
use crate::vehicle::{Surface, Template};
use crate::words::decimal;
use serde::{Deserialize, Serialize};

/// What the map shows; one thing at a time.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum Overlay {
    /// Film thickness.
    Film,
    /// What is wrong, where.
    Defects,
    /// How hard each panel will be worked.
    Polish,
    /// Who coats what, in which order.
    Order,
    /// What the panels are made of and which are left out; shown while the vehicle itself is changed.
    Body,
}

impl Overlay {
    /// Every overlay of a job, in the order of the work.
    pub const ALL: [Self; 4] = [Self::Film, Self::Defects, Self::Polish, Self::Order];

    /// As it stands on a button.
    pub fn name(self) -> &'static str {
        match self {
            Self::Film => say!("scene-overlay-film"),
            Self::Defects => say!("scene-overlay-defects"),
            Self::Polish => say!("scene-overlay-polish"),
            Self::Order => say!("scene-overlay-order"),
            Self::Body => say!("scene-overlay-body"),
        }
    }
}

/// The map under one overlay.
#[derive(Debug, Clone, PartialEq)]
pub struct MapScene {
    /// Which overlay.
    pub overlay: Overlay,
    /// One per panel of the template, in its order.
    pub panels: Vec<PanelMark>,
    /// Spots and defects, in drawing order.
    pub pins: Vec<Pin>,
    /// The way round of each worker, in time order.
    pub ways: Vec<Vec<Waypoint>>,
    /// Who is at work where.
    pub here: Vec<Here>,
    /// What the marks mean: only those that are on the map.
    pub legend: Vec<LegendRow>,
}

/// How one panel looks.
#[derive(Debug, Clone, PartialEq)]
pub struct PanelMark {
    /// Its fill.
    pub fill: Fill,
    /// The largest thing on it; empty where there is nothing to say.
    pub value: String,
    /// A second line under it, smaller; empty where there is none.
    pub below: String,
    /// A share from 0 to 1 of the budget that the plan uses at its upper bound.
    pub budget_used: Option<f32>,
    /// When who is here.
    pub badges: Vec<Badge>,
    /// One sentence for a screen reader and a tooltip.
    pub summary: String,
}

/// What a fill means.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fill {
    /// Nothing under this overlay; the surface shows what it is.
    Plain(Surface),
    /// A place on an ordered scale, 0 to 1.
    Scale(f32),
    /// A polishing level, as a shade and an ordered hatch.
    Level(Level),
    /// When its turn comes, from 0 (first of all) to 1 (last), over what its surface shows.
    Turn(Surface, f32),
    /// No reading, so nothing is known.
    Unread,
    /// Left out.
    LeftOut,
    /// Coated and not yet level.
    Wet,
    /// Nothing is left to do there.
    Done,
}

/// A number in the shape of a worker.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Badge {
    /// Index into the crew.
    pub worker: usize,
    /// What is done.
    pub work: Work,
    /// Place in this worker's order, from 1.
    pub number: usize,
}

/// Somebody at a panel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Here {
    /// Index into the crew.
    pub worker: usize,
    /// Index into the panels.
    pub panel: usize,
}

/// A stop on a worker's way.
#[derive(Debug, Clone, PartialEq)]
pub struct Waypoint {
    /// Index into the panels.
    pub panel: usize,
    /// Place in this worker's order, from 1.
    pub number: usize,
    /// Middle of the panel.
    pub at: MapPoint,
    /// When the work there begins.
    pub from: Seconds,
    /// When it ends.
    pub until: Seconds,
}

/// A symbol at a place.
#[derive(Debug, Clone, PartialEq)]
pub struct Pin {
    /// Where.
    pub at: MapPoint,
    /// The panel it is noted on.
    pub panel: usize,
    /// What it looks like.
    pub shape: PinShape,
    /// 0 (slight) to 1 (severe).
    pub severity: f32,
    /// A number beside it, where there is one.
    pub value: String,
    /// How far it reaches; a point for spots.
    pub extent: Extent,
}

/// Shape of a pin.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PinShape {
    /// A place of readings.
    Spot,
    /// A place of readings that don't count, because the gauge failed its check.
    SuspectSpot,
    /// A place that a reading is still wanted for.
    WantedSpot,
    /// A defect.
    Defect(DefectClass),
}

/// Kinds of defects that look alike on the map.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum DefectClass {
    /// Fine and spread out: polishing takes it away.
    Fine,
    /// A line or a mark with depth: polishing makes it less.
    Deep,
    /// Lies on top: cleaning takes it away.
    OnTop,
    /// Through or in the clear coat: only paint helps.
    Broken,
}

impl DefectClass {
    /// The class of a kind.
    pub fn of(kind: DefectKind) -> Self {
        match kind.treatment() {
            Treatment::Polish => Self::Fine,
            Treatment::Reduce | Treatment::LevelLocally => Self::Deep,
            Treatment::Decontaminate => Self::OnTop,
            Treatment::Refinish | Treatment::TouchUp => Self::Broken,
        }
    }

    /// As it stands in a legend.
    pub fn name(self) -> &'static str {
        match self {
            Self::Fine => say!("scene-defect-fine"),
            Self::Deep => say!("scene-defect-deep"),
            Self::OnTop => say!("scene-defect-on-top"),
            Self::Broken => say!("scene-defect-broken"),
        }
    }
}

/// One row of the legend.
#[derive(Debug, Clone, PartialEq)]
pub struct LegendRow {
    /// The mark.
    pub symbol: LegendSymbol,
    /// What it means.
    pub text: String,
}

/// The mark of a legend row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LegendSymbol {
    /// A fill.
    Fill(Fill),
    /// A whole scale from 0 to 1.
    Ramp,
    /// A pin.
    Pin(PinShape),
    /// A worker, by index, with the way round.
    Worker(usize),
    /// Shades from the first turn to the last.
    Turns,
    /// The bar of the budget.
    Budget,
}

/// Draws the map of a job under one overlay. `order` is empty while none is known.
pub fn map_scene(job: &Job, template: &Template, insight: &Insight, overlay: Overlay, order: &[OrderRow]) -> MapScene {
    let mut scene = MapScene::plain(template, insight, overlay);
    match overlay {
        Overlay::Film => super::film::show(job, template, insight, &mut scene),
        Overlay::Defects => defects(job, template, insight, &mut scene),
        Overlay::Polish => polish(job, template, insight, &mut scene),
        Overlay::Order => super::order::show(job, template, order, &mut scene),
        Overlay::Body => super::body::show(template, &mut scene),
    }
    scene
}

impl MapScene {
    /// Turns every figure over to the units that are wanted: labels and spots are of film where film or budgets are shown.
    pub fn show_in(&mut self, units: ShownUnits) {
        if let Some(film) = units.conversion(Micrometres::UNIT)
            && matches!(self.overlay, Overlay::Film | Overlay::Polish)
        {
            for pin in &mut self.pins {
                pin.value = film.figures(&pin.value);
            }
            let panels = self.panels.iter_mut().filter(|_| self.overlay == Overlay::Film);
            for panel in panels {
                panel.value = film.figures(&panel.value);
                panel.below = film.figures(&panel.below);
            }
        }
        for row in &mut self.legend {
            row.text = units.say(&row.text).into_owned();
        }
    }

    /// Nothing but the surfaces.
    pub(super) fn plain(template: &Template, insight: &Insight, overlay: Overlay) -> Self {
        Self {
            overlay,
            panels: (0..template.panels.len()).map(|i| plain(template, insight, i)).collect(),
            pins: Vec::new(),
            ways: Vec::new(),
            here: Vec::new(),
            legend: Vec::new(),
        }
    }
}

fn plain(template: &Template, insight: &Insight, index: usize) -> PanelMark {
    PanelMark {
        fill: Fill::Plain(template.panels[index].surface),
        value: String::new(),
        below: String::new(),
        budget_used: None,
        badges: Vec::new(),
        summary: summary(insight, index),
    }
}

/// What a person should hear of a panel.
fn summary(insight: &Insight, index: usize) -> String {
    let panel = &insight.panels[index];
    let film = match (&panel.film, &panel.unreadable, panel.read.as_ref().and_then(SurveyFilm::refusal)) {
        (Some(film), ..) => say!("scene-film", mean = decimal(film.mean, 0), lower = decimal(film.lower.um(), 0)),
        (None, Some(reason), _) => say!("scene-no-reading", reason = reason.as_str()),
        (None, None, Some(reason)) => say!("scene-no-reading-counts", reason = reason),
        (None, None, None) => say!("scene-unread").to_owned(),
    };
    let defects = say!("scene-defects", count = panel.defects.len());
    format!("{film}; {defects}; {}", panel.polish.level)
}

fn defects(job: &Job, template: &Template, insight: &Insight, scene: &mut MapScene) {
    for (index, panel) in template.panels.iter().enumerate() {
        let Some(record) = job.record(&panel.id) else { continue };
        for (defect, facts) in record.defects.iter().zip(&insight.panels[index].defects) {
            let severity = (facts.depth_um.1.um() / 10.0).min(1.0).max(f64::from(defect.quantity) / 5.0 * 0.6);
            scene.pins.push(Pin {
                at: defect.at,
                panel: index,
                shape: PinShape::Defect(DefectClass::of(defect.kind)),
                severity: severity as f32,
                value: String::new(),
                extent: defect.extent.clone(),
            });
        }
    }
    let mut classes: Vec<_> = scene
        .pins
        .iter()
        .filter_map(|p| if let PinShape::Defect(class) = p.shape { Some(class) } else { None })
        .collect();
    classes.sort_unstable();
    classes.dedup();
    scene.legend.extend(
        classes.into_iter().map(|class| LegendRow {
            symbol: LegendSymbol::Pin(PinShape::Defect(class)),
            text: class.name().to_owned(),
        }),
    );
}

fn polish(job: &Job, template: &Template, insight: &Insight, scene: &mut MapScene) {
    let mut levels = Vec::new();
    for (index, panel) in template.panels.iter().enumerate() {
        if panel.surface != Surface::Paint {
            continue;
        }
        let polish = &insight.panels[index].polish;
        let allowed = insight.panels[index].budget.allowed.um();
        let mark = &mut scene.panels[index];
        mark.fill = Fill::Level(polish.level);
        mark.value = polish.level.to_string();
        if polish.level != Level::Leave && allowed > 0.0 {
            mark.budget_used = Some((insight.panels[index].removal_upper().um() / allowed).min(1.0) as f32);
        }
        levels.push(polish.level);
        // What may go at each spot, where anything at all may.
        let spots = job.record(&panel.id).map(|r| r.spots.as_slice()).unwrap_or_default();
        if insight.panels[index].budget.refused.is_none() {
            let budgets = spots.iter().zip(insight.spot_budgets(index));
            scene.pins.extend(budgets.filter_map(|(spot, budget)| {
                let value = decimal(budget.as_ref()?.allowed.um(), 1);
                Some(Pin {
                    at: spot.at,
                    panel: index,
                    shape: PinShape::Spot,
                    severity: 0.0,
                    value,
                    extent: Extent::Point,
                })
            }));
        }
    }
    levels.sort_unstable();
    levels.dedup();
    scene.legend.extend(
        levels.into_iter().map(|l| LegendRow { symbol: LegendSymbol::Fill(Fill::Level(l)), text: l.to_string() }),
    );
    if scene.panels.iter().any(|mark| mark.budget_used.is_some()) {
        let text = say!("scene-budget-used").to_owned();
        scene.legend.push(LegendRow { symbol: LegendSymbol::Budget, text });
    }
}
