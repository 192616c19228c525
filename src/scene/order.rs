//! The order of coating on the map, and what it has in common with that of polishing.

use super::map::{Badge, Fill, LegendRow, LegendSymbol, MapScene, Waypoint};
use super::work::Work;
use crate::insight::{OrderRow, is_coated};
use crate::job::Job;
use crate::say;
use crate::vehicle::Template;

/// Shows who coats which panel as which of their panels.
pub(super) fn show(job: &Job, template: &Template, order: &[OrderRow], scene: &mut MapScene) {
    for (index, panel) in template.panels.iter().enumerate() {
        if !is_coated(job, panel) {
            scene.panels[index].fill = Fill::LeftOut;
        }
    }
    stops(job, template, order, scene);
    turns(job, scene);
    if scene.panels.iter().any(|p| p.fill == Fill::LeftOut) {
        let text = say!("scene-left-uncoated").to_owned();
        scene.legend.push(LegendRow { symbol: LegendSymbol::Fill(Fill::LeftOut), text });
    }
}

/// Badges, ways and who is who.
pub(super) fn stops(job: &Job, template: &Template, order: &[OrderRow], scene: &mut MapScene) {
    for worker in 0..job.crew.len() {
        let mine: Vec<_> = order.iter().filter(|r| r.worker == worker).collect();
        for (place, row) in mine.iter().enumerate() {
            scene.panels[row.panel].badges.push(Badge { worker, work: Work::Coat(row.role), number: place + 1 });
        }
        let stop = |(place, r): (usize, &&OrderRow)| Waypoint {
            panel: r.panel,
            number: place + 1,
            at: template.panels[r.panel].label.centre,
            from: r.at.start,
            until: r.at.end,
        };
        scene.ways.push(mine.iter().enumerate().map(stop).collect());
        if let Some(row) = mine.first() {
            let member = &job.crew[worker];
            let alone = mine.iter().any(|r| r.role != row.role);
            let text = if alone {
                member.name.clone()
            } else {
                say!("scene-who-does", who = &member.name, does = row.role.verb())
            };
            scene.legend.push(LegendRow { symbol: LegendSymbol::Worker(worker), text });
        }
    }
}

/// Shades every panel by when somebody first comes to it, and says so in its summary.
pub(super) fn turns(job: &Job, scene: &mut MapScene) {
    let mut stops: Vec<_> = scene.ways.iter().flatten().map(|w| (w.from, w.panel)).collect();
    stops.sort_unstable();
    let mut panels: Vec<usize> = Vec::new();
    for (_, panel) in stops {
        if !panels.contains(&panel) {
            panels.push(panel);
        }
    }
    let last = panels.len().saturating_sub(1).max(1) as f32;
    for (place, panel) in panels.iter().enumerate() {
        let mark = &mut scene.panels[*panel];
        if let Fill::Plain(surface) = mark.fill {
            mark.fill = Fill::Turn(surface, place as f32 / last);
        }
        let who =
            |b: &Badge| say!("scene-stop", who = &job.crew[b.worker].name, does = b.work.verb(), number = b.number);
        let said: Vec<String> = mark.badges.iter().map(who).collect();
        mark.summary = format!("{}; {}", said.join(", "), mark.summary);
    }
    if !panels.is_empty() {
        let text = say!("scene-first-to-last").to_owned();
        scene.legend.push(LegendRow { symbol: LegendSymbol::Turns, text });
    }
}
