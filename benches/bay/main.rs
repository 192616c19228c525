//! What a tap in the bay costs: planning the rest anew from what happened, and writing the tap to the disk.
//!
//! `cargo bench --bench bay`. Every vehicle is worked by plan, two to eleven seconds late at each end; after each tap the rest is planned with the effort
//! that the window uses. The disk is that of the folder for temporary files.

#![expect(clippy::print_stdout, clippy::unwrap_used, reason = "a tool for contributors; a wrong file may end it")]

#[path = "../days/coating.rs"]
mod coating;

use coating::{Unlimited, coating};
use lapwright::bay::{Board, Day, Event, Log};
use lapwright::crew::{Limits, PlanRow, Problem, ProblemSpec, Replanned, replan, rest_of, solve};
use lapwright::file::{RealDisk, append_day};
use lapwright::work::REST_LIMITS;
use std::time::{Duration, Instant};

fn main() {
    println!("| vehicle | operations | taps | planning again, median | longest |");
    println!("| --- | --- | --- | --- | --- |");
    for template in ["coupe", "saloon", "van", "coach"] {
        let spec = coating(template);
        let mut times = a_day(&spec);
        times.sort_unstable();
        let ms = |d: Duration| format!("{:.0} ms", d.as_secs_f64() * 1e3);
        let (middle, longest) = (times[times.len() / 2], times[times.len() - 1]);
        println!("| {template} | {} | {} | {} | {} |", spec.operations.len(), times.len(), ms(middle), ms(longest));
    }
    println!("\na tap to the disk, median of 200: {:.1} ms", written().as_secs_f64() * 1e3);
}

/// Works a vehicle and says what each planning took.
fn a_day(spec: &ProblemSpec) -> Vec<Duration> {
    let problem = Problem::try_from(spec.clone()).unwrap();
    let first = solve(&problem, &Limits { nodes: Some(50_000), threads: 2, seed: 1 }, &Unlimited);
    let mut known: Vec<PlanRow> = first.schedule().unwrap().to_plan(&problem, 0).operations;
    let (mut log, mut now, mut times) = (Log::default(), 0, Vec::new());
    loop {
        let day = Day::replay(spec, &log);
        if day.is_over() {
            return times;
        }
        let started = Instant::now();
        let rest = rest_of(spec, &day.so_far(spec, now));
        let plan: Replanned = replan(&rest, &known, &REST_LIMITS, &Unlimited).unwrap().unwrap();
        times.push(started.elapsed());
        known.clone_from(&plan.plan.operations);
        let board = Board::new(spec, &day, Some(&plan), now);
        let moments = board.workers.iter().enumerate().filter_map(|(w, its)| match (its.current, its.next.first()) {
            // The expected end moves on while somebody takes longer.
            (Some(current), _) => Some((current.start_s + spec.operations[current.operation].duration_s, w, None)),
            (None, Some(next)) => Some((next.start_s.max(now), w, Some(next.operation))),
            (None, None) => None,
        });
        let (at, w, begins) = moments.min().unwrap();
        now = now.max(at) + if begins.is_none() { 2 + times.len() as i64 % 10 } else { 0 };
        let worker = spec.workers[w].id.clone();
        match begins {
            None => log.note(now, Event::Finished { worker }),
            Some(o) if day.holds(spec, w, o, now).is_empty() => {
                log.note(now, Event::Began { worker, operation: spec.operations[o].id.clone() })
            }
            Some(_) => {
                now += 4; // somebody is later than the plan says
                continue;
            }
        };
    }
}

fn written() -> Duration {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("bench.day");
    let mut log = Log::default();
    let write = |k: i64| {
        let entry = log.note(k, Event::Finished { worker: "somebody".to_owned() }).clone();
        let started = Instant::now();
        append_day(&RealDisk, &path, &entry).unwrap();
        started.elapsed()
    };
    let mut times: Vec<Duration> = (0..200).map(write).collect();
    times.sort_unstable();
    times[times.len() / 2]
}
