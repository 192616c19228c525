//! Geometry over every template that comes with the program: what is drawn is a planar subdivision, and hits are exact.
//!
//! Nothing here uses the checks of `vehicle`; places are sampled and counted.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::geometry::{
    LabelPlace, MapPoint, MapRect, MapVector, Orientation, Outline, ScreenPoint, ScreenRect, ScreenVector, Viewport,
};
use lapwright::vehicle::{PanelId, Side, Template, embedded, load_embedded};
use proptest::prelude::*;
use std::sync::{Arc, LazyLock};

static TEMPLATES: LazyLock<Vec<Arc<Template>>> =
    LazyLock::new(|| embedded().iter().map(|e| load_embedded(e.id).expect("an embedded template loads")).collect());

/// A grid of places over the map that hits no round coordinate.
fn grid(bounds: MapRect, across: usize) -> impl Iterator<Item = MapPoint> {
    let (dx, dy) = (bounds.width() / across as f32, bounds.height() / across as f32);
    let at = move |i: usize, j: usize| bounds.min + MapVector::new((i as f32 + 0.37) * dx, (j as f32 + 0.61) * dy);
    (0..across).flat_map(move |i| (0..across).map(move |j| at(i, j)))
}

/// Winding number by the angles of a fine polygon: another way than that of the library.
fn winds_round(polygon: &[MapPoint], at: MapPoint) -> bool {
    let turns: f64 = polygon
        .iter()
        .zip(polygon.iter().cycle().skip(1))
        .map(|(a, b)| {
            let (a, b) = ((*a - at).to_f64(), (*b - at).to_f64());
            a.cross(b).atan2(a.dot(b))
        })
        .sum();
    (turns / std::f64::consts::TAU).round() != 0.0
}

fn distance_to(polygon: &[MapPoint], at: MapPoint) -> f32 {
    let to_segment = |(a, b): (&MapPoint, &MapPoint)| {
        let d = *b - *a;
        let t = ((at - *a).dot(d) / d.square_length().max(1e-9)).clamp(0.0, 1.0);
        (at - (*a + d * t)).length()
    };
    polygon.iter().zip(polygon.iter().cycle().skip(1)).map(to_segment).fold(f32::INFINITY, f32::min)
}

#[test]
fn every_place_inside_the_contour_belongs_to_exactly_one_panel() {
    for t in TEMPLATES.iter() {
        for at in grid(t.bounds(), 257) {
            let owners = t.panels.iter().filter(|p| p.outline.contains(at)).count();
            let inside = t.contour().iter().any(|c| c.contains(at)) && !t.openings.iter().any(|o| o.contains(at));
            assert_eq!(owners, usize::from(inside), "{} at {at:?}", t.id);
        }
    }
}

#[test]
fn panels_leave_no_area_over() {
    for t in TEMPLATES.iter() {
        let panels: f64 = t.panels.iter().map(|p| p.outline.map_area_mm2()).sum();
        let openings: f64 = t.openings.iter().map(Outline::map_area_mm2).sum();
        let contour: f64 = t.contour().iter().map(Outline::map_area_mm2).sum();
        let length: f32 = t.seams.iter().map(|s| s.curve.length()).sum();
        // A gap or overlap 1 mm wide along a hundredth of all seams would show.
        let allowed = f64::from(length) * 0.01;
        assert!((panels + openings - contour).abs() < allowed, "{}: {panels} + {openings} and {contour}", t.id);
    }
}

#[test]
fn seams_are_shared_to_the_last_bit_so_no_gap_can_be_seen() {
    // Beside every seam, half a millimetre to each side, the one panel and the other are hit.
    for t in TEMPLATES.iter() {
        for seam in t.seams.iter().filter(|s| s.right.is_some()) {
            let (a, b) = (seam.curve.at(0.499), seam.curve.at(0.501));
            let normal = MapVector::new(a.y - b.y, b.x - a.x).normalize() * 0.5;
            let middle = seam.curve.at(0.5);
            let mut hit = [t.panel_at(middle + normal), t.panel_at(middle - normal)];
            let mut expected = [Some(seam.left), seam.right];
            hit.sort_unstable();
            expected.sort_unstable();
            assert_eq!(hit, expected, "{} at {middle:?}", t.id);
            assert!(t.panel_at(middle).is_some());
        }
    }
}

