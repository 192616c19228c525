//! How long it takes from the start of each operation to the last end, whatever comes before it.

use super::{NONE, Order};
use crate::crew::model::Model;

impl Order {
    /// Longest ways to the end, backwards through the list; those from place `to` on have not changed. Windows are left out, so
    /// they are lower bounds.
    pub(super) fn tails(&mut self, model: &Model, to: usize) {
        let next = &mut self.trial.last; // here: the next operation of each worker
        next.fill(NONE);
        for &o in self.list[to..].iter().rev() {
            next[usize::from(self.worker[o as usize])] = o;
        }
        for place in (0..to).rev() {
            let x = self.list[place] as usize;
            let w = usize::from(self.worker[x]);
            let own = next[w];
            let mut tail = 0;
            if own != NONE {
                tail = model.walk(x, own as usize) + self.tail[own as usize];
            }
            for &(later, wait) in model.after.of(x) {
                tail = tail.max(wait + self.tail[later as usize]);
            }
            for &blocked in model.frees.of(x) {
                if self.place[blocked as usize] as usize > place {
                    tail = tail.max(self.tail[blocked as usize]);
                }
            }
            for &(wets, _) in model.blocked_by.of(x) {
                if self.place[wets as usize] as usize > place {
                    tail = tail.max(self.tail[wets as usize]);
                }
            }
            for (other, &first) in next.iter().enumerate() {
                if other != w {
                    let mut y = first;
                    while y != NONE && self.tail[y as usize] > tail {
                        if model.close(x, y as usize) {
                            tail = self.tail[y as usize];
                            break;
                        }
                        y = self.next[y as usize];
                    }
                }
            }
            self.tail[x] = tail + model.duration[x];
            self.next[x] = own;
            next[w] = x as u32;
        }
    }
}
