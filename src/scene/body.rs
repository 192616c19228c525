//! The map while the vehicle itself is changed: which panels are left out, and which are made of something else than most.

use super::map::{Fill, LegendRow, LegendSymbol, MapScene};
use crate::say;
use crate::vehicle::{Panel, Substrate, Surface, Template};
use crate::words::decimal;

/// Marks every panel that is left out with the reason, and every painted one that is not made of what most are.
pub(super) fn show(template: &Template, scene: &mut MapScene) {
    let usual = most_common(template);
    for (panel, mark) in template.panels.iter().zip(&mut scene.panels) {
        let made_of = panel.substrate.name();
        mark.summary = say!("scene-made-of", substrate = made_of, area = decimal(panel.area.m2(), 2));
        if let Some(skip) = panel.skip {
            mark.fill = Fill::LeftOut;
            skip.short().clone_into(&mut mark.value);
            mark.summary = format!("{}; {}", mark.summary, skip.words());
        } else if is_painted(panel) && Some(panel.substrate) != usual {
            made_of.clone_into(&mut mark.value);
        }
    }
    let mut row = |fill, text: String| {
        if scene.panels.iter().any(|mark| mark.fill == fill) {
            scene.legend.push(LegendRow { symbol: LegendSymbol::Fill(fill), text });
        }
    };
    let painted = usual.map_or_else(String::new, |kind| say!("scene-painted-usual", substrate = kind.name()));
    row(Fill::Plain(Surface::Paint), painted);
    row(Fill::Plain(Surface::Glass), say!("scene-glass").to_owned());
    row(Fill::Plain(Surface::Lamp), say!("scene-lamp").to_owned());
    row(Fill::Plain(Surface::Trim), say!("scene-trim").to_owned());
    row(Fill::LeftOut, say!("scene-left-out").to_owned());
}

fn is_painted(panel: &Panel) -> bool {
    panel.surface == Surface::Paint
}

/// What most painted panels are made of; none where nothing is painted.
fn most_common(template: &Template) -> Option<Substrate> {
    let count = |kind: &Substrate| template.panels.iter().filter(|p| is_painted(p) && p.substrate == *kind).count();
    Substrate::ALL.into_iter().filter(|kind| count(kind) > 0).max_by_key(count)
}
