//! What parts are called: one table for all templates, UK and US.
//!
//! Source of the pairs: common use of the trade in both countries (several published glossaries agree on bonnet and hood, wing
//! and fender, boot and trunk, sill and rocker panel, windscreen and windshield); the rest is common practice, no source.

use super::id::Side;

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

/// A part and what it is called.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct PartName {
    /// Key used in templates.
    pub key: &'static str,
    /// In British English, beginning with a capital.
    pub uk: &'static str,
    /// In American English, beginning with a capital.
    pub us: &'static str,
}

const fn part(key: &'static str, uk: &'static str, us: &'static str) -> PartName {
    PartName { key, uk, us }
}

/// Every part that a template may use, in alphabetical order of the keys.
pub const PARTS: &[PartName] = &[
    part("a-pillar", "A-pillar", "A-pillar"),
    part("b-pillar", "B-pillar", "B-pillar"),
    part("bed-floor", "Load bed floor", "Bed floor"),
    part("bed-rail", "Load bed rail", "Bed rail"),
    part("bed-side", "Load bed side", "Bedside"),
    part("belt-panel", "Waist panel", "Belt panel"),
    part("bonnet", "Bonnet", "Hood"),
    part("boot-lid", "Boot lid", "Trunk lid"),
    part("bumper-front", "Front bumper", "Front bumper"),
    part("bumper-rear", "Rear bumper", "Rear bumper"),
    part("c-pillar", "C-pillar", "C-pillar"),
    part("cab-rear", "Cab back panel", "Cab back panel"),
    part("cladding-door", "Door cladding", "Door cladding"),
    part("cladding-front", "Front arch cladding", "Front fender cladding"),
    part("cladding-rear", "Rear arch cladding", "Rear quarter cladding"),
    part("cladding-sill", "Sill cladding", "Rocker cladding"),
    part("d-pillar", "D-pillar", "D-pillar"),
    part("door", "Door", "Door"),
    part("door-front", "Front door", "Front door"),
    part("door-load", "Load door", "Cargo door"),
    part("door-passenger", "Passenger door", "Passenger door"),
    part("door-rear", "Rear door", "Rear door"),
    part("door-sliding", "Sliding door", "Sliding door"),
    part("engine-door", "Engine door", "Engine door"),
    part("glass-door", "Door glass", "Door glass"),
    part("glass-front", "Front door glass", "Front door glass"),
    part("glass-load", "Load door glass", "Cargo door glass"),
    part("glass-quarter", "Quarter glass", "Quarter glass"),
    part("glass-quarter-front", "Front quarter glass", "Front quarter glass"),
    part("glass-rear", "Rear door glass", "Rear door glass"),
    part("glass-roof", "Roof glass", "Roof glass"),
    part("glass-side", "Side window", "Side window"),
    part("grille", "Grille", "Grille"),
    part("headlamp", "Headlamp", "Headlamp"),
    part("lamp-fog", "Fog lamp", "Fog lamp"),
    part("locker", "Luggage flap", "Luggage door"),
    part("mirror", "Door mirror", "Side mirror"),
    part("panel-front", "Front panel", "Front panel"),
    part("panel-lower", "Lower side panel", "Lower side panel"),
    part("panel-rear", "Rear panel", "Rear panel"),
    part("panel-roof", "Roof panel", "Roof panel"),
    part("panel-side", "Side panel", "Side panel"),
    part("rear-quarter", "Rear wing", "Quarter panel"),
    part("rear-window", "Rear window", "Rear window"),
    part("roof", "Roof", "Roof"),
    part("roof-dome", "Roof dome", "Roof cap"),
    part("roof-edge", "Roof edge", "Roof edge"),
    part("roof-rail", "Roof rail", "Roof rail"),
    part("scuttle", "Scuttle", "Cowl"),
    part("sill", "Sill", "Rocker panel"),
    part("skirt", "Skirt", "Skirt"),
    part("soft-top", "Soft top", "Soft top"),
    part("spoiler", "Rear spoiler", "Rear spoiler"),
    part("spoiler-foot", "Spoiler foot", "Spoiler foot"),
    part("tail-lamp", "Tail lamp", "Tail lamp"),
    part("tailgate", "Tailgate", "Liftgate"),
    part("tonneau", "Hood cover", "Tonneau cover"),
    part("wheel-panel", "Wheel arch panel", "Wheel arch panel"),
    part("windscreen", "Windscreen", "Windshield"),
    part("windscreen-frame", "Windscreen frame", "Windshield frame"),
    part("wing", "Wing", "Fender"),
];

/// The entry of a part, if the table has it.
pub(super) fn find(key: &str) -> Option<&'static PartName> {
    PARTS.binary_search_by(|p| p.key.cmp(key)).ok().and_then(|i| PARTS.get(i))
}

/// Name of a panel as printed: `Bonnet, left`, `Side panel 3, right`.
///
/// A part that is not in the table is shown by its key, so a template of a user's own is still usable.
pub(super) fn panel_name(part: &str, number: Option<u32>, side: Side, naming: Naming) -> String {
    let base = find(part).map_or(part, |p| match naming {
        Naming::Uk => p.uk,
        Naming::Us => p.us,
    });
    let number = number.map(|n| format!(" {n}")).unwrap_or_default();
    let side = match side {
        Side::Left => ", left",
        Side::Right => ", right",
        Side::Centre => "",
    };
    format!("{base}{number}{side}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_is_sorted_and_has_no_key_twice() {
        assert!(PARTS.windows(2).all(|p| p[0].key < p[1].key));
    }

    #[test]
    fn a_name_says_part_number_and_side() {
        assert_eq!(panel_name("bonnet", None, Side::Left, Naming::Uk), "Bonnet, left");
        assert_eq!(panel_name("bonnet", None, Side::Right, Naming::Us), "Hood, right");
        assert_eq!(panel_name("panel-side", Some(3), Side::Right, Naming::Uk), "Side panel 3, right");
        assert_eq!(panel_name("own-part", None, Side::Centre, Naming::Uk), "own-part");
    }
}
