//! Making one panel of two.

use super::EditError;
use super::outline::{directed, edges};
use crate::units::SquareMetres;
use crate::vehicle::build::Curves;
use crate::vehicle::entries::Name;
use crate::vehicle::id::PanelId;
use crate::vehicle::schema::{PanelEntry, Sides, TemplateFile};
use crate::vehicle::template::Template;
use std::collections::{BTreeMap, BTreeSet};

impl Template {
    /// Takes away the seam between two neighbours; the first keeps its id and what it is made of, the areas add up.
    ///
    /// Two neighbours of one side are merged on both sides alike. The left and the right half of one panel become one panel
    /// across the centreline, whose id has no side.
    ///
    /// # Errors
    /// [`EditError::UnknownPanel`]; [`EditError::NotNeighbours`] where they share no seam, where taking it away would leave a
    /// hole, or where only one of them exists on both sides.
    pub fn merge(&self, a: &PanelId, b: &PanelId) -> Result<Self, EditError> {
        let ((i, side_a), (j, side_b)) = (self.entry_of(a)?, self.entry_of(b)?);
        let apart = || EditError::NotNeighbours(a.clone(), b.clone());
        let mut file = self.file.clone();
        let curves = Curves::new(&file, &mut Vec::new());
        if i == j && side_a != side_b {
            let whole = across(&file.panels[i], &curves).ok_or_else(apart)?;
            file.panels[i] = whole;
            return self.sound(&file);
        }
        let (one, two) = (&file.panels[i], &file.panels[j]);
        if i == j || side_a != side_b || one.side != two.side || one.side == Sides::Centre {
            return Err(apart());
        }
        let outline = joined(&directed(one, &curves), &directed(two, &curves)).ok_or_else(apart)?;
        let area = SquareMetres::new(one.area_m2.m2() + two.area_m2.m2()).unwrap_or(one.area_m2);
        let (low, high) =
            (one.height_mm.0.get().min(two.height_mm.0.get()), one.height_mm.1.get().max(two.height_mm.1.get()));
        let gone = two.id.clone();
        let over: Vec<Name> = one.leans_over.iter().chain(&two.leans_over).cloned().collect();
        let names = outline.iter().map(|p| file.points.0[*p].0.clone()).collect();
        let kept = &mut file.panels[i];
        kept.outline = names;
        kept.area_m2 = area;
        kept.height_mm = (super::Number::of(low), super::Number::of(high));
        kept.leans_over = over;
        let kept = kept.id.clone();
        file.panels.remove(j);
        rename(&mut file, &gone, &kept);
        self.sound(&file)
    }
}

/// One loop round two that share curves; `None` where they share none or the rest is not one loop.
fn joined(one: &[usize], two: &[usize]) -> Option<Vec<usize>> {
    let first: BTreeSet<(usize, usize)> = edges(one).collect();
    let second: BTreeSet<(usize, usize)> = edges(two).collect();
    let left: Vec<(usize, usize)> = first
        .iter()
        .filter(|(a, b)| !second.contains(&(*b, *a)))
        .chain(second.iter().filter(|(a, b)| !first.contains(&(*b, *a))))
        .copied()
        .collect();
    let next: BTreeMap<usize, usize> = left.iter().copied().collect();
    if left.len() == first.len() + second.len() || next.len() != left.len() {
        return None;
    }
    let start = *one.iter().find(|p| next.contains_key(p))?;
    let mut outline = vec![start];
    let mut at = *next.get(&start)?;
    while at != start && outline.len() <= next.len() {
        outline.push(at);
        at = *next.get(&at)?;
    }
    (outline.len() == next.len()).then_some(outline)
}

/// The panel across the centreline that two halves make: the outline from centreline to centreline, without the edge on it.
fn across(entry: &PanelEntry, curves: &Curves) -> Option<PanelEntry> {
    let points = directed(entry, curves);
    let n = points.len();
    let central: Vec<usize> =
        (0..n).filter(|i| curves.is_central(points[*i]) && curves.is_central(points[(i + 1) % n])).collect();
    let [edge] = central[..] else { return None };
    let outline = (1..=n).map(|k| entry_name(entry, curves, points[(edge + k) % n])).collect::<Option<Vec<Name>>>()?;
    let area = SquareMetres::new(2.0 * entry.area_m2.m2()).ok()?;
    Some(PanelEntry { side: Sides::Centre, outline, area_m2: area, ..entry.clone() })
}

fn entry_name(entry: &PanelEntry, curves: &Curves, point: usize) -> Option<Name> {
    entry.outline.iter().find(|n| curves.index(n) == Some(point)).cloned()
}

/// Lets everybody who leant over a panel that is gone lean over the one that took it in.
fn rename(file: &mut TemplateFile, gone: &Name, kept: &Name) {
    for panel in &mut file.panels {
        for name in &mut panel.leans_over {
            if name == gone {
                *name = kept.clone();
            }
        }
        let own = panel.id.clone();
        let mut seen = BTreeSet::new();
        panel.leans_over.retain(|n| *n != own && seen.insert(n.clone()));
    }
}
