//! Quantiles that were worked out before.
//!
//! Every panel of a vehicle is read at about as many spots as the next, so the same few factors are asked for again and again,
//! and each takes dozens of integrals.

use std::cell::RefCell;
use std::collections::HashMap;

/// Answers kept; far more than the panels of one vehicle ask for. A full store is emptied.
const MOST: usize = 512;

/// Which function, and its arguments as bits.
type Key = (&'static str, [u64; 4]);

thread_local! {
    static KNOWN: RefCell<HashMap<Key, f64>> = RefCell::default();
}

/// `work_out` for these arguments, or the answer that it gave on this thread before. `function` keeps functions apart;
/// `work_out` must depend on the arguments alone.
pub(super) fn known_or(function: &'static str, arguments: [f64; 4], work_out: impl FnOnce() -> f64) -> f64 {
    let key = (function, arguments.map(f64::to_bits));
    if let Some(answer) = KNOWN.with_borrow(|known| known.get(&key).copied()) {
        return answer;
    }
    let answer = work_out();
    KNOWN.with_borrow_mut(|known| {
        if known.len() >= MOST {
            known.clear();
        }
        known.insert(key, answer);
    });
    answer
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_answer_is_worked_out_once_and_belongs_to_its_arguments() {
        let asked = std::cell::Cell::new(0);
        let ask = |name, x: f64| {
            known_or(name, [x, 0.0, 0.0, 0.0], || {
                asked.set(asked.get() + 1);
                x * 2.0
            })
        };
        let answers = [ask("twice", 1.5), ask("twice", 1.5), ask("twice", 2.5), ask("double", 1.5)];
        assert_eq!(answers.map(f64::to_bits), [3.0, 3.0, 5.0, 3.0_f64].map(f64::to_bits));
        assert_eq!(asked.get(), 3);
        for x in 0..2 * MOST {
            ask("twice", x as f64);
        }
        assert!(KNOWN.with_borrow(HashMap::len) <= MOST, "the store is bounded");
    }
}
