//! The step planner against brute force, and the laws it must keep.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::measure::{Assurance, FilmSummary, Gauge, summarise};
use lapwright::polish::{
    Budget, ClearBasis, ClearEstimate, DefectFacts, DefectKind, Equipment, Finish, Goal, LEAST_USEFUL_UM,
    LOCAL_AREA_M2, LOCAL_WORTH, Level, PaintHistory, PanelFacts, PolishPlan, PolishStep, RemovalPolicy, StepKind,
    Treatment, ambition, budget, plan,
};
use lapwright::units::{Decibels, MetresPerSecondSquared, Micrometres, SquareMetres};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

const KINDS: [StepKind; 4] = [StepKind::Sand, StepKind::Cut, StepKind::Polish, StepKind::Finish];

fn um(value: f64) -> Micrometres {
    Micrometres::new(value).unwrap()
}

prop_compose! {
    fn any_step()(
        kind in prop::sample::select(vec![0_usize, 1, 2, 2, 3, 3]),
        removal in 1..14_u32,
        spread in 0..10_u32,
        left in 0..10_u32,
        clears in 1..60_u32,
        speed in 1..40_u32,
        setup_s in 0..90_u32,
        min_passes in 1..3_u32,
        more in 0..3_u32,
    ) -> PolishStep {
        PolishStep {
            name: format!("step {kind}"),
            kind: KINDS[kind],
            removal_um: um(f64::from(removal) / 10.0),
            removal_spread: f64::from(spread) / 10.0,
            scratch_left_um: um(f64::from(left) / 10.0),
            clears_up_to_um: um(f64::from(clears) / 10.0),
            seconds_per_m2_pass: f64::from(speed * 10),
            setup_s,
            min_passes,
            max_passes: min_passes + more,
            vibration_ms2: MetresPerSecondSquared::ZERO,
            vibration_k_ms2: MetresPerSecondSquared::ZERO,
            noise_db: Decibels::ZERO,
            equipment: Equipment::default(),
        }
    }
}

prop_compose! {
    fn any_defect()(
        // Mostly kinds that polishing helps; the rest must not matter.
        kind in prop_oneof![
            3 => prop::sample::select(vec![DefectKind::Swirl, DefectKind::DeepScratch, DefectKind::Etching]),
            1 => prop::sample::select(DefectKind::ALL),
        ],
        low in 0..40_u32,
        more in 0..40_u32,
        weight in 0..8_u32,
        local in prop::bool::weighted(0.5),
    ) -> DefectFacts {
        DefectFacts {
            kind,
            depth_um: (um(f64::from(low) / 10.0), um(f64::from(low + more) / 10.0)),
            weight: f64::from(weight),
            local,
        }
    }
}

fn facts(defects: &[DefectFacts]) -> PanelFacts<'_> {
    PanelFacts { defects, ..PanelFacts::new(None, SquareMetres::of(0.7)) }
}

fn with_budget(allowed: f64) -> Budget {
    Budget { allowed: um(allowed), limits: Vec::new(), clear: None, edge: None, refused: None, cautions: Vec::new() }
}

/// One sequence of the brute force.
#[derive(Clone)]
struct Sequence {
    removal: f64,
    upper: f64,
    reach: f64,
    seconds: i64,
}

/// Every sequence that keeps the rules, found by trying all; shares nothing with the planner.
fn every_sequence(steps: &[PolishStep], allowed: f64, area: f64) -> Vec<Sequence> {
    fn extend(
        steps: &[PolishStep],
        allowed: f64,
        area: f64,
        last: Option<usize>,
        so_far: &Sequence,
        all: &mut Vec<Sequence>,
    ) {
        for (i, step) in steps.iter().enumerate() {
            let key = |j: usize| (steps[j].kind, std::cmp::Reverse(steps[j].scratch_left_um), j);
            if last.is_some_and(|l| key(l) >= key(i)) {
                continue;
            }
            for passes in step.min_passes..=step.max_passes {
                let mean = f64::from(passes) * step.removal_um.um();
                let marks = last.map_or(0.0, |l| steps[l].scratch_left_um.um());
                let upper = so_far.upper + mean * (1.0 + step.removal_spread);
                if mean + 1e-9 < marks || upper > allowed + 1e-9 {
                    continue;
                }
                let time = (f64::from(passes) * step.seconds_per_m2_pass * area - 1e-9).ceil() as i64;
                let next = Sequence {
                    removal: so_far.removal + mean,
                    upper,
                    reach: so_far.reach.max(step.clears_up_to_um.um()),
                    seconds: so_far.seconds + time + i64::from(step.setup_s),
                };
                if matches!(step.kind, StepKind::Polish | StepKind::Finish) {
                    all.push(next.clone());
                }
                extend(steps, allowed, area, Some(i), &next, all);
            }
        }
    }
    let mut all = Vec::new();
    let nothing = Sequence { removal: 0.0, upper: 0.0, reach: 0.0, seconds: 0 };
    extend(steps, allowed, area, None, &nothing, &mut all);
    all
}

fn helped(defect: &DefectFacts) -> bool {
    matches!(defect.kind.treatment(), Treatment::Polish | Treatment::Reduce)
}

