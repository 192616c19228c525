//! Finding a command, a panel or a recent job by typed words.

use super::{WindowCommand, all};
use crate::gui::action::{Action, Effect, Model, ViewChange};
use crate::gui::home::HomeWish;
use crate::gui::theme;
use crate::gui::widgets::page_over;
use crate::say;
use crate::vehicle::PanelId;
use eframe::egui::{self, EventFilter, FontId, Key, RichText, Sense, Stroke, Ui, vec2};
use std::path::PathBuf;

/// What is typed, and the line that Enter takes.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(in crate::gui) struct Find {
    pub(in crate::gui) words: String,
    at: usize,
}

/// A line of the list.
struct Line {
    name: String,
    about: String,
    keys: String,
    /// Why it can't be taken now.
    not: Option<&'static str>,
    takes: Takes,
}

enum Takes {
    Command(&'static WindowCommand),
    Panel(PanelId),
    Job(PathBuf),
}

/// Lines shown at once.
const SHOWN: usize = 9;
const ROW: f32 = 44.0;

/// Draws the search.
pub(in crate::gui) fn find_ui(ui: &mut Ui, m: &Model<'_>, find: &mut Find, out: &mut Vec<Action>) {
    let shown = page_over(ui, "find").show(ui, |ui| {
        ui.set_width(560.0);
        let name = ui.label(theme::bold(say!("find-title"), 16.0));
        let before = find.words.clone();
        let edit = egui::TextEdit::singleline(&mut find.words)
            .desired_width(f32::INFINITY)
            .char_limit(80)
            .hint_text(say!("find-hint"))
            .margin(egui::Margin::symmetric(8, 8));
        let response = ui.add(edit).labelled_by(name.id);
        // The field keeps the arrow keys, so that they go through the list.
        let filter = EventFilter { vertical_arrows: true, horizontal_arrows: true, ..Default::default() };
        ui.memory_mut(|memory| {
            memory.request_focus(response.id);
            memory.set_focus_lock_filter(response.id, filter);
        });
        if find.words != before {
            find.at = 0;
        }
        let lines = lines(m, &find.words);
        let (up, down, enter) =
            ui.input(|i| (i.key_pressed(Key::ArrowUp), i.key_pressed(Key::ArrowDown), i.key_pressed(Key::Enter)));
        find.at = (find.at + usize::from(down)).saturating_sub(usize::from(up)).min(lines.len().saturating_sub(1));
        let mut taken = lines.get(find.at).filter(|_| enter);
        if lines.is_empty() {
            ui.label(say!("find-nothing"));
        }
        let height = ROW * SHOWN.min(lines.len()) as f32;
        egui::ScrollArea::vertical().max_height(height).min_scrolled_height(height).auto_shrink([false, true]).show(
            ui,
            |ui| {
                ui.spacing_mut().item_spacing.y = 0.0;
                for (at, line) in lines.iter().enumerate() {
                    if row(ui, line, at, at == find.at, up || down) {
                        taken = Some(line);
                    }
                }
            },
        );
        if let Some(line) = taken.filter(|line| line.not.is_none()) {
            out.push(Action::Home(HomeWish::Close));
            out.push(match &line.takes {
                Takes::Command(command) => (command.wish)(m),
                Takes::Panel(panel) => Action::View(ViewChange::Choose(Some(panel.clone()))),
                Takes::Job(path) => Action::Effect(Effect::Open(path.clone())),
            });
        }
    });
    if shown.should_close() {
        out.push(Action::Home(HomeWish::Close));
    }
}

/// One line; answers whether it was clicked.
fn row(ui: &mut Ui, line: &Line, at: usize, chosen: bool, bring: bool) -> bool {
    let p = theme::of(ui.ctx());
    let (area, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
    let id = ui.scope_id().with(("line", at));
    let response = ui.interact(area, id, Sense::CLICK);
    let said = match line.not {
        Some(why) => format!("{}, {why}", line.name),
        None => format!("{}, {} {}", line.name, line.about, line.keys),
    };
    response.widget_info(|| egui::WidgetInfo::selected(egui::Role::MenuItem, line.not.is_none(), chosen, &said));
    if chosen {
        ui.painter().rect_filled(area, 4.0, p.accent_wash);
        if bring {
            ui.scroll_to_rect(area, None);
        }
    } else if response.hovered() {
        ui.painter().rect_filled(area, 4.0, p.paper);
    }
    if chosen {
        ui.painter().rect_stroke(area.shrink(1.0), 4.0, Stroke::new(1.5, p.accent), egui::StrokeKind::Inside);
    }
    let ink = if line.not.is_some() { p.ink_soft } else { p.ink };
    let inside = area.shrink2(vec2(10.0, 4.0));
    let small = FontId::proportional(12.0);
    let paint = ui.painter().with_clip_rect(area);
    let keys = paint.text(inside.right_center(), egui::Align2::RIGHT_CENTER, &line.keys, small.clone(), p.ink_soft);
    paint.text(inside.left_top(), egui::Align2::LEFT_TOP, &line.name, FontId::proportional(14.0), ink);
    let about = line.not.unwrap_or(&line.about);
    let mut text = egui::text::LayoutJob::simple_singleline(about.to_owned(), small, p.ink_soft);
    text.wrap = egui::text::TextWrapping::truncate_at_width(keys.left() - inside.left() - 8.0);
    paint.galley(egui::pos2(inside.left(), inside.top() + 19.0), paint.layout_job(text), p.ink_soft);
    response.clicked()
}

/// What fits the words, the best first: names that begin so, names with such words, then descriptions.
fn lines(m: &Model<'_>, words: &str) -> Vec<Line> {
    let words: Vec<String> = words.to_lowercase().split_whitespace().map(str::to_owned).collect();
    let mut ranked: Vec<(usize, Line)> =
        everything(m, !words.is_empty()).filter_map(|line| Some((rank(&line, &words)?, line))).collect();
    ranked.sort_by_key(|(rank, line)| (*rank, line.not.is_some()));
    ranked.into_iter().map(|(_, line)| line).collect()
}

fn rank(line: &Line, words: &[String]) -> Option<usize> {
    let (name, about) = (line.name.to_lowercase(), line.about.to_lowercase());
    let begins = |word: &String| name.split([' ', ',', '-']).any(|part| part.starts_with(word.as_str()));
    if words.first().is_none_or(|first| name.starts_with(first.as_str())) && words.iter().all(begins) {
        Some(0)
    } else if words.iter().all(begins) {
        Some(1)
    } else {
        let anywhere = |word: &String| name.contains(word.as_str()) || about.contains(word.as_str());
        words.iter().all(anywhere).then_some(2)
    }
}

fn everything<'a>(m: &'a Model<'a>, with_panels: bool) -> impl Iterator<Item = Line> + 'a {
    let commands = all().filter(|command| command.id != "find").map(|command| Line {
        name: command.name().to_owned(),
        about: command.does().to_owned(),
        keys: command.keys_in_words(),
        not: (command.usable)(m).err(),
        takes: Takes::Command(command),
    });
    let panels = m.template.panels.iter().filter(move |_| with_panels).map(|panel| Line {
        name: panel.name(m.view.naming),
        about: turns(m, &panel.id),
        keys: say!("find-panel").to_owned(),
        not: None,
        takes: Takes::Panel(panel.id.clone()),
    });
    let jobs = m.home.recent.iter().filter(|path| m.path != Some(path.as_path())).map(|path| Line {
        name: path.file_name().map(|n| n.to_string_lossy().into_owned()).unwrap_or_default(),
        about: path.parent().map(|folder| folder.display().to_string()).unwrap_or_default(),
        keys: say!("find-recent").to_owned(),
        not: None,
        takes: Takes::Job(path.clone()),
    });
    commands.chain(jobs).chain(panels)
}

/// The numbers that a panel has in the order, so that it is found by them too: "Anna 3, Ben 3".
fn turns(m: &Model<'_>, panel: &PanelId) -> String {
    let mut numbers = Vec::new();
    for (worker, member) in m.job.crew.iter().enumerate() {
        let mine = m.rows.iter().filter(|row| row.worker == worker);
        for (place, row) in (1..).zip(mine) {
            if m.template.panels[row.panel].id == *panel {
                numbers.push(format!("{} {place}", member.name));
            }
        }
    }
    if numbers.is_empty() { say!("find-goes").to_owned() } else { numbers.join(", ") }
}

/// Under what the window remembers where the button is, for the hint that points at it.
pub(in crate::gui) fn find_button_id() -> egui::Id {
    egui::Id::unique("the button that finds")
}

/// The hint of the field in the bar at the top.
pub(in crate::gui) fn find_button(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let Some(command) = super::by_id("find") else { return };
    let p = theme::of(ui.ctx());
    // Short, so that the bar has room for what the job is called.
    let text = RichText::new(say!("find-find")).color(p.ink_soft);
    let response = ui.add(egui::Button::new(text)).on_hover_text(command.hint());
    ui.data_mut(|data| data.insert_temp(find_button_id(), response.rect));
    if response.accessible_name(command.name()).clicked() {
        out.push((command.wish)(m));
    }
}
