//! A first plan: panel after panel along the shortest steps, each window closed before the next panel is begun in the list.
//!
//! The list does not say that people wait for each other: whoever is free goes on with the next panel as soon as nobody is in
//! the way. Closing each window in the list is what makes the plan valid whatever the windows are.

use super::model::Model;
use super::order::Order;
use super::random::Random;

/// Tries a few times, the first time greedily, then more and more by chance.
pub(crate) fn first_order(model: &Model, random: &mut Random, tries: u32) -> Option<Order> {
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
