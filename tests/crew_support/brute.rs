//! The optimum by trying everything: every assignment, every order of all operations. Shares nothing with the planner.
//!
//! An order fixes what goes before what; the times are then the longest ways in a graph of differences, by Bellman and Ford.

#![expect(clippy::unwrap_used, reason = "a random problem that names nothing is a mistake of the test")]

use lapwright::crew::ProblemSpec;

/// Least cost of any valid plan; none when there is no plan.
pub(crate) fn brute_force(spec: &ProblemSpec) -> Option<i64> {
    let find = |id: &str| spec.operations.iter().position(|o| o.id == id).unwrap();
    let stance_of = |name: &str| spec.stances.iter().position(|s| s == name).unwrap();
    let stance: Vec<usize> = spec.operations.iter().map(|o| stance_of(&o.stance)).collect();
    let close = |a: usize, b: usize| {
        let (a, b) = (&spec.stances[stance[a]], &spec.stances[stance[b]]);
        a == b || spec.close.iter().any(|[x, y]| (x == a && y == b) || (x == b && y == a))
    };
    let n = spec.operations.len();
    let facts = Facts {
        spec,
        duration: spec.operations.iter().map(|o| o.duration_s).collect(),
        lags: spec.lags.iter().map(|l| (find(&l.from), find(&l.to), l.min_s, l.max_s)).collect(),
        wet: spec
            .wet
            .iter()
            .flat_map(|w| w.blocks.iter().map(|b| (find(&w.from), find(&w.to), find(b))).collect::<Vec<_>>())
            .collect(),
        close: (0..n).map(|a| (0..n).map(|b| close(a, b)).collect()).collect(),
        walk: (0..n).map(|a| (0..n).map(|b| spec.walk_s[stance[a]][stance[b]]).collect()).collect(),
    };
    let mut best = None;
    let mut worker = vec![0; n];
    facts.assign(0, &mut worker, &mut best);
    best
}

struct Facts<'a> {
    spec: &'a ProblemSpec,
    duration: Vec<i64>,
    lags: Vec<(usize, usize, i64, Option<i64>)>,
    wet: Vec<(usize, usize, usize)>,
    close: Vec<Vec<bool>>,
    walk: Vec<Vec<i64>>,
}

impl Facts<'_> {
    fn assign(&self, o: usize, worker: &mut Vec<usize>, best: &mut Option<i64>) {
        if o == worker.len() {
            self.order(&mut Vec::new(), worker, best);
            return;
        }
        for (w, who) in self.spec.workers.iter().enumerate() {
            let operation = &self.spec.operations[o];
            let mine = operation.worker.as_ref().is_none_or(|only| *only == who.id);
            if mine && who.roles.contains(&operation.role) {
                worker[o] = w;
                self.assign(o + 1, worker, best);
            }
        }
    }

    fn order(&self, order: &mut Vec<usize>, worker: &[usize], best: &mut Option<i64>) {
        if order.len() == worker.len() {
            if let Some(cost) = self.cost(order, worker) {
                *best = Some(best.map_or(cost, |b: i64| b.min(cost)));
            }
            return;
        }
        for o in 0..worker.len() {
            let waits = self.lags.iter().any(|&(from, to, ..)| to == o && !order.contains(&from));
            if !order.contains(&o) && !waits {
                order.push(o);
                self.order(order, worker, best);
                order.pop();
            }
        }
    }

    /// Cost of the earliest times that keep an order; none when there are none.
    fn cost(&self, order: &[usize], worker: &[usize]) -> Option<i64> {
        let n = order.len();
        let mut place = vec![0; n];
        for (p, &o) in order.iter().enumerate() {
            place[o] = p;
        }
        let d = &self.duration;
        let mut arcs = Vec::new(); // start(to) >= start(from) + seconds
        for (p, &a) in order.iter().enumerate() {
            for &b in &order[p + 1..] {
                if worker[a] == worker[b] {
                    arcs.push((a, b, d[a] + self.walk[a][b]));
                } else if self.close[a][b] {
                    arcs.push((a, b, d[a]));
                }
            }
        }
        for &(from, to, min, max) in &self.lags {
            arcs.push((from, to, d[from] + min));
            if let Some(max) = max {
                arcs.push((to, from, d[to] - d[from] - max));
            }
        }
        for &(from, to, blocked) in &self.wet {
            if place[blocked] < place[from] {
                arcs.push((blocked, from, d[blocked]));
            } else if place[blocked] > place[to] {
                arcs.push((to, blocked, d[to]));
            } else {
                return None;
            }
        }
        let mut start = vec![0; n];
        for round in 0..=n {
            let mut changed = false;
            for &(a, b, seconds) in &arcs {
                if start[a] + seconds > start[b] {
                    start[b] = start[a] + seconds;
                    changed = true;
                }
            }
            if !changed {
                break;
            }
            if round == n {
                return None;
            }
        }
        let makespan = (0..n).map(|o| start[o] + d[o]).max().unwrap_or(0);
        let mut walking = 0;
        for w in 0..self.spec.workers.len() {
            let way: Vec<usize> = order.iter().copied().filter(|&o| worker[o] == w).collect();
            walking += way.windows(2).map(|p| self.walk[p[0]][p[1]]).sum::<i64>();
        }
        Some(self.spec.objective.makespan * makespan + self.spec.objective.walking * walking)
    }
}
