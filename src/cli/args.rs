//! What can be said on the command line.

use crate::say;
use crate::words::Language;
use clap::{Parser, Subcommand, ValueEnum};
use std::path::PathBuf;

/// Plan a light paint correction and the coating of a vehicle by two people.
#[derive(Debug, Parser)]
#[command(name = "lapwright", version, about = say!("cli-help"))]
pub struct Args {
    /// The job to open in the window; without one, the sample. Where there is no display, its plan is printed instead
    #[arg(help = say!("cli-help-job"))]
    pub job: Option<PathBuf>,
    /// What to do instead of opening the window.
    #[command(subcommand)]
    pub command: Option<Command>,
    /// Language of what is printed and of sheets; without it, that of the system
    #[arg(help = say!("cli-help-language"), long, global = true, value_name = "LANGUAGE", value_parser = tongue)]
    pub language: Option<Language>,
    /// Close the window again after its first picture; for measuring how long that takes
    #[arg(long, hide = true)]
    pub close_after_first_frame: bool,
}

/// The commands that need no window.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Write the sample job as a file to start from
    #[command(about = say!("cli-help-sample"))]
    Sample(Sample),
    /// Print the polish plan and the order of coating
    #[command(about = say!("cli-help-plan"))]
    Plan(Plan),
    /// Check jobs, vehicle templates and crew problems; lists all findings
    #[command(about = say!("cli-help-check"))]
    Check(Check),
    /// Solve a crew problem; prints a line per improvement on stderr: seconds, cost, bound
    #[command(about = say!("cli-help-crew"))]
    Crew(Crew),
    /// Add readings from a CSV file to a job; lists every row that is not taken
    #[command(about = say!("cli-help-import"))]
    Import(Import),
    /// Write the sheet for the customer, the cards of the crew, or the technical record
    #[command(about = say!("cli-help-sheet"))]
    Sheet(Sheet),
    /// Write the map of the vehicle as a picture
    #[command(about = say!("cli-help-map"))]
    Map(Map),
    /// Explain a finding: what it means and what to do
    #[command(about = say!("cli-help-explain"))]
    Explain(Explain),
}

/// Arguments of `sample`.
#[derive(Debug, clap::Args)]
pub struct Sample {
    /// The file to write; it must not exist yet
    #[arg(help = say!("cli-help-sample-out"), long, value_name = "JOB")]
    pub out: PathBuf,
}

/// Arguments of `plan`.
#[derive(Debug, clap::Args)]
pub struct Plan {
    /// The job; without one, the sample
    #[arg(help = say!("cli-help-job-or-sample"))]
    pub job: Option<PathBuf>,
    /// Print one JSON object instead of text
    #[arg(help = say!("cli-help-json"), long)]
    pub json: bool,
    /// How long to look for a better order
    #[arg(help = say!("cli-help-plan-seconds"), long, default_value = "1", value_parser = seconds)]
    pub seconds: f64,
    /// Seed of the search; the same seed looks in the same places
    #[arg(help = say!("cli-help-plan-seed"), long, default_value = "1")]
    pub seed: u64,
}

/// Arguments of `check`.
#[derive(Debug, clap::Args)]
pub struct Check {
    /// The files
    #[arg(help = say!("cli-help-files"), required = true, value_name = "FILE")]
    pub files: Vec<PathBuf>,
}

/// Arguments of `crew`.
#[derive(Debug, clap::Args)]
pub struct Crew {
    /// The problem, format crew-problem/1
    #[arg(help = say!("cli-help-problem"), value_name = "PROBLEM.json")]
    pub problem: PathBuf,
    /// How long to search
    #[arg(help = say!("cli-help-crew-seconds"), long, default_value = "10", value_parser = seconds)]
    pub seconds: f64,
    /// How many threads search
    #[arg(help = say!("cli-help-threads"), long, default_value = "2", value_parser = clap::value_parser!(u16).range(1..=64))]
    pub threads: u16,
    /// Seed of the search
    #[arg(help = say!("cli-help-crew-seed"), long, default_value = "1")]
    pub seed: u64,
    /// Write the plan here instead of printing it
    #[arg(help = say!("cli-help-crew-plan"), long, value_name = "OUT.json")]
    pub plan: Option<PathBuf>,
}

/// Arguments of `import`.
#[derive(Debug, clap::Args)]
pub struct Import {
    /// The job
    #[arg(help = say!("cli-help-the-job"))]
    pub job: PathBuf,
    /// The readings: a header row with panel, reading, and thickness_um or thickness_mil
    #[arg(help = say!("cli-help-readings"), value_name = "READINGS.csv")]
    pub readings: PathBuf,
    /// The file to write the job to; it may be the same
    #[arg(help = say!("cli-help-import-out"), long, value_name = "JOB")]
    pub out: PathBuf,
}

