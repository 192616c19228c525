//! What becomes of a plan when people are slower or faster than planned.
//!
//! Who does what and every order in the plan stay: each worker's sequence; of two operations by different workers in close
//! stances the one that starts first; before or after each wet period. Every duration is multiplied by an independent
//! log-normal factor with median 1 and coefficient of variation 0.2 (walking and `min_s` stay), everything starts as early as
//! those orders allow, and a run is late if any `max_s` is passed.

use super::problem::Problem;
use super::random::Random;
use super::schedule::Schedule;

/// Coefficient of variation of a duration.
pub const DURATION_VARIATION: f64 = 0.2;

/// What happened in many runs of one plan.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lateness {
    /// Share of runs in which some window was passed, from 0 to 1.
    pub late_chance: f64,
    /// Standard error of `late_chance`, `sqrt(p (1 - p) / runs)`.
    pub standard_error: f64,
    /// How many runs.
    pub runs: u32,
    /// Mean of the last end, in seconds.
    pub expected_finish_s: f64,
    /// Mean seconds in a run in which somebody stands still because of another worker or of wet paint another one left.
    pub waiting_for_others_s: f64,
    /// Mean seconds in a run in which somebody stands still until a shortest wait is over.
    pub waiting_for_windows_s: f64,
    /// Mean number of times in a run that somebody has to wait for another worker.
    pub waits_for_others: f64,
}

/// Simulates a valid plan; the same for the same seed. `runs` of 0 counts as 1.
pub fn simulate(problem: &Problem, schedule: &Schedule, runs: u32, seed: u64) -> Lateness {
    let runs = runs.max(1);
    let orders = Orders::of(problem, schedule);
    let mut random = Random::new(seed, 0x51);
    let sigma = (1.0 + DURATION_VARIATION * DURATION_VARIATION).ln().sqrt();
    let mut ends = vec![0.0_f64; problem.len()];
    let mut sum = Sums::default();
    for _ in 0..runs {
        sum.add(&orders.run(&mut ends, |planned| planned * (sigma * random.normal()).exp()));
    }
    let n = f64::from(runs);
    let late_chance = f64::from(sum.late) / n;
    Lateness {
        late_chance,
        standard_error: (late_chance * (1.0 - late_chance) / n).sqrt(),
        runs,
        expected_finish_s: sum.finish / n,
        waiting_for_others_s: sum.others / n,
        waiting_for_windows_s: sum.windows / n,
        waits_for_others: f64::from(sum.waits) / n,
    }
}

#[derive(Default)]
struct Sums {
    late: u32,
    finish: f64,
    others: f64,
    windows: f64,
    waits: u32,
}

struct Run {
    late: bool,
    finish: f64,
    others: f64,
    windows: f64,
    waits: u32,
}

impl Sums {
    fn add(&mut self, run: &Run) {
        self.late += u32::from(run.late);
        self.finish += run.finish;
        self.others += run.others;
        self.windows += run.windows;
        self.waits += run.waits;
    }
}

/// The orders of a plan as arcs `start(here) >= end(before) + wait`, grouped by why, in the order of the plan.
struct Orders {
    steps: Vec<Step>,
    /// (from, to, seconds): late when `end(to) > end(from) + seconds`.
    windows: Vec<(usize, usize, f64)>,
}

struct Step {
    operation: usize,
    duration: f64,
    /// Previous operation of the same worker and the walk from there.
    own: Option<(usize, f64)>,
    /// Operations of other workers that go first in a close stance.
    close: Vec<usize>,
    /// Ends after which a wet rule lets this one start.
    wet: Vec<usize>,
    /// Shortest waits.
    lags: Vec<(usize, f64)>,
}

