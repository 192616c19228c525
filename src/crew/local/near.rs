//! Which operations lie near each other, and which belong together.

use crate::crew::consts::NEAR_OPERATIONS;
use crate::crew::model::Model;

/// Neighbourhood tables of a problem; made once.
#[derive(Debug)]
pub(crate) struct Near {
    /// By operation: others that one worker can do as well, nearest first.
    pub(crate) operations: Vec<Vec<u32>>,
    /// Operations tied together by windows: one layer of one panel.
    pub(crate) layers: Groups,
    /// Operations tied together by any lags: all layers of one panel. None when that is the same.
    pub(crate) panels: Option<Groups>,
    /// Operations more than one worker may do.
    pub(crate) shared: Vec<u32>,
}

/// A partition of the operations.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Groups {
    /// Each in an order its lags allow.
    pub(crate) members: Vec<Vec<u32>>,
    /// By operation: its group.
    pub(crate) of: Vec<u32>,
}

impl Near {
    /// Measures all pairs.
    pub(crate) fn new(model: &Model) -> Self {
        let n = model.n;
        let operations = (0..n)
            .map(|x| {
                let mut others: Vec<u32> = (0..n)
                    .filter(|&y| y != x && model.able[y].iter().any(|w| model.able[x].contains(w)))
                    .map(|y| y as u32)
                    .collect();
                others.sort_by_key(|&y| (model.walk(x, y as usize), y));
                others.truncate(NEAR_OPERATIONS);
                others
            })
            .collect();
        let layers = Groups::new(model, model.windows.iter().map(|w| (w.from as usize, w.to as usize)));
        let lags = (0..n).flat_map(|o| model.after.of(o).iter().map(move |&(later, _)| (o, later as usize)));
        let panels = Some(Groups::new(model, lags)).filter(|panels| *panels != layers);
        let shared = (0..n).filter(|&o| model.able[o].len() > 1).map(|o| o as u32).collect();
        Self { operations, layers, panels, shared }
    }
}

impl Groups {
    /// What the links connect.
    fn new(model: &Model, links: impl Iterator<Item = (usize, usize)>) -> Self {
        let mut root: Vec<usize> = (0..model.n).collect();
        for (a, b) in links {
            let (a, b) = (find(&mut root, a), find(&mut root, b));
            root[a.max(b)] = a.min(b);
        }
        let mut depth = vec![0_u32; model.n];
        let mut open: Vec<usize> = (0..model.n).filter(|&o| model.before.of(o).is_empty()).collect();
        let mut waits: Vec<usize> = (0..model.n).map(|o| model.before.of(o).len()).collect();
        while let Some(o) = open.pop() {
            for &(later, _) in model.after.of(o) {
                let later = later as usize;
                depth[later] = depth[later].max(depth[o] + 1);
                waits[later] -= 1;
                if waits[later] == 0 {
                    open.push(later);
                }
            }
        }
        let mut groups: Vec<Vec<u32>> = vec![Vec::new(); model.n];
        for o in 0..model.n {
            groups[find(&mut root, o)].push(o as u32);
        }
        groups.retain(|g| !g.is_empty());
        let mut of = vec![0; model.n];
        for (at, group) in groups.iter_mut().enumerate() {
            group.sort_by_key(|&o| (depth[o as usize], o));
            for &o in group.iter() {
                of[o as usize] = at as u32;
            }
        }
        Self { members: groups, of }
    }
}

/// The representative of a set, halving the way to it (union-find).
fn find(root: &mut [usize], mut x: usize) -> usize {
    while root[x] != x {
        root[x] = root[root[x]];
        x = root[x];
    }
    x
}
