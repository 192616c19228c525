//! Test spots, Preston's law, and what earlier visits took.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::measure::{Assurance, Gauge, summarise, summarise_place};
use lapwright::polish::{
    CARRIED_PASSES, DefectFacts, DefectKind, Fingernail, Goal, LEAST_SPREAD, Ledger, LedgerEntry, PaintHardness,
    PaintHistory, PanelFacts, PolishStep, RemovalPolicy, RemovalSource, StepKind, TestSpot, Working, budget, budget_at,
    calibrate, depth_by_fingernail, depth_from_test, orbital_speed, plan, rotary_speed, size_class, test_order,
    ultraviolet_factor, visible_weight,
};
use lapwright::units::{Micrometres, Millimetres, SquareMetres};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

#[track_caller]
fn close(actual: f64, expected: f64, tolerance: f64) {
    assert!((actual - expected).abs() <= tolerance, "{actual} is not within {tolerance} of {expected}");
}

fn um(value: f64) -> Micrometres {
    Micrometres::new(value).unwrap()
}

/// Preston's law over a section (computed from dh/dt = K·p·v, 1927): 50 N, 3.1416 m/s, 400 s on 0.25 m² is 251,328 N/m; with 2 µm
/// removed K is 7.96e-12 1/Pa. Half the time or half the force removes half.
#[test]
fn preston_s_identity() {
    let working = Working { force_n: 50.0, speed_m_s: orbital_speed(15.0, 4_000.0), seconds: 400.0, area_m2: 0.25 };
    close(working.dose(), 251_327.4, 0.1); // with a speed rounded to 3.1416 it is 251,328
    let k = working.coefficient(um(2.0)).unwrap();
    close(k * 1e12, 7.96, 0.005);
    for half in [Working { seconds: 200.0, ..working }, Working { force_n: 25.0, ..working }] {
        close(half.removal(k).um(), 1.0, 1e-9);
    }
    assert_eq!(Working { seconds: 0.0, ..working }.coefficient(um(2.0)), None);
}

/// Mean speeds under the pad (computed): throw 15 mm at 4000/min 3.14 m/s (π), 21 mm at 3600/min 3.96, 8 mm at 4500/min 1.88; a disc of
/// 150 mm at 1500/min 7.85, 150 mm at 1000/min 5.24.
#[test]
fn speeds_of_machines() {
    for (throw, rpm, speed) in [(15.0, 4000.0, std::f64::consts::PI), (21.0, 3600.0, 3.96), (8.0, 4500.0, 1.88)] {
        close(orbital_speed(throw, rpm), speed, 0.005);
    }
    for (pad, rpm, speed) in [(150.0, 1500.0, 7.85), (125.0, 1800.0, 7.85), (150.0, 1000.0, 5.24)] {
        close(rotary_speed(pad, rpm), speed, 0.005);
    }
}

/// Beer-Lambert law, 45 µm of clear (computed): 8 µm less of an absorbance of 2 lets 2.27 times as much ultraviolet through.
#[test]
fn lost_clear_lets_more_ultraviolet_through() {
    for (removed, factors) in [(4.0, [1.23, 1.51, 1.85]), (8.0, [1.51, 2.27, 3.41]), (12.0, [1.85, 3.41, 6.31])] {
        for (absorbance, expected) in [1.0, 2.0, 3.0].into_iter().zip(factors) {
            close(ultraviolet_factor(absorbance, removed, 45.0), expected, 0.006);
        }
    }
}

fn tested(step: usize, passes: u32, removal: f64, u: f64) -> TestSpot {
    TestSpot { step, passes, removal: Some((removal, u)), finish_right: true }
}

#[test]
fn without_a_test_the_shop_s_figures_stand() {
    let steps = PolishStep::starting_set();
    let calibration = calibrate(&steps, &[]);
    assert!(calibration.notes.is_empty());
    for (before, after) in steps.iter().zip(&calibration.steps) {
        close(after.removal_um.um(), before.removal_um.um(), 1e-12);
        close(after.removal_spread, before.removal_spread, 1e-9);
        assert_eq!(after.max_passes, before.max_passes);
    }
}

/// With one step only, the update is the textbook one of a normal mean with known variances: precisions add.
#[test]
fn one_step_is_updated_as_a_normal_mean() {
    let step = PolishStep { removal_spread: 0.5, removal_um: um(0.4), ..PolishStep::starting_set()[3].clone() };
    let (removal, u, passes) = (2.4, 0.3, 4.0);
    let calibration = calibrate(std::slice::from_ref(&step), &[tested(0, 4, removal, u)]);
    let (prior_variance, noise) = ((0.5 / 1.645_f64).powi(2), (u / (passes * 0.4_f64)).powi(2));
    let precision = 1.0 / prior_variance + 1.0 / noise;
    let mean = (1.0 / prior_variance + removal / (passes * 0.4) / noise) / precision;
    close(calibration.factors[0].mean, mean, 1e-9);
    close(calibration.factors[0].sd, precision.recip().sqrt(), 1e-9);
    close(calibration.steps[0].removal_um.um(), 0.4 * mean, 1e-9);
}

