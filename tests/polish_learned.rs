//! What test spots teach, from what people write down to the steps and depths that a plan rests on.

use lapwright::polish::{
    DefectKind, FinishSeen, LEAST_SPREAD, NextTest, PaintHardness, PolishStep, RemovalBasis, Seen, TestRemoval,
    TestResult, TestSpots, calibrate, learn,
};
use lapwright::units::Micrometres;

const FINE: &str = "Fine polish, soft pad";
const MEDIUM: &str = "Medium polish, medium pad";
const CUT: &str = "Cutting polish, firm pad";

fn result(step: &str, passes: u32) -> TestResult {
    TestResult { step: step.to_owned(), passes, removal: None, seen: None, finish: FinishSeen::NotJudged }
}

#[expect(clippy::unnecessary_wraps, reason = "as the field takes it")]
fn removed(um: f64, give_or_take: f64) -> Option<TestRemoval> {
    let (um, give_or_take_um) = (Micrometres::of(um), Micrometres::of(give_or_take));
    Some(TestRemoval { um, give_or_take_um, basis: RemovalBasis::Measured })
}

#[expect(clippy::unnecessary_wraps, reason = "as the field takes it")]
fn swirls(share: f64) -> Option<Seen> {
    Some(Seen { kind: DefectKind::Swirl, share })
}

fn tests(results: &[TestResult]) -> TestSpots {
    TestSpots { paint: PaintHardness::Usual, results: results.to_vec() }
}

fn rate(steps: &[PolishStep], name: &str) -> f64 {
    steps.iter().find(|s| s.name == name).map_or(0.0, |s| s.removal_um.um())
}

#[test]
fn without_a_test_the_steps_are_those_of_the_shop_at_the_hardness_of_the_paint() {
    let shop = PolishStep::starting_set();
    assert_eq!(learn(&shop, &TestSpots::default()).steps, shop);
    let hard = learn(&shop, &TestSpots { paint: PaintHardness::Hard, results: Vec::new() }).steps;
    assert!((rate(&hard, MEDIUM) - 0.7 * rate(&shop, MEDIUM)).abs() < 1e-9);
}

/// The statistics are those of [`calibrate`], with half of "give or take" as the standard uncertainty.
#[test]
fn a_measured_removal_moves_its_step_and_by_the_hardness_the_others() {
    let shop = PolishStep::starting_set();
    let learned = learn(&shop, &tests(&[TestResult { removal: removed(1.4, 0.4), ..result(MEDIUM, 2) }]));
    let spot = lapwright::polish::TestSpot { step: 3, passes: 2, removal: Some((1.4, 0.2)), finish_right: true };
    assert_eq!(learned.steps, calibrate(&shop, &[spot]).steps);
    assert!(rate(&learned.steps, MEDIUM) > 1.2 * rate(&shop, MEDIUM));
    assert!(rate(&learned.steps, FINE) > 1.05 * rate(&shop, FINE), "a soft paint is soft under every pad");
    let spread = learned.steps[3].removal_spread;
    assert!(spread < shop[3].removal_spread && spread >= LEAST_SPREAD);
}

/// Defects spread evenly from 0.3 µm down: half of them gone at 0.8 µm means that the deepest lie at 0.3 + 0.5/0.5 = 1.3 µm
/// (computed).
#[test]
fn a_share_seen_gives_the_greatest_depth_on_this_vehicle() {
    let shop = PolishStep::starting_set();
    let seen = TestResult { removal: removed(0.8, 0.02), seen: swirls(0.5), ..result(MEDIUM, 2) };
    let learned = learn(&shop, &tests(&[seen]));
    assert_eq!(learned.depths.len(), 1);
    assert!((learned.depths[0].1.um() - 1.3).abs() < 1e-9, "{:?}", learned.depths);
    let usual = (Micrometres::of(0.3), Micrometres::of(2.0));
    assert_eq!(learned.depth(DefectKind::Swirl, usual), (usual.0, learned.depths[0].1));
    assert_eq!(learned.depth(DefectKind::Haze, usual), usual, "other kinds stay as they were");
}

