//! What a sheet is made from.

use super::page::Paper;
use crate::file::job_to_text;
use crate::insight::{Insight, OrderRow, PolishOrder};
use crate::job::Job;
use crate::say;
use crate::units::{DateOrder, Micrometres, Moment, ShownUnits, listed};
use crate::vehicle::{Naming, Side, Template};
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
    /// Who does the work, and how to reach them; may be empty.
    pub shop: &'a str,
    /// How it is written.
    pub options: Options,
}

/// How sheets are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Options {
    /// British or American names of panels.
    pub naming: Naming,
    /// The paper it is for: the customer sheet's picture is as high as lets it end on its second page.
    pub paper: Paper,
    /// How dates are written.
    pub dates: DateOrder,
    /// The units of thickness, temperature and volume.
    pub units: ShownUnits,
    /// Whether the customer sheet says what the polishing costs at the shop's prices.
    pub costs: bool,
    /// Hour and minute at which the last panel will be level on the day of the job; care times count from then.
    pub done_at: (i8, i8),
}

impl Default for Options {
    /// British, on A4, in metric units, no costs, done at 17:00.
    fn default() -> Self {
        let (dates, units) = (DateOrder::DayFirst, ShownUnits::default());
        Self { naming: Naming::Uk, paper: Paper::A4, dates, units, costs: false, done_at: (17, 0) }
    }
}

impl SheetInput<'_> {
    /// A thickness in the unit that is wanted, without it.
    pub(super) fn film(&self, um: f64, decimals: usize) -> String {
        self.options.units.number(um, Micrometres::UNIT, decimals)
    }

    /// A text of the program with its figures in the units that are wanted.
    pub(super) fn said(&self, text: impl AsRef<str>) -> String {
        self.options.units.say(text.as_ref()).into_owned()
    }

    /// Name of a panel.
    pub(super) fn name(&self, panel: usize) -> String {
        self.template.panels[panel].name(self.options.naming)
    }

    /// The same in a line of text: "Bonnet left".
    pub(super) fn short_name(&self, panel: usize) -> String {
        let panel = &self.template.panels[panel];
        on_side(panel.name_without_side(self.options.naming), panel.side)
    }

    /// When the work is done; none where the job has no day.
    pub(super) fn done(&self) -> Option<Moment> {
        let (hour, minute) = self.options.done_at;
        Moment::of(self.job.date?, hour, minute)
    }

    /// Names of panels as a list in a sentence: both sides and numbers in a row stand together, "Roof panel 1 to 9 (both sides)".
    pub(super) fn names(&self, panels: &[usize]) -> String {
        let mut groups: Vec<(String, Sides, Vec<u32>)> = Vec::new();
        let whole: Vec<(String, Side)> = panels
            .iter()
            .map(|p| &self.template.panels[*p])
            .map(|panel| (panel.name_without_side(self.options.naming), panel.side))
            .collect();
        for (base, side) in &whole {
            let has = |other| whole.contains(&(base.clone(), other));
            let side = match *side {
                Side::Right if has(Side::Left) => continue, // named with the left one
                Side::Left if has(Side::Right) => Sides::Both,
                side => Sides::One(side),
            };
            let numbered = base.rsplit_once(' ').and_then(|(part, n)| Some((part.to_owned(), n.parse().ok()?)));
            let (part, number) = numbered.map_or_else(|| (base.clone(), None), |(part, n)| (part, Some(n)));
            match groups.iter_mut().find(|g| (&g.0, g.1) == (&part, side)) {
                Some(group) => group.2.extend(number),
                None => groups.push((part, side, number.into_iter().collect())),
            }
        }
        let name = |(part, side, numbers): &(String, Sides, Vec<u32>)| {
            let panel = format!("{part}{}", in_a_row(numbers));
            match side {
                Sides::Both => say!("sheet-both-sides", panel = panel),
                Sides::One(side) => on_side(panel, *side),
            }
        };
        listed(&groups.iter().map(name).collect::<Vec<_>>())
    }
}

fn on_side(panel: String, side: Side) -> String {
    match side {
        Side::Left => say!("sheet-left-side", panel = panel),
        Side::Right => say!("sheet-right-side", panel = panel),
        Side::Centre => panel,
    }
}

/// On which sides panels of one name are.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Sides {
    Both,
    One(Side),
}

/// Numbers with a blank before them: " 1, 2 and 4 to 7"; nothing for none.
fn in_a_row(numbers: &[u32]) -> String {
    let mut sorted = numbers.to_vec();
    sorted.sort_unstable();
    let row = |row: &[u32]| match row {
        [first, _, .., last] => vec![say!("sheet-first-to-last", first = *first, last = *last)],
        few => few.iter().map(u32::to_string).collect(),
    };
    let rows: Vec<String> = sorted.chunk_by(|a, b| a + 1 == *b).flat_map(row).collect();
    if rows.is_empty() { String::new() } else { format!(" {}", listed(&rows)) }
}

/// A short code of a job: the first eight hexadecimal digits of the SHA-256 of its file, in two groups. Another digit means another state.
pub fn job_code(job: &Job) -> String {
    let text = job_to_text(job).unwrap_or_default();
    let hash = Sha256::digest(text.as_bytes());
    let digits: Vec<String> = hash.iter().take(4).map(|byte| format!("{byte:02X}")).collect();
    format!("{}-{}", digits[..2].concat(), digits[2..].concat())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_in_a_row_stand_together() {
        assert_eq!(in_a_row(&[]), "");
        assert_eq!(in_a_row(&[7, 4, 5, 6, 2, 1]), " 1, 2 and 4 to 7");
    }
}
