//! Whole vehicles coated in the window: by plan, otherwise, with a break, a wrong tap, a crash. After every tap the advice is held
//! against the checker of the crew planner with the past as it was (in `Bay::rest`).

use super::bay::{Bay, SIZE, job_on};
use eframe::egui::Role;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::bay::Event;

#[test]
fn a_whole_vehicle_in_order_is_done_in_the_time_that_was_planned() {
    let mut bay = Bay::open(job_on("coupe"), SIZE);
    let planned = {
        let label =
            bay.window.get_by(|n| n.role() == Role::Label && n.value().is_some_and(|v| v.starts_with("About ")));
        assert!(label.rect().width() > 0.0);
        bay.run().problem().operations.len()
    };
    let began = bay.run().now_s();
    bay.press("Start the day");
    bay.work_to_the_end();
    assert!(bay.run().late().is_empty());
    let finished = bay.run().log().standing().iter().filter(|e| matches!(e.event, Event::Finished { .. })).count();
    assert_eq!(finished, planned, "every operation was tapped once");
    // Common practice, no source: a practised pair coats a compact vehicle of two doors, lamps and glass included, in about
    // twenty minutes.
    let took = bay.run().now_s() - began;
    assert!((17 * 60..=26 * 60).contains(&took), "{took} s");
    assert!(bay.reads("Last lap, 0 of "));
}

#[test]
fn somebody_takes_another_panel_and_the_rest_follows() {
    let mut bay = Bay::open(job_on("hatch-3"), SIZE);
    bay.press("Start the day");
    let mut swaps = 0;
    for step in 0..2_000 {
        if step % 7 == 3 && swaps < 5 && other_panel(&mut bay) {
            swaps += 1;
        }
        if !bay.step((step % 5) * 3) {
            break;
        }
    }
    assert!(bay.run().is_over() && swaps >= 3, "{swaps}");
}

/// Whoever applies takes something else than what they are at, from the list.
fn other_panel(bay: &mut Bay) -> bool {
    let worker = bay.worker(0);
    let now = bay.board().workers[0].current.map(|c| c.operation);
    let ask = format!("{worker}, other panel");
    if !bay.has(&ask) {
        return false;
    }
    bay.press(&ask);
    bay.look("other");
    let begins = format!("{worker} takes Apply ");
    let labels: Vec<String> = bay
        .window
        .query_all_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with(&begins)))
        .map(|n| n.accesskit_node().label().unwrap().clone())
        .collect();
    let Some(second) = labels.get(1) else {
        bay.press("back to the card");
        return false;
    };
    bay.press(second);
    assert_ne!(bay.board().workers[0].current.map(|c| c.operation), now);
    true
}

#[test]
fn a_break_of_four_minutes_names_what_comes_too_late_if_anything_does() {
    let mut bay = Bay::open(job_on("coupe"), SIZE);
    bay.press("Start the day");
    for _ in 0..9 {
        bay.step(0);
    }
    assert!(!bay.board().windows.is_empty());
    bay.press("Pause for everybody");
    bay.look("pause");
    bay.press("5\u{202f}min");
    bay.advance(240);
    let away = bay.board().workers.iter().filter(|w| w.away_until_s.is_some()).count();
    assert_eq!(away, 2);
    bay.press("Everybody goes on");
    let late = bay.run().late().to_vec();
    for late in &late {
        assert!(late.by_s > 0);
    }
    assert_eq!(bay.reads(" late. Level it first"), !late.is_empty());
    bay.work_to_the_end();
}

#[test]
fn a_long_break_says_which_panel_is_too_late_and_what_to_do() {
    let mut bay = Bay::open(job_on("coupe"), SIZE);
    bay.press("Start the day");
    while bay.board().windows.is_empty() {
        bay.step(0);
    }
    bay.press("Pause for everybody");
    bay.press("15\u{202f}min");
    bay.advance(900);
    bay.look("late");
    assert!(bay.reads(" late. Level it first; where it drags, wet it with the used applicator and level at once."));
    bay.press("Everybody goes on");
    assert!(!bay.run().late().is_empty());
    bay.work_to_the_end();
}

#[test]
fn a_wrong_tap_is_taken_back_and_leaves_no_trace_but_in_the_file() {
    let mut bay = Bay::open(job_on("coupe"), SIZE);
    bay.press("Start the day");
    for _ in 0..6 {
        bay.step(1);
    }
    let worker = (0..2).find(|&w| bay.board().workers[w].current.is_some()).unwrap();
    let before = bay.run().day().clone();
    let doing = bay.board().workers[worker].current.unwrap().operation;
    let button = bay.done_button(worker);
    bay.press(&button);
    assert!(bay.run().day().done_at(doing).is_some());
    bay.press("Take back the last tap");
    assert_eq!(bay.run().day().done_at(doing), None);
    assert_eq!(bay.board().workers[worker].current.map(|c| c.operation), Some(doing));
    assert_eq!(bay.run().day().doing(worker), before.doing(worker), "with the clock it had");
    let other = 1 - worker;
    assert!(before.doing(other).is_none() || bay.run().day().doing(other) == before.doing(other));
    assert!(bay.written().iter().any(|e| e.event == Event::TakenBack));
    bay.work_to_the_end();
}

