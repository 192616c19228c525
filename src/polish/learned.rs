//! What test spots teach about one paint, all together: removal rates, depths of defects, and where results don't fit each other.
//!
//! Rates follow [`calibrate`]. Depths follow [`depth_from_test`]: where a test cleared a share of a kind down to the depth it
//! reached, the greatest depth of that kind on this vehicle follows; where all went, it is no more than was cleared. With several
//! such tests the greatest depth counts, which is the careful side. Marks that somebody gave a depth of their own keep it.

use super::calibrate::{Factor, calibrate, depth_from_test};
use super::defect::DefectKind;
use super::starting::called;
use super::step::PolishStep;
use super::test_spot::{FinishSeen, TestResult, TestSpots};
use crate::measure::thickness;
use crate::say;
use crate::units::Micrometres;

/// Two shares that differ by more than this, the wrong way round, contradict each other (our estimate of how well people judge).
pub const SHARES_APART: f64 = 0.2;

/// What is known of one paint after its tests.
#[derive(Debug, Clone, PartialEq)]
pub struct Learned {
    /// The steps as this paint takes them, in the order of the shop's list.
    pub steps: Vec<PolishStep>,
    /// For each step the factor on what the shop's figure and the hardness of the paint lead one to expect.
    pub factors: Vec<Factor>,
    /// Greatest depths that tests showed, one entry a kind.
    pub depths: Vec<(DefectKind, Micrometres)>,
    /// What to know, as sentences; contradictory results are named here.
    pub notes: Vec<String>,
}

impl Learned {
    /// The depth of a kind on this vehicle, from its usual range and the tests; in order.
    pub fn depth(&self, kind: DefectKind, usual: (Micrometres, Micrometres)) -> (Micrometres, Micrometres) {
        match self.depths.iter().find(|(k, _)| *k == kind) {
            Some((_, greatest)) => (usual.0.min(*greatest), *greatest),
            None => usual,
        }
    }
}

/// Takes in all test spots. Without any the steps are those of the shop, at the hardness of the paint.
pub fn learn(shop: &[PolishStep], tests: &TestSpots) -> Learned {
    let expected = tests.paint.expected(shop);
    let spots: Vec<_> = tests.results.iter().filter_map(|r| r.for_statistics(shop)).collect();
    let before = calibrate(&expected, &[]);
    if spots.is_empty() {
        return Learned { steps: expected, factors: before.factors, depths: Vec::new(), notes: Vec::new() };
    }
    let after = calibrate(&expected, &spots);
    let looks = looks(&tests.results, &after.steps);
    let mut notes = after.notes;
    notes.extend(sights_apart(&looks));
    notes.extend(finishes_apart(&tests.results, shop));
    Learned { depths: depths(&looks), steps: after.steps, factors: after.factors, notes }
}

/// A test where somebody looked at what went, with the depth it cleared.
struct Look<'a> {
    result: &'a TestResult,
    kind: DefectKind,
    share: f64,
    cleared: f64,
}

/// Every look at a kind that polishing helps; where the removal was not told, the step's mean on this paint stands for it.
fn looks<'a>(results: &'a [TestResult], steps: &[PolishStep]) -> Vec<Look<'a>> {
    let look = |result: &'a TestResult| {
        let (step, seen) = (&steps[result.index_in(steps)?], result.seen?);
        let removal = result.removal.map_or_else(|| step.removal(result.passes), |r| r.um.um());
        let cleared = removal.min(step.clears_up_to_um.um());
        seen.kind.treatment().by_removal().then_some(Look { result, kind: seen.kind, share: seen.share, cleared })
    };
    results.iter().filter_map(look).collect()
}

fn depths(looks: &[Look<'_>]) -> Vec<(DefectKind, Micrometres)> {
    let mut kinds: Vec<DefectKind> = looks.iter().map(|l| l.kind).collect();
    kinds.sort_unstable();
    kinds.dedup();
    let depth = |kind: DefectKind| {
        let usual = kind.depth_range();
        let mine = || looks.iter().filter(move |l| l.kind == kind);
        let part = mine().filter(|l| l.share < 1.0);
        let part = part.filter_map(|l| depth_from_test(usual.low.um(), l.cleared, l.share)).reduce(f64::max);
        let all = mine().filter(|l| l.share >= 1.0).map(|l| l.cleared.min(usual.high.um())).reduce(f64::min);
        part.or(all).map(|um| (kind, thickness(um)))
    };
    kinds.into_iter().filter_map(depth).collect()
}

/// Where less removal took out more.
fn sights_apart(looks: &[Look<'_>]) -> Vec<String> {
    let mut notes = Vec::new();
    for less in looks {
        for more in looks.iter().filter(|m| m.kind == less.kind && m.cleared > less.cleared) {
            if less.share > more.share + SHARES_APART {
                let (less_deep, deeper) = (called(&less.result.step), called(&more.result.step));
                notes.push(say!(
                    "polish-note-sights-apart",
                    gentler = less_deep,
                    defect = less.kind.name(),
                    deeper = deeper
                ));
            }
        }
    }
    notes
}

/// Where a finish was judged in two ways, or a gentler step was found too coarse and a harder one not.
fn finishes_apart(results: &[TestResult], steps: &[PolishStep]) -> Vec<String> {
    let judged = |finish: FinishSeen| {
        results.iter().filter(move |r| r.finish == finish).filter_map(|r| r.index_in(steps)).map(|at| &steps[at])
    };
    let mut notes = Vec::new();
    for stays in judged(FinishSeen::CanStay) {
        for coarse in judged(FinishSeen::NeedsFiner).filter(|c| c.kind >= stays.kind) {
            notes.push(if coarse.name == stays.name {
                say!("polish-note-finish-twice", step = stays.called())
            } else if coarse.kind > stays.kind {
                say!("polish-note-finishes-apart", stays = stays.called(), coarse = coarse.called())
            } else {
                continue;
            });
        }
    }
    notes.dedup();
    notes
}
