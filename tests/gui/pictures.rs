//! Writes the pictures of the README. They come from the window itself, so they can't go stale.

use super::window;
use egui_kittest::kittest::Queryable;
use lapwright::gui::{Theme, set_theme};
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
            ("Handover", None),
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

/// A day under way: both work, some panels are wet, some are done. Light for the README, every theme for whoever looks.
#[test]
fn the_bay_has_its_picture() {
    for (size, ending) in [([1280.0, 800.0], ""), ([1920.0, 1080.0], "-large")] {
        let sample = lapwright::file::job_from_text("the sample", lapwright::file::SAMPLE).unwrap();
        let mut bay = super::bay::Bay::open(sample, size);
        bay.press("Start the day");
        for _ in 0..24 {
            bay.step(2);
        }
        bay.advance(9);
        let shots = Path::new(env!("CARGO_MANIFEST_DIR")).join("screenshots");
        let looks = Path::new(env!("CARGO_TARGET_TMPDIR")).join("looks");
        std::fs::create_dir_all(&looks).unwrap();
        for theme in Theme::ALL {
            set_theme(&bay.window.ctx, theme);
            bay.window.run();
            let picture = bay.window.render().unwrap();
            let colours: std::collections::BTreeSet<[u8; 4]> = picture.pixels().map(|p| p.0).collect();
            assert!(colours.len() > 200, "the picture of the bay is as good as blank");
            if theme == Theme::Light {
                picture.save(shots.join(format!("bay{ending}.png"))).unwrap();
            }
            let name = theme.name().to_lowercase();
            picture.save(looks.join(format!("bay{ending}-{name}.png"))).unwrap();
            // As seen from far away: a third of the size.
            let (w, h) = (picture.width() / 3, picture.height() / 3);
            let far = image::imageops::resize(&picture, w, h, image::imageops::FilterType::Triangle);
            far.save(looks.join(format!("bay{ending}-{name}-far.png"))).unwrap();
        }
    }
}
