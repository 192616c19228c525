//! A first plan: panel after panel along the shortest steps, each window closed before the next panel is begun in the list.
//!
//! The list does not say that people wait for each other: whoever is free goes on with the next panel as soon as nobody is in
//! the way. Closing each window in the list is what makes the plan valid whatever the windows are.

use super::consts::{CONFLICT_NODES, FIRST_TRIES};
use super::exact::{self, Answer};
use super::model::Model;
use super::order::Order;
use super::parts::parts;
use super::problem::Problem;
use super::random::Random;
use super::split::split;

/// What could be found out about a first plan.
#[derive(Debug)]
pub(crate) enum First {
    /// Valid plans, the cheapest first; at least one.
    Found(Vec<Order>),
    /// Parts of the problem, of which none has a plan.
    Impossible(Vec<Vec<usize>>),
    /// Neither within the allowance.
    Unclear,
}

/// Valid plans, or why there are none: split among teams, greedily, and if that fails part after part, each solved exactly.
pub(crate) fn first(problem: &Problem, model: &Model, random: &mut Random) -> First {
    let parts = parts(model);
    let most_teams = model.able.iter().map(Vec::len).max().unwrap_or(1);
    let mut orders: Vec<Order> = (1..=most_teams).flat_map(|teams| split(model, &parts, teams)).collect();
    orders.extend(first_order(model, random, if orders.is_empty() { FIRST_TRIES } else { 1 }));
    if orders.is_empty() {
        match one_after_the_other(problem, model, &parts) {
            Ok(order) => orders.push(order),
            Err(no_plan) => return no_plan,
        }
    }
    orders.sort_by_key(Order::cost);
    First::Found(orders)
}

/// Part after part, each solved exactly.
fn one_after_the_other(problem: &Problem, model: &Model, parts: &[Vec<usize>]) -> Result<Order, First> {
    let (mut list, mut worker) = (Vec::with_capacity(model.n), vec![0; model.n]);
    let (mut impossible, mut unclear) = (Vec::new(), false);
    for part in parts {
        match exact::search(&Model::new(&problem.only(part)), i64::MAX, CONFLICT_NODES, &mut || true) {
            Answer::Complete(None) => impossible.push(part.clone()),
            Answer::Stopped(None) => unclear = true,
            Answer::Complete(Some(sequence)) | Answer::Stopped(Some(sequence)) => {
                for o in sequence.list {
                    list.push(part[o as usize] as u32);
                    worker[part[o as usize]] = sequence.worker[o as usize];
                }
            }
        }
    }
    if !impossible.is_empty() {
        return Err(First::Impossible(impossible));
    }
    if unclear {
        return Err(First::Unclear);
    }
    Order::new(model, list, worker).ok_or(First::Unclear)
}

/// Tries a few times, the first time greedily, then more and more by chance.
fn first_order(model: &Model, random: &mut Random, tries: u32) -> Option<Order> {
    (0..tries).find_map(|attempt| {
        let (list, worker) = greedy(model, random, attempt)?;
        Order::new(model, list, worker)
    })
}

fn greedy(model: &Model, random: &mut Random, attempt: u32) -> Option<(Vec<u32>, Vec<u8>)> {
    let n = model.n;
    let mut list: Vec<u32> = Vec::with_capacity(n);
    let mut worker = vec![0_u8; n];
    let mut placed = vec![false; n];
    let mut waits: Vec<usize> = (0..n).map(|o| model.before.of(o).len()).collect();
    let mut load = vec![0_i64; model.workers];
    let mut stands: Vec<Option<usize>> = vec![None; model.workers];
    let mut urgent = vec![false; n];
    while list.len() < n {
        let blocked = |o: usize| model.blocked_by.of(o).iter().any(|&(f, t)| placed[f as usize] && !placed[t as usize]);
        let last = list.last().map(|&o| o as usize);
        let noise = |random: &mut Random| if attempt == 0 { 0 } else { random.below(2 + attempt as usize) as i32 };
        let mut best: Option<(bool, bool, i32, usize)> = None;
        for o in (0..n).filter(|&o| !placed[o] && waits[o] == 0) {
            let away = last.map_or(0, |l| model.walk(l, o)) + noise(random);
            let key = (blocked(o), !urgent[o], away, o);
            if best.is_none_or(|b| key < b) {
                best = Some(key);
            }
        }
        let (_, _, _, o) = best?;
        let walk = |w: usize| stands[w].map_or(0, |s: usize| i64::from(model.walk(s, o)));
        let w = model.able[o].iter().copied().min_by_key(|&w| load[w] + walk(w))?;
        load[w] += walk(w) + i64::from(model.duration[o]);
        stands[w] = Some(o);
        worker[o] = w as u8;
        placed[o] = true;
        list.push(o as u32);
        for &(later, _) in model.after.of(o) {
            waits[later as usize] -= 1;
        }
        for window in model.windows.iter().filter(|w| w.from as usize == o) {
            urgent[window.to as usize] = true;
        }
    }
    Some((list, worker))
}
