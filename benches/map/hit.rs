//! Which panel is under a point.

use crate::time;
use lapwright::geometry::MapPoint;
use lapwright::vehicle::{embedded, load_embedded};
use std::hint::black_box;

const POINTS: usize = 200_000;

/// Prints the mean time of a hit test on every template, over points anywhere in the box round the vehicle.
pub(crate) fn measure() {
    println!("\nwhich panel is under a point: mean of {POINTS} points anywhere in the box round the vehicle");
    println!("{:<16} {:>6} {:>6} {:>9}", "vehicle", "panels", "hit %", "ns each");
    for file in embedded() {
        let template = load_embedded(file.id).expect("an embedded template loads");
        let b = template.bounds();
        let mut state = 0x2545_F491_4F6C_DD1D_u64;
        // xorshift64 (Marsaglia 2003): the same points in every run.
        let mut share = || {
            state ^= state << 13;
            state ^= state >> 7;
            state ^= state << 17;
            (state >> 40) as f32 / (1_u64 << 24) as f32
        };
        let points: Vec<MapPoint> =
            (0..POINTS).map(|_| MapPoint::new(b.min.x + b.width() * share(), b.min.y + b.height() * share())).collect();
        let mut hits = 0;
        let all = time(|| hits = points.iter().filter(|p| template.panel_at(black_box(**p)).is_some()).count());
        let each = all.as_secs_f64() * 1e9 / POINTS as f64;
        let percent = 100.0 * hits as f64 / POINTS as f64;
        println!("{:<16} {:>6} {percent:>6.1} {each:>9.0}", template.id, template.panels.len());
    }
}
