//! The document: everything people put in, and nothing that can be computed from it.
//!
//! A [`Job`] is plain data behind an [`std::sync::Arc`]; the only way to change one is a [`Command`] applied to a [`Document`],
//! which keeps the snapshots that undo and redo need. What the program works out from a job lives in `insight` and is never
//! stored here.

mod carry;
mod check;
mod choices;
mod command;
mod defect;
mod history;
mod model;
mod paint;
mod photo;
mod refusal;
mod steps;
mod survey;
mod survey_change;
mod survey_check;

pub use carry::carry_over;
pub use check::{check, check_alone};
pub use choices::{Beginning, OrderChoices};
pub use command::{Command, CommandError, GaugeStep, PanelFact, TextField};
pub use defect::{Defect, Extent};
pub use history::{Document, GestureId, Revision};
pub use model::{Customer, Experience, GaugeReading, Job, Member, PanelRecord, Reading, Role, Spot, Vehicle};
pub use paint::PreviousCoating;
pub use photo::PhotoId;
pub use refusal::{cant_read, substrate_of};
pub use survey::{GlossReading, Survey, SurveyCheck, SurveyStage, Suspects};
pub use survey_change::SurveyChange;
