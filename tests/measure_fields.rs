//! What a file may hold of measurement, polishing and coating, and what is refused at the door.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::coat::{Air, MeasuredWindow, Product};
use lapwright::measure::{Assurance, FilmBands, Gauge};
use lapwright::polish::{
    Goal, Ledger, LedgerEntry, PaintHistory, PolishStep, RemovalPolicy, RemovalSource, TestSpot, UsePolicy,
};
use lapwright::units::Micrometres;
use serde::{Serialize, de::DeserializeOwned};
use std::fmt::Debug;

fn returns<T: Serialize + DeserializeOwned + PartialEq + Debug>(value: T) {
    let text = ron::to_string(&value).unwrap();
    assert_eq!(ron::from_str::<T>(&text), Ok(value), "{text}");
}

#[test]
fn every_value_comes_back_as_it_was_saved() {
    returns(Gauge::default());
    returns(Assurance { coverage: 0.95, confidence: 0.75 });
    returns(FilmBands::default());
    returns(RemovalPolicy::default());
    returns(UsePolicy::default());
    returns(Product::default());
    returns(Air::default());
    returns(MeasuredWindow { min_s: 40, max_s: 170, air: Air::default() });
    returns(PolishStep::starting_set());
    returns(TestSpot { step: 1, passes: 4, removal: Some((1.5, 0.2)), finish_right: true });
    for goal in [Goal::Gloss, Goal::Correct { share: 0.8 }] {
        returns(goal);
    }
    for history in [
        PaintHistory::Unknown,
        PaintHistory::FreshRefinish { days: 12 },
        PaintHistory::PolishedBefore { removed_um: Micrometres::of(2.5) },
    ] {
        returns(history);
    }
    let entry = LedgerEntry {
        visit: "May".to_owned(),
        removed_um: Micrometres::of(1.0),
        upper_um: Micrometres::of(1.2),
        source: RemovalSource::Measured,
    };
    returns(Ledger { entries: vec![entry] });
}

#[test]
fn a_file_may_name_only_what_differs_from_the_defaults() {
    let policy: RemovalPolicy = ron::from_str("(visit_cap_um: 3.0)").unwrap();
    assert_eq!(policy, RemovalPolicy { visit_cap_um: Micrometres::of(3.0), ..RemovalPolicy::default() });
    let product: Product = ron::from_str("(layers: 2)").unwrap();
    assert_eq!(product, Product { layers: 2, ..Product::default() });
}

/// Nothing that is not a number, negative, absurd or unknown gets in; the message says what would be accepted.
#[test]
fn what_can_t_be_is_refused() {
    fn refused<T: DeserializeOwned + Debug>(text: &str, says: &str) {
        let error = ron::from_str::<T>(text).unwrap_err().to_string();
        assert!(error.contains(says), "{text}: {error}");
    }
    refused::<Assurance>("(coverage: NaN)", "from 0.7 to 0.999");
    refused::<Assurance>("(confidence: 0.5)", "from 0.7 to 0.999");
    refused::<Gauge>("(accuracy_share: inf)", "from 0 to 1");
    refused::<Gauge>("(accuracy_fixed_um: -2.0)", "a thickness must be");
    refused::<Gauge>("(brand: 3)", "brand");
    refused::<RemovalPolicy>("(lifetime_share_of_clear: 1.5)", "from 0 to 1");
    refused::<RemovalPolicy>("(keep_clear_um: NaN)", "a thickness must be");
    refused::<Product>("(window_max_s: -5)", "whole seconds");
    refused::<Product>("(layers: 0)", "1 to 10 layers");
    refused::<Product>("(humidity_exponent: NaN)", "from 0 to 3");
    refused::<Air>("(humidity_pct: 0.0)", "humidity");
    refused::<Goal>("correct(share: 1.2)", "from 0 to 1");
    refused::<PaintHistory>("polished_before(removed_um: -1.0)", "a thickness must be");
    let step = ron::to_string(&PolishStep::starting_set()[0]).unwrap();
    refused::<PolishStep>(&step.replace("max_passes:4", "max_passes:4000000000"), "1 to 50 passes");
}
