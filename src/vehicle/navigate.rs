//! From panel to panel with the arrow keys.
//!
//! Each arrow leads across the seam that lies most its way. Small panels among large ones (a lamp, a mirror) would then be
//! nobody's first choice, so arrows are given to them afterwards where that cuts off nothing else: every panel can be reached.

use super::panel::Panel;
use super::template::{Seam, Template};
use crate::geometry::{MapPoint, MapVector};

/// The way an arrow key points on the map.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Direction {
    /// To the front of the vehicle.
    Front,
    /// To its rear.
    Rear,
    /// To its left side.
    Left,
    /// To its right side.
    Right,
}

impl Direction {
    /// All four, in the order of the table.
    pub const ALL: [Self; 4] = [Self::Front, Self::Rear, Self::Left, Self::Right];

    fn on_map(self) -> MapVector {
        match self {
            Self::Front => MapVector::new(-1.0, 0.0),
            Self::Rear => MapVector::new(1.0, 0.0),
            Self::Left => MapVector::new(0.0, 1.0),
            Self::Right => MapVector::new(0.0, -1.0),
        }
    }
}

/// For each panel where its four arrows lead.
pub(super) type Arrows = Vec<[Option<usize>; 4]>;

/// Widest angle between an arrow and the way, degrees.
const WIDEST: f32 = 75.0;

impl Template {
    /// The neighbour that an arrow key leads to; `None` where the vehicle ends that way.
    pub fn step(&self, panel: usize, direction: Direction) -> Option<usize> {
        self.arrows.get(panel).and_then(|row| row[direction as usize])
    }
}

/// Gives every panel its arrows.
pub(super) fn arrows(panels: &[Panel], seams: &[Seam]) -> Arrows {
    let choices = choices(panels, seams);
    let mut arrows: Arrows = choices.iter().map(|row| row.each_ref().map(|c| c.first().map(|c| c.to))).collect();
    // From the first panel everything must be reached, and from everything the first.
    while reach_more(&mut arrows, &choices, reached_from_first) {}
    while reach_more(&mut arrows, &choices, reaching_first) {}
    arrows
}

#[derive(Clone, Copy)]
struct Choice {
    degrees: f32,
    to: usize,
}

type Choices = Vec<[Vec<Choice>; 4]>;

/// Neighbours within reach of each arrow, the straightest first.
fn choices(panels: &[Panel], seams: &[Seam]) -> Choices {
    let mut choices: Choices = panels.iter().map(|_| <[Vec<Choice>; 4]>::default()).collect();
    for seam in seams {
        let Some(right) = seam.right else { continue };
        for (from, to) in [(seam.left, right), (right, seam.left)] {
            let start = panels[from].label.centre;
            for direction in Direction::ALL {
                let ends = [seam.curve.at(0.5), panels[to].label.centre];
                let degrees = ends.map(|end| turn(start, end, direction.on_map())).into_iter().fold(180.0, f32::min);
                let list = &mut choices[from][direction as usize];
                match list.iter_mut().find(|c| c.to == to) {
                    Some(known) => known.degrees = known.degrees.min(degrees),
                    None if degrees < WIDEST => list.push(Choice { degrees, to }),
                    None => {}
                }
            }
        }
    }
    for list in choices.iter_mut().flatten() {
        list.sort_by(|a, b| a.degrees.total_cmp(&b.degrees).then(a.to.cmp(&b.to)));
    }
    choices
}

/// Turns one arrow so that `reached` grows, by the straightest way; `false` where none helps or all is reached.
fn reach_more(arrows: &mut Arrows, choices: &Choices, reached: fn(&Arrows) -> Vec<bool>) -> bool {
    let count = |seen: &[bool]| seen.iter().filter(|r| **r).count();
    let seen = reached(arrows);
    let now = count(&seen);
    if now == arrows.len() {
        return false;
    }
    let mut best: Option<(f32, usize, usize, usize)> = None;
    for (from, row) in choices.iter().enumerate() {
        for (key, list) in row.iter().enumerate() {
            // An arrow helps only if it leads from what is reached to what is not, or the other way round.
            for choice in list.iter().filter(|c| seen[from] != seen[c.to]) {
                if best.is_some_and(|(degrees, ..)| degrees <= choice.degrees) {
                    continue;
                }
                let old = arrows[from][key].replace(choice.to);
                if count(&reached(arrows)) > now {
                    best = Some((choice.degrees, from, key, choice.to));
                }
                arrows[from][key] = old;
            }
        }
    }
    if let Some((_, from, key, to)) = best {
        arrows[from][key] = Some(to);
    }
    best.is_some()
}

/// Which panels can be reached from the first.
fn reached_from_first(arrows: &Arrows) -> Vec<bool> {
    flood(arrows.iter().map(|row| row.iter().flatten().copied().collect()).collect())
}

/// From which panels the first can be reached.
fn reaching_first(arrows: &Arrows) -> Vec<bool> {
    let mut back = vec![Vec::new(); arrows.len()];
    for (from, row) in arrows.iter().enumerate() {
        for to in row.iter().flatten() {
            back[*to].push(from);
        }
    }
    flood(back)
}

fn flood(leads_to: Vec<Vec<usize>>) -> Vec<bool> {
    let mut seen = vec![false; leads_to.len()];
    let mut open = vec![0];
    while let Some(panel) = open.pop() {
        if let Some(new) = seen.get_mut(panel).filter(|s| !**s) {
            *new = true;
            open.extend(&leads_to[panel]);
        }
    }
    seen
}

/// Degrees between a direction and the way from one place to another.
fn turn(from: MapPoint, to: MapPoint, direction: MapVector) -> f32 {
    let way = (to - from).try_normalize();
    way.map_or(180.0, |way| way.dot(direction).clamp(-1.0, 1.0).acos().to_degrees())
}