#[test]
fn every_sampled_place_of_a_panel_is_hit_as_that_panel() {
    for t in TEMPLATES.iter() {
        for (i, panel) in t.panels.iter().enumerate() {
            let polygon = panel.outline.flattened(0.01);
            let mut inside = 0;
            for at in grid(panel.outline.bounds(), 31) {
                if winds_round(&polygon, at) && distance_to(&polygon, at) > 0.02 {
                    assert_eq!(t.panel_at(at), Some(i), "{} {} at {at:?}", t.id, panel.id);
                    inside += 1;
                }
            }
            assert!(inside > 20, "{} {}: only {inside} places", t.id, panel.id);
        }
    }
}

#[test]
fn the_sides_mirror_each_other_within_a_millimetre() {
    for t in TEMPLATES.iter() {
        for left in t.panels.iter().filter(|p| p.side == Side::Left) {
            let id = left.id.as_str().replace("-left", "-right");
            let Some(right) = t.panel(&PanelId::new(id)) else { continue };
            assert_eq!((left.area, left.substrate, left.surface), (right.area, right.substrate, right.surface));
            let mirrored = left.outline.map(|p| MapPoint::new(p.x, -p.y)).flattened(0.05);
            let other = right.outline.flattened(0.05);
            for at in mirrored.iter().step_by(3) {
                assert!(distance_to(&other, *at) < 1.0, "{} {} at {at:?}", t.id, left.id);
            }
        }
    }
}

#[test]
fn the_contour_has_no_kink_where_it_should_be_smooth() {
    // At the middle of the front and of the rear the contour meets its mirror image.
    for t in TEMPLATES.iter() {
        for seam in t.seams.iter().filter(|s| s.right.is_none() && !s.curve.is_line()) {
            let [a, b, c, d] = seam.curve.points();
            for (end, inner) in [(a, b), (d, c)] {
                if end.y == 0.0 {
                    assert!((inner.x - end.x).abs() < 1.0, "{} at {end:?}", t.id);
                }
            }
        }
    }
}

#[test]
fn labels_fit_into_their_panels() {
    for t in TEMPLATES.iter() {
        for panel in &t.panels {
            let LabelPlace { centre, width, height } = panel.label;
            assert!(width > 0.0 && height > 0.0, "{} {}", t.id, panel.id);
            assert!((width / height - 2.2).abs() < 0.01);
            for i in 0..=20 {
                let u = (i as f32 / 10.0 - 1.0) * 0.5;
                for corner in [(u, -0.5), (u, 0.5), (-0.5, u), (0.5, u)] {
                    let at = centre + MapVector::new(corner.0 * width, corner.1 * height);
                    assert!(panel.outline.contains(at), "{} {} at {at:?}", t.id, panel.id);
                }
            }
        }
    }
}

#[test]
fn the_label_box_of_a_rectangle_is_as_large_as_it_can_be() {
    // 400 by 100 mm: of aspect 2.2 the box is 220 by 100, of aspect 8 it is 400 by 50.
    let corners = [(0.0, 0.0), (400.0, 0.0), (400.0, 100.0), (0.0, 100.0)].map(|(x, y)| MapPoint::new(x, y));
    let line = |i: usize| lapwright::geometry::MapCurve::line(corners[i], corners[(i + 1) % 4]);
    let outline = Outline::new((0..4).map(line).collect()).expect("four sides close");
    for (aspect, width, height) in [(2.2, 220.0, 100.0), (8.0, 400.0, 50.0)] {
        let place = outline.label_place(aspect);
        assert!((place.width - width).abs() < width * 0.02, "{place:?}");
        assert!((place.height - height).abs() < height * 0.02, "{place:?}");
    }
}

#[test]
fn the_area_of_a_circle_is_right() {
    // Four cubic quarters with handles of 4/3 (√2 - 1): the area is known to exceed π r² by 0.0057 % at most (textbook).
    let k = 552.284_8;
    let q = |a: (f32, f32), b: (f32, f32), c: (f32, f32), d: (f32, f32)| {
        let p = |v: (f32, f32)| MapPoint::new(v.0, v.1);
        lapwright::geometry::MapCurve::cubic(p(a), p(b), p(c), p(d))
    };
    let r = 1000.0;
    let circle = Outline::new(vec![
        q((r, 0.0), (r, k), (k, r), (0.0, r)),
        q((0.0, r), (-k, r), (-r, k), (-r, 0.0)),
        q((-r, 0.0), (-r, -k), (-k, -r), (0.0, -r)),
        q((0.0, -r), (k, -r), (r, -k), (r, 0.0)),
    ])
    .expect("the quarters close");
    let ratio = circle.map_area_mm2() / (std::f64::consts::PI * 1e6);
    assert!((1.0..1.000_6).contains(&ratio), "{ratio}");
    assert!(circle.contains(MapPoint::new(706.0, 706.0)));
    assert!(!circle.contains(MapPoint::new(708.0, 708.0)));
}

