//! Jobs to put on paper.

use super::support::sample;
use lapwright::crew::PlanFile;
use lapwright::file::{Loaded, job_from_text, job_to_text};
use lapwright::insight::{Insight, OrderRow, PolishOrder, crew_problem, order_rows, polish_order, polish_work};
use lapwright::job::{Job, Member, Reading, Role, Spot, Survey, SurveyStage};
use lapwright::sheets::{Options, SheetInput};
use lapwright::units::{Date, Micrometres};
use lapwright::work::{Effort, Task, find_order, find_task};
use std::sync::Arc;
use std::sync::atomic::AtomicBool;

/// A job with all that sheets are made from.
pub(super) struct Case {
    pub(super) loaded: Loaded,
    pub(super) insight: Insight,
    pub(super) order: Vec<OrderRow>,
    pub(super) polishing: Option<PolishOrder>,
    pub(super) shop: &'static str,
    pub(super) options: Options,
}

const EFFORT: Effort = Effort { seconds: 60.0, nodes: Some(2_000), threads: 1, seed: 1 };

impl Case {
    pub(super) fn new(loaded: Loaded) -> Self {
        let insight = Insight::new(&loaded.job, &loaded.template);
        let (job, template) = (&loaded.job, &loaded.template);
        let problem = Arc::new(crew_problem(job, template, &insight));
        let stop = AtomicBool::new(false);
        let plan: Option<Arc<PlanFile>> = (!problem.operations.is_empty())
            .then(|| find_order(&problem, EFFORT, &stop, &|_| ()).expect("there is an order").plan);
        let order = plan.map(|p| order_rows(job, template, &problem, &p)).unwrap_or_default();
        let work = polish_work(job, template, &insight);
        let polishing = (!work.operations.is_empty()).then(|| {
            let task = Task::Polishing(Arc::clone(&work.problem), Arc::clone(&work.doses));
            let found = find_task(&task, EFFORT, &stop, &|_| ()).expect("there is an order");
            polish_order(job, template, &work, &found)
        });
        Self { insight, order, polishing, shop: "", options: Options::default(), loaded }
    }

    /// The sample, changed, on a day.
    pub(super) fn sample(change: impl FnOnce(&mut Job)) -> Self {
        let mut job = (*sample().job).clone();
        job.date = Date::of(2026, 11, 26);
        change(&mut job);
        Self::of_job(&job)
    }

    /// A job read back from its text, so that it has passed every check.
    pub(super) fn of_job(job: &Job) -> Self {
        let text = job_to_text(job).expect("the job can be written");
        Self::new(job_from_text("a test", &text).expect("and read"))
    }

    pub(super) fn input(&self) -> SheetInput<'_> {
        SheetInput {
            job: &self.loaded.job,
            template: &self.loaded.template,
            insight: &self.insight,
            order: &self.order,
            polishing: self.polishing.as_ref(),
            shop: self.shop,
            options: self.options,
        }
    }
}

/// Every mark of the job on every panel that was read.
pub(super) fn mark_all_over(job: &mut Job) {
    let all: Vec<_> = job.panels.values().flat_map(|r| r.defects.clone()).collect();
    for record in job.panels.values_mut().filter(|r| !r.spots.is_empty()) {
        Arc::make_mut(record).defects.extend(all.iter().cloned());
    }
}

/// So many people; the first applies, the last levels, those between do both.
pub(super) fn crew_of(count: usize) -> Vec<Member> {
    let names = ["Mara", "Edwin", "Ottilie", "Bartholomew"];
    let roles = |k: usize| match k {
        _ if count == 1 => vec![Role::Apply, Role::Level],
        0 => vec![Role::Apply],
        k if k + 1 == count => vec![Role::Level],
        _ => vec![Role::Apply, Role::Level],
    };
    (0..count).map(|k| Member::new(names[k], &roles(k))).collect()
}

/// The sample read again after polishing, 2 µm thinner at every spot.
pub(super) fn read_twice(job: &mut Job) {
    job.surveys.push(Survey { stage: SurveyStage::After, date: "6 May".to_owned(), ..Survey::default() });
    for record in job.panels.values_mut() {
        for Spot { readings, .. } in &mut Arc::make_mut(record).spots {
            let again: Vec<Reading> = readings
                .iter()
                .map(|r| Reading { thickness_um: Micrometres::of(r.thickness_um.um() - 2.0), survey: 1, number: 0 })
                .collect();
            readings.extend(again);
        }
    }
}

/// Every painted panel of a coach read, four people.
pub(super) fn coach() -> Case {
    let mut job = (*super::support::job::job_on("coach").read_all(120.0).build().job).clone();
    "Coach, three layers of history".clone_into(&mut job.name);
    "Touring coach, white".clone_into(&mut job.vehicle.description);
    job.date = Date::of(2026, 11, 26);
    job.crew = crew_of(4);
    Case::of_job(&job)
}

/// Nothing read, nothing coated, nothing known.
pub(super) fn empty() -> Case {
    let mut job = (*super::support::job::job_on("saloon").build().job).clone();
    let template = Arc::clone(&super::support::job::job_on("saloon").build().template);
    for panel in &template.panels {
        Arc::make_mut(job.panels.entry(panel.id.clone()).or_default()).left_uncoated = true;
    }
    Case::of_job(&job)
}
