//! The colours of the three themes. Nothing else names a colour.
//!
//! Paper and ink first; colour only where it means something. Kinds take Okabe-Ito hues, each with a shape of its own; ordered
//! values take the cividis ramp (both from memory; the contrast tests below hold them to what they are for). Red is kept for
//! "stop, someone or something gets hurt".

use super::Theme;
use eframe::egui::Color32;

/// The colours of one theme.
#[derive(Debug, Clone, Copy)]
pub(in crate::gui) struct Palette {
    /// Text.
    pub(in crate::gui) ink: Color32,
    /// Less important text; still 7:1 on paper.
    pub(in crate::gui) ink_soft: Color32,
    /// Sheets: rail, right side, charts.
    pub(in crate::gui) sheet: Color32,
    /// The table the map lies on.
    pub(in crate::gui) paper: Color32,
    /// Lines between things.
    pub(in crate::gui) hairline: Color32,
    /// Gaps between panels.
    pub(in crate::gui) seam: Color32,
    /// The outline of the vehicle, and dark outlines of symbols.
    pub(in crate::gui) contour: Color32,
    /// Quiet drawing: handles, body lines.
    pub(in crate::gui) quiet: Color32,
    /// Rims of fields and buttons, and fine marks that mean something; 3:1 on every ground.
    pub(in crate::gui) rim: Color32,
    /// Rims.
    pub(in crate::gui) wheel: Color32,
    /// Tyres.
    pub(in crate::gui) tyre: Color32,
    /// Painted surface.
    pub(in crate::gui) paint: Color32,
    /// Glass.
    pub(in crate::gui) glass: Color32,
    /// Lamps, and those at the rear.
    pub(in crate::gui) lamp: Color32,
    pub(in crate::gui) rear_lamp: Color32,
    /// Bare trim.
    pub(in crate::gui) trim: Color32,
    /// A panel with wet coating.
    pub(in crate::gui) wet: Color32,
    /// A panel with nothing left to do.
    pub(in crate::gui) done: Color32,
    /// What is chosen, and the one thing to press.
    pub(in crate::gui) accent: Color32,
    /// Text on the accent.
    pub(in crate::gui) on_accent: Color32,
    /// A wash of the accent behind chosen rows.
    pub(in crate::gui) accent_wash: Color32,
    /// Stop: someone or something gets hurt.
    pub(in crate::gui) stop: Color32,
    /// Free to go.
    pub(in crate::gui) go: Color32,
    /// Something to look at, nothing dangerous.
    pub(in crate::gui) note: Color32,
    /// Factor on the widths of lines.
    pub(in crate::gui) line: f32,
    levels: [Color32; 5],
    /// What the ramp is mixed with, and how much of it, so that a whole vehicle in it stays calm; the order of lightness is kept.
    wash: (Color32, f32),
}

impl Palette {
    /// The palette of a theme.
    pub(super) fn of(theme: Theme) -> &'static Self {
        match theme {
            Theme::Light => &LIGHT,
            Theme::Dark => &DARK,
            Theme::Sunlight => &SUNLIGHT,
        }
    }

    /// Shade of a polishing level, 0 to 4.
    pub(in crate::gui) fn level(&self, index: usize) -> Color32 {
        self.levels[index.min(self.levels.len() - 1)]
    }

    /// Lines of a hatch, to be seen on every shade.
    pub(in crate::gui) fn hatch(&self) -> Color32 {
        self.contour.gamma_multiply(0.5)
    }

    /// A place on the ordered ramp, 0 to 1.
    pub(in crate::gui) fn ramp(&self, share: f32) -> Color32 {
        let place = share.clamp(0.0, 1.0) * (RAMP.len() - 1) as f32;
        let low = (place.floor() as usize).min(RAMP.len() - 2);
        RAMP[low].lerp_to_gamma(RAMP[low + 1], place - low as f32).lerp_to_gamma(self.wash.0, self.wash.1)
    }
}

/// Colour of a worker.
pub(in crate::gui) fn worker(index: usize) -> Color32 {
    WORKERS[index % WORKERS.len()]
}

/// A colour of paper, where a page is shown as it is printed: `sheets` says which.
pub(in crate::gui) fn paper_colour([r, g, b]: [u8; 3]) -> Color32 {
    Color32::from_rgb(r, g, b)
}

/// Colour of a class of defects.
pub(in crate::gui) fn defect_class(index: usize) -> Color32 {
    CLASSES[index % CLASSES.len()]
}

/// Black or white, whichever reads better on a fill.
pub(in crate::gui) fn text_on(fill: Color32) -> Color32 {
    let (dark, light) = (contrast(Color32::BLACK, fill), contrast(Color32::WHITE, fill));
    if dark >= light { Color32::BLACK } else { Color32::WHITE }
}