#[test]
fn all_gone_means_no_deeper_than_what_was_cleared() {
    let shop = PolishStep::starting_set();
    let seen = TestResult { removal: removed(0.9, 0.02), seen: swirls(1.0), ..result(MEDIUM, 2) };
    let learned = learn(&shop, &tests(&[seen]));
    assert!((learned.depths[0].1.um() - 0.9).abs() < 1e-9);
    // A step clears no deeper than it reaches, whatever it takes off.
    let fine = TestResult { removal: removed(1.8, 0.02), seen: swirls(1.0), ..result(FINE, 6) };
    assert!((learn(&shop, &tests(&[fine])).depths[0].1.um() - 1.0).abs() < 1e-9);
}

#[test]
fn contradictory_results_are_pointed_out() {
    let shop = PolishStep::starting_set();
    let gentle = TestResult { removal: removed(0.4, 0.02), seen: swirls(0.9), ..result(FINE, 3) };
    let strong = TestResult { removal: removed(1.6, 0.02), seen: swirls(0.3), ..result(CUT, 2) };
    let agreeing = TestResult { seen: swirls(0.95), ..strong.clone() };
    let notes = |results: &[TestResult]| learn(&shop, &tests(results)).notes;
    assert!(notes(&[gentle.clone(), agreeing]).iter().all(|n| !n.starts_with("Contradictory")));
    assert!(notes(&[gentle, strong]).iter().any(|n| n.contains("took out more of the swirl marks")));
    // Removal: three times what two earlier tests showed.
    let usual = TestResult { removal: removed(0.8, 0.2), ..result(MEDIUM, 2) };
    let odd = TestResult { removal: removed(2.4, 0.2), ..result(MEDIUM, 2) };
    assert!(notes(&[usual.clone(), usual.clone()]).is_empty());
    assert!(notes(&[usual.clone(), usual, odd]).iter().any(|n| n.contains("test it once more")));
    // Finish: judged both ways, and coarse where a harder step was not.
    let judged = |step, finish| TestResult { finish, ..result(step, 2) };
    let both = notes(&[judged(MEDIUM, FinishSeen::CanStay), judged(MEDIUM, FinishSeen::NeedsFiner)]);
    assert!(both.iter().any(|n| n.contains("judged in two ways")), "{both:?}");
    let upside_down = notes(&[judged(MEDIUM, FinishSeen::CanStay), judged(FINE, FinishSeen::NeedsFiner)]);
    assert!(upside_down.iter().any(|n| n.contains("the gentler")), "{upside_down:?}");
    let usual_way = notes(&[judged(FINE, FinishSeen::CanStay), judged(MEDIUM, FinishSeen::NeedsFiner)]);
    assert!(usual_way.iter().all(|n| !n.starts_with("Contradictory")), "{usual_way:?}");
}

/// Common practice, no source: the least aggressive combination that does the work is found by trying from the gentle end.
#[test]
fn the_next_test_is_the_gentlest_untried_until_one_is_enough() {
    let shop = PolishStep::starting_set();
    let mut spots = TestSpots::default();
    let name = |next| match next {
        NextTest::Try(at) => shop[at].name.clone(),
        other => format!("{other:?}"),
    };
    assert_eq!(name(spots.next(&shop, 0.8)), FINE);
    spots.results.push(result(FINE, 2));
    assert_eq!(name(spots.next(&shop, 0.8)), FINE, "nobody has looked yet");
    spots.results[0].seen = swirls(0.4);
    assert_eq!(name(spots.next(&shop, 0.8)), MEDIUM);
    spots.results.push(TestResult { seen: swirls(0.85), ..result(MEDIUM, 3) });
    assert_eq!(spots.next(&shop, 0.8), NextTest::Enough(3));
    assert_eq!(name(spots.next(&shop, 0.95)), CUT);
    for step in &shop {
        spots.results.push(TestResult { seen: swirls(0.1), ..result(&step.name, 1) });
    }
    assert_eq!(spots.next(&shop, 0.95), NextTest::NothingHarder);
}

#[test]
fn a_result_of_a_step_that_is_gone_teaches_nothing_and_stops_nothing() {
    let shop = PolishStep::starting_set();
    let gone = TestResult { removal: removed(3.0, 0.1), seen: swirls(0.5), ..result("Some other step", 2) };
    assert_eq!(learn(&shop, &tests(&[gone])).steps, shop);
}
