//! What stays, and why.

use crate::polish::{DefectKind, Outcome, Treatment};
use crate::say;
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
    sheet.heading(2, say!("sheet-stays"));
    let mut table = Table::new(
        TextSize::Normal,
        &[(say!("sheet-mark"), false, 0.0), (say!("sheet-where"), false, 1.0), (say!("sheet-why"), false, 1.1)],
    );
    for ((kind, reason), panels) in reasons {
        table.row([capital(kind.name()), input.names(&panels), reason.to_owned()]);
    }
    sheet.table(table);
}

/// Why a mark does not go, or not wholly; none where it goes. `left` says that its panel is not polished.
fn why(kind: DefectKind, outcome: Outcome, left: bool) -> Option<&'static str> {
    Some(match (kind.treatment(), outcome) {
        (Treatment::TouchUp, _) => say!("sheet-why-missing"),
        (Treatment::Refinish, _) => say!("sheet-why-broken"),
        (Treatment::LevelLocally, _) => say!("sheet-why-proud"),
        // What lies on top is cleaned off.
        (Treatment::Decontaminate, _) | (_, Outcome::Goes) => return None,
        (_, Outcome::Stays) if left => say!("sheet-why-thin"),
        (_, Outcome::Stays) => say!("sheet-why-deep"),
        (_, Outcome::Fades { .. }) => say!("sheet-why-fades"),
    })
}
