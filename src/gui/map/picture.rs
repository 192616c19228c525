//! The drawn map kept from frame to frame, as triangles: made anew only when what it shows, how it lies or how it looks has
//! changed. While the map is dragged it is moved as it is.

use super::labels::{self, Labels};
use super::layout::MapCache;
use super::{paint, round};
use crate::geometry::{MapPoint, Viewport};
use crate::gui::action::Model;
use crate::gui::theme::{self, Theme};
use crate::gui::view_state::Workspace;
use crate::insight::{OrderRow, PolishOrder};
use crate::job::Job;
use crate::scene::{MapScene, Overlay, map_scene, polish_order_map};
use crate::units::ShownUnits;
use crate::vehicle::Template;
use eframe::egui::emath::TSTransform;
use eframe::egui::epaint::{Mesh, TessellationOptions, Tessellator};
use eframe::egui::{FontId, Galley, Id, LayerId, Order, Painter, Rect, Shape, Vec2};
use std::sync::Arc;

/// What a scene follows from, and the scene.
#[derive(Debug)]
pub(super) struct Memo {
    job: Arc<Job>,
    template: Arc<Template>,
    overlay: Overlay,
    units: ShownUnits,
    order: Source,
    scene: Arc<MapScene>,
}

/// The order that a scene shows.
#[derive(Debug)]
enum Source {
    Coating(Vec<OrderRow>),
    Polishing(Option<Arc<PolishOrder>>),
}

impl Source {
    /// Polishing has an order of its own, shown while it is planned.
    fn polishing(m: &Model<'_>) -> bool {
        m.view.overlay == Overlay::Order && m.view.workspace == Workspace::Correction
    }

    fn now(m: &Model<'_>) -> Self {
        if Self::polishing(m) { Self::Polishing(m.polishing.order.clone()) } else { Self::Coating(m.rows.to_vec()) }
    }

    fn is_now(&self, m: &Model<'_>) -> bool {
        match self {
            Self::Coating(rows) => !Self::polishing(m) && rows == m.rows,
            Self::Polishing(order) => {
                Self::polishing(m) && order.as_ref().map(Arc::as_ptr) == m.polishing.order.as_ref().map(Arc::as_ptr)
            }
        }
    }
}

impl Memo {
    /// The scene of this frame: the one that is there, or a new one.
    pub(super) fn scene(memo: &mut Option<Self>, m: &Model<'_>) -> Arc<MapScene> {
        if m.view.workspace == Workspace::Bay
            && let Some(map) = m.bay.map()
        {
            return Arc::clone(map); // the same one as long as nothing changes
        }
        if m.view.workspace == Workspace::Practice
            && let Some(map) = &m.practice.map
        {
            return Arc::clone(map); // likewise
        }
        if let Some(memo) = memo
            && Arc::ptr_eq(&memo.job, m.job)
            && Arc::ptr_eq(&memo.template, m.template)
            && memo.overlay == m.view.overlay
            && memo.units == m.units()
            && memo.order.is_now(m)
        {
            return Arc::clone(&memo.scene);
        }
        let order = Source::now(m);
        let mut scene = match &order {
            Source::Coating(rows) => map_scene(m.job, m.template, m.insight, m.view.overlay, rows),
            Source::Polishing(order) => polish_order_map(m.job, m.template, m.insight, order.as_deref()),
        };
        scene.show_in(m.units());
        let scene = Arc::new(scene);
        *memo = Some(Self {
            job: Arc::clone(m.job),
            template: Arc::clone(m.template),
            overlay: m.view.overlay,
            units: m.units(),
            order,
            scene: Arc::clone(&scene),
        });
        scene
    }
}

/// All that a picture depends on besides where the map lies.
#[derive(Debug, Clone)]
struct Look {
    scene: Arc<MapScene>,
    theme: Theme,
    pixels_per_point: f32,
    workspace: Workspace,
    current: Option<usize>,
    /// A text that is laid out in every frame: another one means that all text was thrown away, and its places with it.
    text: Arc<Galley>,
}

impl Look {
    fn now(paint: &Painter, m: &Model<'_>, scene: &Arc<MapScene>) -> Self {
        let p = theme::of(paint.ctx());
        Self {
            scene: Arc::clone(scene),
            theme: theme::current(paint.ctx()),
            pixels_per_point: paint.ctx().pixels_per_point(),
            workspace: m.view.workspace,
            current: m.current().map(|(i, _)| i),
            text: paint.layout_no_wrap("0".to_owned(), FontId::proportional(12.0), p.ink),
        }
    }

    fn is(&self, other: &Self) -> bool {
        Arc::ptr_eq(&self.scene, &other.scene)
            && self.theme == other.theme
            && self.pixels_per_point.to_bits() == other.pixels_per_point.to_bits()
            && self.workspace == other.workspace
            && self.current == other.current
            && Arc::ptr_eq(&self.text, &other.text)
    }
}

/// The map as it was drawn last.
#[derive(Debug)]
pub(super) struct Picture {
    look: Look,
    view: Viewport,
    area: Rect,
    /// Under the rings of what is chosen, and above them.
    ground: Vec<Shape>,
    marks: Vec<Shape>,
    labels: Labels,
}

