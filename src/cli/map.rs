//! `lapwright map [JOB] --show film|defects|polish|order --out FILE`

use super::args::Show;
use super::sheet::{ending, fault};
use super::{Exit, Failure, Output, args, open, order};
use crate::file::{RealDisk, write_export};
use crate::insight::Insight;
use crate::say;
use crate::scene::Overlay;
use crate::sheets::{Options, SheetInput, figure_png, map_picture, svg};

/// Pixels to a millimetre: 300 to an inch.
const PER_MM: f32 = 300.0 / 25.4;

/// Writes the map as a picture.
pub(super) fn run(args: &args::Map, out: &mut Output<'_>) -> Result<Exit, Failure> {
    let kind = ending(&args.out);
    if !matches!(kind.as_str(), "svg" | "png") {
        let error = say!("cli-map-ending", file = args.out.display().to_string());
        return Err(Failure::new(error, say!("cli-map-ending-do")));
    }
    let loaded = open(args.job.as_deref())?;
    let insight = Insight::new(&loaded.job, &loaded.template);
    let (overlay, (coating, none)) = match args.show {
        Show::Film => (Overlay::Film, Default::default()),
        Show::Defects => (Overlay::Defects, Default::default()),
        Show::Polish => (Overlay::Polish, Default::default()),
        Show::Order => (Overlay::Order, order::coating(&loaded, &insight)),
    };
    let input = SheetInput {
        job: &loaded.job,
        template: &loaded.template,
        insight: &insight,
        order: &coating,
        polishing: None,
        shop: "",
        options: Options::default(),
    };
    let figure = map_picture(&input, overlay);
    let bytes = if kind == "svg" { svg(&figure).into_bytes() } else { figure_png(&figure, PER_MM).map_err(fault)? };
    write_export(&RealDisk, &args.out, &bytes)?;
    for conflict in &none {
        writeln!(out.notes, "{}", say!("cli-no-order", why = conflict))?;
    }
    Ok(if none.is_empty() { Exit::Fine } else { Exit::Findings })
}
