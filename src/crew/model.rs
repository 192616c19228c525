//! The problem laid out for the search: flat tables, neighbours of every operation next to each other.

use super::problem::Problem;

/// Lists of different lengths in one vector.
#[derive(Debug, Clone)]
pub(crate) struct Lists<T> {
    items: Vec<T>,
    starts: Vec<u32>,
}

impl<T: Clone> Lists<T> {
    fn new(lists: Vec<Vec<T>>) -> Self {
        let mut starts = vec![0];
        let mut items = Vec::new();
        for list in lists {
            items.extend(list);
            starts.push(items.len() as u32);
        }
        Self { items, starts }
    }

    /// The list of one operation.
    #[inline]
    pub(crate) fn of(&self, at: usize) -> &[T] {
        &self.items[self.starts[at] as usize..self.starts[at + 1] as usize]
    }
}

/// `end(to) <= end(from) + max`.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Window {
    pub(crate) from: u32,
    pub(crate) to: u32,
    pub(crate) max: i32,
}

/// Everything the search asks about the problem.
#[derive(Debug, Clone)]
pub(crate) struct Model {
    pub(crate) n: usize,
    pub(crate) workers: usize,
    pub(crate) stances: usize,
    pub(crate) duration: Vec<i32>,
    pub(crate) stance: Vec<u32>,
    walk: Vec<i32>,
    close: Vec<bool>,
    pub(crate) able: Vec<Vec<usize>>,
    /// By operation: (earlier operation, shortest wait).
    pub(crate) before: Lists<(u32, i32)>,
    /// By operation: (later operation, shortest wait).
    pub(crate) after: Lists<(u32, i32)>,
    /// By operation that makes wet: what is blocked.
    pub(crate) blocks: Lists<u32>,
    /// By blocked operation: (makes wet, dry after).
    pub(crate) blocked_by: Lists<(u32, u32)>,
    /// By operation after which a wet panel is dry: what was blocked until then.
    pub(crate) frees: Lists<u32>,
    pub(crate) windows: Vec<Window>,
    /// By operation: the windows it begins or ends.
    pub(crate) windows_of: Lists<Window>,
    /// By operation: longest time after its end at which it can still hold a start: its longest wait or its longest walk.
    pub(crate) influence: Vec<i32>,
    pub(crate) makespan_weight: i64,
    pub(crate) walking_weight: i64,
}

impl Model {
    /// Lays a problem out.
    pub(crate) fn new(problem: &Problem) -> Self {
        let n = problem.len();
        let mut before = vec![Vec::new(); n];
        let mut after = vec![Vec::new(); n];
        let mut windows = Vec::new();
        for lag in &problem.lags {
            before[lag.to].push((lag.from as u32, lag.min));
            after[lag.from].push((lag.to as u32, lag.min));
            if let Some(max) = lag.max {
                windows.push(Window { from: lag.from as u32, to: lag.to as u32, max });
            }
        }
        for &(from, to) in &problem.undirected {
            before[to].push((from as u32, 0));
            after[from].push((to as u32, 0));
        }
        let mut blocks = vec![Vec::new(); n];
        let mut blocked_by = vec![Vec::new(); n];
        let mut frees = vec![Vec::new(); n];
        for wet in &problem.wet {
            blocks[wet.from].push(wet.blocked as u32);
            blocked_by[wet.blocked].push((wet.from as u32, wet.to as u32));
            frees[wet.to].push(wet.blocked as u32);
        }
        let mut windows_of = vec![Vec::new(); n];
        for window in &windows {
            windows_of[window.from as usize].push(*window);
            windows_of[window.to as usize].push(*window);
        }
        let s = problem.stances;
        let influence = (0..n).map(|o| {
            let waits = problem.lags.iter().filter(|l| l.from == o).map(|l| l.min);
            let walks = (0..s).map(|to| problem.walk(problem.operations[o].stance, to));
            waits.chain(walks).max().unwrap_or(0)
        });
        let influence = influence.collect();
        let objective = problem.spec().objective;
        Self {
            n,
            workers: problem.workers,
            stances: s,
            duration: problem.operations.iter().map(|o| o.duration).collect(),
            stance: problem.operations.iter().map(|o| o.stance as u32).collect(),
            walk: (0..s * s).map(|at| problem.walk(at / s, at % s)).collect(),
            close: (0..s * s).map(|at| problem.close(at / s, at % s)).collect(),
            able: problem.operations.iter().map(|o| o.able.clone()).collect(),
            before: Lists::new(before),
            after: Lists::new(after),
            blocks: Lists::new(blocks),
            blocked_by: Lists::new(blocked_by),
            frees: Lists::new(frees),
            windows,
            windows_of: Lists::new(windows_of),
            influence,
            makespan_weight: objective.makespan,
            walking_weight: objective.walking,
        }
    }

    /// Seconds from the stance of one operation to that of another.
    #[inline]
    pub(crate) fn walk(&self, from: usize, to: usize) -> i32 {
        self.walk[self.stance[from] as usize * self.stances + self.stance[to] as usize]
    }

    /// Whether two workers can't do these at once.
    #[inline]
    pub(crate) fn close(&self, a: usize, b: usize) -> bool {
        self.close[self.stance[a] as usize * self.stances + self.stance[b] as usize]
    }

    /// Cost of a finish and a total of walking.
    #[inline]
    pub(crate) fn cost(&self, makespan: i32, walking: i32) -> i64 {
        self.makespan_weight * i64::from(makespan) + self.walking_weight * i64::from(walking)
    }
}
