//! The command line: one file per command. Data goes to stdout; `error:` and `hint:` go to stderr.

mod args;
mod check;
mod crew;
mod explain;
mod failure;
mod import;
mod map;
mod order;
mod plan;
mod printable;
mod sample;
mod sheet;

pub use args::{Args, Command};
pub use failure::Failure;
pub use printable::Printable;

use crate::file::{Loaded, RealDisk, SAMPLE, Templates, job_from_text};
use crate::say;
use clap::Parser;
use std::ffi::OsString;
use std::io::Write;
use std::path::Path;

/// How a command ended; the number is the exit code.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Exit {
    /// Done, nothing to complain about.
    Fine = 0,
    /// Done, but there are findings, or there is no valid plan.
    Findings = 1,
    /// Not done: bad input or usage.
    Failed = 2,
}

/// Where a command writes.
pub struct Output<'a> {
    /// Data.
    pub data: &'a mut dyn Write,
    /// Everything said about it.
    pub notes: &'a mut dyn Write,
}

impl std::fmt::Debug for Output<'_> {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Output").finish_non_exhaustive()
    }
}

/// Understands the words of a command line. `Err` holds what to print and how to exit: help, version, or a usage error.
///
/// # Errors
/// Help and version as [`Exit::Fine`], anything not understood as a [`Failure`].
pub fn parse(words: impl IntoIterator<Item = OsString>) -> Result<Args, ParseEnd> {
    use clap::error::ErrorKind as K;
    let parsed = Args::try_parse_from(words).map_err(|error| match error.kind() {
        K::DisplayHelp | K::DisplayVersion => ParseEnd::Text(error.to_string()),
        _ => {
            let text = error.to_string();
            // The first paragraph says what is wrong; a missing argument is named in its second line.
            let wrong = text.split("\n\n").next().unwrap_or_default().trim_start_matches("error: ");
            ParseEnd::Failure(Failure::new(wrong, say!("cli-see-help")))
        }
    })?;
    match &parsed {
        // The job of a command stands behind it.
        Args { job: Some(job), command: Some(_), .. } => {
            let error = say!("cli-job-before-command", job = job.display().to_string());
            Err(ParseEnd::Failure(Failure::new(error, say!("cli-see-help"))))
        }
        _ => Ok(parsed),
    }
}

/// Why a command line gave no command.
#[derive(Debug)]
pub enum ParseEnd {
    /// Asked for text: help or version.
    Text(String),
    /// Not understood.
    Failure(Failure),
}

/// Runs a command that needs no window.
pub fn run(command: Command, out: &mut Output<'_>) -> Exit {
    let result = match command {
        Command::Sample(args) => sample::run(&args),
        Command::Plan(args) => plan::run(&args, out),
        Command::Check(args) => Ok(check::run(&args, out)),
        Command::Crew(args) => crew::run(&args, out),
        Command::Import(args) => import::run(&args, out),
        Command::Sheet(args) => sheet::run(&args, out),
        Command::Map(args) => map::run(&args, out),
        Command::Explain(args) => explain::run(&args, out),
    };
    result.unwrap_or_else(|failure| failure.report(out.notes))
}

/// Prints the plan of a job as text, for a machine without a display.
pub fn plan_as_text(job: Option<&Path>, out: &mut Output<'_>) -> Exit {
    let args = args::Plan { job: job.map(Path::to_owned), json: false, seconds: 1.0, seed: 1 };
    plan::run(&args, out).unwrap_or_else(|failure| failure.report(out.notes))
}

/// The job named, or the embedded sample.
///
/// # Errors
/// A [`Failure`] with place and hint.
pub fn open(job: Option<&Path>) -> Result<Loaded, Failure> {
    match job {
        Some(path) => Ok(Templates::of_user().read_job(&RealDisk, path)?),
        None => Ok(job_from_text(say!("cli-the-sample"), SAMPLE)?),
    }
}
