//! Frames while the slider of ambition is dragged: everything the program does for one, tessellation included, but not the
//! graphics driver.

#![expect(
    clippy::expect_used,
    clippy::print_stdout,
    reason = "a bench says its figures and stops where it can't measure"
)]
#![expect(dead_code, reason = "the hostile steps are for the other bench")]

mod invent;

use eframe::egui::{Role, Vec2, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use lapwright::gui::{App, install_theme};
use lapwright::work::Effort;
use std::hint::black_box;
use std::time::{Duration, Instant};

const EFFORT: Effort = Effort { seconds: 600.0, nodes: Some(200), threads: 1, seed: 1 };

fn main() {
    println!("{:<36} {:>8} {:>10} {:>10} {:>10}", "", "frames", "median ms", "99 % ms", "worst ms");
    for (name, template, panels, marks) in [
        ("saloon, 3 marks a panel", "saloon", 40, 3),
        ("van, 33 panels, 12 marks each", "van", 33, 12),
        ("coach, 33 panels, 12 marks each", "coach", 33, 12),
    ] {
        let loaded = invent::vehicle(template, panels, marks);
        let mut window =
            Harness::builder().with_size(Vec2::new(1280.0, 800.0)).with_max_steps(200).build_eframe(move |creation| {
                install_theme(&creation.egui_ctx);
                App::with_effort(loaded, None, EFFORT)
            });
        while !window.state().is_settled() {
            window.step();
            std::thread::sleep(Duration::from_millis(5));
        }
        window.get_by(|n| n.role() == Role::Tab && n.label().is_some_and(|l| l.starts_with("Correction"))).click();
        window.run();
        let rail = window.get_by_role_and_label(Role::Slider, "Share of the defects that shall go").rect();
        let at = |share: f32| rail.left_top() + vec2(176.0 * share, rail.height() / 2.0);
        window.drag_at(at(0.5));
        window.step();
        let (mut times, mut goals) = (Vec::new(), 0);
        for k in 0..400 {
            let before = window.state().job().goal;
            window.hover_at(at(0.5 + 0.48 * (k as f32 * 0.21).sin()));
            let start = Instant::now();
            window.step();
            let shapes = window.output().shapes.clone();
            black_box(window.ctx.tessellate(shapes, 1.0));
            times.push(start.elapsed());
            goals += usize::from(window.state().job().goal != before);
        }
        assert!(goals > 100, "the slider was not dragged: {goals} goals");
        times.sort();
        let ms = |d: Duration| d.as_secs_f64() * 1e3;
        let (median, most, worst) = (times[200], times[395], *times.last().expect("frames"));
        println!("{name:<36} {:>8} {:>10.2} {:>10.2} {:>10.2}", times.len(), ms(median), ms(most), ms(worst));
    }
}
