//! What people ask of the order, as rules of the crew problem.
//!
//! All choices are about applying; levelling follows through its window. A choice that the work itself contradicts, because one
//! leans over one panel to reach another (top before bottom), is kept as far as it can be: rules go in one by one, and one that
//! would close a circle is left out and told. So a problem with choices never waits for itself.

use super::coating::{coated_panels, operation_id};
use crate::crew::{LagSpec, ProblemSpec};
use crate::job::{Experience, Job, Member, Role};
use crate::say;
use crate::units::listed;
use crate::vehicle::{Naming, Panel, PanelId, Side, Surface, Template};
use std::collections::{HashMap, HashSet};

/// Which panels are applied before which: those that the work asks for and those that were chosen.
struct Before<'a> {
    template: &'a Template,
    /// Indices into the template.
    coated: Vec<usize>,
    /// Row by row over `coated`: whether the first is begun before the second, directly or by way of others.
    known: Vec<bool>,
    /// What the choices add: indices into `coated`.
    added: Vec<(usize, usize)>,
    /// Panels that could not come where they were asked to, in the order found, each once; indices into `coated`.
    left: Vec<usize>,
}

impl<'a> Before<'a> {
    /// What the work asks for: a panel is done before those that one leans over to reach it.
    fn of_work(job: &Job, template: &'a Template) -> Self {
        let coated = coated_panels(job, template);
        let n = coated.len();
        let mut before = Self { template, coated, known: vec![false; n * n], added: Vec::new(), left: Vec::new() };
        for high in 0..n {
            let over = &before.panel(high).leans_over;
            for under in 0..n {
                if over.contains(&before.panel(under).id) {
                    before.learn(high, under);
                }
            }
        }
        before
    }

    fn panel(&self, at: usize) -> &'a Panel {
        &self.template.panels[self.coated[at]]
    }

    fn is_before(&self, first: usize, second: usize) -> bool {
        self.known[first * self.coated.len() + second]
    }

    /// Takes a pair in, with all that follows from it.
    fn learn(&mut self, first: usize, second: usize) {
        let n = self.coated.len();
        for a in (0..n).filter(|&a| a == first || self.known[a * n + first]).collect::<Vec<_>>() {
            for b in (0..n).filter(|&b| b == second || self.known[second * n + b]).collect::<Vec<_>>() {
                self.known[a * n + b] = true;
            }
        }
    }

    /// Asks that one panel is applied before another.
    fn ask(&mut self, first: usize, second: usize) {
        if first == second || self.is_before(first, second) {
            return;
        }
        if self.is_before(second, first) {
            if !self.left.contains(&first) {
                self.left.push(first);
            }
            return;
        }
        self.learn(first, second);
        self.added.push((first, second));
    }

    /// Asks for the chosen first panels: each before the next, the last before all the others.
    fn ask_first(&mut self, job: &Job) {
        let n = self.coated.len();
        let first: Vec<usize> =
            job.choices.first.iter().filter_map(|id| (0..n).find(|&at| self.panel(at).id == *id)).collect();
        for (place, &at) in first.iter().enumerate() {
            let mut later: Vec<usize> = first[place + 1..].to_vec();
            later.extend((0..n).filter(|other| !first.contains(other)));
            for other in later {
                self.ask(at, other);
            }
        }
    }

    /// Whether a lamp or a window must come before some paint, since one leans over that paint to reach it.
    fn is_over_paint(&self, at: usize) -> bool {
        is_lamp_or_glass(self.panel(at))
            && (0..self.coated.len()).any(|p| is_paint(self.panel(p)) && self.is_before(at, p))
    }

    /// What waits for the paint; those over paint do not.
    fn waits_for_paint(&self) -> Vec<bool> {
        (0..self.coated.len()).map(|at| is_lamp_or_glass(self.panel(at)) && !self.is_over_paint(at)).collect()
    }

    fn ask_sides(&mut self, side: Side, groups: &[bool]) {
        let n = self.coated.len();
        for first in (0..n).filter(|&at| self.panel(at).side == side).collect::<Vec<_>>() {
            for second in 0..n {
                if self.panel(second).side == side.opposite() && groups[first] == groups[second] {
                    self.ask(first, second);
                }
            }
        }
    }

    /// Everything that the job chose.
    fn with_choices(mut self, job: &Job) -> Self {
        let choices = &job.choices;
        self.ask_first(job);
        let n = self.coated.len();
        let waits = if choices.paint_first { self.waits_for_paint() } else { vec![false; n] };
        for paint in (0..n).filter(|&at| is_paint(self.panel(at))).collect::<Vec<_>>() {
            for other in (0..n).filter(|&at| waits[at]) {
                self.ask(paint, other);
            }
        }
        if let Some(side) = choices.side.filter(|s| *s != Side::Centre) {
            self.ask_sides(side, &waits);
        }
        self
    }
}

