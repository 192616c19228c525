//! The types of format `job/1`, as they stand in the file. Never changed once released.

use crate::coat::{Air, Product};
use crate::crew::PlanFile;
use crate::finding::{Code, Finding};
use crate::job::{Customer, Defect, Job, Member, PanelRecord, Spot, Vehicle};
use crate::measure::{Assurance, Gauge};
use crate::polish::{Finish, Goal, PaintHistory, PolishStep, RemovalPolicy, Shop};
use crate::vehicle::{PanelId, Substrate};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::collections::btree_map::Entry;
use std::sync::Arc;

/// What the first field must say.
pub(super) const FORMAT: &str = "job/1";

/// A whole file. Lists instead of maps, since a map would silently keep the last of two equal keys.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct JobFile {
    pub(super) format: String,
    name: String,
    pub(super) vehicle: Vehicle,
    #[serde(default)]
    customer: Customer,
    goal: Goal,
    crew: Vec<Member>,
    air: Air,
    product: Product,
    gauge: Gauge,
    #[serde(default)]
    assurance: Assurance,
    #[serde(default)]
    policy: RemovalPolicy,
    #[serde(default = "PolishStep::starting_set")]
    steps: Vec<PolishStep>,
    #[serde(default, skip_serializing_if = "is_default")]
    shop: Shop,
    #[serde(default)]
    panels: Vec<PanelFile>,
    #[serde(default)]
    order: Option<PlanFile>,
}

/// What is known of one panel.
#[derive(Debug, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PanelFile {
    id: PanelId,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    finish: Option<Finish>,
    #[serde(default)]
    history: PaintHistory,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    substrate: Option<Substrate>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    left_uncoated: bool,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    spots: Vec<Spot>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    defects: Vec<Defect>,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    note: String,
}

fn is_default(shop: &Shop) -> bool {
    *shop == Shop::default()
}

impl JobFile {
    pub(super) fn of(job: &Job) -> Self {
        Self {
            format: FORMAT.to_owned(),
            name: job.name.clone(),
            vehicle: job.vehicle.clone(),
            customer: job.customer.clone(),
            goal: job.goal,
            crew: job.crew.clone(),
            air: job.air,
            product: job.product.clone(),
            gauge: job.gauge.clone(),
            assurance: job.assurance,
            policy: job.policy.clone(),
            steps: job.steps.clone(),
            shop: job.shop.clone(),
            panels: job.panels.iter().map(|(id, record)| PanelFile::of(id, record)).collect(),
            order: job.order.as_deref().cloned(),
        }
    }

    /// The job, with a finding for every further entry of a panel that has one already; the first entry counts.
    pub(super) fn into_job(self) -> (Job, Vec<Finding>) {
        let mut panels = BTreeMap::new();
        let mut found = Vec::new();
        for (index, panel) in self.panels.into_iter().enumerate() {
            match panels.entry(panel.id.clone()) {
                Entry::Vacant(place) => {
                    place.insert(Arc::new(panel.into_record()));
                }
                Entry::Occupied(place) => found.push(Finding::new(
                    Code::JobPanelTwice,
                    format!("panels[{index}].id"),
                    format!("the panel \"{}\" has an entry already", place.key()),
                    "put all that is known of a panel into one entry",
                )),
            }
        }
        let job = Job {
            name: self.name,
            vehicle: self.vehicle,
            customer: self.customer,
            goal: self.goal,
            crew: self.crew,
            gauge: self.gauge,
            assurance: self.assurance,
            policy: self.policy,
            steps: self.steps,
            shop: self.shop,
            product: self.product,
            air: self.air,
            panels,
            order: self.order.map(Arc::new),
        };
        (job, found)
    }
}

impl PanelFile {
    fn of(id: &PanelId, record: &PanelRecord) -> Self {
        let PanelRecord { finish, history, substrate, left_uncoated, spots, defects, note } = record.clone();
        Self { id: id.clone(), finish, history, substrate, left_uncoated, spots, defects, note }
    }

    fn into_record(self) -> PanelRecord {
        let Self { id: _, finish, history, substrate, left_uncoated, spots, defects, note } = self;
        PanelRecord { finish, history, substrate, left_uncoated, spots, defects, note }
    }
}
