//! More than a thousand damaged files of every kind that comes from elsewhere: each is refused in one line with a place and what to do, or is
//! harmless; none ends the program.

use lapwright::crew::{Problem, ReadError};
use lapwright::file::{SAMPLE, job_from_text, readings_from_bytes};
use lapwright::finding::Finding;
use lapwright::vehicle::{Template, TemplateError, embedded};
use std::collections::BTreeSet;

/// What takes the place of a value.
const VALUES: [&str; 9] =
    ["\"\"", "\"words\"", "-1e400", "NaN", "-5", "[[[]]]", "(at: 3)", "18446744073709551616", "Some(Some(()))"];

/// Names of fields in RON or JSON text, each once.
fn fields(text: &str) -> BTreeSet<String> {
    let word = |c: char| c.is_ascii_alphanumeric() || c == '_';
    let ends = text.match_indices(':').map(|(at, _)| text[..at].trim_end_matches('"'));
    let names = ends.filter_map(|before| before.rsplit(|c| !word(c)).next());
    names.filter(|n| n.starts_with(|c: char| c.is_ascii_lowercase())).map(str::to_owned).collect()
}

/// The text with the first value of a field replaced, as far as the next comma, bracket or line's end.
fn with_value(text: &str, field: &str, value: &str) -> String {
    let start = [format!("{field}: "), format!("\"{field}\": "), format!("\"{field}\":")]
        .iter()
        .find_map(|name| text.find(name.as_str()).map(|at| at + name.len()))
        .unwrap_or(0);
    let end = text[start..].find([',', ')', ']', '}', '\n']).map_or(text.len(), |at| start + at);
    format!("{}{value}{}", &text[..start], &text[end..])
}

/// Every damage that is done to one sound text, and what it is called.
fn damaged(sound: &str) -> Vec<(String, String)> {
    let mut all = Vec::new();
    for field in fields(sound) {
        all.push((format!("{field} renamed"), sound.replacen(&field, &format!("{field}_of_old"), 1)));
        for value in VALUES {
            all.push((format!("{field} is {value}"), with_value(sound, &field, value)));
        }
    }
    for share in 1..40 {
        let end = (0..=sound.len() * share / 40).rev().find(|at| sound.is_char_boundary(*at)).unwrap_or(0);
        all.push((format!("cut after {end} bytes"), sound[..end].to_owned()));
    }
    all.push(("twice".to_owned(), format!("{sound}{sound}")));
    all.push(("a sign in front".to_owned(), format!("\u{0}{sound}")));
    all
}

/// Holds every damaged text against a reader, which answers what it says and whether that leads to a place in the text; answers how many it
/// refused.
fn refused(sound: &str, read: impl Fn(&str) -> Result<(), (String, bool)>) -> usize {
    assert_eq!(read(sound), Ok(()), "the text is sound before it is damaged");
    let mut count = 0;
    for (what, text) in damaged(sound) {
        let Err((error, is_placed)) = read(&text) else { continue };
        count += 1;
        assert!(!error.trim().is_empty() && !error.contains('\n'), "{what}: {error:?}");
        assert!(error.len() < 2_000, "{what}: {} letters are no message", error.len());
        assert!(is_placed, "{what}: no place or nothing to do in {error:?}");
    }
    count
}

fn all_placed(found: &[Finding]) -> bool {
    !found.is_empty() && found.iter().all(|f| !f.place.is_empty() && !f.cause.is_empty() && !f.action.is_empty())
}

#[test]
fn damaged_jobs_are_refused_with_a_place_and_a_hint() {
    let count = refused(SAMPLE, |text| match job_from_text("file", text) {
        Ok(_) => Ok(()),
        Err(error) => {
            let (said, hint) = (error.to_string(), error.hint());
            let is_placed = said.starts_with("file:") && !hint.trim().is_empty() && !hint.contains('\n');
            Err((said, is_placed))
        }
    });
    assert!(count > 600, "{count}");
}

#[test]
fn damaged_templates_are_refused_with_a_place() {
    let sound = embedded().first().unwrap().text;
    let count = refused(sound, |text| match Template::parse(text) {
        Ok(_) => Ok(()),
        Err(error) => {
            let is_placed = match &error {
                TemplateError::Syntax { line, column, .. } => {
                    *column > 0 && (1..=text.lines().count() + 1).contains(line)
                }
                TemplateError::Findings(found) => all_placed(found),
                // The text as a whole.
                TemplateError::Format(_) | TemplateError::TooLarge { .. } => true,
                TemplateError::Unknown(_) => false,
            };
            Err((error.to_string(), is_placed))
        }
    });
    assert!(count > 400, "{count}");
}

#[test]
fn damaged_crew_problems_are_refused_with_a_place() {
    let sound = std::fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/tests/data/crew/small.json")).unwrap();
    let count = refused(&sound, |text| match Problem::from_json(text) {
        Ok(_) => Ok(()),
        Err(error) => {
            let is_placed = match &error {
                ReadError::Syntax { line, path, .. } => {
                    !path.is_empty() && (1..=text.lines().count() + 1).contains(line)
                }
                ReadError::Invalid(found) => all_placed(found),
            };
            Err((error.to_string(), is_placed))
        }
    });
    assert!(count > 250, "{count}");
}

#[test]
fn damaged_lists_of_readings_are_refused_or_lose_only_the_damaged_rows() {
    let sound = "panel,reading,thickness_um,note\nroof-left,1,104.5,dry\nroof-left,2,105,\n";
    let heads = ["", "panel", "panel,reading", "panel,panel,reading,thickness_um", "\u{0}"];
    for head in heads {
        let text = sound.replacen("panel,reading,thickness_um,note", head, 1);
        let error = readings_from_bytes("file", text.as_bytes()).unwrap_err().to_string();
        assert!(error.contains("file") && !error.contains('\n'), "{head:?}: {error}");
    }
    for value in ["", "thick", "1e400", "NaN", "-4", "99999999", "1,2,3", "\"", "104.5.2", "١٠٤"] {
        let text = format!("panel,reading,thickness_um\nroof-left,1,{value}\nroof-left,2,105\n");
        let Ok(read) = readings_from_bytes("file", text.as_bytes()) else { continue };
        assert!(read.rows.len() <= 1, "{value:?} is no thickness: {:?}", read.rows);
        assert!(read.rejected.iter().all(|row| row.line >= 2 && !row.reason.is_empty()), "{value:?}");
    }
}