const LIGHT: Palette = Palette {
    ink: rgb(0x1B, 0x24, 0x30),
    ink_soft: rgb(0x47, 0x52, 0x60),
    sheet: rgb(0xFF, 0xFF, 0xFF),
    paper: rgb(0xF4, 0xF6, 0xF8),
    hairline: rgb(0xD6, 0xDB, 0xE1),
    seam: rgb(0x7A, 0x85, 0x92),
    contour: rgb(0x2E, 0x39, 0x46),
    quiet: rgb(0xA3, 0xAC, 0xB7),
    rim: rgb(0x85, 0x8F, 0x9B),
    wheel: rgb(0xEE, 0xF1, 0xF4),
    tyre: rgb(0xC2, 0xC9, 0xD1),
    paint: rgb(0xEB, 0xEF, 0xF3),
    glass: rgb(0xC6, 0xD8, 0xE6),
    lamp: rgb(0xF6, 0xEC, 0xC9),
    rear_lamp: rgb(0xF0, 0xD6, 0xCD),
    trim: rgb(0xD2, 0xD7, 0xDD),
    wet: rgb(0x9C, 0xD0, 0xEE),
    done: rgb(0xC9, 0xE6, 0xD9),
    accent: rgb(0x17, 0x4A, 0x7C),
    on_accent: rgb(0xFF, 0xFF, 0xFF),
    accent_wash: rgb(0xE3, 0xEC, 0xF6),
    stop: rgb(0x9E, 0x19, 0x11),
    go: rgb(0x00, 0x5F, 0x45),
    note: rgb(0x73, 0x4A, 0x00),
    line: 1.0,
    levels: [
        rgb(0xF7, 0xF8, 0xFA),
        rgb(0xDD, 0xE8, 0xF1),
        rgb(0xB9, 0xD2, 0xE4),
        rgb(0x8A, 0xB4, 0xD1),
        rgb(0x5F, 0x93, 0xB8),
    ],
    wash: (Color32::WHITE, 0.45),
};

const DARK: Palette = Palette {
    ink: rgb(0xEE, 0xF2, 0xF6),
    ink_soft: rgb(0xB4, 0xBE, 0xC9),
    sheet: rgb(0x1B, 0x20, 0x27),
    paper: rgb(0x13, 0x17, 0x1C),
    hairline: rgb(0x36, 0x3E, 0x48),
    seam: rgb(0x7C, 0x88, 0x96),
    contour: rgb(0xC9, 0xD2, 0xDC),
    quiet: rgb(0x5C, 0x67, 0x74),
    rim: rgb(0x68, 0x74, 0x82),
    wheel: rgb(0x2B, 0x33, 0x3C),
    tyre: rgb(0x0B, 0x0E, 0x12),
    paint: rgb(0x2B, 0x33, 0x3C),
    glass: rgb(0x24, 0x42, 0x5A),
    lamp: rgb(0x4B, 0x45, 0x2E),
    rear_lamp: rgb(0x4F, 0x3B, 0x36),
    trim: rgb(0x3B, 0x44, 0x4E),
    wet: rgb(0x1F, 0x5C, 0x82),
    done: rgb(0x24, 0x4A, 0x3C),
    accent: rgb(0x8E, 0xC4, 0xF4),
    on_accent: rgb(0x0C, 0x1B, 0x2A),
    accent_wash: rgb(0x22, 0x36, 0x4A),
    stop: rgb(0xFF, 0xA0, 0x96),
    go: rgb(0x74, 0xD8, 0xB4),
    note: rgb(0xF0, 0xC6, 0x82),
    line: 1.0,
    levels: [
        rgb(0x22, 0x29, 0x31),
        rgb(0x2C, 0x41, 0x54),
        rgb(0x34, 0x5B, 0x7A),
        rgb(0x3E, 0x77, 0xA2),
        rgb(0x56, 0x9A, 0xCC),
    ],
    wash: (Color32::BLACK, 0.15),
};

