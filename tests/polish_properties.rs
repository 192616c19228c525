//! The step planner against brute force, and the laws it must keep.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

mod polish_support;

use lapwright::measure::{Assurance, FilmSummary, Gauge, summarise};
use lapwright::polish::{
    ClearBasis, ClearEstimate, DefectFacts, Finish, Goal, LEAST_USEFUL_UM, Level, PaintHistory, PanelFacts,
    RemovalPolicy, ambition, budget, plan,
};
use lapwright::units::{Micrometres, SquareMetres};
use polish_support::{any_defect, any_step, as_good_as_trying_everything, counted, facts, um, with_budget};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

proptest! {
    #![proptest_config(ProptestConfig { cases: 6_000, failure_persistence: None, rng_seed: RngSeed::Fixed(1), ..ProptestConfig::default() })]

    #[test]
    fn the_plan_is_as_good_as_trying_everything(
        steps in prop::collection::vec(any_step(), 1..5),
        defects in prop::collection::vec(any_defect(), 0..5),
        allowed in 2..90_u32,
        share in 0..21_u32,
    ) {
        as_good_as_trying_everything(&defects, &steps, f64::from(allowed) / 10.0, f64::from(share) / 20.0, None)?;
    }

    /// The same where somebody holds the panel at a level.
    #[test]
    fn a_level_held_by_hand_gets_the_best_of_that_level(
        steps in prop::collection::vec(any_step(), 1..5),
        defects in prop::collection::vec(any_defect(), 0..4),
        allowed in 2..90_u32,
        share in 0..21_u32,
        held in prop::sample::select(Level::ALL.to_vec()),
    ) {
        as_good_as_trying_everything(&defects, &steps, f64::from(allowed) / 10.0, f64::from(share) / 20.0, Some(held))?;
    }

    /// Trying several goals at once gives what planning each of them gives.
    #[test]
    fn ambition_is_the_plan_of_each_goal(
        steps in prop::collection::vec(any_step(), 1..5),
        defects in prop::collection::vec(any_defect(), 0..5),
        allowed in 2..90_u32,
    ) {
        let (facts, budget) = (facts(&defects), with_budget(f64::from(allowed) / 10.0));
        let wanted = [0.0, 0.5, 0.8, 0.95];
        for point in ambition(&facts, &budget, &steps, &wanted) {
            let plan = plan(&facts, &budget, &steps, Goal::Correct { share: point.wanted });
            prop_assert_eq!((point.seconds, point.removal_upper), (plan.seconds, plan.removal_upper));
            prop_assert!(plan.level == Level::Leave || (point.correction - plan.correction).abs() < 1e-12);
        }
    }

    /// A larger budget never reaches less, nor the same with more time.
    #[test]
    fn a_larger_budget_never_gives_a_worse_result(
        steps in prop::collection::vec(any_step(), 1..6),
        defects in prop::collection::vec(any_defect(), 0..5),
        allowed in 2..90_u32,
        more in 1..30_u32,
        share in 0..21_u32,
    ) {
        let share = f64::from(share) / 20.0;
        let goal = Goal::Correct { share };
        let small = plan(&facts(&defects), &with_budget(f64::from(allowed) / 10.0), &steps, goal);
        let large = plan(&facts(&defects), &with_budget(f64::from(allowed + more) / 10.0), &steps, goal);
        if small.level != Level::Leave {
            let (a, b) = (counted(&defects, &small, share), counted(&defects, &large, share));
            prop_assert!(b > a - 1e-6);
            prop_assert!(b > a + 1e-6 || large.seconds <= small.seconds);
        }
    }

    /// A harder goal never takes less time, nor corrects less than was wanted before.
    #[test]
    fn a_harder_goal_never_takes_less_time(
        steps in prop::collection::vec(any_step(), 1..6),
        defects in prop::collection::vec(any_defect(), 0..5),
        allowed in 2..90_u32,
        share in 0..20_u32,
        more in 1..10_u32,
    ) {
        let (easy, hard) = (f64::from(share) / 20.0, (f64::from(share + more) / 20.0).min(1.0));
        let budget = with_budget(f64::from(allowed) / 10.0);
        let easy_plan = plan(&facts(&defects), &budget, &steps, Goal::Correct { share: easy });
        let hard_plan = plan(&facts(&defects), &budget, &steps, Goal::Correct { share: hard });
        prop_assert!(hard_plan.seconds >= easy_plan.seconds);
        prop_assert!(counted(&defects, &hard_plan, easy) >= counted(&defects, &easy_plan, easy) - 1e-6);
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, rng_seed: RngSeed::Fixed(2), ..ProptestConfig::default() })]

    /// Several single defects compete for the time and for what the panel leaves of the budget.
    #[test]
    fn extra_work_at_several_places_is_as_good_as_trying_everything(
        steps in prop::collection::vec(any_step(), 1..3),
        defects in prop::collection::vec(any_defect().prop_map(|d| DefectFacts { local: true, ..d }), 3..6),
        allowed in 10..150_u32,
        share in 1..21_u32,
    ) {
        as_good_as_trying_everything(&defects, &steps, f64::from(allowed) / 10.0, f64::from(share) / 20.0, None)?;
    }
}

