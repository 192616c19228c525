//! What stays, and why.

use crate::polish::{DefectKind, Outcome, Treatment};
use crate::sheets::input::SheetInput;
use crate::sheets::model::{Sheet, Table, TextSize};
use crate::units::capital;
use std::collections::BTreeMap;

/// A table of what does not go; nothing where all goes.
pub(super) fn stays(input: &SheetInput<'_>, sheet: &mut Sheet) {
    let mut reasons: BTreeMap<(DefectKind, &'static str), Vec<usize>> = BTreeMap::new();
    for (index, (panel, insight)) in input.template.panels.iter().zip(&input.insight.panels).enumerate() {
        let Some(record) = input.job.record(&panel.id) else { continue };
        for (defect, outcome) in record.defects.iter().zip(&insight.polish.outcomes) {
            let left = insight.polish.steps.is_empty() && insight.polish.local.is_empty();
            if let Some(reason) = why(defect.kind, *outcome, left) {
                let panels = reasons.entry((defect.kind, reason)).or_default();
                if panels.last() != Some(&index) {
                    panels.push(index);
                }
            }
        }
    }
    if reasons.is_empty() {
        return;
    }
    sheet.heading(2, "What stays, and why");
    let mut table = Table::new(TextSize::Normal, &[("Mark", false, 0.0), ("Where", false, 1.0), ("Why", false, 1.1)]);
    for ((kind, reason), panels) in reasons {
        table.row([capital(kind.name()), input.names(&panels), reason.to_owned()]);
    }
    sheet.table(table);
}

/// Why a mark does not go, or not wholly; none where it goes. `left` says that its panel is not polished.
fn why(kind: DefectKind, outcome: Outcome, left: bool) -> Option<&'static str> {
    Some(match (kind.treatment(), outcome) {
        (Treatment::TouchUp, _) => "Paint is missing; only touching up or new paint helps.",
        (Treatment::Refinish, _) => "The paint itself is broken; only new paint helps.",
        (Treatment::LevelLocally, _) => "It stands proud; it can be levelled by hand if you ask.",
        // What lies on top is cleaned off.
        (Treatment::Decontaminate, _) | (_, Outcome::Goes) => return None,
        (_, Outcome::Stays) if left => "Not polished: too little paint to be sure of, or none was read.",
        (_, Outcome::Stays) => "Deeper than is safe to polish out; painting would help.",
        (_, Outcome::Fades { .. }) => "It gets fainter; the rest would cost too much clear coat.",
    })
}