/// Arguments of `sheet`.
#[derive(Debug, clap::Args)]
pub struct Sheet {
    /// Which one
    #[arg(help = say!("cli-help-which"), value_enum)]
    pub which: Which,
    /// The job; without one, the sample
    #[arg(help = say!("cli-help-job-or-sample"))]
    pub job: Option<PathBuf>,
    /// The file to write: .pdf or .html; for the crew also .csv, for the customer also .ics with the care times
    #[arg(help = say!("cli-help-sheet-out"), long, value_name = "FILE")]
    pub out: PathBuf,
    /// Size of the paper
    #[arg(help = say!("cli-help-paper"), long, value_enum, default_value = "a4")]
    pub paper: PaperSize,
    /// British or American dates and names of panels
    #[arg(help = say!("cli-help-locale"), long, value_enum, default_value = "uk")]
    pub locale: Locale,
    /// Say on the customer sheet what the polishing costs at the shop's prices
    #[arg(help = say!("cli-help-costs"), long)]
    pub costs: bool,
    /// When the last panel will be level on the day of the job; care times count from then
    #[arg(help = say!("cli-help-done"), long, value_name = "HH:MM", default_value = "17:00", value_parser = time_of_day)]
    pub done: (i8, i8),
}

/// The sheets there are.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Which {
    /// For the customer: what was found, what will be done, how to look after it
    #[value(help = say!("cli-help-customer"))]
    Customer,
    /// A card for everybody in the crew, with their own order
    #[value(help = say!("cli-help-crew-card"))]
    Crew,
    /// All that a later visit needs
    #[value(help = say!("cli-help-record"))]
    Record,
}

/// Sizes of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum PaperSize {
    /// 210 × 297 mm
    #[value(help = say!("cli-help-a4"))]
    A4,
    /// 8.5 × 11 in
    #[value(help = say!("cli-help-letter"))]
    Letter,
}

/// How dates and panels are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Locale {
    /// Thu 26 November 2026; bonnet, wing, boot
    #[value(help = say!("cli-help-uk"))]
    Uk,
    /// Thu, November 26, 2026; hood, fender, trunk
    #[value(help = say!("cli-help-us"))]
    Us,
}

/// Arguments of `map`.
#[derive(Debug, clap::Args)]
pub struct Map {
    /// The job; without one, the sample
    #[arg(help = say!("cli-help-job-or-sample"))]
    pub job: Option<PathBuf>,
    /// What it shows
    #[arg(help = say!("cli-help-show"), long, value_enum)]
    pub show: Show,
    /// The file to write: .svg or .png
    #[arg(help = say!("cli-help-map-out"), long, value_name = "FILE")]
    pub out: PathBuf,
}

/// What a map can show.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Show {
    /// Film thickness
    #[value(help = say!("cli-help-film"))]
    Film,
    /// What is wrong, where
    #[value(help = say!("cli-help-defects"))]
    Defects,
    /// How hard each panel will be worked
    #[value(help = say!("cli-help-polish"))]
    Polish,
    /// Who coats what, in which order
    #[value(help = say!("cli-help-order"))]
    Order,
}

/// Arguments of `explain`.
#[derive(Debug, clap::Args)]
pub struct Explain {
    /// The code of a finding, for example template-gap
    #[arg(help = say!("cli-help-code"))]
    pub code: String,
}

fn seconds(text: &str) -> Result<f64, String> {
    match text.parse::<f64>() {
        Ok(s) if s.is_finite() && (0.0..=86_400.0).contains(&s) => Ok(s),
        _ => Err(say!("cli-bad-seconds").to_owned()),
    }
}

fn time_of_day(text: &str) -> Result<(i8, i8), String> {
    let parts = text.split_once(':').and_then(|(h, m)| Some((h.parse().ok()?, m.parse().ok()?)));
    parts.filter(|(h, m)| (0..24).contains(h) && (0..60).contains(m)).ok_or_else(|| say!("cli-bad-time").to_owned())
}

/// A language by its tag after BCP 47.
fn tongue(text: &str) -> Result<Language, String> {
    let tags = Language::ALL.map(Language::tag);
    let found = Language::ALL.into_iter().find(|language| language.tag() == text);
    found.ok_or_else(|| say!("cli-bad-language", tags = tags.join(", ")))
}
