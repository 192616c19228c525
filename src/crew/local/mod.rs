//! Search by small changes of an order: one move a file, one annealing run over all of them.

mod anneal;
mod change;
mod hand_over;
mod near;
mod panel;
mod relocate;
mod reverse;
mod swap;

pub(crate) use anneal::{Annealer, Run};
