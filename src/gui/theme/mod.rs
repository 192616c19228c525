//! Colours, sizes and typeface of the window.

#[cfg(test)]
mod contrast_test;
mod palette;

pub(super) use palette::{Palette, defect_class, paper_colour, text_on, worker};

use crate::say;
use crate::words::localised;
use eframe::egui::{
    self, Color32, CornerRadius, FontData, FontDefinitions, FontFamily, FontId, Margin, RichText, Shadow, Stroke,
    TextStyle, vec2,
};
use std::sync::Arc;

/// Radius of corners, in points. Above 4.6 egui draws twice as many triangles for each that has a line.
pub(super) const CORNER: u8 = 4;

/// What the window looks like.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default, serde::Serialize, serde::Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Theme {
    /// Ink on white paper.
    #[default]
    Light,
    /// For a dark bay.
    Dark,
    /// Highest contrast and heavier lines, for bright sun.
    Sunlight,
}

impl Theme {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Light, Self::Dark, Self::Sunlight];

    /// As it stands in a menu.
    pub fn name(self) -> &'static str {
        match self {
            Self::Light => say!("window-theme-light"),
            Self::Dark => say!("window-theme-dark"),
            Self::Sunlight => say!("window-theme-sunlight"),
        }
    }
}

/// Width of the rail.
pub(super) const RAIL_WIDTH: f32 = 164.0;
/// Width of the right side.
pub(super) const SIDE_WIDTH: f32 = 328.0;
/// Height of the time chart.
pub(super) const CHART_HEIGHT: f32 = 148.0;

/// Height of the top bar.
pub(super) fn bar_height(ctx: &egui::Context) -> f32 {
    target_side(ctx) + 16.0
}

/// Side of what can be pressed: larger where somebody works with gloves or by touch.
pub(super) fn target_side(ctx: &egui::Context) -> f32 {
    if has_large_targets(ctx) { 56.0 } else { 32.0 }
}

fn has_large_targets(ctx: &egui::Context) -> bool {
    ctx.data(|d| d.get_temp(egui::Id::unique("large-targets"))).unwrap_or(false)
}

/// Makes everything that can be pressed larger, or as usual.
pub(super) fn set_targets(ctx: &egui::Context, large: bool) {
    ctx.data_mut(|d| d.insert_temp(egui::Id::unique("large-targets"), large));
    set(ctx, current(ctx));
}

/// Key of the theme in the memory of the window.
fn key() -> egui::Id {
    egui::Id::unique("theme")
}

/// The theme of a window.
pub(super) fn current(ctx: &egui::Context) -> Theme {
    ctx.data(|d| d.get_temp(key())).unwrap_or_default()
}

/// The colours of a window.
pub(super) fn of(ctx: &egui::Context) -> &'static Palette {
    Palette::of(current(ctx))
}

/// The bold cut of the typeface.
pub(super) fn bold_family() -> FontFamily {
    FontFamily::Name("bold".into())
}

/// Bold text of a size.
pub(super) fn bold(text: impl Into<String>, size: f32) -> RichText {
    RichText::new(text).font(FontId::new(size, bold_family()))
}

/// Small soft text.
pub(super) fn soft(text: impl Into<String>) -> RichText {
    RichText::new(text).size(12.0).weak()
}

/// Sets typeface, sizes and colours of a window.
pub fn install(ctx: &egui::Context) {
    ctx.set_fonts(fonts());
    // Numbers of sliders; those of messages go through `words` anyway.
    let number = |value, decimals| localised(egui::emath::format_with_decimals_in_range(value, decimals));
    ctx.all_styles_mut(|s| s.number_formatter = egui::style::NumberFormatter::new(number));
    set(ctx, Theme::default());
}

/// Changes the theme of a window.
pub fn set(ctx: &egui::Context, theme: Theme) {
    ctx.data_mut(|d| d.insert_temp(key(), theme));
    ctx.set_theme(if theme == Theme::Dark { egui::ThemePreference::Dark } else { egui::ThemePreference::Light });
    let side = target_side(ctx);
    ctx.all_styles_mut(|s| style(s, theme, side));
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

fn style(style: &mut egui::Style, theme: Theme, side: f32) {
    let p = Palette::of(theme);
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
    spacing.button_padding = vec2(12.0, if side > 40.0 { 14.0 } else { 6.0 });
    spacing.interact_size = vec2(side.max(40.0), side);
    spacing.window_margin = Margin::same(16);
    spacing.menu_margin = Margin::same(8);
    spacing.slider_width = 176.0;
    spacing.combo_width = 120.0;
    style.interaction.selectable_labels = false;
    let visuals = &mut style.visuals;
    *visuals = if theme == Theme::Dark { egui::Visuals::dark() } else { egui::Visuals::light() };
    visuals.override_text_color = Some(p.ink);
    visuals.weak_text_color = Some(p.ink_soft);
    visuals.panel_fill = p.sheet;
    visuals.window_fill = p.sheet;
    visuals.window_stroke = Stroke::new(1.0, p.hairline);
    visuals.window_shadow = Shadow { offset: [0, 4], blur: 24, spread: 0, color: Color32::from_black_alpha(40) };
    visuals.popup_shadow = Shadow { offset: [0, 2], blur: 12, spread: 0, color: Color32::from_black_alpha(30) };
    visuals.window_corner_radius = CornerRadius::same(CORNER);
    visuals.menu_corner_radius = CornerRadius::same(CORNER);
    visuals.extreme_bg_color = p.sheet;
    visuals.faint_bg_color = p.paper;
    visuals.warn_fg_color = p.note;
    visuals.error_fg_color = p.stop;
    visuals.hyperlink_color = p.accent;
    visuals.selection.bg_fill = p.accent_wash;
    visuals.selection.stroke = Stroke::new(2.0, p.accent);
    visuals.slider_trailing_fill = true;
    let widgets = &mut visuals.widgets;
    for (state, fill, line) in [
        (&mut widgets.noninteractive, p.sheet, p.hairline),
        (&mut widgets.inactive, p.sheet, p.rim),
        (&mut widgets.hovered, p.paper, p.ink_soft),
        (&mut widgets.active, p.accent_wash, p.accent),
        (&mut widgets.open, p.paper, p.ink_soft),
    ] {
        state.bg_fill = fill;
        state.weak_bg_fill = fill;
        state.bg_stroke = Stroke::new(1.0, line);
        state.fg_stroke = Stroke::new(1.5, p.ink);
        state.corner_radius = CornerRadius::same(CORNER);
        state.expansion = 0.0;
    }
}
