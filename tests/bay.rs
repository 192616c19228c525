//! A day in the bay: what happened holds, and what is left is planned by the rules.

#![expect(clippy::expect_used, clippy::panic, reason = "a test says what it expected")]

#[path = "support/day.rs"]
mod day_support;

use day_support::check_rest;
use lapwright::bay::{Board, Day, Event, LapMark, Log, with_window};
use lapwright::coat::{Feel, Product, WindowBasis};
use lapwright::crew::{
    Control, Limits, PlanFile, PlanRow, Problem, ProblemSpec, Replanned, Schedule, State, is_of_the_present, replan,
    rest_of, solve,
};
use lapwright::file::{SAMPLE, job_from_text};
use lapwright::insight::{Insight, crew_problem};
use lapwright::job::{Job, Vehicle};
use lapwright::vehicle::load_embedded;
use std::sync::Arc;

struct Silent;

impl Control for Silent {
    fn should_stop(&self) -> bool {
        false
    }
    fn improved(&self, _: &Schedule, _: i64) {}
}

const LIMITS: Limits = Limits { nodes: Some(600), threads: 1, seed: 7 };

/// The coating of the sample job on the body of a template.
fn coating(template: &str) -> ProblemSpec {
    let sample = job_from_text("the sample", SAMPLE).expect("the sample is sound");
    let template = load_embedded(template).expect("an embedded template is sound");
    let vehicle = Vehicle { template: template.id.clone(), ..sample.job.vehicle.clone() };
    let job = Arc::new(Job { vehicle, panels: std::collections::BTreeMap::new(), ..(*sample.job).clone() });
    let insight = Insight::new(&job, &template);
    crew_problem(&job, &template, &insight)
}

fn first_plan(spec: &ProblemSpec) -> PlanFile {
    let problem = Problem::try_from(spec.clone()).expect("a sound problem");
    let outcome = solve(&problem, &Limits { nodes: Some(20_000), ..LIMITS }, &Silent);
    outcome.schedule().expect("there is a plan").to_plan(&problem, 0)
}

/// Small, fast and the same everywhere.
struct Dice(u64);

impl Dice {
    fn below(&mut self, n: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % n
    }
}

/// A day on which the program's advice is followed, more or less.
struct Bay {
    spec: ProblemSpec,
    log: Log,
    now: i64,
    plan: Option<Replanned>,
    known: Vec<PlanRow>,
    /// Operations that could not be in time when they were last looked at.
    late: Vec<String>,
    /// Who is away, and when they really come back.
    away: Vec<(usize, i64)>,
}

impl Bay {
    fn open(spec: ProblemSpec) -> Self {
        let known = first_plan(&spec).operations;
        let mut bay =
            Self { spec, log: Log::default(), now: 1_000, plan: None, known, late: Vec::new(), away: Vec::new() };
        bay.replan();
        bay
    }

    fn day(&self) -> Day {
        Day::replay(&self.spec, &self.log)
    }

    fn board(&self) -> Board {
        Board::new(&self.spec, &self.day(), self.plan.as_ref(), self.now)
    }

    fn note(&mut self, event: Event) {
        self.log.note(self.now, event);
        self.replan();
    }

    fn name(&self, worker: usize) -> String {
        self.spec.workers[worker].id.clone()
    }

    fn replan(&mut self) {
        let day = self.day();
        assert_eq!(day.odd, [], "every tap fits");
        let so_far = day.so_far(&self.spec, self.now);
        if so_far.is_over() {
            self.plan = None;
            return;
        }
        let rest = rest_of(&self.spec, &so_far);
        let planned = replan(&rest, &self.known, &LIMITS, &Silent).expect("a sound rest").expect("an order");
        check_rest(&self.spec, &planned, &so_far.operations);
        self.late.extend(planned.late.iter().map(|l| l.operation.clone()));
        self.known.clone_from(&planned.plan.operations);
        self.plan = Some(planned);
    }

    /// When the next thing happens by plan: a person's next beginning or end.
    fn next_moment(&self) -> Option<(i64, usize, bool)> {
        let board = self.board();
        let moments = board.workers.iter().enumerate().filter_map(|(w, worker)| {
            if worker.away_until_s.is_some() {
                return None;
            }
            match (worker.current, worker.next.first()) {
                (Some(current), _) => Some((current.end_s, w, true)),
                (None, Some(next)) => Some((next.start_s, w, false)),
                (None, None) => None,
            }
        });
        moments.min()
    }

