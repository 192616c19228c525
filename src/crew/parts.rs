//! Parts of a problem that can be done one after the other, and why that decides whether there is a plan at all.
//!
//! Link two operations both ways when a window or a wet period holds them together, and one way along every other lag. The
//! strongly connected parts of that graph (Tarjan 1972) can be put in an order that keeps all lags between them. Doing part
//! after part keeps every rule between parts: no wet period reaches over another part, and nobody is in anybody's way. So a
//! problem has a plan exactly when each of its parts has one by itself, and a conflict always lies inside one part, which is
//! nearly always one layer of one panel.

use super::model::Model;

/// The parts, in an order that keeps all lags between them; operations of each part ascending.
pub(crate) fn parts(model: &Model) -> Vec<Vec<usize>> {
    let n = model.n;
    let mut links: Vec<Vec<usize>> =
        (0..n).map(|o| model.after.of(o).iter().map(|&(to, _)| to as usize).collect()).collect();
    for window in &model.windows {
        links[window.to as usize].push(window.from as usize);
    }
    for o in 0..n {
        for &(wets, dries) in model.blocked_by.of(o) {
            links[wets as usize].push(dries as usize);
            links[dries as usize].push(wets as usize);
        }
    }
    let mut walk = Walk {
        links: &links,
        number: vec![None; n],
        low: vec![0; n],
        open: Vec::new(),
        is_open: vec![false; n],
        count: 0,
        parts: Vec::new(),
    };
    for o in 0..n {
        if walk.number[o].is_none() {
            walk.from(o);
        }
    }
    walk.parts.reverse(); // Tarjan's algorithm finishes what comes last first
    walk.parts
}

struct Walk<'a> {
    links: &'a [Vec<usize>],
    number: Vec<Option<usize>>,
    low: Vec<usize>,
    open: Vec<usize>,
    is_open: Vec<bool>,
    count: usize,
    parts: Vec<Vec<usize>>,
}

impl Walk<'_> {
    /// Depth first without recursion, so that a long chain of lags can't exhaust the stack.
    fn from(&mut self, root: usize) {
        let mut path = vec![(root, 0)];
        self.enter(root);
        while let Some((at, next)) = path.last_mut() {
            let at = *at;
            if let Some(&to) = self.links[at].get(*next) {
                *next += 1;
                match self.number[to] {
                    None => {
                        self.enter(to);
                        path.push((to, 0));
                    }
                    Some(number) if self.is_open[to] => self.low[at] = self.low[at].min(number),
                    Some(_) => {}
                }
            } else {
                path.pop();
                if let Some(&(above, _)) = path.last() {
                    self.low[above] = self.low[above].min(self.low[at]);
                }
                if self.number[at] == Some(self.low[at]) {
                    self.close(at);
                }
            }
        }
    }

    fn enter(&mut self, o: usize) {
        self.number[o] = Some(self.count);
        self.low[o] = self.count;
        self.count += 1;
        self.open.push(o);
        self.is_open[o] = true;
    }

    fn close(&mut self, root: usize) {
        let mut part = Vec::new();
        while let Some(o) = self.open.pop() {
            self.is_open[o] = false;
            part.push(o);
            if o == root {
                break;
            }
        }
        part.sort_unstable();
        self.parts.push(part);
    }
}
