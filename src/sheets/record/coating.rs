//! The coating: air, product, order, care times.

use super::panels::section;
use crate::coat::{MeasuredWindow, bottles};
use crate::insight::{coated_panels, coating_amount};
use crate::sheets::calendar::care;
use crate::sheets::input::SheetInput;
use crate::sheets::model::{Sheet, Table, TextSize};
use crate::units::{clock, minutes};

pub(super) fn coating(input: &SheetInput<'_>, sheet: &mut Sheet) {
    if coated_panels(input.job, input.template).is_empty() {
        return;
    }
    let (air, verdict, product) = (&input.job.air, &input.insight.air, &input.job.product);
    sheet.heading(2, "Air");
    sheet.facts(vec![
        ("Air", format!("{:.1}, {:.0} humidity", air.air_temp_c, air.humidity_pct)),
        ("Coldest surface", format!("{:.1}", air.surface_temp_c)),
        ("Warmest surface", air.warmest_surface_temp_c.map(|t| format!("{t:.1}")).unwrap_or_default()),
        ("Dew point", format!("{:.1}; the surface is {:.1} above it", verdict.dew_point, verdict.margin)),
        ("Verdict", if verdict.go { "right for coating".to_owned() } else { verdict.stops.join(" ") }),
        ("To mind", verdict.notices.join(" ")),
    ]);
    sheet.heading(2, "Coating");
    let amount = coating_amount(input.job, input.template);
    sheet.facts(vec![
        ("Product", product.name.clone()),
        ("Layers", product.layers.to_string()),
        (
            "Amount",
            format!("{amount:.0} in all, {} of {:.0}", counted(bottles(amount, product), "bottle"), product.bottle_ml),
        ),
        (
            "Window here",
            format!("level {} to {} after applying", clock(verdict.window.min_s), clock(verdict.window.max_s)),
        ),
        (
            "Window on the label",
            format!(
                "{} to {} at {:.0} and {:.0} humidity",
                clock(product.window_min_s),
                clock(product.window_max_s),
                product.reference_temp_c,
                product.reference_humidity_pct
            ),
        ),
        ("Window tried on a patch", input.job.patch.map(tried).unwrap_or_default()),
        ("Next layer", if product.layers > 1 { format!("after {}", minutes(product.recoat_s)) } else { String::new() }),
        ("High spots", format!("can be saved for {}", minutes(product.high_spot_s))),
        ("Maker's cautions", product.cautions.clone()),
    ]);
    let mut care_table = Table::new(TextSize::Small, &[("When", false, 0.0), ("What", false, 1.0)]);
    for (when, what) in care(input) {
        care_table.row([when, what]);
    }
    section(sheet, "Care times", care_table);
    section(sheet, "Order of coating", order(input));
}

/// A window measured on this vehicle, and the air of that moment.
fn tried(patch: MeasuredWindow) -> String {
    format!(
        "{} to {} at {:.1} air, {:.0} humidity, {:.1} surface; it counts instead of the label",
        clock(patch.min_s),
        clock(patch.max_s),
        patch.air.air_temp_c,
        patch.air.humidity_pct,
        patch.air.surface_temp_c
    )
}

fn counted(n: u32, what: &str) -> String {
    format!("{n} {what}{}", if n == 1 { "" } else { "s" })
}

fn order(input: &SheetInput<'_>) -> Table {
    let mut columns =
        vec![("From", true, 0.0), ("To", true, 0.0), ("Who", false, 0.0), ("What", false, 0.0), ("Panel", false, 1.0)];
    let layers = input.job.product.layers > 1;
    if layers {
        columns.push(("Layer", true, 0.0));
    }
    let mut table = Table::new(TextSize::Small, &columns);
    for row in input.order {
        let who = input.job.crew[row.worker].name.clone();
        let (from, to) = (clock(row.at.start), clock(row.at.end));
        let mut cells = vec![from, to, who, row.role.verb().to_owned(), input.name(row.panel)];
        if layers {
            cells.push(row.layer.to_string());
        }
        table.rows.push(cells);
    }
    table
}
