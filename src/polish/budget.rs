//! What may go from a panel: the smallest of several named limits, or a plain refusal.

use super::clear::{ClearBasis, ClearEstimate, assume};
use super::facts::{Finish, PaintHistory, PanelFacts, Sensor};
use super::policy::RemovalPolicy;
use crate::measure::{FilmBand, FilmSummary, thickness};
use crate::units::Micrometres;

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

const SHOP: &str = "shop policy; the default is our estimate, a convention";
const BANDS: &str = "shop policy; trade practice for total film";
const HISTORY: &str = "what is recorded of earlier work";
const FILM: &str = "lower bound of the readings; the clear is assumed from the film";
const CLEAR: &str = "lower bound of the clear as measured";

/// Works out what may go from a panel.
///
/// Uses lower bounds, never means. Without a reading nothing is allowed. `allowed` is never above any limit and never below zero.
pub fn budget(facts: &PanelFacts<'_>, policy: &RemovalPolicy) -> Budget {
    let clear = facts.measured_clear.or_else(|| facts.film.map(|film| assume(film, policy)));
    if let Some(reason) = facts.finish.refusal() {
        return Budget::refusal(format!("Not polished: {reason}."), None);
    }
    let (Some(film), Some(clear)) = (facts.film, clear) else {
        let reason = facts.unreadable_reason.as_deref().unwrap_or("nothing was read here yet");
        return Budget::refusal(
            format!("Not polished: the film is not known ({reason}), and nothing is taken off blindly."),
            None,
        );
    };
    if film.max > policy.bands.filler_above_um.um() {
        return Budget::refusal(
            format!(
                "Not polished: {:.0}\u{202f}µm at the thickest spot suggests filler, and nobody can know what holds there.",
                film.max
            ),
            Some(clear),
        );
    }
    let limits = all_limits(facts, film, clear, policy);
    let smallest = limits.first().map_or(Micrometres::ZERO, |l| l.um);
    let (allowed, refused) = if smallest < LEAST_USEFUL_UM {
        let what = limits.first().map_or("no limit is known", |l| l.what.as_str());
        (Micrometres::ZERO, Some(format!("Not polished: nothing may go, because of the rule \u{201c}{what}\u{201d}.")))
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
            e if e < LEAST_USEFUL_UM => "Mind: nothing may go at the thin edge; tape it off.".to_owned(),
            e => format!("Mind: only {e:.1} may go at the thin edge; tape it off where the steps take more."),
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
    let unknown = (spent > 0.0)
        .then(|| format!(", {:.0}\u{202f}% of it taken as used because the history is unknown", spent * 100.0));
    let before = (removed > 0.0).then(|| format!(", {:.1} of it used before", thickness(removed)));
    let spent_words: String = unknown.into_iter().chain(before).collect();
    let from_clear = if clear.basis == ClearBasis::Measured { CLEAR } else { FILM };
    vec![
        Limit {
            what: format!("keep at least {:.0} of {coat}", policy.keep_clear_um),
            um: clear.lower.saturating_sub(policy.keep_clear_um),
            source: from_clear,
        },
        Limit {
            what: format!(
                "at most {:.0}\u{202f}% of the {coat} in its life{spent_words}",
                policy.lifetime_share_of_clear * 100.0
            ),
            um: left(policy.lifetime_share_of_clear * once),
            source: from_clear,
        },
        Limit {
            what: format!("at most {:.1} in the life of the paint{spent_words}", policy.lifetime_um),
            um: left(policy.lifetime_um.um()),
            source: if spent_words.is_empty() { SHOP } else { HISTORY },
        },
        Limit { what: "cap for one visit".to_owned(), um: policy.visit_cap_um, source: SHOP },
    ]
}

/// Limits from the band of the film: thin by its lower bound, thick by its thickest spot.
fn film_limits(film: &FilmSummary, policy: &RemovalPolicy) -> Vec<Limit> {
    let mut limits = Vec::new();
    let lower = film.lower.um();
    let mut limit = |what: String, um| limits.push(Limit { what, um, source: BANDS });
    match policy.bands.band(lower) {
        FilmBand::NoCut => {
            limit(format!("film may be under {:.0}, too thin to cut", policy.bands.no_cut_below_um), Micrometres::ZERO);
        }
        FilmBand::FinestOnly => {
            limit(
                format!("film may be under {:.0}, finest polish only", policy.bands.finest_only_below_um),
                policy.very_thin_um,
            );
        }
        FilmBand::Thin => {
            limit(format!("film may be under {:.0}, nothing strong", policy.bands.thin_below_um), policy.thin_um);
        }
        _ => {}
    }
    if policy.bands.band(film.max) >= FilmBand::Refinished {
        limit(
            format!("film over {:.0}, probably painted again", policy.bands.refinished_above_um),
            policy.refinished_um,
        );
    }
    limits
}

/// Limits from the history of refinishing, from edges and from sensors.
fn place_limits(facts: &PanelFacts<'_>, policy: &RemovalPolicy) -> Vec<Limit> {
    let mut limits = Vec::new();
    match facts.history {
        PaintHistory::Refinished => limits.push(Limit {
            what: "painted again, layers not known".to_owned(),
            um: policy.refinished_um,
            source: HISTORY,
        }),
        PaintHistory::FreshRefinish { days } => limits.push(if days < policy.fresh_days {
            Limit { what: format!("painted {days} days ago, still hardening"), um: policy.fresh_um, source: HISTORY }
        } else {
            Limit { what: "painted again, layers not known".to_owned(), um: policy.refinished_um, source: HISTORY }
        }),
        PaintHistory::Unknown | PaintHistory::Original | PaintHistory::PolishedBefore { .. } => {}
    }
    if facts.narrow {
        limits.push(Limit { what: "narrow panel, mostly edges".to_owned(), um: policy.narrow_um, source: SHOP });
    }
    if facts.sensor.is_some() {
        limits.push(Limit { what: "a sensor looks through it".to_owned(), um: policy.sensor_um, source: SHOP });
    }
    limits
}

fn cautions(facts: &PanelFacts<'_>) -> Vec<String> {
    let mut cautions: Vec<String> = facts.finish.caution().map(|c| format!("Mind: {c}.")).into_iter().collect();
    cautions.extend(facts.sensor.map(|sensor| {
        let which = match sensor {
            Sensor::Radar => "the radar behind this panel is set for the thickness from the factory",
            Sensor::Ultrasonic => "parking sensors sit in this panel",
            Sensor::Camera => "a camera looks out here",
        };
        format!("Mind: {which}; the vehicle maker's guidance comes first.")
    }));
    if let PaintHistory::FreshRefinish { days } = facts.history {
        cautions.push(format!("Mind: painted {days} days ago; strong solvents may soften it."));
    }
    cautions
}
