//! Pages on the screen: exactly the items that are printed.

use crate::gui::action::Model;
use crate::gui::theme;
use crate::say;
use crate::sheets::{Item, Page, Pages, PaperPoint, Piece, Rgb, Run};
use eframe::egui::epaint::{Mesh, Vertex, WHITE_UV};
use eframe::egui::{self, Color32, FontFamily, FontId, Painter, Pos2, Rect, Sense, Shape, Stroke, Ui, pos2, vec2};
use lyon::lyon_tessellation::{BuffersBuilder, FillOptions, FillTessellator, FillVertex, VertexBuffers};
use lyon::math::point;
use lyon::path::Path;
use std::sync::Arc;

/// Widest page on the screen, in points, and the gap between two.
const WIDEST: f32 = 860.0;
const GAP: f32 = 20.0;
/// How far a flattened curve may lie beside the real one, in mm.
const TOLERANCE: f32 = 0.03;

/// Pages ready to be drawn.
#[derive(Debug)]
pub(super) struct Preview {
    pub(super) pages: Vec<PagePreview>,
    title: String,
}

/// A page in mm.
#[derive(Debug)]
pub(super) struct PagePreview {
    size: (f32, f32),
    marks: Vec<Mark>,
    /// What stands on it, for those who have it read.
    words: String,
}

#[derive(Debug)]
enum Mark {
    Area(Mesh),
    Line { points: Vec<Pos2>, closed: bool, colour: Color32, width: f32, dash: Option<(f32, f32)> },
    Text(Run),
}

impl Preview {
    pub(super) fn of(pages: &Pages) -> Self {
        Self { pages: pages.pages.iter().map(PagePreview::of).collect(), title: pages.title.clone() }
    }
}

impl PagePreview {
    fn of(page: &Page) -> Self {
        let mut marks = Vec::new();
        let mut words = String::new();
        let mut fill = FillTessellator::new();
        for drawn in &page.items {
            match &drawn.item {
                Item::Path { pieces, fill: inside, line } => {
                    if let Some(colour) = inside {
                        marks.extend(area(&mut fill, pieces, colour32(*colour)).map(Mark::Area));
                    }
                    if let Some(line) = line {
                        marks.extend(lines(pieces).into_iter().map(|(points, closed)| Mark::Line {
                            points,
                            closed,
                            colour: colour32(line.colour),
                            width: line.width,
                            dash: line.dash,
                        }));
                    }
                }
                Item::Text(run) => {
                    if !words.is_empty() {
                        words.push(' ');
                    }
                    words.push_str(&run.text);
                    marks.push(Mark::Text(run.clone()));
                }
            }
        }
        Self { size: (page.width, page.height), marks, words }
    }

    fn draw(&self, paint: &Painter, at: Pos2, scale: f32) {
        let place = |p: Pos2| at + p.to_vec2() * scale;
        for mark in &self.marks {
            match mark {
                Mark::Area(mesh) => {
                    let mut mesh = mesh.clone();
                    for vertex in &mut mesh.vertices {
                        vertex.pos = place(vertex.pos);
                    }
                    paint.add(Shape::mesh(Arc::new(mesh)));
                }
                Mark::Line { points, closed, colour, width, dash } => {
                    let points: Vec<Pos2> = points.iter().map(|p| place(*p)).collect();
                    let stroke = Stroke::new((width * scale).max(0.5), *colour);
                    match dash {
                        Some((on, off)) => paint.extend(Shape::dashed_line(&points, stroke, on * scale, off * scale)),
                        None if *closed => drop(paint.add(Shape::closed_line(points, stroke))),
                        None => drop(paint.add(Shape::line(points, stroke))),
                    }
                }
                Mark::Text(run) => text(paint, run, at, scale),
            }
        }
    }
}

fn text(paint: &Painter, run: &Run, at: Pos2, scale: f32) {
    let size = run.size * scale;
    if size < 1.0 || run.text.is_empty() {
        return;
    }
    let family = if run.bold { theme::bold_family() } else { FontFamily::Proportional };
    let colour = colour32(run.colour);
    let galley = paint.layout_no_wrap(run.text.clone(), FontId::new(size, family), colour);
    // Places on paper are those of the line that letters stand on.
    let line = galley.rows.first().map_or(size, |row| row.pos.y + row.glyphs.first().map_or(size, |g| g.pos.y));
    paint.galley(pos2(at.x + run.at.x * scale, at.y + run.at.y * scale - line), galley, colour);
}