/// A paint that takes one step harder is expected to take the others harder too, but less surely.
#[test]
fn a_test_of_one_step_teaches_about_the_others() {
    let steps = PolishStep::starting_set();
    let calibration = calibrate(&steps, &[tested(3, 4, 2.4, 0.2)]); // 1.6 µm were expected
    let factor = |s: usize| calibration.factors[s];
    assert!(factor(3).mean > factor(2).mean && factor(2).mean > 1.0, "{:?}", calibration.factors);
    assert!(factor(3).sd < factor(2).sd && factor(2).sd < 0.5 / 1.645);
}

#[test]
fn contradicting_results_are_pointed_out() {
    let steps = PolishStep::starting_set();
    let agreeing = calibrate(&steps, &[tested(3, 4, 1.6, 0.2), tested(3, 4, 1.7, 0.2)]);
    assert!(agreeing.notes.is_empty(), "{:?}", agreeing.notes);
    let contradicting = calibrate(&steps, &[tested(3, 4, 1.6, 0.1), tested(3, 4, 3.0, 0.1)]);
    assert_eq!(contradicting.notes.len(), 1);
    assert!(contradicting.notes[0].contains("more"));
}

/// Not carried further than about twice the tested passes (common practice: the abrasive wears), and a step whose finish can't stay
/// is no longer used last.
#[test]
fn what_a_test_does_not_cover_is_not_planned() {
    let steps = PolishStep::starting_set();
    let spot = TestSpot { finish_right: false, ..tested(3, 2, 0.8, 0.2) };
    let calibration = calibrate(&steps, &[spot]);
    assert_eq!(calibration.steps[3].max_passes, 2 * CARRIED_PASSES);
    assert_eq!(calibration.steps[3].kind, StepKind::Cut);
    assert!(calibration.notes[0].contains("finer step"));
}

/// Half of the swirls went at 1 µm, none are shallower than 0.2 µm: the deepest are 1.8 µm.
#[test]
fn depth_follows_from_what_a_test_cleared() {
    close(depth_from_test(0.2, 1.0, 0.5).unwrap(), 1.8, 1e-12);
    assert_eq!(depth_from_test(0.2, 1.0, 0.0), None);
    assert_eq!(depth_from_test(1.0, 0.8, 0.5), None);
}

/// Common practice: the least aggressive first.
#[test]
fn the_gentlest_step_is_tried_first() {
    let steps = PolishStep::starting_set();
    assert_eq!(test_order(&steps), [4, 3, 2, 1, 0]);
}

/// A hard paint is planned with less removal a pass, a soft one with more; a test then has the last word.
#[test]
fn hardness_is_a_first_guess_that_a_test_corrects() {
    let steps = PolishStep::starting_set();
    let hard = PaintHardness::Hard.expected(&steps);
    assert!(hard[3].removal_um < steps[3].removal_um);
    assert!(PaintHardness::Soft.expected(&steps)[3].removal_um > steps[3].removal_um);
    assert_eq!(PaintHardness::Usual.expected(&steps), steps);
    let exact = calibrate(&hard, &[tested(3, 4, 2.4, 0.001)]);
    close(exact.steps[3].removal_um.um(), 0.6, 0.001);
}

/// The bench rule: a fingernail catches from about 4 to 5 µm. Size classes after the idea of ISO 4628-1 (from memory).
#[test]
fn what_a_person_sees_and_feels() {
    let scratch = DefectKind::DeepScratch;
    let usual = depth_by_fingernail(scratch, Fingernail::NotTried);
    let (catches, slides) =
        (depth_by_fingernail(scratch, Fingernail::Catches), depth_by_fingernail(scratch, Fingernail::Slides));
    assert!(catches.0 > usual.0 && catches.1 == usual.1);
    assert!(slides.1 < usual.1 && slides.0 == usual.0);
    for kind in DefectKind::ALL {
        for nail in [Fingernail::NotTried, Fingernail::Catches, Fingernail::Slides] {
            let (low, high) = depth_by_fingernail(*kind, nail);
            assert!(low <= high);
        }
    }
    assert_eq!([0.0, 0.3, 2.0, 40.0].map(|mm| size_class(Millimetres::of(mm))), [2, 3, 4, 5]);
    close(visible_weight(0, 5), 0.0, 0.0);
    assert!(visible_weight(3, 4) > visible_weight(2, 4) && visible_weight(3, 5) > visible_weight(3, 4));
}

