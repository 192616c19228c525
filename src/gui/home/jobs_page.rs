//! All jobs of a folder, with a field to look for one; or the visits of one vehicle.

use super::HomeWish;
use crate::file::{JobHead, history_of, matching};
use crate::gui::action::{Action, Effect, Model};
use crate::gui::theme;
use crate::gui::widgets::{page_over, primary};
use crate::message;
use crate::say;
use crate::words::Message;
use eframe::egui::{self, Align2, EventFilter, FontId, Key, Rect, RichText, Sense, Stroke, Ui, pos2, vec2};
use std::path::PathBuf;

/// What is looked for, and what was found.
#[derive(Debug, Clone, Default)]
pub(in crate::gui) struct JobsPage {
    words: String,
    /// Only the jobs of this plate, the first visit first.
    plate: Option<String>,
    /// Another folder, as it is typed.
    folder: String,
    at: usize,
    found: Vec<usize>,
    /// For which words, plate and list that was found.
    found_for: Option<(String, Option<String>, u64)>,
}

impl JobsPage {
    /// All jobs, or those of a plate.
    pub(super) fn new(folder: Option<&std::path::Path>, plate: Option<String>) -> Self {
        Self { folder: folder.map(|f| f.display().to_string()).unwrap_or_default(), plate, ..Self::default() }
    }

    fn look(&mut self, m: &Model<'_>) {
        let wanted = (self.words.clone(), self.plate.clone(), m.home.jobs.edition);
        if self.found_for.as_ref() != Some(&wanted) {
            let jobs = &m.home.jobs.listing.jobs;
            self.found = match &self.plate {
                Some(plate) => history_of(jobs, plate),
                None => matching(jobs, &self.words),
            };
            self.at = 0;
            self.found_for = Some(wanted);
        }
    }
}

const ROW: f32 = 28.0;
/// Head and share of the width of each column.
const COLUMNS: [(Message, f32); 5] = [
    (message!("home-column-day"), 0.12),
    (message!("home-column-plate"), 0.13),
    (message!("home-column-owner"), 0.17),
    (message!("home-column-job"), 0.32),
    (message!("home-column-open"), 0.26),
];

/// Draws the page.
pub(super) fn jobs_ui(ui: &mut Ui, m: &Model<'_>, page: &mut JobsPage, out: &mut Vec<Action>) {
    let room = ui.ctx().content_rect().size();
    let shown = page_over(ui, "jobs").show(ui, |ui| {
        ui.set_width((room.x - 96.0).min(1040.0));
        head(ui, m, page);
        folder(ui, m, page, out);
        let field = page.plate.is_none().then(|| search(ui, page));
        page.look(m);
        said(ui, m, page);
        let height = (room.y - 330.0).max(160.0);
        let moved = field.is_none_or(|field| ui.memory(|memory| memory.has_focus(field))) && arrows(ui, page);
        let picked = list(ui, m, page, height, moved);
        let entered = ui.input(|i| i.key_pressed(Key::Enter)) && !ui.memory(|o| o.has_focus(folder_id()));
        let chosen = page.found.get(page.at).copied();
        if let Some(why) = chosen.and_then(|at| m.home.jobs.listing.jobs.get(at)?.trouble.as_ref()) {
            ui.label(RichText::new(say!("home-job-unread", why = why)).color(theme::of(ui.ctx()).note));
        }
        ui.horizontal(|ui| {
            let can = chosen.is_some_and(|at| m.home.jobs.listing.jobs.get(at).is_some_and(|j| j.trouble.is_none()));
            let clicked = ui.add_enabled_ui(can, |ui| primary(ui, say!("common-open"))).inner.clicked();
            if (clicked || entered || picked)
                && can
                && let Some(path) = chosen.and_then(|at| m.home.jobs.file(at))
            {
                out.push(Action::Home(HomeWish::Close));
                out.push(Action::Effect(Effect::Open(path)));
            }
            visits(ui, m, page, chosen);
            if ui.button(say!("common-close")).clicked() {
                ui.close();
            }
        });
    });
    if shown.should_close() {
        out.push(Action::Home(HomeWish::Close));
    }
}

