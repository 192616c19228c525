//! The right side while the vehicle is changed: what can be done with the chosen panels, and how to leave.

use super::bars::is_own;
use super::wish::{VehicleWish, Way};
use super::{Editing, Said};
use crate::geometry::FloorPoint;
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::view_state::Tool;
use crate::gui::widgets::{choice, number, primary, section};
use crate::say;
use crate::units::capital;
use crate::vehicle::{Panel, PanelId, Side, Skip, Stance, Substrate};
use crate::words::decimal;
use eframe::egui::{self, RichText, Ui};

/// Draws the tools, what came of the last one, and the way out.
pub(in crate::gui) fn tools_ui(ui: &mut Ui, m: &Model<'_>, editing: &Editing, out: &mut Vec<Action>) {
    egui::Panel::bottom("leave").resizable(false).frame(egui::Frame::NONE).show(ui, |ui| leave(ui, m, editing, out));
    egui::CentralPanel::default().frame(egui::Frame::NONE).show(ui, |ui| {
        egui::ScrollArea::vertical().id_salt("tools").auto_shrink([false, false]).show(ui, |ui| {
            ui.set_max_width(ui.available_width() - 4.0);
            let chosen: Vec<&Panel> = m.view.chosen.iter().filter_map(|id| m.template.panel(id)).collect();
            head(ui, m, &chosen);
            if let [one] = chosen[..] {
                cutting(ui, m, editing, one, out);
            }
            merging(ui, m, &chosen, out);
            if !chosen.is_empty() {
                facts(ui, m, &chosen, out);
            }
            stance(ui, m, editing, &chosen, out);
        });
    });
}

fn head(ui: &mut Ui, m: &Model<'_>, chosen: &[&Panel]) {
    let naming = m.view.naming;
    match chosen {
        [] => {
            ui.label(theme::bold(say!("edit-vehicle"), 20.0));
            ui.label(say!("edit-choose-panel"));
            ui.label(theme::soft(say!("edit-what-can-be-done")));
        }
        [one] => {
            ui.label(theme::bold(one.name(naming), 20.0));
            let area = decimal(one.area.m2(), 2);
            ui.label(theme::soft(say!("edit-panel-facts", area = area, substrate = one.substrate.name())));
        }
        several => {
            ui.label(theme::bold(say!("edit-panels", count = several.len()), 20.0));
            let names: Vec<String> = several.iter().take(4).map(|p| p.name(naming)).collect();
            let (names, more) = (names.join("; "), several.len().saturating_sub(4));
            ui.label(theme::soft(if more > 0 { say!("edit-and-more", names = names, count = more) } else { names }));
        }
    }
}

/// Two panels of one.
fn cutting(ui: &mut Ui, m: &Model<'_>, editing: &Editing, panel: &Panel, out: &mut Vec<Action>) {
    section(ui, say!("edit-cut"));
    if panel.side == Side::Centre {
        ui.label(theme::soft(say!("edit-no-cut-on-centreline")));
        return;
    }
    if m.view.tool == Tool::Cut {
        let words = match editing.first {
            None => say!("edit-cut-begins"),
            Some(_) => say!("edit-cut-ends"),
        };
        ui.label(RichText::new(words).color(theme::of(ui.ctx()).accent));
        if ui.button(say!("edit-do-not-cut")).clicked() {
            out.push(Action::View(ViewChange::Tool(Tool::Choose)));
        }
        return;
    }
    ui.horizontal(|ui| {
        if ui.button(say!("edit-draw-cut")).clicked() {
            out.push(Action::View(ViewChange::Tool(Tool::Cut)));
        }
        let middle = [
            (say!("edit-across"), Way::Across, say!("edit-across-does")),
            (say!("edit-along"), Way::Along, say!("edit-along-does")),
        ];
        for (name, way, hint) in middle {
            if ui.button(name).on_hover_text(hint).clicked() {
                out.push(Action::Vehicle(VehicleWish::CutMiddle(way)));
            }
        }
    });
}

/// One panel of two.
fn merging(ui: &mut Ui, m: &Model<'_>, chosen: &[&Panel], out: &mut Vec<Action>) {
    let naming = m.view.naming;
    let mut merge = |a: &PanelId, b: &PanelId| out.push(Action::Vehicle(VehicleWish::Merge(a.clone(), b.clone())));
    match chosen {
        [one] => {
            section(ui, say!("edit-join-neighbour"));
            let index = m.template.index_of(&one.id).unwrap_or_default();
            let around = m.template.neighbours(index);
            let mut options = vec![(None, say!("edit-choose").to_owned())];
            options.extend(around.iter().map(|i| (Some(*i), m.template.panels[*i].name(naming))));
            if let Some(Some(other)) = choice(ui, say!("edit-neighbour"), None, &options) {
                merge(&one.id, &m.template.panels[other].id);
            }
        }
        [a, b] => {
            section(ui, say!("edit-join-two"));
            // The one that was chosen first keeps its name.
            let (kept, gone) = if m.view.current.as_ref() == Some(&a.id) { (b, a) } else { (a, b) };
            if ui.button(say!("edit-join-as", panel = kept.name(naming))).clicked() {
                merge(&kept.id, &gone.id);
            }
        }
        _ => {}
    }
}

