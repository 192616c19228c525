//! The colours of paper. No other file of the sheets names one.
//!
//! White paper and dark ink; colour only where it means something, and every meaning has a shape, a hatch or a number as well, so
//! that a grey print says the same. Kinds take Okabe-Ito hues, ordered values the cividis ramp made lighter (both from memory).

use crate::scene::{DefectClass, Fill};
use crate::vehicle::Surface;

/// A colour in sRGB.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Rgb(pub u8, pub u8, pub u8);

pub(super) const PAPER: Rgb = Rgb(0xFF, 0xFF, 0xFF);
pub(super) const INK: Rgb = Rgb(0x1B, 0x24, 0x30);
pub(super) const INK_SOFT: Rgb = Rgb(0x47, 0x52, 0x60);
pub(super) const HAIRLINE: Rgb = Rgb(0xB4, 0xBC, 0xC6);
pub(super) const SEAM: Rgb = Rgb(0x7A, 0x85, 0x92);
pub(super) const CONTOUR: Rgb = Rgb(0x2E, 0x39, 0x46);
pub(super) const QUIET: Rgb = Rgb(0xA3, 0xAC, 0xB7);
pub(super) const HATCH: Rgb = Rgb(0x6D, 0x7F, 0x93);
pub(super) const WHEEL: Rgb = Rgb(0xF4, 0xF6, 0xF8);
pub(super) const TYRE: Rgb = Rgb(0xD4, 0xD9, 0xDF);
pub(super) const PAINT: Rgb = Rgb(0xF1, 0xF4, 0xF7);
pub(super) const TRIM: Rgb = Rgb(0xDE, 0xE2, 0xE7);
pub(super) const LAMP: Rgb = Rgb(0xF8, 0xF1, 0xD9);
const GLASS: Rgb = Rgb(0xD9, 0xE5, 0xEE);
const REAR_LAMP: Rgb = Rgb(0xF4, 0xE0, 0xD9);
pub(super) const ACCENT: Rgb = Rgb(0x17, 0x4A, 0x7C);
const WET: Rgb = Rgb(0x9C, 0xD0, 0xEE);
const DONE: Rgb = Rgb(0xC9, 0xE6, 0xD9);
const LEVELS: [Rgb; 5] =
    [Rgb(0xFB, 0xFC, 0xFD), Rgb(0xE4, 0xED, 0xF5), Rgb(0xC6, 0xDA, 0xE9), Rgb(0x9F, 0xC2, 0xDB), Rgb(0x77, 0xA6, 0xC7)];
/// Okabe-Ito blue, orange, bluish green, reddish purple: one per worker.
const WORKERS: [Rgb; 4] = [Rgb(0x00, 0x72, 0xB2), Rgb(0xE6, 0x9F, 0x00), Rgb(0x00, 0x9E, 0x73), Rgb(0xCC, 0x79, 0xA7)];
/// Okabe-Ito sky blue, vermilion, yellow, black: one per class of defect.
const CLASSES: [Rgb; 4] = [Rgb(0x56, 0xB4, 0xE9), Rgb(0xD5, 0x5E, 0x00), Rgb(0xF0, 0xE4, 0x42), Rgb(0x2B, 0x2B, 0x2B)];
/// Cividis in five steps from dark to light, mixed with white so that dark print lies on all of it.
const RAMP: [Rgb; 5] =
    [Rgb(0x8C, 0x9A, 0xB2), Rgb(0xA6, 0xAD, 0xBB), Rgb(0xC0, 0xC0, 0xC1), Rgb(0xD8, 0xD3, 0xBF), Rgb(0xF2, 0xE9, 0xBB)];

impl Rgb {
    /// Somewhere between two colours.
    fn mixed(self, other: Self, share: f32) -> Self {
        let one = |a: u8, b: u8| (f32::from(a) + (f32::from(b) - f32::from(a)) * share.clamp(0.0, 1.0)).round() as u8;
        Self(one(self.0, other.0), one(self.1, other.1), one(self.2, other.2))
    }

    /// As CSS and SVG write it.
    pub(super) fn hex(self) -> String {
        format!("#{:02x}{:02x}{:02x}", self.0, self.1, self.2)
    }
}

/// Colour of a worker.
pub(super) fn worker(index: usize) -> Rgb {
    WORKERS[index % WORKERS.len()]
}

/// Colour of a class of defects.
pub(super) fn class(class: DefectClass) -> Rgb {
    CLASSES[class as usize % CLASSES.len()]
}

/// A place on the ordered ramp, 0 to 1.
pub(super) fn ramp(share: f32) -> Rgb {
    let place = share.clamp(0.0, 1.0) * (RAMP.len() - 1) as f32;
    let low = (place.floor() as usize).min(RAMP.len() - 2);
    RAMP[low].mixed(RAMP[low + 1], place - low as f32)
}

/// Colour of a fill; `rear` for what stands at the rear, where lamps are red.
pub(super) fn fill(fill: Fill, rear: bool) -> Rgb {
    match fill {
        Fill::Plain(Surface::Paint) | Fill::Unread => PAINT,
        Fill::Plain(Surface::Glass) => GLASS,
        Fill::Plain(Surface::Lamp) => {
            if rear {
                REAR_LAMP
            } else {
                LAMP
            }
        }
        Fill::Plain(Surface::Trim) => TRIM,
        Fill::Scale(share) => ramp(share),
        Fill::Level(level) => LEVELS[(level as usize).min(LEVELS.len() - 1)],
        Fill::LeftOut => PAPER,
        Fill::Wet => WET,
        Fill::Done => DONE,
        Fill::Turn(surface, share) => self::fill(Fill::Plain(surface), rear).mixed(CONTOUR, 0.3 * share),
    }
}

/// Dark or white, whichever reads better.
pub(super) fn text_on(fill: Rgb) -> Rgb {
    if contrast(INK, fill) >= contrast(PAPER, fill) { INK } else { PAPER }
}

/// Contrast ratio, 1 to 21. Source: WCAG 2.2, "contrast ratio" and "relative luminance".
fn contrast(a: Rgb, b: Rgb) -> f32 {
    let (a, b) = (luminance(a), luminance(b));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

fn luminance(c: Rgb) -> f32 {
    let channel = |v: u8| {
        let v = f32::from(v) / 255.0;
        if v <= 0.040_45 { v / 12.92 } else { ((v + 0.055) / 1.055).powf(2.4) }
    };
    0.2126 * channel(c.0) + 0.7152 * channel(c.1) + 0.0722 * channel(c.2)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_reads_at_seven_to_one_on_paper_and_four_and_a_half_on_every_fill() {
        // WCAG 2.2, 1.4.6 and 1.4.3.
        for ink in [INK, INK_SOFT, ACCENT] {
            assert!(contrast(ink, PAPER) >= 7.0, "{ink:?}");
        }
        let ramp = (0..=20).map(|k| ramp(k as f32 / 20.0));
        for fill in ramp.chain(LEVELS).chain(WORKERS).chain([PAINT, GLASS, TRIM, LAMP]) {
            assert!(contrast(text_on(fill), fill) >= 4.5, "{fill:?}: {}", contrast(text_on(fill), fill));
        }
    }

    #[test]
    fn a_grey_print_keeps_the_order_of_shades() {
        let levels = LEVELS.map(luminance);
        assert!(levels.is_sorted_by(|a, b| a > b), "{levels:?}");
        let ramp = RAMP.map(luminance);
        assert!(ramp.is_sorted(), "{ramp:?}");
    }
}
