//! What people write down of a test spot, and which step to try next.

use super::calibrate::{PaintHardness, TestSpot, test_order};
use super::defect::DefectKind;
use super::step::PolishStep;
use crate::units::Micrometres;
use crate::units::fields;
use serde::{Deserialize, Serialize};

/// What is known of the paint of one vehicle beyond its thickness: how hard it is, and what test spots showed.
#[derive(Debug, Clone, PartialEq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct TestSpots {
    /// How hard the paint is known to be before any test.
    pub paint: PaintHardness,
    /// What was tried, in the order it was tried.
    pub results: Vec<TestResult>,
}

/// One step tried on one place.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TestResult {
    /// Name of the step in the shop's list.
    pub step: String,
    /// Passes, 1 to 50.
    #[serde(deserialize_with = "fields::passes")]
    pub passes: u32,
    /// What it took off; none where nobody could tell.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub removal: Option<TestRemoval>,
    /// What became of the defects there; none where nobody looked.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seen: Option<Seen>,
    /// The finish it left.
    #[serde(default)]
    pub finish: FinishSeen,
}

/// What a test spot took off.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct TestRemoval {
    /// Mean removal.
    pub um: Micrometres,
    /// Give or take: two standard uncertainties.
    pub give_or_take_um: Micrometres,
    /// Where the figure comes from.
    #[serde(default)]
    pub basis: RemovalBasis,
}

impl TestRemoval {
    /// Least uncertainty that is believed, in µm: two standard uncertainties of a hundredth (our estimate; nobody measures finer).
    pub const LEAST_GIVE_OR_TAKE: f64 = 0.02;

    /// Mean and standard uncertainty, in µm.
    pub fn mean_and_uncertainty(&self) -> (f64, f64) {
        (self.um.um(), self.give_or_take_um.um().max(Self::LEAST_GIVE_OR_TAKE) / 2.0)
    }
}

/// Where a removal comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum RemovalBasis {
    /// Read before and after with the gauge.
    #[default]
    Measured,
    /// Judged by somebody.
    Estimated,
}

/// What became of the defects at a test spot.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Seen {
    /// The kind that was looked at.
    pub kind: DefectKind,
    /// Share of it that is gone, 0 to 1.
    #[serde(deserialize_with = "fields::share")]
    pub share: f64,
}

/// The finish that a test left.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum FinishSeen {
    /// Nobody judged it.
    #[default]
    NotJudged,
    /// It can stay like this.
    CanStay,
    /// A finer step must follow.
    NeedsFiner,
}

impl TestResult {
    /// A step to be tried, with nothing written down yet.
    pub fn of(step: &PolishStep) -> Self {
        Self {
            step: step.name.clone(),
            passes: (*step.passes().start()).min(50),
            removal: None,
            seen: None,
            finish: FinishSeen::NotJudged,
        }
    }

    /// Its step in a list, by name; the first where several have it.
    pub fn index_in(&self, steps: &[PolishStep]) -> Option<usize> {
        steps.iter().position(|s| s.name == self.step)
    }

    /// As the statistics take it; none where the step is not in the list any more.
    pub fn for_statistics(&self, steps: &[PolishStep]) -> Option<TestSpot> {
        Some(TestSpot {
            step: self.index_in(steps)?,
            passes: self.passes,
            removal: self.removal.map(|r| r.mean_and_uncertainty()),
            finish_right: self.finish != FinishSeen::NeedsFiner,
        })
    }
}

/// What to do next at the test spot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NextTest {
    /// Try this step, by its place in the list.
    Try(usize),
    /// This step, by its place, reaches what is wanted: no harder one is needed.
    Enough(usize),
    /// Every step was tried, and none reaches what is wanted.
    NothingHarder,
}

impl TestSpots {
    /// What to try next when a share of the defects shall go: the least aggressive step that was not tried, until one is enough.
    ///
    /// A step is enough when as much of what was looked at went as is wanted and the finish can stay, or needs nothing but a
    /// finer step after it. Steps without a result that says what was seen count as not tried.
    pub fn next(&self, steps: &[PolishStep], wanted: f64) -> NextTest {
        for at in test_order(steps) {
            let mut seen =
                self.results.iter().filter(|r| r.index_in(steps) == Some(at)).filter_map(|r| r.seen).peekable();
            if seen.peek().is_none() {
                return NextTest::Try(at);
            }
            if seen.any(|s| s.share + 1e-9 >= wanted) {
                return NextTest::Enough(at);
            }
        }
        NextTest::NothingHarder
    }
}
