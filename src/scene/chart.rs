//! The time chart: a lane per worker, bars for work, bands for windows.

use super::work::Work;
use crate::insight::OrderRow;
use crate::job::{Job, Role};
use crate::say;
use crate::units::listed;
use crate::units::{Interval, Seconds};

/// The whole chart.
#[derive(Debug, Clone, PartialEq)]
pub struct TimeChart {
    /// From the first start to the last end.
    pub span: Interval,
    /// One per worker, in the order of the crew.
    pub lanes: Vec<Lane>,
    /// Times between tick marks.
    pub tick: Seconds,
    /// Where further days begin; empty where the work is done in one.
    pub days: Vec<Seconds>,
}

/// What one worker does.
#[derive(Debug, Clone, PartialEq)]
pub struct Lane {
    /// Index into the crew.
    pub worker: usize,
    /// Name and role.
    pub title: String,
    /// A few words under it; empty where there are none.
    pub note: String,
    /// What is done when, by time.
    pub bars: Vec<Bar>,
    /// When levelling may happen, for the bars of this lane that level.
    pub windows: Vec<WindowBand>,
}

/// One operation.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Bar {
    /// Index into the panels.
    pub panel: usize,
    /// Place in this worker's order, from 1.
    pub number: usize,
    /// What is done.
    pub work: Work,
    /// When.
    pub at: Interval,
}

/// From the earliest to the latest moment of levelling a panel.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WindowBand {
    /// Index into the panels.
    pub panel: usize,
    /// When.
    pub open: Interval,
}

/// Draws an order against the clock; `window` is the shortest and longest wait after applying.
pub fn time_chart(job: &Job, order: &[OrderRow], window: (Seconds, Seconds)) -> TimeChart {
    let end = order.iter().map(|r| r.at.end).max().unwrap_or(0);
    let lanes = job
        .crew
        .iter()
        .enumerate()
        .map(|(worker, member)| {
            let mine: Vec<_> = order.iter().filter(|r| r.worker == worker).collect();
            let verbs: Vec<_> = member.roles.iter().map(|r| r.verb()).collect();
            Lane {
                worker,
                title: say!("scene-who-does", who = &member.name, does = listed(&verbs)),
                note: String::new(),
                bars: mine
                    .iter()
                    .enumerate()
                    .map(|(place, r)| Bar { panel: r.panel, number: place + 1, work: Work::Coat(r.role), at: r.at })
                    .collect(),
                windows: mine.iter().filter(|r| r.role == Role::Level).filter_map(|r| band(order, r, window)).collect(),
            }
        })
        .collect();
    TimeChart { span: Interval { start: 0, end }, lanes, tick: tick(end), days: Vec::new() }
}

fn band(order: &[OrderRow], levelled: &OrderRow, window: (Seconds, Seconds)) -> Option<WindowBand> {
    let applied =
        order.iter().find(|r| r.role == Role::Apply && r.panel == levelled.panel && r.layer == levelled.layer)?;
    let open = Interval { start: applied.at.end + window.0, end: applied.at.end + window.1 };
    Some(WindowBand { panel: levelled.panel, open })
}

/// A tick distance that gives about ten ticks.
pub(super) fn tick(span: Seconds) -> Seconds {
    const STEPS: [Seconds; 9] = [10, 30, 60, 120, 300, 600, 900, 1800, 3600];
    STEPS.into_iter().find(|s| span <= s * 12).unwrap_or(7200)
}
