//! Reading a job: text, fields, then the whole against its template.

use super::disk::Disk;
use super::error::ReadError;
use super::v1::{FORMAT, JobFile};
use crate::finding::{Finding, Severity};
use crate::job::{Job, check};
use crate::vehicle::{self, Template};
use std::path::Path;
use std::sync::Arc;

/// A larger file is not a job.
const LIMIT_MIB: u64 = 64;

/// A job that can be worked on.
#[derive(Debug, Clone)]
pub struct Loaded {
    /// The job.
    pub job: Arc<Job>,
    /// The template it names.
    pub template: Arc<Template>,
}

/// Reads a job from disk.
///
/// # Errors
/// [`ReadError`]: the file can't be read, is not a job, or has a fault.
pub fn read_job(disk: &dyn Disk, path: &Path) -> Result<Loaded, ReadError> {
    job_from_text(&path.display().to_string(), &read_text(disk, path)?)
}

/// Reads a whole text file of at most 64 MiB; a byte order mark at its start is left out.
///
/// # Errors
/// [`ReadError`]: the file can't be read, is too large, or is not UTF-8.
pub fn read_text(disk: &dyn Disk, path: &Path) -> Result<String, ReadError> {
    let limit = LIMIT_MIB * 1024 * 1024;
    let bytes = disk.read(path, limit + 1).map_err(|cause| ReadError::Unreadable { path: path.to_owned(), cause })?;
    if bytes.len() as u64 > limit {
        return Err(ReadError::TooLarge { path: path.to_owned(), limit_mib: LIMIT_MIB });
    }
    let text = String::from_utf8(bytes).map_err(|error| {
        let good = &error.as_bytes()[..error.utf8_error().valid_up_to()];
        let lines = || good.split(|b| *b == b'\n');
        let column = 1 + lines().next_back().map_or(0, <[u8]>::len);
        ReadError::NotText { name: path.display().to_string(), line: lines().count(), column }
    })?;
    Ok(match text.strip_prefix('\u{feff}') {
        Some(rest) => rest.to_owned(),
        None => text,
    })
}

/// Reads a job from text; `name` is what errors call it.
///
/// # Errors
/// [`ReadError`]: the text is not a job, or has a fault.
pub fn job_from_text(name: &str, text: &str) -> Result<Loaded, ReadError> {
    let (job, template, found) = job_findings(name, text)?;
    let mut faults = found.into_iter().filter(|f| f.severity() == Severity::Fault);
    match faults.next() {
        None => Ok(Loaded { job: Arc::new(job), template }),
        Some(first) => Err(ReadError::Unusable { name: name.to_owned(), first: Box::new(first), more: faults.count() }),
    }
}

/// Reads a job and checks it: all findings.
///
/// # Errors
/// [`ReadError`] when the text is not a job at all, so that there is nothing to check.
pub fn job_findings(name: &str, text: &str) -> Result<(Job, Arc<Template>, Vec<Finding>), ReadError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let file: JobFile = parse(name, text)?;
    if file.format != FORMAT {
        return Err(other_format(name, text, file.format));
    }
    let (job, mut found) = file.into_job();
    let template = template_of(name, &job)?;
    found.extend(check(&job, &template));
    Ok((job, template, found))
}

/// The template that a job names.
///
/// # Errors
/// [`ReadError::UnknownTemplate`].
pub fn template_of(name: &str, job: &Job) -> Result<Arc<Template>, ReadError> {
    let template = vehicle::load_embedded(&job.vehicle.template).ok(); // it is embedded and sound, or there is none
    template.ok_or_else(|| ReadError::UnknownTemplate {
        name: name.to_owned(),
        template: job.vehicle.template.clone(),
        known: vehicle::embedded().iter().map(|e| e.id).collect::<Vec<_>>().join(", "),
    })
}

fn parse(name: &str, text: &str) -> Result<JobFile, ReadError> {
    let syntax = |error: ron::error::SpannedError, field: String| ReadError::Syntax {
        name: name.to_owned(),
        line: error.span.start.line,
        column: error.span.start.col,
        field,
        message: error.code.to_string(),
    };
    // An unknown format is told before its unknown fields are.
    if let Some(format) = stated_format(text)
        && format != FORMAT
    {
        return Err(other_format(name, text, format));
    }
    let mut reader = ron::Deserializer::from_str(text).map_err(|e| syntax(e, String::new()))?;
    let file = serde_path_to_error::deserialize(&mut reader).map_err(|error| {
        // The path ends in "." at the top and in "?" where no field was reached.
        let field = error.path().to_string().trim_end_matches(['?', '.']).to_owned();
        syntax(reader.span_error(error.into_inner()), field)
    })?;
    reader.end().map_err(|e| syntax(reader.span_error(e), String::new()))?;
    Ok(file)
}

/// The value of the format field, where the text has one in the usual place.
fn stated_format(text: &str) -> Option<String> {
    let (before, rest) = text.split_once("format:")?;
    let only_comments = before.lines().all(|l| l.trim().is_empty() || l.trim() == "(" || l.trim().starts_with("//"));
    let value = rest.trim_start().strip_prefix('"')?.split('"').next()?;
    only_comments.then(|| value.to_owned())
}

fn other_format(name: &str, text: &str, format: String) -> ReadError {
    let line = text.lines().position(|l| l.contains("format:")).map_or(1, |i| i + 1);
    ReadError::OtherFormat { name: name.to_owned(), line, format }
}
