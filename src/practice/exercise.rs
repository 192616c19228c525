//! One exercise: what is given, and the planner's best answer to it.

use super::laid::{Laid, Step};
use super::lesson::{Lesson, Part};
use super::surprise;
use crate::coat::Air;
use crate::crew::{
    Control, Limits, OperationSpec, Outcome, PlanFile, Problem, ProblemSpec, Random, Schedule, is_of_the_present, solve,
};
use crate::insight::{Insight, crew_problem, is_coated};
use crate::job::{Job, Member, OrderChoices, PanelRecord, Role};
use crate::say;
use crate::units::Seconds;
use crate::vehicle::{PanelId, Side, Template};
use std::collections::BTreeMap;
use std::sync::Arc;

/// What an exercise is made from.
#[derive(Debug, Clone, PartialEq)]
pub struct Setup {
    /// What is practised.
    pub lesson: Lesson,
    /// For whom the learner lays; of no meaning where somebody works alone.
    pub part: Part,
    /// The air.
    pub air: Air,
    /// Decides what the lesson leaves open: the side, who leaves, when.
    pub seed: u64,
}

/// An exercise, ready to be laid.
#[derive(Debug, Clone)]
pub struct Exercise {
    /// What it was made from.
    pub setup: Setup,
    /// A job with nothing but vehicle, crew, product and air.
    pub job: Arc<Job>,
    /// The vehicle.
    pub template: Arc<Template>,
    /// What follows from the job.
    pub insight: Insight,
    /// What is to be done, as a crew problem. After a surprise, the rest of one.
    pub spec: Arc<ProblemSpec>,
    pub(super) problem: Problem,
    /// The best order the planner found, and its proven lower bound.
    pub best: PlanFile,
    pub(super) best_schedule: Schedule,
    pub(super) given: Vec<Vec<Step>>,
    /// Panels that were done before it begins, and those that are wet then: indices into the template.
    pub done: Vec<usize>,
    /// As `done`.
    pub wet: Vec<usize>,
    /// What the learner has to know, as sentences.
    pub news: Vec<String>,
}

/// Why there is no exercise.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PrepareError {
    /// No panels of that vehicle are coated.
    #[error("{}", say!("practice-no-panels"))]
    NoPanels,
    /// The rules can't all be kept.
    #[error("{}", say!("practice-impossible", why = _0))]
    Impossible(String),
    /// The planner was stopped too early.
    #[error("{}", say!("practice-no-order-found"))]
    NotFound,
}

/// Makes an exercise on a vehicle. Crew and product are those of `base`; with a limit of nodes the same every time.
///
/// # Errors
/// [`PrepareError`]
pub fn prepare(
    base: &Job,
    template: &Arc<Template>,
    setup: &Setup,
    limits: &Limits,
    control: &dyn Control,
) -> Result<Exercise, PrepareError> {
    let job = Arc::new(practice_job(base, template, setup));
    let insight = Insight::new(&job, template);
    let spec = Arc::new(crew_problem(&job, template, &insight));
    if spec.operations.is_empty() {
        return Err(PrepareError::NoPanels);
    }
    let (problem, best, bound) = best_of(&spec, limits, control)?;
    let plain = Exercise {
        setup: setup.clone(),
        given: vec![Vec::new(); spec.workers.len()],
        best: best.to_plan(&problem, bound),
        best_schedule: best,
        problem,
        spec,
        job,
        template: Arc::clone(template),
        insight,
        done: Vec::new(),
        wet: Vec::new(),
        news: Vec::new(),
    };
    let mut exercise =
        if setup.lesson == Lesson::Surprise { surprise::happens(plain, limits, control)? } else { plain };
    exercise.give_the_other();
    Ok(exercise)
}

/// The cheapest order of a problem that could be found, and what is proven of it.
pub(super) fn best_of(
    spec: &ProblemSpec,
    limits: &Limits,
    control: &dyn Control,
) -> Result<(Problem, Schedule, i64), PrepareError> {
    let problem = Problem::try_from(spec.clone()).map_err(|e| PrepareError::Impossible(e.to_string()))?;
    match solve(&problem, limits, control) {
        Outcome::Optimal(best) => {
            let bound = best.cost();
            Ok((problem, best, bound))
        }
        Outcome::Feasible { best, bound } => Ok((problem, best, bound)),
        Outcome::Infeasible(conflicts) => {
            Err(PrepareError::Impossible(conflicts.first().map(ToString::to_string).unwrap_or_default()))
        }
        Outcome::Unknown { .. } => Err(PrepareError::NotFound),
    }
}

