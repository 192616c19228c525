//! Where curves cross that should only meet at their ends.

use super::curve::MapCurve;
use super::space::{MapPoint, MapRect};

/// Two curves that cross.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Crossing {
    /// Index of the first curve.
    pub first: usize,
    /// Index of the second; equal to `first` where a curve crosses itself.
    pub second: usize,
    /// Where.
    pub at: MapPoint,
}

/// How near to a shared end a meeting is not a crossing, mm.
const NEAR_END: f32 = 1.0;
/// How closely curves are followed, mm.
const TOLERANCE: f32 = 0.05;

/// The first crossing of each two curves, in order of their indices.
///
/// Meetings within 1 mm of an end that both curves share are not crossings. **Accuracy**: curves are followed to 0.05 mm, so
/// curves that come nearer to each other than that may be reported.
pub fn crossings(curves: &[MapCurve]) -> Vec<Crossing> {
    let lines: Vec<Vec<MapPoint>> =
        curves.iter().map(|c| std::iter::once(c.from).chain(c.flattened(TOLERANCE)).collect()).collect();
    let boxes: Vec<MapRect> = lines.iter().map(|l| MapRect::from_points(l.iter())).collect();
    let mut order: Vec<usize> = (0..curves.len()).collect();
    order.sort_by(|a, b| boxes[*a].min.x.total_cmp(&boxes[*b].min.x));
    let mut found = Vec::new();
    for (k, &i) in order.iter().enumerate() {
        if let Some(at) = crosses_itself(&curves[i], &lines[i]) {
            found.push(Crossing { first: i, second: i, at });
        }
        for &j in order[k + 1..].iter().take_while(|j| boxes[**j].min.x <= boxes[i].max.x) {
            if boxes[i].min.y > boxes[j].max.y || boxes[j].min.y > boxes[i].max.y {
                continue;
            }
            let shared: Vec<MapPoint> = [curves[i].from, curves[i].to]
                .into_iter()
                .filter(|p| *p == curves[j].from || *p == curves[j].to)
                .collect();
            if let Some(at) = meeting(&lines[i], &lines[j], &shared) {
                found.push(Crossing { first: i.min(j), second: i.max(j), at });
            }
        }
    }
    found.sort_by_key(|c| (c.first, c.second));
    found
}

fn meeting(a: &[MapPoint], b: &[MapPoint], shared: &[MapPoint]) -> Option<MapPoint> {
    for p in a.windows(2) {
        let pb = MapRect::from_points(p.iter());
        for q in b.windows(2) {
            let qb = MapRect::from_points(q.iter());
            if pb.min.x > qb.max.x || qb.min.x > pb.max.x || pb.min.y > qb.max.y || qb.min.y > pb.max.y {
                continue;
            }
            let at = segments_meet([p[0], p[1]], [q[0], q[1]]);
            if let Some(at) = at.filter(|at| shared.iter().all(|s| (*s - *at).length() > NEAR_END)) {
                return Some(at);
            }
        }
    }
    None
}

fn crosses_itself(curve: &MapCurve, line: &[MapPoint]) -> Option<MapPoint> {
    let [a, b, c, d] = curve.points();
    let onward = d - a;
    // A curve whose control legs all lead onward moves onward all the time and can't come back to itself.
    if [b - a, c - b, d - c].iter().all(|leg| leg.dot(onward) >= 0.0) && onward.square_length() > 0.0 {
        return None;
    }
    for i in 0..line.len().saturating_sub(1) {
        for j in i + 2..line.len() - 1 {
            if let Some(at) = segments_meet([line[i], line[i + 1]], [line[j], line[j + 1]]) {
                return Some(at);
            }
        }
    }
    None
}

/// The point where two straight pieces meet; of pieces that lie on each other, an end of one inside the other.
fn segments_meet(p: [MapPoint; 2], q: [MapPoint; 2]) -> Option<MapPoint> {
    let (d, e, w) = ((p[1] - p[0]).to_f64(), (q[1] - q[0]).to_f64(), (q[0] - p[0]).to_f64());
    let cross = d.cross(e);
    if cross.abs() > 1e-9 * d.length() * e.length() {
        let (t, u) = (w.cross(e) / cross, w.cross(d) / cross);
        let on = |v: f64| (0.0..=1.0).contains(&v);
        return (on(t) && on(u)).then(|| p[0].lerp(p[1], t as f32));
    }
    if w.cross(d).abs() > f64::from(TOLERANCE) * d.length() {
        return None;
    }
    // Parallel on one line: report the middle of the stretch they share.
    let len2 = d.square_length().max(1e-12);
    let (a, b) = (w.dot(d) / len2, (w + e).dot(d) / len2);
    let (low, high) = (a.min(b).max(0.0), a.max(b).min(1.0));
    ((high - low) * len2.sqrt() > f64::from(NEAR_END)).then(|| p[0].lerp(p[1], (0.5 * (low + high)) as f32))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn p(x: f32, y: f32) -> MapPoint {
        MapPoint::new(x, y)
    }

    #[test]
    fn a_loop_crosses_itself_and_an_arc_does_not() {
        let arc = MapCurve::cubic(p(0.0, 0.0), p(0.0, 400.0), p(300.0, 700.0), p(700.0, 700.0));
        let knot = MapCurve::cubic(p(0.0, 0.0), p(900.0, 600.0), p(-600.0, 600.0), p(300.0, 0.0));
        assert!(crossings(&[arc]).is_empty());
        let found = crossings(&[knot]);
        assert_eq!(found.len(), 1);
        // The loop is symmetric about x = 150.
        assert!((found[0].at.x - 150.0).abs() < 0.1, "{found:?}");
    }

    #[test]
    fn curves_that_meet_at_their_ends_do_not_cross_and_a_bow_tie_does() {
        let [a, b, c, d] = [p(0.0, 0.0), p(100.0, 0.0), p(100.0, 100.0), p(0.0, 100.0)];
        let square = [MapCurve::line(a, b), MapCurve::line(b, c), MapCurve::line(c, d), MapCurve::line(d, a)];
        assert!(crossings(&square).is_empty());
        let bow = [MapCurve::line(a, c), MapCurve::line(c, b), MapCurve::line(b, d), MapCurve::line(d, a)];
        let found = crossings(&bow);
        assert_eq!(found.iter().map(|c| (c.first, c.second)).collect::<Vec<_>>(), [(0, 2)]);
        assert!((found[0].at - p(50.0, 50.0)).length() < 0.01);
    }

    #[test]
    fn lines_that_lie_on_each_other_cross() {
        let one = MapCurve::line(p(0.0, 0.0), p(100.0, 0.0));
        let two = MapCurve::line(p(50.0, 0.0), p(200.0, 0.0));
        assert_eq!(crossings(&[one, two]).len(), 1);
    }
}
