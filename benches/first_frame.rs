//! How long until the first picture: the program against an empty window of the same build, by turns.
//!
//! Needs a display. On a machine without one: `xvfb-run -a cargo bench --bench first_frame`.
//! Each run is a whole process, from start to exit; both close themselves after the first picture. With `--an-empty-window-that-stays`
//! it is an empty window and nothing else, for `.ci/footprint` to measure against.

#![expect(
    clippy::expect_used,
    clippy::print_stdout,
    reason = "a bench says its figures and stops where it can't measure"
)]

use eframe::egui;
use std::process::Command;
use std::time::{Duration, Instant};

const RUNS: usize = 15;
const EMPTY: &str = "--an-empty-window";
const STAYS: &str = "--an-empty-window-that-stays";

struct Empty {
    frames: u32,
    stays: bool,
}

impl eframe::App for Empty {
    fn ui(&mut self, ui: &mut egui::Ui, _frame: &mut eframe::Frame) {
        self.frames += 1;
        if self.stays {
            return;
        }
        if self.frames > 1 {
            ui.send_viewport_cmd(egui::ViewportCommand::Close);
        } else {
            ui.request_repaint();
        }
    }
}

fn main() {
    let stays = std::env::args().any(|a| a == STAYS);
    if stays || std::env::args().any(|a| a == EMPTY) {
        let viewport = egui::ViewportBuilder::default().with_inner_size([1280.0, 800.0]);
        let options = eframe::NativeOptions { viewport, ..Default::default() };
        let create: eframe::AppCreator<'_> = Box::new(|creation| {
            // The build has no other typeface than the program's, and a window without any can't be drawn.
            lapwright::gui::install_theme(&creation.egui_ctx);
            Ok(Box::new(Empty { frames: 0, stays }))
        });
        eframe::run_native("empty", options, create).expect("a display");
        return;
    }
    let this = std::env::current_exe().expect("a bench has a path");
    let (mut empty, mut full) = (Vec::new(), Vec::new());
    for _ in 0..=RUNS {
        empty.push(time(Command::new(&this).arg(EMPTY)));
        full.push(time(Command::new(env!("CARGO_BIN_EXE_lapwright")).arg("--close-after-first-frame")));
    }
    let (empty, full) = (median(&empty[1..]), median(&full[1..]));
    println!("median of {RUNS} runs, by turns, after one warm-up");
    println!("empty window  {:>7.1} ms", empty.as_secs_f64() * 1e3);
    println!("lapwright     {:>7.1} ms", full.as_secs_f64() * 1e3);
    println!("ratio         {:>7.2}", full.as_secs_f64() / empty.as_secs_f64());
}

fn time(command: &mut Command) -> Duration {
    let start = Instant::now();
    let status = command.status().expect("the program starts");
    assert!(status.success(), "{command:?} failed; is there a display?");
    start.elapsed()
}

fn median(times: &[Duration]) -> Duration {
    let mut times = times.to_vec();
    times.sort();
    times[times.len() / 2]
}
