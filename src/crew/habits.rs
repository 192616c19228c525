//! How easy an order is to keep in one's head: few jumps, one direction round the vehicle.
//!
//! A crew problem has no map, so this goes by its walking table and by the order in which it lists the stances, which is the
//! order round the vehicle.

use super::problem::Problem;
use super::schedule::Schedule;

/// Figures of a plan that say how regular the ways are.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Default)]
pub struct Habits {
    /// Steps of over three times the way to a neighbouring stance (the median over all stances).
    pub jumps: u32,
    /// Steps of over half the longest way between any two stances: to the other side of the vehicle.
    pub side_changes: u32,
    /// Times somebody turns round: the next stance lies the other way along the list, taken as a ring.
    pub turns: u32,
    /// Seconds walked by all.
    pub walking_s: i64,
}

impl Habits {
    /// One number to make small: turning is the least evil, then a jump, then a change of side.
    pub fn score(self) -> u32 {
        self.turns + 2 * self.jumps + 3 * self.side_changes
    }
}

/// Measures a plan.
pub fn habits(problem: &Problem, schedule: &Schedule) -> Habits {
    let scale = Scale::of(problem);
    let mut habits = Habits { walking_s: schedule.walking_s(), ..Habits::default() };
    for worker in 0..problem.workers {
        let way: Vec<usize> = schedule.rows_of(worker).map(|r| problem.operations[r.operation].stance).collect();
        scale.add(problem, &way, &mut habits);
    }
    habits
}

/// A step over three times the way to a neighbouring stance, as [`Habits::jumps`] counts them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct LongWalk {
    /// Index of the worker.
    pub worker: usize,
    /// Index of the operation that it leads away from.
    pub from: usize,
    /// Index of the operation that it leads to.
    pub to: usize,
    /// How long it takes, in seconds.
    pub walk_s: i64,
}

/// The long walks of a plan, by worker, then by time.
pub fn long_walks(problem: &Problem, schedule: &Schedule) -> Vec<LongWalk> {
    let scale = Scale::of(problem);
    let mut found = Vec::new();
    for worker in 0..problem.workers {
        let mine: Vec<usize> = schedule.rows_of(worker).map(|r| r.operation).collect();
        for step in mine.windows(2) {
            let walk = problem.walk(problem.operations[step[0]].stance, problem.operations[step[1]].stance);
            if scale.is_jump(walk) {
                found.push(LongWalk { worker, from: step[0], to: step[1], walk_s: i64::from(walk) });
            }
        }
    }
    found
}

/// What counts as far in a problem.
pub(crate) struct Scale {
    neighbour: i32,
    longest: i32,
}

impl Scale {
    pub(crate) fn of(problem: &Problem) -> Self {
        let n = problem.stances;
        let nearest = |s: usize| (0..n).filter(|&t| t != s).map(|t| problem.walk(s, t)).min().unwrap_or(0);
        let mut nearest: Vec<i32> = (0..n).map(nearest).collect();
        nearest.sort_unstable();
        let longest = (0..n * n).map(|at| problem.walk(at / n, at % n)).max().unwrap_or(0);
        Self { neighbour: nearest[n / 2], longest }
    }

    fn is_jump(&self, walk: i32) -> bool {
        walk > 3 * self.neighbour
    }

    /// Adds the way of one worker, given by stances.
    pub(crate) fn add(&self, problem: &Problem, way: &[usize], habits: &mut Habits) {
        let n = problem.stances;
        let mut last = None;
        for step in way.windows(2) {
            let (from, to) = (step[0], step[1]);
            if from == to {
                continue;
            }
            let walk = problem.walk(from, to);
            habits.jumps += u32::from(self.is_jump(walk));
            habits.side_changes += u32::from(2 * walk > self.longest);
            let forwards = (to + n - from) % n <= n / 2;
            habits.turns += u32::from(last.is_some_and(|before| before != forwards));
            last = Some(forwards);
        }
    }
}