/// The crew and the product of a job on a bare vehicle, with only the panels of the lesson.
fn practice_job(base: &Job, template: &Template, setup: &Setup) -> Job {
    let mut job = base.clone();
    "Practice".clone_into(&mut job.name);
    job.vehicle = crate::job::Vehicle { template: template.id.clone(), ..Default::default() };
    job.panels = BTreeMap::new();
    job.order = None;
    job.choices = OrderChoices::default();
    job.patch = None;
    job.air = setup.air;
    job.product.layers = 1;
    let able = |role: Role| base.crew.iter().filter(move |m| m.roles.contains(&role)).map(|m| m.name.clone());
    let first = able(Role::Apply).next().unwrap_or_else(|| say!("practice-first-person").to_owned());
    let second = able(Role::Level).find(|n| *n != first).unwrap_or_else(|| say!("practice-second-person").to_owned());
    job.crew = if setup.lesson.is_alone() {
        vec![Member::new(first, &[Role::Apply, Role::Level])]
    } else {
        vec![Member::new(first, &[Role::Apply]), Member::new(second, &[Role::Level])]
    };
    if setup.lesson == Lesson::OneSide {
        let side = if Random::new(setup.seed, 1).below(2) == 0 { Side::Left } else { Side::Right };
        for panel in template.panels.iter().filter(|p| p.side != side) {
            let record = PanelRecord { left_uncoated: true, ..PanelRecord::default() };
            job.panels.insert(panel.id.clone(), Arc::new(record));
        }
    }
    job
}

impl Exercise {
    /// The panel of an operation, as an index into the template; none for what only says where somebody is.
    pub fn panel_of(&self, operation: usize) -> Option<usize> {
        self.template.index_of(&PanelId::from(self.spec.operations[operation].panel.as_str()))
    }

    /// The role of an operation; none for what only says where somebody is.
    pub fn role_of(&self, operation: usize) -> Option<Role> {
        role_of(&self.spec.operations[operation])
    }

    /// The operation of a panel and a role, if it is still to be done in this exercise.
    pub fn operation(&self, panel: usize, role: Role) -> Option<usize> {
        (0..self.spec.operations.len()).find(|&o| self.panel_of(o) == Some(panel) && self.role_of(o) == Some(role))
    }

    /// Workers that are people: indices into the crew of its job, which are those of its problem.
    pub fn people(&self) -> usize {
        self.job.crew.len()
    }

    /// The people whose lane the learner lays.
    pub fn laid_by_learner(&self) -> Vec<usize> {
        let role = match (self.setup.part, self.people()) {
            (Part::Both, _) | (_, 1) => return (0..self.people()).collect(),
            (Part::Applies, _) => Role::Apply,
            (Part::Levels, _) => Role::Level,
        };
        (0..self.people()).filter(|&w| self.job.crew[w].roles.contains(&role)).collect()
    }

    /// Who does an operation with a role: whoever has it, an apprentice being asked for a lane and not a person.
    pub fn worker_for(&self, role: Role) -> Option<usize> {
        (0..self.people()).find(|&w| self.job.crew[w].roles.contains(&role))
    }

    /// Whether a panel has work left in this exercise.
    pub fn is_in_play(&self, panel: usize) -> bool {
        (0..self.spec.operations.len()).any(|o| self.panel_of(o) == Some(panel))
    }

    /// Whether a panel is coated at all on this vehicle in this lesson.
    pub fn is_coated(&self, panel: usize) -> bool {
        is_coated(&self.job, &self.template.panels[panel])
    }

    /// Shortest and longest wait.
    pub fn window_s(&self) -> (Seconds, Seconds) {
        (self.insight.air.window.min_s, self.insight.air.window.max_s)
    }

    /// Where the planner has the other do their part, that is laid already.
    fn give_the_other(&mut self) {
        let mine = self.laid_by_learner();
        let best = Laid::of_plan(self, &self.best_schedule);
        for worker in (0..self.spec.workers.len()).filter(|w| !mine.contains(w)) {
            self.given[worker] = best.lane(worker).to_vec();
        }
    }
}

/// The role of an operation; none for what only says where somebody is. What is under way at the beginning has a role of its own
/// in the problem, so that nobody else can have it; its name still says what it is.
fn role_of(operation: &OperationSpec) -> Option<Role> {
    let said = match operation.id.strip_prefix(operation.panel.as_str()).and_then(|rest| rest.strip_prefix('/')) {
        Some(rest) if is_of_the_present(&operation.role) && !is_of_the_present(&operation.id) => rest,
        _ => operation.role.as_str(),
    };
    [Role::Apply, Role::Level].into_iter().find(|r| said.trim_end_matches(|c: char| c.is_ascii_digit()) == r.id())
}