fn colour32(Rgb(r, g, b): Rgb) -> Color32 {
    theme::paper_colour([r, g, b])
}

fn flat(p: PaperPoint) -> Pos2 {
    pos2(p.x, p.y)
}

/// Pieces as lyon has them.
fn path(pieces: &[Piece]) -> Path {
    let mut builder = Path::builder();
    let mut open = false;
    for piece in pieces {
        match *piece {
            Piece::Move(p) => {
                if open {
                    builder.end(false);
                }
                builder.begin(point(p.x, p.y));
                open = true;
            }
            Piece::Line(p) if open => {
                builder.line_to(point(p.x, p.y));
            }
            Piece::Curve(a, b, p) if open => {
                builder.cubic_bezier_to(point(a.x, a.y), point(b.x, b.y), point(p.x, p.y));
            }
            Piece::Close if open => {
                builder.end(true);
                open = false;
            }
            _ => {}
        }
    }
    if open {
        builder.end(false);
    }
    builder.build()
}

/// The inside of a path, in mm; none where it has none.
fn area(fill: &mut FillTessellator, pieces: &[Piece], color: Color32) -> Option<Mesh> {
    let mut buffers: VertexBuffers<Vertex, u32> = VertexBuffers::new();
    let vertex = |v: FillVertex<'_>| Vertex { pos: pos2(v.position().x, v.position().y), uv: WHITE_UV, color };
    let mut sink = BuffersBuilder::new(&mut buffers, vertex);
    fill.tessellate_path(&path(pieces), &FillOptions::even_odd().with_tolerance(TOLERANCE), &mut sink).ok()?;
    (!buffers.indices.is_empty()).then(|| Mesh {
        indices: buffers.indices,
        vertices: buffers.vertices,
        ..Mesh::default()
    })
}

/// The lines of a path, in mm, and whether each is closed.
fn lines(pieces: &[Piece]) -> Vec<(Vec<Pos2>, bool)> {
    let mut lines: Vec<(Vec<Pos2>, bool)> = Vec::new();
    for piece in pieces {
        match (*piece, lines.last_mut()) {
            (Piece::Move(p), _) => lines.push((vec![flat(p)], false)),
            (Piece::Line(p), Some((points, _))) => points.push(flat(p)),
            (Piece::Curve(a, b, p), Some((points, _))) => {
                let Some(from) = points.last().copied() else { continue };
                let to = |p: PaperPoint| point(p.x, p.y);
                let curve = lyon::geom::CubicBezierSegment {
                    from: point(from.x, from.y),
                    ctrl1: to(a),
                    ctrl2: to(b),
                    to: to(p),
                };
                points.extend(curve.flattened(TOLERANCE).map(|p| pos2(p.x, p.y)));
            }
            (Piece::Close, Some((_, closed))) => *closed = true,
            (_, None) => {}
        }
    }
    lines.retain(|(points, _)| points.len() > 1);
    lines
}

/// All pages of the sheet, one below the other.
pub(in crate::gui) fn pages_ui(ui: &mut Ui, m: &Model<'_>) {
    let p = theme::of(ui.ctx());
    let Some(built) = &m.handover.built else { return };
    egui::ScrollArea::vertical().id_salt("pages").auto_shrink([false, false]).show(ui, |ui| {
        let width = (ui.available_width() - 2.0 * GAP).clamp(120.0, WIDEST);
        let count = built.preview.pages.len();
        for (number, page) in built.preview.pages.iter().enumerate() {
            ui.add_space(GAP);
            let scale = width / page.size.0;
            let size = vec2(ui.available_width(), page.size.1 * scale);
            let (room, response) = ui.allocate_exact_size(size, Sense::hover());
            let sheet = Rect::from_center_size(room.center(), vec2(width, size.y));
            response.widget_info(|| {
                let (title, words) = (&built.preview.title, &page.words);
                let text = say!("handover-page", title = title, number = number + 1, count = count, words = words);
                egui::WidgetInfo::labeled(egui::Role::Document, true, text)
            });
            if ui.is_rect_visible(sheet) {
                let paint = ui.painter();
                paint.rect_filled(sheet, 0.0, theme::paper_colour([255; 3]));
                page.draw(paint, sheet.min, scale);
                paint.rect_stroke(sheet, 0.0, Stroke::new(1.0, p.hairline), egui::StrokeKind::Outside);
            }
        }
        ui.add_space(GAP);
    });
}
