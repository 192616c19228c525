//! The least that must be walked to visit a set of stances.
//!
//! The ways of `k` people who together visit all stances of a set are a graph with at most `k` parts, so they are no shorter
//! than a minimum spanning forest with `k` trees (Kruskal 1956): a minimum spanning tree without its `k - 1` longest edges.

use crate::crew::problem::Problem;

/// Edges of a minimum spanning tree over the given stances, ascending; one less than stances (Prim 1957).
pub(super) fn spanning_tree(problem: &Problem, stances: &[usize]) -> Vec<i64> {
    let step = |a: usize, b: usize| i64::from(problem.walk(a, b).min(problem.walk(b, a)));
    let mut edges = Vec::with_capacity(stances.len());
    let Some((&first, rest)) = stances.split_first() else { return edges };
    let mut away: Vec<(i64, usize)> = rest.iter().map(|&s| (step(first, s), s)).collect();
    while let Some(at) = (0..away.len()).min_by_key(|&i| away[i]) {
        let (edge, stance) = away.swap_remove(at);
        edges.push(edge);
        for (distance, s) in &mut away {
            *distance = (*distance).min(step(stance, *s));
        }
    }
    edges.sort_unstable();
    edges
}

/// Least walking of `people` together to visit all the stances.
pub(super) fn forest(tree: &[i64], people: i64) -> i64 {
    let kept = tree.len().saturating_sub(people as usize - 1);
    tree[..kept].iter().sum()
}