/// A thin place has its own, smaller budget.
#[test]
fn a_place_has_its_own_budget() {
    let gauge = Gauge::default();
    let (thick, thin) = ([um(125.0); 3], [um(92.0); 3]);
    let spots: Vec<&[Micrometres]> = vec![&thick, &thick, &thick];
    let film = summarise(&spots, &gauge, Assurance::default()).unwrap();
    let place = summarise_place(&thin, &gauge, 0.9).unwrap();
    let facts = PanelFacts { history: PaintHistory::Original, ..PanelFacts::new(Some(&film), SquareMetres::of(1.0)) };
    let policy = RemovalPolicy::default();
    let (there, panel) = (budget_at(&facts, &place, &policy), budget(&facts, &policy));
    assert!(there.allowed < panel.allowed, "{:?} {:?}", there.allowed, panel.allowed);
}

#[test]
fn removals_add_up_over_visits() {
    let entry = |removed: f64, upper: f64, source| LedgerEntry {
        visit: "spring".to_owned(),
        removed_um: um(removed),
        upper_um: um(upper),
        source,
    };
    let ledger =
        Ledger { entries: vec![entry(1.4, 2.0, RemovalSource::Planned), entry(1.6, 2.2, RemovalSource::Measured)] };
    close(ledger.removed().um(), 4.2, 1e-12);
    assert_eq!(ledger.visits_left(um(8.0), um(1.5)), Some(2));
    assert_eq!(ledger.visits_left(um(8.0), Micrometres::ZERO), None);

    let spots: Vec<[Micrometres; 1]> = [128.0, 126.0, 130.0].iter().map(|v| [um(*v)]).collect();
    let spots: Vec<&[Micrometres]> = spots.iter().map(<[Micrometres; 1]>::as_slice).collect();
    let film = summarise(&spots, &Gauge::default(), Assurance::default()).unwrap();
    let allowed = |removed_um, history| {
        let facts = PanelFacts { removed_um, history, ..PanelFacts::new(Some(&film), SquareMetres::of(1.0)) };
        budget(&facts, &RemovalPolicy::default())
    };
    let after = allowed(ledger.removed(), PaintHistory::Original);
    let lifetime = after.limits.iter().find(|l| l.what.contains("in the life of the paint")).unwrap();
    close(lifetime.um.um(), 8.0 - 4.2, 1e-9);
    assert!(after.allowed <= allowed(Micrometres::ZERO, PaintHistory::Original).allowed);
    assert!(allowed(ledger.removed(), PaintHistory::Unknown).allowed <= after.allowed);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, rng_seed: RngSeed::Fixed(1), ..ProptestConfig::default() })]

    /// The order of the test spots does not change the rates; every result narrows every step; nothing is ever not finite.
    #[test]
    fn rates_do_not_depend_on_the_order_of_the_tests(
        tests in prop::collection::vec((0..5_usize, 1..7_u32, -1.0..8.0_f64, 0.05..2.0_f64), 0..7),
    ) {
        let steps = PolishStep::starting_set();
        let spots: Vec<TestSpot> = tests.iter().map(|&(step, passes, removal, u)| tested(step, passes, removal, u)).collect();
        let mut turned = spots.clone();
        turned.reverse();
        let (a, b) = (calibrate(&steps, &spots), calibrate(&steps, &turned));
        let before = calibrate(&steps, &[]);
        for ((a, b), before) in a.factors.iter().zip(&b.factors).zip(&before.factors) {
            prop_assert!((a.mean - b.mean).abs() < 1e-6 && (a.sd - b.sd).abs() < 1e-6);
            prop_assert!(a.sd <= before.sd + 1e-9 && a.mean > 0.0);
        }
        for step in &a.steps {
            prop_assert!(step.removal_spread.is_finite() && step.removal_spread >= LEAST_SPREAD - 1e-12);
            prop_assert!(step.max_passes >= step.min_passes);
        }
    }

    /// A plan made after a test still keeps the budget at its upper bound.
    #[test]
    fn a_plan_after_a_test_keeps_the_budget(removal in 0.1..6.0_f64, share in 0.0..1.0_f64) {
        let spots: Vec<[Micrometres; 1]> = [128.0, 126.0, 130.0].iter().map(|v| [um(*v)]).collect();
        let spots: Vec<&[Micrometres]> = spots.iter().map(<[Micrometres; 1]>::as_slice).collect();
        let film = summarise(&spots, &Gauge::default(), Assurance::default()).unwrap();
        let defects = [DefectFacts::usual(DefectKind::Swirl, 1.0, false)];
        let facts = PanelFacts { defects: &defects, ..PanelFacts::new(Some(&film), SquareMetres::of(1.0)) };
        let steps = calibrate(&PolishStep::starting_set(), &[tested(3, 3, removal, 0.3)]).steps;
        let budget = budget(&facts, &RemovalPolicy::default());
        let plan = plan(&facts, &budget, &steps, Goal::Correct { share });
        prop_assert!(plan.removal_upper <= budget.allowed);
    }
}
