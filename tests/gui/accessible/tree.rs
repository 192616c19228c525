//! Names and roles (4.1.2), and names that tell things apart (2.4.6).

use super::scenes::{SIZE, every_scene};
use super::{Target, nothing_in, targets};
use eframe::egui::Role;
use std::collections::BTreeMap;

/// Roles that say nothing of what it is.
const SAYS_NOTHING: [Role; 2] = [Role::Unknown, Role::GenericContainer];

#[test]
fn everything_that_is_focused_or_pressed_has_a_name_and_a_role() {
    let mut found = Vec::new();
    let mut met = 0;
    every_scene(SIZE, &mut |scene, window| {
        for target in targets(window) {
            met += 1;
            if target.name.trim().is_empty() || SAYS_NOTHING.contains(&target.role) {
                found.push(format!("{scene}: {:?} “{}” at {:?}", target.role, target.name, target.area));
            }
        }
    });
    assert!(met > 2_000, "only {met} things were met");
    nothing_in(found);
}

/// Two things of one kind and name in one place could not be told apart by somebody who only hears them.
#[test]
fn nothing_beside_another_has_its_name() {
    let mut found = Vec::new();
    every_scene(SIZE, &mut |scene, window| {
        let mut names: BTreeMap<(String, String, String), Vec<Target>> = BTreeMap::new();
        for target in targets(window).into_iter().filter(|t| t.takes_focus && !t.is_disabled) {
            let key = (target.inside.clone(), format!("{:?}", target.role), target.name.clone());
            names.entry(key).or_default().push(target);
        }
        for ((_, role, name), same) in names.into_iter().filter(|(_, same)| same.len() > 1) {
            found.push(format!("{scene}: {} of {role} “{name}”", same.len()));
        }
    });
    nothing_in(found);
}
