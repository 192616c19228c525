//! How long it takes to make each sheet of a job with 33 panels read, from the job to the bytes of the file.

#![expect(
    clippy::expect_used,
    clippy::print_stdout,
    reason = "a bench says its figures and stops where it can't measure"
)]

#[path = "polish/invent.rs"]
#[expect(dead_code, reason = "the other benches use the rest")]
mod invent;

use lapwright::file::Loaded;
use lapwright::insight::{Insight, OrderRow, PolishOrder, crew_problem, order_rows, polish_order, polish_work};
use lapwright::scene::Overlay;
use lapwright::sheets::{self, Options, Paper, Sheet, SheetInput};
use lapwright::work::{Effort, Task, find_order, find_task};
use std::hint::black_box;
use std::sync::Arc;
use std::sync::atomic::AtomicBool;
use std::time::Instant;

type Maker = fn(&SheetInput<'_>) -> Sheet;

const RUNS: usize = 31;
const EFFORT: Effort = Effort { seconds: 60.0, nodes: Some(2_000), threads: 1, seed: 1 };

fn main() {
    println!("{:<32} {:>10} {:>10} {:>8} {:>6}", "", "median ms", "worst ms", "kB", "pages");
    let car = invent::vehicle("saloon", 33, 3);
    let insight = Insight::new(&car.job, &car.template);
    let (order, polishing) = orders(&car, &insight);
    let input = SheetInput {
        job: &car.job,
        template: &car.template,
        insight: &insight,
        order: &order,
        polishing: polishing.as_ref(),
        shop: "",
        options: Options::default(),
    };
    let makers = [("customer", sheets::customer as Maker), ("crew", sheets::crew), ("record", sheets::record)];
    for (name, make) in makers {
        let pages = make(&input).pages(Paper::A4).pages.len();
        row(&format!("{name} as PDF"), pages, || {
            sheets::pdf(&make(&input).pages(Paper::A4)).expect("the PDF is made").len()
        });
        row(&format!("{name} as HTML"), pages, || sheets::html(&make(&input)).len());
    }
    row("map as SVG", 1, || sheets::svg(&sheets::map_picture(&input, Overlay::Film)).len());
    row("map as PNG, 300 dots to an inch", 1, || {
        let figure = sheets::map_picture(&input, Overlay::Film);
        sheets::figure_png(&figure, 300.0 / 25.4).expect("the picture is made").len()
    });
}

fn orders(car: &Loaded, insight: &Insight) -> (Vec<OrderRow>, Option<PolishOrder>) {
    let stop = AtomicBool::new(false);
    let problem = Arc::new(crew_problem(&car.job, &car.template, insight));
    let found = find_order(&problem, EFFORT, &stop, &|_| ()).expect("there is an order");
    let work = polish_work(&car.job, &car.template, insight);
    let task = Task::Polishing(Arc::clone(&work.problem), Arc::clone(&work.doses));
    let polishing = find_task(&task, EFFORT, &stop, &|_| ()).expect("there is an order");
    let rows = order_rows(&car.job, &car.template, &problem, &found.plan);
    (rows, Some(polish_order(&car.job, &car.template, &work, &polishing)))
}

fn row(name: &str, pages: usize, run: impl Fn() -> usize) {
    let bytes = run(); // once to warm up
    let mut times: Vec<f64> = (0..RUNS)
        .map(|_| {
            let start = Instant::now();
            black_box(run());
            start.elapsed().as_secs_f64() * 1e3
        })
        .collect();
    times.sort_by(f64::total_cmp);
    println!("{name:<32} {:>10.1} {:>10.1} {:>8.0} {pages:>6}", times[RUNS / 2], times[RUNS - 1], bytes as f64 / 1e3);
}
