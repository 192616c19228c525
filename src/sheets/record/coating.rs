//! The coating: air, product, order, care times.

use super::panels::section;
use crate::coat::{MeasuredWindow, bottles};
use crate::insight::{coated_panels, coating_amount};
use crate::say;
use crate::sheets::calendar::care;
use crate::sheets::input::SheetInput;
use crate::sheets::model::{Sheet, Table, TextSize};
use crate::units::{clock, minutes};

pub(super) fn coating(input: &SheetInput<'_>, sheet: &mut Sheet) {
    if coated_panels(input.job, input.template).is_empty() {
        return;
    }
    let (air, verdict, product) = (&input.job.air, &input.insight.air, &input.job.product);
    sheet.heading(2, say!("sheet-air"));
    sheet.facts(vec![
        (
            say!("sheet-air"),
            input.said(say!(
                "sheet-air-now",
                temperature = format!("{:.1}", air.air_temp_c),
                humidity = format!("{:.0}", air.humidity_pct)
            )),
        ),
        (say!("sheet-coldest"), input.said(format!("{:.1}", air.surface_temp_c))),
        (say!("sheet-warmest"), air.warmest_surface_temp_c.map(|t| input.said(format!("{t:.1}"))).unwrap_or_default()),
        (
            say!("sheet-dew-point"),
            input.said(say!(
                "sheet-dew-margin",
                dew = format!("{:.1}", verdict.dew_point),
                margin = format!("{:.1}", verdict.margin)
            )),
        ),
        (
            say!("sheet-verdict"),
            if verdict.go { say!("sheet-air-right").to_owned() } else { input.said(verdict.stops.join(" ")) },
        ),
        (say!("sheet-to-mind"), input.said(verdict.notices.join(" "))),
    ]);
    sheet.heading(2, say!("sheet-coating"));
    let amount = coating_amount(input.job, input.template);
    sheet.facts(vec![
        (say!("sheet-product"), product.shown_name().to_owned()),
        (say!("sheet-layers"), product.layers.to_string()),
        (
            say!("sheet-quantity"),
            input.said(say!(
                "sheet-bottles",
                amount = format!("{amount:.0}"),
                count = bottles(amount, product),
                each = format!("{:.0}", product.bottle_ml),
            )),
        ),
        (
            say!("sheet-window-here"),
            say!("sheet-level-window", from = clock(verdict.window.min_s), to = clock(verdict.window.max_s)),
        ),
        (
            say!("sheet-window-label"),
            input.said(say!(
                "sheet-window-at",
                from = clock(product.window_min_s),
                to = clock(product.window_max_s),
                temperature = format!("{:.0}", product.reference_temp_c),
                humidity = format!("{:.0}", product.reference_humidity_pct),
            )),
        ),
        (say!("sheet-window-patch"), input.job.patch.map(|patch| input.said(tried(patch))).unwrap_or_default()),
        (
            say!("sheet-next-layer"),
            match product.layers {
                0 | 1 => String::new(),
                _ => say!("sheet-after-time", time = minutes(product.recoat_s)),
            },
        ),
        (say!("sheet-high-spots"), say!("sheet-saved-for", time = minutes(product.high_spot_s))),
        (say!("sheet-makers-cautions"), product.cautions.clone()),
    ]);
    let mut care_table =
        Table::new(TextSize::Small, &[(say!("sheet-when"), false, 0.0), (say!("sheet-what"), false, 1.0)]);
    for (when, what) in care(input) {
        care_table.row([when, what]);
    }
    section(sheet, say!("sheet-care-times"), care_table);
    section(sheet, say!("sheet-order-coating"), order(input));
}

/// A window measured on this vehicle, and the air of that moment.
fn tried(patch: MeasuredWindow) -> String {
    say!(
        "sheet-window-tried",
        from = clock(patch.min_s),
        to = clock(patch.max_s),
        air = format!("{:.1}", patch.air.air_temp_c),
        humidity = format!("{:.0}", patch.air.humidity_pct),
        surface = format!("{:.1}", patch.air.surface_temp_c),
    )
}

fn order(input: &SheetInput<'_>) -> Table {
    let mut columns = vec![
        (say!("sheet-from"), true, 0.0),
        (say!("sheet-to"), true, 0.0),
        (say!("sheet-who"), false, 0.0),
        (say!("sheet-what"), false, 0.0),
        (say!("sheet-panel"), false, 1.0),
    ];
    let layers = input.job.product.layers > 1;
    if layers {
        columns.push((say!("sheet-layer"), true, 0.0));
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