#[test]
fn after_a_crash_everything_stands_where_it_stood_and_the_clocks_ran_on() {
    let mut bay = Bay::open(job_on("coupe"), SIZE);
    bay.press("Start the day");
    for _ in 0..15 {
        bay.step(1);
    }
    bay.advance(2);
    let (day, log, known) = (bay.run().day().clone(), bay.run().log().clone(), next_of(&bay));
    let since: Vec<_> = bay.board().windows.iter().map(|w| w.since_s).collect();
    let now = bay.run().now_s();
    let mut bay = bay.crash(25);
    let standing = bay.run().log().entries()[..log.entries().len()].to_vec();
    assert_eq!(standing, log.entries(), "nothing that was tapped is lost");
    for operation in 0..bay.run().problem().operations.len() {
        assert_eq!(bay.run().day().done_at(operation), day.done_at(operation));
    }
    assert_eq!(bay.run().now_s(), now + 25, "the clocks ran on");
    assert_eq!(bay.board().windows.iter().map(|w| w.since_s).collect::<Vec<_>>(), since);
    let again = next_of(&bay);
    let kept = known.iter().zip(&again).filter(|(a, b)| a == b || a.is_none()).count();
    assert!(kept >= 1, "{known:?} {again:?}");
    bay.work_to_the_end();
}

/// What each worker is at or goes for.
fn next_of(bay: &Bay) -> Vec<Option<usize>> {
    let board = bay.board();
    let of = |w: &lapwright::bay::WorkerBoard| {
        w.current.map(|c| c.operation).or_else(|| w.next.first().map(|n| n.operation))
    };
    board.workers.iter().map(of).collect()
}

/// The walk-round: what is fine by one tap for all that is reached from a place, one high spot found and saved, one too late.
#[test]
fn the_last_lap_ends_with_every_place_looked_at() {
    let mut bay = Bay::open(job_on("coupe"), SIZE);
    bay.press("Start the day");
    bay.work_to_the_end();
    assert!(bay.reads("A high spot can be saved for "));
    let places = |bay: &Bay| -> Vec<String> {
        let found = bay
            .window
            .query_all_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with("High spot, ")));
        found.map(|n| n.accesskit_node().label().unwrap()["High spot, ".len()..].to_owned()).collect()
    };
    let first = places(&bay);
    assert!(!first.is_empty());
    bay.press(&format!("High spot, {}", first[0]));
    bay.look("lap");
    assert!(bay.has(&format!("To polish, {}", first[0])));
    bay.press(&format!("It is gone, {}", first[0]));
    let mut left = None;
    for _ in 0..60 {
        bay.advance(10);
        let open = places(&bay);
        if left.is_none() && open.len() > 1 && !open.contains(&first[0]) {
            bay.press(&format!("High spot, {}", open[0]));
            bay.press(&format!("To polish, {}", open[0]));
            left = Some(open[0].clone());
        }
        match ["All fine, on", "The rest is fine"].into_iter().find(|b| bay.has(b)) {
            Some(button) => bay.press(button),
            None => break,
        }
    }
    assert!(bay.reads("All looked at") && bay.reads(&format!("To polish {}", left.unwrap())));
    let marks = bay.run().day().lap().len();
    // One tap said that several places are fine; taking it back takes all of them.
    bay.press("Take back the last tap");
    assert!(bay.run().day().lap().len() < marks && !bay.reads("All looked at"));
    let bay = bay.crash(60);
    assert!(bay.reads("Last lap, "));
}

/// Polishing is worked the same way, on a log of its own.
#[test]
fn polishing_is_worked_the_same_way() {
    let loaded = lapwright::file::job_from_text("the sample", lapwright::file::SAMPLE).unwrap();
    let mut bay = Bay::open(loaded, SIZE).polishing();
    bay.press("Start the day");
    bay.press("More");
    bay.press("Enter a test spot");
    assert_eq!(bay.window.state().workspace(), lapwright::gui::Workspace::Correction);
    bay.tab("Bay");
    bay.press("More");
    let worker = bay.worker(0);
    bay.press(&format!("{worker}, fresh pad"));
    assert_eq!(bay.run().day().pads(0), 1);
    for _ in 0..6 {
        bay.step(5);
    }
    bay.look("polishing");
    assert!(
        (bay.reads(" is cut, ") || bay.reads(" is polished, ") || bay.reads(" is sanded, ")),
        "the call names the step"
    );
    bay = bay.crash(10);
    bay.work_to_the_end();
    assert_eq!(bay.run().day().pads(0), 1);
    assert!(!bay.window.state().coating_day().is_begun());
}
