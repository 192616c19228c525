//! The size a user gives: areas, heights and stances follow.

use super::edit::{EditError, rebuilt};
use super::entries::Number;
use super::panel::Panel;
use super::schema::{PanelEntry, Place};
use super::template::Template;
use crate::geometry::{MapPoint, Outline};
use crate::units::{Millimetres, SquareMetres};
use serde::{Deserialize, Serialize};
use std::ops::RangeInclusive;

/// Size over all, without mirrors.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Size {
    /// Length over all.
    pub length: Millimetres,
    /// Width without mirrors.
    pub width: Millimetres,
    /// Height.
    pub height: Millimetres,
}

impl Size {
    /// Lengths that a vehicle can have, mm. Our estimates, wide enough for anything on wheels.
    pub const LENGTH_MM: RangeInclusive<f64> = 500.0..=30_000.0;
    /// Widths that a vehicle can have, mm.
    pub const WIDTH_MM: RangeInclusive<f64> = 500.0..=4_000.0;
    /// Heights that a vehicle can have, mm.
    pub const HEIGHT_MM: RangeInclusive<f64> = 500.0..=6_000.0;

    /// Its three measures: name, value, what it can be.
    pub fn measures(self) -> [(&'static str, Millimetres, RangeInclusive<f64>); 3] {
        [
            ("length", self.length, Self::LENGTH_MM),
            ("width", self.width, Self::WIDTH_MM),
            ("height", self.height, Self::HEIGHT_MM),
        ]
    }
}

/// A panel whose middle is nearer to the centreline than this share of the width faces up. Our estimate.
const UP_TO: f64 = 0.3;

/// How much larger a vehicle becomes along each axis.
#[derive(Clone, Copy)]
struct Growth {
    length: f64,
    width: f64,
    height: f64,
}

impl Template {
    /// Size over all.
    pub fn size(&self) -> Size {
        Size { length: self.length, width: self.width, height: self.height }
    }

    /// The same vehicle in another size: real areas, heights and stances follow, the drawing stays as it is.
    ///
    /// A panel that faces up grows with length and width, one at a side with length and height, one at the front or rear with
    /// width and height. Which it is, is told from its place on the map: an estimate, like the areas themselves. Stances keep
    /// their distance from the body.
    ///
    /// # Errors
    /// [`EditError::Template`] when no vehicle is of that size.
    pub fn with_size(&self, size: Size) -> Result<Self, EditError> {
        let by = Growth {
            length: size.length.mm() / self.length.mm(),
            width: size.width.mm() / self.width.mm(),
            height: size.height.mm() / self.height.mm(),
        };
        let mut file = self.file.clone();
        for entry in &mut file.panels {
            let growth = self.growth(entry, by);
            entry.area_m2 = SquareMetres::new(entry.area_m2.m2() * growth).unwrap_or(entry.area_m2);
            let (low, high) = entry.height_mm;
            entry.height_mm = (Number::rounded(low.get() * by.height), Number::rounded(high.get() * by.height));
        }
        for (_, place) in &mut file.stances.0 {
            *place = self.moved(*place, size);
        }
        file.length_mm = Number::rounded(size.length.mm());
        file.width_mm = Number::rounded(size.width.mm());
        file.height_mm = Number::rounded(size.height.mm());
        rebuilt(&file)
    }

    /// Growth of the area of one panel.
    fn growth(&self, entry: &PanelEntry, by: Growth) -> f64 {
        let is_part = |p: &&Panel| p.id.as_str().strip_suffix(p.side.suffix()) == Some(entry.id.as_str());
        let Some(outline) = self.panels.iter().find(is_part).map(|p| &p.outline) else { return 1.0 };
        let faces_up = f64::from(outline.bounds().center().y.abs()) < UP_TO * self.width.mm();
        let along = if faces_up { by.length * by.width } else { by.length * by.height };
        let end = self.share_at_ends(outline);
        end * by.width * by.height + (1.0 - end) * along
    }

    /// Which share of an outline lies before the front or behind the rear, where the map is folded over; on a grid.
    fn share_at_ends(&self, outline: &Outline) -> f64 {
        const STEPS: u16 = 24;
        let b = outline.bounds();
        let (mut inside, mut at_ends) = (0.0, 0.0);
        for i in 0..STEPS {
            for j in 0..STEPS {
                let part = |k: u16| (f32::from(k) + 0.5) / f32::from(STEPS);
                let at = MapPoint::new(b.min.x + part(i) * b.width(), b.min.y + part(j) * b.height());
                if outline.contains(at) {
                    inside += 1.0;
                    let x = f64::from(at.x);
                    at_ends += f64::from(u8::from(x < 0.0 || x > self.length.mm()));
                }
            }
        }
        if inside > 0.0 { at_ends / inside } else { 0.0 }
    }

    fn moved(&self, (x, y): Place, size: Size) -> Place {
        let (length, half) = (self.length.mm(), 0.5 * self.width.mm());
        let x = match x.get() {
            x if x < 0.0 => x,
            x if x > length => x - length + size.length.mm(),
            x => x * size.length.mm() / length,
        };
        let y = match y.get() {
            y if y > half => y - half + 0.5 * size.width.mm(),
            y => y * size.width.mm() / self.width.mm(),
        };
        (Number::rounded(x), Number::rounded(y))
    }
}
