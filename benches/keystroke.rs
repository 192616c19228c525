//! What one key costs while readings are entered: `cargo bench --bench keystroke`.
//!
//! A saloon is read with the keyboard only, in a window without a display: all 24 painted panels, 108 spots, 324 readings. Each
//! key is one whole picture: the key is handled, the job changed, everything that follows from it worked out, the window laid
//! out and the map drawn into shapes (not into pixels). The planner looks for a new order meanwhile, as in the real window. Printed
//! are the median and the 95th percentile in milliseconds, beside those of a picture without any key, and of the first number.
#![expect(clippy::unwrap_used, clippy::print_stdout, reason = "a bench may fail, and says its figures")]

use eframe::egui::{Event, Key, Modifiers};
use egui_kittest::Harness;
use lapwright::file::{Loaded, SAMPLE, job_from_text};
use lapwright::gui::{App, install_theme};
use lapwright::insight::survey_stops;
use lapwright::measure::GaugePrinciple;
use lapwright::vehicle::load_embedded;
use std::hint::black_box;
use std::sync::Arc;
use std::time::Instant;

fn main() {
    let mut job = (*job_from_text("the sample", SAMPLE).unwrap().job).clone();
    job.gauge.principle = GaugePrinciple::Ultrasonic;
    job.panels.clear();
    let template = load_embedded("saloon").unwrap();
    let begun = Instant::now();
    let stops = black_box(survey_stops(&template)).len();
    println!("{stops} spots, the way through them worked out in {:.2} ms, once", milliseconds(begun));
    let mut window = Harness::builder().with_size([1280.0, 800.0]).build_eframe(move |creation| {
        install_theme(&creation.egui_ctx);
        App::new(Loaded { job: Arc::new(job), template }, None)
    });
    window.step();
    window.step();
    let mut costs: [(&str, Vec<f64>); 3] = [("no key", Vec::new()), ("a digit", Vec::new()), ("Enter", Vec::new())];
    for reading in 0..stops * 3 {
        costs[0].1.push(timed(&mut window, None));
        for digit in (80 + reading * 7 % 90).to_string().chars() {
            costs[1].1.push(timed(&mut window, Some(Event::Text(digit.to_string()))));
        }
        let enter = Event::Key {
            key: Key::Enter,
            physical_key: None,
            pressed: true,
            repeat: false,
            modifiers: Modifiers::NONE,
        };
        costs[2].1.push(timed(&mut window, Some(enter)));
    }
    let taken: usize = window.state().job().panels.values().map(|r| r.reading_count()).sum();
    assert_eq!(taken, stops * 3, "every reading arrived");
    for (what, mut all) in costs {
        all.sort_by(f64::total_cmp);
        let at = |share: usize| all[(all.len() - 1) * share / 100];
        println!("{what:8} median {:.2} ms, 95 % within {:.2} ms ({} times)", at(50), at(95), all.len());
    }
}

fn timed(window: &mut Harness<'_, App>, event: Option<Event>) -> f64 {
    window.input_mut().events.extend(event);
    let begun = Instant::now();
    window.step();
    milliseconds(begun)
}

fn milliseconds(since: Instant) -> f64 {
    since.elapsed().as_secs_f64() * 1_000.0
}
