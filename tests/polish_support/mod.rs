//! What tests of the step planner share: generated steps and defects, and a brute force that has nothing in common with the planner.
#![allow(dead_code, reason = "each test binary uses a part of it")]
#![allow(clippy::unwrap_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::polish::{
    Budget, DefectFacts, DefectKind, Equipment, Goal, LOCAL_AREA_M2, LOCAL_WORTH, Level, PanelFacts, PolishPlan,
    PolishStep, StepKind, Treatment, plan,
};
use lapwright::units::{Decibels, MetresPerSecondSquared, Micrometres, SquareMetres};
use proptest::prelude::*;

const KINDS: [StepKind; 4] = [StepKind::Sand, StepKind::Cut, StepKind::Polish, StepKind::Finish];

pub(crate) fn um(value: f64) -> Micrometres {
    Micrometres::new(value).unwrap()
}

prop_compose! {
    pub(crate) fn any_step()(
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
    pub(crate) fn any_defect()(
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

pub(crate) fn facts(defects: &[DefectFacts]) -> PanelFacts<'_> {
    PanelFacts { defects, ..PanelFacts::new(None, SquareMetres::of(0.7)) }
}

pub(crate) fn with_budget(allowed: f64) -> Budget {
    Budget { allowed: um(allowed), limits: Vec::new(), clear: None, edge: None, refused: None, cautions: Vec::new() }
}

/// One sequence of the brute force.
#[derive(Clone)]
struct Sequence {
    removal: f64,
    upper: f64,
    reach: f64,
    seconds: i64,
    kinds: Vec<StepKind>,
}

impl Sequence {
    /// How hard it is, by the rules for naming levels.
    fn level(&self) -> Level {
        match self.kinds.as_slice() {
            [] => Level::Leave,
            kinds if kinds.contains(&StepKind::Sand) => Level::SandAndPolish,
            kinds if kinds.iter().all(|k| *k == StepKind::Finish) => Level::Gloss,
            kinds if kinds.len() == 1 => Level::OneStep,
            _ => Level::TwoStep,
        }
    }
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
                    kinds: so_far.kinds.iter().copied().chain([step.kind]).collect(),
                };
                if matches!(step.kind, StepKind::Polish | StepKind::Finish) {
                    all.push(next.clone());
                }
                extend(steps, allowed, area, Some(i), &next, all);
            }
        }
    }
    let mut all = Vec::new();
    let nothing = Sequence { removal: 0.0, upper: 0.0, reach: 0.0, seconds: 0, kinds: Vec::new() };
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

/// Best (counted weight, seconds) over all choices of a sequence for the panel and one or none for each local defect, none of
/// them harder than `held`.
fn brute_force(
    defects: &[DefectFacts],
    steps: &[PolishStep],
    allowed: f64,
    share: f64,
    held: Level,
) -> Option<(f64, i64)> {
    let area = 0.7;
    let sequences = |area| every_sequence(steps, allowed, area).into_iter().filter(move |s| s.level() <= held);
    let all: f64 = defects.iter().filter(|d| helped(d)).map(|d| d.weight).sum();
    let spots: Vec<Sequence> = sequences(LOCAL_AREA_M2).collect();
    let local: Vec<&DefectFacts> = defects.iter().filter(|d| helped(d) && d.local).collect();
    let mut best: Option<(f64, i64)> = None;
    let mut offer = |weight: f64, seconds: i64| {
        let counted = weight.min(share * all);
        if best.is_none_or(|(c, s)| counted > c + 1e-7 || ((counted - c).abs() <= 1e-7 && seconds < s)) {
            best = Some((counted, seconds));
        }
    };
    for whole in sequences(area) {
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

pub(crate) fn counted(defects: &[DefectFacts], plan: &PolishPlan, share: f64) -> f64 {
    let all: f64 = defects.iter().filter(|d| helped(d)).map(|d| d.weight).sum();
    (plan.correction * all).min(share * all)
}

pub(crate) fn keeps_the_rules(plan: &PolishPlan, steps: &[PolishStep], allowed: f64) {
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

/// Plans, and fails where the plan breaks a rule or is not as good as trying everything.
pub(crate) fn as_good_as_trying_everything(
    defects: &[DefectFacts],
    steps: &[PolishStep],
    allowed: f64,
    share: f64,
    held: Option<Level>,
) -> Result<(), TestCaseError> {
    let facts = PanelFacts { level_at_most: held, ..facts(defects) };
    let plan = plan(&facts, &with_budget(allowed), steps, Goal::Correct { share });
    keeps_the_rules(&plan, steps, allowed);
    let held = held.unwrap_or(Level::SandAndPolish);
    prop_assert!(plan.level <= held, "{} is harder than {}", plan.level, held);
    match brute_force(defects, steps, allowed, share, held) {
        None => prop_assert_eq!(plan.level, Level::Leave),
        Some((best, seconds)) => {
            prop_assert!((counted(defects, &plan, share) - best).abs() < 1e-6, "{} {}", plan.correction, best);
            prop_assert_eq!(plan.seconds, seconds);
        }
    }
    Ok(())
}
