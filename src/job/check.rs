//! What can be wrong with a job although it could be read.

use super::model::{Defect, Job, PanelRecord, Role, Spot};
use crate::finding::{Code, Finding};
use crate::geometry::MapPoint;
use crate::vehicle::{PanelId, Template};

/// Most spots, readings and defects that one job may hold, and most characters in one text.
const MOST_SPOTS: usize = 50_000;
const MOST_READINGS: usize = 500_000;
const MOST_DEFECTS: usize = 50_000;
const LONGEST_TEXT: usize = 10_000;

/// Holds a job against its template: all findings, in the order of the file.
pub fn check(job: &Job, template: &Template) -> Vec<Finding> {
    let mut found = Vec::new();
    texts(job, &mut found);
    crew(job, &mut found);
    for (index, (id, record)) in job.panels.iter().enumerate() {
        let path = format!("panels[{index}]");
        if template.panel(id).is_some() {
            panel(template, id, record, &path, &mut found);
        } else {
            found.push(Finding::new(
                Code::JobUnknownPanel,
                format!("{path}.id"),
                format!("the template \"{}\" has no panel \"{id}\"", template.id),
                closest(template, id),
            ));
        }
    }
    counts(job, &mut found);
    found
}

fn texts(job: &Job, found: &mut Vec<Finding>) {
    let texts = [
        ("name", &job.name),
        ("vehicle.description", &job.vehicle.description),
        ("vehicle.plate", &job.vehicle.plate),
        ("vehicle.history", &job.vehicle.history),
        ("customer.name", &job.customer.name),
        ("customer.wishes", &job.customer.wishes),
    ];
    for (path, text) in texts {
        if text.chars().count() > LONGEST_TEXT {
            found.push(Finding::new(
                Code::JobTooLarge,
                path,
                format!("the text is longer than {LONGEST_TEXT} characters"),
                "shorten it, or keep it in a document of its own",
            ));
        }
    }
}

fn crew(job: &Job, found: &mut Vec<Finding>) {
    for role in [Role::Apply, Role::Level] {
        if !job.crew.iter().any(|m| m.roles.contains(&role)) {
            found.push(Finding::new(
                Code::JobCrew,
                "crew",
                format!("nobody in the crew {}", role.verb()),
                "give the role to somebody; one person may have both",
            ));
        }
    }
    for (index, member) in job.crew.iter().enumerate() {
        if member.name.trim().is_empty() || job.crew[..index].iter().any(|m| m.name == member.name) {
            found.push(Finding::new(
                Code::JobCrew,
                format!("crew[{index}].name"),
                format!("the name \"{}\" is empty or used twice", member.name),
                "give everybody a name of their own",
            ));
        }
    }
}

fn panel(template: &Template, id: &PanelId, record: &PanelRecord, path: &str, found: &mut Vec<Finding>) {
    for (s, Spot { at, readings, .. }) in record.spots.iter().enumerate() {
        place(template, id, *at, &format!("{path}.spots[{s}].at"), found);
        if readings.is_empty() {
            found.push(Finding::new(
                Code::JobEmptySpot,
                format!("{path}.spots[{s}].readings"),
                "the spot has no reading",
                "add a reading or remove the spot",
            ));
        }
    }
    for (d, Defect { at, quantity, depth_um, .. }) in record.defects.iter().enumerate() {
        place(template, id, *at, &format!("{path}.defects[{d}].at"), found);
        if *quantity > 5 {
            found.push(Finding::new(
                Code::JobDefectRange,
                format!("{path}.defects[{d}].quantity"),
                format!("the quantity is {quantity}, the scale ends at 5"),
                "use 0 (none) to 5 (dense)",
            ));
        }
        if depth_um.is_some_and(|(least, most)| least > most) {
            found.push(Finding::new(
                Code::JobDefectRange,
                format!("{path}.defects[{d}].depth_um"),
                "the least depth is above the most",
                "write the smaller number first",
            ));
        }
    }
}

fn place(template: &Template, id: &PanelId, at: MapPoint, path: &str, found: &mut Vec<Finding>) {
    if !(at.x.is_finite() && at.y.is_finite()) {
        found.push(Finding::new(
            Code::JobPlace,
            path,
            "the place is not a pair of finite numbers",
            "give the place in millimetres on the map, as (x, y)",
        ));
    } else if template.panel(id).is_some_and(|p| !p.outline.contains(at)) {
        found.push(Finding::new(
            Code::JobPlaceOutside,
            path,
            format!("the place ({:.0}, {:.0}) is not on \"{id}\"", at.x, at.y),
            "move it onto the panel, or name the panel it is on",
        ));
    }
}

fn counts(job: &Job, found: &mut Vec<Finding>) {
    let records = || job.panels.values();
    let counts = [
        ("spots", records().map(|r| r.spots.len()).sum::<usize>(), MOST_SPOTS),
        ("readings", records().map(|r| r.reading_count()).sum(), MOST_READINGS),
        ("defects", records().map(|r| r.defects.len()).sum(), MOST_DEFECTS),
    ];
    for (what, count, most) in counts {
        if count > most {
            found.push(Finding::new(
                Code::JobTooLarge,
                "panels",
                format!("{count} {what} are more than the {most} a job may hold"),
                "split the job",
            ));
        }
    }
}

/// Advice for a panel name that doesn't exist: the nearest one that does.
fn closest(template: &Template, id: &PanelId) -> String {
    let wanted = id.to_string();
    template
        .panels
        .iter()
        .map(|p| p.id.to_string())
        .min_by_key(|name| edit_distance(name, &wanted))
        .map_or_else(|| "choose another template".to_owned(), |name| format!("did you mean \"{name}\""))
}

/// Levenshtein distance in characters.
fn edit_distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, ca) in a.chars().enumerate() {
        let mut diagonal = std::mem::replace(&mut row[0], i + 1);
        for (j, cb) in b.iter().enumerate() {
            let substituted = diagonal + usize::from(ca != *cb);
            diagonal = row[j + 1];
            row[j + 1] = substituted.min(row[j] + 1).min(diagonal + 1);
        }
    }
    row[b.len()]
}

#[cfg(test)]
mod tests {
    use super::edit_distance;

    #[test]
    fn the_distance_counts_letters_changed() {
        assert_eq!(edit_distance("bonnet-left", "bonet-left"), 1);
        assert_eq!(edit_distance("", "roof"), 4);
        assert_eq!(edit_distance("kitten", "sitting"), 3);
    }
}