impl Picture {
    /// The picture of this frame and how far it has to be moved.
    ///
    /// `moving` says that the map is being dragged, when labels may stay where they are on their panels.
    pub(super) fn bring_up(
        cache: &mut MapCache,
        paint: &Painter,
        m: &Model<'_>,
        view: &Viewport,
        moving: bool,
    ) -> Vec2 {
        let scene = Memo::scene(&mut cache.memo, m);
        let look = Look::now(paint, m, &scene);
        let shift = cache.picture.as_ref().filter(|old| old.look.is(&look) && old.area == paint.clip_rect());
        if let Some(by) = shift.and_then(|old| old.shift(view)).filter(|by| moving || *by == Vec2::ZERO) {
            return by;
        }
        cache.prepare(m.template, view.scale());
        let reading = m.current().filter(|_| m.view.overlay == Overlay::Film && m.view.workspace == Workspace::Survey);
        let hidden = reading.map(|(i, _)| i);
        let (marks, labels) = recorded(paint, |paint| {
            let labels = labels::draw(paint, m, cache, view, &scene, hidden);
            paint::pins(paint, m, view, &scene, &labels.placed);
            labels
        });
        let ground = recorded(paint, |paint| {
            paint::vehicle(paint, m, cache, view, &scene);
            round::draw(paint, view, &scene, &labels);
        })
        .0;
        cache.picture = Some(Self { look, view: *view, area: paint.clip_rect(), ground, marks, labels });
        Vec2::ZERO
    }

    /// How far the picture lies beside where it should; none where it is of another size or turned.
    fn shift(&self, view: &Viewport) -> Option<Vec2> {
        let (old, new) = (&self.view, view);
        let same = old.scale().to_bits() == new.scale().to_bits()
            && old.orientation() == new.orientation()
            && old.screen() == new.screen();
        let by = new.to_screen(MapPoint::zero()) - old.to_screen(MapPoint::zero());
        same.then(|| Vec2::new(by.x, by.y))
    }

    /// Surfaces, hatches, seams, contour and the ways round.
    pub(super) fn draw_ground(&self, paint: &Painter, shift: Vec2) {
        put(paint, &self.ground, shift);
    }

    /// Labels and pins.
    pub(super) fn draw_marks(&self, paint: &Painter, shift: Vec2) {
        put(paint, &self.marks, shift);
    }

    /// What the picture shows.
    pub(super) fn scene(&self) -> &Arc<MapScene> {
        &self.look.scene
    }

    /// Where its labels stand, before the picture is moved.
    pub(super) fn labels(&self) -> &Labels {
        &self.labels
    }

    /// The panel whose label beside the vehicle is at a place, the picture being moved by `shift`.
    pub(super) fn label_at(&self, at: eframe::egui::Pos2, shift: Vec2) -> Option<usize> {
        self.labels.placed.iter().find(|l| !l.inside && l.rect.translate(shift).contains(at)).map(|l| l.panel)
    }
}

/// Puts shapes on the map, moved by `shift`. That is done to the triangles on their way to the screen, so that the shapes need
/// not be copied first.
fn put(paint: &Painter, shapes: &[Shape], shift: Vec2) {
    let (ctx, layer) = (paint.ctx(), paint.layer_id());
    let end = || ctx.graphics_mut(|graphics| graphics.entry(layer).next_idx());
    let from = end();
    // The clip moves along, so it starts as far back.
    paint.with_clip_rect(paint.clip_rect().translate(-shift)).extend(shapes.iter().cloned());
    if shift != Vec2::ZERO {
        let (to, by) = (end(), TSTransform::from_translation(shift));
        ctx.graphics_mut(|graphics| graphics.entry(layer).transform_after_rounding_range(from, to, by));
    }
}

/// What `draw` draws, and what it answers. All is turned into triangles but letters and filled circles: those are little pictures
/// whose place among all others may change, and cheap to place.
fn recorded<T>(paint: &Painter, draw: impl FnOnce(&Painter) -> T) -> (Vec<Shape>, T) {
    let ctx = paint.ctx();
    let layer = LayerId::new(Order::Background, Id::unique("the map being drawn"));
    let answer = draw(&Painter::new(ctx.clone(), layer, paint.clip_rect()));
    let drawn = ctx.graphics_mut(|graphics| std::mem::take(graphics.entry(layer)));
    let options = TessellationOptions {
        prerasterized_discs: false,
        coarse_tessellation_culling: false,
        ..ctx.tessellation_options(|o| *o)
    };
    let mut tessellator = Tessellator::new(ctx.pixels_per_point(), options, [1, 1], Vec::new());
    let (mut shapes, mut mesh) = (Vec::new(), Mesh::default());
    let flush = |mesh: &mut Mesh, shapes: &mut Vec<Shape>| {
        if !mesh.is_empty() {
            shapes.push(Shape::mesh(Arc::new(std::mem::take(mesh))));
        }
    };
    for clipped in drawn.all_entries() {
        let stays = match &clipped.shape {
            Shape::Text(_) => true,
            Shape::Circle(circle) => circle.stroke.is_empty(),
            _ => false,
        };
        if stays {
            flush(&mut mesh, &mut shapes);
            shapes.push(clipped.shape.clone());
        } else {
            tessellator.tessellate_shape(clipped.shape.clone(), &mut mesh);
        }
    }
    flush(&mut mesh, &mut shapes);
    (shapes, answer)
}
