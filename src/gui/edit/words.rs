//! Refusals and changes in the words of people: panels by their names, stances by their numbers.

use crate::finding::Finding;
use crate::vehicle::{EditError, Naming, PanelId, Template};

/// Why a change was refused.
pub(super) fn refusal(error: &EditError, t: &Template, naming: Naming) -> String {
    let name = |id: &PanelId| name(t, id, naming);
    match error {
        EditError::UnknownPanel(id) => format!("there is no {}", name(id)),
        EditError::UnknownStance(_) => "there is no such stance".to_owned(),
        EditError::NotNeighbours(a, b) => {
            format!("{} and {} do not share one seam that can be taken away", name(a), name(b))
        }
        EditError::NoCut(id) => format!("the line does not cut {} in two", name(id)),
        EditError::AcrossCentre(id) => format!("{} lies across the centreline and can't be cut", name(id)),
        EditError::Faults(findings) => match findings.first() {
            Some(Finding { place, cause, .. }) => {
                spoken(&format!("that would leave a fault: {place}: {cause}"), t, naming)
            }
            None => "that would leave a fault".to_owned(),
        },
        EditError::Template(error) => spoken(&error.to_string(), t, naming),
    }
}

/// A panel as people call it.
pub(super) fn name(t: &Template, id: &PanelId, naming: Naming) -> String {
    t.panel(id).map_or_else(|| "the new part".to_owned(), |p| p.name(naming))
}

/// The number of a stance as it stands on the floor.
pub(super) fn number(t: &Template, stance: &str) -> Option<usize> {
    t.stances.iter().position(|s| s.id == stance).map(|i| i + 1)
}

/// A text with every quoted id in the words of people: `panel "wing-left"` becomes `Wing, left`.
fn spoken(text: &str, t: &Template, naming: Naming) -> String {
    let mut said = String::new();
    for (index, part) in text.split('"').enumerate() {
        if index % 2 == 0 {
            said.push_str(part);
        } else if let Some(number) = number(t, part).filter(|_| said.ends_with("stance ")) {
            said.push_str(&number.to_string()); // many stances are called as the panel worked from there
        } else {
            for word in ["panel ", "panels "] {
                if let Some(shorter) = said.strip_suffix(word) {
                    said.truncate(shorter.len());
                }
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
