//! Whether a plan is valid, by playing it second by second. Slow, plain, and shares nothing with the checker.

#![expect(clippy::unwrap_used, reason = "plans here name only what the problem has")]

use lapwright::crew::{PlanFile, ProblemSpec};

/// True when every rule is kept at every second.
pub(crate) fn plays(spec: &ProblemSpec, plan: &PlanFile) -> bool {
    let n = spec.operations.len();
    let mut start = vec![None; n];
    let mut worker = vec![0; n];
    for row in &plan.operations {
        let Some(o) = spec.operations.iter().position(|x| x.id == row.id) else { return false };
        let Some(w) = spec.workers.iter().position(|x| x.id == row.worker) else { return false };
        if start[o].is_some() || row.start_s < 0 || !spec.workers[w].roles.contains(&spec.operations[o].role) {
            return false;
        }
        if spec.operations[o].worker.as_ref().is_some_and(|only| *only != row.worker) {
            return false;
        }
        start[o] = Some(row.start_s);
        worker[o] = w;
    }
    let Some(start) = start.into_iter().collect::<Option<Vec<i64>>>() else { return false };
    let end: Vec<i64> = (0..n).map(|o| start[o] + spec.operations[o].duration_s).collect();
    let find = |id: &str| spec.operations.iter().position(|o| o.id == id).unwrap();
    let stance = |o: usize| spec.stances.iter().position(|s| *s == spec.operations[o].stance).unwrap();
    let last = *end.iter().max().unwrap();
    let runs = |o: usize, second: i64| start[o] <= second && second < end[o];
    // where each worker is: at a stance, or so many seconds into a walk
    let mut at: Vec<Option<(usize, i64)>> = vec![None; spec.workers.len()];
    for second in 0..last {
        for (w, here) in at.iter_mut().enumerate() {
            let now: Vec<usize> = (0..n).filter(|&o| worker[o] == w && runs(o, second)).collect();
            match now.as_slice() {
                [] => {
                    if let Some((_, away)) = here {
                        *away += 1;
                    }
                }
                [o] => {
                    let reached = |(from, away): (usize, i64)| spec.walk_s[from][stance(*o)] <= away;
                    if start[*o] == second && !here.is_none_or(reached) {
                        return false;
                    }
                    *here = Some((stance(*o), 0));
                }
                _ => return false,
            }
        }
        for a in 0..n {
            for b in 0..a {
                let (sa, sb) = (&spec.operations[a].stance, &spec.operations[b].stance);
                let pair = |[x, y]: &[String; 2]| (x == sa && y == sb) || (x == sb && y == sa);
                let near = sa == sb || spec.close.iter().any(pair);
                if near && worker[a] != worker[b] && runs(a, second) && runs(b, second) {
                    return false;
                }
            }
        }
        for wet in &spec.wet {
            let is_wet = start[find(&wet.from)] <= second && second < end[find(&wet.to)];
            if is_wet && wet.blocks.iter().any(|b| runs(find(b), second)) {
                return false;
            }
        }
    }
    spec.lags.iter().all(|lag| {
        let (from, to) = (find(&lag.from), find(&lag.to));
        start[to] >= end[from] + lag.min_s && lag.max_s.is_none_or(|max| end[to] <= end[from] + max)
    })
}
