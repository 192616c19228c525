//! The air, the coldest and the warmest panel, the window that follows, and a window tried on the vehicle.

use super::folded;
use crate::coat::{Air, MeasuredWindow, Solvent, window_assumptions};
use crate::gui::action::{Action, Model};
use crate::gui::theme;
use crate::gui::widgets::{fact, number, said, slider};
use crate::job::Command;
use crate::say;
use crate::units::{Celsius, RelativeHumidity, clock};
use eframe::egui::{RichText, Ui};

/// Wipe that is left on a panel, in g/m²: our estimate of a damp towel.
const WIPE_G_PER_M2: f64 = 5.0;

/// Go or stop, with the reasons, and what follows from the air.
pub(super) fn verdict_ui(ui: &mut Ui, m: &Model<'_>) {
    let p = theme::of(ui.ctx());
    let air = &m.insight.air;
    let (text, color) = if air.go { (say!("coating-air-right"), p.go) } else { (say!("coating-stop"), p.stop) };
    ui.label(theme::bold(text, 20.0).color(color));
    for stop in &air.stops {
        ui.label(RichText::new(said(ui, stop)).color(p.stop));
    }
    for notice in &air.notices {
        ui.label(RichText::new(said(ui, notice)).color(p.note));
    }
    fact(ui, say!("coating-dew-point"), format!("{:.1}", air.dew_point));
    fact(ui, say!("coating-above-dew-point"), format!("{:.1}", air.margin));
    let window = say!("coating-from-to", from = clock(air.window.min_s), to = clock(air.window.max_s));
    fact(ui, say!("coating-level-after"), window);
}

/// What-if sliders; the order is planned again while they move.
pub(super) fn air_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    let air = m.job.air;
    let mut set = |air: Air, gesture| out.push(Action::Edit(Command::SetAir(air), Some(gesture)));
    let temperature = |value: f64| Celsius::new(value).unwrap_or(air.air_temp_c);
    if let Some((value, gesture)) = slider(ui, say!("coating-air"), "°C", air.air_temp_c.c(), 0.0..=40.0, 0.5) {
        set(Air { air_temp_c: temperature(value), ..air }, gesture);
    }
    if let Some((value, gesture)) = slider(ui, say!("coating-humidity"), "%", air.humidity_pct.pct(), 5.0..=100.0, 1.0)
    {
        let humidity_pct = RelativeHumidity::new(value).unwrap_or(air.humidity_pct);
        set(Air { humidity_pct, ..air }, gesture);
    }
    if let Some((value, gesture)) = slider(ui, say!("coating-coldest"), "°C", air.surface_temp_c.c(), 0.0..=60.0, 0.5)
    {
        set(Air { surface_temp_c: temperature(value), ..air }, gesture);
    }
    if let Some((value, gesture)) = slider(ui, say!("coating-warmest"), "°C", air.warmest().c(), 0.0..=60.0, 0.5) {
        let warmest = temperature(value);
        set(Air { warmest_surface_temp_c: (warmest > air.surface_temp_c).then_some(warmest), ..air }, gesture);
    }
    if let Some(seconds) = Solvent::IsopropylAlcohol.gone_after(air.surface_temp_c, WIPE_G_PER_M2) {
        fact(ui, say!("coating-wipe-dried"), say!("coating-about", time = clock(seconds)));
    }
}

/// What the window counts from, and a window tried on a patch of this vehicle.
pub(super) fn window_ui(ui: &mut Ui, m: &Model<'_>, out: &mut Vec<Action>) {
    folded(ui, "reckoned", say!("coating-window-reckoned"), |ui| {
        for sentence in window_assumptions(&m.job.product, m.job.patch.as_ref()) {
            ui.label(said(ui, &sentence));
        }
    });
    let tried = m.job.patch;
    let title = if tried.is_some() { say!("coating-tried-counts") } else { say!("coating-tried") };
    folded(ui, "tried", title, |ui| {
        let Some(patch) = tried else {
            ui.label(say!("coating-how-to-try"));
            if ui.button(say!("coating-note-tried")).clicked() {
                let window = m.insight.air.window;
                let patch = MeasuredWindow { min_s: window.min_s, max_s: window.max_s, air: m.job.air };
                out.push(Action::edit(Command::SetPatch(Some(patch))));
            }
            return;
        };
        let mut changed = patch;
        if let Some(seconds) = number(ui, say!("coating-clean-from"), "s", patch.min_s as f64, 0, 0.0..=3600.0) {
            changed.min_s = seconds as i64;
            changed.max_s = changed.max_s.max(changed.min_s);
        }
        if let Some(seconds) = number(ui, say!("coating-clean-until"), "s", patch.max_s as f64, 0, 1.0..=7200.0) {
            changed.max_s = seconds as i64;
            changed.min_s = changed.min_s.min(changed.max_s);
        }
        if changed != patch {
            out.push(Action::edit(Command::SetPatch(Some(changed))));
        }
        let Air { air_temp_c, humidity_pct, surface_temp_c, .. } = patch.air;
        let text = say!(
            "coating-tried-at",
            air = format!("{air_temp_c:.1}"),
            humidity = format!("{humidity_pct:.0}"),
            surface = format!("{surface_temp_c:.1}"),
        );
        ui.label(theme::soft(said(ui, &text)));
        ui.horizontal(|ui| {
            if patch.air != m.job.air && ui.button(say!("coating-in-this-air")).clicked() {
                out.push(Action::edit(Command::SetPatch(Some(MeasuredWindow { air: m.job.air, ..patch }))));
            }
            if ui.button(say!("coating-by-label-again")).clicked() {
                out.push(Action::edit(Command::SetPatch(None)));
            }
        });
    });
}
