//! Among plans of nearly equal cost, one that is easier to keep in one's head.

use super::habits::{Habits, Scale, habits};
use super::local::Annealer;
use super::model::Model;
use super::order::Order;
use super::problem::Problem;
use super::random::Random;
use super::schedule::Schedule;

/// Looks for a plan with a lower [`Habits::score`] that costs no more than `most`; tries `nodes` changes of the given valid plan.
/// The same for the same seed. Never returns a plan with a worse score.
pub fn tidy(problem: &Problem, schedule: &Schedule, most: i64, nodes: u64, seed: u64) -> Schedule {
    let model = Model::new(problem);
    let scale = Scale::of(problem);
    let Some(order) = Order::of(&model, schedule) else { return schedule.clone() };
    let mut best = (habits(problem, schedule).score(), schedule.cost());
    let mut tidiest = schedule.clone();
    let mut annealer = Annealer::new(&model, order, Random::new(seed, 0x71D7));
    let mut here = score(problem, &scale, &annealer.order);
    for _ in 0..nodes {
        annealer.attempt(most.max(schedule.cost()), |order| {
            let there = score(problem, &scale, order);
            let keep = there <= here;
            if keep {
                here = there;
            }
            keep
        });
        if (here, annealer.order.cost()) < best {
            best = (here, annealer.order.cost());
            tidiest = annealer.order.schedule(&model, problem);
        }
    }
    tidiest
}

fn score(problem: &Problem, scale: &Scale, order: &Order) -> u32 {
    let mut ways = vec![Vec::new(); problem.workers];
    for &o in &order.list {
        ways[usize::from(order.worker[o as usize])].push(problem.operations[o as usize].stance);
    }
    let mut habits = Habits::default();
    for way in &ways {
        scale.add(problem, way, &mut habits);
    }
    habits.score()
}
