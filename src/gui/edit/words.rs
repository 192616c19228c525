//! Refusals and changes in the words of people: panels by their names, stances by their numbers.

use crate::finding::Finding;
use crate::say;
use crate::vehicle::{EditError, Naming, PanelId, Template};

/// Why a change was refused.
pub(super) fn refusal(error: &EditError, t: &Template, naming: Naming) -> String {
    let name = |id: &PanelId| name(t, id, naming);
    match error {
        EditError::UnknownPanel(id) => say!("edit-no-panel", panel = name(id)),
        EditError::UnknownStance(_) => say!("edit-no-stance").to_owned(),
        EditError::NotNeighbours(a, b) => say!("edit-no-shared-seam", a = name(a), b = name(b)),
        EditError::NoCut(id) => say!("edit-line-cuts-nothing", panel = name(id)),
        EditError::AcrossCentre(id) => say!("edit-across-centreline", panel = name(id)),
        EditError::Faults(findings) => match findings.first() {
            Some(Finding { place, cause, .. }) => {
                spoken(&say!("edit-would-leave-fault", place = place, cause = cause), t, naming)
            }
            None => say!("edit-would-leave-some-fault").to_owned(),
        },
        EditError::Template(error) => spoken(&error.to_string(), t, naming),
    }
}

/// A panel as people call it.
pub(super) fn name(t: &Template, id: &PanelId, naming: Naming) -> String {
    t.panel(id).map_or_else(|| say!("edit-new-part").to_owned(), |p| p.name(naming))
}

/// The number of a stance as it stands on the floor.
pub(super) fn number(t: &Template, stance: &str) -> Option<usize> {
    t.stances.iter().position(|s| s.id == stance).map(|i| i + 1)
}

/// Marks round an id in the texts of any language.
const QUOTES: [char; 6] = ['"', '“', '”', '„', '«', '»'];

/// Whether a text ends with one of the words of a list such as `panel, panels`; answers what stands before it.
fn before_word<'t>(text: &'t str, words: &str) -> Option<&'t str> {
    let before = |word: &str| text.strip_suffix(' ')?.strip_suffix(word);
    words.split(", ").find_map(before)
}

/// A text with every quoted id in the words of people: `panel "wing-left"` becomes `Wing, left`.
fn spoken(text: &str, t: &Template, naming: Naming) -> String {
    let mut said = String::new();
    for (index, part) in text.split(QUOTES).enumerate() {
        if index % 2 == 0 {
            said.push_str(part);
        } else if let Some(number) =
            number(t, part).filter(|_| before_word(&said, say!("edit-words-for-stance")).is_some())
        {
            said.push_str(&number.to_string()); // many stances are called as the panel worked from there
        } else {
            if let Some(before) = before_word(&said, say!("edit-words-for-panel")) {
                said.truncate(before.len());
            }
            said.push_str(&name(t, &PanelId::from(part), naming));
        }
    }
    said
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::finding::Code;
    use crate::vehicle::load_embedded;

    #[test]
    fn refusals_name_panels_as_people_call_them() {
        let t = load_embedded("saloon").unwrap();
        let [bonnet, sill] = ["bonnet-left", "sill-right"].map(PanelId::from);
        let apart = EditError::NotNeighbours(bonnet.clone(), sill);
        assert!(refusal(&apart, &t, Naming::Uk).starts_with("Bonnet, left and Sill, right do not share"));
        assert!(refusal(&apart, &t, Naming::Us).starts_with("Hood, left and "));
        let place = "panels \"bonnet-left\" and \"wing-left\", at x 10, y 20 mm";
        let fault =
            EditError::Faults(vec![Finding::new(Code::TemplateOverlap, place, "their outlines cross", "mend it")]);
        let words = refusal(&fault, &t, Naming::Uk);
        assert_eq!(
            words,
            "that would leave a fault: Bonnet, left and Wing, left, at x 10, y 20 mm: their outlines cross"
        );
        let fault = Finding::new(Code::TemplateStance, "stance \"wing-left\"", "it is 90 mm from the body", "move it");
        let words = refusal(&EditError::Faults(vec![fault]), &t, Naming::Uk);
        assert_eq!(
            words,
            format!("that would leave a fault: stance {}: it is 90 mm from the body", number(&t, "wing-left").unwrap())
        );
        for error in [EditError::NoCut(bonnet.clone()), EditError::AcrossCentre(bonnet)] {
            assert!(!refusal(&error, &t, Naming::Uk).contains("bonnet-left"));
        }
    }
}