    /// Goes on to the next thing that happens by plan, `later` seconds after its time.
    fn step(&mut self, later: i64) -> bool {
        let moment = self.next_moment();
        let back = (0..self.away.len()).min_by_key(|&k| self.away[k].1);
        if let Some(back) = back.filter(|&k| moment.is_none_or(|m| self.away[k].1 <= m.0)) {
            let (w, at) = self.away.remove(back);
            self.now = self.now.max(at);
            let worker = self.name(w);
            self.note(Event::Returned { worker });
            return true;
        }
        let Some((at, w, ends)) = moment else { return false };
        self.now = self.now.max(at) + later;
        let worker = self.name(w);
        if ends {
            self.note(Event::Finished { worker });
        } else {
            let next = self.board().workers[w].next[0].operation;
            let operation = self.spec.operations[next].id.clone();
            let day = self.day();
            let done = |id: &str| {
                let at = self.spec.operations.iter().position(|o| o.id == id);
                at.is_some_and(|o| day.done_at(o).is_some())
            };
            if self.spec.lags.iter().any(|l| l.to == operation && !done(&l.from)) {
                // Somebody is later than they said: ask again.
                self.now += 5;
                self.replan();
                return true;
            }
            self.note(Event::Began { worker, operation });
        }
        true
    }

    fn work_to_the_end(&mut self) {
        for _ in 0..2_000 {
            if !self.step(0) {
                assert!(self.day().is_over(), "nothing to do, and not over");
                return;
            }
        }
        panic!("the day does not end");
    }
}

#[test]
fn a_day_by_plan_ends_as_planned() {
    let spec = coating("coupe");
    let planned = first_plan(&spec).makespan_s;
    let mut bay = Bay::open(spec);
    bay.work_to_the_end();
    assert_eq!(bay.late, [] as [String; 0], "nothing is late when everybody keeps the plan");
    let took = bay.now - 1_000;
    assert!(took <= planned + planned / 20, "{took} s instead of {planned} s");
}

#[test]
fn days_that_go_otherwise_keep_every_rule_that_can_be_kept() {
    for (seed, template) in ["hatch-3", "coupe", "saloon", "coupe"].into_iter().enumerate() {
        let mut dice = Dice(seed as u64 + 1);
        let mut bay = Bay::open(coating(template));
        for _ in 0..1_000 {
            match dice.below(24) {
                0 if bay.away.is_empty() => {
                    let w = dice.below(bay.spec.workers.len() as u64) as usize;
                    let worker = bay.name(w);
                    bay.away.push((w, bay.now + 240));
                    bay.note(Event::Left { worker, for_s: 120 });
                }
                1 => bay.another_panel(&mut dice),
                2 if bay.log.latest().is_some_and(|e| matches!(e.event, Event::Finished { .. })) => {
                    bay.note(Event::TakenBack);
                }
                _ if !bay.step(dice.below(15) as i64) => break,
                _ => {}
            }
        }
        assert!(bay.day().is_over(), "{template} is not done");
    }
}

impl Bay {
    /// Somebody who is free takes something else than the plan says.
    fn another_panel(&mut self, dice: &mut Dice) {
        let board = self.board();
        let Some(w) = (0..board.workers.len())
            .find(|&w| board.workers[w].current.is_none() && board.workers[w].away_until_s.is_none())
        else {
            return;
        };
        let next = &board.workers[w].next;
        if next.len() > 2 {
            let other = next[1 + dice.below(2) as usize].operation;
            let (worker, operation) = (self.name(w), self.spec.operations[other].id.clone());
            // Only applying: levelling something dry or leaning over wet panels is nobody's whim.
            let so_far = self.day().so_far(&self.spec, self.now);
            let leans = self.spec.wet.iter().any(|r| r.blocks.contains(&operation));
            if self.spec.operations[other].role == "apply" && !leans && so_far.operations[other] == State::ToDo {
                self.note(Event::Began { worker, operation });
            }
        }
    }
}

#[test]
fn a_missed_window_is_named_and_levelled_first() {
    let mut bay = Bay::open(coating("coupe"));
    let first = loop {
        assert!(bay.step(0), "something is applied");
        let open = bay.board().windows;
        if let Some(open) = open.first() {
            break open.operation;
        }
    };
    let id = bay.spec.operations[first].id.clone();
    // Everybody is called away until long after the window.
    for w in 0..bay.spec.workers.len() {
        let worker = bay.name(w);
        bay.note(Event::Left { worker, for_s: 900 });
    }
    bay.now += 900;
    for w in 0..bay.spec.workers.len() {
        let worker = bay.name(w);
        bay.note(Event::Returned { worker });
    }
    let plan = bay.plan.clone().expect("there is an order");
    assert!(plan.late.iter().any(|l| l.operation == id && l.by_s > 600), "{:?}", plan.late);
    let level = |r: &&PlanRow| r.id.contains("/level");
    let soonest = plan.plan.operations.iter().filter(|r| !is_of_the_present(&r.id)).find(level);
    assert_eq!(soonest.map(|r| r.id.as_str()), Some(id.as_str()));
    bay.work_to_the_end();
}

