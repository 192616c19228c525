//! Noto Sans, regular and bold: widths, glyphs, outlines, and which characters it lacks.

use super::page::{PaperPoint, Piece};
use harfrust::{ShapeOptions, ShaperData, UnicodeBuffer};
use skrifa::instance::{LocationRef, Size};
use skrifa::outline::{DrawSettings, OutlinePen};
use skrifa::{FontRef, GlyphId, MetadataProvider};
use std::cell::RefCell;
use std::collections::{BTreeSet, HashMap};
use std::sync::LazyLock;

/// Height of capitals as a share of the size.
pub(super) const CAPITALS: f32 = 0.714;

/// A face of the family; none where the embedded bytes are no font, which a test rules out.
struct Face {
    font: FontRef<'static>,
    shaping: ShaperData,
    bytes: &'static [u8],
    units: f32,
}

impl Face {
    fn new(bytes: &'static [u8]) -> Option<Self> {
        let font = FontRef::new(bytes).ok()?;
        let units = f32::from(font.metrics(Size::unscaled(), LocationRef::default()).units_per_em).max(1.0);
        Some(Self { shaping: ShaperData::new(&font), font, bytes, units })
    }
}

static REGULAR: LazyLock<Option<Face>> = LazyLock::new(|| Face::new(notosans::REGULAR_TTF));
static BOLD: LazyLock<Option<Face>> = LazyLock::new(|| Face::new(notosans::BOLD_TTF));

fn face(bold: bool) -> Option<&'static Face> {
    if bold { BOLD.as_ref() } else { REGULAR.as_ref() }
}

/// The bytes of a face, to be embedded.
pub(super) fn bytes(bold: bool) -> &'static [u8] {
    face(bold).map_or(&[], |f| f.bytes)
}

/// One glyph of a line, in shares of the size.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Glyph {
    /// Its number in the font.
    pub(super) id: u32,
    /// How far the next one stands.
    pub(super) advance: f32,
    /// How far it is moved.
    pub(super) offset: (f32, f32),
    /// Where its characters begin in the text, in bytes.
    pub(super) from: usize,
}

/// The glyphs of a line from left to right, kerned, accents in place.
pub(super) fn shape(text: &str, bold: bool) -> Vec<Glyph> {
    let Some(face) = face(bold) else { return Vec::new() };
    let mut buffer = UnicodeBuffer::new();
    buffer.push_str(text);
    buffer.guess_segment_properties();
    let shaped = face.shaping.shaper(&face.font).build().shape(buffer, ShapeOptions::new());
    let share = |v: i32| v as f32 / face.units;
    let glyphs = shaped.glyph_infos().iter().zip(shaped.glyph_positions());
    glyphs
        .map(|(info, at)| Glyph {
            id: info.glyph_id,
            advance: share(at.x_advance),
            offset: (share(at.x_offset), share(at.y_offset)),
            from: info.cluster as usize,
        })
        .collect()
}

/// Width of a line in the unit of `size`. What was measured is remembered: sheets are set again for every size of their picture, from the
/// same words.
pub(super) fn width(text: &str, bold: bool, size: f32) -> f32 {
    MEASURED.with_borrow_mut(|measured| {
        let known = &mut measured[usize::from(bold)];
        if let Some(share) = known.get(text) {
            return share * size;
        }
        let share = shape(text, bold).iter().map(|g| g.advance).sum::<f32>();
        if known.len() >= MOST_MEASURED {
            known.clear();
        }
        known.insert(text.to_owned(), share);
        share * size
    })
}

/// More texts than the longest sheet has words.
const MOST_MEASURED: usize = 10_000;

thread_local! {
    /// Widths of texts in shares of the size, regular and bold.
    static MEASURED: RefCell<[HashMap<String, f32>; 2]> = RefCell::default();
}

/// The characters of a text that the font lacks. Blanks of every kind are drawn by leaving room.
pub(super) fn missing(text: &str) -> BTreeSet<char> {
    let Some(face) = face(false) else { return text.chars().collect() };
    let map = face.font.charmap();
    text.chars().filter(|c| !c.is_whitespace() && map.map(*c).is_none()).collect()
}

/// The outline of a line of text as pieces of a path.
pub(super) fn outline(text: &str, bold: bool, size: f32, at: PaperPoint) -> Vec<Piece> {
    let Some(face) = face(bold) else { return Vec::new() };
    let outlines = face.font.outline_glyphs();
    let mut pen = Pen { pieces: Vec::new(), scale: size / face.units, at, last: at };
    let mut x = at.x;
    for glyph in shape(text, bold) {
        pen.at = PaperPoint::new(x + glyph.offset.0 * size, at.y - glyph.offset.1 * size);
        x += glyph.advance * size;
        if let Some(outline) = outlines.get(GlyphId::new(glyph.id)) {
            let settings = DrawSettings::unhinted(Size::unscaled(), LocationRef::default());
            // A glyph that can't be drawn leaves its room empty; the embedded font has none, see the test.
            drop(outline.draw(settings, &mut pen));
        }
    }
    pen.pieces
}

struct Pen {
    pieces: Vec<Piece>,
    scale: f32,
    at: PaperPoint,
    last: PaperPoint,
}

impl Pen {
    fn point(&self, x: f32, y: f32) -> PaperPoint {
        PaperPoint::new(self.at.x + x * self.scale, self.at.y - y * self.scale)
    }
}

impl OutlinePen for Pen {
    fn move_to(&mut self, x: f32, y: f32) {
        self.last = self.point(x, y);
        self.pieces.push(Piece::Move(self.last));
    }

    fn line_to(&mut self, x: f32, y: f32) {
        self.last = self.point(x, y);
        self.pieces.push(Piece::Line(self.last));
    }

    fn quad_to(&mut self, cx: f32, cy: f32, x: f32, y: f32) {
        // A quadratic curve as a cubic one: control points two thirds of the way.
        let (from, control, to) = (self.last, self.point(cx, cy), self.point(x, y));
        self.pieces.push(Piece::Curve(from.lerp(control, 2.0 / 3.0), to.lerp(control, 2.0 / 3.0), to));
        self.last = to;
    }

    fn curve_to(&mut self, ax: f32, ay: f32, bx: f32, by: f32, x: f32, y: f32) {
        self.last = self.point(x, y);
        self.pieces.push(Piece::Curve(self.point(ax, ay), self.point(bx, by), self.last));
    }

    fn close(&mut self) {
        self.pieces.push(Piece::Close);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_faces_draw_units_symbols_and_letters_of_europe() {
        for bold in [false, true] {
            assert!(face(bold).is_some());
            let text = "0123456789 µm ± ≤ ≥ × → “Łódź” Ångström Ελλάδα Київ …–";
            assert!(missing(text).is_empty(), "{:?}", missing(text));
            assert!(outline(text, bold, 4.0, PaperPoint::origin()).len() > 500);
        }
        assert_eq!(missing("李 drove"), BTreeSet::from(['李']));
    }

    #[test]
    fn a_thin_space_takes_less_room_than_a_blank_and_is_no_box() {
        let (thin, blank) = (width("5\u{202f}µm", false, 1.0), width("5 µm", false, 1.0));
        assert!(thin < blank && thin > width("5µm", false, 1.0), "{thin} {blank}");
        assert!(shape("5\u{202f}µm", false).iter().all(|g| g.id != 0), "no .notdef");
    }

    #[test]
    fn figures_are_all_of_one_width() {
        let one = width("1", false, 1.0);
        assert!("023456789".chars().all(|c| (width(&c.to_string(), false, 1.0) - one).abs() < 1e-6));
    }
}
