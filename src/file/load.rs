//! Reading a job: text, fields, then the whole against its template.

use super::disk::Disk;
use super::error::ReadError;
use super::templates::Templates;
use super::v1::{FORMAT, JobFile};
use crate::finding::{Finding, Severity};
use crate::job::{Job, check, check_alone};
use crate::say;
use crate::vehicle::{self, Size, Template};
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

/// Reads a job from disk, on a template that comes with the program.
///
/// # Errors
/// [`ReadError`]: the file can't be read, is not a job, or has a fault.
pub fn read_job(disk: &dyn Disk, path: &Path) -> Result<Loaded, ReadError> {
    Templates::default().read_job(disk, path)
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

/// Reads a job from text, on a template that comes with the program; `name` is what errors call it.
///
/// # Errors
/// [`ReadError`]: the text is not a job, or has a fault.
pub fn job_from_text(name: &str, text: &str) -> Result<Loaded, ReadError> {
    Templates::default().job_from_text(name, text)
}

/// Reads a job on a template that comes with the program, and checks it: all findings.
///
/// # Errors
/// [`ReadError`] when the text is not a job at all, so that there is nothing to check.
pub fn job_findings(name: &str, text: &str) -> Result<(Job, Arc<Template>, Vec<Finding>), ReadError> {
    Templates::default().job_findings(name, text)
}

/// The template that a job names, in the size that the job gives.
///
/// # Errors
/// [`ReadError::UnknownTemplate`], or what is wrong with the user's file of that template.
pub fn template_of(name: &str, job: &Job, templates: &Templates) -> Result<Arc<Template>, ReadError> {
    Ok(sized(templates.load(name, &job.vehicle.template)?, job.vehicle.size_mm))
}

/// A template in another size, or as it is. A size that no vehicle has changes nothing: the check of the job finds it.
pub fn sized(template: Arc<Template>, size: Option<Size>) -> Arc<Template> {
    let other = size.filter(|size| *size != template.size()).and_then(|size| template.with_size(size).ok());
    other.map_or(template, Arc::new)
}

impl Templates {
    /// Reads a job from disk.
    ///
    /// # Errors
    /// [`ReadError`]: the file can't be read, is not a job, or has a fault, or its template can't be had.
    pub fn read_job(&self, disk: &dyn Disk, path: &Path) -> Result<Loaded, ReadError> {
        self.job_from_text(&path.display().to_string(), &read_text(disk, path)?)
    }

    /// Reads a job from text; `name` is what errors call it.
    ///
    /// # Errors
    /// As [`Templates::read_job`].
    pub fn job_from_text(&self, name: &str, text: &str) -> Result<Loaded, ReadError> {
        let (job, template, found) = self.job_findings(name, text)?;
        no_fault(name, found)?;
        Ok(Loaded { job: Arc::new(job), template })
    }

    /// Reads a job and checks it: all findings.
    ///
    /// # Errors
    /// [`ReadError`] when the text is not a job at all or its template can't be had, so that there is nothing to check.
    pub fn job_findings(&self, name: &str, text: &str) -> Result<(Job, Arc<Template>, Vec<Finding>), ReadError> {
        self.held_against_template(name, read_fields(name, text)?)
    }

    /// Reads what a newer version of the program wrote, where all of it is known here too and nothing is missing.
    pub(super) fn job_of_newer(&self, name: &str, text: &str) -> Result<Loaded, ReadError> {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let (job, template, found) = self.held_against_template(name, parse_fields(name, text)?.into_job())?;
        no_fault(name, found)?;
        Ok(Loaded { job: Arc::new(job), template })
    }

    fn held_against_template(
        &self,
        name: &str,
        (job, mut found): (Job, Vec<Finding>),
    ) -> Result<(Job, Arc<Template>, Vec<Finding>), ReadError> {
        let template = template_of(name, &job, self)?;
        found.extend(check(&job, &template));
        Ok((job, template, found))
    }
}

/// Reads back a job that was just written. It is held against its template where that comes with the program; a template of the
/// user's own is not looked for, so that a job can be saved even when that file is gone.
pub(super) fn read_back(text: &str) -> Result<Job, ReadError> {
    let name = say!("file-just-written");
    let (job, mut found) = read_fields(name, text)?;
    match vehicle::load_embedded(&job.vehicle.template) {
        Ok(template) => found.extend(check(&job, &template)),
        Err(_) => found.extend(check_alone(&job)),
    }
    no_fault(name, found)?;
    Ok(job)
}

fn no_fault(name: &str, found: Vec<Finding>) -> Result<(), ReadError> {
    let mut faults = found.into_iter().filter(|f| f.severity() == Severity::Fault);
    match faults.next() {
        None => Ok(()),
        Some(first) => Err(ReadError::Unusable { name: name.to_owned(), first: Box::new(first), more: faults.count() }),
    }
}

/// The job as it stands in the text, not held against anything.
pub(super) fn read_fields(name: &str, text: &str) -> Result<(Job, Vec<Finding>), ReadError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    if text.trim().is_empty() {
        return Err(ReadError::Empty { name: name.to_owned() });
    }
    let is_other = |error: &ReadError| {
        matches!(error, ReadError::Syntax { .. }) && !["format:", "panels:"].iter().any(|f| text.contains(f))
    };
    let no_job = |error| if is_other(&error) { ReadError::NoJob { name: name.to_owned() } } else { error };
    let file: JobFile = parse(name, text).map_err(no_job)?;
    if file.format != FORMAT {
        return Err(other_format(name, text, file.format));
    }
    Ok(file.into_job())
}

/// The format of a text that a newer version of the program wrote.
pub(super) fn newer_format(text: &str) -> Option<String> {
    let version = |format: &str| format.strip_prefix("job/").and_then(|v| v.parse::<u32>().ok());
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    stated_format(text).filter(|format| version(format) > version(FORMAT))
}

fn parse(name: &str, text: &str) -> Result<JobFile, ReadError> {
    // An unknown format is told before its unknown fields are.
    if let Some(format) = stated_format(text)
        && format != FORMAT
    {
        return Err(other_format(name, text, format));
    }
    parse_fields(name, text)
}

fn parse_fields(name: &str, text: &str) -> Result<JobFile, ReadError> {
    let syntax = |error: ron::error::SpannedError, field: String| ReadError::Syntax {
        name: name.to_owned(),
        line: error.span.start.line,
        column: error.span.start.col,
        field,
        message: error.code.to_string(),
    };
    let mut reader = ron::Deserializer::from_str(text).map_err(|e| syntax(e, String::new()))?;
    let file = serde_path_to_error::deserialize(&mut reader).map_err(|error| {
        // The path ends in "." at the top and in "?" where no field was reached.
        let field = error.path().to_string().trim_end_matches(['?', '.']).to_owned();
        syntax(reader.span_error(error.into_inner()), field)
    })?;
    reader.end().map_err(|e| syntax(reader.span_error(e), String::new()))?;
    Ok(file)
}

/// Whether the text says first that it is of the format that is written.
pub(super) fn is_of_this_format(text: &str) -> bool {
    stated_format(text).is_some_and(|format| format == FORMAT)
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
    ReadError::OtherFormat { name: name.to_owned(), line, format, reads: super::v1::FORMAT }
}
