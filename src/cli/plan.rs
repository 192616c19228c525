//! `lapwright plan [JOB]`

use super::{Exit, Failure, Output, args, open};
use crate::insight::{Insight, PlanReport, PolishingReport, crew_problem, polish_work, report, standing_in_words};
use crate::say;
use crate::units::{clock, minutes};
use crate::words::decimal;
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
        let text =
            serde_json::to_string_pretty(&report).map_err(|e| Failure::new(e.to_string(), say!("cli-report")))?;
        writeln!(out.data, "{text}")?;
    } else {
        text(&report, out.data)?;
    }
    let mut exit = Exit::Fine;
    let coating = found.err().into_iter().flatten().map(|why| say!("cli-no-order", why = why));
    let polishing = polishing.err().into_iter().flatten();
    let polishing = polishing.map(|why| say!("cli-no-order-polishing", why = why));
    for conflict in coating.chain(polishing) {
        writeln!(out.notes, "{conflict}")?;
        exit = Exit::Findings;
    }
    Ok(exit)
}

/// The plan as a person reads it in a terminal.
fn text(report: &PlanReport, out: &mut dyn Write) -> std::io::Result<()> {
    writeln!(out, "{}\n{}\n", report.job, report.vehicle)?;
    writeln!(out, "{}", say!("cli-plan-head-polishing"))?;
    writeln!(
        out,
        "{:<28} {:>14} {:>9} {:>18}  {}",
        say!("cli-plan-column-panel"),
        say!("cli-plan-column-film"),
        say!("cli-plan-column-may-lose"),
        say!("cli-plan-column-level"),
        say!("cli-plan-column-will-lose")
    )?;
    for panel in &report.panels {
        if panel.film_um.is_none() && panel.polish.steps.is_empty() && panel.defects == 0 {
            continue;
        }
        let film = panel
            .film_um
            .as_ref()
            .map_or_else(|| say!("cli-plan-not-read").to_owned(), |f| format!("{:.0} µm", f.lower));
        writeln!(
            out,
            "{:<28} {film:>14} {:>6} µm {:>18}  {}",
            panel.name,
            decimal(panel.budget_um, 1),
            panel.polish.level,
            say!(
                "cli-plan-will-lose",
                mean = decimal(panel.polish.removal_um, 1),
                most = decimal(panel.polish.removal_upper_um, 1),
            )
        )?;
        for why in &panel.polish.why {
            writeln!(out, "    {why}")?;
        }
    }
    suggestions(report, out)?;
    polishing(report, out)?;
    if !report.open_points.is_empty() {
        writeln!(out, "\n{}", say!("cli-plan-head-open"))?;
        report.open_points.iter().try_for_each(|point| writeln!(out, "  - {point}"))?;
    }
    let coating = &report.coating;
    writeln!(out, "\n{}", say!("cli-plan-head-coating"))?;
    writeln!(out, "  {}", if coating.go { say!("cli-plan-air-right") } else { say!("cli-plan-air-stop") })?;
    for stop in &coating.stops {
        writeln!(out, "  {stop}")?;
    }
    writeln!(
        out,
        "  {}",
        say!(
            "cli-plan-air",
            dew = decimal(coating.dew_point_c, 1),
            margin = decimal(coating.surface_margin_c, 1),
            from = clock(coating.window_s.min),
            to = clock(coating.window_s.max),
            ml = format!("{:.0}", coating.coating_ml),
        )
    )?;
    if let Some(plan) = &coating.crew_plan {
        writeln!(
            out,
            "  {}\n",
            say!("cli-plan-order-takes", time = minutes(plan.makespan_s), share = share(plan.bound, plan.cost))
        )?;
    }
    if coating.crew_problem.operations.is_empty() {
        writeln!(out, "  {}", say!("cli-plan-all-uncoated"))?;
    }
    for row in &coating.order {
        writeln!(out, "  {:>6}  {:<10} {:<6} {}", clock(row.start_s), row.worker, row.role, row.name)?;
    }
    writeln!(out, "\n{}", say!("cli-plan-head-cautions"))?;
    report.cautions.iter().try_for_each(|c| writeln!(out, "  - {c}"))
}

