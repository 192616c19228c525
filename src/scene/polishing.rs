//! The order of polishing on the map and against the clock.

use super::chart::{Bar, Lane, TimeChart, tick};
use super::map::{Badge, Fill, LegendRow, LegendSymbol, MapScene, Overlay, Waypoint};
use super::work::Work;
use crate::insight::{Insight, PolishOrder, PolishRow};
use crate::job::{Job, Member};
use crate::say;
use crate::units::{Interval, minutes};
use crate::vehicle::{Surface, Template};

/// Who works at which panel as which of their stops. Panels that are not polished are left out.
pub fn polish_order_map(job: &Job, template: &Template, insight: &Insight, order: Option<&PolishOrder>) -> MapScene {
    let mut scene = MapScene::plain(template, insight, Overlay::Order);
    let rows = order.map(|o| o.rows.as_slice()).unwrap_or_default();
    if rows.is_empty() {
        return scene;
    }
    for worker in 0..job.crew.len() {
        let mine: Vec<_> = rows.iter().filter(|r| r.worker == worker).collect();
        let way = mine.iter().map(|r| Waypoint {
            panel: r.panel,
            number: r.stop,
            at: template.panels[r.panel].label.centre,
            from: r.at.start,
            until: r.at.end,
        });
        scene.ways.push(way.collect());
        if !mine.is_empty() {
            let text = say!("scene-stops-of", who = &job.crew[worker].name);
            scene.legend.push(LegendRow { symbol: LegendSymbol::Worker(worker), text });
        }
    }
    for row in rows {
        let badges = &mut scene.panels[row.panel].badges;
        if badges.iter().all(|b| (b.worker, b.number) != (row.worker, row.stop)) {
            badges.push(Badge { worker: row.worker, work: Work::Polish(row.kind), number: row.stop });
        }
    }
    super::order::turns(job, &mut scene);
    let mut left = false;
    for (panel, mark) in template.panels.iter().zip(&mut scene.panels) {
        if panel.surface == Surface::Paint && mark.badges.is_empty() {
            mark.fill = Fill::LeftOut;
            left = true;
        }
    }
    if left {
        let text = say!("scene-not-polished").to_owned();
        scene.legend.push(LegendRow { symbol: LegendSymbol::Fill(Fill::LeftOut), text });
    }
    scene
}

/// A lane per person of the crew.
pub fn polish_chart(job: &Job, order: &PolishOrder) -> TimeChart {
    let end = order.rows.iter().map(|r| r.at.end).max().unwrap_or(0);
    let lane = |(worker, member): (usize, &Member)| {
        let mine = || order.rows.iter().filter(move |r| r.worker == worker);
        let busy: i64 = mine().map(|r| r.at.duration()).sum();
        let bar = |r: &PolishRow| Bar { panel: r.panel, number: r.stop, work: Work::Polish(r.kind), at: r.at };
        Lane {
            worker,
            title: member.name.clone(),
            note: say!("scene-at-panels", time = minutes(busy)),
            bars: mine().map(bar).collect(),
            windows: Vec::new(),
        }
    };
    TimeChart {
        span: Interval { start: 0, end },
        lanes: job.crew.iter().enumerate().map(lane).collect(),
        tick: tick(end),
        days: order.days.iter().skip(1).map(|d| d.at.start).collect(),
    }
}