/// What the chosen panels are.
fn facts(ui: &mut Ui, m: &Model<'_>, chosen: &[&Panel], out: &mut Vec<Action>) {
    section(ui, say!("edit-what-it-is"));
    let skip = common(chosen, |p| p.skip);
    let mut options = vec![(Some(None), say!("edit-takes-part").to_owned())];
    options.extend(Skip::ALL.iter().map(|s| (Some(Some(*s)), s.words().to_owned())));
    if skip.is_none() {
        options.push((None, say!("edit-not-alike").to_owned()));
    }
    if let Some(Some(skip)) = choice(ui, say!("edit-in-work"), skip, &options) {
        out.push(Action::Vehicle(VehicleWish::Skip(skip)));
    }
    let kind = common(chosen, |p| p.substrate);
    let mut options: Vec<_> = Substrate::ALL.iter().map(|s| (Some(*s), s.name().to_owned())).collect();
    if kind.is_none() {
        options.push((None, say!("edit-not-alike").to_owned()));
    }
    if let Some(Some(kind)) = choice(ui, say!("edit-made-of"), kind, &options) {
        out.push(Action::Vehicle(VehicleWish::Substrate(kind)));
    }
    // Panels of two sides have no stance in common.
    let Some(side) = common(chosen, |p| p.side) else { return };
    let stance = common(chosen, |p| p.stance);
    let mut options: Vec<_> =
        m.template.stances_for(side).map(|(i, _)| (Some(i), say!("edit-stance-number", number = i + 1))).collect();
    if stance.is_none() {
        options.push((None, say!("edit-not-alike").to_owned()));
    }
    if let Some(Some(index)) = choice(ui, say!("edit-worked-from"), stance, &options) {
        out.push(Action::Vehicle(VehicleWish::WorkedFrom(m.template.stances[index].id.clone())));
    }
}

/// What all have in common; none where they differ.
fn common<T: PartialEq>(chosen: &[&Panel], of: impl Fn(&Panel) -> T) -> Option<T> {
    let first = of(chosen.first()?);
    chosen.iter().all(|p| of(p) == first).then_some(first)
}

/// The stance that is chosen, or that of the chosen panel, in numbers.
fn stance(ui: &mut Ui, m: &Model<'_>, editing: &Editing, chosen: &[&Panel], out: &mut Vec<Action>) {
    let by_id = |id: &String| m.template.stances.iter().position(|s| s.id == *id);
    let of_panel = if let [one] = chosen { Some(one.stance) } else { None };
    let Some(index) = editing.stance.as_ref().and_then(by_id).or(of_panel) else { return };
    let Some(Stance { id, at }) = m.template.stances.get(index) else { return };
    section(ui, &say!("edit-stance", number = index + 1));
    let mut place = |to: FloorPoint| {
        out.push(Action::Vehicle(VehicleWish::MoveStance { stance: id.clone(), to, by_keys: false }));
    };
    ui.push_id(id, |ui| {
        let range = -Stance::REACH_MM..=m.template.length.mm() + Stance::REACH_MM;
        if let Some(x) = number(ui, say!("edit-behind-front"), "mm", f64::from(at.x), 0, range) {
            place(FloorPoint::new(x as f32, at.y));
        }
        if at.y == 0.0 {
            return;
        }
        let range = 0.0..=0.5 * m.template.width.mm() + Stance::REACH_MM;
        if let Some(y) = number(ui, say!("edit-from-centreline"), "mm", f64::from(at.y.abs()), 0, range) {
            place(FloorPoint::new(at.x, (y as f32).copysign(at.y)));
        }
    });
}

fn leave(ui: &mut Ui, m: &Model<'_>, editing: &Editing, out: &mut Vec<Action>) {
    ui.add_space(12.0);
    if let Some(said) = &editing.said {
        let (text, color) = match said {
            Said::Done(text) => (text, theme::of(ui.ctx()).ink),
            Said::Refused(text) => (text, theme::of(ui.ctx()).note),
        };
        ui.label(RichText::new(sentence(text)).color(color));
        ui.add_space(4.0);
    }
    ui.horizontal(|ui| {
        let second = |text: &str| egui::Button::new(text).min_size(egui::vec2(0.0, 36.0));
        let mut ask_name = false;
        if is_own(m) {
            if ui.add_enabled_ui(editing.history.is_changed(), |ui| primary(ui, say!("common-save"))).inner.clicked() {
                out.push(Action::Vehicle(VehicleWish::AskReplace));
            }
            ask_name |= ui.add(second(say!("edit-save-as"))).clicked();
        } else {
            ask_name |= primary(ui, say!("edit-save-as")).clicked();
        }
        if ask_name {
            out.push(Action::Vehicle(VehicleWish::AskName));
        }
        if ui.add(second(say!("common-cancel"))).clicked() {
            out.push(Action::Vehicle(VehicleWish::Cancel));
        }
    });
}

/// With a capital and a full stop.
fn sentence(text: &str) -> String {
    let capital = capital(text);
    if capital.ends_with('.') { capital } else { format!("{capital}.") }
}
