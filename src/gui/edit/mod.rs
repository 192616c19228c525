//! Changing the vehicle itself: cut a panel, make one of two, leave some out, move a stance; saved as a vehicle of one's own.
//!
//! All of it goes on on a copy. While it does, the window shows that copy, and what it showed before is kept here; leaving
//! without saving puts it back.

mod bars;
mod carry_out;
mod floor;
mod history;
mod own;
mod preview;
mod questions;
mod tools;
mod wish;
mod words;

pub(super) use bars::{below_ui, shortcuts, top_ui};
pub(super) use history::History;
pub(super) use preview::cut_preview;
pub(super) use questions::{delete_ui, own_ui, replace_ui};
pub(super) use tools::tools_ui;
pub(super) use wish::VehicleWish;

use super::action::SpotPlaces;
use super::view_state::ViewState;
use crate::geometry::MapPoint;
use crate::insight::Insight;
use crate::job::Job;
use crate::vehicle::Template;
use std::sync::Arc;

/// Height of the part below the map that shows the floor.
pub(super) const FLOOR_HEIGHT: f32 = 208.0;

/// A vehicle being changed.
#[derive(Debug)]
pub(super) struct Editing {
    pub(super) history: History,
    /// The job with its records on the changed panels, to be looked at only.
    pub(super) job: Arc<Job>,
    /// Where a cut begins, once that is marked.
    first: Option<MapPoint>,
    /// The stance that is chosen.
    stance: Option<String>,
    /// What came of the last wish.
    said: Option<Said>,
    before: Before,
}

/// What the window showed before.
#[derive(Debug)]
struct Before {
    template: Arc<Template>,
    insight: Insight,
    spots: SpotPlaces,
    view: ViewState,
}

/// What came of a wish, as a sentence.
#[derive(Debug, Clone, PartialEq, Eq)]
enum Said {
    Done(String),
    Refused(String),
}
