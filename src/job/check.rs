//! What can be wrong with a job although it could be read.

use super::defect::Defect;
use super::model::{Job, PanelRecord, Role, Spot};
use crate::finding::{Code, Finding};
use crate::geometry::MapPoint;
use crate::vehicle::{Panel, PanelId, Side, Template};

/// Most of a kind that one job may hold, and most characters in one text.
const MOST_SPOTS: usize = 50_000;
const MOST_READINGS: usize = 500_000;
const MOST_DEFECTS: usize = 50_000;
/// Most points of one drawn defect, and most pictures of one defect.
const MOST_POINTS: usize = 400;
const MOST_PHOTOS: usize = 24;
const LONGEST_TEXT: usize = 10_000;
const MOST_SURVEYS: usize = 100;
const MOST_CHECKS: usize = 10_000;
const MOST_WORKERS: usize = 64;
const MOST_STEPS: usize = 12;
const MOST_TESTS: usize = 200;
const MOST_ROWS: usize = 5_000;
const MOST_CHOICES: usize = 500;
/// Latest start in an order, in seconds: what the planner's clock can hold.
const LATEST_START: i64 = 1_000_000_000;

/// Holds a job against its template: all findings, those that need no template first.
pub fn check(job: &Job, template: &Template) -> Vec<Finding> {
    let mut found = check_alone(job);
    for (id, record) in &job.panels {
        let path = place_of(id);
        match template.panel(id) {
            Some(panel) => outside(panel, record, &path, &mut found),
            None => found.push(unknown(template, id, format!("{path}.id"))),
        }
    }
    let begins = job.choices.begins.iter().enumerate().map(|(i, b)| (&b.panel, format!("begins[{i}].panel")));
    let first = job.choices.first.iter().enumerate().map(|(i, id)| (id, format!("first[{i}]")));
    for (id, place) in begins.chain(first).filter(|(id, _)| template.panel(id).is_none()) {
        found.push(unknown(template, id, format!("order_choices.{place}")));
    }
    found
}

fn unknown(template: &Template, id: &PanelId, place: String) -> Finding {
    let cause = format!("the template \"{}\" has no panel \"{id}\"", template.id);
    Finding::new(Code::JobUnknownPanel, place, cause, closest(template, id))
}

/// What is wrong with a job whatever its template: faults all of them, so a command may not bring one about.
pub fn check_alone(job: &Job) -> Vec<Finding> {
    let mut found = Vec::new();
    texts(job, &mut found);
    size(job, &mut found);
    crew(job, &mut found);
    order(job, &mut found);
    choices(job, &mut found);
    product(job, &mut found);
    super::survey_check::surveys(job, &mut found);
    for (id, record) in &job.panels {
        panel(record, &place_of(id), &mut found);
    }
    counts(job, &mut found);
    found
}

/// A panel in a field path: by its name, since a file may list panels in any order.
pub(super) fn place_of(panel: &PanelId) -> String {
    format!("panels[{panel}]")
}

fn texts(job: &Job, found: &mut Vec<Finding>) {
    let mut text = |path: &dyn Fn() -> String, text: &str| {
        // A character takes a byte at least, so most texts need no counting.
        if text.len() > LONGEST_TEXT && text.chars().count() > LONGEST_TEXT {
            found.push(Finding::new(
                Code::JobTooLarge,
                path(),
                format!("the text is longer than {LONGEST_TEXT} characters"),
                "shorten it, or keep it in a document of its own",
            ));
        }
    };
    for (path, value) in [
        ("name", &job.name),
        ("vehicle.description", &job.vehicle.description),
        ("vehicle.plate", &job.vehicle.plate),
        ("vehicle.history", &job.vehicle.history),
        ("customer.name", &job.customer.name),
        ("customer.wishes", &job.customer.wishes),
        ("product.name", &job.product.name),
        ("product.cautions", &job.product.cautions),
        ("shop.prices.currency", &job.shop.prices.currency),
    ] {
        text(&|| path.to_owned(), value);
    }
    for (i, member) in job.crew.iter().enumerate() {
        text(&|| format!("crew[{i}].name"), &member.name);
    }
    for (i, step) in job.steps.iter().enumerate() {
        text(&|| format!("steps[{i}].name"), &step.name);
        text(&|| format!("steps[{i}].equipment.pad"), &step.equipment.pad);
        text(&|| format!("steps[{i}].equipment.abrasive"), &step.equipment.abrasive);
    }
    for (i, result) in job.test_spots.results.iter().enumerate() {
        text(&|| format!("test_spots.results[{i}].step"), &result.step);
    }
    for (i, survey) in job.surveys.iter().enumerate() {
        text(&|| format!("surveys[{i}].date"), &survey.date);
        text(&|| format!("surveys[{i}].taken_by"), &survey.taken_by);
    }
    for (id, record) in &job.panels {
        text(&|| format!("{}.note", place_of(id)), &record.note);
        for (s, spot) in record.spots.iter().enumerate() {
            text(&|| format!("{}.spots[{s}].note", place_of(id)), &spot.note);
        }
        for (e, entry) in record.removals.entries.iter().enumerate() {
            text(&|| format!("{}.removals[{e}].visit", place_of(id)), &entry.visit);
        }
        for (d, defect) in record.defects.iter().enumerate() {
            text(&|| format!("{}.defects[{d}].note", place_of(id)), &defect.note);
        }
    }
}

