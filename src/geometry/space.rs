//! The three spaces and their points.

/// The vehicle unfolded flat, mm; x rearward, y to the vehicle's left.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum MapSpace {}
/// The shop floor seen from above, mm; x rearward from the front of the vehicle, y to its left.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FloorSpace {}
/// The window, points; x to the right, y downwards.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ScreenSpace {}

/// A place on the map, mm.
pub type MapPoint = euclid::Point2D<f32, MapSpace>;
/// A way on the map, mm.
pub type MapVector = euclid::Vector2D<f32, MapSpace>;
/// An upright box on the map, mm.
pub type MapRect = euclid::Box2D<f32, MapSpace>;
/// A place on the floor, mm.
pub type FloorPoint = euclid::Point2D<f32, FloorSpace>;
/// A way on the floor, mm.
pub type FloorVector = euclid::Vector2D<f32, FloorSpace>;
/// A place in the window, points.
pub type ScreenPoint = euclid::Point2D<f32, ScreenSpace>;
/// A way in the window, points.
pub type ScreenVector = euclid::Vector2D<f32, ScreenSpace>;
/// An upright box in the window, points.
pub type ScreenRect = euclid::Box2D<f32, ScreenSpace>;
