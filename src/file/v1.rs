//! The types of format `job/1`, as they stand in the file. Never changed once released.

use crate::coat::{Air, MeasuredWindow, Product};
use crate::crew::PlanFile;
use crate::finding::{Code, Finding};
use crate::job::{
    Customer, Defect, GlossReading, Job, Member, OrderChoices, PanelRecord, PreviousCoating, Spot, Survey, Vehicle,
};
use crate::measure::{Assurance, Gauge};
use crate::polish::{
    Finish, Goal, Ledger, Level, PaintHardness, PaintHistory, PolishStep, RemovalPolicy, Shop, TestSpots,
};
use crate::say;
use crate::units::{Date, fields};
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
    #[serde(default, skip_serializing_if = "Option::is_none")]
    date: Option<Date>,
    pub(super) vehicle: Vehicle,
    #[serde(default)]
    customer: Customer,
    goal: Goal,
    crew: Vec<Member>,
    air: Air,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    patch: Option<MeasuredWindow>,
    product: Product,
    #[serde(default, skip_serializing_if = "fields::is_usual")]
    order_choices: OrderChoices,
    gauge: Gauge,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    surveys: Vec<Survey>,
    #[serde(default)]
    assurance: Assurance,
    #[serde(default)]
    policy: RemovalPolicy,
    #[serde(default = "PolishStep::starting_set")]
    steps: Vec<PolishStep>,
    #[serde(default, skip_serializing_if = "fields::is_usual")]
    test_spots: TestSpots,
    #[serde(default, skip_serializing_if = "fields::is_usual")]
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
    painted_on: Option<Date>,
    #[serde(default, skip_serializing_if = "fields::is_usual")]
    coating: PreviousCoating,
    #[serde(default, skip_serializing_if = "fields::is_usual")]
    hardness: PaintHardness,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    substrate: Option<Substrate>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    level_at_most: Option<Level>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    left_uncoated: bool,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    spots: Vec<Spot>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    defects: Vec<Defect>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    gloss: Vec<GlossReading>,
    #[serde(default, skip_serializing_if = "Ledger::is_empty")]
    removals: Ledger,
    #[serde(default, skip_serializing_if = "String::is_empty")]
    note: String,
}

impl JobFile {
    pub(super) fn of(job: &Job) -> Self {
        Self {
            format: FORMAT.to_owned(),
            name: job.name.clone(),
            date: job.date,
            vehicle: job.vehicle.clone(),
            customer: job.customer.clone(),
            goal: job.goal,
            crew: job.crew.clone(),
            air: job.air,
            patch: job.patch,
            order_choices: job.choices.clone(),
            product: job.product.clone(),
            gauge: job.gauge.clone(),
            surveys: if job.surveys == [Survey::default()] { Vec::new() } else { job.surveys.clone() },
            assurance: job.assurance,
            policy: job.policy.clone(),
            steps: job.steps.clone(),
            test_spots: (*job.test_spots).clone(),
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
                    say!("file-panel-twice", panel = place.key().as_str()),
                    say!("file-panel-twice-do"),
                )),
            }
        }
        let job = Job {
            name: self.name,
            date: self.date,
            vehicle: self.vehicle,
            customer: self.customer,
            goal: self.goal,
            crew: self.crew,
            gauge: self.gauge,
            surveys: if self.surveys.is_empty() { vec![Survey::default()] } else { self.surveys },
            assurance: self.assurance,
            policy: self.policy,
            steps: self.steps,
            test_spots: Arc::new(self.test_spots),
            shop: self.shop,
            product: self.product,
            air: self.air,
            patch: self.patch,
            choices: self.order_choices,
            panels,
            order: self.order.map(Arc::new),
        };
        (job, found)
    }
}

impl PanelFile {
    fn of(id: &PanelId, record: &PanelRecord) -> Self {
        let PanelRecord {
            finish,
            history,
            painted_on,
            coating,
            hardness,
            substrate,
            level_at_most,
            left_uncoated,
            spots,
            defects,
            gloss,
            removals,
            note,
        } = record.clone();
        Self {
            id: id.clone(),
            finish,
            history,
            painted_on,
            coating,
            hardness,
            substrate,
            level_at_most,
            left_uncoated,
            spots,
            defects,
            gloss,
            removals,
            note,
        }
    }

    fn into_record(self) -> PanelRecord {
        PanelRecord {
            finish: self.finish,
            history: self.history,
            painted_on: self.painted_on,
            coating: self.coating,
            hardness: self.hardness,
            substrate: self.substrate,
            level_at_most: self.level_at_most,
            left_uncoated: self.left_uncoated,
            spots: self.spots,
            defects: self.defects,
            gloss: self.gloss,
            removals: self.removals,
            note: self.note,
        }
    }
}
