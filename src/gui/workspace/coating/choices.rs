//! What is asked of the order: who begins where, which side, which panels first, what is left out.

use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::choice;
use crate::insight::{choice_notes, coated_panels, levelling_note, roles_by_experience};
use crate::job::{Command, Experience, Member, OrderChoices, PanelFact, Role};
use crate::say;
use crate::units::listed;
use crate::vehicle::{PanelId, Side};
use eframe::egui::{RichText, Ui};

/// Who does what, by experience.
pub(super) fn crew_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let crew = &m.job.crew;
    for (at, member) in crew.iter().enumerate() {
        let roles: Vec<&str> = member.roles.iter().map(|r| r.verb()).collect();
        let options: Vec<(Experience, String)> =
            Experience::ALL.into_iter().map(|e| (e, e.name().to_owned())).collect();
        let label = say!("coating-person-does", person = &member.name, does = listed(&roles));
        ui.push_id(("experience", at), |ui| {
            if let Some(experience) = choice(ui, &label, member.experience, &options) {
                let mut changed = crew.clone();
                changed[at].experience = experience;
                out.push(Action::edit(Command::SetCrew(changed)));
            }
        });
    }
    if let Some(note) = levelling_note(crew) {
        ui.label(RichText::new(note).color(p.note));
    }
    let roles = roles_by_experience(crew);
    let as_it_is = crew.iter().zip(&roles).all(|(m, r)| m.roles == *r);
    if !as_it_is && ui.button(say!("coating-by-experience")).clicked() {
        let with = |(member, roles): (&Member, Vec<Role>)| Member { roles, ..member.clone() };
        out.push(Action::edit(Command::SetCrew(crew.iter().zip(roles).map(with).collect())));
    }
}

/// The wishes, and what of them can't be kept.
pub(super) fn choices_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let before = &m.job.choices;
    let mut after = before.clone();
    beginnings(ui, m, &mut after);
    let sides = [
        (None, say!("coating-side-any").to_owned()),
        (Some(Side::Left), say!("coating-side-left").to_owned()),
        (Some(Side::Right), say!("coating-side-right").to_owned()),
    ];
    if let Some(side) = choice(ui, say!("coating-side-first"), before.side, &sides) {
        after.side = side;
    }
    ui.checkbox(&mut after.paint_first, say!("coating-paint-first"));
    first(ui, m, &mut after);
    if !before.is_empty() && ui.button(say!("coating-ask-nothing")).clicked() {
        after = OrderChoices::default();
    }
    if after != *before {
        out.push(Action::edit(Command::SetChoices(after)));
    }
    left_out(ui, m, out);
    for note in choice_notes(m.job, m.template, m.view.naming) {
        ui.label(RichText::new(note).color(p.note));
    }
    ui.label(theme::soft(say!("coating-top-before-bottom")));
}

fn beginnings(ui: &mut Ui, m: &Model<'_>, after: &mut OrderChoices) {
    let mut options: Vec<(Option<usize>, String)> = vec![(None, say!("coating-anywhere").to_owned())];
    let coated = coated_panels(m.job, m.template);
    options.extend(coated.iter().map(|&i| (Some(i), m.template.panels[i].name(m.view.naming))));
    for member in &m.job.crew {
        let now = m.job.choices.beginning_of(&member.name).and_then(|id| m.template.index_of(id));
        if let Some(panel) = choice(ui, &say!("coating-begins-with", person = &member.name), now, &options) {
            let panel = panel.map(|i| m.template.panels[i].id.clone());
            *after = std::mem::take(after).with_beginning(&member.name, panel);
        }
    }
}

fn first(ui: &mut Ui, m: &Model<'_>, after: &mut OrderChoices) {
    let name = |id: &PanelId| m.template.panel(id).map_or_else(|| id.to_string(), |p| p.name(m.view.naming));
    for (place, id) in m.job.choices.first.iter().enumerate() {
        ui.horizontal(|ui| {
            ui.label(format!("{}. {}", place + 1, name(id)));
            if ui
                .small_button(say!("coating-take-back"))
                .on_hover_text(say!("coating-need-not-be-first", panel = name(id)))
                .clicked()
            {
                after.first.retain(|other| other != id);
            }
        });
    }
    match m.current() {
        Some((_, panel)) if !after.first.contains(&panel.id) => {
            if ui.button(say!("coating-comes-first", panel = panel.name(m.view.naming))).clicked() {
                after.first.push(panel.id.clone());
            }
        }
        Some(_) => {}
        None => {
            ui.label(theme::soft(say!("coating-choose-panel")));
        }
    }
}

fn left_out(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let Some((_, panel)) = m.current() else { return };
    let left = m.job.record(&panel.id).is_some_and(|r| r.left_uncoated);
    let mut now = left;
    ui.checkbox(&mut now, say!("coating-leave-out", panel = panel.name(m.view.naming)));
    if now != left {
        out.push(Action::edit(Command::SetFact(panel.id.clone(), PanelFact::LeftUncoated(now))));
    }
}
