//! How long it takes to plan a vehicle: from scratch, after one reading, after another goal; and the price of ambition.

#![expect(
    clippy::expect_used,
    clippy::print_stdout,
    reason = "a bench says its figures and stops where it can't measure"
)]

mod invent;

use lapwright::file::Loaded;
use lapwright::insight::Insight;
use lapwright::job::{Command, Document};
use lapwright::polish::Goal;
use lapwright::units::Micrometres;
use std::hint::black_box;
use std::sync::Arc;
use std::time::{Duration, Instant};

fn main() {
    println!("{:<44} {:>10} {:>10}", "", "median ms", "worst ms");
    let car = invent::vehicle("coach", 33, 3);
    let read = Insight::new(&car.job, &car.template).panels.iter().filter(|p| p.film.is_some()).count();
    println!("{read} panels are read");
    row("33 panels from scratch", 101, |_| timed(|| Insight::new(&car.job, &car.template)));
    row("33 panels from scratch, 12 marks each", 51, {
        let car = invent::vehicle("coach", 33, 12);
        move |_| timed(|| Insight::new(&car.job, &car.template))
    });
    let mut open = Open::new(&car);
    row("one changed reading", 201, |k| open.reading(k));
    let mut open = Open::new(&car);
    row("another goal", 201, |k| open.goal(k));
    row("price of ambition, first time", 51, |_| {
        let insight = Insight::new(&car.job, &car.template);
        timed(|| insight.ambition())
    });
    let open = Insight::new(&car.job, &car.template);
    row("price of ambition, again", 51, |_| timed(|| open.ambition()));
    let hostile = invent::vehicle("coach", 40, 12);
    let mut round = 0;
    row("hostile: 40 panels, 12 steps of 50 passes", 12, |_| {
        // Another list of steps each time, so that "worst" is the worst of a dozen lists.
        round += 1;
        let mut job = (*hostile.job).clone();
        job.steps = invent::hostile_steps(round);
        let job = Arc::new(job);
        timed(|| Insight::new(&job, &hostile.template))
    });
}

fn timed<T>(f: impl FnOnce() -> T) -> Duration {
    let start = Instant::now();
    black_box(f());
    start.elapsed()
}

fn row(name: &str, runs: usize, mut run: impl FnMut(usize) -> Duration) {
    run(0); // once to warm up
    let mut times: Vec<Duration> = (1..=runs).map(&mut run).collect();
    times.sort();
    let ms = |d: Duration| d.as_secs_f64() * 1e3;
    println!("{name:<44} {:>10.3} {:>10.3}", ms(times[runs / 2]), ms(times[runs - 1]));
}

/// A job being worked on.
struct Open {
    car: Loaded,
    document: Document,
    insight: Insight,
}

impl Open {
    fn new(car: &Loaded) -> Self {
        let (document, insight) = (Document::opened(Arc::clone(&car.job)), Insight::new(&car.job, &car.template));
        Self { car: car.clone(), document, insight }
    }

    /// The time to take in a command.
    fn apply(&mut self, command: &Command) -> Duration {
        timed(|| {
            self.document.apply(command, None).expect("the command fits");
            self.insight.refresh(self.document.job(), &self.car.template)
        })
    }

    fn reading(&mut self, k: usize) -> Duration {
        let (panel, _) = self.car.job.panels.iter().nth(k % self.car.job.panels.len()).expect("a panel");
        let thickness = Micrometres::of(112.0 + (k % 9) as f64 * 0.37 + k as f64 * 1e-3);
        self.apply(&Command::SetReading { panel: panel.clone(), spot: 0, reading: 1, thickness })
    }

    fn goal(&mut self, k: usize) -> Duration {
        self.apply(&Command::SetGoal(Goal::Correct { share: (k % 20) as f64 * 0.05 + 1e-6 * k as f64 }))
    }
}
