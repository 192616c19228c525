//! All painted panels below the map: what may go, what must, what will. A row is chosen by a click or with the arrow keys.

mod columns;

use crate::gui::action::{Action, Model, ViewChange};
use crate::gui::theme::{self, Palette};
use crate::gui::view_state::Column;
use crate::gui::widgets::removal_bar;
use crate::say;
use columns::{Shape, in_sentence, shape, sorted, text};
use eframe::egui::{self, Align, Align2, EventFilter, FontId, Id, Key, Painter, Rect, Sense, Stroke, Ui, pos2, vec2};

const ROW: f32 = 24.0;
const SIDE: f32 = 12.0;

/// Draws the table into all the room there is.
pub(in crate::gui) fn table_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let builder = egui::UiBuilder::new()
        .id_salt("panels")
        .accessibility_role(egui::Role::Table)
        .accessibility_label(say!("correction-table"));
    ui.scope_builder(builder, |ui| {
        ui.spacing_mut().item_spacing.y = 0.0;
        heads(ui, m, out);
        let rows = sorted(m);
        let moved = moved_choice(ui, m);
        egui::ScrollArea::vertical().id_salt("rows").auto_shrink([false, false]).show(ui, |ui| {
            let mut go = None;
            for (place, &index) in rows.iter().enumerate() {
                go = row(ui, m, &rows, place, index, moved).or(go);
            }
            // After all rows: one that can't be tabbed to yet would give the focus back at once.
            if let Some(go) = go {
                out.push(Action::View(ViewChange::Choose(Some(m.template.panels[go].id.clone()))));
                let id = row_id(ui, m, go);
                ui.memory_mut(|memory| memory.request_focus(id));
            }
        });
    });
}

/// Whether another panel was chosen since the last frame, so that its row has to be brought into view.
fn moved_choice(ui: &Ui, m: &Model<'_>) -> bool {
    let id = ui.scope_id().with("shown");
    let now = m.view.current.clone();
    let before = ui.data(|d| d.get_temp(id));
    ui.data_mut(|d| d.insert_temp(id, now.clone()));
    now.is_some() && before != Some(now)
}

/// Where each column begins and ends in a row.
fn cells(area: Rect) -> impl Iterator<Item = (Column, Shape, Rect)> {
    let mut left = area.left() + SIDE;
    let width = area.width() - 2.0 * SIDE - 8.0;
    Column::ALL.into_iter().map(move |column| {
        let shape = shape(column);
        let cell = Rect::from_min_size(pos2(left, area.top()), vec2(width * shape.width, area.height()));
        left = cell.right();
        (column, shape, cell.shrink2(vec2(4.0, 0.0)))
    })
}

/// Where the numbers of a column with bars end.
fn numbers_of(cell: Rect) -> f32 {
    cell.left() + cell.width() * 0.6
}

/// Text at the side of a cell that its column keeps to, cut off where it is too long.
fn put(paint: &Painter, cell: Rect, align: Align, text: String, font: FontId, ink: egui::Color32) -> Rect {
    let mut job = egui::text::LayoutJob::single_section(text, egui::TextFormat::simple(font, ink));
    job.wrap = egui::text::TextWrapping::truncate_at_width(cell.width());
    let galley = paint.layout_job(job);
    let anchor = if align == Align::LEFT { Align2::LEFT_CENTER } else { Align2::RIGHT_CENTER };
    let at = if align == Align::LEFT { cell.left_center() } else { cell.right_center() };
    let placed = anchor.anchor_size(at, galley.size());
    paint.galley(placed.min, galley, ink);
    placed
}