fn head(ui: &mut Ui, m: &Model<'_>, page: &JobsPage) {
    let title = match &page.plate {
        Some(plate) => say!("home-visits", plate = plate),
        None => say!("home-all-jobs").to_owned(),
    };
    ui.horizontal(|ui| {
        ui.label(theme::bold(title, 20.0));
        if let Some(progress) = m.home.jobs.progress() {
            ui.label(theme::soft(progress));
        }
    });
}

fn folder_id() -> egui::Id {
    egui::Id::unique("folder-of-jobs")
}

/// Which folder, and the ways to another one.
fn folder(ui: &mut Ui, m: &Model<'_>, page: &mut JobsPage, out: &mut Vec<Action>) {
    ui.horizontal(|ui| {
        let name = ui.label(theme::soft(say!("home-folder")));
        let width = (ui.available_width() - 260.0).max(160.0);
        let edit = egui::TextEdit::singleline(&mut page.folder)
            .id(folder_id())
            .desired_width(width)
            .margin(egui::Margin::symmetric(8, 6));
        let response = ui.add(edit).labelled_by(name.id);
        let entered = response.lost_focus() && ui.input(|i| i.key_pressed(Key::Enter));
        let look = ui.button(say!("home-look-through")).on_hover_text(say!("home-look-through-hint"));
        let typed = page.folder.trim();
        if (look.clicked() || entered) && !typed.is_empty() {
            let same = m.home.jobs.folder().is_some_and(|now| now == std::path::Path::new(typed));
            let folder = PathBuf::from(typed);
            out.push(Action::Home(if same { HomeWish::ListAgain } else { HomeWish::Folder(folder) }));
        }
        if ui.button(say!("home-choose")).clicked() {
            out.push(Action::Home(HomeWish::AskFolder));
        }
    });
}

fn search(ui: &mut Ui, page: &mut JobsPage) -> egui::Id {
    let name = ui.label(theme::soft(say!("home-look-for")));
    let edit = egui::TextEdit::singleline(&mut page.words)
        .desired_width(f32::INFINITY)
        .char_limit(80)
        .margin(egui::Margin::symmetric(8, 8));
    let response = ui.add(edit).labelled_by(name.id);
    if ui.memory(|memory| memory.focused().is_none()) {
        response.request_focus();
    }
    let filter = EventFilter { vertical_arrows: true, horizontal_arrows: true, ..Default::default() };
    ui.memory_mut(|memory| memory.set_focus_lock_filter(response.id, filter));
    response.id
}

/// What the list is, or why there is none.
fn said(ui: &mut Ui, m: &Model<'_>, page: &JobsPage) {
    let p = theme::of(ui.ctx());
    let jobs = &m.home.jobs;
    if let Some(trouble) = &jobs.trouble {
        ui.label(RichText::new(trouble).color(p.note));
    } else if jobs.folder().is_none() {
        ui.label(say!("home-say-folder"));
    } else if !jobs.is_busy() || !jobs.listing.jobs.is_empty() {
        let all = jobs.listing.jobs.len();
        ui.label(theme::soft(match (page.found.len(), &page.plate) {
            (_, _) if all == 0 => say!("home-none-yet").to_owned(),
            (0, Some(_)) => say!("home-no-plate").to_owned(),
            (0, None) => say!("home-no-words", all = all),
            (count, _) => match jobs.listing.left_out {
                0 => say!("home-count", count = count, all = all),
                more => say!("home-count-more", count = count, all = all, more = more),
            },
        }));
    }
}

fn arrows(ui: &Ui, page: &mut JobsPage) -> bool {
    let pressed = |key| ui.input(|i| i.num_presses(key));
    let (up, down) = (pressed(Key::ArrowUp), pressed(Key::ArrowDown));
    page.at = (page.at + down).saturating_sub(up).min(page.found.len().saturating_sub(1));
    up + down > 0
}

