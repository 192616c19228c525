//! Accessibility of every workspace and page: names and roles, the way of the Tab key, contrast as drawn, and a window at 200 %.
//!
//! Numbers in brackets are success criteria of WCAG 2.2 (W3C Recommendation).

mod contrast;
mod keys;
mod large;
mod scenes;
mod tree;

use eframe::egui::accesskit::Action;
use eframe::egui::{Rect, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{AccessKitNode as AccessNode, NodeT};
use lapwright::gui::App;

type Window = Harness<'static, App>;

/// What can take the focus, or can be pressed, as a screen reader meets it.
#[derive(Debug, Clone, PartialEq)]
struct Target {
    id: String,
    /// The node that holds it.
    inside: String,
    /// The part of the window, as a page that lies over it, that it belongs to.
    part: String,
    role: Role,
    name: String,
    takes_focus: bool,
    has_focus: bool,
    is_disabled: bool,
    area: Rect,
}

/// Everything of a window that can take the focus or be pressed, in the order of the tree.
fn targets(window: &Window) -> Vec<Target> {
    let mut found = Vec::new();
    for place in window.root().children_recursive() {
        let node = place.accesskit_node();
        let takes_focus = node.data().supports_action(Action::Focus);
        // A bar to scroll with is for the pointer; the keyboard scrolls by going on.
        if node.role() == Role::ScrollBar && !takes_focus {
            continue;
        }
        if takes_focus || node.data().supports_action(Action::Click) {
            found.push(Target {
                id: format!("{:?}", node.id()),
                inside: node.parent().map(|parent| format!("{:?}", parent.id())).unwrap_or_default(),
                role: node.role(),
                // A label's text is its value.
                name: node.label().or_else(|| node.value()).unwrap_or_default(),
                part: part_of(&node),
                takes_focus,
                has_focus: node.is_focused(),
                is_disabled: node.is_disabled(),
                area: place.rect(),
            });
        }
    }
    found
}

/// The outermost node below the root that holds a node.
fn part_of(node: &AccessNode<'_>) -> String {
    let above: Vec<String> = std::iter::successors(node.parent(), egui_kittest::kittest::AccessKitNode::parent)
        .map(|n| format!("{:?}", n.id()))
        .collect();
    above.iter().rev().nth(1).cloned().unwrap_or_else(|| format!("{:?}", node.id()))
}

/// Ends the test with everything that was found, each once.
fn nothing_in(mut found: Vec<String>) {
    found.sort();
    found.dedup();
    assert!(found.is_empty(), "{} things:\n{}", found.len(), found.join("\n"));
}
