//! From what a sheet says to where it stands: one column, margins of 15 mm, no heading left alone at the foot of a page.

mod flow;
mod table;

use super::font;
use super::lines::broken;
use super::model::{Block, Figure, Sheet, TextSize};
use super::page::{Item, Line, Page, Pages, Paper, PaperPoint, PartKind, polyline};
use super::palette::{ACCENT, INK, INK_SOFT, QUIET, Rgb};
use crate::say;
use flow::{Flow, MARGIN, Style};

/// Points to mm.
const PT: f32 = 25.4 / 72.0;
const BODY: Style = Style { size: 10.0 * PT, bold: false, colour: INK };
const SMALL: Style = Style { size: 8.0 * PT, bold: false, colour: INK_SOFT };

/// Text of sheets with much to say on few pages.
const DENSE: Style = Style { size: 8.6 * PT, ..BODY };

/// Text of a size; `body` is that of the sheet.
fn style(size: TextSize, body: Style) -> Style {
    match size {
        TextSize::Small => Style { size: 8.0 * PT, ..body },
        TextSize::Normal => body,
        // Capitals of 6 mm, a three-hundredth of two metres with a little to spare (our estimate).
        TextSize::Large => Style { size: 8.5, ..body },
    }
}

/// How a heading looks, and the room above and below it.
fn heading(level: u8, dense: bool) -> (Style, f32, f32) {
    let style = |pt: f32, colour| Style { size: pt * PT, bold: true, colour };
    match level {
        1 => (style(20.0, INK), 0.0, 3.0),
        2 if dense => (style(11.5, ACCENT), 3.2, 1.2),
        2 => (style(13.0, ACCENT), 4.6, 1.6),
        _ => (style(10.5, INK), 3.5, 1.0),
    }
}

/// Sets a sheet on paper.
pub(super) fn pages(sheet: &Sheet, paper: Paper) -> Pages {
    let mut flow = Flow::new(paper, if sheet.dense { DENSE } else { BODY });
    let mut blocks = sheet.blocks.iter().peekable();
    while let Some(block) = blocks.next() {
        match block {
            Block::Heading(level, text) => {
                let (style, above, below) = heading(*level, sheet.dense);
                let lines = broken(text, style.bold, style.size, flow.width());
                let above = if flow.at_top() { 0.0 } else { above };
                let height = above + style.height() * lines.len() as f32 + below;
                let next = blocks.peek().map_or(0.0, |next| least(&flow, next));
                flow.make_room(height + next);
                flow.skip(if flow.at_top() { 0.0 } else { above });
                let part = flow.part(PartKind::Heading(*level, text.clone()), None);
                flow.lines(&lines, style, 0.0, part);
                flow.skip(below);
            }
            Block::Text(text) => {
                // What is signed stands above where it is signed.
                let signed = blocks.peek().filter(|b| matches!(b, Block::FillIn(_))).map_or(0.0, |_| FILL_IN + 12.0);
                flow.make_room(signed);
                let body = flow.body();
                paragraph(&mut flow, text, body);
            }
            Block::Small(text) => paragraph(&mut flow, text, SMALL),
            Block::List(items) => list(&mut flow, items),
            Block::Facts(facts) => table::facts(&mut flow, facts),
            Block::Table(whole) => table::table(&mut flow, whole),
            Block::Figure(drawn) => figure(&mut flow, drawn),
            Block::FillIn(names) => fill_in(&mut flow, names),
            Block::NewPage => flow.new_page(),
        }
    }
    let (mut pages, parts) = flow.finish();
    feet(&mut pages, sheet);
    Pages { title: sheet.title.clone(), language: sheet.language, pages, parts }
}

/// The least of a block that has to stand with the heading above it.
fn least(flow: &Flow, block: &Block) -> f32 {
    match block {
        Block::Figure(figure) => flow.scale(figure) * figure.height,
        Block::Heading(..) => 14.0,
        Block::FillIn(_) => FILL_IN,
        Block::Text(_) => FILL_IN + 12.0,
        Block::Table(whole) => 3.0 * style(whole.size, flow.body()).height() * 1.6,
        _ => 2.0 * flow.body().height(),
    }
}

fn paragraph(flow: &mut Flow, text: &str, style: Style) {
    let lines = broken(text, style.bold, style.size, flow.width());
    let part = flow.part(PartKind::Paragraph, None);
    flow.lines(&lines, style, 0.0, part);
    flow.skip(1.6);
}

fn list(flow: &mut Flow, items: &[String]) {
    const INDENT: f32 = 4.2;
    let body = flow.body();
    let whole = flow.part(PartKind::List, None);
    for item in items {
        let lines = broken(item, false, body.size, flow.width() - INDENT);
        let part = flow.part(PartKind::ListItem, Some(whole));
        flow.make_room(body.height() * lines.len().min(2) as f32);
        let label = flow.part(PartKind::ListLabel, Some(part));
        flow.write("\u{2022}", body, 1.0, Some(label));
        let said = flow.part(PartKind::ListBody, Some(part));
        flow.lines(&lines, body, INDENT, said);
        flow.skip(0.7);
    }
    flow.skip(1.2);
}

/// A picture at its own size, smaller where the page is smaller, in the middle of the column.
fn figure(flow: &mut Flow, drawn: &Figure) {
    let scale = flow.scale(drawn);
    flow.make_room(drawn.height * scale);
    let part = flow.part(PartKind::Figure(drawn.words.clone()), None);
    let (x, y) = (MARGIN + (flow.width() - drawn.width * scale).max(0.0) / 2.0, flow.y());
    for item in &drawn.items {
        flow.put(item.clone().scaled(scale).moved(x, y), Some(part));
    }
    flow.skip(drawn.height * scale + 2.0);
}

/// Height of a line to be filled in by hand.
const FILL_IN: f32 = 15.0;

fn fill_in(flow: &mut Flow, names: &[String]) {
    flow.make_room(FILL_IN);
    let gap = 6.0;
    let each = (flow.width() + gap) / names.len().max(1) as f32 - gap;
    flow.skip(FILL_IN - 5.0);
    for (k, name) in names.iter().enumerate() {
        let x = k as f32 * (each + gap);
        let ends = [x, x + each].map(|x| PaperPoint::new(MARGIN + x, flow.y()));
        flow.put(polyline(&ends, hairline(QUIET)), None);
        let part = flow.part(PartKind::Paragraph, None);
        flow.write_at(name, SMALL, x, flow.y() + 3.6, Some(part));
    }
    flow.skip(6.0);
}

fn hairline(colour: Rgb) -> Line {
    Line { colour, width: 0.18, dash: None }
}

/// Title, job code and number of every page, at its foot.
fn feet(pages: &mut [Page], sheet: &Sheet) {
    let count = pages.len();
    for (index, page) in pages.iter_mut().enumerate() {
        let y = page.height - 9.0;
        let number = say!("sheet-page", number = index + 1, count = count);
        let right = page.width - MARGIN - font::width(&number, SMALL.bold, SMALL.size);
        let code = say!("sheet-code", code = sheet.code.as_str());
        let middle = (page.width - font::width(&code, SMALL.bold, SMALL.size)) / 2.0;
        let room = middle - MARGIN - 4.0;
        let title = broken(&sheet.title, SMALL.bold, SMALL.size, room).swap_remove(0);
        for (text, x) in [(title, MARGIN), (code, middle), (number, right)] {
            let run = SMALL.run(text, PaperPoint::new(x, y));
            page.items.push(super::page::Drawn { item: Item::Text(run), part: None });
        }
    }
}
