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
    /// A spot that does not fit the others.
    ReadingStandsOut = "reading-stands-out", Warning,
        "One spot is further from the others than chance explains (Grubbs' test, 5 %). It may be a slip of the probe, or the \
         edge of a repair, which looks exactly like one. It should be read again and is never deleted.";
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