/// The rows; answers whether one was clicked twice.
fn list(ui: &mut Ui, m: &Model<'_>, page: &mut JobsPage, height: f32, moved: bool) -> bool {
    let p = theme::of(ui.ctx());
    let (heads, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
    for ((name, _), cell) in COLUMNS.iter().zip(cells(heads)) {
        ui.painter().text(cell.left_center(), Align2::LEFT_CENTER, name.text(), FontId::proportional(12.0), p.ink_soft);
    }
    ui.painter().hline(heads.x_range(), heads.bottom(), Stroke::new(1.0, p.hairline));
    let mut picked = false;
    let builder = egui::UiBuilder::new()
        .id_salt("job-rows")
        .accessibility_role(egui::Role::ListBox)
        .accessibility_label(say!("home-jobs"));
    ui.scope_builder(builder, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        let mut area = egui::ScrollArea::vertical().max_height(height).min_scrolled_height(height).auto_shrink(false);
        if moved {
            // The chosen row stays in the middle while the keys go through the list.
            area = area.vertical_scroll_offset((ROW * page.at as f32 - height / 2.0).max(0.0));
        }
        area.show_rows(ui, ROW, page.found.len(), |ui, rows| {
            for at in rows {
                let Some(job) = page.found.get(at).and_then(|job| m.home.jobs.listing.jobs.get(*job)) else { continue };
                let response = row(ui, job, at, page);
                if response.clicked() {
                    page.at = at;
                }
                picked |= response.double_clicked();
            }
        });
    });
    picked
}

fn cells(area: Rect) -> impl Iterator<Item = Rect> {
    let mut left = area.left() + 8.0;
    let width = area.width() - 16.0;
    COLUMNS.iter().map(move |(_, share)| {
        let cell = Rect::from_min_size(pos2(left, area.top()), vec2(width * share - 8.0, area.height()));
        left += width * share;
        cell
    })
}

fn row(ui: &mut Ui, job: &JobHead, at: usize, page: &JobsPage) -> egui::Response {
    let p = theme::of(ui.ctx());
    let (area, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
    let id = ui.scope_id().with(("job", at));
    let response = ui.interact(area, id, Sense::CLICK);
    let chosen = at == page.at;
    let date = job.date.map_or_else(|| "–".to_owned(), |d| d.to_string());
    let what = match &job.trouble {
        Some(_) => job.file.clone(),
        None if job.vehicle.trim().is_empty() => job.name.clone(),
        None => format!("{}; {}", job.name, job.vehicle),
    };
    let open = job.trouble.as_ref().map_or_else(|| job.open.clone(), |_| say!("home-cannot-read").to_owned());
    let texts = [date, job.plate.clone(), job.owner.clone(), what, open];
    let said = texts.iter().filter(|t| !t.is_empty()).cloned().collect::<Vec<_>>().join(", ");
    response.widget_info(|| egui::WidgetInfo::selected(egui::Role::ListBoxOption, true, chosen, &said));
    ui.ctx().accesskit_node_builder(id, |node| {
        node.set_selected(chosen);
        node.set_position_in_set(at);
        node.set_size_of_set(page.found.len());
    });
    if chosen {
        ui.painter().rect_filled(area, 3.0, p.accent_wash);
    } else if response.hovered() {
        ui.painter().rect_filled(area, 3.0, p.paper);
    }
    let ink = if job.trouble.is_some() { p.note } else { p.ink };
    for (text, cell) in texts.into_iter().zip(cells(area)) {
        let mut line = egui::text::LayoutJob::simple_singleline(text, FontId::proportional(14.0), ink);
        line.wrap = egui::text::TextWrapping::truncate_at_width(cell.width());
        let galley = ui.painter().layout_job(line);
        let at = Align2::LEFT_CENTER.anchor_size(cell.left_center(), galley.size());
        ui.painter().galley(at.min, galley, ink);
    }
    match &job.trouble {
        Some(why) => response.on_hover_text(why),
        None => response.on_hover_text(&job.file),
    }
}

/// From a job to all visits of its vehicle, and back.
fn visits(ui: &mut Ui, m: &Model<'_>, page: &mut JobsPage, chosen: Option<usize>) {
    if page.plate.is_some() {
        if ui.button(say!("home-all-jobs")).clicked() {
            page.plate = None;
        }
        return;
    }
    let plate = chosen.and_then(|at| m.home.jobs.listing.jobs.get(at)).map(|job| job.plate.clone());
    let plate = plate.filter(|plate| !plate.is_empty());
    if ui.add_enabled(plate.is_some(), egui::Button::new(say!("home-visits-vehicle"))).clicked() {
        page.plate = plate;
    }
}
