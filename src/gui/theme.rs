//! Every colour, size and typeface of the window. Nothing else names a colour.
//!
//! Paper and ink first; colour only where it means something. Kinds take Okabe-Ito hues, each with a shape of its own; ordered
//! values take the cividis ramp (both from memory, with the values checked by the contrast test below). Red is kept for
//! "stop, someone or something gets hurt".

use eframe::egui::{
    self, Color32, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Margin, RichText, Shadow, Stroke,
    TextStyle, vec2,
};
use std::sync::Arc;

/// Ink on white paper.
pub(super) const INK: Color32 = rgb(0x1B, 0x24, 0x30);
/// Less important ink; still 7:1 on paper.
pub(super) const INK_SOFT: Color32 = rgb(0x47, 0x52, 0x60);
/// Sheets: rail, right side, charts.
pub(super) const SHEET: Color32 = rgb(0xFF, 0xFF, 0xFF);
/// The table the map lies on.
pub(super) const PAPER: Color32 = rgb(0xF4, 0xF6, 0xF8);
/// Lines between things.
pub(super) const HAIRLINE: Color32 = rgb(0xD6, 0xDB, 0xE1);
/// Gaps between panels.
pub(super) const SEAM: Color32 = rgb(0x7A, 0x85, 0x92);
/// The outline of the vehicle.
pub(super) const CONTOUR: Color32 = rgb(0x2E, 0x39, 0x46);
/// Quiet drawing: handles, body lines, wheels.
pub(super) const QUIET: Color32 = rgb(0xA3, 0xAC, 0xB7);
/// Wheels.
pub(super) const WHEEL: Color32 = rgb(0xE2, 0xE6, 0xEB);
/// Painted surface.
pub(super) const PAINT: Color32 = rgb(0xEB, 0xEF, 0xF3);
/// Glass.
pub(super) const GLASS: Color32 = rgb(0xD5, 0xE1, 0xEB);
/// Lamps.
pub(super) const LAMP: Color32 = rgb(0xF4, 0xEE, 0xDA);
/// Bare trim.
pub(super) const TRIM: Color32 = rgb(0xD2, 0xD7, 0xDD);
/// What is chosen, and the one thing to press.
pub(super) const ACCENT: Color32 = rgb(0x17, 0x4A, 0x7C);
/// A wash of the accent behind chosen rows.
pub(super) const ACCENT_WASH: Color32 = rgb(0xE3, 0xEC, 0xF6);
/// Stop: someone or something gets hurt.
pub(super) const STOP: Color32 = rgb(0x9E, 0x19, 0x11);
/// Free to go.
pub(super) const GO: Color32 = rgb(0x00, 0x5F, 0x45);
/// Something to look at, nothing dangerous.
pub(super) const NOTE: Color32 = rgb(0x73, 0x4A, 0x00);
/// Text on dark fills.
pub(super) const ON_DARK: Color32 = rgb(0xFF, 0xFF, 0xFF);

/// Okabe-Ito blue, orange, bluish green, reddish purple: one per worker.
const WORKERS: [Color32; 4] =
    [rgb(0x00, 0x72, 0xB2), rgb(0xE6, 0x9F, 0x00), rgb(0x00, 0x9E, 0x73), rgb(0xCC, 0x79, 0xA7)];
/// Okabe-Ito sky blue, vermilion, yellow, black: one per class of defect.
const CLASSES: [Color32; 4] =
    [rgb(0x56, 0xB4, 0xE9), rgb(0xD5, 0x5E, 0x00), rgb(0xF0, 0xE4, 0x42), rgb(0x2B, 0x2B, 0x2B)];
