//! Ways round a vehicle: on foot from stance to stance, and by arrow keys from panel to panel.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::vehicle::{Direction, PanelId, Template, embedded, load_embedded};
use std::collections::BTreeSet;
use std::sync::{Arc, LazyLock};

static TEMPLATES: LazyLock<Vec<Arc<Template>>> =
    LazyLock::new(|| embedded().iter().map(|e| load_embedded(e.id).expect("an embedded template loads")).collect());

#[test]
fn walks_go_round_the_body_and_keep_the_triangle_inequality() {
    for t in TEMPLATES.iter() {
        let n = t.stances.len();
        for a in 0..n {
            for b in 0..n {
                let straight = f64::from((t.stances[a].at - t.stances[b].at).length());
                assert!(t.walk_mm(a, b) >= straight - 0.5);
                assert!((t.walk_mm(a, b) - t.walk_mm(b, a)).abs() < 1e-6);
            }
        }
        for speed in [0.7, 1.0, 1.37] {
            let s = t.walk_seconds(speed);
            for a in 0..n {
                assert_eq!(s[a][a], 0);
                for b in 0..n {
                    assert_eq!(s[a][b], s[b][a]);
                    let exact = t.walk_mm(a, b) / 1000.0 / speed;
                    assert!(s[a][b] as f64 >= exact - 1e-6 && s[a][b] as f64 <= exact + 1.0);
                    for c in 0..n {
                        assert!(s[a][c] <= s[a][b] + s[b][c], "{} {a} {b} {c}", t.id);
                    }
                }
            }
        }
    }
}

#[test]
fn a_walk_across_the_vehicle_goes_round_its_nearer_end() {
    // From one front door to the other: out to the front corner, along the front and back. Worked by hand: 250 mm of air
    // round a body of 4,700 by 1,820 mm; corners at x -250 and y ±1,160, stances at (1,950, ±1,360).
    let t = load_embedded("saloon").expect("loads");
    let at = |id: &str| t.stances.iter().position(|s| s.id == id).expect("a stance of the saloon");
    let leg = (2200.0_f64).hypot(200.0);
    let expected = 2.0 * leg + 2.0 * 1160.0;
    let found = t.walk_mm(at("door-front-left"), at("door-front-right"));
    assert!((found - expected).abs() < 1.0, "{found} {expected}");
}

#[test]
fn close_pairs_are_those_nearer_than_asked() {
    for t in TEMPLATES.iter() {
        for (a, b) in t.close_pairs(1200.0) {
            assert!(a < b && t.walk_mm(a, b) < 1200.0);
        }
        assert!(t.close_pairs(0.0).is_empty());
        let n = t.stances.len();
        assert_eq!(t.close_pairs(1e9).len(), n * (n - 1) / 2);
    }
}

#[test]
fn arrow_keys_lead_from_any_panel_to_any_other() {
    for t in TEMPLATES.iter() {
        for start in 0..t.panels.len() {
            let mut reached = BTreeSet::from([start]);
            let mut open = vec![start];
            while let Some(panel) = open.pop() {
                for to in Direction::ALL.into_iter().filter_map(|d| t.step(panel, d)) {
                    assert!(t.neighbours(panel).contains(&to));
                    if reached.insert(to) {
                        open.push(to);
                    }
                }
            }
            let all = 0..t.panels.len();
            let missing: Vec<&str> = all.filter(|i| !reached.contains(i)).map(|i| t.panels[i].id.as_str()).collect();
            assert!(missing.is_empty(), "{} from {}: {missing:?}", t.id, t.panels[start].id);
        }
    }
}

#[test]
fn an_arrow_leads_where_it_points() {
    let t = load_embedded("saloon").expect("loads");
    let at = |id: &str| t.index_of(&PanelId::from(id)).expect("a panel of the saloon");
    for (from, direction, to) in [
        ("roof-left", Direction::Front, "windscreen-left"),
        ("roof-left", Direction::Rear, "rear-window-left"),
        ("roof-left", Direction::Right, "roof-right"),
        ("door-front-left", Direction::Rear, "door-rear-left"),
        ("door-rear-right", Direction::Front, "door-front-right"),
        ("bonnet-right", Direction::Right, "wing-right"),
    ] {
        assert_eq!(t.step(at(from), direction), Some(at(to)), "{from} {direction:?}");
    }
    assert_eq!(t.step(at("sill-left"), Direction::Left), None, "the vehicle ends there");
}
