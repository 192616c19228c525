//! How long an exercise takes to make, and what a click costs while an order is laid. Run with `cargo bench --bench practice`.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a bench prints and may stop")]

use lapwright::crew::{Control, Limits, Schedule};
use lapwright::file::{SAMPLE, job_from_text};
use lapwright::practice::{Laid, Lesson, Part, Setup, hint, marks, next_rounds, play, polish_rounds, prepare, score};
use lapwright::vehicle::{Naming, load_embedded};
use std::time::Instant;

struct Quiet;

impl Control for Quiet {
    fn should_stop(&self) -> bool {
        false
    }
    fn improved(&self, _: &Schedule, _: i64) {}
}

fn main() {
    let base = job_from_text("the sample", SAMPLE).unwrap().job;
    let limits = Limits { nodes: Some(400_000), threads: 2, seed: 1 };
    for id in ["hatch-3", "saloon", "van"] {
        let template = load_embedded(id).unwrap();
        for lesson in Lesson::ALL {
            let setup = Setup { lesson, part: Part::Both, air: lesson.air(), seed: 1 };
            let start = Instant::now();
            let exercise = prepare(&base, &template, &setup, &limits, &Quiet).unwrap();
            let made = start.elapsed();
            let best = Laid::best(&exercise);
            let start = Instant::now();
            let played = play(&exercise, &best);
            let click = start.elapsed();
            let found = marks(&exercise, &played, Naming::Uk);
            let checked = start.elapsed();
            assert_eq!(score(&exercise, &played, &found).unwrap().percent(), 100);
            let start = Instant::now();
            let _ = hint(&exercise, &Laid::begin(&exercise));
            println!(
                "{id:8} {:20} made in {:5} ms, gap {:4.1} %, click {:5} µs, check {:5} µs, hint {:6} µs",
                lesson.name(),
                made.as_millis(),
                100.0 * (exercise.best.cost - exercise.best.bound) as f64 / exercise.best.cost as f64,
                click.as_micros(),
                checked.as_micros(),
                start.elapsed().as_micros()
            );
        }
        let quick = Limits { nodes: Some(12_000), threads: 1, seed: 1 };
        let start = Instant::now();
        let rounds = next_rounds(&base, &template, (1, 5), Naming::Uk, &quick, &Quiet).map_or(0, |r| r.len());
        println!("{id:8} which panel next: {rounds} questions in {} ms", start.elapsed().as_millis());
        let start = Instant::now();
        let rounds = polish_rounds(&base, &template, 1, 5).len();
        println!("{id:8} how hard to polish: {rounds} questions in {} ms", start.elapsed().as_millis());
    }
}
