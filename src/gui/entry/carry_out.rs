//! What comes of what was typed.

use super::next::{after, next_reading, open, spot_of, stop_at};
use super::{EntryWish, field};
use crate::gui::action::ViewChange;
use crate::gui::app::App;
use crate::job::{Command, GaugeStep, Job};
use crate::measure::READINGS_PER_SPOT;
use crate::say;
use crate::units::{Micrometres, ThicknessUnit};
use eframe::egui;
use std::sync::Arc;

/// Less than this is bare metal, or a gauge that shows another unit than the field has, in µm (our estimate).
const HARDLY_PAINT_UM: f64 = 20.0;
/// More than this is filler several times over, or another unit, in µm (our estimate).
const HARDLY_FILM_UM: f64 = 2_500.0;
/// Longest number that is typed.
const LONGEST: usize = 24;

impl App {
    /// Carries out what was typed or pressed for the readings.
    pub(in crate::gui) fn enter(&mut self, wish: EntryWish, ctx: &egui::Context) {
        let entry = &mut self.view.entry;
        match wish {
            EntryWish::Type(text) => {
                let room = LONGEST.saturating_sub(entry.draft.chars().count());
                entry.draft.extend(text.chars().filter(|c| !c.is_control()).take(room));
                entry.said = None;
            }
            EntryWish::Take => self.take_reading(ctx),
            EntryWish::Back if entry.draft.is_empty() => self.take_back(ctx),
            EntryWish::Back => drop(entry.draft.pop()),
            EntryWish::Clear => entry.draft.clear(),
            EntryWish::Skip => self.skip(),
            EntryWish::Skipped => {
                let model = self.model();
                let waiting = model.view.entry.skipped.iter().copied().find(|k| open(&model, *k).is_some());
                if let Some(stop) = waiting {
                    self.view.entry.skipped.remove(&stop);
                    self.go_to(stop);
                }
            }
            EntryWish::Repeat => self.repeat(ctx),
            EntryWish::Step { forward } => {
                let model = self.model();
                let from = next_reading(&model).map(|next| next.stop).or(model.view.entry.last);
                if let Some(next) = from.and_then(|from| after(&model, from, forward)) {
                    self.go_to(next.stop);
                }
            }
            EntryWish::Unit(unit) => {
                entry.unit = unit;
                entry.said = None;
            }
            EntryWish::Pad(pad) => entry.pad = pad,
        }
        ctx.memory_mut(|memory| memory.request_focus(field()));
    }

    fn take_reading(&mut self, ctx: &egui::Context) {
        let draft = std::mem::take(&mut self.view.entry.draft);
        if draft.trim().is_empty() {
            return;
        }
        let thickness = match read(&draft, self.view.entry.unit) {
            Ok(thickness) => thickness,
            Err(reason) => {
                self.view.entry.said = Some(say!("survey-not-taken", why = reason));
                return;
            }
        };
        let model = self.model();
        let Some(next) = next_reading(&model) else {
            let why = match model.current() {
                Some((index, _)) if model.insight.panels[index].unreadable.is_some() => {
                    say!("survey-cannot-read")
                }
                Some(_) => say!("survey-wants-no-more"),
                None => say!("survey-every-read"),
            };
            self.view.entry.said = Some(say!("survey-not-taken", why = why));
            return;
        };
        let panel = self.template.panels[next.panel].id.clone();
        let command = match next.spot {
            Some(spot) => Command::AddReading { panel, spot, thickness },
            None => Command::AddSpot { panel, at: next.at, thickness },
        };
        let before = self.document.revision();
        self.apply(&command, None, ctx);
        if self.document.revision() == before {
            return; // refused, and said why
        }
        self.view.entry.said = remark(thickness, self.view.entry.unit);
        self.view.entry.last = Some(next.stop);
        self.view.entry.skipped.remove(&next.stop);
        let stop = if next.taken + 1 < READINGS_PER_SPOT {
            Some(next.stop)
        } else {
            after(&self.model(), next.stop, true).map(|n| n.stop)
        };
        match stop {
            Some(stop) => self.go_to(stop),
            None => self.view.entry.at = None,
        }
    }

    fn go_to(&mut self, stop: usize) {
        let Some(panel) = self.model().way().get(stop).map(|s| s.panel) else { return };
        self.view.entry.at = Some(stop);
        let id = self.template.panels[panel].id.clone();
        if self.view.current.as_ref() != Some(&id) {
            self.change_view(ViewChange::Choose(Some(id)));
            self.view.entry.at = Some(stop);
        }
    }

