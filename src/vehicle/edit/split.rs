//! Splitting a panel along a line.

use super::EditError;
use super::outline::{directed, edges, insert_point, nearest};
use crate::geometry::{MapCurve, MapPoint};
use crate::units::SquareMetres;
use crate::vehicle::build::Curves;
use crate::vehicle::entries::Name;
use crate::vehicle::id::{PanelId, Side};
use crate::vehicle::schema::{PanelEntry, Sides, TemplateFile};
use crate::vehicle::template::Template;

/// Nearer than this to a point that is there, the cut goes through that point, mm.
const SNAP_MM: f32 = 8.0;

impl Template {
    /// Cuts a panel in two along the straight line between the places of its outline that are nearest to `a` and `b`.
    ///
    /// The larger part keeps the id, so that what is known of the panel stays with it; the areas are shared out as on the map.
    /// The other side is cut alike. Whoever leant over the panel leans over both parts.
    ///
    /// # Errors
    /// [`EditError::UnknownPanel`]; [`EditError::AcrossCentre`]; [`EditError::NoCut`] where both places are on one straight
    /// edge; [`EditError::Faults`] where the line would leave the panel.
    pub fn split(&self, panel: &PanelId, a: MapPoint, b: MapPoint) -> Result<Self, EditError> {
        let (index, side) = self.entry_of(panel)?;
        if self.file.panels[index].side == Sides::Centre {
            return Err(EditError::AcrossCentre(panel.clone()));
        }
        let to_left = |p: MapPoint| if side == Side::Right { MapPoint::new(p.x, -p.y) } else { p };
        let mut file = self.file.clone();
        let first = cut_point(&mut file, index, to_left(a));
        let second = cut_point(&mut file, index, to_left(b));
        let (Some(first), Some(second)) = (first, second) else { return Err(EditError::NoCut(panel.clone())) };
        let (one, two) = parts(&file.panels[index].outline, &first, &second);
        let curves = Curves::new(&file, &mut Vec::new());
        let areas = [&one, &two].map(|names| map_area(names, &curves));
        if one.len() < 3 && areas[0] < 1.0 || two.len() < 3 && areas[1] < 1.0 || areas[0].min(areas[1]) < 100.0 {
            return Err(EditError::NoCut(panel.clone()));
        }
        let (large, small, share) = if areas[0] >= areas[1] {
            (one, two, areas[0] / (areas[0] + areas[1]))
        } else {
            (two, one, areas[1] / (areas[0] + areas[1]))
        };
        divide(&mut file, index, (large, small), share);
        self.sound(&file)
    }

    /// Where [`Template::split`] would cut: the two places of the panel's outline that are nearest to `a` and `b`; `None` for a
    /// panel that does not exist.
    pub fn cut_ends(&self, panel: &PanelId, a: MapPoint, b: MapPoint) -> Option<[MapPoint; 2]> {
        let curves = self.panel(panel)?.outline.curves();
        let end = |to: MapPoint| {
            let (index, t) = nearest(curves.iter().copied(), to)?;
            let curve = curves.get(index)?;
            let at = curve.at(t);
            let corner = [curve.at(0.0), curve.at(1.0)].into_iter().find(|corner| (*corner - at).length() < SNAP_MM);
            Some(corner.unwrap_or(at))
        };
        Some([end(a)?, end(b)?])
    }
}

/// The point of the outline nearest to a place, put there if need be.
fn cut_point(file: &mut TemplateFile, index: usize, at: MapPoint) -> Option<Name> {
    let curves = Curves::new(file, &mut Vec::new());
    let points = directed(&file.panels[index], &curves);
    let (edge, t) = nearest(edges(&points).map(|(a, b)| curves.between(a, b)), at)?;
    let (from, to) = (points[edge], points[(edge + 1) % points.len()]);
    let place = curves.between(from, to).at(t);
    for point in [from, to] {
        if (curves.places[point] - place).length() < SNAP_MM {
            return Some(file.points.0[point].0.clone());
        }
    }
    Some(insert_point(file, &curves, from, to, t))
}

/// The loop cut at two of its points.
fn parts(outline: &[Name], first: &Name, second: &Name) -> (Vec<Name>, Vec<Name>) {
    let at = |name: &Name| outline.iter().position(|n| n == name).unwrap_or(0);
    let (i, j) = (at(first).min(at(second)), at(first).max(at(second)));
    (outline[i..=j].to_vec(), outline[j..].iter().chain(&outline[..=i]).cloned().collect())
}

fn map_area(names: &[Name], curves: &Curves) -> f64 {
    let points: Vec<usize> = names.iter().filter_map(|n| curves.index(n)).collect();
    let share = |(a, b): (usize, usize)| curves.between(a, b);
    edges(&points).map(share).map(|c: MapCurve| c.area_share()).sum::<f64>().abs()
}

fn divide(file: &mut TemplateFile, index: usize, (large, small): (Vec<Name>, Vec<Name>), share: f64) {
    let whole = file.panels[index].clone();
    let area = |share: f64| SquareMetres::new(whole.area_m2.m2() * share).unwrap_or(whole.area_m2);
    let tries = 2..=file.panels.len() + 2; // one more than there are panels, so one of them is free
    let id = tries.map(|i| format!("{}-{i}", whole.id.as_str())).find(|id| !taken(file, id)).unwrap_or_default();
    let part = whole.part.clone().unwrap_or_else(|| whole.id.clone());
    let same = |p: &&PanelEntry| p.part.as_ref().unwrap_or(&p.id) == &part;
    let highest = file.panels.iter().filter(same).filter_map(|p| p.number).max().unwrap_or(0);
    let number = whole.number.unwrap_or(highest + 1);
    let second = PanelEntry {
        id: Name::made(&id),
        part: Some(part),
        number: Some(highest.max(number) + 1),
        outline: small,
        area_m2: area(1.0 - share),
        ..whole.clone()
    };
    let old = file.panels[index].id.clone();
    for panel in &mut file.panels {
        if panel.leans_over.contains(&old) {
            panel.leans_over.push(second.id.clone());
        }
    }
    let first = &mut file.panels[index];
    first.number = Some(number);
    first.outline = large;
    first.area_m2 = area(share);
    file.panels.insert(index + 1, second);
}

fn taken(file: &TemplateFile, id: &str) -> bool {
    file.panels.iter().any(|p| p.id.as_str() == id)
}
