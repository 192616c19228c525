//! The `lapwright` program: understands the command line and hands over to the command line or the window.

use lapwright::cli::{self, Output, ParseEnd, Printable};
use lapwright::words::{Language, set_language};
use std::io::{IsTerminal, Write};
use std::process::ExitCode;

fn main() -> ExitCode {
    set_language(Language::of_environment(|name| std::env::var(name).ok()));
    // A program that reads the data gets it as it is; a terminal would carry out what it holds.
    let mut data: Box<dyn Write> = match std::io::stdout() {
        terminal if terminal.is_terminal() => Box::new(Printable(terminal.lock())),
        other => Box::new(other.lock()),
    };
    let mut notes = Printable(std::io::stderr().lock());
    let mut out = Output { data: &mut data, notes: &mut notes };
    let parsed = cli::parse(std::env::args_os());
    if let Ok(cli::Args { language: Some(language), .. }) = &parsed {
        set_language(*language);
    }
    let exit = match parsed {
        Err(ParseEnd::Text(text)) => {
            drop(write!(out.data, "{text}")); // a closed stdout wants no help
            cli::Exit::Fine
        }
        Err(ParseEnd::Failure(failure)) => failure.report(out.notes),
        Ok(cli::Args { command: Some(command), .. }) => cli::run(command, &mut out),
        Ok(args) => window(args, out),
    };
    ExitCode::from(exit as u8)
}

#[cfg(feature = "gui")]
fn window(args: cli::Args, out: Output<'_>) -> cli::Exit {
    lapwright::gui::run(args.job.as_deref(), args.close_after_first_frame, out)
}

#[cfg(not(feature = "gui"))]
fn window(args: cli::Args, mut out: Output<'_>) -> cli::Exit {
    cli::plan_as_text(args.job.as_deref(), &mut out)
}
