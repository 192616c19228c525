//! Everything that the map shows, as a table: for those who can't see the map, and for a bad screen.

use super::HomeWish;
use super::table::panels_table;
use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme;
use crate::gui::widgets::{page_over, primary, units_of};
use crate::say;
use crate::words::{Language, language};
use eframe::egui::{self, Align, FontId, Rect, Sense, Stroke, Ui, pos2, vec2};

const ROW: f32 = 26.0;
/// Shares of the width, one for each column of the table.
const SHARES: [f32; 11] = [0.15, 0.08, 0.08, 0.08, 0.065, 0.075, 0.085, 0.09, 0.11, 0.065, 0.12];
/// Columns of figures, which stand at the right.
const FIGURES: [usize; 7] = [2, 3, 4, 5, 6, 7, 9];

/// Draws the page. A row that is pressed chooses its panel.
pub(super) fn table_page_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let room = ui.ctx().content_rect().size();
    let table = panels_table(units_of(ui.ctx()), m);
    let shown = page_over(ui, "table").show(ui, |ui| {
        ui.set_width((room.x - 64.0).min(1180.0));
        ui.label(theme::bold(say!("home-everything"), 20.0));
        let (area, _) = ui.allocate_exact_size(vec2(ui.available_width(), 2.0 * ROW), Sense::hover());
        head(ui, area, &table.heads);
        let builder = egui::UiBuilder::new()
            .id_salt("all-panels")
            .accessibility_role(egui::Role::Table)
            .accessibility_label(say!("home-panels"));
        ui.scope_builder(builder, |ui| {
            ui.spacing_mut().item_spacing.y = 0.0;
            let height = (room.y - 260.0).max(160.0);
            egui::ScrollArea::vertical()
                .max_height(height)
                .min_scrolled_height(height)
                .auto_shrink([false, true])
                .show(ui, |ui| {
                    for (at, cells) in table.rows.iter().enumerate() {
                        if row(ui, at, &table.heads, cells, m.view.chosen.contains(&m.template.panels[at].id)) {
                            out.push(Action::View(ViewChange::Choose(Some(m.template.panels[at].id.clone()))));
                            ui.close();
                        }
                    }
                });
        });
        ui.horizontal(|ui| {
            if primary(ui, say!("command-copy")).clicked() {
                ui.ctx().copy_text(table.as_text());
            }
            if ui.button(say!("common-close")).clicked() {
                ui.close();
            }
        });
    });
    if shown.should_close() {
        out.push(Action::Home(HomeWish::Close));
    }
}

/// Where each cell of a row is, and on which side its text stands.
fn cells(area: Rect) -> impl Iterator<Item = (Rect, Align)> {
    let mut left = area.left() + 4.0;
    SHARES.iter().enumerate().map(move |(column, share)| {
        let cell = Rect::from_min_size(pos2(left, area.top()), vec2(area.width() * share - 20.0, area.height()));
        left += area.width() * share;
        (cell, if FIGURES.contains(&column) { Align::Max } else { Align::Min })
    })
}

fn put(ui: &Ui, (cell, side): (Rect, Align), text: &str, size: f32, ink: egui::Color32, rows: usize) {
    let mut line = egui::text::LayoutJob::simple(text.to_owned(), FontId::proportional(size), ink, cell.width());
    line.wrap.max_rows = rows;
    line.wrap.break_anywhere = false;
    line.halign = side;
    let galley = ui.painter().layout_job(line);
    let x = if side == Align::Max { cell.right() } else { cell.left() };
    ui.painter().galley(pos2(x, cell.center().y - galley.size().y / 2.0), galley, ink);
}

fn head(ui: &Ui, area: Rect, heads: &[String]) {
    let p = theme::of(ui.ctx());
    for (text, cell) in heads.iter().zip(cells(area)) {
        put(ui, cell, text, 12.0, p.ink_soft, 2);
    }
    ui.painter().hline(area.x_range(), area.bottom(), Stroke::new(1.0, p.hairline));
}

/// One row; answers whether it was pressed.
fn row(ui: &mut Ui, at: usize, heads: &[String], texts: &[String], chosen: bool) -> bool {
    let p = theme::of(ui.ctx());
    let (area, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
    let response = ui.interact(area, ui.scope_id().with(("panel", at)), Sense::click());
    let facts = heads.iter().zip(texts).skip(1).filter(|(_, text)| *text != "–");
    // German nouns stay large inside a sentence.
    let inside = |head: &String| if language() == Language::German { head.clone() } else { head.to_lowercase() };
    let said = facts.map(|(head, text)| format!("{} {text}", inside(head))).collect::<Vec<_>>().join("; ");
    let said = format!("{}: {said}", texts[0]);
    response.widget_info(|| egui::WidgetInfo::selected(egui::Role::Row, true, chosen, &said));
    if chosen || response.has_focus() {
        ui.painter().rect_filled(area, 3.0, p.accent_wash);
    } else if response.hovered() {
        ui.painter().rect_filled(area, 3.0, p.paper);
    }
    if response.has_focus() {
        ui.painter().rect_stroke(area.shrink(1.0), 3.0, Stroke::new(2.0, p.accent), egui::StrokeKind::Inside);
        if response.gained_focus() {
            ui.scroll_to_rect(area, None);
        }
    }
    if ui.is_rect_visible(area) {
        for (text, cell) in texts.iter().zip(cells(area)) {
            put(ui, cell, text, 14.0, p.ink, 1);
        }
        ui.painter().hline(area.x_range(), area.bottom(), Stroke::new(0.5, p.hairline));
    }
    response.clicked()
}
