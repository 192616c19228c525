//! Move: take one operation out and put it right before or after another one.

use super::change::Change;
use super::near::Near;
use crate::crew::model::Model;
use crate::crew::order::Order;
use crate::crew::random::Random;

/// Next to an operation that lies near, or a few places along the list. False when there is nothing to change.
pub(crate) fn apply(model: &Model, near: &Near, order: &mut Order, random: &mut Random, change: &mut Change) -> bool {
    let x = random.below(model.n);
    let at = order.place[x] as usize;
    let others = &near.operations[x];
    let target = if others.is_empty() || random.below(2) == 0 {
        let reach = 1 + random.below(super::anneal::REACH.min(model.n));
        if random.below(2) == 0 { at.saturating_sub(reach) } else { (at + reach).min(model.n - 1) }
    } else {
        let other = order.place[others[random.below(others.len())] as usize] as usize;
        // right before it or right after it, seen without x
        match (at < other, random.below(2) == 0) {
            (true, true) => other - 1,
            (false, false) => other + 1,
            _ => other,
        }
    };
    if target == at {
        return false;
    }
    change.begin(order, at.min(target), at.max(target));
    Change::carry(order, at, target);
    change.settle(order);
    true
}