    fn skip(&mut self) {
        let model = self.model();
        let Some(next) = next_reading(&model) else { return };
        let following = after(&model, next.stop, true);
        self.view.entry.skipped.insert(next.stop);
        self.view.entry.said = None;
        match following {
            Some(following) => self.go_to(following.stop),
            None => self.view.entry.at = None,
        }
    }

    fn repeat(&mut self, ctx: &egui::Context) {
        let model = self.model();
        let next = next_reading(&model);
        let begun = next.as_ref().filter(|next| next.taken > 0).map(|next| next.stop);
        let of_panel = || {
            let (index, panel) = model.current()?;
            stop_at(&model, index, model.job.record(&panel.id)?.spots.last()?.at)
        };
        let read = |stop: &usize| spot_of(&model, *stop).is_some();
        let last = model.view.entry.last.filter(read);
        // The one before on the way, where the last one was taken back.
        let before = || {
            let (from, all) = (next.as_ref()?.stop, model.way().len());
            (1..all).map(|by| (from + all - by) % all).find(read)
        };
        let stop = if next.is_some() { begun.or(last).or_else(before) } else { of_panel().or(last) };
        let Some((stop, (panel, spot))) = stop.and_then(|k| Some((k, spot_of(&model, k)?))) else { return };
        let panel = self.template.panels[panel].id.clone();
        self.apply(&Command::RemoveSpot { panel, spot }, None, ctx);
        self.view.entry.said = Some(say!("survey-measure-again").to_owned());
        self.go_to(stop);
    }

    /// Takes the last reading back, and goes to where it was; anything else that was done last stays.
    fn take_back(&mut self, ctx: &egui::Context) {
        if self.document.undo_gauge_step() == GaugeStep::Taken {
            self.undo_and_follow(ctx);
        }
    }

    /// Undoes one step; where that was a reading, goes to its spot.
    pub(in crate::gui) fn undo_and_follow(&mut self, ctx: &egui::Context) {
        let is_reading = self.document.undo_gauge_step() != GaugeStep::Other;
        let before = Arc::clone(self.document.job());
        self.document.undo();
        self.changed(ctx);
        if is_reading && self.view.workspace == crate::gui::Workspace::Survey {
            let model = self.model();
            let stop = changed_place(&before, model.job)
                .and_then(|(id, at)| stop_at(&model, self.template.index_of(&id)?, at));
            self.view.entry.said = None;
            if let Some(stop) = stop {
                self.go_to(stop);
            }
        }
    }
}

/// The first spot that is not the same in two jobs.
fn changed_place(a: &Job, b: &Job) -> Option<(crate::vehicle::PanelId, crate::geometry::MapPoint)> {
    let ids = a.panels.keys().chain(b.panels.keys());
    ids.filter(|id| a.record(id) != b.record(id)).find_map(|id| {
        let spots = |job: &Job| job.record(id).map(|r| r.spots.clone()).unwrap_or_default();
        let (a, b) = (spots(a), spots(b));
        let longer = if a.len() >= b.len() { &a } else { &b };
        let differs = (0..longer.len()).find(|k| a.get(*k) != b.get(*k))?;
        Some((id.clone(), longer[differs].at))
    })
}

/// A thickness in the unit of the field, or in the one that stands after it.
fn read(text: &str, unit: ThicknessUnit) -> Result<Micrometres, String> {
    let text = text.trim();
    let with = |endings: &[&str]| endings.iter().find_map(|ending| text.strip_suffix(ending));
    match (with(&["mil", "mils"]), with(&["µm", "μm", "um"])) {
        (Some(number), _) => ThicknessUnit::Mil.read(number),
        (_, Some(number)) => ThicknessUnit::Um.read(number),
        _ => unit.read(text),
    }
}

/// What to look at in a reading that was taken.
fn remark(thickness: Micrometres, unit: ThicknessUnit) -> Option<String> {
    let other = match unit {
        ThicknessUnit::Um => "mil",
        ThicknessUnit::Mil => "µm",
    };
    match thickness.um() {
        um if um < HARDLY_PAINT_UM => Some(say!("survey-hardly-paint", film = thickness.to_string(), unit = other)),
        um if um > HARDLY_FILM_UM => Some(say!("survey-more-than-filler", film = thickness.to_string(), unit = other)),
        _ => None,
    }
}