#[test]
fn a_tap_taken_back_leaves_no_trace() {
    let mut bay = Bay::open(coating("hatch"));
    for _ in 0..7 {
        bay.step(2);
    }
    let (day, standing) = (bay.day(), bay.log.standing().len());
    bay.step(1);
    assert_ne!(bay.day(), day);
    bay.note(Event::TakenBack);
    assert_eq!(bay.day(), day);
    assert_eq!(bay.log.standing().len(), standing);
    assert_eq!(bay.log.entries().len(), standing + 2, "the log itself keeps both");
}

#[test]
fn what_was_assumed_after_a_tap_goes_with_it() {
    let mut log = Log::default();
    let began = |operation: &str| Event::Began { worker: "A".into(), operation: operation.into() };
    log.note(10, began("x"));
    log.note(20, Event::Finished { worker: "A".into() });
    log.assume(21, began("y"));
    log.note(22, Event::TakenBack);
    assert_eq!(log.standing().len(), 1);
    log.note(5, Event::Finished { worker: "A".into() });
    assert_eq!(log.entries().last().map(|e| e.at_s), Some(22), "time does not go back");
}

/// Somebody who began by plan meanwhile is still at it, unless what they need is no longer done.
#[test]
fn taking_back_leaves_others_where_they_are() {
    let spec = coating("coupe");
    let (a, l) = ("apply", "level").clone_into_names(&spec);
    let index = |id: &str| spec.operations.iter().position(|o| o.id == id).expect("it is there");
    let (first, second) = (&spec.operations[0], &spec.operations[2]);
    let levels = &spec.operations[1].id;
    let began =
        |worker: &String, operation: &String| Event::Began { worker: worker.clone(), operation: operation.clone() };
    let mut log = Log::default();
    log.note(0, began(&a, &first.id));
    log.note(30, Event::Finished { worker: a.clone() });
    log.note(31, began(&a, &second.id));
    log.note(70, Event::Finished { worker: a.clone() });
    log.assume(95, began(&l, levels));
    log.note(96, Event::TakenBack);
    let day = Day::replay(&spec, &log);
    let leveller = spec.workers.iter().position(|w| w.id == l).expect("somebody levels");
    assert_eq!(day.doing(leveller), Some((index(levels), 95)));
    assert_eq!(day.done_at(2), None);
    // Back to before the panel was on: then nobody can level it, and nobody tapped that they do.
    log.note(97, Event::TakenBack);
    log.note(98, Event::TakenBack);
    let day = Day::replay(&spec, &log);
    assert_eq!((day.doing(leveller), day.odd.len()), (None, 0));
    log.note(99, Event::TakenBack);
    assert_eq!(Day::replay(&spec, &log), Day::replay(&spec, &Log::default()));
}

#[test]
fn taps_that_do_not_fit_are_left_out_and_named() {
    let spec = coating("coupe");
    let (apply, level) = (&spec.operations[0], &spec.operations[1]);
    let (a, l) = ("apply", "level").clone_into_names(&spec);
    let mut log = Log::default();
    log.note(0, Event::Finished { worker: a.clone() });
    log.note(1, Event::Began { worker: "nobody".into(), operation: apply.id.clone() });
    log.note(2, Event::Began { worker: a.clone(), operation: apply.id.clone() });
    log.note(3, Event::Felt { operation: level.id.clone(), feel: Feel::Right });
    log.note(4, Event::Began { worker: l.clone(), operation: level.id.clone() });
    log.note(40, Event::Finished { worker: a.clone() });
    log.note(41, Event::Began { worker: a, operation: apply.id.clone() });
    log.note(42, Event::Returned { worker: l });
    let day = Day::replay(&spec, &log);
    assert_eq!(day.odd.iter().map(|o| o.entry).collect::<Vec<_>>(), [0, 1, 3, 4, 6, 7]);
    assert_eq!(day.done_at(0), Some(40));
}

trait Names {
    fn clone_into_names(self, spec: &ProblemSpec) -> (String, String);
}

