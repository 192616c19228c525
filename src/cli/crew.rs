//! `lapwright crew PROBLEM.json`

use super::{Exit, Failure, Output, args};
use crate::crew::{Limits, Outcome, Problem, ReadError};
use crate::file::{RealDisk, read_text, write_text};
use crate::say;
use crate::words::shortest;
use crate::work::solve_for;
use std::path::Path;
use std::sync::Mutex;
use std::sync::atomic::{AtomicBool, Ordering};

/// Solves a crew problem, telling of every improvement.
pub(super) fn run(args: &args::Crew, out: &mut Output<'_>) -> Result<Exit, Failure> {
    let problem = read(&args.problem)?;
    let limits = Limits { nodes: None, threads: usize::from(args.threads), seed: args.seed };
    let lines = Mutex::new(Vec::new());
    // Improvements arrive on the threads that search; only this thread may write, so a line waits for the next chance.
    let report = |seconds: f64, cost: i64, bound: i64| {
        if let Ok(mut lines) = lines.lock() {
            lines.push(format!("{seconds:.3} {cost} {bound}"));
        }
    };
    let stop = AtomicBool::new(false);
    let outcome = std::thread::scope(|scope| {
        let search = std::thread::Builder::new().name("solve-crew".to_owned()).spawn_scoped(scope, || {
            solve_for(&problem, &limits, args.seconds, &stop, &|s, best, bound| report(s, best.cost(), bound))
        });
        let search =
            search.map_err(|e| Failure::new(say!("cli-no-thread", why = e.to_string()), say!("cli-no-thread-do")))?;
        while !search.is_finished() {
            std::thread::sleep(std::time::Duration::from_millis(5));
            if let Err(closed) = flush(&lines, out) {
                stop.store(true, Ordering::Relaxed);
                return Err(closed.into());
            }
        }
        // What a panic had to say is on stderr already.
        search.join().ok().ok_or_else(|| Failure::new(say!("cli-planner-stopped"), say!("cli-planner-stopped-do")))
    })?;
    flush(&lines, out)?;
    let (best, bound) = match outcome {
        Outcome::Optimal(best) => {
            let cost = best.cost();
            writeln!(out.notes, "optimal {cost}")?;
            (best, cost)
        }
        Outcome::Feasible { best, bound } => {
            writeln!(out.notes, "feasible {} bound {bound}", best.cost())?;
            (best, bound)
        }
        Outcome::Infeasible(conflicts) => {
            for conflict in conflicts {
                writeln!(out.data, "{conflict}")?;
            }
            return Ok(Exit::Findings);
        }
        Outcome::Unknown { bound } => {
            let seconds = shortest(args.seconds);
            writeln!(out.data, "{}", say!("cli-crew-no-plan", seconds = seconds, bound = bound))?;
            return Ok(Exit::Findings);
        }
    };
    let text = serde_json::to_string_pretty(&best.to_plan(&problem, bound))
        .map_err(|e| Failure::new(e.to_string(), say!("cli-report")))?;
    match &args.plan {
        Some(path) => {
            write_text(&RealDisk, path, &format!("{text}\n"))?;
        }
        None => writeln!(out.data, "{text}")?,
    }
    Ok(Exit::Fine)
}

/// Reads a crew problem.
///
/// # Errors
/// A [`Failure`] with place and hint.
fn read(path: &Path) -> Result<Problem, Failure> {
    let text = read_text(&RealDisk, path)?;
    Problem::from_json(&text).map_err(|error| unusable(&path.display().to_string(), &error))
}

/// A text that is no crew problem, with the place of the first thing wrong.
pub(super) fn unusable(name: &str, error: &ReadError) -> Failure {
    match error {
        ReadError::Syntax { line, column, path, message } => {
            let at_top = path.is_empty() || path == ".";
            let message = if at_top { message.clone() } else { say!("file-at-field", message = message, field = path) };
            Failure::new(format!("{name}:{line}:{column}: {message}"), say!("cli-mend-place"))
        }
        ReadError::Invalid(findings) => match findings.split_first() {
            Some((first, rest)) => {
                let action = match rest.len() {
                    0 => first.action.clone(),
                    count => say!("cli-lists-more", first = first.action.as_str(), count = count),
                };
                Failure::new(format!("{name}: {}: {}", first.place, first.cause), action)
            }
            None => Failure::new(say!("cli-not-usable", name = name), say!("cli-check-file")),
        },
    }
}

fn flush(lines: &Mutex<Vec<String>>, out: &mut Output<'_>) -> std::io::Result<()> {
    let waiting = lines.lock().map(|mut l| std::mem::take(&mut *l)).unwrap_or_default();
    waiting.iter().try_for_each(|line| writeln!(out.notes, "{line}"))
}