proptest! {
    /// A place well inside a panel is hit as that panel after any nudge smaller than its distance from the edge.
    #[test]
    fn hits_do_not_change_by_nudges(which in 0usize..10_000, u in 0.0f32..1.0, v in 0.0f32..1.0, turn in 0.0f32..6.3) {
        let t = &TEMPLATES[which % TEMPLATES.len()];
        let panel = &t.panels[(which / TEMPLATES.len()) % t.panels.len()];
        let b = panel.outline.bounds();
        let at = b.min + MapVector::new(u * b.width(), v * b.height());
        let edge = distance_to(&panel.outline.flattened(0.01), at);
        let nudge = MapVector::new(turn.cos(), turn.sin()) * (edge - 0.05).clamp(0.0, 5.0);
        prop_assert_eq!(panel.outline.contains(at), panel.outline.contains(at + nudge));
    }

    /// What is under the pointer does not depend on zoom and pan: to the screen and back is the same place.
    #[test]
    fn zoom_does_not_change_what_is_hit(
        which in 0usize..10_000, u in 0.1f32..0.9, v in 0.1f32..0.9, zoom in 0.6f32..40.0,
        x in -400.0f32..400.0, y in -300.0f32..300.0, up in any::<bool>(),
    ) {
        let t = &TEMPLATES[which % TEMPLATES.len()];
        let b = t.bounds();
        let at = b.min + MapVector::new(u * b.width(), v * b.height());
        let screen = ScreenRect::new(ScreenPoint::new(60.0, 40.0), ScreenPoint::new(860.0, 640.0));
        let orientation = if up { Orientation::FrontUp } else { Orientation::FrontLeft };
        let mut view = Viewport::fit(b, screen, 16.0, orientation);
        view.zoom_at(view.to_screen(at), zoom);
        view.pan(ScreenVector::new(x, y));
        let back = view.to_map(view.to_screen(at));
        prop_assert!((back - at).length() < 0.1, "{back:?} {at:?}");
        let near_edge = t.seams.iter().any(|s| {
            let line: Vec<MapPoint> = std::iter::once(s.curve.from).chain(s.curve.flattened(0.05)).collect();
            line.windows(2).any(|w| distance_to(w, at) < 0.3)
        });
        prop_assert!(near_edge || t.panel_at(back) == t.panel_at(at));
    }

    /// Zooming keeps the place under the pointer and never loses the map.
    #[test]
    fn the_map_is_never_lost(steps in proptest::collection::vec((0.2f32..5.0, -3000.0f32..3000.0, -3000.0f32..3000.0), 1..20)) {
        let t = &TEMPLATES[0];
        let screen = ScreenRect::new(ScreenPoint::new(0.0, 0.0), ScreenPoint::new(800.0, 600.0));
        let mut view = Viewport::fit(t.bounds(), screen, 16.0, Orientation::FrontLeft);
        for (factor, x, y) in steps {
            view.zoom_at(ScreenPoint::new(400.0, 300.0), factor);
            view.pan(ScreenVector::new(x, y));
            let shown = view.rect_to_screen(t.bounds());
            prop_assert!(shown.intersects(&screen), "{shown:?}");
            prop_assert!(view.scale().is_finite() && view.scale() > 0.0);
        }
    }
}

#[test]
fn the_whole_map_fits_into_the_screen() {
    for t in TEMPLATES.iter() {
        for orientation in [Orientation::FrontLeft, Orientation::FrontUp] {
            let screen = ScreenRect::new(ScreenPoint::new(100.0, 50.0), ScreenPoint::new(900.0, 600.0));
            let view = Viewport::fit(t.bounds(), screen, 16.0, orientation);
            assert!(screen.contains_box(&view.rect_to_screen(t.bounds())));
        }
    }
}

#[test]
fn the_left_side_is_below_when_the_front_is_left_and_left_when_the_front_is_up() {
    let screen = ScreenRect::new(ScreenPoint::new(0.0, 0.0), ScreenPoint::new(800.0, 600.0));
    let map = MapRect::new(MapPoint::new(-1000.0, -1000.0), MapPoint::new(1000.0, 1000.0));
    let (front, left) = (MapPoint::new(-900.0, 0.0), MapPoint::new(0.0, 900.0));
    let view = Viewport::fit(map, screen, 10.0, Orientation::FrontLeft);
    assert!(view.to_screen(front).x < 400.0 && view.to_screen(left).y > 300.0);
    let view = Viewport::fit(map, screen, 10.0, Orientation::FrontUp);
    assert!(view.to_screen(front).y < 300.0 && view.to_screen(left).x < 400.0);
}
