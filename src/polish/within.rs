//! Sequences of a level at most, where somebody holds a panel lower than the plan would.

use super::plan::Level;
use super::search::{FINEST_UM, Found, Search, sequences};
use super::step::{PolishStep, StepKind};

/// As [`sequences`], but none harder than a level.
///
/// Exact for every level: a level is either all that some kinds of steps make, or, for one step, what finishing makes and every
/// polishing step alone. (Leaving harder sequences out of an answer for all steps would not do, since a harder one may have
/// displaced a gentler one on the way.)
pub(super) fn sequences_within(
    level: Option<Level>,
    steps: &[PolishStep],
    allowed: f64,
    area_m2: f64,
    useful: f64,
) -> Search {
    let of = |kinds: &dyn Fn(StepKind) -> bool| {
        let chosen: Vec<usize> = (0..steps.len()).filter(|&at| kinds(steps[at].kind)).collect();
        sequences_of(&chosen, steps, allowed, area_m2, useful)
    };
    match level {
        None | Some(Level::SandAndPolish) => sequences(steps, allowed, area_m2, useful),
        Some(Level::TwoStep) => of(&|kind| kind != StepKind::Sand),
        Some(Level::Gloss) => of(&|kind| kind == StepKind::Finish),
        Some(Level::Leave) => nothing(),
        Some(Level::OneStep) => {
            let mut all = of(&|kind| kind == StepKind::Finish);
            for at in (0..steps.len()).filter(|&at| steps[at].kind == StepKind::Polish) {
                let alone = sequences_of(&[at], steps, allowed, area_m2, useful);
                all.found.extend(alone.found);
                all.labels += alone.labels;
                all.unit = all.unit.max(alone.unit);
            }
            all.found.sort_by_key(|found| found.seconds);
            all
        }
    }
}

fn nothing() -> Search {
    Search { found: Vec::new(), labels: 0, unit: FINEST_UM }
}

/// The sequences of some of the steps, named by their places in the whole list.
fn sequences_of(chosen: &[usize], steps: &[PolishStep], allowed: f64, area_m2: f64, useful: f64) -> Search {
    let some: Vec<PolishStep> = chosen.iter().map(|&at| steps[at].clone()).collect();
    let search = sequences(&some, allowed, area_m2, useful);
    let renamed = |found: Found| {
        let passes = found.passes.into_iter().map(|(at, passes)| (chosen[at], passes)).collect();
        Found { passes, ..found }
    };
    Search { found: search.found.into_iter().map(renamed).collect(), ..search }
}
