//! Parallel lines clipped to an outline, for hatches that mean something in print as well.

use super::outline::Outline;
use super::space::MapPoint;

/// Lines at 45 degrees, `distance` mm apart, inside an outline. Even-odd, so holes stay empty.
///
/// **Shape**: pairs of end points, from one side of the outline to the other. **Domain**: a distance under 1 mm counts as 1.
/// Lines of one distance continue from panel to panel, since they are counted from the origin of the map.
pub fn hatch_lines(outline: &Outline, distance: f32) -> Vec<(MapPoint, MapPoint)> {
    // Along a line x - y is constant; `v` counts it, `u` = x + y runs along it.
    let step = distance.max(1.0) * std::f32::consts::SQRT_2;
    let polygon: Vec<(f32, f32)> = outline.flattened(2.0).iter().map(|p| (p.x + p.y, p.x - p.y)).collect();
    let low = polygon.iter().map(|p| p.1).fold(f32::INFINITY, f32::min);
    let high = polygon.iter().map(|p| p.1).fold(f32::NEG_INFINITY, f32::max);
    let mut lines = Vec::new();
    let (mut k, last) = ((low / step).ceil(), (high / step).floor());
    while k <= last {
        // Half a hundredth beside the grid, so that no corner lies exactly on a line.
        let v = k * step + 0.005;
        let ends = polygon.iter().zip(polygon.iter().cycle().skip(1));
        let mut crossings: Vec<f32> = ends
            .filter(|(a, b)| (a.1 < v) != (b.1 < v))
            .map(|(a, b)| a.0 + (b.0 - a.0) * (v - a.1) / (b.1 - a.1))
            .collect();
        crossings.sort_by(f32::total_cmp);
        let at = |u: f32| MapPoint::new(f32::midpoint(u, v), f32::midpoint(u, -v));
        lines.extend(crossings.chunks_exact(2).map(|pair| (at(pair[0]), at(pair[1]))));
        k += 1.0;
    }
    lines
}

#[cfg(test)]
mod tests {
    use super::super::MapCurve;
    use super::*;

    #[test]
    fn lines_fill_a_square_and_stay_inside() {
        let corners = [(0.0, 0.0), (100.0, 0.0), (100.0, 100.0), (0.0, 100.0)].map(|(x, y)| MapPoint::new(x, y));
        let curves = (0..4).map(|k| MapCurve::line(corners[k], corners[(k + 1) % 4])).collect();
        let square = Outline::new(curves).unwrap();
        let lines = hatch_lines(&square, 10.0);
        assert_eq!(lines.len(), 15, "the diagonal of 141 mm takes 14 distances of 10 mm");
        for (a, b) in lines {
            assert!(square.contains(a + (b - a) * 0.5));
            assert!(((b - a).x - (b - a).y).abs() < 1e-3, "45 degrees");
        }
    }
}
