//! The colours that editing uses, by name.

use crate::gui::theme;
use eframe::egui::{Color32, Context};

/// A few colours of the theme.
#[derive(Debug, Clone, Copy)]
pub(super) struct Palette {
    pub(super) ink: Color32,
    pub(super) ink_soft: Color32,
    pub(super) sheet: Color32,
    pub(super) hairline: Color32,
    pub(super) contour: Color32,
    pub(super) paint: Color32,
    pub(super) accent: Color32,
    pub(super) on_accent: Color32,
    pub(super) note: Color32,
}

/// The colours of a window.
pub(super) fn of(_: &Context) -> Palette {
    Palette {
        ink: theme::INK,
        ink_soft: theme::INK_SOFT,
        sheet: theme::SHEET,
        hairline: theme::HAIRLINE,
        contour: theme::CONTOUR,
        paint: theme::PAINT,
        accent: theme::ACCENT,
        on_accent: theme::ON_DARK,
        note: theme::NOTE,
    }
}
