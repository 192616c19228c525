//! `lapwright plan [JOB]`

use super::{Exit, Failure, Output, args, open};
use crate::insight::{Insight, PlanReport, crew_problem, report};
use crate::units::{clock, minutes};
use crate::work::{Effort, find_order};
use std::io::Write;
use std::sync::Arc;
use std::sync::atomic::AtomicBool;

/// Plans a job and prints it as text or JSON.
pub(super) fn run(args: &args::Plan, out: &mut Output<'_>) -> Result<Exit, Failure> {
    let loaded = open(args.job.as_deref())?;
    let insight = Insight::new(&loaded.job, &loaded.template);
    let problem = Arc::new(crew_problem(&loaded.job, &loaded.template, &insight));
    let effort = Effort { seconds: args.seconds, seed: args.seed, ..Effort::default() };
    let found = if problem.operations.is_empty() {
        Ok(None) // every panel is left uncoated
    } else {
        find_order(&problem, effort, &AtomicBool::new(false), &|_| ()).map(Some)
    };
    let order = found.as_ref().ok().and_then(Option::as_ref);
    let report = report(&loaded.job, &loaded.template, &insight, &problem, order);
    if args.json {
        let text = serde_json::to_string_pretty(&report)
            .map_err(|e| Failure::new(e.to_string(), "report this as a fault of the program"))?;
        writeln!(out.data, "{text}")?;
    } else {
        text(&report, out.data)?;
    }
    let Err(conflicts) = found else { return Ok(Exit::Fine) };
    for conflict in &conflicts {
        writeln!(out.notes, "no valid order: {conflict}")?;
    }
    Ok(Exit::Findings)
}

/// The plan as a person reads it in a terminal.
fn text(report: &PlanReport, out: &mut dyn Write) -> std::io::Result<()> {
    writeln!(out, "{}\n{}\n", report.job, report.vehicle)?;
    writeln!(out, "Polishing")?;
    writeln!(out, "{:<28} {:>14} {:>9} {:>18}  will lose", "panel", "film at least", "may lose", "level")?;
    for panel in &report.panels {
        if panel.film_um.is_none() && panel.polish.steps.is_empty() && panel.defects == 0 {
            continue;
        }
        let film = panel.film_um.as_ref().map_or_else(|| "not read".to_owned(), |f| format!("{:.0} µm", f.lower));
        writeln!(
            out,
            "{:<28} {film:>14} {:>6.1} µm {:>18}  {:.1} µm, at most {:.1} µm",
            panel.name, panel.budget_um, panel.polish.level, panel.polish.removal_um, panel.polish.removal_upper_um
        )?;
        for why in &panel.polish.why {
            writeln!(out, "    {why}")?;
        }
    }
    if !report.open_points.is_empty() {
        writeln!(out, "\nOpen points")?;
        report.open_points.iter().try_for_each(|point| writeln!(out, "  - {point}"))?;
    }
    let coating = &report.coating;
    writeln!(out, "\nCoating")?;
    writeln!(out, "  {}", if coating.go { "The air is right." } else { "Stop: do not coat in this air." })?;
    for stop in &coating.stops {
        writeln!(out, "  {stop}")?;
    }
    writeln!(
        out,
        "  Dew point {:.1} °C, surface {:.1} K above it; level {} to {} after applying; {:.0} ml.",
        coating.dew_point_c,
        coating.surface_margin_c,
        clock(coating.window_s.min),
        clock(coating.window_s.max),
        coating.coating_ml
    )?;
    if let Some(plan) = &coating.crew_plan {
        writeln!(
            out,
            "  The order takes {}; proven: none takes less than {:.0} % of its cost.\n",
            minutes(plan.makespan_s),
            100.0 * plan.bound as f64 / plan.cost.max(1) as f64
        )?;
    }
    if coating.crew_problem.operations.is_empty() {
        writeln!(out, "  Every panel is left uncoated.")?;
    }
    for row in &coating.order {
        writeln!(out, "  {:>6}  {:<10} {:<6} {}", clock(row.start_s), row.worker, row.role, row.name)?;
    }
    writeln!(out, "\nCautions")?;
    report.cautions.iter().try_for_each(|c| writeln!(out, "  - {c}"))
}
