//! Geometry: the map of a vehicle as curved outlines, what is under the pointer, and how the map lies on the screen.
//!
//! Three spaces that the types keep apart:
//! - **map**: the vehicle unfolded flat, in mm. x runs from the front of the vehicle rearward, y = 0 is the centreline, +y is
//!   the vehicle's left as seen from the seat facing forward. Map area is not panel area: what is folded is not stretched.
//! - **floor**: the shop floor seen from above, in mm, same axes, real distances; where people stand and walk.
//! - **screen**: points of the window, y downwards.
//!
//! Coordinates are `f32`: at 15 m the step between neighbouring values is 0.001 mm.
//!
//! This module knows curves, not vehicles.

mod beside;
mod crossing;
mod curve;
mod hatch;
mod hit;
mod label;
mod outline;
mod space;
mod spline;
mod viewport;

pub use beside::free_place;
pub use crossing::{Crossing, crossings};
pub use curve::MapCurve;
pub use hatch::hatch_lines;
pub use label::LabelPlace;
pub use outline::{Outline, OutlineError};
pub use space::{
    FloorPoint, FloorSpace, FloorVector, MapPoint, MapRect, MapSpace, MapVector, ScreenPoint, ScreenRect, ScreenSpace,
    ScreenVector,
};
pub use spline::{Knot, smooth_line};
pub use viewport::{Orientation, Viewport};
