//! The outer contour, and holes that should not be there.

use super::panels::Corner;
use crate::geometry::{MapCurve, Outline};
use std::collections::BTreeMap;

/// Joins the rim to closed loops: first those with the vehicle inside, then the holes.
pub(super) fn loops(rim: &[(Corner, Corner, MapCurve)]) -> (Vec<Outline>, Vec<Outline>) {
    let mut leaving: BTreeMap<Corner, Vec<usize>> = BTreeMap::new();
    for (i, (from, _, _)) in rim.iter().enumerate().rev() {
        leaving.entry(*from).or_default().push(i);
    }
    let mut used = vec![false; rim.len()];
    let (mut contour, mut holes) = (Vec::new(), Vec::new());
    for start in 0..rim.len() {
        let mut curves = Vec::new();
        let mut at = start;
        while !used[at] {
            used[at] = true;
            curves.push(rim[at].2);
            let Some(next) = leaving.get(&rim[at].1).and_then(|list| list.iter().rev().find(|i| !used[**i])) else {
                break;
            };
            at = *next;
        }
        if let Ok(outline) = Outline::new(curves) {
            if outline.signed_area_mm2() >= 0.0 { contour.push(outline) } else { holes.push(outline) }
        }
    }
    contour.sort_by(|a, b| b.map_area_mm2().total_cmp(&a.map_area_mm2()));
    (contour, holes)
}
