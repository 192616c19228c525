//! Contrast of controls as they are really set, in every theme and every state (WCAG 2.2, 1.4.3 and 1.4.11).
//!
//! Text on its ground at least 4.5:1; rims by which a field or a button is known, marks in them and the ring of the focus at least 3:1.
//! Not held to it are lines between things that only part them, as the standard allows.

use super::palette::{Palette, contrast};
use super::{Theme, install, set};
use eframe::egui::{self, Color32, Visuals};

fn visuals(theme: Theme) -> Visuals {
    let ctx = egui::Context::default();
    install(&ctx);
    set(&ctx, theme);
    ctx.global_style().visuals.clone()
}

fn holds(theme: Theme, what: &str, (fore, ground): (Color32, Color32), least: f32, found: &mut Vec<String>) {
    let ratio = contrast(fore, ground);
    if ratio < least {
        found.push(format!("{theme:?}: {what}: {ratio:.2}:1, {fore:?} on {ground:?}"));
    }
}

#[test]
fn controls_are_seen_and_read_in_every_state_of_every_theme() {
    let mut found = Vec::new();
    for theme in Theme::ALL {
        let (v, p) = (visuals(theme), Palette::of(theme));
        let grounds = [v.panel_fill, v.window_fill, v.faint_bg_color, v.extreme_bg_color];
        let states = [
            ("at rest", &v.widgets.inactive),
            ("under the pointer", &v.widgets.hovered),
            ("focused or pressed", &v.widgets.active),
            ("open", &v.widgets.open),
        ];
        for ground in grounds {
            for (what, ink) in [
                ("text", v.text_color()),
                ("soft text", v.weak_text_color()),
                ("link", v.hyperlink_color),
                ("warning", v.warn_fg_color),
                ("error", v.error_fg_color),
            ] {
                holds(theme, what, (ink, ground), 4.5, &mut found);
            }
            for (state, look) in states {
                holds(theme, &format!("rim, {state}"), (look.bg_stroke.color, ground), 3.0, &mut found);
                holds(theme, &format!("mark, {state}"), (look.fg_stroke.color, ground), 3.0, &mut found);
            }
            holds(theme, "ring of the focus", (v.selection.stroke.color, ground), 3.0, &mut found);
            holds(theme, "text in a chosen part", (v.text_color(), v.selection.bg_fill), 4.5, &mut found);
        }
        for (state, look) in states {
            holds(theme, &format!("text of a button, {state}"), (v.text_color(), look.weak_bg_fill), 4.5, &mut found);
            holds(theme, &format!("mark, {state}, on its fill"), (look.fg_stroke.color, look.bg_fill), 3.0, &mut found);
        }
        holds(theme, "rim of the primary button", (p.accent, p.sheet), 3.0, &mut found);
        holds(theme, "text of the primary button", (p.on_accent, p.accent), 4.5, &mut found);
        // What has the focus is told from the same at rest.
        let (rest, focus) = (v.widgets.inactive.bg_stroke.color, v.widgets.active.bg_stroke.color);
        assert!(rest != focus || v.widgets.inactive.bg_fill != v.widgets.active.bg_fill);
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}