fn is_paint(panel: &Panel) -> bool {
    matches!(panel.surface, Surface::Paint)
}

fn is_lamp_or_glass(panel: &Panel) -> bool {
    matches!(panel.surface, Surface::Lamp | Surface::Glass)
}

/// Adds what the job asks of the order to its crew problem.
pub(super) fn ask(problem: &mut ProblemSpec, job: &Job, template: &Template) {
    if job.choices.is_empty() {
        return;
    }
    let before = Before::of_work(job, template).with_choices(job);
    for layer in 1..=job.product.layers.max(1) {
        let operation = |at: usize| operation_id(&before.panel(at).id, Role::Apply, layer);
        problem.lags.extend(before.added.iter().map(|&(a, b)| lag(operation(a), operation(b))));
    }
    beginnings(problem, job);
}

fn lag(from: String, to: String) -> LagSpec {
    LagSpec { from, to, min_s: 0, max_s: None }
}

/// What somebody begins with: applying where they apply, else levelling.
fn opening(job: &Job, member: &Member) -> Option<String> {
    let panel = job.choices.beginning_of(&member.name)?;
    let role = if member.roles.contains(&Role::Apply) { Role::Apply } else { Role::Level };
    Some(operation_id(panel, role, 1))
}

/// Who begins where: that operation is theirs alone, and nothing else of its kind is done before it.
fn beginnings(problem: &mut ProblemSpec, job: &Job) {
    let known = |id: &String| problem.operations.iter().any(|o| o.id == *id);
    let mut openings: Vec<(String, String)> = Vec::new();
    for member in &job.crew {
        if let Some(id) = opening(job, member).filter(known)
            && openings.iter().all(|(other, _)| *other != id)
        {
            openings.push((id, member.name.clone()));
        }
    }
    let role = |problem: &ProblemSpec, id: &str| {
        problem.operations.iter().find(|o| o.id == id).map(|o| o.role.clone()).unwrap_or_default()
    };
    for (id, name) in &openings {
        if let Some(operation) = problem.operations.iter_mut().find(|o| o.id == *id) {
            operation.worker = Some(name.clone());
        }
        let kind = role(problem, id);
        let others: Vec<String> = problem
            .operations
            .iter()
            .filter(|o| o.role == kind && openings.iter().all(|(opening, _)| *opening != o.id))
            .map(|o| o.id.clone())
            .collect();
        let sooner = leading_to(problem, id);
        problem.lags.extend(others.into_iter().filter(|o| !sooner.contains(o)).map(|other| lag(id.clone(), other)));
    }
}

/// The operations that have to be over before one begins, directly or by way of others.
fn leading_to(problem: &ProblemSpec, operation: &str) -> HashSet<String> {
    let mut before: HashMap<&str, Vec<&str>> = HashMap::new();
    for lag in &problem.lags {
        before.entry(&lag.to).or_default().push(&lag.from);
    }
    let mut reached = HashSet::new();
    let mut open = vec![operation];
    while let Some(at) = open.pop() {
        for from in before.get(at).into_iter().flatten() {
            if reached.insert((*from).to_owned()) {
                open.push(from);
            }
        }
    }
    reached
}

