//! What is known of the panels of one template, taken over to another.

use super::model::PanelRecord;
use super::paint::PreviousCoating;
use crate::geometry::MapPoint;
use crate::polish::{PaintHardness, PaintHistory};
use crate::vehicle::{Panel, PanelId, Template};
use std::collections::BTreeMap;
use std::sync::Arc;

/// What is known of each panel.
type Records = BTreeMap<PanelId, Arc<PanelRecord>>;

/// Takes records over from one template to another.
///
/// Where both are the same drawing, cut up differently, everything goes by its place: each spot and each defect to the panel it
/// lies on, the facts about the paint to every part of the old panel. Between different drawings a place says nothing, so
/// records stay with panels of the same name, and those of panels that are not there any more go.
pub fn carry_over(records: &Records, from: &Template, to: &Template) -> Records {
    let by_place = from.is_drawn_like(to);
    let mut carried = Records::new();
    // Records that can stay go first, so that a merged panel keeps the facts of the one whose name it has.
    let stays = |id: &PanelId| to.panel(id).is_some();
    let (first, then): (Vec<_>, Vec<_>) = records.iter().partition(|(id, _)| stays(id));
    for (id, record) in first.into_iter().chain(then) {
        match (from.panel(id), to.panel(id)) {
            (Some(old), new) if by_place && !new.is_some_and(|new| same_outline(old, new)) => {
                share_out(record, old, to, &mut carried);
            }
            (_, Some(_)) => take_in(&mut carried, id, Arc::clone(record)),
            (_, None) => {}
        }
    }
    carried
}

/// Whether a panel was left as it was.
fn same_outline(a: &Panel, b: &Panel) -> bool {
    let (a, b) = (a.outline.curves(), b.outline.curves());
    a.len() == b.len() && a.iter().zip(b).all(|(a, b)| (a.at(0.0) - b.at(0.0)).length() < 0.01)
}

/// Gives every panel that lies where the old one did its part of what was known.
fn share_out(record: &PanelRecord, old: &Panel, to: &Template, carried: &mut Records) {
    let heirs: Vec<&Panel> = to.panels_under(old).into_iter().map(|index| &to.panels[index]).collect();
    // What lies beside the old panel stays with its name, or with the nearest part.
    let nearest = |at: MapPoint| {
        let distance = |p: &&&Panel| (p.label.centre - at).length();
        heirs.iter().min_by(|a, b| distance(a).total_cmp(&distance(b))).map(|p| p.id.clone())
    };
    let heir_of = |at: MapPoint| {
        let on_it = heirs.iter().find(|p| p.outline.contains(at)).map(|p| p.id.clone());
        on_it.or_else(|| to.panel(&old.id).map(|p| p.id.clone())).or_else(|| nearest(at))
    };
    for heir in &heirs {
        let facts = PanelRecord { spots: Vec::new(), defects: Vec::new(), ..record.clone() };
        take_in(carried, &heir.id, Arc::new(facts));
    }
    for spot in &record.spots {
        if let Some(heir) = heir_of(spot.at) {
            take_in(carried, &heir, Arc::new(PanelRecord { spots: vec![spot.clone()], ..PanelRecord::default() }));
        }
    }
    for defect in &record.defects {
        if let Some(heir) = heir_of(defect.at) {
            take_in(carried, &heir, Arc::new(PanelRecord { defects: vec![defect.clone()], ..PanelRecord::default() }));
        }
    }
}

/// Adds a record to what is carried already: lists grow, a fact that is known stays.
fn take_in(carried: &mut Records, panel: &PanelId, record: Arc<PanelRecord>) {
    let Some(known) = carried.get_mut(panel) else {
        if !record.is_blank() {
            carried.insert(panel.clone(), record);
        }
        return;
    };
    let known = Arc::make_mut(known);
    known.finish = known.finish.or(record.finish);
    known.substrate = known.substrate.or(record.substrate);
    if known.history == PaintHistory::Unknown {
        known.history = record.history;
    }
    known.painted_on = known.painted_on.or(record.painted_on);
    if known.coating == PreviousCoating::Unknown {
        known.coating = record.coating;
    }
    if known.hardness == PaintHardness::Usual {
        known.hardness = record.hardness;
    }
    // Of two levels held by hand the lower one is safe.
    known.level_at_most = known.level_at_most.into_iter().chain(record.level_at_most).min();
    known.left_uncoated |= record.left_uncoated;
    known.spots.extend(record.spots.iter().cloned());
    known.defects.extend(record.defects.iter().cloned());
    known.gloss.extend(missing(&known.gloss, &record.gloss));
    known.removals.entries.extend(missing(&known.removals.entries, &record.removals.entries));
    if known.note.is_empty() {
        known.note.clone_from(&record.note);
    } else if !record.note.is_empty() && known.note != record.note {
        known.note = format!("{}\n{}", known.note, record.note);
    }
}

/// What `other` has more often than `known`.
///
/// Two halves that become one panel had the same visits, and what went from one place did not go twice.
fn missing<T: PartialEq + Clone>(known: &[T], other: &[T]) -> Vec<T> {
    let mut left: Vec<&T> = known.iter().collect();
    let mut is_new = |item: &&T| match left.iter().position(|k| k == item) {
        Some(at) => {
            left.swap_remove(at);
            false
        }
        None => true,
    };
    other.iter().filter(|item| is_new(item)).cloned().collect()
}
