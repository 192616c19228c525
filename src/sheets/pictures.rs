//! The pictures that stand on sheets, with what they show in words.

use super::input::SheetInput;
use super::map::{self, MapStyle};
use super::model::Figure;
use crate::say;
use crate::scene::{Fill, LegendSymbol, MapScene, Overlay, PinShape, map_scene, polish_order_map};
use crate::units::listed;

/// Width of a column of A4, mm; the narrowest of all papers.
pub(super) const COLUMN: f32 = 180.0;

/// The map under an overlay, with its legend, as wide as a column.
pub fn map_picture(input: &SheetInput<'_>, overlay: Overlay) -> Figure {
    let scene = scene(input, overlay);
    let title = match overlay {
        Overlay::Film => say!("sheet-picture-film"),
        Overlay::Defects => say!("sheet-picture-defects"),
        Overlay::Polish => say!("sheet-picture-polish"),
        Overlay::Order => say!("sheet-picture-order"),
        Overlay::Body => say!("sheet-picture-body"),
    };
    drawn(input, &scene, title, 150.0, 2.9)
}

/// The map of the job under an overlay, in the units that are wanted.
pub(super) fn scene(input: &SheetInput<'_>, overlay: Overlay) -> MapScene {
    let mut scene = map_scene(input.job, input.template, input.insight, overlay, input.order);
    scene.show_in(input.options.units);
    scene
}

/// A scene with a title. `most_height` is without the legend.
pub(super) fn drawn(input: &SheetInput<'_>, scene: &MapScene, title: &str, most_height: f32, badge: f32) -> Figure {
    let words = words(input, scene, title);
    let style = MapStyle { title, words: &words, width: COLUMN, most_height, badge };
    map::figure(input.template, &for_paper(scene), &style)
}

/// The room that the same takes, with nothing drawn in it.
pub(super) fn room(input: &SheetInput<'_>, scene: &MapScene, most_height: f32) -> Figure {
    let style = MapStyle { title: "", words: "", width: COLUMN, most_height, badge: 0.0 };
    map::room(input.template, &for_paper(scene), &style)
}

/// Spots are dots on paper, without their values, which are in the record.
fn for_paper(scene: &MapScene) -> MapScene {
    let mut scene = scene.clone();
    for row in &mut scene.legend {
        if row.symbol == LegendSymbol::Pin(PinShape::Spot) {
            say!("sheet-where-read").clone_into(&mut row.text);
        }
    }
    scene
}

/// The map of one worker's own coating order.
pub(super) fn own_order(input: &SheetInput<'_>, worker: usize, most_height: f32) -> Figure {
    let mut scene = scene(input, Overlay::Order);
    only(&mut scene, worker);
    drawn(input, &scene, &say!("sheet-where-works", person = input.job.crew[worker].name.as_str()), most_height, 3.6)
}

/// What the map of one worker's own polishing stops shows, and its title.
pub(super) fn own_polishing(input: &SheetInput<'_>, worker: usize) -> (MapScene, String) {
    let mut scene = polish_order_map(input.job, input.template, input.insight, input.polishing);
    scene.show_in(input.options.units);
    only(&mut scene, worker);
    (scene, say!("sheet-where-polishes", person = input.job.crew[worker].name.as_str()))
}

/// Leaves only one worker's numbers; shades by turn would be those of everybody.
fn only(scene: &mut MapScene, worker: usize) {
    for mark in &mut scene.panels {
        mark.badges.retain(|b| b.worker == worker);
        if let Fill::Turn(surface, _) = mark.fill {
            mark.fill = Fill::Plain(surface);
        }
    }
    scene.legend.retain(|row| match row.symbol {
        LegendSymbol::Worker(of) => of == worker,
        LegendSymbol::Turns => false,
        _ => true,
    });
}

/// What a map shows, for those who can't see it: a value or the numbers of every panel that has any.
fn words(input: &SheetInput<'_>, scene: &MapScene, title: &str) -> String {
    let mut said = say!("sheet-unfolded", title = title);
    let mut panels: Vec<String> = Vec::new();
    for (index, mark) in scene.panels.iter().enumerate() {
        let what = if !mark.badges.is_empty() {
            let number = |b: &crate::scene::Badge| format!("{} {}", input.job.crew[b.worker].name, b.number);
            listed(&mark.badges.iter().map(number).collect::<Vec<_>>())
        } else if scene.overlay == Overlay::Defects {
            match scene.pins.iter().filter(|p| p.panel == index).count() {
                0 => continue,
                count => say!("sheet-marks", count = count),
            }
        } else if mark.value.is_empty() {
            continue;
        } else {
            mark.value.clone()
        };
        panels.push(format!("{} {what}", input.short_name(index)));
    }
    if !panels.is_empty() {
        said.push(' ');
        said.push_str(&panels.join("; "));
        said.push('.');
    }
    said
}
