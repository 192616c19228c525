//! What can be wished for while the vehicle is changed.

use crate::geometry::{FloorPoint, MapPoint};
use crate::vehicle::{PanelId, Skip, Substrate};

/// A wish about the vehicle itself.
#[derive(Debug, Clone, PartialEq)]
pub(in crate::gui) enum VehicleWish {
    /// Begins to change a copy of the vehicle.
    Begin,
    /// A place where the chosen panel is to be cut: the first, then the second.
    CutPoint(MapPoint),
    /// Cuts the chosen panel through its middle.
    CutMiddle(Way),
    /// Makes one panel of two.
    Merge(PanelId, PanelId),
    /// Leaves the chosen panels out, or takes them in again.
    Skip(Option<Skip>),
    /// What the chosen panels are made of.
    Substrate(Substrate),
    /// Where the chosen panels are worked from.
    WorkedFrom(String),
    /// Chooses a stance, or none.
    ChooseStance(Option<String>),
    /// Moves a stance; steps of one movement are undone together.
    MoveStance {
        stance: String,
        to: FloorPoint,
        by_keys: bool,
    },
    Undo,
    Redo,
    /// Leaves without saving, asking first if something was changed.
    Cancel,
    /// Leaves without saving.
    Drop,
    /// Asks for a name to save under.
    AskName,
    /// Saves under a name, and lets the job use the new vehicle.
    SaveAs(String),
    /// Asks whether to save over the vehicle of one's own that is being changed.
    AskReplace,
    /// Saves over it.
    Replace,
    /// Shows the vehicles of one's own.
    ShowOwn,
    /// Asks whether to delete a vehicle of one's own, by its id.
    AskDelete(String),
    /// Deletes it.
    Delete(String),
}

/// How a cut runs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::gui) enum Way {
    /// From side to side, so that a front and a rear part come of it.
    Across,
    /// From front to rear, so that an upper and a lower part come of it.
    Along,
}