/// Cividis, nine steps from dark to light (from memory).
const RAMP: [Color32; 9] = [
    rgb(0x00, 0x22, 0x4E),
    rgb(0x12, 0x35, 0x70),
    rgb(0x3B, 0x49, 0x6C),
    rgb(0x57, 0x5D, 0x6D),
    rgb(0x70, 0x71, 0x73),
    rgb(0x8A, 0x86, 0x78),
    rgb(0xA5, 0x9C, 0x74),
    rgb(0xC3, 0xB3, 0x69),
    rgb(0xE1, 0xCC, 0x55),
];
/// How much white is mixed into the ramp, so that a whole vehicle in it stays calm; the order of lightness is kept.
const RAMP_WASH: f32 = 0.52;
/// Shades of the five polishing levels, from untouched to hardest.
const LEVELS: [Color32; 5] =
    [rgb(0xF7, 0xF8, 0xFA), rgb(0xDD, 0xE8, 0xF1), rgb(0xB9, 0xD2, 0xE4), rgb(0x8A, 0xB4, 0xD1), rgb(0x5F, 0x93, 0xB8)];

/// Width of the rail.
pub(super) const RAIL_WIDTH: f32 = 164.0;
/// Width of the right side.
pub(super) const SIDE_WIDTH: f32 = 328.0;
/// Height of the time chart.
pub(super) const CHART_HEIGHT: f32 = 148.0;
/// Height of the top bar.
pub(super) const BAR_HEIGHT: f32 = 48.0;

const fn rgb(r: u8, g: u8, b: u8) -> Color32 {
    Color32::from_rgb(r, g, b)
}

/// Colour of a worker.
pub(super) fn worker(index: usize) -> Color32 {
    WORKERS[index % WORKERS.len()]
}

/// Colour of a class of defects.
pub(super) fn defect_class(index: usize) -> Color32 {
    CLASSES[index % CLASSES.len()]
}

/// Shade of a polishing level, 0 to 4.
pub(super) fn level(index: usize) -> Color32 {
    LEVELS[index.min(LEVELS.len() - 1)]
}

/// A place on the ordered ramp, 0 to 1.
pub(super) fn ramp(share: f32) -> Color32 {
    let place = share.clamp(0.0, 1.0) * (RAMP.len() - 1) as f32;
    let low = (place.floor() as usize).min(RAMP.len() - 2);
    RAMP[low].lerp_to_gamma(RAMP[low + 1], place - low as f32).lerp_to_gamma(SHEET, RAMP_WASH)
}

/// Ink or white, whichever reads better on a fill.
pub(super) fn text_on(fill: Color32) -> Color32 {
    if contrast(INK, fill) >= contrast(ON_DARK, fill) { INK } else { ON_DARK }
}

