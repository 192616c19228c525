//! Invented crew problems of several kinds and any size. Not real vehicles: panels lie in mirrored pairs along a walkway round a
//! rectangle, some of them high up, so that reaching them means leaning over the one below.

use lapwright::crew::{FORMAT, LagSpec, ObjectiveSpec, OperationSpec, ProblemSpec, WetSpec, WorkerSpec};

/// Metres between stances along the walkway, and how far outside the body it runs.
const STANCE_M: f64 = 0.6;
const CLEARANCE_M: f64 = 0.5;
/// Two people keep this far apart along the walkway.
const APART_M: f64 = 1.2;
/// Brisk walking with a full hand (our estimate).
const WALK_M_S: f64 = 0.9;

/// What kind of problem.
#[derive(Debug, Clone)]
pub(crate) struct Kind {
    pub(crate) name: &'static str,
    pub(crate) length_m: f64,
    pub(crate) width_m: f64,
    pub(crate) panels: usize,
    /// Shortest and longest wait, in seconds.
    pub(crate) window_s: (i64, i64),
    /// Seconds for a square metre.
    pub(crate) apply_s_m2: f64,
    pub(crate) level_s_m2: f64,
    pub(crate) people: &'static [(&'static str, &'static [&'static str])],
    pub(crate) layers: usize,
    /// Seconds between layers.
    pub(crate) recoat_s: i64,
}

const PAIR: &[(&str, &[&str])] = &[("A", &["apply"]), ("B", &["level"])];

/// A pair on a mid-size vehicle; the others differ in a few fields.
pub(crate) const COMMON: Kind = Kind {
    name: "common",
    length_m: 4.5,
    width_m: 1.8,
    panels: 32,
    window_s: (60, 300),
    apply_s_m2: 44.0,
    level_s_m2: 46.0,
    people: PAIR,
    layers: 1,
    recoat_s: 0,
};

/// One of each kind, small ones first.
pub(crate) fn kinds() -> Vec<Kind> {
    vec![
        Kind { name: "tiny", length_m: 3.0, width_m: 1.5, panels: 4, ..COMMON },
        Kind { name: "small", length_m: 3.4, width_m: 1.6, panels: 12, ..COMMON },
        Kind { name: "alone", panels: 20, people: &[("A", &["apply", "level"])], ..COMMON },
        COMMON,
        Kind { name: "warm", window_s: (30, 140), ..COMMON },
        Kind { name: "cold", window_s: (150, 420), ..COMMON },
        Kind { name: "slow-applying", apply_s_m2: 62.0, ..COMMON },
        Kind { name: "slow-levelling", level_s_m2: 60.0, ..COMMON },
        Kind { name: "either", people: &[("A", &["apply", "level"]), ("B", &["apply", "level"])], ..COMMON },
        Kind {
            name: "two-level",
            level_s_m2: 75.0,
            people: &[("A", &["apply"]), ("B", &["level"]), ("C", &["level"])],
            ..COMMON
        },
        Kind { name: "two-layers", panels: 20, layers: 2, recoat_s: 600, ..COMMON },
        Kind { name: "long", length_m: 6.0, width_m: 2.0, panels: 54, ..COMMON },
        Kind { name: "coach-two-pairs", people: TWO_PAIRS, ..sized(100) },
    ]
}

/// Two who apply and two who level.
pub(crate) const TWO_PAIRS: &[(&str, &[&str])] =
    &[("A", &["apply"]), ("B", &["level"]), ("C", &["apply"]), ("D", &["level"])];

/// A vehicle long enough for so many panels.
pub(crate) fn sized(panels: usize) -> Kind {
    Kind { name: "sized", length_m: 1.5 + panels as f64 * 0.085, width_m: 2.3, panels, ..COMMON }
}

