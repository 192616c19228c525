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
