//! Move: let two operations of one worker change places.

use super::change::Change;
use super::near::Near;
use crate::crew::model::Model;
use crate::crew::order::Order;
use crate::crew::random::Random;

/// With an operation that lies near or comes soon. False when there is nothing to change.
pub(crate) fn apply(model: &Model, near: &Near, order: &mut Order, random: &mut Random, change: &mut Change) -> bool {
    let x = random.below(model.n);
    let at = order.place[x] as usize;
    let others = &near.operations[x];
    let other = if others.is_empty() || random.below(2) == 0 {
        let reach = 1 + random.below(super::anneal::REACH.min(model.n));
        let other = (at + reach) % model.n;
        if order.worker[order.list[other] as usize] != order.worker[x] {
            return false;
        }
        other
    } else {
        let y = others[random.below(others.len())] as usize;
        if order.worker[y] != order.worker[x] {
            return false;
        }
        order.place[y] as usize
    };
    if other == at {
        return false;
    }
    change.begin(order, at.min(other), at.max(other));
    order.list.swap(at, other);
    change.settle(order);
    true
}
