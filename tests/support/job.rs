//! A job with defaults: two people, good air, the shop's starting steps; what a test is about is added.

use lapwright::coat::Product;
use lapwright::file::{Loaded, job_from_text};
use lapwright::insight::recommended_spots;
use lapwright::job::{Defect, Job, Reading, Spot};
use lapwright::measure::GaugePrinciple;
use lapwright::polish::DefectKind;
use lapwright::units::{Micrometres, Millimetres};
use lapwright::vehicle::{PanelId, Substrate, Surface, Template};
use std::sync::Arc;

/// Puts a job together.
pub(crate) struct JobBuilder {
    job: Job,
    template: Arc<Template>,
}

/// A job on a template with nothing read yet.
pub(crate) fn job_on(template: &str) -> JobBuilder {
    let text = format!(
        r#"(
            format: "job/1", name: "test", vehicle: (description: "", template: "{template}"), goal: correct(share: 0.8),
            crew: [(name: "Ada", roles: [apply]), (name: "Bo", roles: [level])], air: (), product: (),
            gauge: (principle: magnetic_induction, accuracy_fixed_um: 1, accuracy_share: 0.01, resolution_um: 1),
        )"#
    );
    let Loaded { job, template } = job_from_text("builder", &text).expect("the least job loads");
    JobBuilder { job: (*job).clone(), template }
}

impl JobBuilder {
    /// Readings of about `um` at every recommended spot of a panel.
    pub(crate) fn film(mut self, panel: &str, um: f64) -> Self {
        let index = super::index_of(&self.template, panel);
        let spots = recommended_spots(&self.template.panels[index]).into_iter().enumerate().map(|(i, at)| {
            let thickness_um = Micrometres::new(um + [0.0, 1.0, -1.0][i % 3]).expect("a thickness");
            Spot { at, edge: false, readings: vec![Reading::of(thickness_um); 3], note: String::new() }
        });
        let spots = spots.collect();
        let record = self.job.panels.entry(PanelId::from(panel)).or_default();
        Arc::make_mut(record).spots = spots;
        self
    }

    /// Readings of about `um` on every panel that the gauge can read, and swirls on each.
    pub(crate) fn read_all(mut self, um: f64) -> Self {
        let template = Arc::clone(&self.template);
        let readable = template.panels.iter().filter(|p| p.surface == Surface::Paint);
        for panel in readable.filter(|p| p.substrate == Substrate::Steel || p.substrate == Substrate::Aluminium) {
            self = self.film(panel.id.as_str(), um).defect(panel.id.as_str(), DefectKind::Swirl);
        }
        self
    }

    /// A defect of usual depth in the middle of a panel.
    pub(crate) fn defect(mut self, panel: &str, kind: DefectKind) -> Self {
        let at = self.template.panels[super::index_of(&self.template, panel)].label.centre;
        let record = self.job.panels.entry(PanelId::from(panel)).or_default();
        let defect = Defect { size_mm: Millimetres::of(400.0), quantity: 3, ..Defect::new(kind, at) };
        Arc::make_mut(record).defects.push(defect);
        self
    }

    /// The gauge works by another principle.
    pub(crate) fn gauge(mut self, principle: GaugePrinciple) -> Self {
        self.job.gauge.principle = principle;
        self
    }

    /// Another product.
    pub(crate) fn product(mut self, product: Product) -> Self {
        self.job.product = product;
        self
    }

    /// The job, read back from its text so that it has passed every check.
    pub(crate) fn build(self) -> Loaded {
        let text = lapwright::file::job_to_text(&self.job).expect("a built job can be written");
        job_from_text("built", &text).expect("and read")
    }
}
