//! Move: give an operation to another worker.

use super::change::Change;
use super::near::Near;
use crate::crew::model::Model;
use crate::crew::order::Order;
use crate::crew::random::Random;

/// At the same place of the list. False when only one worker may do anything.
pub(crate) fn apply(model: &Model, near: &Near, order: &mut Order, random: &mut Random, change: &mut Change) -> bool {
    if near.shared.is_empty() {
        return false;
    }
    let x = near.shared[random.below(near.shared.len())] as usize;
    let able = &model.able[x];
    let worker = able[random.below(able.len())];
    if worker == usize::from(order.worker[x]) {
        return false;
    }
    let place = order.place[x] as usize;
    change.begin(order, place, place);
    change.assign(order, x, worker);
    true
}
