//! Vehicles: which panels there are, where they lie on the map, where one stands to reach them.
//!
//! A [`Template`] is a planar subdivision: points have names, every curve is stored once between two points, a panel is a loop
//! of point names, the right side mirrors the left. So neighbours meet without gap or overlap, and a seam is a curve that two
//! loops share. Templates are RON files in `vehicle-templates/`, embedded in the program; the format is described at the head
//! of each and in DEVELOPERS.md.
//!
//! What a template states beside its drawing: the real area of every panel (map area is not panel area), what it is made of,
//! how high it sits, where somebody stands on the floor to work it and which panels are leant over meanwhile.
//!
//! This module knows nothing of jobs, readings or plans.

mod build;
mod caution;
mod check;
mod drawing;
mod edit;
mod embedded;
mod entries;
mod feature;
mod id;
mod names;
mod navigate;
mod panel;
mod read;
mod schema;
mod size;
mod template;
mod walk;
mod write;
mod written;

pub use edit::EditError;
pub use embedded::{Embedded, embedded, load_embedded, template_name};
pub use feature::{Feature, FeatureKind, FeatureShape};
pub use id::{PanelId, Side};
pub use names::{Naming, PARTS};
pub use navigate::Direction;
pub use panel::{HeightBand, Panel, Skip, Stance, Substrate, Surface};
pub use read::TemplateError;
pub use schema::BodyClass;
pub use size::Size;
pub use template::{Seam, Template, Wheel};
pub use written::written_at;
