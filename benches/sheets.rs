//! What a sheet costs: from a job that is worked out to the bytes of the file, for a vehicle of 33 painted panels, all read.
//!
//! `cargo bench --bench sheets`. The middle of 20 runs each.

#![expect(clippy::print_stdout, clippy::unwrap_used, reason = "a tool for contributors; a wrong file may end it")]

#[path = "../tests/support/mod.rs"]
mod support;

use lapwright::file::Loaded;
use lapwright::insight::{Insight, OrderRow, PolishOrder, crew_problem, order_rows, polish_order, polish_work};
use lapwright::sheets::{Options, Paper, Sheet, SheetInput, crew, customer, html, pdf, png, record};
use lapwright::work::{Effort, Task, find_order, find_task};
use std::sync::Arc;
use std::sync::atomic::AtomicBool;
use std::time::{Duration, Instant};

const EFFORT: Effort = Effort { seconds: 60.0, nodes: Some(5_000), threads: 1, seed: 1 };
const RUNS: usize = 20;

fn main() {
    let loaded = support::job::job_on("van").read_all(115.0).build();
    let panels = loaded.job.panels.len();
    let insight = Insight::new(&loaded.job, &loaded.template);
    let (order, polishing) = orders(&loaded, &insight);
    let input = SheetInput {
        job: &loaded.job,
        template: &loaded.template,
        insight: &insight,
        order: &order,
        polishing: polishing.as_ref(),
        options: Options::default(),
    };
    println!("{} panels, {panels} of them read\n", loaded.template.panels.len());
    println!("| sheet | pages | PDF | its size | HTML | PNG, 150 dpi |");
    println!("| --- | --- | --- | --- | --- | --- |");
    type Make = fn(&SheetInput<'_>) -> Sheet;
    let sheets = [("customer", customer as Make), ("crew", crew), ("record", record)];
    for (name, make) in sheets {
        let pages = make(&input).pages(Paper::A4).pages.len();
        let size = pdf(&make(&input).pages(Paper::A4)).unwrap().len();
        let as_pdf = middle(|| pdf(&make(&input).pages(Paper::A4)).unwrap().len());
        let as_html = middle(|| html(&make(&input)).len());
        let as_png = middle(|| {
            let pages = make(&input).pages(Paper::A4);
            pages.pages.iter().map(|page| png(page, 150.0 / 25.4).unwrap().len()).sum()
        });
        let ms = |d: Duration| format!("{:.1} ms", d.as_secs_f64() * 1e3);
        println!("| {name} | {pages} | {} | {} kB | {} | {} |", ms(as_pdf), size / 1000, ms(as_html), ms(as_png));
    }
}

/// The middle time of some runs; what they give is looked at, so that none is left out.
fn middle(run: impl Fn() -> usize) -> Duration {
    let mut times: Vec<Duration> = (0..RUNS)
        .map(|_| {
            let started = Instant::now();
            assert!(run() > 0);
            started.elapsed()
        })
        .collect();
    times.sort_unstable();
    times[RUNS / 2]
}

fn orders(loaded: &Loaded, insight: &Insight) -> (Vec<OrderRow>, Option<PolishOrder>) {
    let (job, template) = (&loaded.job, &loaded.template);
    let stop = AtomicBool::new(false);
    let problem = Arc::new(crew_problem(job, template, insight));
    let plan = find_order(&problem, EFFORT, &stop, &|_| ()).unwrap().plan;
    let work = polish_work(job, template, insight);
    let task = Task::Polishing(Arc::clone(&work.problem), Arc::clone(&work.doses));
    let polishing =
        find_task(&task, EFFORT, &stop, &|_| ()).ok().map(|found| polish_order(job, template, &work, &found));
    (order_rows(job, template, &problem, &plan), polishing)
}
