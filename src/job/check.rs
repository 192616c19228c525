//! What can be wrong with a job although it could be read.

use super::defect::Defect;
use super::model::{Job, PanelRecord, Role, Spot};
use crate::finding::{Code, Finding};
use crate::geometry::MapPoint;
use crate::say;
use crate::vehicle::{Panel, PanelId, Side, Template};
use crate::words::shortest;

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
    let cause = say!("check-no-panel", template = template.id.as_str(), panel = id.as_str());
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
                say!("check-text-long", most = LONGEST_TEXT),
                say!("check-text-long-do"),
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
            match name {
                "length" => say!("check-no-length", mm = shortest(value.mm())),
                "width" => say!("check-no-width", mm = shortest(value.mm())),
                _ => say!("check-no-height", mm = shortest(value.mm())),
            },
            say!("check-size-do", low = shortest(*range.start()), high = shortest(*range.end())),
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
            say!("check-start", seconds = row.start_s.to_string()),
            say!("check-start-do"),
        ));
    }
}

/// A window or limits of the coating that end before they begin.
fn product(job: &Job, found: &mut Vec<Finding>) {
    let p = &job.product;
    let mut pair = |least: &str, most: &str, is_right: bool, cause: &str| {
        if !is_right {
            found.push(Finding::new(
                Code::JobProduct,
                format!("product.{most}"),
                cause,
                say!("check-no-smaller", field = least),
            ));
        }
    };
    pair("window_min_s", "window_max_s", p.window_min_s <= p.window_max_s, say!("check-window-ends"));
    pair("min_temp_c", "max_temp_c", p.min_temp_c <= p.max_temp_c, say!("check-temperature-ends"));
    let humidity = p.min_humidity_pct <= p.max_humidity_pct;
    pair("min_humidity_pct", "max_humidity_pct", humidity, say!("check-humidity-ends"));
    if job.patch.is_some_and(|patch| patch.min_s > patch.max_s) {
        found.push(Finding::new(
            Code::JobProduct,
            "patch.max_s",
            say!("check-tried-ends"),
            say!("check-no-smaller", field = "min_s"),
        ));
    }
}

/// Choices about the order that contradict themselves or the crew.
fn choices(job: &Job, found: &mut Vec<Finding>) {
    let mut note = |place: String, cause: String| {
        found.push(Finding::new(Code::JobChoices, place, cause, say!("check-choice-do")));
    };
    let choices = &job.choices;
    for (i, begins) in choices.begins.iter().enumerate() {
        let place = || format!("order_choices.begins[{i}].member");
        if !job.crew.iter().any(|m| m.name == begins.member) {
            note(place(), say!("check-not-in-crew", name = begins.member.as_str()));
        } else if choices.begins[..i].iter().any(|b| b.member == begins.member) {
            note(place(), say!("check-begins-twice", name = begins.member.as_str()));
        }
    }
    for (i, panel) in choices.first.iter().enumerate().filter(|(i, panel)| choices.first[..*i].contains(panel)) {
        note(format!("order_choices.first[{i}]"), say!("check-first-twice", panel = panel.as_str()));
    }
    if choices.side == Some(Side::Centre) {
        note("order_choices.side".to_owned(), say!("check-centre-no-side").to_owned());
    }
}

