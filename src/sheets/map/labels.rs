//! Values and numbers on panels; what has no room on its panel stands beside the vehicle on a leader line. Nothing overlaps anything.

use super::{View, symbols, whole};
use crate::geometry::{LabelPlace, ScreenPoint, ScreenRect, free_place};
use crate::polish::Level;
use crate::scene::{Badge, Fill, MapScene, PanelMark};
use crate::sheets::font;
use crate::sheets::page::{Item, PaperPoint, Run, circle, polyline, rectangle};
use crate::sheets::palette::{self, ACCENT, CONTOUR, INK, INK_SOFT, PAPER, Rgb};
use crate::vehicle::{Panel, Template};

/// Sizes of a value, mm; the largest that fits is taken.
const SIZES: [f32; 3] = [4.6, 3.4, 2.6];
/// Words of more letters than a number are never of the largest size.
const NUMBER: usize = 4;
/// Size of a second line beside that of the value.
const BELOW: f32 = 0.72;
const LEADING: f32 = 1.08;
/// Height of the budget bar under a value, with its gap.
const BAR: f32 = 2.2;
/// The nearest that a label stands to its panel's middle, mm.
const NEAREST: f32 = 4.5;
/// With more labels than this beside the vehicle none is written there.
const CROWD: usize = 40;

/// A label that was drawn.
pub(super) struct Label {
    pub(super) rect: ScreenRect,
}

/// Lines of bold text, one under the middle of the other, with a bar under them.
struct Words {
    lines: Vec<(String, f32)>,
    bar: Option<f32>,
}

impl Words {
    fn size(&self) -> (f32, f32) {
        let wide = self.lines.iter().map(|(t, size)| font::width(t, true, *size)).fold(0.0, f32::max);
        let high: f32 = self.lines.iter().map(|(_, size)| size * LEADING).sum();
        (wide, high + if self.bar.is_some() { BAR } else { 0.0 })
    }

    fn draw(&self, items: &mut Vec<Item>, rect: ScreenRect, ink: Rgb) {
        let mut y = rect.min.y;
        for (text, size) in &self.lines {
            let x = rect.center().x - font::width(text, true, *size) / 2.0;
            let at = PaperPoint::new(x, y + size * (LEADING + font::CAPITALS) / 2.0);
            items.push(Item::Text(Run { at, size: *size, bold: true, colour: ink, text: text.clone() }));
            y += size * LEADING;
        }
        if let Some(used) = self.bar {
            let width = rect.width().clamp(7.0, 15.0);
            bar(items, (rect.center().x - width / 2.0, y + 0.5), width, used);
        }
    }
}

/// How much of the budget the plan uses at most.
pub(super) fn bar(items: &mut Vec<Item>, (x, y): (f32, f32), width: f32, used: f32) {
    items.push(rectangle(x, y, width, 1.2, Some(PAPER), None));
    items.push(rectangle(x, y, width * used, 1.2, Some(ACCENT), None));
    items.push(rectangle(x, y, width, 1.2, None, Some(whole(CONTOUR, 0.15))));
}

/// Draws all labels; answers where they stand.
pub(super) fn draw(
    items: &mut Vec<Item>,
    template: &Template,
    view: &View,
    scene: &MapScene,
    radius: f32,
) -> Vec<Label> {
    let mut placed = Vec::new();
    let mut outside = Vec::new();
    for (panel, mark) in template.panels.iter().zip(&scene.panels) {
        let inside = if !mark.badges.is_empty() {
            badges_on(items, view, panel, mark, radius)
        } else if mark.value.is_empty() {
            continue;
        } else {
            value_on(items, view, panel, mark)
        };
        match inside {
            Some(rect) => placed.push(Label { rect }),
            None => outside.push((panel, mark)),
        }
    }
    if outside.len() <= CROWD {
        for (panel, mark) in outside {
            beside(items, template, view, (panel, mark), radius, &mut placed);
        }
    }
    placed
}

/// The box on paper for something of an aspect.
fn room(view: &View, panel: &Panel, aspect: f32) -> (PaperPoint, f32, f32) {
    let LabelPlace { centre, width, height } = panel.outline.label_place(aspect);
    (view.at(centre), width * view.scale(), height * view.scale())
}

fn value_on(items: &mut Vec<Item>, view: &View, panel: &Panel, mark: &PanelMark) -> Option<ScreenRect> {
    let fill = palette::fill(mark.fill, false);
    let nothing = mark.fill == Fill::Level(Level::Leave);
    let ink = if nothing { INK_SOFT } else { palette::text_on(fill) };
    let is_word = mark.value.chars().any(char::is_alphabetic);
    let largest = if nothing { SIZES.len() - 1 } else { usize::from(is_word || mark.value.chars().count() > NUMBER) };
    let mut tries: Vec<Words> = Vec::new();
    if !mark.below.is_empty() {
        let two = |size: f32| vec![(mark.value.clone(), size), (mark.below.clone(), size * BELOW)];
        tries.extend(SIZES[..2].iter().map(|size| Words { lines: two(*size), bar: None }));
    }
    for size in &SIZES[largest..] {
        tries.push(Words { lines: vec![(mark.value.clone(), *size)], bar: mark.budget_used });
        if let Some((a, b)) = halves(&mark.value) {
            let lines = vec![(a.to_owned(), *size), (b.to_owned(), *size)];
            tries.push(Words { lines, bar: mark.budget_used });
        }
    }
    for words in tries {
        let (w, h) = words.size();
        let (at, width, height) = room(view, panel, w / h);
        if width * 0.94 >= w && height * 0.94 >= h {
            let rect = around(at, w, h);
            items.push(rectangle(rect.min.x - 0.6, rect.min.y, w + 1.2, h, Some(fill), None));
            words.draw(items, rect, ink);
            return Some(rect);
        }
    }
    None
}

