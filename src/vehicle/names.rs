//! What parts are called: one table for all templates, UK and US.
//!
//! Source of the pairs: common use of the trade in both countries (several published glossaries agree on bonnet and hood, wing
//! and fender, boot and trunk, sill and rocker panel, windscreen and windshield); the rest is common practice, no source.

use super::id::Side;
use crate::say;
use crate::words::{Language, language, text_if_any, within};

/// Which English the names are in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Naming {
    /// Bonnet, wing, boot.
    #[default]
    Uk,
    /// Hood, fender, trunk.
    Us,
}

impl Naming {
    /// Whether the language in use leaves a choice; languages other than English have one name for a part.
    pub fn is_a_choice() -> bool {
        matches!(language(), Language::British | Language::American)
    }

    /// The language that parts are named in: the English that is wanted, where English is spoken at all.
    fn language(self) -> Language {
        match (language(), self) {
            (Language::British | Language::American, Self::Uk) => Language::British,
            (Language::British | Language::American, Self::Us) => Language::American,
            (other, _) => other,
        }
    }
}

/// Keys of every part that a template may use, in alphabetical order; their names are the messages `part-KEY`.
pub const PARTS: &[&str] = &[
    "a-pillar",
    "b-pillar",
    "bed-floor",
    "bed-rail",
    "bed-side",
    "belt-panel",
    "bonnet",
    "boot-lid",
    "bumper-front",
    "bumper-rear",
    "c-pillar",
    "cab-rear",
    "cladding-door",
    "cladding-front",
    "cladding-rear",
    "cladding-sill",
    "d-pillar",
    "door",
    "door-front",
    "door-load",
    "door-passenger",
    "door-rear",
    "door-sliding",
    "engine-door",
    "glass-door",
    "glass-front",
    "glass-load",
    "glass-quarter",
    "glass-quarter-front",
    "glass-rear",
    "glass-roof",
    "glass-side",
    "grille",
    "headlamp",
    "lamp-fog",
    "locker",
    "mirror",
    "panel-front",
    "panel-lower",
    "panel-rear",
    "panel-roof",
    "panel-side",
    "rear-quarter",
    "rear-window",
    "roof",
    "roof-dome",
    "roof-edge",
    "roof-rail",
    "scuttle",
    "sill",
    "skirt",
    "soft-top",
    "spoiler",
    "spoiler-foot",
    "tail-lamp",
    "tailgate",
    "tonneau",
    "wheel-panel",
    "windscreen",
    "windscreen-frame",
    "wing",
];

/// Whether the table has a part.
pub(super) fn is_known(key: &str) -> bool {
    PARTS.binary_search(&key).is_ok()
}

/// Name of a panel as printed: `Bonnet, left`, `Side panel 3, right`.
///
/// A part that is not in the table is shown by its key, so a template of a user's own is still usable.
pub(super) fn panel_name(part: &str, number: Option<u32>, side: Side, naming: Naming) -> String {
    within(naming.language(), || {
        let base = if is_known(part) { text_if_any(&format!("part-{part}")).unwrap_or(part) } else { part };
        let base = number.map_or_else(|| base.to_owned(), |number| say!("part-numbered", part = base, number = number));
        match side {
            Side::Left => say!("part-of-left", part = base),
            Side::Right => say!("part-of-right", part = base),
            Side::Centre => base,
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_is_sorted_and_has_no_key_twice() {
        assert!(PARTS.windows(2).all(|p| p[0] < p[1]));
        assert!(PARTS.iter().all(|part| text_if_any(&format!("part-{part}")).is_some()));
    }

    #[test]
    fn a_name_says_part_number_and_side() {
        assert_eq!(panel_name("bonnet", None, Side::Left, Naming::Uk), "Bonnet, left");
        assert_eq!(panel_name("bonnet", None, Side::Right, Naming::Us), "Hood, right");
        assert_eq!(panel_name("panel-side", Some(3), Side::Right, Naming::Uk), "Side panel 3, right");
        assert_eq!(panel_name("own-part", None, Side::Centre, Naming::Uk), "own-part");
        let german = within(Language::German, || panel_name("wing", None, Side::Left, Naming::Us));
        assert_eq!(german, "Kotflügel, links");
    }
}
