//! Carries out what is wished for while the vehicle is changed. Every change goes through the template's own functions, which
//! refuse what would leave a fault.

use super::wish::{VehicleWish, Way};
use super::words::{name, number, refusal};
use super::{Before, Editing, History, Said};
use crate::cli::Failure;
use crate::file::{RealDisk, Saved};
use crate::finding::{Code, Finding};
use crate::geometry::MapPoint;
use crate::gui::action::SpotPlaces;
use crate::gui::app::App;
use crate::gui::map::MapCache;
use crate::gui::modals::Question;
use crate::gui::view_state::{Tool, ViewState, Workspace};
use crate::insight::Insight;
use crate::job::{Command, Job, carry_over};
use crate::say;
use crate::scene::Overlay;
use crate::units::listed;
use crate::vehicle::{EditError, Naming, Panel, PanelId, Template};
use crate::words::decimal;
use eframe::egui;
use std::collections::BTreeSet;
use std::sync::Arc;

/// What a change gives: the template and what was done, in words.
type Changed = Result<(Template, String), EditError>;

impl App {
    /// Carries out a wish about the vehicle.
    pub(in crate::gui) fn change_vehicle(&mut self, wish: VehicleWish, ctx: &egui::Context) {
        let naming = self.view.naming;
        match wish {
            VehicleWish::Begin => self.begin_editing(),
            VehicleWish::CutPoint(at) => self.cut_at(at),
            VehicleWish::CutMiddle(way) => self.cut_middle(way),
            VehicleWish::Merge(a, b) => self.attempt(None, |t, _| merged(t, naming, &a, &b)),
            VehicleWish::Skip(skip) => {
                let words = skip.map_or_else(|| say!("edit-takes-part-in-work"), crate::vehicle::Skip::words);
                self.attempt(None, |t, chosen| each(t, naming, chosen, words, |t, id| t.with_skip(id, skip)));
            }
            VehicleWish::Substrate(kind) => {
                self.attempt(None, |t, chosen| {
                    each(t, naming, chosen, kind.name(), |t, id| t.with_substrate(id, kind))
                });
            }
            VehicleWish::WorkedFrom(stance) => self.attempt(None, |t, chosen| worked_from(t, naming, chosen, &stance)),
            VehicleWish::ChooseStance(stance) => {
                if let Some(editing) = &mut self.editing {
                    editing.stance = stance;
                }
            }
            VehicleWish::MoveStance { stance, to, by_keys } => {
                let movement = by_keys.then(|| stance.clone());
                self.attempt(movement, |t, _| {
                    let moved = t.with_stance(&stance, to)?;
                    let number = number(t, &stance).unwrap_or_default();
                    Ok((moved, say!("edit-stance-moved", number = number)))
                });
            }
            VehicleWish::Undo => self.step_back(History::undo),
            VehicleWish::Redo => self.step_back(History::redo),
            VehicleWish::Cancel if self.is_vehicle_changed() => {
                self.question = Some(Question::DropVehicle { then: None });
            }
            VehicleWish::Cancel | VehicleWish::Drop => self.stop_editing(),
            VehicleWish::AskName => {
                if let Some(editing) = &self.editing {
                    let draft = self.bodies.free_name(&editing.history.now().name);
                    let folder = self.bodies.templates().folder().map(|f| f.display().to_string());
                    self.question = Some(Question::NameVehicle { draft, folder, fresh: true });
                }
            }
            VehicleWish::SaveAs(name) => self.save_vehicle(name.trim(), ctx),
            wish => self.keep_own(wish, ctx),
        }
    }

    /// Whether there are changes of the vehicle that are not saved.
    pub(in crate::gui) fn is_vehicle_changed(&self) -> bool {
        self.editing.as_ref().is_some_and(|editing| editing.history.is_changed())
    }

    fn begin_editing(&mut self) {
        let view = ViewState {
            workspace: Workspace::Job,
            overlay: Overlay::Body,
            tool: Tool::Choose,
            moment: None,
            ..self.view.clone()
        };
        let before = Before {
            template: Arc::clone(&self.template),
            insight: self.insight.clone(),
            spots: std::mem::take(&mut self.spots),
            view: std::mem::replace(&mut self.view, view),
        };
        self.editing = Some(Editing {
            history: History::new(Arc::clone(&self.template)),
            job: Arc::clone(self.document.job()),
            first: None,
            stance: None,
            said: None,
            before,
        });
        self.show_edited();
    }

    /// Puts back what the window showed before.
    pub(in crate::gui) fn stop_editing(&mut self) {
        self.question = None;
        let Some(Editing { before, .. }) = self.editing.take() else { return };
        self.template = before.template;
        self.insight = before.insight;
        self.spots = before.spots;
        self.view = before.view;
        self.cache = MapCache::default();
        self.refresh_rows();
    }

    /// Lets the window show the vehicle as it is now.
    fn show_edited(&mut self) {
        let Some(editing) = &mut self.editing else { return };
        let template = Arc::clone(editing.history.now());
        let panels = carry_over(&self.document.job().panels, &editing.before.template, &template);
        editing.job = Arc::new(Job { panels, ..(**self.document.job()).clone() });
        editing.first = None;
        editing.stance = editing.stance.take().filter(|id| template.stances.iter().any(|s| s.id == *id));
        self.insight = Insight::new(&editing.job, &template);
        self.spots = SpotPlaces::of(&template);
        self.cache = MapCache::default();
        self.rows.clear();
        self.polishing.clear();
        self.view.tool = Tool::Choose;
        self.view.chosen.retain(|id| template.panel(id).is_some());
        self.view.current = self.view.current.take().filter(|id| template.panel(id).is_some());
        self.template = template;
    }

