//! Plans crew problem files and prints a row per improvement: seconds, cost, proven lower bound.
//!
//! usage: cargo bench --no-default-features --bench crew_solve -- [--seconds S] [--threads N] [--seed K] [--nodes M] FILE...

#![expect(clippy::print_stdout, clippy::unwrap_used, reason = "a tool for contributors; a wrong file may end it")]

use lapwright::crew::{
    Control, Limits, Problem, Schedule, Target, habits, simulate, solve, solve_robust, tidy, violations,
};
use std::sync::Mutex;
use std::time::Instant;

struct Watch {
    began: Instant,
    seconds: f64,
    rows: Mutex<Vec<(f64, i64, i64)>>,
}

impl Control for Watch {
    fn should_stop(&self) -> bool {
        self.began.elapsed().as_secs_f64() >= self.seconds
    }
    fn improved(&self, best: &Schedule, bound: i64) {
        self.rows.lock().unwrap().push((self.began.elapsed().as_secs_f64(), best.cost(), bound));
    }
}

fn main() {
    let mut limits = Limits { nodes: None, threads: 2, seed: 1 };
    let mut seconds = 1.0;
    let (mut verbose, mut robust) = (false, false);
    let mut files = Vec::new();
    let mut arguments = std::env::args().skip(1);
    while let Some(argument) = arguments.next() {
        let mut value = || arguments.next().unwrap_or_default();
        match argument.as_str() {
            "--bench" => {}
            "--seconds" => seconds = value().parse().unwrap(),
            "--threads" => limits.threads = value().parse().unwrap(),
            "--seed" => limits.seed = value().parse().unwrap(),
            "--nodes" => limits.nodes = Some(value().parse().unwrap()),
            "--robust" => robust = true,
            "--rows" => verbose = true,
            _ => files.push(argument),
        }
    }
    for file in files {
        let problem = Problem::from_json(&std::fs::read_to_string(&file).unwrap()).unwrap();
        if robust {
            report_robust(&file, &problem, &limits, seconds);
            continue;
        }
        let watch = Watch { began: Instant::now(), seconds, rows: Mutex::default() };
        let outcome = solve(&problem, &limits, &watch);
        let took = watch.began.elapsed().as_secs_f64();
        let rows = watch.rows.into_inner().unwrap();
        if verbose {
            for (at, cost, bound) in &rows {
                println!("{at:.3} {cost} {bound}");
            }
        }
        let name = std::path::Path::new(&file).file_stem().unwrap().to_string_lossy().into_owned();
        let Some(best) = outcome.schedule() else {
            println!("{name}\tno plan\t{outcome:?}");
            continue;
        };
        let bound = outcome.bound().unwrap();
        let broken = violations(&problem, &best.to_plan(&problem, bound));
        assert!(broken.is_empty(), "{name}: {broken:?}");
        let first = rows.first().map_or(f64::NAN, |r| r.0);
        let last = rows.last().map_or(f64::NAN, |r| r.0);
        println!(
            "{name}\t{}\t{bound}\t{:.2}%\tfirst {first:.3}\tlast {last:.3}\tM {} W {}\ttook {took:.2}",
            best.cost(),
            100.0 * (best.cost() - bound) as f64 / best.cost() as f64,
            best.makespan_s(),
            best.walking_s()
        );
    }
}

/// A plain plan, a robust one and a tidied one beside each other.
fn report_robust(file: &str, problem: &Problem, limits: &Limits, seconds: f64) {
    let name = std::path::Path::new(file).file_stem().unwrap().to_string_lossy().into_owned();
    let watch = Watch { began: Instant::now(), seconds, rows: Mutex::default() };
    let plain = solve(problem, limits, &watch);
    let plain = plain.schedule().unwrap();
    let before = simulate(problem, plain, 4000, 99);
    let watch = Watch { began: Instant::now(), seconds: 100.0, rows: Mutex::default() };
    let robust = solve_robust(problem, limits, &watch, Target::default()).unwrap();
    let took = watch.began.elapsed().as_secs_f64();
    let neat = tidy(problem, plain, plain.cost() * 1005 / 1000, 200_000, 1);
    println!(
        "{name}\tplain {} late {:.3}\trobust {} late {:.3} reserve {:.2} met {} took {took:.2}\thabits {:?} -> {:?} cost {}",
        plain.cost(),
        before.late_chance,
        robust.schedule.cost(),
        robust.lateness.late_chance,
        robust.reserve,
        robust.met,
        habits(problem, plain),
        habits(problem, &neat),
        neat.cost(),
    );
}