fn gone(defect: &DefectFacts, depth: f64) -> f64 {
    let (low, high) = (defect.depth_um.0.um(), defect.depth_um.1.um());
    if depth >= high { 1.0 } else { ((depth - low) / (high - low)).clamp(0.0, 1.0) }
}

/// Best (counted weight, seconds) over all choices of a sequence for the panel and one or none for each local defect.
fn brute_force(defects: &[DefectFacts], steps: &[PolishStep], allowed: f64, share: f64) -> Option<(f64, i64)> {
    let area = 0.7;
    let all: f64 = defects.iter().filter(|d| helped(d)).map(|d| d.weight).sum();
    let spots = every_sequence(steps, allowed, LOCAL_AREA_M2);
    let local: Vec<&DefectFacts> = defects.iter().filter(|d| helped(d) && d.local).collect();
    let mut best: Option<(f64, i64)> = None;
    let mut offer = |weight: f64, seconds: i64| {
        let counted = weight.min(share * all);
        if best.is_none_or(|(c, s)| counted > c + 1e-7 || ((counted - c).abs() <= 1e-7 && seconds < s)) {
            best = Some((counted, seconds));
        }
    };
    for whole in every_sequence(steps, allowed, area) {
        let base: f64 = defects
            .iter()
            .filter(|d| helped(d) && !d.local)
            .map(|d| d.weight * gone(d, whole.removal.min(whole.reach)))
            .sum();
        // All combinations for the local defects, one after another.
        let mut combinations = vec![(base, whole.seconds)];
        for defect in &local {
            let mut next = Vec::new();
            for &(weight, seconds) in &combinations {
                next.push((weight + defect.weight * gone(defect, whole.removal.min(whole.reach)), seconds));
                for spot in spots.iter().filter(|s| s.upper + whole.upper <= allowed + 1e-9) {
                    let depth = (whole.removal + spot.removal).min(whole.reach.max(spot.reach));
                    if gone(defect, depth) < LOCAL_WORTH - 1e-9 {
                        continue; // not worth a machine
                    }
                    next.push((weight + defect.weight * gone(defect, depth), seconds + spot.seconds));
                }
            }
            combinations = next;
        }
        for (weight, seconds) in combinations {
            offer(weight, seconds);
        }
    }
    best
}

fn counted(defects: &[DefectFacts], plan: &PolishPlan, share: f64) -> f64 {
    let all: f64 = defects.iter().filter(|d| helped(d)).map(|d| d.weight).sum();
    (plan.correction * all).min(share * all)
}

fn keeps_the_rules(plan: &PolishPlan, steps: &[PolishStep], allowed: f64) {
    for sequence in std::iter::once(&plan.steps).chain(plan.local.iter().map(|l| &l.steps)) {
        for pair in sequence.windows(2) {
            assert!(pair[1].removal.um() + 1e-6 >= steps[pair[0].index].scratch_left_um.um(), "marks are left");
            assert!(pair[0].kind <= pair[1].kind, "a hard step after a gentle one");
        }
        if let Some(last) = sequence.last() {
            assert!(last.kind.leaves_gloss());
        }
        for step in sequence {
            assert!((steps[step.index].min_passes..=steps[step.index].max_passes).contains(&step.passes));
        }
    }
    assert!(plan.removal_upper.um() <= allowed);
    for local in &plan.local {
        assert!(plan.removal_upper.um() + local.removal_upper.um() <= allowed + 1e-6);
    }
    let seconds: i64 = plan.steps.iter().chain(plan.local.iter().flat_map(|l| &l.steps)).map(|s| s.seconds).sum();
    assert_eq!(seconds, plan.seconds);
    assert!(!plan.why.is_empty());
    assert!((0.0..=1.0).contains(&plan.correction));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 6_000, failure_persistence: None, rng_seed: RngSeed::Fixed(1), ..ProptestConfig::default() })]

    #[test]
    fn the_plan_is_as_good_as_trying_everything(
        steps in prop::collection::vec(any_step(), 1..5),
        defects in prop::collection::vec(any_defect(), 0..5),
        allowed in 2..90_u32,
        share in 0..21_u32,
    ) {
        let (allowed, share) = (f64::from(allowed) / 10.0, f64::from(share) / 20.0);
        let plan = plan(&facts(&defects), &with_budget(allowed), &steps, Goal::Correct { share });
        keeps_the_rules(&plan, &steps, allowed);
        match brute_force(&defects, &steps, allowed, share) {
            None => prop_assert_eq!(plan.level, Level::Leave),
            Some((best, seconds)) => {
                prop_assert!((counted(&defects, &plan, share) - best).abs() < 1e-6, "{} {}", plan.correction, best);
                prop_assert_eq!(plan.seconds, seconds);
            }
        }
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
        let (allowed, share) = (f64::from(allowed) / 10.0, f64::from(share) / 20.0);
        let plan = plan(&facts(&defects), &with_budget(allowed), &steps, Goal::Correct { share });
        keeps_the_rules(&plan, &steps, allowed);
        match brute_force(&defects, &steps, allowed, share) {
            None => prop_assert_eq!(plan.level, Level::Leave),
            Some((best, seconds)) => {
                prop_assert!((counted(&defects, &plan, share) - best).abs() < 1e-6, "{} {}", plan.correction, best);
                prop_assert_eq!(plan.seconds, seconds);
            }
        }
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