    fn attempt(&mut self, movement: Option<String>, change: impl FnOnce(&Template, &BTreeSet<PanelId>) -> Changed) {
        let Some(editing) = &mut self.editing else { return };
        match change(editing.history.now(), &self.view.chosen) {
            Ok((template, what)) => {
                editing.said = Some(Said::Done(what.clone()));
                editing.history.push(template, what, movement);
                self.show_edited();
            }
            Err(error) => {
                editing.said = Some(Said::Refused(refusal(&error, &self.template, self.view.naming)));
                editing.first = None;
            }
        }
    }

    fn cut_at(&mut self, at: MapPoint) {
        let Some(editing) = &mut self.editing else { return };
        let (Some(panel), naming) = (self.view.current.clone(), self.view.naming) else { return };
        match editing.first.take() {
            None => {
                editing.first = Some(at);
                editing.said = None;
            }
            Some(first) => self.attempt(None, |t, _| cut(t, naming, &panel, first, at)),
        }
    }

    fn cut_middle(&mut self, way: Way) {
        let (Some(panel), naming) = (self.view.current.clone(), self.view.naming) else { return };
        self.attempt(None, |t, _| {
            let unknown = || EditError::UnknownPanel(panel.clone());
            let outline = &t.panel(&panel).ok_or_else(unknown)?.outline;
            let (b, middle) = (outline.bounds(), outline.bounds().center());
            let [from, to] = match way {
                Way::Across => [MapPoint::new(middle.x, b.min.y), MapPoint::new(middle.x, b.max.y)],
                Way::Along => [MapPoint::new(b.min.x, middle.y), MapPoint::new(b.max.x, middle.y)],
            };
            cut(t, naming, &panel, from, to)
        });
    }

    fn step_back(&mut self, step: fn(&mut History) -> bool) {
        let Some(editing) = &mut self.editing else { return };
        editing.said = None;
        if step(&mut editing.history) {
            self.show_edited();
        }
    }

    fn save_vehicle(&mut self, name: &str, ctx: &egui::Context) {
        let Some(editing) = &self.editing else { return };
        let id = self.bodies.templates().free_id(name);
        let template = editing.history.now().with_name(&id, name);
        let saved = match self.bodies.templates().save(&RealDisk, &template) {
            Ok(saved) => saved,
            Err(error) => return self.fail(error.into()),
        };
        let panels = carry_over(&self.document.job().panels, &editing.before.template, &template);
        self.stop_editing();
        self.bodies.add(Arc::new(template));
        self.apply(&Command::SetTemplate { template: id, panels }, None, ctx);
        self.say_if_not_confirmed(saved);
    }

    pub(super) fn say_if_not_confirmed(&mut self, saved: Saved) {
        if saved == Saved::NotConfirmed {
            self.fail(Failure::new(say!("edit-save-not-confirmed"), say!("edit-look-again")));
        }
    }
}

fn cut(t: &Template, naming: Naming, panel: &PanelId, a: MapPoint, b: MapPoint) -> Changed {
    let changed = t.split(panel, a, b)?;
    let whole = name(t, panel, naming);
    let is_part =
        |p: &&Panel| p.id == *panel || (t.panel(&p.id).is_none() && t.panel(panel).is_some_and(|w| w.side == p.side));
    let parts: Vec<String> = changed
        .panels
        .iter()
        .filter(is_part)
        .map(|p| say!("edit-part", panel = p.name(naming), area = decimal(p.area.m2(), 2)))
        .collect();
    let what = say!("edit-cut-in-two", panel = whole, parts = listed(&parts));
    Ok((changed, what))
}

fn merged(t: &Template, naming: Naming, a: &PanelId, b: &PanelId) -> Changed {
    let changed = t.merge(a, b)?;
    let gone = [a, b].into_iter().find(|id| changed.panel(id).is_some());
    let one = gone.or_else(|| changed.panels.iter().map(|p| &p.id).find(|id| t.panel(id).is_none()));
    let one = one.map(|id| name(&changed, id, naming)).unwrap_or_default();
    let what = say!("edit-joined", a = name(t, a, naming), b = name(t, b, naming), panel = one);
    Ok((changed, what))
}

/// Changes every chosen panel in one step.
fn each(
    t: &Template,
    naming: Naming,
    chosen: &BTreeSet<PanelId>,
    words: &str,
    change: impl Fn(&Template, &PanelId) -> Result<Template, EditError>,
) -> Changed {
    let mut changed = t.clone();
    for id in chosen {
        changed = change(&changed, id)?;
    }
    let who = match chosen.len() {
        1 => chosen.first().map(|id| name(t, id, naming)).unwrap_or_default(),
        n => say!("edit-panels", count = n),
    };
    Ok((changed, say!("edit-changed", who = who, what = words)))
}

/// Lets the chosen panels be worked from another stance; says so where that is far.
fn worked_from(t: &Template, naming: Naming, chosen: &BTreeSet<PanelId>, stance: &str) -> Changed {
    let words = say!("edit-worked-from-stance", number = number(t, stance).unwrap_or_default());
    let (changed, what) = each(t, naming, chosen, &words, |t, id| t.with_stance_of(id, stance))?;
    let far = |f: &Finding| f.code == Code::TemplateReach && chosen.iter().any(|id| f.place.contains(id.as_str()));
    let far = changed.check().iter().any(far);
    let what = if far { say!("edit-far-from-stance", what = what) } else { what };
    Ok((changed, what))
}
