//! Pages as PDF: vector drawing, real text in an embedded subset of the font, structure tags. The same pages give the same bytes.

use super::font;
use super::page::{Drawn, Item, Pages, PartKind, Piece, Run};
use super::palette::Rgb;
use crate::say;
use krilla::configure::{Accessibility, ConfigurationBuilder};
use krilla::geom::{Path, PathBuilder, Point};
use krilla::metadata::Metadata;
use krilla::num::NormalizedF32;
use krilla::outline::{Outline, OutlineNode};
use krilla::page::PageSettings;
use krilla::paint::{Fill, FillRule, LineJoin, Stroke, StrokeDash};
use krilla::surface::Surface;
use krilla::tagging::{
    Artifact, ArtifactType, ContentTag, Identifier, ListNumbering, Node, SpanTag, TableHeaderScope, Tag, TagGroup,
    TagKind, TagTree,
};
use krilla::text::{Font, GlyphId, KrillaGlyph};
use krilla::{Document, SerializeSettings};
use std::num::NonZeroU16;

/// Points to a millimetre.
const PER_MM: f32 = 72.0 / 25.4;

/// Writing a PDF failed; that is a fault of the program.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[error("{}", say!("sheet-no-pdf", why = _0))]
pub struct PdfError(String);

/// Writes pages as PDF 1.7 that follows PDF/UA-1 (ISO 14289-1) as far as a program can tell.
///
/// # Errors
/// [`PdfError`], where the library refuses them.
pub fn pdf(pages: &Pages) -> Result<Vec<u8>, PdfError> {
    let failed = |what: &str| PdfError(what.to_owned());
    let configuration = ConfigurationBuilder::new()
        .with_accessibility_validator(Accessibility::UA1)
        .finish()
        .map_err(|e| PdfError(format!("{e:?}")))?;
    let mut document = Document::new_with(SerializeSettings { configuration, ..SerializeSettings::default() });
    document.set_metadata(
        Metadata::new().title(pages.title.clone()).language(pages.language.to_owned()).creator("Lapwright".to_owned()),
    );
    let font = |bold| Font::new(font::bytes(bold).to_vec().into(), 0).ok_or_else(|| failed(say!("sheet-no-font")));
    let fonts = [font(false)?, font(true)?];
    let mut content: Vec<Vec<Identifier>> = pages.parts.iter().map(|_| Vec::new()).collect();
    let mut outline = Outline::new();
    for (number, page) in pages.pages.iter().enumerate() {
        let size = PageSettings::from_wh(page.width * PER_MM, page.height * PER_MM);
        let mut sheet = document.start_page_with(size.ok_or_else(|| failed(say!("sheet-no-paper")))?);
        let mut surface = sheet.surface();
        for group in page.items.chunk_by(|a, b| a.part == b.part) {
            let Some(part) = group.first().map(|d| d.part) else { continue };
            let id = surface.start_tagged(tag_of(part, &pages.parts));
            for drawn in group {
                draw(&mut surface, drawn, &fonts);
            }
            surface.end_tagged();
            if let Some(list) = part.and_then(|p| content.get_mut(p)) {
                if let (true, Some(PartKind::Heading(_, text))) = (list.is_empty(), part.map(|p| &pages.parts[p].kind))
                {
                    let y =
                        group.iter().find_map(|d| if let Item::Text(run) = &d.item { Some(run.at.y) } else { None });
                    let at = Point::from_xy(0.0, (y.unwrap_or(0.0) - 8.0).max(0.0) * PER_MM);
                    let to = krilla::destination::XyzDestination::new(number, at);
                    outline.push_child(OutlineNode::new(text.clone(), to));
                }
                list.push(id);
            }
        }
        surface.finish();
        sheet.finish();
    }
    document.set_outline(outline);
    document.set_tag_tree(tree(pages, content));
    document.finish().map_err(|e| PdfError(format!("{e:?}")))
}

fn tag_of(part: Option<usize>, parts: &[super::page::Part]) -> ContentTag<'static> {
    match part.and_then(|p| parts.get(p)).map(|p| &p.kind) {
        None => ContentTag::Artifact(Artifact::with_kind(ArtifactType::Other)),
        Some(PartKind::Figure(_)) => ContentTag::Other,
        Some(_) => ContentTag::Span(SpanTag::empty()),
    }
}

