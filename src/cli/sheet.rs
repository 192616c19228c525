//! `lapwright sheet customer|crew|record [JOB] --out FILE`

use super::args::{Locale, PaperSize, Which};
use super::{Exit, Failure, Output, args, open, order};
use crate::file::{RealDisk, write_export};
use crate::insight::Insight;
use crate::say;
use crate::sheets::{self, MissingCharacters, Options, Paper, Sheet, SheetInput, job_code, missing_characters};
use crate::units::DateOrder;
use crate::vehicle::Naming;
use crate::work::{Clock, WallClock};
use std::path::Path;

/// What a file is, by its ending.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Kind {
    Pdf,
    Html,
    List,
    Calendar,
}

/// Writes a sheet.
pub(super) fn run(args: &args::Sheet, out: &mut Output<'_>) -> Result<Exit, Failure> {
    let kind = kind(args.which, &args.out)?;
    if args.costs && args.which != Which::Customer {
        return Err(Failure::new(say!("cli-costs-customer"), say!("cli-costs-do")));
    }
    let loaded = open(args.job.as_deref())?;
    let insight = Insight::new(&loaded.job, &loaded.template);
    let wants_orders = kind != Kind::Calendar;
    let (coating, mut none) = if wants_orders { order::coating(&loaded, &insight) } else { Default::default() };
    let (polishing, why) = if wants_orders { order::polishing(&loaded, &insight) } else { Default::default() };
    none.extend(why);
    let (naming, dates) = match args.locale {
        Locale::Uk => (Naming::Uk, DateOrder::DayFirst),
        Locale::Us => (Naming::Us, DateOrder::MonthFirst),
    };
    let paper = if args.paper == PaperSize::A4 { Paper::A4 } else { Paper::Letter };
    let input = SheetInput {
        job: &loaded.job,
        template: &loaded.template,
        insight: &insight,
        order: &coating,
        polishing: polishing.as_ref(),
        shop: "",
        options: Options { naming, paper, dates, costs: args.costs, done_at: args.done, ..Options::default() },
    };
    let bytes = match kind {
        Kind::List => sheets::crew_list(&input).map_err(fault)?.into_bytes(),
        Kind::Calendar => {
            let day = say!("cli-no-day");
            let hint = say!("cli-no-day-do");
            let calendar = sheets::calendar(&input, &job_code(&loaded.job), &sheets::calendar_stamp(WallClock.now_s()));
            calendar.ok_or_else(|| Failure::new(day, hint))?.into_bytes()
        }
        Kind::Pdf => {
            let sheet = sheet(args.which, &input);
            let missing = missing_characters(&sheet);
            if !missing.is_empty() {
                return Err(unprintable(&missing));
            }
            sheets::pdf(&sheet.pages(paper)).map_err(fault)?
        }
        Kind::Html => sheets::html(&sheet(args.which, &input)).into_bytes(),
    };
    write_export(&RealDisk, &args.out, &bytes)?;
    let mut exit = Exit::Fine;
    for conflict in none {
        writeln!(out.notes, "{}", say!("cli-no-order", why = conflict))?;
        exit = Exit::Findings;
    }
    Ok(exit)
}

fn sheet(which: Which, input: &SheetInput<'_>) -> Sheet {
    match which {
        Which::Customer => sheets::customer(input),
        Which::Crew => sheets::crew(input),
        Which::Record => sheets::record(input),
    }
}

fn kind(which: Which, file: &Path) -> Result<Kind, Failure> {
    match (ending(file).as_str(), which) {
        ("pdf", _) => Ok(Kind::Pdf),
        ("html", _) => Ok(Kind::Html),
        ("csv", Which::Crew) => Ok(Kind::List),
        ("ics", Which::Customer) => Ok(Kind::Calendar),
        _ => {
            let hint = match which {
                Which::Customer => say!("cli-ending-customer"),
                Which::Crew => say!("cli-ending-crew"),
                Which::Record => say!("cli-ending-record"),
            };
            Err(Failure::new(say!("cli-sheet-ending", file = file.display().to_string()), hint))
        }
    }
}

/// The ending of a file's name in small letters.
pub(super) fn ending(file: &Path) -> String {
    file.extension().map(|e| e.to_string_lossy().to_lowercase()).unwrap_or_default()
}

/// One line for all texts with characters that the font of the sheets lacks.
fn unprintable(missing: &[MissingCharacters]) -> Failure {
    let places: Vec<String> = missing.iter().map(ToString::to_string).collect();
    Failure::new(say!("cli-font-lacks", places = places.join("; ")), say!("cli-font-lacks-do"))
}

pub(super) fn fault(error: impl std::fmt::Display) -> Failure {
    Failure::new(error.to_string(), say!("cli-report"))
}
