//! What a sheet is made from.

use crate::file::job_to_text;
use crate::insight::{Insight, OrderRow, PolishOrder};
use crate::job::Job;
use crate::units::{DateOrder, Moment};
use crate::vehicle::{Naming, Template};
use sha2::{Digest, Sha256};

/// Everything a sheet may speak of.
#[derive(Debug, Clone, Copy)]
pub struct SheetInput<'a> {
    /// The job.
    pub job: &'a Job,
    /// Its vehicle.
    pub template: &'a Template,
    /// What follows from it.
    pub insight: &'a Insight,
    /// The order of coating, by time; empty where none is known.
    pub order: &'a [OrderRow],
    /// The order of polishing, where one is known.
    pub polishing: Option<&'a PolishOrder>,
    /// How it is written.
    pub options: Options,
}

/// How sheets are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Options {
    /// British or American names of panels.
    pub naming: Naming,
    /// How dates are written.
    pub dates: DateOrder,
    /// Whether the customer sheet says what the polishing costs at the shop's prices.
    pub costs: bool,
    /// Hour and minute at which the last panel will be level on the day of the job; care times count from then.
    pub done_at: (i8, i8),
}

impl Default for Options {
    /// British, no costs, done at 17:00.
    fn default() -> Self {
        Self { naming: Naming::Uk, dates: DateOrder::DayFirst, costs: false, done_at: (17, 0) }
    }
}

impl SheetInput<'_> {
    /// Name of a panel.
    pub(super) fn name(&self, panel: usize) -> String {
        self.template.panels[panel].name(self.options.naming)
    }

    /// When the work is done; none where the job has no day.
    pub(super) fn done(&self) -> Option<Moment> {
        let (hour, minute) = self.options.done_at;
        Moment::of(self.job.date?, hour, minute)
    }

    /// Names of panels as a list in a sentence; where both sides are named, the part stands once.
    pub(super) fn names(&self, panels: &[usize]) -> String {
        let mut names: Vec<String> = Vec::new();
        let mut taken = vec![false; panels.len()];
        for (k, &panel) in panels.iter().enumerate() {
            if taken[k] {
                continue;
            }
            let name = self.name(panel);
            let twin = name.strip_suffix(", left").map(|part| (part.to_owned(), format!("{part}, right")));
            let other = twin.as_ref().and_then(|(_, right)| panels.iter().position(|p| self.name(*p) == *right));
            match (twin, other) {
                (Some((part, _)), Some(other)) => {
                    taken[other] = true;
                    names.push(format!("{part} (both sides)"));
                }
                _ => names.push(name.replacen(", ", " ", 1)),
            }
        }
        listed(&names)
    }
}

/// "a", "a and b", "a, b and c".
pub(super) fn listed(names: &[String]) -> String {
    match names {
        [] => String::new(),
        [one] => one.clone(),
        [most @ .., last] => format!("{} and {last}", most.join(", ")),
    }
}

/// A short code of a job: the first eight hexadecimal digits of the SHA-256 of its file, in two groups. Another digit means another state.
pub fn job_code(job: &Job) -> String {
    let text = job_to_text(job).unwrap_or_default();
    let hash = Sha256::digest(text.as_bytes());
    let digits: Vec<String> = hash.iter().take(4).map(|byte| format!("{byte:02X}")).collect();
    format!("{}-{}", digits[..2].concat(), digits[2..].concat())
}