/// What of the choices can't be kept, and why, as sentences.
pub fn choice_notes(job: &Job, template: &Template, naming: Naming) -> Vec<String> {
    let mut notes = Vec::new();
    let choices = &job.choices;
    if choices.is_empty() {
        return notes;
    }
    let before = Before::of_work(job, template).with_choices(job);
    let name = |at: usize| before.panel(at).name(naming);
    for &at in &before.left {
        let above: Vec<String> = (0..before.coated.len())
            .filter(|&high| before.panel(high).leans_over.contains(&before.panel(at).id))
            .map(name)
            .collect();
        notes.push(match above.as_slice() {
            [] => say!("insight-not-early-others", panel = name(at)),
            above => say!("insight-not-early-lean", panel = name(at), above = listed(above)),
        });
    }
    if choices.paint_first {
        let over: Vec<String> = (0..before.coated.len()).filter(|&at| before.is_over_paint(at)).map(name).collect();
        if !over.is_empty() {
            notes.push(say!("insight-not-after-paint", panels = listed(&over)));
        }
    }
    let coated = |id: &PanelId| before.coated.iter().any(|&i| template.panels[i].id == *id);
    for (id, whose) in
        choices.begins.iter().map(|b| (&b.panel, b.member.as_str())).chain(choices.first.iter().map(|id| (id, "")))
    {
        if let Some(panel) = template.panel(id).filter(|_| !coated(id)) {
            let panel = panel.name(naming);
            notes.push(match whose {
                "" => say!("insight-not-coated", panel = panel),
                person => say!("insight-not-coated-begins", panel = panel, person = person),
            });
        }
    }
    for (place, begins) in choices.begins.iter().enumerate() {
        let role = |name: &str| job.crew.iter().find(|m| m.name == name).and_then(|m| opening(job, m));
        let same = |other: &&crate::job::Beginning| role(&other.member) == role(&begins.member);
        if let Some(other) = choices.begins[..place].iter().find(same) {
            notes.push(say!("insight-begin-same", one = other.member.as_str(), other = begins.member.as_str()));
        }
    }
    notes
}

/// Who does what when it goes by experience: levelling is where mistakes stay, so the most experienced level and the least apply
/// (common practice, no source). Of three, the one in the middle helps with both. Equals keep the order of the crew.
///
/// The answer has the roles of each member, in the order of the crew.
pub fn roles_by_experience(crew: &[Member]) -> Vec<Vec<Role>> {
    let both = || vec![Role::Apply, Role::Level];
    if crew.len() < 2 {
        return crew.iter().map(|_| both()).collect();
    }
    let mut ranked: Vec<usize> = (0..crew.len()).collect();
    let rank = |at: &usize| std::cmp::Reverse(crew[*at].experience);
    ranked.sort_by_key(rank);
    let level = crew.len() / 2;
    let helps = crew.len() % 2;
    let mut roles = vec![vec![Role::Apply]; crew.len()];
    for (place, &at) in ranked.iter().enumerate() {
        if place < level {
            roles[at] = vec![Role::Level];
        } else if place < level + helps {
            roles[at] = both();
        }
    }
    roles
}

/// What to say of a crew in which somebody who learns levels while somebody more experienced only applies; none where all is well.
pub fn levelling_note(crew: &[Member]) -> Option<String> {
    let levels = |m: &&Member| m.roles.contains(&Role::Level);
    let learner = crew.iter().filter(levels).find(|m| m.experience == Experience::Learner)?;
    let better = crew.iter().find(|m| m.experience > learner.experience && !levels(m))?;
    Some(say!("insight-learner-levels", learner = learner.name.as_str(), other = better.name.as_str()))
}
