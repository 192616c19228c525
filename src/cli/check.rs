//! `lapwright check FILE…`

use super::{Exit, Failure, Output, args, crew};
use crate::crew::{Problem, ReadError};
use crate::file::{RealDisk, Templates, read_text};
use crate::finding::{Finding, Severity};
use crate::insight::Insight;
use crate::say;
use crate::vehicle::{Template, TemplateError, written_at};
use std::path::Path;
use std::sync::Arc;

/// Checks every file; one that can't be read doesn't keep the others from being checked.
pub(super) fn run(args: &args::Check, out: &mut Output<'_>) -> Exit {
    let ends = args.files.iter().map(|file| one(file, out).unwrap_or_else(|failure| failure.report(out.notes)));
    ends.max_by_key(|end| *end as u8).unwrap_or(Exit::Fine)
}

fn one(file: &Path, out: &mut Output<'_>) -> Result<Exit, Failure> {
    let text = read_text(&RealDisk, file)?;
    let name = file.display().to_string();
    let Checked { found, suggested } = check(&name, &text)?;
    for finding in found.iter().chain(&suggested) {
        match written_at(&text, &finding.place).filter(|_| is_template(&text)) {
            Some((line, column)) => writeln!(out.data, "{name}:{line}:{column}: {finding}")?,
            None => writeln!(out.data, "{name}: {finding}")?,
        }
    }
    match found.len() {
        0 => writeln!(out.data, "{}", say!("cli-check-nothing", name = name.as_str()))?,
        count => writeln!(out.data, "{}", say!("cli-check-findings", name = name.as_str(), count = count))?,
    }
    match suggested.len() {
        0 => {}
        count => writeln!(out.data, "{}", say!("cli-check-suggest", name = name.as_str(), count = count))?,
    }
    Ok(if found.is_empty() { Exit::Fine } else { Exit::Findings })
}

/// What a check has to say.
struct Checked {
    /// What is wrong with the file.
    found: Vec<Finding>,
    /// What the readings of a job suggest about the paint; nothing is wrong with the file because of it.
    suggested: Vec<Finding>,
}

fn check(name: &str, text: &str) -> Result<Checked, Failure> {
    if !is_job(text) {
        return Ok(Checked { found: findings(name, text)?, suggested: Vec::new() });
    }
    let (job, template, found) = Templates::of_user().job_findings(name, text)?;
    let usable = found.iter().all(|f| f.severity() < Severity::Fault);
    let insight = usable.then(|| Insight::new(&Arc::new(job), &template));
    let suggested = insight.map(|i| i.points.all().cloned().collect()).unwrap_or_default();
    Ok(Checked { found, suggested })
}

/// Whether a text is neither a crew problem nor a vehicle template.
fn is_job(text: &str) -> bool {
    !text.trim_start().starts_with('{') && !is_template(text)
}

fn is_template(text: &str) -> bool {
    text.contains("\"vehicle-template/")
}

/// What a file is shows in its text: JSON is a crew problem, and RON says its format in the first field.
fn findings(name: &str, text: &str) -> Result<Vec<Finding>, Failure> {
    if text.trim_start().starts_with('{') {
        return match Problem::from_json(text) {
            Ok(_) => Ok(Vec::new()),
            Err(ReadError::Invalid(found)) => Ok(found),
            Err(error) => Err(crew::unusable(name, &error)),
        };
    }
    match Template::parse(text) {
        Ok(template) => Ok(template.check()),
        Err(TemplateError::Findings(found)) => Ok(found),
        Err(error @ TemplateError::Syntax { .. }) => {
            Err(Failure::new(format!("{name}:{error}"), say!("cli-mend-place")))
        }
        Err(error) => Err(Failure::new(format!("{name}: {error}"), say!("cli-mend-or-other"))),
    }
}
