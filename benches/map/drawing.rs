//! The drawing of a vehicle made anew: triangles of all panels, seams, hatches, as after a step of the zoom.

use crate::{median, micros, time};
use lapwright::gui::MapCache;
use lapwright::vehicle::{embedded, load_embedded};
use std::hint::black_box;

const RUNS: usize = 100;
/// Points of the screen per mm: the whole vehicle, one panel, a detail.
const SCALES: [f32; 3] = [0.14, 0.7, 3.0];

/// Prints the time for every template at several zooms, each time into an empty cache.
pub(crate) fn measure() {
    println!("\nthe drawing of all panels made anew, cache cold: median of {RUNS}, µs, by points of the screen per mm");
    println!("{:<16} {:>6} {:>9} {:>9} {:>9}", "vehicle", "panels", SCALES[0], SCALES[1], SCALES[2]);
    for file in embedded() {
        let template = load_embedded(file.id).expect("an embedded template loads");
        let at = |scale: f32| {
            let mut times: Vec<_> = (0..RUNS)
                .map(|_| {
                    time(|| {
                        let mut cache = MapCache::default();
                        cache.prepare(&template, scale);
                        black_box(&cache);
                    })
                })
                .collect();
            micros(median(&mut times))
        };
        let [a, b, c] = SCALES.map(at);
        println!("{:<16} {:>6} {a:>9.0} {b:>9.0} {c:>9.0}", template.id, template.panels.len());
    }
}
