//! The rail at the left: the work in its order, and how far each part is.

use super::action::{Action, Model, ViewChange};
use super::theme;
use super::view_state::Workspace;
use super::widgets::one_line;
use crate::say;
use crate::units::minutes;
use crate::vehicle::Surface;
use crate::vehicle::template_name;
use eframe::egui::{self, Sense, Stroke, Ui, pos2, vec2};

/// How far a workspace is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum State {
    Empty,
    InProgress,
    Done,
    Open,
}

/// Draws the rail.
pub(super) fn rail_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    ui.add_space(8.0);
    ui.spacing_mut().item_spacing.y = 4.0;
    for workspace in Workspace::ALL {
        let (state, note) = standing(m, workspace);
        let chosen = m.view.workspace == workspace;
        let (area, response) = ui.allocate_exact_size(vec2(ui.available_width(), 56.0), Sense::click());
        response.widget_info(|| {
            let text = format!("{}, {note}", workspace.name());
            egui::WidgetInfo::selected(egui::Role::Tab, true, chosen, text)
        });
        let paint = ui.painter();
        let fill = match (chosen, response.hovered()) {
            (true, _) => p.accent_wash,
            (false, true) => p.paper,
            (false, false) => p.sheet,
        };
        paint.rect_filled(area, 6.0, fill);
        if response.has_focus() {
            paint.rect_stroke(area, 6.0, Stroke::new(2.0, p.accent), egui::StrokeKind::Inside);
        }
        let ink = if chosen { p.accent } else { p.ink };
        let family = if chosen { theme::bold_family() } else { egui::FontFamily::Proportional };
        let of_size =
            |size| paint.layout_no_wrap(workspace.name().to_owned(), egui::FontId::new(size, family.clone()), ink);
        // A long name is set smaller.
        let name =
            Some(of_size(16.0)).filter(|name| name.size().x <= area.width() - 38.0).unwrap_or_else(|| of_size(14.0));
        paint.galley(area.left_top() + vec2(32.0, 8.0), name, ink);
        let galley =
            paint.layout_job(one_line(&note, egui::FontId::proportional(12.0), p.ink_soft, area.width() - 38.0));
        let cut = galley.elided;
        paint.galley(area.left_top() + vec2(32.0, 31.0), galley, p.ink_soft);
        mark(paint, pos2(area.left() + 16.0, area.top() + 19.0), state);
        let response = if cut { response.on_hover_text(note) } else { response };
        if response.clicked() {
            out.push(Action::View(ViewChange::Workspace(workspace)));
        }
    }
}

/// A painted mark: ring, half, tick, or an open triangle.
fn mark(paint: &egui::Painter, at: egui::Pos2, state: State) {
    let p = theme::of(paint.ctx());
    let line = Stroke::new(1.5, p.ink_soft);
    match state {
        State::Empty => {
            paint.circle_stroke(at, 5.5, line);
        }
        State::InProgress => {
            paint.circle_stroke(at, 5.5, line);
            let half: Vec<_> = (0..=12)
                .map(|k| {
                    let angle = std::f32::consts::FRAC_PI_2 + std::f32::consts::PI * k as f32 / 12.0;
                    pos2(at.x + 5.5 * angle.cos(), at.y + 5.5 * angle.sin())
                })
                .collect();
            paint.add(egui::Shape::convex_polygon(half, p.ink_soft, Stroke::NONE));
        }
        State::Done => {
            let tick = vec![at + vec2(-5.0, 0.0), at + vec2(-1.5, 4.0), at + vec2(5.5, -4.5)];
            paint.line(tick, Stroke::new(2.5, p.go));
        }
        State::Open => {
            let triangle = vec![at + vec2(0.0, -6.0), at + vec2(6.0, 5.0), at + vec2(-6.0, 5.0)];
            paint.add(egui::Shape::convex_polygon(triangle, p.sheet, Stroke::new(1.5, p.note)));
            paint.vline(at.x, at.y - 2.0..=at.y + 1.5, Stroke::new(1.5, p.note));
        }
    }
}

/// How far a workspace is, and a few words about it.
fn standing(m: &Model<'_>, workspace: Workspace) -> (State, String) {
    let painted = m.template.panels.iter().zip(&m.insight.panels).filter(|(p, _)| p.surface == Surface::Paint);
    match workspace {
        Workspace::Job if m.job.vehicle.description.trim().is_empty() => {
            (State::Empty, say!("window-rail-no-vehicle").to_owned())
        }
        Workspace::Job => (State::Done, template_name(&m.template.id, &m.template.name)),
        Workspace::Survey => {
            let can_read = painted.filter(|(_, i)| i.unreadable.is_none());
            let (read, all) = can_read.fold((0, 0), |(r, n), (_, i)| (r + usize::from(i.film.is_some()), n + 1));
            let state = match read {
                0 => State::Empty,
                n if n == all => State::Done,
                _ => State::InProgress,
            };
            (state, say!("window-rail-read", read = read, all = all))
        }
        Workspace::Correction => {
            let worked = painted.filter(|(_, i)| !i.polish.steps.is_empty()).count();
            let stays: usize = m.insight.panels.iter().map(|p| p.polish.stays.len()).sum();
            if !m.insight.learned.notes.is_empty() {
                return (State::Open, say!("window-rail-look-at-test-spot").to_owned());
            }
            match (worked, stays) {
                (0, _) => (State::Empty, say!("window-rail-nothing-to-polish").to_owned()),
                (n, 0) => (State::Done, say!("window-rail-panels", panels = n)),
                (n, _) => (State::Open, say!("window-rail-panels-stay", panels = n, stays = stays)),
            }
        }
        Workspace::Coating if !m.insight.air.go => (State::Open, say!("window-rail-not-in-this-air").to_owned()),
        Workspace::Coating if !m.order.conflicts.is_empty() => (State::Open, say!("window-rail-no-order").to_owned()),
        Workspace::Coating => match m.order.order() {
            Some(order) if m.order.is_current() => {
                (State::Done, say!("window-rail-for-crew", time = minutes(order.plan.makespan_s)))
            }
            _ => (State::InProgress, say!("window-rail-planning").to_owned()),
        },
        Workspace::Bay => match m.bay.running() {
            Some(trade) => {
                let (done, all) = m.bay.run(trade).day().done();
                (State::InProgress, say!("window-rail-done", done = done, all = all))
            }
            None if m.bay.coating.is_over() => (State::Done, say!("window-rail-coated").to_owned()),
            None if m.bay.polishing.is_over() => (State::InProgress, say!("window-rail-polished").to_owned()),
            None => (State::Empty, say!("window-rail-not-begun").to_owned()),
        },
        Workspace::Handover => handed_over(m),
        Workspace::Practice => match (m.practice.doing(), &m.practice.learner) {
            (Some(done), _) => (State::InProgress, done.name().to_owned()),
            (None, Some(name)) => (State::Empty, name.clone()),
            (None, None) => (State::Empty, say!("window-rail-for-apprentices").to_owned()),
        },
    }
}

/// Whether there is something to hand over.
fn handed_over(m: &Model<'_>) -> (State, String) {
    match (&m.handover.said, m.insight.panels.iter().any(|p| p.film.is_some())) {
        (Some(_), _) => (State::Done, say!("window-rail-written").to_owned()),
        (None, true) => (State::InProgress, say!("window-rail-sheets-ready").to_owned()),
        (None, false) => (State::Empty, say!("window-rail-nothing-read").to_owned()),
    }
}
