//! What every crew problem of a vehicle shares: the people, the places on the floor and the ways between them.

use crate::crew::{FORMAT, Habits, Lateness, ObjectiveSpec, PlanFile, ProblemSpec, WorkerSpec};
use crate::job::Job;
use crate::vehicle::Template;
use std::sync::Arc;

/// How fast somebody walks round a vehicle with their hands full, in m/s: our own estimate.
const WALK_M_PER_S: f64 = 0.9;
/// Two workers keep at least this far apart, in mm: our own estimate, about an arm's length and a half.
const APART_MM: f64 = 1200.0;
/// A second of the whole crew's time weighs as much as this many seconds walked by one person.
const OBJECTIVE: ObjectiveSpec = ObjectiveSpec { makespan: 10, walking: 1 };
/// Time to lay a lead round to the other side of the vehicle and clear of the other worker, in s: our own estimate. Even.
pub const LEAD_S: i64 = 30;
/// Stances nearer to the centreline than this belong to neither side, in mm.
const MIDDLE_MM: f32 = 200.0;

/// Whether leads have to be laid round when somebody changes the side of the vehicle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Leads {
    /// No machine on a lead.
    None,
    /// Every change of side costs [`LEAD_S`] on top of the way.
    Laid,
}

/// An order for the crew with the problem it solves.
#[derive(Debug, Clone)]
pub struct CrewOrder {
    /// What was asked.
    pub problem: Arc<ProblemSpec>,
    /// The answer.
    pub plan: Arc<PlanFile>,
    /// How often a day goes wrong with it; none while it is still being improved, and where nothing has a window.
    pub lateness: Option<Lateness>,
    /// How easy it is to keep in one's head; none while it is still being improved.
    pub habits: Option<Habits>,
    /// For each operation of the problem, why it comes where it does, with the names of the problem; empty while it is still
    /// being improved.
    pub reasons: Arc<[String]>,
    /// A faster plan that was given up because it takes somebody over an action value and this one does not.
    pub faster: Option<Arc<PlanFile>>,
    /// An order found with nothing asked of it, where something was asked.
    pub free: Option<Arc<PlanFile>>,
}

/// People without roles, stances in the order of a walk round the vehicle, ways and close places; no operations.
///
/// Leads: with s = 1 for a stance on the left, −1 on the right and 0 at the two ends, a way between two stances costs
/// |s − s'|/2 times [`LEAD_S`] more. That is a distance of its own, so the triangle inequality still holds. Where the sockets are
/// and how two leads cross is not modelled; dear changes of side keep everybody to a side where that costs nothing else.
pub(super) fn floor_problem(job: &Job, template: &Template, leads: Leads) -> ProblemSpec {
    let stance = |i: usize| template.stances[i].id.clone();
    let side = |i: usize| match template.stances[i].at.y {
        y if y > MIDDLE_MM => 1,
        y if y < -MIDDLE_MM => -1,
        _ => 0_i64,
    };
    let lead = |a: usize, b: usize| if leads == Leads::Laid { (side(a) - side(b)).abs() * LEAD_S / 2 } else { 0 };
    let round = way_round(template);
    let walks = template.walk_seconds(WALK_M_PER_S);
    ProblemSpec {
        format: FORMAT.to_owned(),
        name: job.name.clone(),
        workers: job.crew.iter().map(|m| WorkerSpec { id: m.name.clone(), roles: Vec::new() }).collect(),
        stances: round.iter().copied().map(stance).collect(),
        walk_s: round.iter().map(|&a| round.iter().map(|&b| walks[a][b] + lead(a, b)).collect()).collect(),
        close: template.close_pairs(APART_MM).into_iter().map(|(a, b)| [stance(a), stance(b)]).collect(),
        operations: Vec::new(),
        lags: Vec::new(),
        wet: Vec::new(),
        objective: OBJECTIVE,
    }
}

/// The stances in the order of a walk round the vehicle, as the planner takes them.
fn way_round(template: &Template) -> Vec<usize> {
    let middle = template.length.mm() as f32 / 2.0;
    let angle = |i: &usize| {
        let at = template.stances[*i].at;
        at.y.atan2(at.x - middle)
    };
    let mut round: Vec<usize> = (0..template.stances.len()).collect();
    round.sort_by(|a, b| angle(a).total_cmp(&angle(b)));
    round
}
