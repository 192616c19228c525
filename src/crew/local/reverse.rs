//! Move: let one worker do a stretch of the way in the other direction.

use super::change::Change;
use crate::crew::model::Model;
use crate::crew::order::Order;
use crate::crew::random::Random;

/// Two to eight operations of one worker; the others keep their places. False when there is nothing to change.
pub(crate) fn apply(
    model: &Model,
    order: &mut Order,
    random: &mut Random,
    change: &mut Change,
    places: &mut Vec<usize>,
) -> bool {
    let from = random.below(model.n);
    let count = 2 + random.below(7);
    let worker = order.worker[order.list[from] as usize];
    places.clear();
    places.extend((from..model.n).filter(|&p| order.worker[order.list[p] as usize] == worker).take(count));
    let (Some(&first), Some(&last)) = (places.first(), places.last()) else { return false };
    if first == last {
        return false;
    }
    change.begin(order, first, last);
    for k in 0..places.len() / 2 {
        order.list.swap(places[k], places[places.len() - 1 - k]);
    }
    change.settle(order);
    true
}
