//! Why an operation comes when it does, from the rules alone.

use super::model::Model;
use super::order::Order;
use super::problem::Problem;
use super::schedule::{Row, Schedule};
use crate::say;
use crate::units::{Seconds, clock};

/// What keeps an operation from starting earlier.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hold {
    /// Nothing: it starts at 0.
    Nothing,
    /// The same worker is busy with another operation, then walks.
    Busy {
        /// Index of that operation.
        operation: usize,
        /// Seconds of walking after it.
        walk_s: Seconds,
    },
    /// Another worker stands too close.
    Close {
        /// Index of the operation that has to end first.
        operation: usize,
    },
    /// A shortest wait is not over.
    Wait {
        /// Index of the operation it is counted from.
        operation: usize,
        /// The shortest wait, in seconds.
        min_s: Seconds,
    },
    /// It means leaning over a panel that is wet until this operation ends, or it makes wet what this one must reach before.
    Wet {
        /// Index of the operation that has to end first.
        operation: usize,
    },
    /// Started earlier, the window after it would be over before this operation could end.
    Window {
        /// Index of the operation that closes the window.
        operation: usize,
        /// The longest wait, in seconds.
        max_s: Seconds,
    },
    /// No rule: it could start earlier without harm to itself.
    Loose,
}

/// Why one operation comes when it does.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Explanation {
    /// The rule that holds it.
    pub hold: Hold,
    /// Seconds its worker stands still before it, walking not counted.
    pub stands_still_s: Seconds,
    /// Index of the worker waited for, when somebody else is in the way.
    pub waits_for: Option<usize>,
    /// All of it in one sentence, with the names of the problem.
    pub sentence: String,
}

/// Explains an operation (by index) of a valid plan.
pub fn explain(problem: &Problem, schedule: &Schedule, operation: usize) -> Explanation {
    let rows = schedule.by_operation();
    let row = rows[operation];
    let own = schedule.rows_of(row.worker).take_while(|r| r.operation != operation).last().copied();
    let walk = |from: &Row| walk(problem, from.operation, operation);
    let free = own.map_or(0, |r| r.interval.end + walk(&r));
    let hold = hold(problem, schedule, &rows, operation, own);
    let waits_for = match hold {
        Hold::Close { operation } | Hold::Wet { operation } | Hold::Wait { operation, .. } => {
            Some(rows[operation].worker)
        }
        Hold::Nothing | Hold::Busy { .. } | Hold::Window { .. } | Hold::Loose => None,
    };
    let waits_for = waits_for.filter(|&w| w != row.worker);
    let stands_still_s = row.interval.start - free;
    let sentence = sentence(problem, &rows, operation, hold, stands_still_s);
    Explanation { hold, stands_still_s, waits_for, sentence }
}

/// All moments at which somebody stands still for a rule, in the order of the plan.
pub fn waits(problem: &Problem, schedule: &Schedule) -> Vec<(usize, Explanation)> {
    let all = schedule.rows().iter().map(|r| (r.operation, explain(problem, schedule, r.operation)));
    all.filter(|(_, e)| e.stands_still_s > 0).collect()
}

/// What the plan would cost more (less, if negative) if `operation` came right after `after`, by the worker of `after`, or first
/// of all its worker does; everything else keeps its order. `None` when that order breaks a rule.
pub fn cost_of_moving(problem: &Problem, schedule: &Schedule, operation: usize, after: Option<usize>) -> Option<i64> {
    let rows = schedule.by_operation();
    let mut worker: Vec<u8> = rows.iter().map(|r| r.worker as u8).collect();
    let mut list: Vec<u32> =
        schedule.rows().iter().map(|r| r.operation).filter(|&o| o != operation).map(|o| o as u32).collect();
    let to = match after {
        Some(after) if after == operation => return None,
        Some(after) => {
            if !problem.operations[operation].able.contains(&rows[after].worker) {
                return None;
            }
            worker[operation] = worker[after];
            list.iter().position(|&o| o as usize == after)? + 1
        }
        None => 0,
    };
    list.insert(to, operation as u32);
    let order = Order::new(&Model::new(problem), list, worker)?;
    Some(order.cost() - schedule.cost())
}

fn walk(problem: &Problem, from: usize, to: usize) -> Seconds {
    Seconds::from(problem.walk(problem.operations[from].stance, problem.operations[to].stance))
}

fn hold(problem: &Problem, schedule: &Schedule, rows: &[Row], operation: usize, own: Option<Row>) -> Hold {
    let row = rows[operation];
    let start = row.interval.start;
    if start == 0 {
        return Hold::Nothing;
    }
    if let Some(own) = own {
        let walk_s = walk(problem, own.operation, operation);
        if own.interval.end + walk_s == start {
            return Hold::Busy { operation: own.operation, walk_s };
        }
    }
    for lag in problem.lags.iter().filter(|l| l.to == operation) {
        let min_s = Seconds::from(lag.min);
        if rows[lag.from].interval.end + min_s == start {
            return Hold::Wait { operation: lag.from, min_s };
        }
    }
    let stance = |o: usize| problem.operations[o].stance;
    let ends_here = |o: usize| rows[o].interval.end == start;
    let close = schedule.rows().iter().find(|r| {
        r.worker != row.worker && ends_here(r.operation) && problem.close(stance(r.operation), stance(operation))
    });
    if let Some(other) = close {
        return Hold::Close { operation: other.operation };
    }
    for wet in &problem.wet {
        if wet.blocked == operation && ends_here(wet.to) {
            return Hold::Wet { operation: wet.to };
        }
        if wet.from == operation && ends_here(wet.blocked) {
            return Hold::Wet { operation: wet.blocked };
        }
    }
    let window = problem.lags.iter().find(|l| {
        l.from == operation && l.max.is_some_and(|max| rows[l.to].interval.end == row.interval.end + Seconds::from(max))
    });
    match window.and_then(|l| l.max.map(|max| (l.to, Seconds::from(max)))) {
        Some((to, max_s)) => Hold::Window { operation: to, max_s },
        None => Hold::Loose,
    }
}

fn sentence(problem: &Problem, rows: &[Row], operation: usize, hold: Hold, still: Seconds) -> String {
    let name = |o: usize| problem.operation_id(o);
    let who = |o: usize| problem.worker_id(rows[o].worker);
    let (this, me) = (name(operation), who(operation));
    let at = clock(rows[operation].interval.start);
    let because = match hold {
        Hold::Nothing => return say!("crew-begins-with", this = this, worker = me),
        Hold::Busy { operation: o, walk_s: 0 } => say!("crew-busy", worker = me, other = name(o)),
        Hold::Busy { operation: o, walk_s } => {
            say!("crew-busy-walks", worker = me, other = name(o), seconds = walk_s)
        }
        Hold::Close { operation: o } => say!("crew-too-close", worker = who(o), other = name(o)),
        Hold::Wait { operation: o, min_s: 0 } => say!("crew-comes-first", other = name(o), worker = who(o)),
        Hold::Wait { operation: o, min_s } => {
            say!("crew-has-to-pass", seconds = min_s, other = name(o), worker = who(o))
        }
        Hold::Wet { operation: o } => say!("crew-between-wet", other = name(o)),
        Hold::Window { operation: o, max_s } => {
            say!("crew-window-closes", other = name(o), seconds = max_s)
        }
        Hold::Loose => say!("crew-loose").to_owned(),
    };
    if still > 0 {
        say!("crew-starts-late", this = this, at = at, because = because, worker = me, seconds = still)
    } else {
        say!("crew-starts", this = this, at = at, because = because)
    }
}