/// The structure: children in the order in which they were made, content of a part before its children.
fn tree(pages: &Pages, content: Vec<Vec<Identifier>>) -> TagTree {
    let mut groups: Vec<Option<TagGroup>> = Vec::with_capacity(content.len());
    for (part, ids) in pages.parts.iter().zip(content) {
        groups.push(Some(TagGroup::with_children(kind(&part.kind), ids.into_iter().map(Node::from).collect())));
    }
    // Children come after their parents in the list, so from the end each group is whole when it is handed over.
    let mut waiting: Vec<Vec<TagGroup>> = pages.parts.iter().map(|_| Vec::new()).collect();
    let mut roots = Vec::new();
    for (index, part) in pages.parts.iter().enumerate().rev() {
        let Some(mut group) = groups[index].take() else { continue };
        for child in std::mem::take(&mut waiting[index]).into_iter().rev() {
            group.push(child);
        }
        match part.parent {
            Some(parent) => waiting[parent].push(group),
            None => roots.push(group),
        }
    }
    let mut tree = TagTree::new().with_lang(Some(pages.language.to_owned()));
    roots.into_iter().rev().for_each(|group| tree.push(group));
    tree
}

fn kind(kind: &PartKind) -> TagKind {
    match kind {
        PartKind::Heading(level, text) => {
            let level = NonZeroU16::new(u16::from(*level)).unwrap_or(NonZeroU16::MIN);
            Tag::Hn(level, Some(text.clone())).into()
        }
        PartKind::Paragraph => Tag::P.into(),
        PartKind::List => Tag::L(ListNumbering::Disc).into(),
        PartKind::ListItem => Tag::LI.into(),
        PartKind::ListLabel => Tag::Lbl.into(),
        PartKind::ListBody => Tag::LBody.into(),
        PartKind::Table => Tag::Table.into(),
        PartKind::Row => Tag::TR.into(),
        PartKind::ColumnHead => Tag::TH(TableHeaderScope::Column).into(),
        PartKind::RowHead => Tag::TH(TableHeaderScope::Row).into(),
        PartKind::Cell => Tag::TD.into(),
        PartKind::Figure(words) => Tag::Figure(Some(words.clone())).into(),
    }
}

fn draw(surface: &mut Surface<'_>, drawn: &Drawn, fonts: &[Font; 2]) {
    match &drawn.item {
        Item::Text(run) => text(surface, run, &fonts[usize::from(run.bold)]),
        Item::Path { pieces, fill, line } => {
            let Some(path) = path(pieces) else { return };
            surface.set_fill(fill.map(paint));
            surface.set_stroke(line.map(|line| Stroke {
                paint: colour(line.colour).into(),
                width: line.width * PER_MM,
                line_join: LineJoin::Round,
                dash: line.dash.map(|(dash, gap)| StrokeDash { array: vec![dash * PER_MM, gap * PER_MM], offset: 0.0 }),
                ..Stroke::default()
            }));
            surface.draw_path(&path);
        }
    }
}

fn text(surface: &mut Surface<'_>, run: &Run, font: &Font) {
    let shaped = font::shape(&run.text, run.bold);
    let end =
        |k: usize| shaped[k..].iter().map(|g| g.from).find(|from| *from > shaped[k].from).unwrap_or(run.text.len());
    let glyphs: Vec<KrillaGlyph> = shaped
        .iter()
        .enumerate()
        .map(|(k, g)| {
            let range = g.from..end(k);
            KrillaGlyph::new(GlyphId::new(g.id), g.advance, g.offset.0, g.offset.1, 0.0, range, None)
        })
        .collect();
    surface.set_stroke(None);
    surface.set_fill(Some(paint(run.colour)));
    let at = Point::from_xy(run.at.x * PER_MM, run.at.y * PER_MM);
    surface.draw_glyphs(at, &glyphs, font.clone(), &run.text, run.size * PER_MM, false);
}

fn path(pieces: &[Piece]) -> Option<Path> {
    let mut path = PathBuilder::new();
    for piece in pieces {
        match *piece {
            Piece::Move(p) => path.move_to(points(p.x), points(p.y)),
            Piece::Line(p) => path.line_to(points(p.x), points(p.y)),
            Piece::Curve(a, b, c) => {
                let [a, b, c] = [a, b, c].map(|p| (points(p.x), points(p.y)));
                path.cubic_to(a.0, a.1, b.0, b.1, c.0, c.1);
            }
            Piece::Close => path.close(),
        }
    }
    path.finish()
}

/// A length in points, to a hundredth: finer than any printer, and half the bytes.
fn points(mm: f32) -> f32 {
    (mm * PER_MM * 100.0).round() / 100.0
}

fn colour(Rgb(r, g, b): Rgb) -> krilla::color::rgb::Color {
    krilla::color::rgb::Color::new(r, g, b)
}

fn paint(rgb: Rgb) -> Fill {
    Fill { paint: colour(rgb).into(), opacity: NormalizedF32::ONE, rule: FillRule::EvenOdd }
}
