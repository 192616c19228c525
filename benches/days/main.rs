//! A thousand days in the bay: the program's advice beside a fixed order and a simple rule.
//!
//! `cargo bench --bench days` prints the table that stands in DEVELOPERS.md. Every way of working meets the same thousand days:
//! the same slow and fast people, breaks and whims, from the same seed. A panel counts as out of its window when its levelling
//! began before the shortest wait or ended after the longest.

#![expect(clippy::print_stdout, clippy::unwrap_used, reason = "a tool for contributors; a wrong file may end it")]

mod coating;
mod people;
mod ways;

use coating::{Unlimited, coating};
use lapwright::crew::{Limits, PlanFile, Problem, ProblemSpec, State, Target, solve_robust};
use people::{Day, People};
use std::sync::atomic::{AtomicU32, Ordering};
use ways::Way;

/// What became of many days.
#[derive(Default)]
struct Sum {
    days: u32,
    panels: u32,
    out: u32,
    bad_days: u32,
    finish_s: f64,
}

impl Sum {
    fn add(&mut self, spec: &ProblemSpec, day: &Day) {
        let (mut panels, mut out) = (0, 0);
        for lag in spec.lags.iter().filter(|l| l.max_s.is_some()) {
            let at = |id: &str| {
                let index = spec.operations.iter().position(|o| o.id == id);
                match index.map(|i| day.state(i)) {
                    Some(State::Done { start_s, end_s, .. }) => Some((start_s, end_s)),
                    _ => None,
                }
            };
            let (Some(from), Some(to)) = (at(&lag.from), at(&lag.to)) else { continue };
            panels += 1;
            let late = lag.max_s.is_some_and(|max| to.1 > from.1 + max);
            out += u32::from(late || to.0 < from.1 + lag.min_s);
        }
        self.days += 1;
        self.panels += panels;
        self.out += out;
        self.bad_days += u32::from(out > 0);
        self.finish_s += day.finish_s() as f64;
    }
}

fn main() {
    let days: u32 = std::env::var("DAYS").ok().and_then(|d| d.parse().ok()).unwrap_or(1_000);
    println!("| vehicle | way of working | panels out of their window | days with one | mean time |");
    println!("| --- | --- | --- | --- | --- |");
    for template in ["coupe", "saloon", "van"] {
        let spec = coating(template);
        let problem = Problem::try_from(spec.clone()).unwrap();
        let limits = Limits { nodes: Some(400_000), threads: 2, seed: 1 };
        let robust = solve_robust(&problem, &limits, &Unlimited, Target::default()).unwrap();
        let plan = robust.schedule.to_plan(&problem, robust.bound);
        for way in [Way::Advice, Way::FixedOrder, Way::RoundTheCar] {
            let sum = many(&spec, &plan, way, days);
            let minutes = sum.finish_s / f64::from(sum.days) / 60.0;
            let share = |a: u32, b: u32| 100.0 * f64::from(a) / f64::from(b.max(1));
            println!(
                "| {template} | {} | {:.2} % | {:.1} % | {minutes:.1} min |",
                way.name(),
                share(sum.out, sum.panels),
                share(sum.bad_days, sum.days),
            );
        }
    }
}

/// The same days for every way, two at a time.
fn many(spec: &ProblemSpec, plan: &PlanFile, way: Way, days: u32) -> Sum {
    let next = AtomicU32::new(0);
    let work = || {
        let mut sum = Sum::default();
        loop {
            let seed = next.fetch_add(1, Ordering::Relaxed);
            if seed >= days {
                return sum;
            }
            let day = Day::live(spec, plan, way, People::of(spec, u64::from(seed)));
            sum.add(spec, &day);
        }
    };
    std::thread::scope(|scope| {
        let other = scope.spawn(work);
        let mut sum = work();
        let other = other.join().unwrap();
        sum.days += other.days;
        sum.panels += other.panels;
        sum.out += other.out;
        sum.bad_days += other.bad_days;
        sum.finish_s += other.finish_s;
        sum
    })
}
