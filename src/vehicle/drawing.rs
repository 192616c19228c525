//! Whether two templates are the same drawing with other seams, and which panels of one lie where a panel of the other does.

use super::panel::Panel;
use super::template::Template;
use crate::geometry::MapPoint;

/// Boxes and areas of one drawing agree to this, mm and share: files are rounded to a thousandth of a millimetre.
const BOX_MM: f32 = 0.1;
const AREA_SHARE: f64 = 1e-4;
/// Places along each side of a panel's box that are looked at.
const STEPS: u16 = 24;

impl Template {
    /// Whether both are the same vehicle on the map, whatever panels it is divided into: what splitting and merging keep.
    pub fn is_drawn_like(&self, other: &Self) -> bool {
        let (a, b) = (self.bounds(), other.bounds());
        let area = |t: &Self| t.panels.iter().map(|p| p.outline.map_area_mm2()).sum::<f64>();
        let (own, others) = (area(self), area(other));
        (a.min - b.min).length() < BOX_MM
            && (a.max - b.max).length() < BOX_MM
            && (own - others).abs() <= AREA_SHARE * own.max(others)
    }

    /// Indices of the panels that lie, at least in part, where a panel of another template with the same drawing does; ascending.
    pub fn panels_under(&self, other: &Panel) -> Vec<usize> {
        let mut hits = vec![0_u32; self.panels.len()];
        let b = other.outline.bounds();
        for i in 0..STEPS {
            for j in 0..STEPS {
                let part = |k: u16| (f32::from(k) + 0.5) / f32::from(STEPS);
                let at = MapPoint::new(b.min.x + part(i) * b.width(), b.min.y + part(j) * b.height());
                if other.outline.contains(at)
                    && let Some(hit) = self.panel_at(at)
                {
                    hits[hit] += 1;
                }
            }
        }
        // One place may lie right on a seam, two hardly; a sliver is found by its own middle.
        let lies = |(index, hits): (usize, u32)| hits > 1 || other.outline.contains(self.panels[index].label.centre);
        hits.into_iter().enumerate().filter(|entry| lies(*entry)).map(|(index, _)| index).collect()
    }
}
