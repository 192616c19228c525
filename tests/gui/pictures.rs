//! Writes the pictures of the README. They come from the window itself, so they can't go stale.

use super::window;
use egui_kittest::kittest::Queryable;
use std::path::Path;

#[test]
fn every_workspace_has_its_picture() {
    for (size, ending) in [([1280.0, 800.0], ""), ([1920.0, 1080.0], "-large")] {
        let mut window = window(size);
        for (tab, panel) in [
            ("Job", None),
            ("Survey", Some("Bonnet, left")),
            ("Correction", Some("Rear door, left")),
            ("Coating", None),
        ] {
            window.get_by(|n| n.role() == egui_role::TAB && n.label().is_some_and(|l| l.starts_with(tab))).click();
            window.run();
            if let Some(panel) = panel {
                window.get_by_role_and_label(egui_role::PANEL, panel).click_accesskit();
                window.run();
            }
            let picture = window.render().unwrap();
            let ink = picture.pixels().filter(|p| p.0[0] < 100).count();
            assert!(ink > 5_000, "the picture of {tab} is empty");
            let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("screenshots");
            picture.save(folder.join(format!("{}{ending}.png", tab.to_lowercase()))).unwrap();
            window.key_press(eframe::egui::Key::Escape);
            window.run();
        }
    }
}

/// Roles as the accessibility tree names them.
pub(super) mod egui_role {
    use eframe::egui::Role;
    pub(in super::super) const TAB: Role = Role::Tab;
    pub(in super::super) const PANEL: Role = Role::ListBoxOption;
}
