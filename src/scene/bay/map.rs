//! The map while the bay works: who is where and goes where, what is wet, what is done.

use super::BayFacts;
use crate::insight::{Insight, is_coated};
use crate::job::{Job, Role};
use crate::polish::StepKind;
use crate::say;
use crate::scene::map::{Badge, Fill, Here, LegendRow, LegendSymbol, MapScene, Overlay, Waypoint};
use crate::scene::work::Work;
use crate::units::clock;
use crate::vehicle::Surface;

/// How many panels ahead each worker is shown.
const AHEAD: usize = 3;

/// The map of a day.
pub fn bay_map(job: &Job, insight: &Insight, facts: &BayFacts<'_>) -> MapScene {
    let mut scene = MapScene::plain(facts.template, insight, Overlay::Order);
    let coats = facts.problem.lags.iter().any(|l| l.max_s.is_some());
    for (index, panel) in facts.template.panels.iter().enumerate() {
        let mine: Vec<usize> = (0..facts.problem.operations.len())
            .filter(|&o| facts.problem.operations[o].panel == panel.id.as_str())
            .collect();
        let mark = &mut scene.panels[index];
        let out = if coats { !is_coated(job, panel) } else { panel.surface == Surface::Paint && mine.is_empty() };
        if out {
            mark.fill = Fill::LeftOut;
        } else if !mine.is_empty() && mine.iter().all(|&o| facts.day.done_at(o).is_some()) {
            mark.fill = Fill::Done;
            say!("scene-is-done").clone_into(&mut mark.value);
            mark.summary = format!("{}; {}", say!("scene-is-done"), mark.summary);
        }
    }
    for row in super::windows::rows(facts) {
        let Some(panel) = row.doing.panel else { continue };
        let mark = &mut scene.panels[panel];
        mark.fill = Fill::Wet;
        mark.value = clock(row.left_s);
        mark.summary = format!("{}; {}", say!("scene-wet-left", time = clock(row.left_s)), mark.summary);
    }
    for worker in 0..facts.problem.workers.len() {
        people(facts, worker, &mut scene);
    }
    legend(&mut scene, coats);
    scene
}

fn people(facts: &BayFacts<'_>, worker: usize, scene: &mut MapScene) {
    let board = &facts.board.workers[worker];
    let mut way = Vec::new();
    let ahead = board.next.iter().map(|n| (n.operation, n.start_s));
    let now = board.current.map(|c| (c.operation, c.start_s));
    for (operation, start_s) in now.into_iter().chain(ahead).take(AHEAD) {
        let spec = &facts.problem.operations[operation];
        let Some(panel) = facts.doing(operation).panel else { continue };
        let at = facts.template.panels[panel].label.centre;
        way.push(Waypoint { panel, number: way.len() + 1, at, from: start_s, until: start_s + spec.duration_s });
        let badge = Badge { worker, work: work(&spec.role), number: way.len() };
        scene.panels[panel].badges.push(badge);
        if board.current.is_some_and(|c| c.operation == operation) {
            scene.here.push(Here { worker, panel });
        }
    }
    if !way.is_empty() {
        let name = &facts.problem.workers[worker].id;
        let text = if board.current.is_some() {
            say!("scene-one-is-now", who = name)
        } else {
            say!("scene-one-is-next", who = name)
        };
        scene.legend.push(LegendRow { symbol: LegendSymbol::Worker(worker), text });
    }
    scene.ways.push(way);
}

fn work(role: &str) -> Work {
    match StepKind::ALL.into_iter().find(|k| k.id() == role) {
        Some(kind) => Work::Polish(kind),
        None if role == Role::Level.id() => Work::Coat(Role::Level),
        None => Work::Coat(Role::Apply),
    }
}

fn legend(scene: &mut MapScene, coats: bool) {
    let rows = [
        (Fill::Wet, say!("scene-wet-time-left")),
        (Fill::Done, if coats { say!("scene-level") } else { say!("scene-done") }),
        (Fill::LeftOut, if coats { say!("scene-left-uncoated") } else { say!("scene-not-polished") }),
    ];
    for (fill, text) in rows {
        if scene.panels.iter().any(|p| p.fill == fill) {
            scene.legend.push(LegendRow { symbol: LegendSymbol::Fill(fill), text: text.to_owned() });
        }
    }
}
