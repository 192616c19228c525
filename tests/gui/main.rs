//! The window, driven as a person drives it: by names, keys and the pointer. No display needed.
#![expect(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::iter_over_hash_type,
    reason = "helpers of tests; clippy only sees test functions as tests"
)]

mod accessible;
mod bay;
mod bay_days;
mod coating;
mod commands;
mod correction;
#[path = "../support/day.rs"]
mod day_support;
mod edit;
mod edit_own;
mod edit_steps;
mod entry;
mod handover;
mod import;
mod jobs;
mod keep;
mod languages;
mod measuring;
mod pictures;
mod polishing;
mod practice;
mod preferences;
mod raster;
mod scripted;
mod sheets;
mod tagging;

use eframe::egui::{self, Role, Vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::NodeT;
use lapwright::file::{Loaded, SAMPLE, job_from_text};
use lapwright::gui::{App, install_theme};
use lapwright::work::Effort;
use raster::Raster;

/// The same order on every machine: one thread, a number of steps instead of a time.
const EFFORT: Effort = Effort { seconds: 600.0, nodes: Some(20_000), threads: 1, seed: 1 };

/// A window on the sample, its order planned.
fn window(size: [f32; 2]) -> Harness<'static, App> {
    let mut window = window_on(job_from_text("the sample", SAMPLE).unwrap(), EFFORT, size);
    settle(&mut window);
    window
}

/// A window on a job, drawn once.
fn window_on(loaded: Loaded, effort: Effort, size: [f32; 2]) -> Harness<'static, App> {
    window_of(size, move || App::with_effort(loaded, None, effort))
}

/// A window of one's own making, drawn once.
fn window_of(size: [f32; 2], app: impl FnOnce() -> App + 'static) -> Harness<'static, App> {
    Harness::builder()
        .with_size(Vec2::from(size))
        .with_theme(egui::Theme::Light)
        .with_max_steps(40)
        .with_render_cursor(false)
        .renderer(Raster::default())
        .build_eframe(move |creation| {
            install_theme(&creation.egui_ctx);
            app()
        })
}

/// Every label of a window, in the order of reading.
fn labels(window: &Harness<'_, App>) -> Vec<String> {
    let nodes = window.root().children_recursive();
    nodes.filter(|n| n.accesskit_node().role() == Role::Label).filter_map(|n| n.accesskit_node().value()).collect()
}

/// Runs frames until the order of the job as it is has been planned.
fn settle(window: &mut Harness<'_, App>) {
    for _ in 0..3_000 {
        window.step();
        if window.state().is_settled() {
            window.run();
            return;
        }
        std::thread::sleep(std::time::Duration::from_millis(10));
    }
    panic!("no order was planned in half a minute");
}
