//! Job: vehicle, customer, goal, crew.

use super::vehicle::vehicle_ui;
use crate::gui::action::{Action, Model};
use crate::gui::home::{nothing_yet, recent_ui};
use crate::gui::theme;
use crate::gui::widgets::{section, text};
use crate::job::{Command, Member, Role, TextField};
use crate::say;
use eframe::egui::{self, Ui};

/// Draws the job sheet.
pub(super) fn job_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let job = m.job;
    ui.label(theme::bold(say!("window-workspace-job"), 20.0));
    if job.vehicle.description.trim().is_empty() {
        let sentence = say!("job-nothing-yet");
        nothing_yet(ui, m, sentence, "survey", out);
    }
    recent_ui(ui, m, out);
    field(ui, say!("job-name"), TextField::Name, &job.name, 1, out);
    section(ui, say!("job-vehicle"));
    vehicle_ui(ui, m, out);
    field(ui, say!("job-description"), TextField::Vehicle, &job.vehicle.description, 2, out);
    field(ui, say!("job-plate"), TextField::Plate, &job.vehicle.plate, 1, out);
    field(ui, say!("job-paint-history"), TextField::History, &job.vehicle.history, 3, out);
    section(ui, say!("job-customer"));
    field(ui, say!("job-customer-name"), TextField::Customer, &job.customer.name, 1, out);
    field(ui, say!("job-wishes"), TextField::Wishes, &job.customer.wishes, 3, out);
    section(ui, say!("job-crew"));
    crew(ui, &job.crew, out);
}

fn field(ui: &mut Ui, label: &str, field: TextField, value: &str, rows: usize, out: &mut Vec<Action>) {
    if let Some((text, gesture)) = text(ui, label, value, rows) {
        out.push(Action::Edit(Command::SetText(field, text), Some(gesture)));
    }
}

/// Gives what nobody does any more to the first of those who stay.
fn take_over(crew: &mut [Member]) {
    for role in [Role::Apply, Role::Level] {
        if !crew.iter().any(|m| m.roles.contains(&role))
            && let Some(first) = crew.first_mut()
        {
            first.roles.push(role);
            first.roles.sort_unstable();
        }
    }
}

/// Who works, and what each does.
fn crew(ui: &mut Ui, crew: &[Member], out: &mut Vec<Action>) {
    for (index, member) in crew.iter().enumerate() {
        ui.push_id(index, |ui| {
            let mut changed = crew.to_vec();
            if let Some((name, gesture)) = text(ui, &say!("job-worker", number = index + 1), &member.name, 1) {
                changed[index].name = name;
                out.push(Action::Edit(Command::SetCrew(changed.clone()), Some(gesture)));
            }
            ui.horizontal(|ui| {
                for role in [Role::Apply, Role::Level] {
                    let mut has = member.roles.contains(&role);
                    if ui.checkbox(&mut has, role.verb()).changed() {
                        changed[index].roles.retain(|r| *r != role);
                        if has {
                            changed[index].roles.push(role);
                            changed[index].roles.sort_unstable();
                        }
                        out.push(Action::edit(Command::SetCrew(changed.clone())));
                    }
                }
                let right = egui::Layout::right_to_left(egui::Align::Center);
                ui.with_layout(right, |ui| {
                    if crew.len() > 1 && ui.button(say!("job-remove-worker")).clicked() {
                        changed.remove(index);
                        take_over(&mut changed);
                        out.push(Action::edit(Command::SetCrew(changed.clone())));
                    }
                });
            });
        });
    }
    if crew.len() < 4 && ui.button(say!("job-add-worker")).clicked() {
        let mut changed = crew.to_vec();
        let name = (1..=crew.len() + 1)
            .map(|n| say!("job-worker", number = n))
            .find(|name| crew.iter().all(|m| m.name != *name));
        changed.push(Member::new(name.unwrap_or_default(), &[Role::Apply, Role::Level]));
        out.push(Action::edit(Command::SetCrew(changed)));
    }
}
