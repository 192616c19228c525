//! Removal and exposure against published values and common practice. The source stands beside each check.

#![expect(clippy::unwrap_used, reason = "helpers of a test may fail it")]

use lapwright::measure::{Assurance, FilmSummary, Gauge, summarise, summarise_place};
use lapwright::polish::{
    Budget, DefectFacts, DefectKind, Finish, Goal, Level, PaintHistory, PanelFacts, PolishStep, RemovalPolicy, Sensor,
    Standing, budget, combine_a8, hav_a8, hav_points, hav_standing, hav_time_until, noise_lex8h, osha_allowed_hours,
    osha_dose_pct, osha_twa, plan,
};
use lapwright::units::{Decibels, MetresPerSecondSquared, Micrometres, SquareMetres};

#[track_caller]
fn close(actual: f64, expected: f64, tolerance: f64) {
    assert!((actual - expected).abs() <= tolerance, "{actual} is not within {tolerance} of {expected}");
}

const HOUR: i64 = 3600;

fn ms2(a: f64) -> MetresPerSecondSquared {
    MetresPerSecondSquared::of(a)
}

fn film(spots: &[f64]) -> FilmSummary {
    let spots: Vec<Vec<Micrometres>> = spots.iter().map(|v| vec![Micrometres::of(*v); 3]).collect();
    let spots: Vec<&[Micrometres]> = spots.iter().map(Vec::as_slice).collect();
    summarise(&spots, &Gauge::default(), Assurance::default()).unwrap()
}

fn sound() -> FilmSummary {
    film(&[118.0, 116.0, 120.0, 117.0, 119.0])
}

fn facts<'a>(film: &'a FilmSummary, defects: &'a [DefectFacts]) -> PanelFacts<'a> {
    PanelFacts { history: PaintHistory::Original, defects, ..PanelFacts::new(Some(film), SquareMetres::of(0.9)) }
}

fn allowed(facts: &PanelFacts<'_>) -> Budget {
    budget(facts, &RemovalPolicy::default())
}

/// HSE ready-reckoner: 5 m/s² for 3 h is 150 points; 100 points are the action value of Directive 2002/44/EC, 400 the limit.
#[test]
fn vibration_points_are_those_of_the_ready_reckoner() {
    close(hav_points(ms2(5.0), 3 * HOUR), 150.0, 1e-9);
    close(hav_a8(ms2(5.0), 3 * HOUR).ms2(), 3.062, 0.0005);
    close(hav_points(ms2(2.5), 8 * HOUR), 100.0, 1e-9);
    close(hav_points(ms2(5.0), 8 * HOUR), 400.0, 1e-9);
    assert_eq!(hav_standing(hav_a8(ms2(2.5), 8 * HOUR)), Standing::Action);
    assert_eq!(hav_standing(hav_a8(ms2(5.0), 8 * HOUR)), Standing::Action);
    assert_eq!(hav_standing(hav_a8(ms2(5.1), 8 * HOUR)), Standing::OverLimit);
}

/// 4 m/s² for 3 h and 6 m/s² for 1 h: 168 points, 3.240 m/s² (computed by the rule of Directive 2002/44/EC).
#[test]
fn vibration_of_two_machines_combines() {
    let (a, b) = (hav_a8(ms2(4.0), 3 * HOUR), hav_a8(ms2(6.0), HOUR));
    close(combine_a8(&[a, b]).ms2(), 3.240, 0.0005);
    close(hav_points(ms2(4.0), 3 * HOUR) + hav_points(ms2(6.0), HOUR), 168.0, 1e-9);
}

/// Hours to the action value and the limit (computed by the same rule; tables of this kind are in the HSE guidance).
#[test]
fn time_until_action_and_limit() {
    for (a, action, limit) in
        [(4.0, 3.13, 12.5), (5.0, 2.0, 8.0), (6.0, 1.39, 5.56), (8.0, 0.78, 3.13), (10.0, 0.5, 2.0)]
    {
        for (until, hours) in [(2.5, action), (5.0, limit)] {
            close(hav_time_until(ms2(a), ms2(until)).unwrap() as f64 / 3600.0, hours, 0.006);
        }
    }
    assert_eq!(hav_time_until(ms2(0.0), ms2(2.5)), None);
}

