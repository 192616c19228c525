//! How cost and time grow from 20 to 240 panels, for one pair and for two; CP-SAT beside it when python3 has `ortools`.
//!
//! usage: cargo bench --no-default-features --bench crew_growth -- [--quick] [--seconds S] [--no-cpsat]
//! Prints a Markdown table. Seconds are wall-clock, two search threads; memory is the peak of this process so far.

#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a tool for contributors; a missing file may end it")]
#![allow(clippy::allow_attributes, reason = "the table of kinds is used elsewhere")]
#![allow(dead_code, reason = "as above")]

mod invent;

use lapwright::crew::{Control, Limits, Problem, ProblemSpec, Schedule, solve, violations};
use std::process::Command;
use std::sync::Mutex;
use std::time::Instant;

struct Watch {
    began: Instant,
    seconds: f64,
    rows: Mutex<Vec<(f64, i64)>>,
}

impl Control for Watch {
    fn should_stop(&self) -> bool {
        self.began.elapsed().as_secs_f64() >= self.seconds
    }
    fn improved(&self, best: &Schedule, _bound: i64) {
        self.rows.lock().unwrap().push((self.began.elapsed().as_secs_f64(), best.cost()));
    }
}

fn main() {
    let has = |flag: &str| std::env::args().any(|a| a == flag);
    let sizes: &[usize] = if has("--quick") { &[20, 60, 120] } else { &[20, 40, 60, 90, 120, 180, 240] };
    let seconds = std::env::args().skip_while(|a| a != "--seconds").nth(1).map_or(10.0, |s| s.parse().unwrap());
    let reference = !has("--no-cpsat")
        && Command::new("python3").args(["-c", "import ortools"]).output().is_ok_and(|o| o.status.success());
    println!(
        "| people | panels | first plan s | cost at 1 s | at {} s | at {seconds} s | gap % | peak MB | CP-SAT {seconds} s | its bound |",
        seconds / 2.0
    );
    println!("| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |");
    for people in [invent::COMMON.people, invent::TWO_PAIRS] {
        for &panels in sizes {
            let spec = invent::invent(&invent::Kind { people, ..invent::sized(panels) }, 1);
            row(&spec, people.len(), panels, seconds, reference);
        }
    }
}

fn row(spec: &ProblemSpec, people: usize, panels: usize, seconds: f64, reference: bool) {
    let problem = Problem::try_from(spec.clone()).unwrap();
    let watch = Watch { began: Instant::now(), seconds, rows: Mutex::default() };
    let outcome = solve(&problem, &Limits { nodes: None, threads: 2, seed: 1 }, &watch);
    let rows = watch.rows.into_inner().unwrap();
    let (best, bound) = (outcome.schedule().unwrap(), outcome.bound().unwrap());
    assert_eq!(violations(&problem, &best.to_plan(&problem, bound)), []);
    let at = |limit: f64| rows.iter().rev().find(|r| r.0 <= limit).map_or(0, |r| r.1);
    let gap = 100.0 * (best.cost() - bound) as f64 / best.cost() as f64;
    let (other, its_bound) = if reference { cpsat(spec, seconds) } else { ("—".to_owned(), "—".to_owned()) };
    println!(
        "| {people} | {panels} | {:.3} | {} | {} | {} | {gap:.1} | {:.0} | {other} | {its_bound} |",
        rows[0].0,
        at(1.0),
        at(seconds / 2.0),
        best.cost(),
        peak_mb(),
    );
}

/// Peak resident memory of this process, from the kernel; 0 where there is no such file.
fn peak_mb() -> f64 {
    let status = std::fs::read_to_string("/proc/self/status").unwrap_or_default();
    let line = status.lines().find(|l| l.starts_with("VmHWM:")).unwrap_or_default();
    line.split_whitespace().nth(1).and_then(|kb| kb.parse::<f64>().ok()).unwrap_or(0.0) / 1024.0
}

/// Cost and bound of the reference model in `cpsat.py`.
fn cpsat(spec: &ProblemSpec, seconds: f64) -> (String, String) {
    let file = std::env::temp_dir().join(format!("crew-growth-{}.json", std::process::id()));
    std::fs::write(&file, serde_json::to_string(spec).unwrap()).unwrap();
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/benches/crew/cpsat.py");
    let output = Command::new("python3").arg(script).arg(&file).arg(seconds.to_string()).output().unwrap();
    std::fs::remove_file(&file).unwrap();
    let text = String::from_utf8_lossy(&output.stdout).into_owned();
    let mut words = text.split_whitespace().map(str::to_owned);
    let mut next = || words.next().unwrap_or_else(|| "none".to_owned());
    (next(), next())
}
