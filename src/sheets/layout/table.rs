//! Tables: hairlines between rows and nothing else; the head is repeated on every page.

use super::flow::{Flow, MARGIN, Style};
use super::{hairline, style};
use crate::sheets::font;
use crate::sheets::lines::broken;
use crate::sheets::model::{Table, TextSize};
use crate::sheets::page::{PaperPoint, PartKind, polyline};
use crate::sheets::palette::{HAIRLINE, INK_SOFT};

/// Room between columns, and above and below the text of a row, as shares of the size of the text.
const GAP: f32 = 1.1;
const PAD: f32 = 0.28;
/// The same for text of a size that needs no more.
const PAD_LARGE: f32 = 0.12;
const LARGE: f32 = 7.0;

fn pad(style: Style) -> f32 {
    style.size * if style.size > LARGE { PAD_LARGE } else { PAD }
}

/// Names at the left, what they are at the right.
pub(super) fn facts(flow: &mut Flow, facts: &[(String, String)]) {
    let body = flow.body();
    let name = Style { colour: INK_SOFT, ..body };
    let widest = facts.iter().map(|(n, _)| font::width(n, false, body.size)).fold(0.0, f32::max);
    let left = (widest + 4.0).min(flow.width() * 0.35);
    let whole = flow.part(PartKind::Table, None);
    for (n, what) in facts {
        let names = broken(n, false, body.size, left - 2.0);
        let lines = broken(what, false, body.size, flow.width() - left);
        flow.make_room(body.height() * names.len().max(lines.len()).min(3) as f32);
        let row = flow.part(PartKind::Row, Some(whole));
        let (head, cell) = (flow.part(PartKind::RowHead, Some(row)), flow.part(PartKind::Cell, Some(row)));
        for k in 0..names.len().max(lines.len()) {
            flow.make_room(body.height());
            flow.write(names.get(k).map_or("", String::as_str), name, 0.0, Some(head));
            flow.write(lines.get(k).map_or("", String::as_str), body, left, Some(cell));
            flow.skip(body.height());
        }
        flow.skip(0.5);
    }
    flow.skip(1.5);
}

/// Where a column stands, from the margin.
struct Place {
    x: f32,
    width: f32,
    figures: bool,
}

/// A table.
pub(super) fn table(flow: &mut Flow, table: &Table) {
    let style = style(table.size, flow.body());
    let head_style = Style { colour: INK_SOFT, size: style.size.min(flow.body().size), ..style }.bold();
    let places = places(flow, table, style, head_style);
    let whole = flow.part(PartKind::Table, None);
    let heads: Vec<String> = table.columns.iter().map(|c| c.head.clone()).collect();
    let head_cells = cells(&heads, &places, head_style);
    let head_height = row_height(&head_cells, head_style);
    let has_head = heads.iter().any(|h| !h.is_empty());
    let head = |flow: &mut Flow, first: bool| {
        if !has_head {
            return;
        }
        let row = first.then(|| flow.part(PartKind::Row, Some(whole)));
        let parts: Vec<Option<usize>> =
            places.iter().map(|_| row.map(|row| flow.part(PartKind::ColumnHead, Some(row)))).collect();
        draw(flow, &head_cells, &places, head_style, &parts);
        rule(flow);
    };
    let first = table.rows.first().map_or(0.0, |r| row_height(&cells(r, &places, style), style));
    flow.make_room(head_height + first.min(flow.height() * 0.5));
    head(flow, true);
    let bold_first = table.size == TextSize::Large;
    for (index, row) in table.rows.iter().enumerate() {
        let part = flow.part(PartKind::Row, Some(whole));
        let parts: Vec<Option<usize>> = places.iter().map(|_| Some(flow.part(PartKind::Cell, Some(part)))).collect();
        let style = if bold_first { style.bold() } else { style };
        let mut rest = cells(row, &places, style);
        loop {
            let height = row_height(&rest, style);
            if flow.y() + height > flow.bottom() && !flow.at_top() {
                flow.new_page();
                head(flow, false);
            }
            let room = flow.bottom() - flow.y() - 2.0 * pad(style);
            let fits = ((room / style.height() + 0.01).floor() as usize).max(1);
            let later: Vec<Vec<String>> = rest.iter_mut().map(|c| c.split_off(fits.min(c.len()))).collect();
            draw(flow, &rest, &places, style, &parts);
            if later.iter().all(Vec::is_empty) {
                break;
            }
            rest = later;
        }
        if index + 1 < table.rows.len() {
            rule(flow);
        }
    }
    flow.skip(2.5);
}

/// Columns as wide as their content share the page with those that take what is left.
fn places(flow: &Flow, table: &Table, style: Style, head: Style) -> Vec<Place> {
    let gap = GAP * style.size;
    let all = flow.width() - gap * table.columns.len().saturating_sub(1) as f32;
    let bold = table.size == TextSize::Large;
    let natural = |k: usize| {
        let cells = table.rows.iter().filter_map(|r| r.get(k)).flat_map(|c| c.split('\n'));
        let widest = cells.map(|c| font::width(c, bold, style.size)).fold(0.0, f32::max);
        let word = |w: &str| font::width(w, true, head.size);
        widest.max(table.columns[k].head.split(' ').map(word).fold(0.0, f32::max)) + 0.1
    };
    let mut widths: Vec<f32> = table
        .columns
        .iter()
        .enumerate()
        .map(|(k, c)| if c.share > 0.0 { 0.0 } else { natural(k).min(all * 0.4) })
        .collect();
    let shares: f32 = table.columns.iter().map(|c| c.share).sum();
    let fixed: f32 = widths.iter().sum();
    let least = if shares > 0.0 { all * 0.3 } else { 0.0 };
    if fixed > all - least {
        let factor = (all - least) / fixed;
        for width in &mut widths {
            *width *= factor;
        }
    }
    let left = all - widths.iter().sum::<f32>();
    let mut x = 0.0;
    let column = |(c, width): (&crate::sheets::model::Column, f32)| {
        let width = if c.share > 0.0 { left * c.share / shares } else { width };
        let place = Place { x, width, figures: c.figures };
        x += width + gap;
        place
    };
    table.columns.iter().zip(widths).map(column).collect()
}

fn cells(texts: &[String], places: &[Place], style: Style) -> Vec<Vec<String>> {
    texts.iter().zip(places).map(|(text, p)| broken(text, style.bold, style.size, p.width)).collect()
}

fn row_height(cells: &[Vec<String>], style: Style) -> f32 {
    let lines = cells.iter().map(Vec::len).max().unwrap_or(0);
    lines as f32 * style.height() + 2.0 * pad(style)
}

fn draw(flow: &mut Flow, cells: &[Vec<String>], places: &[Place], style: Style, parts: &[Option<usize>]) {
    let top = flow.y() + pad(style) + style.baseline();
    for ((lines, place), part) in cells.iter().zip(places).zip(parts) {
        for (k, line) in lines.iter().enumerate() {
            let x =
                if place.figures { place.x + place.width - font::width(line, style.bold, style.size) } else { place.x };
            flow.write_at(line, style, x, top + style.height() * k as f32, *part);
        }
    }
    flow.skip(row_height(cells, style));
}

fn rule(flow: &mut Flow) {
    let ends = [0.0, flow.width()].map(|x| PaperPoint::new(MARGIN + x, flow.y()));
    flow.put(polyline(&ends, hairline(HAIRLINE)), None);
}
