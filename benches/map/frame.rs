//! Processor time of one frame, laid out and turned into triangles, with the map and with an empty middle.

use crate::{busy, median, micros, time};
use eframe::App as _;
use eframe::egui::{Context, Event, Pos2, RawInput, Rect, pos2, vec2};
use lapwright::gui::{App, install_theme};
use lapwright::scene::Overlay;
use lapwright::vehicle::{Template, embedded, load_embedded};
use lapwright::work::Effort;
use std::sync::Arc;
use std::time::Duration;

const FRAMES: usize = 400;
/// One thread and a few steps: the order is there before anything is measured.
const EFFORT: Effort = Effort { seconds: 600.0, nodes: Some(200), threads: 1, seed: 1 };

/// What the pointer does meanwhile.
#[derive(Clone, Copy, PartialEq)]
enum Pointer {
    /// It goes over the panels, as somebody looks round.
    Looking,
    /// It drags the map.
    Dragging,
}

struct Window {
    ctx: Context,
    app: App,
    frame: eframe::Frame,
    seconds: f64,
    frames: usize,
}

impl Window {
    fn open(app: App) -> Self {
        let ctx = Context::default();
        install_theme(&ctx);
        let mut window = Self { ctx, app, frame: eframe::Frame::_new_kittest(), seconds: 0.0, frames: 0 };
        while !window.app.is_settled() {
            window.draw(Vec::new());
            std::thread::sleep(Duration::from_millis(1));
        }
        window
    }

    fn draw(&mut self, events: Vec<Event>) {
        self.seconds += 1.0 / 60.0;
        let screen_rect = Some(Rect::from_min_size(Pos2::ZERO, vec2(1280.0, 800.0)));
        let input = RawInput { screen_rect, time: Some(self.seconds), events, focused: true, ..RawInput::default() };
        let (app, frame) = (&mut self.app, &mut self.frame);
        let output = self.ctx.run_ui(input, |ui| app.ui(ui, frame));
        let meshes = self.ctx.tessellate(output.shapes, output.pixels_per_point);
        std::hint::black_box(meshes);
    }

    fn step(&mut self, pointer: Pointer) -> Duration {
        self.frames += 1;
        // To and fro over the middle of the map.
        let turn = (self.frames as f32 * 0.05).sin();
        let to = Event::PointerMoved(pos2(550.0 + 250.0 * turn, 360.0 + 120.0 * (turn * 7.0).cos()));
        let mut events = vec![to];
        if pointer == Pointer::Dragging && self.frames == 1 {
            events.push(press(true, pos2(550.0, 360.0)));
        }
        time(|| self.draw(events))
    }

    fn release(&mut self) {
        self.frames = 0;
        self.draw(vec![press(false, pos2(550.0, 360.0))]);
        self.draw(Vec::new());
    }
}

fn press(pressed: bool, pos: Pos2) -> Event {
    let button = eframe::egui::PointerButton::Primary;
    Event::PointerButton { pos, button, pressed, modifiers: eframe::egui::Modifiers::NONE }
}

/// Prints a row for each vehicle, overlay and movement.
pub(crate) fn measure() {
    let templates = embedded().iter().map(|e| load_embedded(e.id).expect("an embedded template loads"));
    let templates: Vec<Arc<Template>> = templates.collect();
    let forty = templates.iter().min_by_key(|t| t.panels.len().abs_diff(40)).expect("there are templates");
    let coach = templates.iter().max_by_key(|t| t.panels.len()).expect("there are templates");
    println!(
        "a frame of 1280 by 800, laid out and in triangles; median of {FRAMES}, by turns; 400 defects, 300 readings"
    );
    println!(
        "{:<16} {:>6} {:<8} {:<9} {:>9} {:>9} {:>6}",
        "vehicle", "panels", "overlay", "pointer", "empty µs", "map µs", "ratio"
    );
    for template in [forty, coach] {
        let loaded = || busy::job(template, 300, 400);
        let mut full = Window::open(App::with_effort(loaded(), None, EFFORT));
        let mut empty = Window::open(App::with_effort(loaded(), None, EFFORT).with_empty_middle());
        for overlay in Overlay::ALL {
            full.app.show_overlay(overlay);
            for (pointer, name) in [(Pointer::Looking, "looks"), (Pointer::Dragging, "drags")] {
                let (mut with, mut without) = (Vec::new(), Vec::new());
                for _ in 0..FRAMES {
                    without.push(empty.step(pointer));
                    with.push(full.step(pointer));
                }
                full.release();
                empty.release();
                let (without, with) = (micros(median(&mut without)), micros(median(&mut with)));
                let panels = template.panels.len();
                let ratio = with / without;
                println!(
                    "{:<16} {panels:>6} {:<8} {name:<9} {without:>9.0} {with:>9.0} {ratio:>6.2}",
                    template.id,
                    overlay.name(),
                );
            }
        }
    }
}
