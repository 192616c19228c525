//! Who practises, on what, and the list of exercises.

use crate::coat::{Air, WindowBasis};
use crate::gui::action::{Action, Model};
use crate::gui::practice::PracticeWish;
use crate::gui::theme;
use crate::gui::widgets::{choice, name, section, slider};
use crate::practice::{Done, Part};
use crate::say;
use crate::units::{Celsius, RelativeHumidity};
use eframe::egui::{self, Align2, FontId, Sense, Stroke, StrokeKind, Ui, pos2, vec2};

/// Draws the list.
pub(super) fn choose_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    ui.label(theme::bold(say!("practice-practice"), 20.0));
    learner(ui, m, out);
    section(ui, say!("practice-exercises"));
    if m.practice.learner.is_none() {
        ui.label(theme::soft(say!("practice-name-first")));
    }
    ui.spacing_mut().item_spacing.y = 6.0;
    ui.add_enabled_ui(m.practice.learner.is_some(), |ui| {
        for done in Done::ALL {
            if exercise(ui, m, done) {
                out.push(Action::Practice(PracticeWish::Start(done)));
            }
        }
    });
    section(ui, say!("practice-on-what"));
    vehicle(ui, m, out);
    let parts = Part::ALL.map(|part| (part, part.name().to_owned()));
    if let Some(part) = choice(ui, say!("practice-lay-for"), m.practice.part, &parts) {
        out.push(Action::Practice(PracticeWish::Part(part)));
    }
    air(ui, m, out);
}

fn learner(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let mut wish = |name: String| out.push(Action::Practice(PracticeWish::Learner(name)));
    if let Some(learner) = &m.practice.learner {
        ui.horizontal(|ui| {
            ui.label(say!("practice-practises", person = learner));
            if ui.button(say!("practice-somebody-else")).clicked() {
                wish(String::new());
            }
        });
        return;
    }
    ui.label(say!("practice-who-practises"));
    if !m.practice.names.is_empty() {
        known_names(ui, m, &mut wish);
    }
    if let Some(new) = name(ui, say!("practice-new-name"), "") {
        wish(new);
    }
}

fn known_names(ui: &mut Ui, m: &Model<'_>, wish: &mut impl FnMut(String)) {
    ui.horizontal_wrapped(|ui| {
        for known in &m.practice.names {
            if ui.button(known).clicked() {
                wish(known.clone());
            }
        }
    });
}

/// One exercise as a large button; answers whether it was pressed.
fn exercise(ui: &mut Ui, m: &Model<'_>, done: Done) -> bool {
    let p = theme::of(ui.ctx());
    let width = ui.available_width();
    let about = ui.painter().layout(done.about().to_owned(), FontId::proportional(12.0), p.ink_soft, width - 20.0);
    let (area, response) = ui.allocate_exact_size(vec2(width, 32.0 + about.size().y), Sense::click());
    let best = m.practice.best_of(done);
    let said = best.map_or_else(String::new, |(best, count)| say!("practice-best-so-far", best = best, count = count));
    response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::Button, ui.is_enabled(), done.name()));
    let paint = ui.painter();
    let (fill, line) = match (response.hovered(), response.has_focus()) {
        (_, true) => (p.accent_wash, Stroke::new(2.0, p.accent)),
        (true, false) => (p.paper, Stroke::new(1.0, p.ink_soft)),
        (false, false) => (p.sheet, Stroke::new(1.0, p.rim)),
    };
    paint.rect(area, 6.0, fill, line, StrokeKind::Inside);
    let font = FontId::new(14.0, theme::bold_family());
    let left = area.left_top() + vec2(10.0, 6.0);
    paint.text(left, Align2::LEFT_TOP, done.name(), font, p.ink);
    paint.text(
        pos2(area.right() - 10.0, left.y + 2.0),
        Align2::RIGHT_TOP,
        said,
        FontId::proportional(12.0),
        p.ink_soft,
    );
    paint.galley(left + vec2(0.0, 20.0), about, p.ink_soft);
    response.clicked()
}

fn vehicle(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let mut all = vec![(0, say!("practice-of-the-job").to_owned())];
    all.extend(m.bodies.iter().enumerate().map(|(k, body)| (k + 1, body.name.clone())));
    let id = m.practice.body.as_ref().map(|t| t.id.as_str());
    let now = m.bodies.iter().position(|b| Some(b.id.as_str()) == id).map_or(0, |k| k + 1);
    if let Some(chosen) = choice(ui, say!("practice-vehicle"), now, &all) {
        let id = chosen.checked_sub(1).and_then(|k| m.bodies.get(k)).map(|b| b.id.clone());
        out.push(Action::Practice(PracticeWish::Body(id)));
    }
}

fn air(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let mut own = m.practice.air.is_some();
    if ui.checkbox(&mut own, say!("practice-other-air")).changed() {
        out.push(Action::Practice(PracticeWish::Air(own.then(Air::default))));
    }
    let Some(air) = m.practice.air else { return };
    if let Some((value, _)) = slider(ui, say!("practice-air-and-panels"), "°C", air.air_temp_c.c(), 5.0..=35.0, 0.5) {
        let warm = Celsius::new(value).unwrap_or(air.air_temp_c);
        let air = Air { air_temp_c: warm, surface_temp_c: warm, warmest_surface_temp_c: None, ..air };
        out.push(Action::Practice(PracticeWish::Air(Some(air))));
    }
    if let Some((value, _)) = slider(ui, say!("practice-humidity"), "%", air.humidity_pct.pct(), 20.0..=90.0, 1.0) {
        let air = Air { humidity_pct: RelativeHumidity::new(value).unwrap_or(air.humidity_pct), ..air };
        out.push(Action::Practice(PracticeWish::Air(Some(air))));
    }
    let window = WindowBasis::new(&m.job.product, None).window(&air);
    let (from, to) = (crate::units::clock(window.min_s), crate::units::clock(window.max_s));
    ui.label(theme::soft(say!("practice-level-from-to", from = from, to = to)));
}
