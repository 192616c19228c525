//! The list of all finding codes. The architecture test holds it against DEVELOPERS.md.

use super::Severity;
use std::fmt;

macro_rules! codes {
    ($($(#[$doc:meta])* $name:ident = $id:literal, $severity:ident, $explanation:literal;)*) => {
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
                match self { $(Self::$name => $explanation,)* }
            }
        }
    };
}

codes! {
    /// Two panels of a template share surface.
    TemplateOverlap = "template-overlap", Fault,
        "Two panels cover the same place on the map, so a reading there could belong to either. Panels should be loops of \
         shared curves; look for a curve that crosses another one.";
    /// Surface inside the outline that belongs to no panel.
    TemplateGap = "template-gap", Fault,
        "There is a place inside the outline of the vehicle that no panel covers. Neighbouring panels should use the same \
         named points, so that the curve between them is stored once.";
    /// A job names a panel that its template lacks.
    JobUnknownPanel = "job-unknown-panel", Fault,
        "The job has readings or defects for a panel that the vehicle template doesn't have. Panel names are those of the \
         template, with -left or -right as seen from the seat facing forward.";
    /// A job has two entries for one panel.
    JobPanelTwice = "job-panel-twice", Fault,
        "All that is known of a panel belongs into one entry; with two, one of them would be lost.";
    /// Nobody applies or nobody levels, or names clash.
    JobCrew = "job-crew", Fault,
        "Coating needs somebody who applies and somebody who levels, each with a name of their own. One person may do both.";
    /// A spot without a reading.
    JobEmptySpot = "job-empty-spot", Fault,
        "A spot is a place of readings; one without readings says nothing.";
    /// A reading of a survey that isn't there, or surveys out of order.
    JobSurvey = "job-survey", Fault,
        "Each reading belongs to one of the surveys of the job, counted from 0 in the order they were taken; surveys before \
         polishing come first.";
    /// A removal in the ledger whose upper value is below it.
    JobRemoval = "job-removal", Fault,
        "The ledger of earlier visits holds what probably went and the most that may have gone. The second counts, so it can't \
         be the smaller one.";
    /// Borders of the film bands that do not rise.
    JobBands = "job-bands", Fault,
        "The borders between the bands of film rise from too thin to cut, over thin and normal, to filler. Out of order they \
         would call a thin film thick.";
    /// A defect with an impossible quantity or depth.
    JobDefectRange = "job-defect-range", Fault,
        "The quantity of a defect goes from 0 (none) to 5 (dense), and its least depth can't be above its most.";
    /// A place that is not a pair of finite numbers.
    JobPlace = "job-place", Fault,
        "Places are in millimetres on the map: along the vehicle from its foremost point, and across from the centreline.";
    /// A spot or defect that lies beside its panel.
    JobPlaceOutside = "job-place-outside", Warning,
        "A spot or a defect is noted on one panel but lies beside it on the map. The panel it is noted on counts.";
    /// A size that no vehicle has.
    JobSize = "job-size", Fault,
        "A job can give length, width and height of its vehicle in millimetres, without mirrors. One of them is too small or too \
         large for any vehicle; perhaps it is in another unit.";
    /// An order agreed on with a start that can't be.
    JobOrder = "job-order", Fault,
        "The order agreed on has a start before its beginning or after the end of any day. It can be taken out of the job: a new \
         order is found from the rest.";
    /// A choice about the order that can't be.
    JobChoices = "job-choices", Fault,
        "The choices about the order of coating name somebody who is not in the crew, name somebody or a panel twice, or name no \
         side to begin on. They can be taken out of the job: the planner is then free.";
    /// A coating whose figures contradict themselves.
    JobProduct = "job-product", Fault,
        "The window of a coating, and its limits of temperature and humidity, begin before they end. Write the smaller number \
         first.";
    /// More of something than a job may hold.
    JobTooLarge = "job-too-large", Fault,
        "There are limits to what one job may hold, so that a damaged or hostile file can't stop the program.";
    /// A crew problem of another format.
    CrewFormat = "crew-format", Fault,
        "The first field of a crew problem says which format it is in, and only \"crew-problem/1\" can be read. Write that \
         format and its fields.";
    /// A list of a crew problem is empty or absurdly long.
    CrewSize = "crew-size", Fault,
        "A crew problem needs workers, stances and operations, and a vehicle never needs more than a few hundred of them. An \
         empty or enormous list is a mistake in whatever wrote the file.";
    /// Two things of a crew problem have the same name.
    CrewDuplicate = "crew-duplicate", Fault,
        "Workers, stances and operations are told apart by their names alone, so each name may be used once in its list.";
    /// A name in a crew problem that stands for nothing.
    CrewName = "crew-name", Fault,
        "A lag, a wet rule, a close pair or an operation speaks of something that is not in its list. Names are compared \
         letter by letter.";
    /// A role that nobody has, or a worker without one.
    CrewRole = "crew-role", Fault,
        "Each operation needs a worker with its role, and each worker a role. Give the role to somebody or take the entry out.";
    /// A time or weight that can't be.
    CrewTime = "crew-time", Fault,
        "Times are whole seconds, never negative, and an operation takes at least one. Times over a hundred days are taken for \
         a mistake of unit.";
    /// A walking table that can't be measured on a floor.
    CrewWalk = "crew-walk", Fault,
        "The walking table has a row and a column for each stance, 0 on the diagonal, and no way that is longer than a detour \
         by way of a third stance.";
    /// Operations that wait for each other.
    CrewCycle = "crew-cycle", Fault,
        "Lags lead in a circle, so each of the named operations would have to come after the others; or a wet period keeps away \
         the operation that begins or ends it. Take one of the rules out.";
    /// An outline that is open, empty or crosses itself.
    TemplateOutline = "template-outline", Fault,
        "The outline of a panel is not a simple closed loop: it has too few points, passes a point twice, encloses nothing or \
         crosses itself. List the points in the order in which they come round the panel.";
    /// A point, line or curve that can't be used.
    TemplatePoint = "template-point", Fault,
        "A point, line or curve of a template can't be used: a point on the right side, a line with too few places, or a curve \
         between two points that is given twice. Only the left side is drawn; the right side is its mirror image.";
    /// A name that nothing has, or that two things have.
    TemplateUnknown = "template-unknown", Fault,
        "A template uses the name of a point, panel or stance that it does not define, or defines a panel twice. Correct the \
         name.";
    /// Length, width or height that no vehicle has.
    TemplateSize = "template-size", Fault,
        "Length, width or height of the vehicle is outside what a vehicle can be. They are given in millimetres.";
    /// A place to stand that is inside the body or out of reach.
    TemplateStance = "template-stance", Fault,
        "A place to stand lies inside the body, too near to it, or too far away to reach a panel. Places are given on the floor, \
         in mm rearward from the front of the vehicle and outward from its centreline.";
    /// A panel that is far from the place it is worked from.
    TemplateReach = "template-reach", Warning,
        "A panel is far along the vehicle from its place to stand, or that place is on the other side. Walking times and who is \
         in whose way would be wrong. Give the panel a place to stand beside it.";
    /// Panels that lean over one another in a circle.
    TemplateLean = "template-lean", Fault,
        "Panels lean over one another in a circle, so none of them could be coated first. A panel leans over those that are \
         lower and nearer to the person; the lowest lean over nothing.";
    /// An area that can't be right.
    TemplateArea = "template-area", Warning,
        "The area of a panel does not fit its drawing, or the painted area of the whole vehicle is not usual for its class. The \
         usual figures are estimates; areas decide how much product and time is planned.";
    /// A part without a name.
    TemplateName = "template-name", Warning,
        "A panel is of a part that the table of names does not have. It is shown by its key.";
    /// A panel on one side only.
    TemplateAsymmetric = "template-asymmetric", Notice,
        "A panel exists on one side only, as with a single sliding door. Nothing is wrong if the vehicle is like this.";
    /// A spot that does not fit the others.
    ReadingStandsOut = "reading-stands-out", Warning,
        "One spot is further from the others than chance explains (Grubbs' test, 5 %). It may be a slip of the probe, or the \
         edge of a repair, which looks exactly like one. It should be read again and is never deleted.";
    /// The gauge failed a check on a shim or the bare plate.
    GaugeCheckFailed = "gauge-check-failed", Warning,
        "A check of the gauge on a shim or on the bare plate lies outside its stated accuracy. The readings since the last good \
         check are marked suspect; they stay, but nothing is decided by them. Clean probe and plate, adjust the gauge as its \
         maker says, check it again, and read those spots again (the idea is ASTM D7091's, from memory).";
    /// Readings on a panel that can't be trusted.
    ReadingsSuspect = "readings-suspect", Warning,
        "Readings of this panel were taken before the gauge failed a check. They don't count towards the budget; a low one still \
         lowers the bound. Read those spots again with a gauge that passes its checks.";
    /// Readings that the gauge can't have taken.
    ReadingsImpossible = "readings-impossible", Warning,
        "The gauge of the job can't read on what lies under the paint of this panel, so the readings noted there mean nothing \
         and don't count. Choose the gauge they were taken with, or correct what the panel is made of.";
    /// Signs that the paint has no clear coat.
    FilmSingleStage = "film-single-stage", Notice,
        "The panel is noted as single-stage, or shows what single-stage paint shows. Such paint has no clear: colour on a white \
         pad is the paint itself (common practice, no source). Try a hidden place before choosing a step.";
    /// More went than the plan allowed for.
    RemovedOverPlan = "removed-over-plan", Warning,
        "Read again after polishing, the panel shows that more may have gone than the plan's upper bound. The measured value goes \
         into the ledger. Check pad, polish and number of passes before the next panel.";
    /// A film that may be too thin for more than the finest work.
    FilmThin = "film-thin", Warning,
        "The lower bound of the film lies in a thin band (trade practice, editable). Little or nothing may be removed. More \
         spots narrow the bound.";
    /// A film so thick that the panel was probably painted again.
    FilmRefinished = "film-refinished", Notice,
        "Film over about 200 µm suggests a refinish, over 300 µm several (trade practice, editable). Layers and hardness of such \
         paint are not known, so less is allowed.";
    /// A film so thick that there is probably filler.
    FilmFiller = "film-filler", Warning,
        "Film over about 1000 µm suggests body filler (common practice, editable). Nothing is polished there.";
    /// Spots of one panel that differ much.
    FilmUneven = "film-uneven", Notice,
        "The thickest and the thinnest spot of the panel differ more than usual. Part of it may have been painted again, or \
         rubbed thin at an edge.";
    /// A panel that differs from the one on the other side.
    FilmMirror = "film-differs-from-mirror", Notice,
        "Mirror panels of one vehicle are painted alike. A difference beyond the border, and beyond chance, suggests that one of \
         them was painted again or rubbed thin.";
    /// Neighbouring panels that will look different.
    FinishDiffers = "finish-differs", Warning,
        "Two panels that share a seam are planned so differently that the eye will see it. Work the better one less, the other \
         more where its budget allows, or tell the customer.";
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
#[error("there is no finding code \"{0}\"")]
pub struct UnknownCode(pub String);