fn crew(job: &Job, found: &mut Vec<Finding>) {
    for role in [Role::Apply, Role::Level] {
        if !job.crew.iter().any(|m| m.roles.contains(&role)) {
            found.push(Finding::new(
                Code::JobCrew,
                "crew",
                match role {
                    Role::Apply => say!("check-nobody-applies"),
                    Role::Level => say!("check-nobody-levels"),
                },
                say!("check-nobody-do"),
            ));
        }
    }
    for (index, member) in job.crew.iter().enumerate() {
        if member.name.trim().is_empty() || job.crew[..index].iter().any(|m| m.name == member.name) {
            found.push(Finding::new(
                Code::JobCrew,
                format!("crew[{index}].name"),
                say!("check-nameless", name = member.name.as_str()),
                say!("check-nameless-do"),
            ));
        }
        if member.roles.is_empty() {
            found.push(Finding::new(
                Code::JobCrew,
                format!("crew[{index}].roles"),
                say!("check-crew-idle", name = member.name.as_str()),
                say!("check-crew-idle-do"),
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
                say!("check-spot-empty"),
                say!("check-spot-empty-do"),
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
                say!("check-few-points", count = points.len()),
                say!("check-few-points-do"),
            ));
        }
        let (drawn, shown) = (points.len(), photos.len());
        for (count, most, cause) in [
            (drawn, MOST_POINTS, say!("check-many-points", count = drawn, most = MOST_POINTS)),
            (shown, MOST_PHOTOS, say!("check-many-pictures", count = shown, most = MOST_PHOTOS)),
        ] {
            if count > most {
                found.push(Finding::new(
                    Code::JobTooLarge,
                    format!("{path}.defects[{d}]"),
                    cause,
                    say!("check-leave-out"),
                ));
            }
        }
        if *quantity > 5 {
            found.push(Finding::new(
                Code::JobDefectRange,
                format!("{path}.defects[{d}].quantity"),
                say!("check-quantity", quantity = *quantity),
                say!("check-quantity-do"),
            ));
        }
        if depth_um.is_some_and(|(least, most)| least > most) {
            found.push(Finding::new(
                Code::JobDefectRange,
                format!("{path}.defects[{d}].depth_um"),
                say!("check-depth"),
                say!("check-depth-do"),
            ));
        }
    }
}

fn is_place(at: MapPoint) -> bool {
    at.x.is_finite() && at.y.is_finite()
}

fn place(at: MapPoint, path: impl Fn() -> String, found: &mut Vec<Finding>) {
    if !is_place(at) {
        found.push(Finding::new(Code::JobPlace, path(), say!("check-place-number"), say!("check-place-number-do")));
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
                say!(
                    "check-place-off",
                    x = format!("{:.0}", at.x),
                    y = format!("{:.0}", at.y),
                    panel = panel.id.as_str()
                ),
                say!("check-place-off-do"),
            ));
        }
    }
}

fn counts(job: &Job, found: &mut Vec<Finding>) {
    let records = || job.panels.values();
    let counts = [
        ("surveys", say!("check-many-surveys"), job.surveys.len(), MOST_SURVEYS),
        ("surveys", say!("check-many-gauge-checks"), job.surveys.iter().map(|s| s.checks.len()).sum(), MOST_CHECKS),
        ("panels", say!("check-many-gloss"), records().map(|r| r.gloss.len()).sum(), MOST_CHECKS),
        ("panels", say!("check-many-visits"), records().map(|r| r.removals.entries.len()).sum(), MOST_CHECKS),
        ("crew", say!("check-many-workers"), job.crew.len(), MOST_WORKERS),
        ("steps", say!("check-many-steps"), job.steps.len(), MOST_STEPS),
        ("test_spots.results", say!("check-many-tests"), job.test_spots.results.len(), MOST_TESTS),
        ("order_choices", say!("check-many-first"), job.choices.first.len() + job.choices.begins.len(), MOST_CHOICES),
        ("order", say!("check-many-rows"), job.order.as_ref().map_or(0, |o| o.operations.len()), MOST_ROWS),
        ("panels", say!("check-many-spots"), records().map(|r| r.spots.len()).sum::<usize>(), MOST_SPOTS),
        ("panels", say!("check-many-readings"), records().map(|r| r.reading_count()).sum(), MOST_READINGS),
        ("panels", say!("check-many-defects"), records().map(|r| r.defects.len()).sum(), MOST_DEFECTS),
    ];
    for (path, what, count, most) in counts {
        if count > most {
            found.push(Finding::new(
                Code::JobTooLarge,
                path,
                say!("check-job-holds", count = count, what = what, most = most),
                say!("check-job-holds-do"),
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
        .map_or_else(|| say!("check-other-template").to_owned(), |name| say!("check-did-you-mean", name = name))
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
