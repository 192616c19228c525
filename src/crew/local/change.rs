//! A change of an order that can be taken back.

use crate::crew::order::{Order, Stretch};

/// Remembers a stretch of the list and the workers it changed.
#[derive(Debug, Default)]
pub(crate) struct Change {
    /// First changed place.
    pub(crate) from: usize,
    /// Last changed place.
    pub(crate) to: usize,
    saved: Vec<u32>,
    workers: Vec<(u32, u8)>,
}

impl Change {
    /// Starts a change of the places `from..=to`.
    pub(crate) fn begin(&mut self, order: &Order, from: usize, to: usize) {
        self.from = from;
        self.to = to;
        self.saved.clear();
        self.saved.extend_from_slice(&order.list[from..=to]);
        self.workers.clear();
    }

    /// Gives an operation to another worker; its place lies inside the change.
    pub(crate) fn assign(&mut self, order: &mut Order, operation: usize, worker: usize) {
        self.workers.push((operation as u32, order.worker[operation]));
        order.worker[operation] = worker as u8;
    }

    /// Tells the order the new places of the stretch.
    pub(crate) fn settle(&self, order: &mut Order) {
        for place in self.from..=self.to {
            order.place[order.list[place] as usize] = place as u32;
        }
    }

    /// What an order has to look at again.
    pub(crate) fn stretch(&self) -> Stretch {
        Stretch { from: self.from, to: self.to, reassigned: !self.workers.is_empty() }
    }

    /// Puts everything back.
    pub(crate) fn undo(&self, order: &mut Order) {
        order.list[self.from..=self.to].copy_from_slice(&self.saved);
        self.settle(order);
        for &(operation, worker) in self.workers.iter().rev() {
            order.worker[operation as usize] = worker;
        }
    }

    /// Moves the operation at place `at` to place `target`, the ones between by one. Both lie inside the change.
    pub(crate) fn carry(order: &mut Order, at: usize, target: usize) {
        if at < target {
            order.list[at..=target].rotate_left(1);
        } else {
            order.list[target..=at].rotate_right(1);
        }
    }
}
