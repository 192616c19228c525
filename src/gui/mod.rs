//! The window. Views read a model and return wishes (`Action`s); [`App`] alone changes anything.

mod action;
mod app;
mod awake;
mod bay;
mod bodies;
mod chart;
mod commands;
mod dispatch;
mod edit;
mod entry;
mod files;
mod handover;
mod home;
mod import;
mod in_sight;
mod keep;
mod map;
mod modals;
mod order;
mod photos;
mod polishing;
mod practice;
mod rail;
mod theme;
mod top_bar;
mod view_state;
mod widgets;
mod workspace;

pub use app::App;
pub use commands::{command_keys, command_names};
pub use map::MapCache;
pub use theme::{Theme, install as install_theme, set as set_theme};
pub use view_state::Workspace;

use crate::cli::{self, Exit, Failure, Output};
use crate::file::{Learners, Opened, Places, RealDisk, Templates, data_folder};
use crate::say;
use crate::work::Shelf;
use eframe::egui;
use keep::LastWords;
use std::io::IsTerminal;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::path::Path;

/// Opens the window on a job, or on the sample. Where there is no display, says so and prints the plan as text.
///
/// A job that can't be opened is an error; whoever did not start the program from a terminal would not see it, so they get the window
/// with the error in it.
pub fn run(job: Option<&Path>, close_after_first_frame: bool, mut out: Output<'_>) -> Exit {
    let opened = match job {
        Some(path) => Templates::of_user().open_job(&RealDisk, path).map_err(Failure::from),
        None => cli::open(None).map(Opened::from),
    };
    let (opened, path, failure) = match opened {
        Ok(opened) => (opened, job.map(Path::to_owned), None),
        Err(failure) if std::io::stderr().is_terminal() => return failure.report(out.notes),
        Err(failure) => match cli::open(None) {
            Ok(sample) => (Opened::from(sample), None, Some(failure)),
            Err(_) => return failure.report(out.notes),
        },
    };
    let last_words = LastWords::default();
    let window = || open_window(opened, path, failure.clone(), close_after_first_frame, last_words.clone());
    match (catch_unwind(AssertUnwindSafe(window)), failure) {
        (Ok(_), Some(failure)) => failure.report(out.notes),
        (Ok(Ok(())), None) => Exit::Fine,
        (Err(cause), _) => last_words.failure(&*cause).report(out.notes),
        (Ok(Err(error)), None) => {
            // Somebody who can't be told still gets the plan.
            drop(writeln!(out.notes, "{}", say!("window-none-here", error = error.to_string())));
            cli::plan_as_text(job, &mut out)
        }
    }
}

fn open_window(
    opened: Opened,
    path: Option<std::path::PathBuf>,
    failure: Option<Failure>,
    close_after_first_frame: bool,
    last_words: LastWords,
) -> eframe::Result {
    let options = eframe::NativeOptions {
        viewport: egui::ViewportBuilder::default()
            .with_title("Lapwright")
            // The name of the desktop entry, by which desktops know whose window this is.
            .with_app_id("lapwright")
            .with_icon(icon())
            .with_inner_size([1280.0, 800.0])
            .with_min_inner_size([960.0, 600.0]),
        ..Default::default()
    };
    let create: eframe::AppCreator<'_> = Box::new(move |creation| {
        theme::install(&creation.egui_ctx);
        let shelf = Shelf::new(data_folder(|name| std::env::var_os(name), cfg!(windows)));
        let mut app = App::new(opened.loaded, path).with_templates(Templates::of_user());
        app = app.with_learners(Learners::of_user()).with_home(Places::of_user()).keeping_awake().with_viewer();
        app = app.keeping(shelf, opened.print, opened.newer).telling(last_words);
        app.close_after_first_frame = close_after_first_frame;
        if let Some(failure) = failure {
            app.fail(failure);
        }
        Ok(Box::new(app))
    });
    eframe::run_native("lapwright", options, create)
}

/// The icon for desktops that take it from the window; others find it by the app id.
fn icon() -> egui::IconData {
    eframe::icon_data::from_png_bytes(include_bytes!("../package/icon-128.png")).unwrap_or_default()
}
