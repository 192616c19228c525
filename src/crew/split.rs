//! A first plan for several teams: the way round the vehicle cut into stretches, one for each.
//!
//! The parts of the problem ([`super::parts`]) are strung along a nearest-neighbour tour (Rosenkrantz, Stearns and Lewis 1977),
//! the tour is cut into `k` stretches of equal work, and of the workers who may do an operation each stretch takes its own. All
//! teams go round in the same direction, so they keep their distance. Layers follow each other within a stretch.

use super::exact::Prefix;
use super::model::Model;
use super::order::Order;

/// Orders of `teams` teams that break no rule: one that lets whoever can begin first begin, and one that closes each window
/// before the next part is begun, which works for any windows.
pub(crate) fn split(model: &Model, parts: &[Vec<usize>], teams: usize) -> Vec<Order> {
    let stretches = Stretches::new(model, parts, teams);
    let worker = stretches.workers(model);
    let lists = [stretches.by_time(model, &worker), Some(stretches.in_turn(model))];
    lists.into_iter().flatten().filter_map(|list| Order::new(model, list, worker.clone())).collect()
}

/// What each team does, part after part.
struct Stretches<'a> {
    parts: &'a [Vec<usize>],
    depth: Vec<usize>,
    teams: Vec<Vec<usize>>,
}

impl<'a> Stretches<'a> {
    fn new(model: &Model, parts: &'a [Vec<usize>], teams: usize) -> Self {
        let mut stretches: Vec<Vec<usize>> = vec![Vec::new(); teams];
        let whole: i64 = parts.iter().map(|part| work(model, part)).sum();
        let mut done = 0;
        for part in tour(model, parts) {
            let middle = done + work(model, &parts[part]) / 2;
            let team = (middle * teams as i64 / whole.max(1)) as usize;
            stretches[team.min(teams - 1)].push(part);
            done += work(model, &parts[part]);
        }
        let depth = depths(model, parts);
        for stretch in &mut stretches {
            stretch.sort_by_key(|&part| depth[part]); // stable: along the tour within a layer
        }
        Self { parts, depth, teams: stretches }
    }

    /// By operation.
    fn workers(&self, model: &Model) -> Vec<u8> {
        let mut worker = vec![0; model.n];
        for (team, stretch) in self.teams.iter().enumerate() {
            for &o in stretch.iter().flat_map(|&part| &self.parts[part]) {
                let able = &model.able[o];
                worker[o] = able[team * able.len() / self.teams.len()] as u8;
            }
        }
        worker
    }

    /// Parts in turn; one that waits for another stretch's part must come after it, so lower depths go first.
    fn in_turn(&self, model: &Model) -> Vec<u32> {
        let mut list = Vec::with_capacity(model.n);
        let mut next = vec![0; self.teams.len()];
        let mut load = vec![0; self.teams.len()];
        while let Some(team) = (0..self.teams.len())
            .filter(|&t| next[t] < self.teams[t].len())
            .min_by_key(|&t| (self.depth[self.teams[t][next[t]]], load[t], t))
        {
            let part = &self.parts[self.teams[team][next[team]]];
            next[team] += 1;
            load[team] += work(model, part);
            list.extend(sorted(model, part).into_iter().map(|o| o as u32));
        }
        list
    }

    /// Whoever can begin first begins, with the next part of the stretch or with what a begun part still needs.
    fn by_time(&self, model: &Model, worker: &[u8]) -> Option<Vec<u32>> {
        let mut prefix = Prefix::new(model);
        let mut next = vec![0; self.teams.len()];
        let mut begun: Vec<usize> = Vec::new();
        while prefix.list().len() < model.n {
            let fresh = (0..self.teams.len()).filter_map(|t| self.teams[t].get(next[t]).map(|&part| (part, Some(t))));
            // making wet what a begun part has still to be reached over could keep that part waiting past its window
            let waiting = |o: usize| !prefix.placed(o) && begun.iter().any(|&part| self.parts[part].contains(&o));
            let shuts_out = |o: usize| model.blocks.of(o).iter().any(|&b| waiting(b as usize));
            let choices = begun.iter().map(|&part| (part, None)).chain(fresh);
            let able = choices.flat_map(|(part, team)| {
                let ready = self.parts[part].iter().filter(|&&o| prefix.may_start(o) && !shuts_out(o));
                ready.map(move |&o| (o, part, team)).collect::<Vec<_>>()
            });
            // of what is begun, each worker goes on with what was begun first, so that nothing waits past its window
            let mut busy = vec![false; model.workers];
            let first = able
                .filter(|&(o, _, team)| team.is_some() || !std::mem::replace(&mut busy[usize::from(worker[o])], true));
            let (o, part, team) =
                first.min_by_key(|&(o, _, team)| (prefix.earliest(o, usize::from(worker[o])), team.is_some(), o))?;
            if !prefix.place(o, usize::from(worker[o])) {
                return None;
            }
            if let Some(team) = team {
                next[team] += 1;
                begun.push(part);
            }
            begun.retain(|&part| self.parts[part].iter().any(|&o| !prefix.placed(o)));
        }
        Some(prefix.list().to_vec())
    }
}

fn work(model: &Model, part: &[usize]) -> i64 {
    part.iter().map(|&o| i64::from(model.duration[o])).sum()
}

/// Parts along nearest neighbours, by the stance of their first operation.
fn tour(model: &Model, parts: &[Vec<usize>]) -> Vec<usize> {
    let mut left: Vec<usize> = (0..parts.len()).collect();
    let mut tour = Vec::with_capacity(parts.len());
    while !left.is_empty() {
        let away = |part: usize| tour.last().map_or(0, |&last: &usize| model.walk(parts[last][0], parts[part][0]));
        let nearest = (0..left.len()).min_by_key(|&at| (away(left[at]), left[at])).unwrap_or(0);
        tour.push(left.remove(nearest));
    }
    tour
}

/// By part: how many parts must come before it, one after the other. Parts are in an order that keeps all lags.
fn depths(model: &Model, parts: &[Vec<usize>]) -> Vec<usize> {
    let mut part_of = vec![0; model.n];
    for (at, part) in parts.iter().enumerate() {
        for &o in part {
            part_of[o] = at;
        }
    }
    let mut depth = vec![0; parts.len()];
    for (at, part) in parts.iter().enumerate() {
        for &o in part {
            for &(later, _) in model.after.of(o) {
                let there = part_of[later as usize];
                if there != at {
                    depth[there] = depth[there].max(depth[at] + 1);
                }
            }
        }
    }
    depth
}

/// The operations of one part in an order that keeps its lags.
fn sorted(model: &Model, part: &[usize]) -> Vec<usize> {
    let mut sorted: Vec<usize> = Vec::with_capacity(part.len());
    while sorted.len() < part.len() {
        let ready = |&&o: &&usize| {
            !sorted.contains(&o)
                && model
                    .before
                    .of(o)
                    .iter()
                    .all(|&(b, _)| !part.contains(&(b as usize)) || sorted.contains(&(b as usize)))
        };
        match part.iter().find(ready) {
            Some(&o) => sorted.push(o),
            None => break,
        }
    }
    sorted
}
