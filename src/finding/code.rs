//! The list of all finding codes. The architecture test holds it against DEVELOPERS.md.

use super::Severity;
use crate::say;
use crate::words::text;
use std::fmt;

macro_rules! codes {
    ($($(#[$doc:meta])* $name:ident = $id:literal, $severity:ident;)*) => {
        /// The kind of a finding. Written and printed as its id, for example `template-overlap`.
        #[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Code {
            $($(#[$doc])* $name,)*
        }

        impl Code {
            /// Every code, in the order of the list.
            pub const ALL: &'static [Self] = &[$(Self::$name,)*];

            /// The id that is printed and that a person asks about.
            pub fn id(self) -> &'static str {
                match self { $(Self::$name => $id,)* }
            }

            /// How much a finding of this kind matters.
            pub fn severity(self) -> Severity {
                match self { $(Self::$name => Severity::$severity,)* }
            }

            /// What it means and what to do, in a few sentences.
            pub fn explanation(self) -> &'static str {
                text(&format!("check-{}", self.id()))
            }
        }
    };
}

codes! {
    /// Two panels of a template share surface.
    TemplateOverlap = "template-overlap", Fault;
    /// Surface inside the outline that belongs to no panel.
    TemplateGap = "template-gap", Fault;
    /// A job names a panel that its template lacks.
    JobUnknownPanel = "job-unknown-panel", Fault;
    /// A job has two entries for one panel.
    JobPanelTwice = "job-panel-twice", Fault;
    /// Nobody applies or nobody levels, or names clash.
    JobCrew = "job-crew", Fault;
    /// A spot without a reading.
    JobEmptySpot = "job-empty-spot", Fault;
    /// A reading of a survey that isn't there, or surveys out of order.
    JobSurvey = "job-survey", Fault;
    /// A removal in the ledger whose upper value is below it.
    JobRemoval = "job-removal", Fault;
    /// Borders of the film bands that do not rise.
    JobBands = "job-bands", Fault;
    /// A defect with an impossible quantity or depth.
    JobDefectRange = "job-defect-range", Fault;
    /// A place that is not a pair of finite numbers.
    JobPlace = "job-place", Fault;
    /// A spot or defect that lies beside its panel.
    JobPlaceOutside = "job-place-outside", Warning;
    /// A size that no vehicle has.
    JobSize = "job-size", Fault;
    /// An order agreed on with a start that can't be.
    JobOrder = "job-order", Fault;
    /// A choice about the order that can't be.
    JobChoices = "job-choices", Fault;
    /// A coating whose figures contradict themselves.
    JobProduct = "job-product", Fault;
    /// More of something than a job may hold.
    JobTooLarge = "job-too-large", Fault;
    /// A crew problem of another format.
    CrewFormat = "crew-format", Fault;
    /// A list of a crew problem is empty or absurdly long.
    CrewSize = "crew-size", Fault;
    /// Two things of a crew problem have the same name.
    CrewDuplicate = "crew-duplicate", Fault;
    /// A name in a crew problem that stands for nothing.
    CrewName = "crew-name", Fault;
    /// A role that nobody has, or a worker without one.
    CrewRole = "crew-role", Fault;
    /// A time or weight that can't be.
    CrewTime = "crew-time", Fault;
    /// A walking table that can't be measured on a floor.
    CrewWalk = "crew-walk", Fault;
    /// Operations that wait for each other.
    CrewCycle = "crew-cycle", Fault;
    /// An outline that is open, empty or crosses itself.
    TemplateOutline = "template-outline", Fault;
    /// A point, line or curve that can't be used.
    TemplatePoint = "template-point", Fault;
    /// A name that nothing has, or that two things have.
    TemplateUnknown = "template-unknown", Fault;
    /// Length, width or height that no vehicle has.
    TemplateSize = "template-size", Fault;
    /// A place to stand that is inside the body or out of reach.
    TemplateStance = "template-stance", Fault;
    /// A panel that is far from the place it is worked from.
    TemplateReach = "template-reach", Warning;
    /// Panels that lean over one another in a circle.
    TemplateLean = "template-lean", Fault;
    /// An area that can't be right.
    TemplateArea = "template-area", Warning;
    /// A part without a name.
    TemplateName = "template-name", Warning;
    /// A panel on one side only.
    TemplateAsymmetric = "template-asymmetric", Notice;
    /// A spot that does not fit the others.
    ReadingStandsOut = "reading-stands-out", Warning;
    /// The gauge failed a check on a shim or the bare plate.
    GaugeCheckFailed = "gauge-check-failed", Warning;
    /// Readings on a panel that can't be trusted.
    ReadingsSuspect = "readings-suspect", Warning;
    /// Readings that the gauge can't have taken.
    ReadingsImpossible = "readings-impossible", Warning;
    /// Signs that the paint has no clear coat.
    FilmSingleStage = "film-single-stage", Notice;
    /// More went than the plan allowed for.
    RemovedOverPlan = "removed-over-plan", Warning;
    /// A film that may be too thin for more than the finest work.
    FilmThin = "film-thin", Warning;
    /// A film so thick that the panel was probably painted again.
    FilmRefinished = "film-refinished", Notice;
    /// A film so thick that there is probably filler.
    FilmFiller = "film-filler", Warning;
    /// Spots of one panel that differ much.
    FilmUneven = "film-uneven", Notice;
    /// A panel that differs from the one on the other side.
    FilmMirror = "film-differs-from-mirror", Notice;
    /// Neighbouring panels that will look different.
    FinishDiffers = "finish-differs", Warning;
}

impl fmt::Display for Code {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.id())
    }
}

impl std::str::FromStr for Code {
    type Err = UnknownCode;
    fn from_str(text: &str) -> Result<Self, UnknownCode> {
        Self::ALL.iter().copied().find(|c| c.id() == text).ok_or_else(|| UnknownCode(text.to_owned()))
    }
}

/// There is no finding code of this name.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}", say!("check-no-code", code = .0))]
pub struct UnknownCode(pub String);