/// L_EX,8h by ISO 9612 (computed): 90 dB(A) for 3 h is 85.7, 88 dB(A) for 4 h is 85.0.
#[test]
fn daily_noise() {
    let lex = |level: f64, hours: i64| noise_lex8h(&[(Decibels::of(level), hours * HOUR)]).unwrap().db();
    close(lex(90.0, 3), 85.7, 0.05);
    close(lex(88.0, 4), 85.0, 0.05);
    close(lex(85.0, 8), 85.0, 1e-9);
}

/// 29 CFR 1910.95, appendix A, table G-16a: hours allowed at a level, and the dose of 8 h at 92 dB(A), 131 to 132 %.
#[test]
fn noise_by_the_rule_of_the_united_states() {
    for (level, hours) in [(80.0, 32.0), (85.0, 16.0), (92.0, 6.1), (95.0, 4.0), (100.0, 2.0), (105.0, 1.0)] {
        close(osha_allowed_hours(Decibels::of(level)), hours, 0.05);
    }
    close(osha_dose_pct(&[(Decibels::of(92.0), 8 * HOUR)]), 132.0, 0.1);
    let mixed = osha_dose_pct(&[(Decibels::of(92.0), 3 * HOUR), (Decibels::of(95.0), 2 * HOUR)]);
    close(mixed, 99.5, 0.05);
    close(osha_twa(mixed).unwrap().db(), 89.96, 0.01);
}

/// Common practice, no source: polishing for gloss only on sound original paint takes less than 1 µm.
#[test]
fn gloss_polishing_stays_under_a_micrometre() {
    let film = sound();
    let defects = [DefectFacts::usual(DefectKind::Swirl, 1.0, false)];
    let facts = facts(&film, &defects);
    let plan = plan(&facts, &allowed(&facts), &PolishStep::starting_set(), Goal::Gloss);
    assert_eq!(plan.level, Level::Gloss);
    assert!(plan.removal_upper < Micrometres::of(1.0), "{:?}", plan.removal_upper);
}

/// Trade pages give about 0.3 mil (7.6 µm) as most that makers allow; no default budget reaches it in one visit.
#[test]
fn no_default_budget_reaches_three_tenths_of_a_mil() {
    for thickness in [90.0, 110.0, 130.0, 180.0, 195.0] {
        let film = film(&[thickness, thickness + 1.0, thickness - 1.0]);
        assert!(allowed(&facts(&film, &[])).allowed <= Micrometres::of(4.0));
    }
}

/// What must not be polished gets a plain refusal, and nothing is planned on it.
#[test]
fn dangerous_panels_are_refused_with_the_reason() {
    let (sound, filler, thin) = (sound(), film(&[300.0, 1_400.0, 350.0]), film(&[68.0, 66.0, 67.0]));
    let swirls = [DefectFacts::usual(DefectKind::Swirl, 1.0, false)];
    let base = || facts(&sound, &swirls);
    let unread =
        PanelFacts { film: None, unreadable_reason: Some("a magnetic gauge reads on steel only".into()), ..base() };
    let cases: Vec<(PanelFacts<'_>, &str)> = vec![
        (PanelFacts { finish: Finish::Matte, ..base() }, "matte"),
        (PanelFacts { finish: Finish::FilmCovered, ..base() }, "film"),
        (PanelFacts { finish: Finish::Wrapped, ..base() }, "wrap"),
        (PanelFacts { finish: Finish::Bare, ..base() }, "bare"),
        (PanelFacts { finish: Finish::Glass, ..base() }, "glass"),
        (PanelFacts { finish: Finish::Lens, ..base() }, "lens"),
        (unread, "magnetic gauge"),
        (PanelFacts { film: None, ..base() }, "not known"),
        (facts(&filler, &swirls), "filler"),
        (facts(&thin, &swirls), "nothing may go"),
    ];
    for (facts, reason) in cases {
        let budget = allowed(&facts);
        assert_eq!(budget.allowed, Micrometres::ZERO);
        let refused = budget.refused.clone().unwrap();
        assert!(refused.contains(reason), "{refused}");
        let plan = plan(&facts, &budget, &PolishStep::starting_set(), Goal::Correct { share: 0.95 });
        assert_eq!(plan.level, Level::Leave);
        assert!(plan.steps.is_empty() && plan.local.is_empty());
        assert_eq!(plan.why, [refused]);
        assert_eq!(plan.stays.len(), 1, "the swirl marks stay and that is said");
    }
}