/// The two halves of a text of several words.
fn halves(text: &str) -> Option<(&str, &str)> {
    let middle = text.char_indices().filter(|(_, c)| *c == ' ').min_by_key(|(i, _)| i.abs_diff(text.len() / 2))?.0;
    Some((&text[..middle], &text[middle + 1..]))
}

fn around(at: PaperPoint, width: f32, height: f32) -> ScreenRect {
    let half = euclid::vec2(width / 2.0, height / 2.0);
    let at: ScreenPoint = at.cast_unit();
    ScreenRect::new(at - half, at + half)
}

fn badges_on(items: &mut Vec<Item>, view: &View, panel: &Panel, mark: &PanelMark, radius: f32) -> Option<ScreenRect> {
    let (w, h) = badge_room(&mark.badges, 1.0);
    let (at, width, height) = room(view, panel, w / h);
    let fits = (width / w).min(height / h).min(radius);
    (fits >= radius * 0.7).then(|| badges(items, at, fits, &mark.badges))
}

/// Most badges beside one another.
const MOST: usize = 2;
const STEP: f32 = 2.3;

/// Whether one number stands for two workers, on their two shapes.
fn together(badges: &[Badge]) -> bool {
    matches!(badges, [a, b] if a.worker != b.worker && a.number == b.number)
}

fn badge_room(badges: &[Badge], radius: f32) -> (f32, f32) {
    if together(badges) {
        (radius * 2.8, radius * 2.8)
    } else {
        (radius * STEP * badges.len().min(MOST) as f32, radius * STEP)
    }
}

fn badges(items: &mut Vec<Item>, at: PaperPoint, radius: f32, badges: &[Badge]) -> ScreenRect {
    let (w, h) = badge_room(badges, radius);
    let shown: Vec<&Badge> = badges.iter().take(MOST).collect();
    if let ([first, second], true) = (badges, together(badges)) {
        let apart = euclid::vec2(0.24 * radius, 0.24 * radius);
        symbols::shape(items, at + apart, radius, second.worker);
        symbols::badge(items, at - apart, radius, first.worker, &first.number.to_string());
        return around(at, w, h);
    }
    for (place, badge) in shown.iter().enumerate() {
        let x = at.x - w / 2.0 + w / shown.len() as f32 * (place as f32 + 0.5);
        symbols::badge(items, PaperPoint::new(x, at.y), radius, badge.worker, &badge.number.to_string());
    }
    around(at, w, h)
}

/// A label beside the vehicle with a line to its panel.
fn beside(
    items: &mut Vec<Item>,
    template: &Template,
    view: &View,
    (panel, mark): (&Panel, &PanelMark),
    radius: f32,
    placed: &mut Vec<Label>,
) {
    let radius = radius * 0.75;
    let words = Words { lines: vec![(mark.value.clone(), SIZES[2])], bar: None };
    let (w, h) = if mark.badges.is_empty() { words.size() } else { badge_room(&mark.badges, radius) };
    let from = view.at(panel.label.centre);
    let area = ScreenRect::new(ScreenPoint::new(0.0, 3.6), ScreenPoint::new(view.size.0, view.size.1 - 3.6));
    let on_vehicle = |rect: ScreenRect| {
        let (a, b) = (rect.min, rect.max);
        let points = [a, b, rect.center(), ScreenPoint::new(a.x, b.y), ScreenPoint::new(b.x, a.y)];
        let hits = |p: &ScreenPoint| template.covers(view.view.to_map(*p));
        3.0 * points.iter().filter(|p| hits(p)).count() as f32
    };
    let is_free = |rect: ScreenRect| !placed.iter().any(|l| l.rect.inflate(0.5, 0.5).intersects(&rect));
    let place = free_place(from.cast_unit(), euclid::vec2(w, h), area, NEAREST, is_free, on_vehicle);
    let Some(rect) = place else { return };
    let end = PaperPoint::new(from.x.clamp(rect.min.x, rect.max.x), from.y.clamp(rect.min.y, rect.max.y));
    items.push(polyline(&[from, end], whole(INK_SOFT, 0.2)));
    items.push(circle(from, 0.45, Some(INK_SOFT), None));
    if mark.badges.is_empty() {
        items.push(rectangle(rect.min.x - 0.4, rect.min.y, w + 0.8, h, Some(PAPER), None));
        words.draw(items, rect, INK);
    } else {
        badges(items, rect.center().cast_unit(), radius, &mark.badges);
    }
    placed.push(Label { rect });
}
