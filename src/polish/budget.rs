//! What may go from a panel: the smallest of several named limits, or a plain refusal.

use super::clear::{ClearBasis, ClearEstimate, assume};
use super::facts::{Finish, PaintHistory, PanelFacts, Sensor};
use super::policy::RemovalPolicy;
use crate::measure::{FilmBand, FilmSummary, thickness};
use crate::say;
use crate::units::Micrometres;
use crate::words::decimal;

/// Less than this is not worth a machine; the budget then counts as none.
pub const LEAST_USEFUL_UM: Micrometres = Micrometres::of(0.1);

/// One limit on the removal of a panel.
#[derive(Debug, Clone, PartialEq)]
pub struct Limit {
    /// What it protects, in plain words.
    pub what: String,
    /// What it leaves for this visit.
    pub um: Micrometres,
    /// Where the number comes from.
    pub source: &'static str,
}

/// What may go from a panel in this visit, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    /// Most that may go, with every uncertainty of the work included; the smallest limit, or zero.
    pub allowed: Micrometres,
    /// Every limit that applies, smallest first; empty only when refused before any could be worked out.
    pub limits: Vec<Limit>,
    /// The clear it rests on; `None` when nothing was read.
    pub clear: Option<ClearEstimate>,
    /// What may go at the thinnest edge, where one was read on its own.
    pub edge: Option<Micrometres>,
    /// Why nothing at all is polished here, as a sentence; then `allowed` is zero.
    pub refused: Option<String>,
    /// What to mind on this panel, as sentences.
    pub cautions: Vec<String>,
}

impl Budget {
    /// The limit that decides.
    pub fn deciding(&self) -> Option<&Limit> {
        self.limits.first()
    }

    fn refusal(reason: String, clear: Option<ClearEstimate>) -> Self {
        Self {
            allowed: Micrometres::ZERO,
            limits: Vec::new(),
            clear,
            edge: None,
            refused: Some(reason),
            cautions: Vec::new(),
        }
    }
}

/// Works out what may go from a panel.
///
/// Uses lower bounds, never means. Without a reading nothing is allowed. `allowed` is never above any limit and never below zero.
pub fn budget(facts: &PanelFacts<'_>, policy: &RemovalPolicy) -> Budget {
    let clear = facts.measured_clear.or_else(|| facts.film.map(|film| assume(film, policy)));
    if let Some(reason) = facts.finish.refusal() {
        return Budget::refusal(say!("polish-refused", reason = reason), None);
    }
    let (Some(film), Some(clear)) = (facts.film, clear) else {
        let reason = facts.unreadable_reason.as_deref().unwrap_or_else(|| say!("polish-unread"));
        return Budget::refusal(say!("polish-refused-unread", reason = reason), None);
    };
    if film.max > policy.bands.filler_above_um.um() {
        let thickest = format!("{:.0}", thickness(film.max));
        return Budget::refusal(say!("polish-refused-filler", thickest = thickest), Some(clear));
    }
    let limits = all_limits(facts, film, clear, policy);
    let smallest = limits.first().map_or(Micrometres::ZERO, |l| l.um);
    let (allowed, refused) = if smallest < LEAST_USEFUL_UM {
        let rule = limits.first().map_or_else(|| say!("polish-no-limit"), |l| l.what.as_str());
        (Micrometres::ZERO, Some(say!("polish-refused-rule", rule = rule)))
    } else {
        (smallest, None)
    };
    let edge = facts.edge.map(|edge| {
        let clear = facts.measured_clear.unwrap_or_else(|| assume(edge, policy));
        all_limits(facts, edge, clear, policy).first().map_or(Micrometres::ZERO, |l| l.um)
    });
    let mut cautions = cautions(facts);
    if let Some(edge) = edge.filter(|edge| *edge < allowed) {
        cautions.push(match edge {
            e if e < LEAST_USEFUL_UM => say!("polish-mind-edge-nothing").to_owned(),
            e => say!("polish-mind-edge", most = format!("{e:.1}")),
        });
    }
    Budget { allowed, limits, clear: Some(clear), edge, refused, cautions }
}

/// What may go at one place of the panel, from the readings there alone (see [`crate::measure::summarise_place`]).
pub fn budget_at(facts: &PanelFacts<'_>, place: &FilmSummary, policy: &RemovalPolicy) -> Budget {
    budget(&PanelFacts { film: Some(place), edge: None, ..facts.clone() }, policy)
}

/// Every limit that applies, smallest first.
fn all_limits(facts: &PanelFacts<'_>, film: &FilmSummary, clear: ClearEstimate, policy: &RemovalPolicy) -> Vec<Limit> {
    let mut limits = lifetime_limits(facts, clear, policy);
    limits.extend(film_limits(film, policy));
    limits.extend(place_limits(facts, policy));
    limits.sort_by_key(|limit| limit.um);
    limits
}