/// Kinds that polishing can't help never drive removal, whatever their weight (common practice).
#[test]
fn chips_and_contamination_never_drive_removal() {
    let film = sound();
    let kinds =
        [DefectKind::StoneChip, DefectKind::ClearFailure, DefectKind::Tar, DefectKind::RailDust, DefectKind::Run];
    let defects: Vec<DefectFacts> = kinds.map(|kind| DefectFacts::usual(kind, 50.0, false)).to_vec();
    let with = facts(&film, &defects);
    let without = facts(&film, &[]);
    let goal = Goal::Correct { share: 0.95 };
    let steps = PolishStep::starting_set();
    let (with, without) =
        (plan(&with, &allowed(&with), &steps, goal), plan(&without, &allowed(&without), &steps, goal));
    assert_eq!(with.steps, without.steps);
    assert_eq!(with.level, Level::Gloss);
    assert_eq!(with.stays.len(), defects.len());
}

/// A deep scratch that needs more than the budget stays, and that is said with both figures.
#[test]
fn a_scratch_deeper_than_the_budget_stays_and_is_said_so() {
    let film = sound();
    let scratch = DefectFacts {
        kind: DefectKind::DeepScratch,
        depth_um: (Micrometres::of(9.0), Micrometres::of(12.0)),
        weight: 1.0,
        local: true,
    };
    let defects = [scratch, DefectFacts::usual(DefectKind::Swirl, 9.0, false)];
    let facts = facts(&film, &defects);
    let budget = allowed(&facts);
    let plan = plan(&facts, &budget, &PolishStep::starting_set(), Goal::Correct { share: 0.8 });
    assert!(plan.correction >= 0.8, "{plan:?}");
    assert!(plan.removal_upper <= budget.allowed);
    let stays = plan.stays.iter().find(|s| s.defect == 0).unwrap();
    assert!(stays.reason.contains("12.0") && stays.reason.contains("may go"), "{}", stays.reason);
}

/// Each rule shows itself as a limit with its value; the smallest decides.
#[test]
fn every_rule_is_a_named_limit() {
    let film = sound();
    let base = || facts(&film, &[]);
    let policy = RemovalPolicy::default();
    for (facts, what, um) in [
        (PanelFacts { narrow: true, ..base() }, "narrow", 1.0),
        (PanelFacts { sensor: Some(Sensor::Radar), ..base() }, "sensor", 1.0),
        (PanelFacts { history: PaintHistory::Refinished, ..base() }, "painted again", 2.0),
        (PanelFacts { history: PaintHistory::FreshRefinish { days: 9 }, ..base() }, "hardening", 1.0),
        (
            PanelFacts { history: PaintHistory::PolishedBefore { removed_um: Micrometres::of(6.5) }, ..base() },
            "life of the paint",
            1.5,
        ),
    ] {
        let budget = budget(&facts, &policy);
        let limit = budget.limits.iter().find(|l| l.what.contains(what)).unwrap();
        close(limit.um.um(), um, 1e-9);
        assert!(budget.allowed <= limit.um);
        assert_eq!(budget.allowed, budget.deciding().unwrap().um);
    }
}

/// A thin edge is held apart: it does not limit the panel, and the worker is told to tape it off.
#[test]
fn a_thin_edge_is_named_and_taped() {
    let film = sound();
    let edge = summarise_place(&[Micrometres::of(84.0); 3], &Gauge::default(), 0.9).unwrap();
    let with_edge = PanelFacts { edge: Some(&edge), ..facts(&film, &[]) };
    let budget = allowed(&with_edge);
    assert_eq!(budget.allowed, allowed(&facts(&film, &[])).allowed);
    assert!(budget.edge.unwrap() < budget.allowed);
    let plan = plan(&with_edge, &budget, &PolishStep::starting_set(), Goal::Gloss);
    assert!(plan.why.iter().any(|w| w.contains("edge")), "{:?}", plan.why);
}

/// The budget rests on the lower bound: the same mean with more spread, or read with a worse gauge, allows less.
#[test]
fn the_budget_rests_on_lower_bounds_not_on_means() {
    let (steady, scattered) = (film(&[109.0, 110.0, 111.0, 110.0, 110.0]), film(&[103.0, 110.0, 117.0, 106.0, 114.0]));
    assert!((steady.mean - scattered.mean).abs() < 1e-9);
    let (a, b) = (allowed(&facts(&steady, &[])), allowed(&facts(&scattered, &[])));
    assert!(b.allowed < a.allowed, "{:?} {:?}", a.allowed, b.allowed);
    let (a, b) = (a.clear.unwrap(), b.clear.unwrap());
    assert!(b.lower < a.lower);
    close(a.lower.um(), RemovalPolicy::default().assumed_share_low * steady.lower.um(), 1e-9);
}
