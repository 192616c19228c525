//! Panels and work as people say them.

use super::exercise::Exercise;
use crate::insight::spoken;
use crate::job::Role;
use crate::say;
use crate::vehicle::Naming;

/// A panel as it is said aloud: "roof left".
pub(super) fn panel_words(exercise: &Exercise, panel: usize, naming: Naming) -> String {
    spoken(&exercise.template.panels[panel].name(naming))
}

/// The panel of an operation as it is said aloud.
pub(super) fn of_operation(exercise: &Exercise, operation: usize, naming: Naming) -> String {
    exercise
        .panel_of(operation)
        .map_or_else(|| say!("practice-the-break").to_owned(), |p| panel_words(exercise, p, naming))
}

/// "applying roof left".
pub(super) fn doing(exercise: &Exercise, operation: usize, naming: Naming) -> String {
    let panel = of_operation(exercise, operation, naming);
    match exercise.role_of(operation) {
        Some(Role::Apply) => say!("practice-doing-apply", panel = panel),
        Some(Role::Level) => say!("practice-doing-level", panel = panel),
        None => say!("practice-being-away").to_owned(),
    }
}

/// "applies roof left".
pub(super) fn does(exercise: &Exercise, operation: usize, naming: Naming) -> String {
    let panel = of_operation(exercise, operation, naming);
    match exercise.role_of(operation) {
        Some(Role::Apply) => say!("practice-does-apply", panel = panel),
        Some(Role::Level) => say!("practice-does-level", panel = panel),
        None => say!("practice-is-away").to_owned(),
    }
}
