//! Generated changes of surveys, gloss readings and the ledger.

use super::command::words;
use lapwright::job::{Survey, SurveyChange, SurveyStage};
use lapwright::measure::{GaugeCheck, GlossGeometry};
use lapwright::polish::{LedgerEntry, RemovalSource};
use lapwright::units::{GlossUnits, Micrometres};
use lapwright::vehicle::PanelId;
use proptest::prelude::*;

/// Checks that pass, that fail, and that nobody could have read.
fn check() -> impl Strategy<Value = GaugeCheck> {
    let certified = proptest::sample::select(vec![0.0, 49.7, 126.3, 250.0]);
    (certified, prop_oneof![3 => -2.0..2.0, 1 => 5.0..60.0]).prop_map(|(certified, off): (f64, f64)| GaugeCheck {
        certified_um: Micrometres::of(certified),
        shown_um: Micrometres::of((certified + off).max(0.0)),
    })
}

fn entry() -> impl Strategy<Value = LedgerEntry> {
    // Now and then the most is below the likely, which must be refused.
    let upper = prop_oneof![9 => 0.0..4.0, 1 => -1.0..0.0];
    (words(), 0.0..6.0, upper, proptest::sample::select(RemovalSource::ALL.to_vec())).prop_map(
        |(visit, removed, more, source): (_, f64, f64, _)| LedgerEntry {
            visit,
            removed_um: Micrometres::of(removed),
            upper_um: Micrometres::of((removed + more).max(0.0)),
            source,
        },
    )
}

/// Any change of the surveys; places past the end of a list are among them.
pub(super) fn survey_change(panel: &BoxedStrategy<PanelId>) -> impl Strategy<Value = SurveyChange> + use<> {
    use SurveyChange as C;
    let p = || panel.clone();
    let at = 0_usize..3;
    let geometry = vec![GlossGeometry::Deg20, GlossGeometry::Deg60, GlossGeometry::Deg85];
    let stage = proptest::sample::select(vec![SurveyStage::Before, SurveyStage::After]);
    prop_oneof![
        (at.clone(), words(), words()).prop_map(|(survey, date, taken_by)| C::Describe { survey, date, taken_by }),
        (words(), stage).prop_map(|(date, stage)| C::Begin(Survey { date, stage, ..Survey::default() })),
        Just(C::Drop),
        check().prop_map(C::AddCheck),
        check().prop_map(C::AddCheck),
        (at.clone(), at.clone(), check()).prop_map(|(survey, check, value)| C::SetCheck { survey, check, value }),
        (at.clone(), at.clone()).prop_map(|(survey, check)| C::RemoveCheck { survey, check }),
        (p(), proptest::sample::select(geometry), 0.0..2_000.0).prop_map(|(panel, geometry, gloss)| C::AddGloss {
            panel,
            geometry,
            gloss: GlossUnits::of(gloss)
        }),
        (p(), at.clone()).prop_map(|(panel, reading)| C::RemoveGloss { panel, reading }),
        (proptest::collection::vec(p(), 0..4), entry()).prop_map(|(panels, entry)| C::AddRemoval(panels, entry)),
        (p(), at).prop_map(|(panel, entry)| C::RemoveRemoval { panel, entry }),
    ]
}