impl Names for (&str, &str) {
    fn clone_into_names(self, spec: &ProblemSpec) -> (String, String) {
        let with = |role: &str| {
            let worker = spec.workers.iter().find(|w| w.roles.iter().any(|r| r == role));
            worker.expect("somebody has the role").id.clone()
        };
        (with(self.0), with(self.1))
    }
}

/// A dragging towel shortens the window of everything still to come, by the stated rule, and the plan with it.
#[test]
fn the_feel_moves_the_window_of_what_is_to_come() {
    let mut bay = Bay::open(coating("coupe"));
    let product = Product::default();
    let air = lapwright::coat::Air::default();
    let before = WindowBasis::new(&product, None).window(&air);
    let levelled = loop {
        assert!(bay.step(0), "something is levelled");
        let day = bay.day();
        let done = (0..bay.spec.operations.len())
            .find(|&o| bay.spec.operations[o].role == "level" && day.done_at(o).is_some());
        if let Some(done) = done {
            break done;
        }
    };
    let operation = bay.spec.operations[levelled].id.clone();
    bay.note(Event::Felt { operation, feel: Feel::Dragging });
    let after = bay.day().window(before, &air, &WindowBasis::new(&product, None));
    assert!(after.max_s < before.max_s, "{after:?} {before:?}");
    assert_eq!(bay.day().felt(levelled), Some(Feel::Dragging));
    bay.spec = with_window(&bay.spec, after);
    bay.replan();
    assert!(bay.board().windows.iter().all(|w| w.latest_s - w.since_s <= after.max_s));
    bay.work_to_the_end();
}

#[test]
fn the_last_lap_remembers_what_was_found() {
    let spec = coating("coupe");
    let mut log = Log::default();
    log.note(0, Event::Looked { place: "a".into() });
    log.note(5, Event::FoundHighSpot { place: "b".into() });
    log.note(9, Event::FoundHighSpot { place: "c".into() });
    log.note(30, Event::SavedHighSpot { place: "b".into() });
    log.note(31, Event::LeftForPolishing { place: "c".into() });
    let day = Day::replay(&spec, &log);
    let marks: Vec<_> = day.lap().iter().map(|(p, m)| (p.as_str(), *m)).collect();
    assert_eq!(marks, [("a", LapMark::Fine), ("b", LapMark::Saved), ("c", LapMark::ToPolish)]);
}

/// The sun comes round: a warmer surface shortens the window, and what the towel said before stays said.
#[test]
fn another_air_moves_the_window_and_keeps_what_was_learned() {
    use lapwright::coat::Air;
    use lapwright::units::Celsius;
    let spec = coating("coupe");
    let (air, product) = (Air::default(), Product::default());
    let warm = Air { surface_temp_c: Celsius::of(28.0), ..air };
    let (before, in_sun) =
        (WindowBasis::new(&product, None).window(&air), WindowBasis::new(&product, None).window(&warm));
    let (apply, level) = (&spec.operations[0], &spec.operations[1]);
    let (a, l) = ("apply", "level").clone_into_names(&spec);
    let mut log = Log::default();
    log.note(0, Event::Began { worker: a.clone(), operation: apply.id.clone() });
    log.note(30, Event::Finished { worker: a });
    log.note(230, Event::Began { worker: l.clone(), operation: level.id.clone() });
    log.note(260, Event::Finished { worker: l });
    log.note(261, Event::AirChanged { air: warm });
    let sun_alone = Day::replay(&spec, &log).window(before, &air, &WindowBasis::new(&product, None));
    assert_eq!((sun_alone.min_s, sun_alone.max_s), (in_sun.min_s, in_sun.max_s));
    log.note(262, Event::Felt { operation: level.id.clone(), feel: Feel::Dragging });
    let felt = Day::replay(&spec, &log).window(before, &air, &WindowBasis::new(&product, None));
    assert!(felt.max_s < in_sun.max_s);
    log.note(300, Event::AirChanged { air });
    let shade = Day::replay(&spec, &log).window(before, &air, &WindowBasis::new(&product, None));
    assert!(felt.max_s < shade.max_s && shade.max_s < before.max_s, "{shade:?}");
}

#[test]
fn a_new_day_leaves_nothing_of_the_old_one() {
    let spec = coating("coupe");
    let mut log = Log::default();
    log.note(0, Event::Began { worker: spec.workers[0].id.clone(), operation: spec.operations[0].id.clone() });
    log.note(9, Event::StartedOver);
    assert_eq!(Day::replay(&spec, &log), Day::replay(&spec, &Log::default()));
    assert_eq!((log.began_s(), log.last_s()), (None, Some(9)));
    log.note(20, Event::TakenBack);
    assert_eq!(log.standing().len(), 0);
}
