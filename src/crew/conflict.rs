//! Why a problem has no plan, in sentences.
//!
//! A conflict lies inside one part ([`super::parts`]). From an infeasible part everything is taken out that is not needed for
//! there to be no plan: operations, then longest waits, whole lags, wet entries, close pairs (a deletion filter; Chinneck and
//! Dravnieks 1991). What is left can't be kept together, and leaving any of it out would allow a plan.

use super::consts::CONFLICT_NODES;
use super::exact::{self, Answer};
use super::model::Model;
use super::outcome::Conflict;
use super::problem::Problem;
use super::spec::{LagSpec, ProblemSpec};
use crate::say;
use crate::units::listed;

/// The conflict inside one infeasible part.
pub(crate) fn explain(problem: &Problem, part: &[usize]) -> Conflict {
    let mut left = problem.only(part);
    for o in (0..left.len()).rev() {
        let others: Vec<usize> = (0..left.len()).filter(|&x| x != o).collect();
        if !others.is_empty() {
            keep_if_impossible(&mut left, |now| now.only(&others));
        }
    }
    for lag in (0..left.spec().lags.len()).rev() {
        keep_if_impossible(&mut left, |now| now.changed(|spec| spec.lags[lag].max_s = None));
        keep_if_impossible(&mut left, |now| now.changed(|spec| drop(spec.lags.remove(lag))));
    }
    for wet in (0..left.spec().wet.len()).rev() {
        for entry in (0..left.spec().wet[wet].blocks.len()).rev() {
            keep_if_impossible(&mut left, |now| now.changed(|spec| drop(spec.wet[wet].blocks.remove(entry))));
        }
    }
    for close in (0..left.spec().close.len()).rev() {
        keep_if_impossible(&mut left, |now| now.changed(|spec| drop(spec.close.remove(close))));
    }
    describe(problem.spec(), left.spec())
}

/// Whether there is no plan; false when that can't be said within the allowance.
pub(crate) fn impossible(problem: &Problem) -> bool {
    exact::search(&Model::new(problem), i64::MAX, CONFLICT_NODES, &mut || true) == Answer::Complete(None)
}

fn keep_if_impossible(left: &mut Problem, change: impl Fn(&Problem) -> Problem) {
    let less = change(left);
    if impossible(&less) {
        *left = less;
    }
}

fn describe(whole: &ProblemSpec, left: &ProblemSpec) -> Conflict {
    let mut places = Vec::new();
    let mut reasons = Vec::new();
    for lag in &left.lags {
        let at = whole.lags.iter().position(|l| l.from == lag.from && l.to == lag.to && l.min_s == lag.min_s);
        places.extend(at.map(|at| format!("lags[{at}]")));
        let takes = left.operations.iter().find(|o| o.id == lag.to).map_or(0, |o| o.duration_s);
        reasons.push(lag_in_words(lag, takes));
    }
    for wet in left.wet.iter().filter(|w| !w.blocks.is_empty()) {
        let at = whole.wet.iter().position(|w| w.from == wet.from && w.to == wet.to);
        places.extend(at.map(|at| format!("wet[{at}]")));
        let (blocked, from, to) = (listed(&wet.blocks), wet.from.as_str(), wet.to.as_str());
        reasons.push(say!("crew-out-of-reach", blocked = blocked, from = from, to = to));
    }
    for [a, b] in &left.close {
        let at = whole.close.iter().position(|[x, y]| x == a && y == b);
        places.extend(at.map(|at| format!("close[{at}]")));
        reasons.push(say!("crew-stances-close", one = a, other = b));
    }
    let operations: Vec<String> = left.operations.iter().map(|o| o.id.clone()).collect();
    if places.is_empty() {
        let index = |id: &String| whole.operations.iter().position(|o| o.id == *id);
        places.extend(operations.iter().filter_map(index).map(|at| format!("operations[{at}]")));
    }
    let people = left.operations.len() > 2;
    let sentence = match reasons.as_slice() {
        [] if people => say!("crew-cannot-people", operations = listed(&operations)),
        [] => say!("crew-cannot", operations = listed(&operations)),
        [one] if people => say!("crew-cannot-keep-people", reason = one),
        [one] => say!("crew-cannot-keep", reason = one),
        many if people => say!("crew-cannot-keep-all-people", reasons = many.join("; ")),
        many => say!("crew-cannot-keep-all", reasons = many.join("; ")),
    };
    Conflict { places, operations, sentence }
}

/// A lag as a sentence without a full stop; its second operation takes `takes` seconds.
fn lag_in_words(lag: &LagSpec, takes: i64) -> String {
    let LagSpec { from, to, min_s: wait, max_s } = lag;
    let least = wait + takes;
    match (*wait, *max_s) {
        (0, None) => say!("crew-after", to = to, from = from),
        (0, Some(most)) if least > most => {
            say!("crew-after-short", to = to, from = from, takes = takes, least = least, most = most)
        }
        (0, Some(most)) => say!("crew-after-window", to = to, from = from, takes = takes, most = most),
        (wait, None) => say!("crew-waits", to = to, wait = wait, from = from),
        (wait, Some(most)) if least > most => {
            say!("crew-waits-short", to = to, wait = wait, from = from, takes = takes, least = least, most = most)
        }
        (wait, Some(most)) => {
            say!("crew-waits-window", to = to, wait = wait, from = from, takes = takes, most = most)
        }
    }
}