/// The bound as a share of the cost, in whole per cent.
fn share(bound: i64, cost: i64) -> String {
    format!("{:.0}", 100.0 * bound as f64 / cost.max(1) as f64)
}

/// What the readings suggest, the gauge first.
fn suggestions(report: &PlanReport, out: &mut dyn Write) -> std::io::Result<()> {
    let panels = report.panels.iter().flat_map(|p| p.findings.iter().map(move |f| (p.name.as_str(), f)));
    let mut found = report.gauge_findings.iter().map(|f| (say!("cli-plan-gauge"), f)).chain(panels).peekable();
    if found.peek().is_some() {
        writeln!(out, "\n{}", say!("cli-plan-head-suggest"))?;
    }
    found.try_for_each(|(place, f)| writeln!(out, "  {place}: {}; {}", f.cause, f.action))
}

/// Who polishes what when, what it does to them, and what it uses up.
fn polishing(report: &PlanReport, out: &mut dyn Write) -> std::io::Result<()> {
    let PolishingReport { crew_plan: Some(plan), order, days, handed, materials, .. } = &report.polishing else {
        return Ok(());
    };
    let people = report.exposure.len();
    writeln!(out, "\n{}", say!("cli-plan-head-polishing-order"))?;
    writeln!(
        out,
        "  {}\n",
        say!(
            "cli-plan-polishing-takes",
            time = minutes(plan.makespan_s),
            people = people,
            share = share(plan.bound, plan.cost),
        )
    )?;
    let mut day = 0;
    for row in order {
        if row.day > day && days.len() > 1 {
            day = row.day;
            writeln!(out, "  {}", say!("cli-plan-day", day = day))?;
        }
        let step = if row.local { say!("cli-plan-at-one-place", step = row.step.as_str()) } else { row.step.clone() };
        writeln!(out, "  {:>8}  {:<10} {:<28} {step}", clock(row.start_s), row.worker, row.name)?;
    }
    writeln!(out, "\n{}", say!("cli-plan-head-exposure"))?;
    for (number, day) in days.iter().enumerate() {
        for worker in &day.exposure {
            let noise = worker
                .noise_lex8h_db
                .map_or_else(|| say!("cli-plan-no-machine").to_owned(), |db| format!("{} dB(A)", decimal(db, 1)));
            let exposure = say!(
                "cli-plan-exposure",
                worker = format!("{:<10}", worker.worker),
                vibration = decimal(worker.hav_a8_ms2, 2),
                points = format!("{:.0}", worker.hav_points),
                standing = standing_in_words(worker.hav_standing),
                noise = noise,
                noise_standing = standing_in_words(worker.noise_standing),
            );
            let several = days.len() > 1;
            let exposure =
                if several { say!("cli-plan-day-exposure", day = number + 1, exposure = exposure) } else { exposure };
            writeln!(out, "  {exposure}")?;
        }
    }
    if days.len() > 1 {
        writeln!(out, "  {}", say!("cli-plan-spread", days = days.len()))?;
    }
    for handed in handed {
        let (panel, worker) = (handed.panel.as_str(), handed.to.as_str());
        writeln!(out, "  {}", say!("cli-plan-handed", panel = panel, worker = worker))?;
    }
    writeln!(out, "\n{}", say!("cli-plan-head-materials"))?;
    for m in materials {
        let tools = match m.sheets {
            0 => say!("cli-plan-pads", count = m.pads),
            sheets => say!("cli-plan-sheets", count = sheets),
        };
        writeln!(
            out,
            "  {:<28} {:>5} m²  {tools:>9}  {:>4.0} ml  {}",
            m.step,
            decimal(m.area_m2, 1),
            m.polish_ml,
            say!("cli-plan-towels", count = m.towels)
        )?;
    }
    Ok(())
}