fn any_history() -> impl Strategy<Value = PaintHistory> {
    prop_oneof![
        Just(PaintHistory::Unknown),
        Just(PaintHistory::Original),
        Just(PaintHistory::Refinished),
        (0..90_u32).prop_map(|days| PaintHistory::FreshRefinish { days }),
        (0.0..12.0).prop_map(|removed| PaintHistory::PolishedBefore { removed_um: um(removed) }),
    ]
}

fn film(spots: &[f64]) -> FilmSummary {
    let spots: Vec<[Micrometres; 1]> = spots.iter().map(|v| [um(*v)]).collect();
    let spots: Vec<&[Micrometres]> = spots.iter().map(<[Micrometres; 1]>::as_slice).collect();
    summarise(&spots, &Gauge::default(), Assurance::default()).unwrap()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 2_000, failure_persistence: None, rng_seed: RngSeed::Fixed(1), ..ProptestConfig::default() })]

    /// Never above any of its limits, never below zero, and zero exactly when refused.
    #[test]
    fn the_budget_is_its_smallest_limit(
        spots in prop::collection::vec(20.0..1_500.0_f64, 1..8),
        history in any_history(),
        narrow: bool,
        single_stage: bool,
        measured in prop::option::of(10.0..70.0_f64),
    ) {
        let film = film(&spots);
        let finish = if single_stage { Finish::SingleStage } else { Finish::ClearCoat };
        let measured_clear =
            measured.map(|m| ClearEstimate { lower: um(m), upper: um(m + 5.0), basis: ClearBasis::Measured });
        let facts =
            PanelFacts { history, narrow, finish, measured_clear, ..PanelFacts::new(Some(&film), SquareMetres::of(1.0)) };
        let budget = budget(&facts, &RemovalPolicy::default());
        prop_assert!(budget.limits.iter().all(|limit| budget.allowed <= limit.um));
        prop_assert!(budget.limits.is_sorted_by_key(|limit| limit.um));
        if let Some(reason) = &budget.refused {
            prop_assert_eq!(budget.allowed, Micrometres::ZERO);
            prop_assert!(reason.starts_with("Not polished: ") && reason.ends_with('.'));
        } else {
            prop_assert_eq!(budget.allowed, budget.limits[0].um);
            prop_assert!(budget.allowed >= LEAST_USEFUL_UM);
            // What must be kept is kept, on the lower bound of the clear.
            let clear = budget.clear.unwrap();
            prop_assert!(clear.lower.um() - budget.allowed.um() >= 30.0 - 1e-9);
            prop_assert!(clear.lower <= clear.upper);
        }
    }

    /// Knowing that a panel was polished before never raises the budget above that of untouched paint.
    #[test]
    fn what_went_before_is_not_given_again(thickness in 85.0..190.0_f64, first in 0.0..8.0_f64, more in 0.0..8.0_f64) {
        let film = film(&[thickness, thickness + 2.0, thickness - 2.0]);
        let allowed = |removed: f64| {
            let history = PaintHistory::PolishedBefore { removed_um: um(removed) };
            let facts = PanelFacts { history, ..PanelFacts::new(Some(&film), SquareMetres::of(1.0)) };
            budget(&facts, &RemovalPolicy::default()).allowed
        };
        prop_assert!(allowed(first + more) <= allowed(first));
        prop_assert!(allowed(first).um() <= (8.0 - first).max(0.0) + 1e-9);
    }
}