/// Contrast ratio of two opaque colours, 1 to 21. Source: WCAG 2.2, "contrast ratio" and "relative luminance".
pub(super) fn contrast(a: Color32, b: Color32) -> f32 {
    let luminance = |c: Color32| {
        let channel = |v: u8| {
            let v = f32::from(v) / 255.0;
            if v <= 0.040_45 { v / 12.92 } else { ((v + 0.055) / 1.055).powf(2.4) }
        };
        0.2126 * channel(c.r()) + 0.7152 * channel(c.g()) + 0.0722 * channel(c.b())
    };
    let (a, b) = (luminance(a), luminance(b));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

/// The bold cut of the typeface.
pub(super) fn bold_family() -> FontFamily {
    FontFamily::Name("bold".into())
}

/// Bold text of a size.
pub(super) fn bold(text: impl Into<String>, size: f32) -> RichText {
    RichText::new(text).font(FontId::new(size, bold_family())).color(INK)
}

/// Small soft text.
pub(super) fn soft(text: impl Into<String>) -> RichText {
    RichText::new(text).size(12.0).color(INK_SOFT)
}

/// Sets typeface, sizes and colours of a window.
pub fn install(ctx: &egui::Context) {
    ctx.set_fonts(fonts());
    ctx.set_theme(egui::ThemePreference::Light);
    ctx.all_styles_mut(style);
}

fn fonts() -> FontDefinitions {
    let mut fonts = FontDefinitions::empty();
    for (name, bytes) in [("noto", notosans::REGULAR_TTF), ("noto-bold", notosans::BOLD_TTF)] {
        fonts.font_data.insert(name.to_owned(), Arc::new(FontData::from_static(bytes)));
    }
    for (family, name) in
        [(FontFamily::Proportional, "noto"), (FontFamily::Monospace, "noto"), (bold_family(), "noto-bold")]
    {
        fonts.families.insert(family, vec![name.to_owned()]);
    }
    fonts
}

fn style(style: &mut egui::Style) {
    style.text_styles = [
        (TextStyle::Small, FontId::new(12.0, FontFamily::Proportional)),
        (TextStyle::Body, FontId::new(14.0, FontFamily::Proportional)),
        (TextStyle::Button, FontId::new(14.0, FontFamily::Proportional)),
        (TextStyle::Monospace, FontId::new(14.0, FontFamily::Proportional)),
        (TextStyle::Heading, FontId::new(20.0, bold_family())),
    ]
    .into();
    style.animation_time = 0.0;
    let spacing = &mut style.spacing;
    spacing.item_spacing = vec2(8.0, 8.0);
    spacing.button_padding = vec2(12.0, 6.0);
    spacing.interact_size = vec2(40.0, 32.0);
    spacing.window_margin = Margin::same(16);
    spacing.menu_margin = Margin::same(8);
    spacing.slider_width = 176.0;
    spacing.combo_width = 120.0;
    style.interaction.selectable_labels = false;
    let visuals = &mut style.visuals;
    *visuals = egui::Visuals::light();
    visuals.override_text_color = Some(INK);
    visuals.weak_text_color = Some(INK_SOFT);
    visuals.panel_fill = SHEET;
    visuals.window_fill = SHEET;
    visuals.window_stroke = Stroke::new(1.0, HAIRLINE);
    visuals.window_shadow = Shadow { offset: [0, 4], blur: 24, spread: 0, color: Color32::from_black_alpha(40) };
    visuals.popup_shadow = Shadow { offset: [0, 2], blur: 12, spread: 0, color: Color32::from_black_alpha(30) };
    visuals.window_corner_radius = CornerRadius::same(6);
    visuals.menu_corner_radius = CornerRadius::same(6);
    visuals.extreme_bg_color = SHEET;
    visuals.faint_bg_color = PAPER;
    visuals.warn_fg_color = NOTE;
    visuals.error_fg_color = STOP;
    visuals.hyperlink_color = ACCENT;
    visuals.selection.bg_fill = ACCENT_WASH;
    visuals.selection.stroke = Stroke::new(2.0, ACCENT);
    visuals.slider_trailing_fill = true;
    let widgets = &mut visuals.widgets;
    for (state, fill, line) in [
        (&mut widgets.noninteractive, SHEET, HAIRLINE),
        (&mut widgets.inactive, SHEET, QUIET),
        (&mut widgets.hovered, PAPER, INK_SOFT),
        (&mut widgets.active, ACCENT_WASH, ACCENT),
        (&mut widgets.open, PAPER, INK_SOFT),
    ] {
        state.bg_fill = fill;
        state.weak_bg_fill = fill;
        state.bg_stroke = Stroke::new(1.0, line);
        state.fg_stroke = Stroke::new(1.5, INK);
        state.corner_radius = CornerRadius::same(6);
        state.expansion = 0.0;
    }
    widgets.inactive.bg_fill = HAIRLINE; // the rail of a slider
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn black_on_white_has_the_contrast_of_the_standard() {
        // WCAG 2.2: the ratio goes up to 21:1, reached by black on white.
        assert!((contrast(Color32::BLACK, Color32::WHITE) - 21.0).abs() < 0.01);
    }

    #[test]
    fn text_reads_at_seven_to_one_on_every_ground() {
        for ink in [INK, INK_SOFT, ACCENT, STOP, GO, NOTE] {
            for ground in [SHEET, PAPER] {
                assert!(contrast(ink, ground) >= 7.0, "{ink:?} on {ground:?}: {}", contrast(ink, ground));
            }
        }
        for index in 0..LEVELS.len() {
            assert!(contrast(text_on(level(index)), level(index)) >= 4.5, "level {index}");
        }
        for step in 0..=100 {
            let fill = ramp(step as f32 / 100.0);
            assert!(contrast(text_on(fill), fill) >= 4.5, "ramp at {step} %: {}", contrast(text_on(fill), fill));
        }
    }
}
