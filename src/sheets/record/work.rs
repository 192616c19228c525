//! What is done: polishing step by step, test spots, what it uses up, who polishes what, hands and ears.

use super::panels::section;
use crate::insight::{standing_in_words, supplies};
use crate::polish::called;
use crate::say;
use crate::sheets::input::SheetInput;
use crate::sheets::model::{Sheet, Table, TextSize};
use crate::units::{clock, minutes};
use crate::words::decimal;

pub(super) fn work(input: &SheetInput<'_>, sheet: &mut Sheet) {
    section(sheet, say!("sheet-polishing"), steps(input));
    section(sheet, say!("sheet-test-spots"), tests(input));
    section(sheet, say!("sheet-order-polishing"), order(input));
    section(sheet, say!("sheet-hands-ears"), exposure(input));
    section(sheet, say!("sheet-used-up"), used(input));
}

fn steps(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-panel"), false, 0.8),
            (say!("sheet-polish-level"), false, 0.0),
            (say!("sheet-steps"), false, 1.4),
            (&input.said(say!("sheet-takes-off")), true, 0.0),
            (say!("sheet-at-most"), true, 0.0),
            (say!("sheet-time"), true, 0.0),
        ],
    );
    for (index, insight) in input.insight.panels.iter().enumerate() {
        let plan = &insight.polish;
        if plan.steps.is_empty() && plan.local.is_empty() {
            continue;
        }
        let whole = plan.steps.iter().map(|s| format!("{}, {}\u{202f}×", s.name, s.passes));
        let local = plan
            .local
            .iter()
            .flat_map(|l| &l.steps)
            .map(|s| say!("sheet-local-step", step = s.name.as_str(), passes = s.passes));
        table.row([
            input.name(index),
            plan.level.to_string(),
            local.chain(whole).collect::<Vec<_>>().join("\n"),
            input.film(plan.removal.um(), 1),
            input.film(insight.removal_upper().um(), 1),
            minutes(plan.seconds),
        ]);
    }
    table
}

fn tests(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-step"), false, 1.0),
            (say!("sheet-passes"), true, 0.0),
            (say!("sheet-took-off"), false, 1.0),
            (say!("sheet-what-went"), false, 1.0),
        ],
    );
    for test in &input.job.test_spots.results {
        let off = test
            .removal
            .map(|r| {
                let (film, give) = (format!("{:.1}", r.um), format!("{:.1}", r.give_or_take_um));
                input.said(say!("sheet-give-or-take", film = film, give = give))
            })
            .unwrap_or_default();
        let seen = test
            .seen
            .map(|s| {
                let share = format!("{:.0}\u{202f}%", s.share * 100.0);
                say!("sheet-share-of", share = share, defect = s.kind.name())
            })
            .unwrap_or_default();
        table.row([called(&test.step).to_owned(), test.passes.to_string(), off, seen]);
    }
    table
}

fn order(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-from"), true, 0.0),
            (say!("sheet-who"), false, 0.0),
            (say!("sheet-panel"), false, 1.0),
            (say!("sheet-step"), false, 1.2),
            (say!("sheet-time"), true, 0.0),
        ],
    );
    for row in input.polishing.map(|o| o.rows.as_slice()).unwrap_or_default() {
        let who = input.job.crew[row.worker].name.clone();
        table.row([clock(row.at.start), who, input.name(row.panel), row.name.clone(), minutes(row.at.duration())]);
    }
    table
}

fn exposure(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-day"), true, 0.0),
            (say!("sheet-who"), false, 1.0),
            (say!("sheet-vibration"), true, 0.0),
            (say!("sheet-points"), true, 0.0),
            (say!("sheet-noise"), true, 0.0),
            (say!("sheet-standing"), false, 0.0),
        ],
    );
    for (day, part) in input.polishing.map(|o| o.days.as_slice()).unwrap_or_default().iter().enumerate() {
        for w in &part.workers {
            let noise = w.noise_lex8h_db.map_or_else(|| "\u{2013}".to_owned(), |db| decimal(db, 1));
            let standing = format!("{}; {}", standing_in_words(w.hav_standing), standing_in_words(w.noise_standing));
            let (a8, points) = (decimal(w.hav_a8_ms2, 2), format!("{:.0}", w.hav_points));
            table.row([(day + 1).to_string(), w.worker.clone(), a8, points, noise, standing]);
        }
    }
    table
}

fn used(input: &SheetInput<'_>) -> Table {
    let mut table = Table::new(
        TextSize::Small,
        &[
            (say!("sheet-step"), false, 1.0),
            (say!("sheet-area"), true, 0.0),
            (say!("sheet-pads"), true, 0.0),
            (say!("sheet-sheets"), true, 0.0),
            (say!("sheet-polish"), true, 0.0),
            (say!("sheet-towels"), true, 0.0),
        ],
    );
    for s in supplies(input.job, input.template, input.insight) {
        let (area, polish) = (format!("{:.1}", s.area), input.said(format!("{:.0}", s.polish)));
        table.row([s.name, area, s.pads.to_string(), s.sheets.to_string(), polish, s.towels.to_string()]);
    }
    table
}
