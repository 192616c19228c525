//! `lapwright plan [JOB]`

use super::{Exit, Failure, Output, args, open};
use crate::insight::{Insight, PlanReport, PolishingReport, crew_problem, polish_work, report};
use crate::units::{clock, minutes};
use crate::words::{Language, language, within};
use crate::work::{Effort, Task, find_order, find_task};
use std::io::Write;
use std::sync::Arc;
use std::sync::atomic::AtomicBool;

/// Plans a job and prints it as text or JSON; JSON is for other programs, so its texts are always the same English.
pub(super) fn run(args: &args::Plan, out: &mut Output<'_>) -> Result<Exit, Failure> {
    let language = if args.json { Language::British } else { language() };
    within(language, || plan(args, out))
}

fn plan(args: &args::Plan, out: &mut Output<'_>) -> Result<Exit, Failure> {
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
    let mut report = report(&loaded.job, &loaded.template, &insight, &problem, order);
    let work = polish_work(&loaded.job, &loaded.template, &insight);
    let polishing = if work.operations.is_empty() {
        Ok(None) // nothing is polished
    } else {
        let task = Task::Polishing(Arc::clone(&work.problem), Arc::clone(&work.doses));
        find_task(&task, effort, &AtomicBool::new(false), &|_| ()).map(Some)
    };
    if let Ok(Some(found)) = &polishing {
        report = report.with_polishing(&loaded.job, &loaded.template, &work, found);
    }
    if args.json {
        let text = serde_json::to_string_pretty(&report)
            .map_err(|e| Failure::new(e.to_string(), "report this as a fault of the program"))?;
        writeln!(out.data, "{text}")?;
    } else {
        text(&report, out.data)?;
    }
    let mut exit = Exit::Fine;
    for (what, conflicts) in [("", found.err()), (" of polishing", polishing.err())] {
        for conflict in conflicts.iter().flatten() {
            writeln!(out.notes, "no valid order{what}: {conflict}")?;
            exit = Exit::Findings;
        }
    }
    Ok(exit)
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
    suggestions(report, out)?;
    polishing(report, out)?;
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

/// What the readings suggest, the gauge first.
fn suggestions(report: &PlanReport, out: &mut dyn Write) -> std::io::Result<()> {
    let panels = report.panels.iter().flat_map(|p| p.findings.iter().map(move |f| (p.name.as_str(), f)));
    let mut found = report.gauge_findings.iter().map(|f| ("Gauge", f)).chain(panels).peekable();
    if found.peek().is_some() {
        writeln!(out, "\nWhat the readings suggest (borders are trade practice)")?;
    }
    found.try_for_each(|(place, f)| writeln!(out, "  {place}: {}; {}", f.cause, f.action))
}

/// Who polishes what when, what it does to them, and what it uses up.
fn polishing(report: &PlanReport, out: &mut dyn Write) -> std::io::Result<()> {
    let PolishingReport { crew_plan: Some(plan), order, days, handed, materials, .. } = &report.polishing else {
        return Ok(());
    };
    let people = report.exposure.len();
    writeln!(out, "\nOrder of polishing")?;
    writeln!(
        out,
        "  {} for {people} {}; proven: none takes less than {:.0} % of its cost.\n",
        minutes(plan.makespan_s),
        if people == 1 { "person" } else { "people" },
        100.0 * plan.bound as f64 / plan.cost.max(1) as f64
    )?;
    let mut day = 0;
    for row in order {
        if row.day > day && days.len() > 1 {
            day = row.day;
            writeln!(out, "  Day {day}")?;
        }
        let place = if row.local { ", at one place" } else { "" };
        writeln!(out, "  {:>8}  {:<10} {:<28} {}{place}", clock(row.start_s), row.worker, row.name, row.step)?;
    }
    writeln!(
        out,
        "\nHands and ears (declared values plus their uncertainty; local rules and the makers' sheets come first)"
    )?;
    for (number, day) in days.iter().enumerate() {
        for worker in &day.exposure {
            let noise = worker.noise_lex8h_db.map_or_else(|| "no machine".to_owned(), |db| format!("{db:.1} dB(A)"));
            let when = if days.len() > 1 { format!("day {} ", number + 1) } else { String::new() };
            writeln!(
                out,
                "  {when}{:<10} vibration A(8) {:.2} m/s², {:.0} points ({}); noise {noise} ({})",
                worker.worker, worker.hav_a8_ms2, worker.hav_points, worker.hav_standing, worker.noise_standing
            )?;
        }
    }
    if days.len() > 1 {
        writeln!(
            out,
            "  In one day somebody would pass an action value, so the work is spread over {} days.",
            days.len()
        )?;
    }
    for handed in handed {
        writeln!(out, "  {} goes to {}, so that nobody passes an action value.", handed.panel, handed.to)?;
    }
    writeln!(out, "\nMaterials")?;
    for m in materials {
        let tools = if m.sheets > 0 { format!("{} sheets", m.sheets) } else { format!("{} pads", m.pads) };
        writeln!(
            out,
            "  {:<28} {:>5.1} m²  {tools:>9}  {:>4.0} ml  {} towels",
            m.step, m.area_m2, m.polish_ml, m.towels
        )?;
    }
    Ok(())
}
