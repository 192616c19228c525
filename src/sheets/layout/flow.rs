//! The place on the page where the next thing goes.

use crate::sheets::font;
use crate::sheets::model::Figure;
use crate::sheets::page::{Drawn, Item, Page, Paper, PaperPoint, Part, PartKind, Run};
use crate::sheets::palette::Rgb;

/// Margin at all sides, mm.
pub(super) const MARGIN: f32 = 15.0;
/// Height of a line beside the size of its text.
const LEADING: f32 = 1.32;

/// How text looks.
#[derive(Debug, Clone, Copy)]
pub(super) struct Style {
    pub(super) size: f32,
    pub(super) bold: bool,
    pub(super) colour: Rgb,
}

impl Style {
    /// Height of a line.
    pub(super) fn height(self) -> f32 {
        self.size * LEADING
    }

    pub(super) fn bold(self) -> Self {
        Self { bold: true, ..self }
    }

    pub(super) fn run(self, text: impl Into<String>, at: PaperPoint) -> Run {
        Run { at, size: self.size, bold: self.bold, colour: self.colour, text: text.into() }
    }

    /// From the upper edge of a line to its baseline.
    pub(super) fn baseline(self) -> f32 {
        self.size * (0.5 * (LEADING + font::CAPITALS))
    }
}

/// Pages that are being filled.
pub(super) struct Flow {
    paper: (f32, f32),
    pages: Vec<Page>,
    parts: Vec<Part>,
    body: Style,
    y: f32,
}

impl Flow {
    pub(super) fn new(paper: Paper, body: Style) -> Self {
        let mut flow = Self { paper: paper.size(), pages: Vec::new(), parts: Vec::new(), body, y: MARGIN };
        flow.begin_page();
        flow
    }

    fn begin_page(&mut self) {
        self.pages.push(Page { width: self.paper.0, height: self.paper.1, items: Vec::new() });
        self.y = MARGIN;
    }

    /// Begins a page, unless this one is empty still.
    pub(super) fn new_page(&mut self) {
        if !self.at_top() {
            self.begin_page();
        }
    }

    pub(super) fn at_top(&self) -> bool {
        self.y <= MARGIN
    }

    /// Text of the sheet, where nothing else is said.
    pub(super) fn body(&self) -> Style {
        self.body
    }

    /// Width of the column.
    pub(super) fn width(&self) -> f32 {
        self.paper.0 - 2.0 * MARGIN
    }

    /// Where things may reach down to.
    pub(super) fn bottom(&self) -> f32 {
        self.paper.1 - MARGIN
    }

    /// Height of an empty column.
    pub(super) fn height(&self) -> f32 {
        self.bottom() - MARGIN
    }

    pub(super) fn y(&self) -> f32 {
        self.y
    }

    /// By how much a picture has to shrink to fit a column.
    pub(super) fn scale(&self, figure: &Figure) -> f32 {
        (self.width() / figure.width.max(1.0)).min(self.height() / figure.height.max(1.0)).min(1.0)
    }

    /// Goes to a new page where less than `height` is left.
    pub(super) fn make_room(&mut self, height: f32) {
        if self.y + height.min(self.height()) > self.bottom() + 0.01 {
            self.new_page();
        }
    }

    pub(super) fn skip(&mut self, height: f32) {
        self.y += height;
    }

    pub(super) fn part(&mut self, kind: PartKind, parent: Option<usize>) -> usize {
        self.parts.push(Part { kind, parent });
        self.parts.len() - 1
    }

    pub(super) fn put(&mut self, item: Item, part: Option<usize>) {
        if let Some(page) = self.pages.last_mut() {
            page.items.push(Drawn { item, part });
        }
    }

    /// Writes with the baseline `y` and `x` from the margin.
    pub(super) fn write_at(&mut self, text: &str, style: Style, x: f32, y: f32, part: Option<usize>) {
        if !text.is_empty() {
            self.put(Item::Text(style.run(text, PaperPoint::new(MARGIN + x, y))), part);
        }
    }

    /// Writes on the present line without going on to the next.
    pub(super) fn write(&mut self, text: &str, style: Style, x: f32, part: Option<usize>) {
        self.write_at(text, style, x, self.y + style.baseline(), part);
    }

    /// Writes lines one below the other, on as many pages as they take.
    pub(super) fn lines(&mut self, lines: &[String], style: Style, x: f32, part: usize) {
        for line in lines {
            self.make_room(style.height());
            self.write(line, style, x, Some(part));
            self.skip(style.height());
        }
    }

    pub(super) fn finish(self) -> (Vec<Page>, Vec<Part>) {
        (self.pages, self.parts)
    }
}
