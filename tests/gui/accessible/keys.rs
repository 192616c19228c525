//! The Tab key: it reaches everything (2.1.1), is caught nowhere (2.1.2), and shows where it is (2.4.7, 2.4.11).

use super::scenes::{LIES_OVER, SIZE, every_scene};
use super::{Target, Window, nothing_in, targets};
use eframe::egui::{Key, Modifiers, Rect, Role, pos2};
use std::collections::{BTreeMap, BTreeSet};

/// Lists in which the arrow keys go on: Tab stops at one of each.
const ARROWS_GO_ON: [Role; 2] = [Role::ListBoxOption, Role::Row];

fn focused(window: &Window) -> Option<Target> {
    targets(window).into_iter().find(|target| target.has_focus)
}

/// What Tab reaches until it is where it began, or nothing where it never is.
pub(super) fn round(window: &mut Window, held: Modifiers) -> Option<Vec<Target>> {
    let most = 2 * targets(window).len() + 20;
    let mut reached: Vec<Target> = Vec::new();
    for _ in 0..most {
        window.key_press_modifiers(held, Key::Tab);
        window.step();
        window.step();
        if let Some(target) = focused(window) {
            if reached.first().is_some_and(|first| first.id == target.id) {
                return Some(reached);
            }
            reached.push(target);
        }
    }
    None
}

#[test]
fn tab_reaches_everything_and_comes_round() {
    let mut found = Vec::new();
    every_scene(SIZE, &mut |scene, window| {
        let before = targets(window);
        let Some(reached) = round(window, Modifiers::NONE) else {
            found.push(format!("{scene}: Tab does not come round"));
            return;
        };
        let ids: BTreeSet<&str> = reached.iter().map(|target| target.id.as_str()).collect();
        // What lies below a page is out of reach until that is closed.
        let parts: BTreeSet<&str> = reached.iter().map(|target| target.part.as_str()).collect();
        let below_a_page = |target: &Target| LIES_OVER.contains(&scene) && !parts.contains(target.part.as_str());
        let mut lists: BTreeMap<(String, String), (bool, String)> = BTreeMap::new();
        for target in before.into_iter().filter(|t| t.takes_focus && !t.is_disabled && !below_a_page(t)) {
            let is_reached = ids.contains(target.id.as_str());
            if ARROWS_GO_ON.contains(&target.role) {
                let list = lists.entry((target.inside, format!("{:?}", target.role))).or_default();
                list.0 |= is_reached;
                list.1 = target.name;
            } else if !is_reached {
                found.push(format!("{scene}: {:?} “{}” at {:?}", target.role, target.name, target.area));
            }
        }
        for ((_, role), (_, name)) in lists.into_iter().filter(|(_, (is_reached, _))| !is_reached) {
            found.push(format!("{scene}: no {role} of the list of “{name}”"));
        }
        let screen = Rect::from_min_max(pos2(0.0, 0.0), window.ctx.content_rect().max);
        for target in reached.iter().filter(|target| !screen.contains(target.area.center())) {
            found.push(format!(
                "{scene}: focused outside the window: {:?} “{}” at {:?}",
                target.role, target.name, target.area
            ));
        }
    });
    nothing_in(found);
}

#[test]
fn tab_goes_back_the_same_way() {
    let mut found = Vec::new();
    every_scene(SIZE, &mut |scene, window| {
        if round(window, Modifiers::SHIFT).is_none() {
            found.push(format!("{scene}: Shift and Tab do not come round"));
        }
    });
    nothing_in(found);
}