/// A size that no vehicle has.
fn size(job: &Job, found: &mut Vec<Finding>) {
    let measures = job.vehicle.size_mm.iter().flat_map(|size| size.measures());
    for (name, value, range) in measures.filter(|(_, value, range)| !range.contains(&value.mm())) {
        found.push(Finding::new(
            Code::JobSize,
            format!("vehicle.size_mm.{name}"),
            format!("no vehicle has a {name} of {} mm", value.mm()),
            format!("give a number from {} to {} mm, or leave the size out", range.start(), range.end()),
        ));
    }
}

/// Starts that the planner's clock can't hold.
fn order(job: &Job, found: &mut Vec<Finding>) {
    let rows = job.order.iter().flat_map(|o| &o.operations);
    for (i, row) in rows.enumerate().filter(|(_, row)| !(0..=LATEST_START).contains(&row.start_s)) {
        found.push(Finding::new(
            Code::JobOrder,
            format!("order.operations[{i}].start_s"),
            format!("a start at {} s can't be", row.start_s),
            "take the order out; it is found again",
        ));
    }
}

/// A window or limits of the coating that end before they begin.
fn product(job: &Job, found: &mut Vec<Finding>) {
    let p = &job.product;
    let mut pair = |least: &str, most: &str, is_right: bool, what: &str| {
        if !is_right {
            let cause = format!("{what} ends before it begins");
            found.push(Finding::new(
                Code::JobProduct,
                format!("product.{most}"),
                cause,
                format!("make it no smaller than {least}"),
            ));
        }
    };
    pair("window_min_s", "window_max_s", p.window_min_s <= p.window_max_s, "the window of the coating");
    pair("min_temp_c", "max_temp_c", p.min_temp_c <= p.max_temp_c, "what the coating allows in temperature");
    let humidity = p.min_humidity_pct <= p.max_humidity_pct;
    pair("min_humidity_pct", "max_humidity_pct", humidity, "what the coating allows in humidity");
    if job.patch.is_some_and(|patch| patch.min_s > patch.max_s) {
        found.push(Finding::new(
            Code::JobProduct,
            "patch.max_s",
            "the window that was tried ends before it begins",
            "make it no smaller than min_s",
        ));
    }
}

/// Choices about the order that contradict themselves or the crew.
fn choices(job: &Job, found: &mut Vec<Finding>) {
    let mut say = |place: String, cause: String| {
        found.push(Finding::new(Code::JobChoices, place, cause, "take the choice out"));
    };
    let choices = &job.choices;
    for (i, begins) in choices.begins.iter().enumerate() {
        let place = || format!("order_choices.begins[{i}].member");
        if !job.crew.iter().any(|m| m.name == begins.member) {
            say(place(), format!("\"{}\" is not in the crew", begins.member));
        } else if choices.begins[..i].iter().any(|b| b.member == begins.member) {
            say(place(), format!("\"{}\" begins twice", begins.member));
        }
    }
    for (i, panel) in choices.first.iter().enumerate().filter(|(i, panel)| choices.first[..*i].contains(panel)) {
        say(format!("order_choices.first[{i}]"), format!("the panel \"{panel}\" comes first twice"));
    }
    if choices.side == Some(Side::Centre) {
        say("order_choices.side".to_owned(), "the centre is no side".to_owned());
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
        if member.roles.is_empty() {
            found.push(Finding::new(
                Code::JobCrew,
                format!("crew[{index}].roles"),
                format!("\"{}\" has nothing to do", member.name),
                "give a role, or leave the person out",
            ));
        }
    }
}