/// The heads; a click sorts by that column, another one turns the order round.
fn heads(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let p = theme::of(ui.ctx());
    let (area, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
    for (column, shape, cell) in cells(area) {
        let response = ui.interact(cell, ui.scope_id().with(("head", shape.title)), Sense::click());
        let sorted = (m.view.table_order.0 == column).then_some(m.view.table_order.1);
        let order = match sorted {
            Some(true) => "rising",
            Some(false) => "falling",
            None => "none",
        };
        let said = say!("correction-sort", column = in_sentence(column), order = order);
        response.widget_info(|| egui::WidgetInfo::labeled(egui::Role::ColumnHeader, true, &said));
        let ink = if sorted.is_some() { p.accent } else { p.ink_soft };
        let paint = ui.painter();
        // The head of numbers with bars stands over the numbers.
        let (right, align) = match column {
            Column::WillGo => (numbers_of(cell), Align::RIGHT),
            _ => (cell.right() - if shape.align == Align::RIGHT { 12.0 } else { 0.0 }, shape.align),
        };
        let room = cell.with_max_x(right);
        let title = put(paint, room, align, shape.title.to_owned(), FontId::proportional(12.0), ink);
        if let Some(rising) = sorted {
            arrow(paint, pos2(title.right() + 7.0, cell.center().y), rising, p);
        }
        if response.has_focus() {
            paint.rect_stroke(cell, 3.0, Stroke::new(2.0, p.accent), egui::StrokeKind::Inside);
        }
        if response.clicked() {
            out.push(Action::View(ViewChange::SortTable(column)));
        }
    }
    ui.painter().hline(area.x_range(), area.bottom(), Stroke::new(1.0, p.hairline));
}

fn arrow(paint: &Painter, at: egui::Pos2, rising: bool, p: &Palette) {
    let up = if rising { -3.0 } else { 3.0 };
    let points = [at + vec2(0.0, up), at + vec2(3.5, -up * 0.7), at + vec2(-3.5, -up * 0.7)];
    paint.add(egui::Shape::convex_polygon(points.to_vec(), p.accent, Stroke::NONE));
}

fn row_id(ui: &Ui, m: &Model<'_>, index: usize) -> Id {
    ui.scope_id().with(("row", m.template.panels[index].id.as_str()))
}

/// One row; answers the panel that shall be chosen.
fn row(ui: &mut Ui, m: &Model<'_>, rows: &[usize], place: usize, index: usize, bring: bool) -> Option<usize> {
    let panel = &m.template.panels[index];
    let chosen = m.view.chosen.contains(&panel.id);
    let current = m.current().map(|(i, _)| i);
    // One Tab stop for all rows: the chosen one, or the first.
    let stop = current.filter(|c| rows.contains(c)).unwrap_or(rows[0]) == index;
    let (area, _) = ui.allocate_exact_size(vec2(ui.available_width(), ROW), Sense::hover());
    let id = row_id(ui, m, index);
    let response = ui.interact(area, id, if stop { Sense::click() } else { Sense::CLICK });
    let said = || {
        let cells = Column::ALL.map(|c| if c == Column::Panel { text(m, index, c) } else { said(m, index, c) });
        egui::WidgetInfo::selected(egui::Role::Row, true, chosen, cells.join(", "))
    };
    response.widget_info(said);
    ui.ctx().accesskit_node_builder(id, |node| {
        node.set_selected(chosen);
        node.set_position_in_set(place);
        node.set_size_of_set(rows.len());
    });
    if bring && current == Some(index) {
        ui.scroll_to_rect(area, Some(Align::Center));
    }
    let mut go = response.clicked().then_some(index);
    if response.has_focus() {
        let filter = EventFilter { vertical_arrows: true, ..Default::default() };
        ui.memory_mut(|memory| memory.set_focus_lock_filter(id, filter));
        let (up, down) = ui.input(|i| (i.key_pressed(Key::ArrowUp), i.key_pressed(Key::ArrowDown)));
        let next = if up { place.checked_sub(1) } else { Some(place + usize::from(down)).filter(|_| down) };
        go = next.and_then(|at| rows.get(at)).copied().or(go);
    }
    if ui.is_rect_visible(area) {
        paint_row(ui.painter(), m, index, area, &response);
    }
    go
}

fn paint_row(paint: &Painter, m: &Model<'_>, index: usize, area: Rect, response: &egui::Response) {
    let p = theme::of(paint.ctx());
    if m.view.chosen.contains(&m.template.panels[index].id) {
        paint.rect_filled(area, 0.0, p.accent_wash);
    } else if response.hovered() {
        paint.rect_filled(area, 0.0, p.paper);
    }
    if response.has_focus() {
        paint.rect_stroke(area.shrink(1.0), 2.0, Stroke::new(2.0, p.accent), egui::StrokeKind::Inside);
    }
    for (column, shape, cell) in cells(area) {
        let ink = if m.insight.panels[index].polish.steps.is_empty() { p.ink_soft } else { p.ink };
        let written = text(m, index, column);
        match column {
            Column::WillGo => {
                let end = numbers_of(cell);
                put(paint, cell.with_max_x(end), Align::RIGHT, written, FontId::proportional(14.0), ink);
                let bar =
                    Rect::from_min_max(pos2(end + 8.0, cell.top() + 7.0), pos2(cell.right(), cell.bottom() - 7.0));
                removal_bar(paint, bar, &m.insight.panels[index], p);
            }
            Column::Level => {
                let swatch = Rect::from_center_size(pos2(cell.left() + 8.0, cell.center().y), vec2(14.0, 10.0));
                let level = p.level(m.insight.panels[index].polish.level as usize);
                paint.rect(swatch, 2.0, level, Stroke::new(1.0, p.seam), egui::StrokeKind::Inside);
                let room = cell.with_min_x(cell.left() + 19.0);
                put(paint, room, Align::LEFT, written, FontId::proportional(14.0), ink);
            }
            _ => {
                put(paint, cell, shape.align, written, FontId::proportional(14.0), ink);
            }
        }
    }
    paint.hline(area.x_range(), area.bottom(), Stroke::new(0.5, p.hairline));
}

/// A cell as a screen reader should say it.
fn said(m: &Model<'_>, index: usize, column: Column) -> String {
    format!("{} {}", in_sentence(column), text(m, index, column))
}