const SUNLIGHT: Palette = Palette {
    ink: Color32::BLACK,
    ink_soft: rgb(0x22, 0x22, 0x22),
    sheet: Color32::WHITE,
    paper: Color32::WHITE,
    hairline: rgb(0x80, 0x80, 0x80),
    seam: rgb(0x40, 0x40, 0x40),
    contour: Color32::BLACK,
    quiet: rgb(0x70, 0x70, 0x70),
    rim: rgb(0x70, 0x70, 0x70),
    wheel: Color32::WHITE,
    tyre: rgb(0xB0, 0xB0, 0xB0),
    paint: Color32::WHITE,
    glass: rgb(0xBC, 0xD8, 0xEE),
    lamp: rgb(0xFF, 0xF0, 0xB8),
    rear_lamp: rgb(0xFF, 0xD9, 0xCE),
    trim: rgb(0xC0, 0xC0, 0xC0),
    wet: rgb(0x7F, 0xC4, 0xEE),
    done: rgb(0xB6, 0xE2, 0xCC),
    accent: rgb(0x00, 0x38, 0x6E),
    on_accent: Color32::WHITE,
    accent_wash: rgb(0xD6, 0xE6, 0xF6),
    stop: rgb(0x8A, 0x00, 0x00),
    go: rgb(0x00, 0x4A, 0x34),
    note: rgb(0x5A, 0x38, 0x00),
    line: 1.5,
    levels: [
        Color32::WHITE,
        rgb(0xD2, 0xE6, 0xF6),
        rgb(0x95, 0xC3, 0xE8),
        rgb(0x52, 0x96, 0xCC),
        rgb(0x1A, 0x5E, 0x9C),
    ],
    wash: (Color32::WHITE, 0.45),
};

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

const fn rgb(r: u8, g: u8, b: u8) -> Color32 {
    Color32::from_rgb(r, g, b)
}

/// Contrast ratio of two opaque colours, 1 to 21. Source: WCAG 2.2, "contrast ratio" and "relative luminance".
pub(super) fn contrast(a: Color32, b: Color32) -> f32 {
    let (a, b) = (luminance(a), luminance(b));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

fn luminance(c: Color32) -> f32 {
    let channel = |v: u8| {
        let v = f32::from(v) / 255.0;
        if v <= 0.040_45 { v / 12.92 } else { ((v + 0.055) / 1.055).powf(2.4) }
    };
    0.2126 * channel(c.r()) + 0.7152 * channel(c.g()) + 0.0722 * channel(c.b())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn all() -> impl Iterator<Item = (Theme, &'static Palette)> {
        Theme::ALL.into_iter().map(|t| (t, Palette::of(t)))
    }

    #[test]
    fn black_on_white_has_the_contrast_of_the_standard() {
        // WCAG 2.2: the ratio goes up to 21:1, reached by black on white.
        assert!((contrast(Color32::BLACK, Color32::WHITE) - 21.0).abs() < 0.01);
    }

    #[test]
    fn text_reads_at_seven_to_one_on_every_ground() {
        for (theme, p) in all() {
            for ink in [p.ink, p.ink_soft, p.accent, p.stop, p.go, p.note] {
                for ground in [p.sheet, p.paper] {
                    let ratio = contrast(ink, ground);
                    assert!(ratio >= 7.0, "{theme:?}: {ink:?} on {ground:?}: {ratio}");
                }
            }
            assert!(contrast(p.on_accent, p.accent) >= 7.0, "{theme:?}: button");
            assert!(contrast(p.ink, p.accent_wash) >= 7.0, "{theme:?}: chosen row");
        }
    }

    #[test]
    fn numbers_read_at_the_minimum_of_the_standard_on_every_fill() {
        // WCAG 2.2, 1.4.3: 4.5:1.
        for (theme, p) in all() {
            let fills = (0..5).map(|i| p.level(i)).chain((0..4).map(worker)).chain([p.wet, p.done]);
            for fill in fills.chain((0..=100).map(|s| p.ramp(s as f32 / 100.0))) {
                let ratio = contrast(text_on(fill), fill);
                assert!(ratio >= 4.5, "{theme:?}: {fill:?}: {ratio}");
            }
        }
    }

    #[test]
    fn outlines_of_panels_are_seen_against_every_surface() {
        // WCAG 2.2, 1.4.11: 3:1 for what is needed to understand a drawing.
        for (theme, p) in all() {
            for surface in [p.paint, p.paper] {
                assert!(
                    contrast(p.seam, surface) >= 3.0,
                    "{theme:?}: seam on {surface:?}: {}",
                    contrast(p.seam, surface)
                );
                assert!(contrast(p.contour, surface) >= 7.0, "{theme:?}: contour on {surface:?}");
            }
        }
    }

    #[test]
    fn ordered_shades_keep_their_order() {
        for (theme, p) in all() {
            let levels: Vec<f32> = (0..5).map(|i| luminance(p.level(i))).collect();
            let ordered = levels.is_sorted() || levels.iter().rev().is_sorted();
            assert!(ordered, "{theme:?}: levels {levels:?}");
            let ramp: Vec<f32> = (0..=50).map(|s| luminance(p.ramp(s as f32 / 50.0))).collect();
            assert!(ramp.is_sorted(), "{theme:?}: ramp");
        }
    }
}