/// Limits from the clear and from what earlier visits took.
fn lifetime_limits(facts: &PanelFacts<'_>, clear: ClearEstimate, policy: &RemovalPolicy) -> Vec<Limit> {
    let (told, spent) = match facts.history {
        PaintHistory::PolishedBefore { removed_um } => (removed_um.um(), 0.0),
        PaintHistory::Unknown => (0.0, policy.unknown_history_spent),
        PaintHistory::Original | PaintHistory::Refinished | PaintHistory::FreshRefinish { .. } => (0.0, 0.0),
    };
    let removed = told + facts.removed_um.um();
    let left = |whole: f64| thickness(whole * (1.0 - spent) - removed);
    // The reading was taken after the earlier removal, so the clear was thicker once.
    let once = clear.lower.um() + removed;
    let coat = if facts.finish == Finish::SingleStage { "topcoat" } else { "clear" };
    let none = || "none".to_owned();
    let unknown = if spent > 0.0 { decimal(spent * 100.0, 0) } else { none() };
    let before = if removed > 0.0 { format!("{:.1}", thickness(removed)) } else { none() };
    let shop = say!("polish-source-shop");
    let history = if spent > 0.0 || removed > 0.0 { say!("polish-source-history") } else { shop };
    let from_clear = match clear.basis {
        ClearBasis::Measured => say!("polish-source-clear"),
        ClearBasis::Assumed => say!("polish-source-film"),
    };
    let share = decimal(policy.lifetime_share_of_clear * 100.0, 0);
    let lifetime = format!("{:.1}", policy.lifetime_um);
    vec![
        Limit {
            what: say!("polish-limit-keep", least = format!("{:.0}", policy.keep_clear_um), coat = coat),
            um: clear.lower.saturating_sub(policy.keep_clear_um),
            source: from_clear,
        },
        Limit {
            what: say!("polish-limit-share", share = share, coat = coat, unknown = &unknown, before = &before),
            um: left(policy.lifetime_share_of_clear * once),
            source: from_clear,
        },
        Limit {
            what: say!("polish-limit-life", most = lifetime, unknown = unknown, before = before),
            um: left(policy.lifetime_um.um()),
            source: history,
        },
        Limit { what: say!("polish-limit-visit").to_owned(), um: policy.visit_cap_um, source: shop },
    ]
}

/// Limits from the band of the film: thin by its lower bound, thick by its thickest spot.
fn film_limits(film: &FilmSummary, policy: &RemovalPolicy) -> Vec<Limit> {
    let mut limits = Vec::new();
    let lower = film.lower.um();
    let mut limit = |what: String, um| limits.push(Limit { what, um, source: say!("polish-source-bands") });
    let whole = |um: Micrometres| format!("{um:.0}");
    match policy.bands.band(lower) {
        FilmBand::NoCut => {
            limit(say!("polish-limit-no-cut", under = whole(policy.bands.no_cut_below_um)), Micrometres::ZERO);
        }
        FilmBand::FinestOnly => {
            let under = whole(policy.bands.finest_only_below_um);
            limit(say!("polish-limit-finest-only", under = under), policy.very_thin_um);
        }
        FilmBand::Thin => {
            limit(say!("polish-limit-thin", under = whole(policy.bands.thin_below_um)), policy.thin_um);
        }
        _ => {}
    }
    if policy.bands.band(film.max) >= FilmBand::Refinished {
        let over = whole(policy.bands.refinished_above_um);
        limit(say!("polish-limit-refinished", over = over), policy.refinished_um);
    }
    limits
}

/// Limits from the history of refinishing, from edges and from sensors.
fn place_limits(facts: &PanelFacts<'_>, policy: &RemovalPolicy) -> Vec<Limit> {
    let mut limits = Vec::new();
    let history = say!("polish-source-history");
    let shop = say!("polish-source-shop");
    match facts.history {
        PaintHistory::FreshRefinish { days } if days < policy.fresh_days => {
            limits.push(Limit { what: say!("polish-limit-fresh", days = days), um: policy.fresh_um, source: history });
        }
        PaintHistory::Refinished | PaintHistory::FreshRefinish { .. } => {
            let what = say!("polish-limit-painted-again").to_owned();
            limits.push(Limit { what, um: policy.refinished_um, source: history });
        }
        PaintHistory::Unknown | PaintHistory::Original | PaintHistory::PolishedBefore { .. } => {}
    }
    if facts.narrow {
        let what = say!("polish-limit-narrow").to_owned();
        limits.push(Limit { what, um: policy.narrow_um, source: shop });
    }
    if facts.sensor.is_some() {
        let what = say!("polish-limit-sensor").to_owned();
        limits.push(Limit { what, um: policy.sensor_um, source: shop });
    }
    limits
}

fn cautions(facts: &PanelFacts<'_>) -> Vec<String> {
    let mut cautions: Vec<String> =
        facts.finish.caution().map(|c| say!("polish-mind", caution = c)).into_iter().collect();
    cautions.extend(facts.sensor.map(|sensor| {
        let caution = match sensor {
            Sensor::Radar => say!("polish-mind-radar"),
            Sensor::Ultrasonic => say!("polish-mind-parking-sensors"),
            Sensor::Camera => say!("polish-mind-camera"),
        };
        caution.to_owned()
    }));
    if let PaintHistory::FreshRefinish { days } = facts.history {
        cautions.push(say!("polish-mind-fresh", days = days));
    }
    cautions
}
