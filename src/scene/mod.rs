//! The map and the time chart as shapes with a meaning: which panel is filled how, which symbol stands where.
//!
//! No colours and no screen here. The window, and later paper, turn a role ("over budget", "second worker") into a colour, a
//! hatch and a line; so one drawing can't say two things.

mod bay;
mod body;
mod chart;
mod drawing;
mod film;
mod map;
mod order;
mod polishing;
mod practice;
mod work;

pub use bay::{
    BayFacts, BayScene, Card, CardState, Doing, LapPlaceRow, LapRow, LapScene, WindowPhase, WindowRow, bay_map,
    bay_scene, lap_map, lap_scene,
};
pub use chart::{Bar, Lane, TimeChart, WindowBand, time_chart};
pub use drawing::{HATCH_MM, SeamKind, hatch_of, inside_of, is_rear_lamp, is_shape_only};
pub use map::{
    Badge, DefectClass, Fill, Here, LegendRow, LegendSymbol, MapScene, Overlay, PanelMark, Pin, PinShape, Waypoint,
    map_scene,
};
pub use polishing::{polish_chart, polish_order_map};
pub use practice::{PanelState, PracticeFacts, practice_map};
pub use work::Work;