impl Orders {
    fn of(problem: &Problem, schedule: &Schedule) -> Self {
        let rows = schedule.by_operation();
        let mut last: Vec<Option<usize>> = vec![None; problem.workers];
        let mut sequences: Vec<Vec<usize>> = vec![Vec::new(); problem.workers];
        let mut steps = Vec::with_capacity(rows.len());
        for row in schedule.rows() {
            let here = row.operation;
            let stance = problem.operations[here].stance;
            let walk = |o: usize| f64::from(problem.walk(problem.operations[o].stance, stance));
            let own = last[row.worker].map(|o| (o, walk(o)));
            // Ends grow along a worker's sequence, so the latest close one of each other worker says it all.
            let close = (0..problem.workers)
                .filter(|&w| w != row.worker)
                .filter_map(|w| {
                    let near = |&&o: &&usize| problem.close(problem.operations[o].stance, stance);
                    sequences[w].iter().rev().find(near).copied()
                })
                .collect();
            let before = |o: usize| (rows[o].interval.start, o) < (row.interval.start, here);
            let mut wet = Vec::new();
            for rule in &problem.wet {
                if rule.blocked == here && before(rule.to) {
                    wet.push(rule.to);
                } else if rule.from == here && before(rule.blocked) {
                    wet.push(rule.blocked);
                }
            }
            let lags = problem.lags.iter().filter(|l| l.to == here).map(|l| (l.from, f64::from(l.min))).collect();
            steps.push(Step { operation: here, duration: row.interval.duration() as f64, own, close, wet, lags });
            last[row.worker] = Some(here);
            sequences[row.worker].push(here);
        }
        let windows = problem.lags.iter().filter_map(|l| l.max.map(|max| (l.from, l.to, f64::from(max)))).collect();
        Self { steps, windows }
    }

    /// One run; `ends` is scratch, by operation.
    fn run(&self, ends: &mut [f64], mut lasting: impl FnMut(f64) -> f64) -> Run {
        let mut run = Run { late: false, finish: 0.0, others: 0.0, windows: 0.0, waits: 0 };
        for step in &self.steps {
            let ready = step.own.map_or(0.0, |(o, walk)| ends[o] + walk);
            let latest = |list: &[usize]| list.iter().map(|&o| ends[o]).fold(0.0, f64::max);
            let others = latest(&step.close).max(latest(&step.wet));
            let window = step.lags.iter().map(|&(o, wait)| ends[o] + wait).fold(0.0, f64::max);
            let start = ready.max(others).max(window);
            if start > ready && step.own.is_some() {
                if others >= window {
                    run.others += start - ready;
                    run.waits += 1;
                } else {
                    run.windows += start - ready;
                }
            }
            ends[step.operation] = start + lasting(step.duration);
            run.finish = run.finish.max(ends[step.operation]);
        }
        run.late = self.windows.iter().any(|&(from, to, max)| ends[to] > ends[from] + max);
        run
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::crew::Problem;

    fn two_panels(max: i64) -> (Problem, Schedule) {
        let text = format!(
            r#"{{"format":"crew-problem/1","name":"two","workers":[{{"id":"A","roles":["apply"]}},{{"id":"B","roles":["level"]}}],
            "stances":["s","t"],"walk_s":[[0,5],[5,0]],"close":[],
            "operations":[{{"id":"a","panel":"p","role":"apply","duration_s":100,"stance":"s"}},
              {{"id":"l","panel":"p","role":"level","duration_s":100,"stance":"s"}}],
            "lags":[{{"from":"a","to":"l","min_s":60,"max_s":{max}}}],"wet":[],"objective":{{"makespan":10,"walking":1}}}}"#
        );
        let problem = Problem::from_json(&text).unwrap();
        let schedule = Schedule::new(&problem, &[0, 1], &[0, 160]);
        (problem, schedule)
    }

    #[test]
    fn a_run_at_planned_speed_is_the_plan() {
        let (problem, schedule) = two_panels(160);
        let run = Orders::of(&problem, &schedule).run(&mut [0.0; 2], |d| d);
        assert!(!run.late);
        assert!((run.finish - 260.0).abs() < 1e-9);
    }

    /// Levelling follows directly, so the run is late when its own factor is above 1: the median of the log-normal law.
    #[test]
    fn half_of_the_runs_are_late_without_any_slack() {
        let (problem, schedule) = two_panels(160);
        let lateness = simulate(&problem, &schedule, 20_000, 3);
        assert!((lateness.late_chance - 0.5).abs() < 5.0 * lateness.standard_error, "{lateness:?}");
        // Mean of a log-normal with median 100 and coefficient of variation 0.2 is 100 sqrt(1.04).
        let expected = 60.0 + 200.0 * 1.04_f64.sqrt();
        assert!((lateness.expected_finish_s - expected).abs() < 1.0, "{lateness:?}");
    }

    #[test]
    fn ample_windows_are_never_passed() {
        let (problem, schedule) = two_panels(1000);
        assert_eq!(simulate(&problem, &schedule, 1000, 3).late_chance.to_bits(), 0.0_f64.to_bits());
    }
}
