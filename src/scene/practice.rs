//! The map of an exercise: what is to do, wet, done at a moment, who has laid what, and places to choose from.

use super::map::{Badge, Fill, Here, LegendRow, LegendSymbol, MapScene, Overlay};
use super::order::stops;
use super::work::Work;
use crate::insight::{Insight, OrderRow};
use crate::job::Job;
use crate::say;
use crate::vehicle::Template;

/// A panel in an exercise.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PanelState {
    /// Not part of it.
    Out,
    /// To be applied.
    ToDo,
    /// Wet, with what is said of its window.
    Wet(String),
    /// Done.
    Done,
}

/// What the map is drawn from.
#[derive(Debug, Clone, Copy)]
pub struct PracticeFacts<'a> {
    /// The job of the exercise.
    pub job: &'a Job,
    /// Its vehicle.
    pub template: &'a Template,
    /// What follows from the job.
    pub insight: &'a Insight,
    /// One per panel.
    pub states: &'a [PanelState],
    /// What was laid, by time.
    pub rows: &'a [OrderRow],
    /// Who is at work where: worker and panel.
    pub here: &'a [(usize, usize)],
    /// Panels to choose from, with the letter of each.
    pub choices: &'a [(usize, char)],
}

/// Draws the map.
pub fn practice_map(facts: &PracticeFacts<'_>) -> MapScene {
    let mut scene = MapScene::plain(facts.template, facts.insight, Overlay::Order);
    for (mark, state) in scene.panels.iter_mut().zip(facts.states) {
        mark.summary = match state {
            PanelState::Out => say!("scene-not-in-exercise").to_owned(),
            PanelState::ToDo => say!("scene-to-do").to_owned(),
            PanelState::Wet(window) if window.is_empty() => say!("scene-is-wet").to_owned(),
            PanelState::Wet(window) => say!("scene-wet-window", window = window),
            PanelState::Done => say!("scene-is-done").to_owned(),
        };
        match state {
            PanelState::Out => mark.fill = Fill::LeftOut,
            PanelState::ToDo => {}
            PanelState::Wet(_) => mark.fill = Fill::Wet,
            PanelState::Done => mark.fill = Fill::Done,
        }
    }
    stops(facts.job, facts.template, facts.rows, &mut scene);
    for mark in &mut scene.panels {
        let who = |b: &Badge| {
            say!("scene-stop", who = &facts.job.crew[b.worker].name, does = b.work.verb(), number = b.number)
        };
        let said: Vec<String> = mark.badges.iter().map(who).collect();
        if !said.is_empty() {
            mark.summary = format!("{}; {}", said.join(", "), mark.summary);
        }
    }
    for (panel, letter) in facts.choices {
        scene.panels[*panel].value = letter.to_string();
    }
    for &(worker, panel) in facts.here {
        scene.here.push(Here { worker, panel });
        if facts.rows.is_empty() {
            let role = facts.job.crew[worker].roles.first().copied().unwrap_or(crate::job::Role::Apply);
            scene.panels[panel].value.clone_from(&facts.job.crew[worker].name);
            let text = say!("scene-does-here", who = &facts.job.crew[worker].name, does = Work::Coat(role).verb());
            scene.legend.push(LegendRow { symbol: LegendSymbol::Worker(worker), text });
        }
    }
    for (fill, text) in [
        (Fill::Wet, say!("scene-wet")),
        (Fill::Done, say!("scene-level")),
        (Fill::LeftOut, say!("scene-out-of-exercise")),
    ] {
        if scene.panels.iter().any(|p| p.fill == fill) {
            scene.legend.push(LegendRow { symbol: LegendSymbol::Fill(fill), text: text.to_owned() });
        }
    }
    if scene.legend.is_empty() {
        let surface = crate::vehicle::Surface::Paint;
        let text = say!("scene-nothing-done").to_owned();
        scene.legend.push(LegendRow { symbol: LegendSymbol::Fill(Fill::Plain(surface)), text });
    }
    scene
}