fn panel(record: &PanelRecord, path: &str, found: &mut Vec<Finding>) {
    for (s, Spot { at, readings, .. }) in record.spots.iter().enumerate() {
        place(*at, || format!("{path}.spots[{s}].at"), found);
        if readings.is_empty() {
            found.push(Finding::new(
                Code::JobEmptySpot,
                format!("{path}.spots[{s}].readings"),
                "the spot has no reading",
                "add a reading or remove the spot",
            ));
        }
    }
    for (d, Defect { at, extent, quantity, depth_um, photos, .. }) in record.defects.iter().enumerate() {
        place(*at, || format!("{path}.defects[{d}].at"), found);
        let points = extent.points();
        for point in points {
            place(*point, || format!("{path}.defects[{d}].extent"), found);
        }
        if points.len() < extent.least_points() {
            found.push(Finding::new(
                Code::JobDefectRange,
                format!("{path}.defects[{d}].extent"),
                format!("{} points are too few to draw it", points.len()),
                "a line needs two points and an area three corners",
            ));
        }
        for (what, count, most) in [("points", points.len(), MOST_POINTS), ("pictures", photos.len(), MOST_PHOTOS)] {
            if count > most {
                found.push(Finding::new(
                    Code::JobTooLarge,
                    format!("{path}.defects[{d}]"),
                    format!("{count} {what} are more than the {most} that one defect may have"),
                    "leave some out",
                ));
            }
        }
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

fn is_place(at: MapPoint) -> bool {
    at.x.is_finite() && at.y.is_finite()
}

fn place(at: MapPoint, path: impl Fn() -> String, found: &mut Vec<Finding>) {
    if !is_place(at) {
        found.push(Finding::new(
            Code::JobPlace,
            path(),
            "the place is not a pair of finite numbers",
            "give the place in millimetres on the map, as (x, y)",
        ));
    }
}

/// Spots and defects that lie beside their panel.
fn outside(panel: &Panel, record: &PanelRecord, path: &str, found: &mut Vec<Finding>) {
    let spots = record.spots.iter().enumerate().map(|(s, spot)| (spot.at, "spots", s));
    let defects = record.defects.iter().enumerate().map(|(d, defect)| (defect.at, "defects", d));
    for (at, list, index) in spots.chain(defects) {
        if is_place(at) && !panel.outline.contains(at) {
            found.push(Finding::new(
                Code::JobPlaceOutside,
                format!("{path}.{list}[{index}].at"),
                format!("the place ({:.0}, {:.0}) is not on \"{}\"", at.x, at.y, panel.id),
                "move it onto the panel, or name the panel it is on",
            ));
        }
    }
}

fn counts(job: &Job, found: &mut Vec<Finding>) {
    let records = || job.panels.values();
    let counts = [
        ("surveys", "surveys", job.surveys.len(), MOST_SURVEYS),
        ("surveys", "checks of the gauge", job.surveys.iter().map(|s| s.checks.len()).sum(), MOST_CHECKS),
        ("panels", "gloss readings", records().map(|r| r.gloss.len()).sum(), MOST_CHECKS),
        ("panels", "earlier visits", records().map(|r| r.removals.entries.len()).sum(), MOST_CHECKS),
        ("crew", "workers", job.crew.len(), MOST_WORKERS),
        ("steps", "polishing steps", job.steps.len(), MOST_STEPS),
        ("test_spots.results", "results of test spots", job.test_spots.results.len(), MOST_TESTS),
        ("order_choices", "first panels", job.choices.first.len() + job.choices.begins.len(), MOST_CHOICES),
        ("order", "rows of an order", job.order.as_ref().map_or(0, |o| o.operations.len()), MOST_ROWS),
        ("panels", "spots", records().map(|r| r.spots.len()).sum::<usize>(), MOST_SPOTS),
        ("panels", "readings", records().map(|r| r.reading_count()).sum(), MOST_READINGS),
        ("panels", "defects", records().map(|r| r.defects.len()).sum(), MOST_DEFECTS),
    ];
    for (path, what, count, most) in counts {
        if count > most {
            found.push(Finding::new(
                Code::JobTooLarge,
                path,
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
