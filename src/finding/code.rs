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
