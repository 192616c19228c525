//! What can be wrong with a template: one kind of fault a file.

mod area;
mod drawing;
mod reach;

use super::template::Template;
use crate::finding::Finding;

impl Template {
    /// Everything that is wrong or worth knowing, in a fixed order; empty when all is well.
    pub fn check(&self) -> Vec<Finding> {
        let mut findings = self.faults.clone();
        drawing::check(self, &mut findings);
        reach::check(self, &mut findings);
        area::check(self, &mut findings);
        findings
    }
}