/// The problem of a kind and a seed.
pub(crate) fn invent(kind: &Kind, seed: u64) -> ProblemSpec {
    let mut chance = Chance(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ kind.panels as u64);
    let way = 2.0 * (kind.length_m + kind.width_m + 4.0 * CLEARANCE_M);
    let count = ((way / STANCE_M) as usize).max(6);
    let spacing = way / count as f64;
    let steps = |a: usize, b: usize| a.abs_diff(b).min(count - a.abs_diff(b));
    let apart = |a: usize, b: usize| steps(a, b) as f64 * spacing;
    let walk = |a: usize, b: usize| (apart(a, b) / WALK_M_S).ceil() as i64; // rounding up keeps the triangle
    let stance = |s: usize| format!("s{s:02}");
    let close = |a: usize| {
        let stance = &stance;
        (0..a).filter(move |&b| apart(a, b) < APART_M).map(move |b| [stance(a), stance(b)])
    };
    let panels = panels(kind, count, &mut chance);
    let mut operations = Vec::new();
    let mut lags = Vec::new();
    let mut wet = Vec::new();
    let name = |panel: usize, layer: usize, role: &str| match kind.layers {
        1 => format!("p{panel:03}/{role}"),
        _ => format!("p{panel:03}/{role}-{layer}"),
    };
    for (p, panel) in panels.iter().enumerate() {
        for layer in 1..=kind.layers {
            for (role, rate) in [("apply", kind.apply_s_m2), ("level", kind.level_s_m2)] {
                operations.push(OperationSpec {
                    id: name(p, layer, role),
                    panel: format!("p{p:03}"),
                    role: role.to_owned(),
                    duration_s: 5 + (panel.area_m2 * rate) as i64,
                    stance: stance(panel.stance),
                    worker: None,
                });
            }
            let (min_s, max_s) = kind.window_s;
            lags.push(LagSpec {
                from: name(p, layer, "apply"),
                to: name(p, layer, "level"),
                min_s,
                max_s: Some(max_s),
            });
            if layer > 1 {
                let (from, to) = (name(p, layer - 1, "level"), name(p, layer, "apply"));
                lags.push(LagSpec { from, to, min_s: kind.recoat_s, max_s: None });
            }
        }
    }
    for (high, panel) in panels.iter().enumerate().filter(|(_, p)| p.high) {
        let below = panels.iter().enumerate().filter(|(_, q)| !q.high && steps(q.stance, panel.stance) <= 1);
        for (low, _) in below.take(2) {
            for layer in 1..=kind.layers {
                let blocks =
                    (1..=kind.layers).flat_map(|l| ["apply", "level"].map(|role| name(high, l, role))).collect();
                wet.push(WetSpec { from: name(low, layer, "apply"), to: name(low, layer, "level"), blocks });
            }
        }
    }
    ProblemSpec {
        format: FORMAT.to_owned(),
        name: kind.name.to_owned(),
        workers: kind
            .people
            .iter()
            .map(|&(id, roles)| WorkerSpec { id: id.to_owned(), roles: roles.iter().map(|&r| r.to_owned()).collect() })
            .collect(),
        stances: (0..count).map(stance).collect(),
        walk_s: (0..count).map(|a| (0..count).map(|b| walk(a, b)).collect()).collect(),
        close: (0..count).flat_map(close).collect(),
        operations,
        lags,
        wet,
        objective: ObjectiveSpec { makespan: 10, walking: 1 },
    }
}

struct Panel {
    stance: usize,
    area_m2: f64,
    high: bool,
}

/// Mirrored pairs: what is on the left is on the right as well, opposite on the walkway.
fn panels(kind: &Kind, stances: usize, chance: &mut Chance) -> Vec<Panel> {
    let mut panels = Vec::with_capacity(kind.panels + 1);
    while panels.len() < kind.panels {
        let stance = (chance.unit() * stances as f64 / 2.0) as usize;
        let area_m2 = 0.06 + 0.9 * chance.unit() * chance.unit().sqrt();
        let high = chance.unit() < 0.3;
        panels.push(Panel { stance, area_m2, high });
        panels.push(Panel { stance: stances - 1 - stance, area_m2, high });
    }
    panels.truncate(kind.panels);
    panels
}

/// A linear congruential generator (Knuth, MMIX constants); its upper bits.
struct Chance(u64);

impl Chance {
    fn unit(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        ((self.0 >> 11) as f64) / (1_u64 << 53) as f64
    }
}
