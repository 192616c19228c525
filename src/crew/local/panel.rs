//! Move: take one layer, or all layers, of a panel out and put each operation next to the same one of another panel.

use super::change::Change;
use super::near::Near;
use crate::crew::model::Model;
use crate::crew::order::Order;
use crate::crew::random::Random;

/// Applying goes next to applying, levelling next to levelling. False when there is nothing to change.
pub(crate) fn apply(model: &Model, near: &Near, order: &mut Order, random: &mut Random, change: &mut Change) -> bool {
    let x = random.below(model.n);
    let others = &near.operations[x];
    if others.is_empty() {
        return false;
    }
    let y = others[random.below(others.len())] as usize;
    let groups = match &near.panels {
        Some(panels) if random.below(2) == 0 => panels,
        _ => &near.layers,
    };
    let (mine, theirs) = (groups.of[x] as usize, groups.of[y] as usize);
    let (mine, theirs) = (&groups.members[mine], &groups.members[theirs]);
    if mine == theirs || mine.len() != theirs.len() || mine.len() < 2 {
        return false;
    }
    let places = mine.iter().chain(theirs).map(|&o| order.place[o as usize] as usize);
    let (from, to) = places.fold((model.n, 0), |(a, b), p| (a.min(p), b.max(p)));
    change.begin(order, from, to);
    let after = random.below(2) == 0;
    for (&x, &y) in mine.iter().zip(theirs) {
        let (at, other) = (order.place[x as usize] as usize, order.place[y as usize] as usize);
        let target = match (at < other, after) {
            (true, false) => other - 1,
            (false, true) => other + 1,
            _ => other,
        };
        if at != target {
            Change::carry(order, at, target);
            for place in at.min(target)..=at.max(target) {
                order.place[order.list[place] as usize] = place as u32;
            }
        }
        if order.worker[x as usize] != order.worker[y as usize]
            && model.able[x as usize].contains(&usize::from(order.worker[y as usize]))
        {
            change.assign(order, x as usize, usize::from(order.worker[y as usize]));
        }
    }
    true
}
