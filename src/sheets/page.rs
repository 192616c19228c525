//! Pages as plain lists of things to draw, in millimetres from the upper left corner. Every back end draws these and nothing else.

use super::palette::Rgb;

/// A sheet of paper, mm; x to the right, y downwards.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PaperSpace {}
/// A place on paper, mm.
pub type PaperPoint = euclid::Point2D<f32, PaperSpace>;

/// A size of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Paper {
    /// 210 × 297 mm (ISO 216).
    #[default]
    A4,
    /// 8.5 × 11 in, 215.9 × 279.4 mm (ANSI/ASME Y14.1).
    Letter,
}

impl Paper {
    /// Width and height in mm.
    pub fn size(self) -> (f32, f32) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (215.9, 279.4),
        }
    }
}

/// One thing to draw.
#[derive(Debug, Clone, PartialEq)]
pub enum Item {
    /// An outline, filled, drawn as a line, or both; filled even-odd.
    Path {
        /// Its pieces.
        pieces: Vec<Piece>,
        /// The colour of its inside.
        fill: Option<Rgb>,
        /// The line along it.
        line: Option<Line>,
    },
    /// A line of text.
    Text(Run),
}

/// A piece of a path.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Piece {
    /// Begins somewhere else.
    Move(PaperPoint),
    /// A straight line.
    Line(PaperPoint),
    /// A cubic curve: two control points and the end.
    Curve(PaperPoint, PaperPoint, PaperPoint),
    /// Back to where it began.
    Close,
}

/// How a line is drawn.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// Colour.
    pub colour: Rgb,
    /// Width, mm.
    pub width: f32,
    /// Length of dash and gap, mm; none for a whole line.
    pub dash: Option<(f32, f32)>,
}

/// Text on one line, in Noto Sans.
#[derive(Debug, Clone, PartialEq)]
pub struct Run {
    /// Left end of the baseline.
    pub at: PaperPoint,
    /// Size of the em, mm.
    pub size: f32,
    /// Bold or regular.
    pub bold: bool,
    /// Colour.
    pub colour: Rgb,
    /// What it says.
    pub text: String,
}

/// A thing to draw, and which part of the sheet it belongs to.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawn {
    /// What is drawn.
    pub item: Item,
    /// Its part, an index into [`Pages::parts`]; none for what only decorates: hairlines, repeated heads, page numbers.
    pub part: Option<usize>,
}

/// One page.
#[derive(Debug, Clone, PartialEq)]
pub struct Page {
    /// Width, mm.
    pub width: f32,
    /// Height, mm.
    pub height: f32,
    /// In drawing order, which is the order of reading too.
    pub items: Vec<Drawn>,
}

/// All pages of a sheet with the structure behind them.
#[derive(Debug, Clone, PartialEq)]
pub struct Pages {
    /// What it is called.
    pub title: String,
    /// Language tag (BCP 47).
    pub language: &'static str,
    /// The pages.
    pub pages: Vec<Page>,
    /// Parts of the structure, parents before their children.
    pub parts: Vec<Part>,
}

/// A part of the structure.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    /// What it is.
    pub kind: PartKind,
    /// What it belongs to; none for a part of the document itself.
    pub parent: Option<usize>,
}

/// What a part of a sheet is, in the terms of tagged PDF (ISO 32000-1, 14.8.4).
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PartKind {
    /// A heading and its level, from 1.
    Heading(u8, String),
    /// A paragraph.
    Paragraph,
    /// A list.
    List,
    /// An item of a list.
    ListItem,
    /// The bullet of an item.
    ListLabel,
    /// What an item says.
    ListBody,
    /// A table.
    Table,
    /// A row of a table.
    Row,
    /// A cell at the head of a column.
    ColumnHead,
    /// A cell at the head of a row.
    RowHead,
    /// Any other cell.
    Cell,
    /// A picture, with words for those who can't see it.
    Figure(String),
}

/// A filled or outlined polygon through points.
pub(super) fn polygon(points: &[PaperPoint], fill: Option<Rgb>, line: Option<Line>) -> Item {
    let mut pieces: Vec<Piece> = polyline_pieces(points);
    pieces.push(Piece::Close);
    Item::Path { pieces, fill, line }
}

/// A line through points.
pub(super) fn polyline(points: &[PaperPoint], line: Line) -> Item {
    Item::Path { pieces: polyline_pieces(points), fill: None, line: Some(line) }
}

fn polyline_pieces(points: &[PaperPoint]) -> Vec<Piece> {
    points.iter().enumerate().map(|(k, p)| if k == 0 { Piece::Move(*p) } else { Piece::Line(*p) }).collect()
}

/// An upright box.
pub(super) fn rectangle(x: f32, y: f32, width: f32, height: f32, fill: Option<Rgb>, line: Option<Line>) -> Item {
    let corners = [(x, y), (x + width, y), (x + width, y + height), (x, y + height)];
    polygon(&corners.map(|(x, y)| PaperPoint::new(x, y)), fill, line)
}

/// A circle, as four curves.
pub(super) fn circle(at: PaperPoint, radius: f32, fill: Option<Rgb>, line: Option<Line>) -> Item {
    /// Control points of a quarter of a circle, as a share of the radius (from memory: 4/3·(√2 − 1)).
    const K: f32 = 0.552_285;
    let p = |x: f32, y: f32| PaperPoint::new(at.x + radius * x, at.y + radius * y);
    let pieces = vec![
        Piece::Move(p(1.0, 0.0)),
        Piece::Curve(p(1.0, K), p(K, 1.0), p(0.0, 1.0)),
        Piece::Curve(p(-K, 1.0), p(-1.0, K), p(-1.0, 0.0)),
        Piece::Curve(p(-1.0, -K), p(-K, -1.0), p(0.0, -1.0)),
        Piece::Curve(p(K, -1.0), p(1.0, -K), p(1.0, 0.0)),
        Piece::Close,
    ];
    Item::Path { pieces, fill, line }
}

impl Item {
    /// The same larger or smaller, from the upper left corner.
    #[must_use]
    pub fn scaled(mut self, by: f32) -> Self {
        match &mut self {
            Self::Text(run) => {
                run.at *= by;
                run.size *= by;
            }
            Self::Path { pieces, line, .. } => {
                if let Some(line) = line {
                    line.width *= by;
                    line.dash = line.dash.map(|(dash, gap)| (dash * by, gap * by));
                }
                change(pieces, |p| p * by);
            }
        }
        self
    }

    /// The same somewhere else.
    #[must_use]
    pub fn moved(mut self, x: f32, y: f32) -> Self {
        let by = euclid::vec2(x, y);
        match &mut self {
            Self::Text(run) => run.at += by,
            Self::Path { pieces, .. } => {
                change(pieces, |p| p + by);
            }
        }
        self
    }
}

fn change(pieces: &mut [Piece], f: impl Fn(PaperPoint) -> PaperPoint) {
    for piece in pieces {
        *piece = match *piece {
            Piece::Move(p) => Piece::Move(f(p)),
            Piece::Line(p) => Piece::Line(f(p)),
            Piece::Curve(a, b, c) => Piece::Curve(f(a), f(b), f(c)),
            Piece::Close => Piece::Close,
        };
    }
}
