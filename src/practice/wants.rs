//! What is wanted at a moment of what was played: which panels are wet, which are done, who is where.

use super::exercise::Exercise;
use super::play::Played;
use crate::job::Role;
use crate::units::Seconds;

/// A panel at a moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Wanted {
    /// Not part of this exercise.
    Nothing,
    /// Nothing was done there yet.
    Apply,
    /// It is wet; its window closes at this moment, where that is known.
    Level(Option<Seconds>),
    /// Done.
    Done,
}

/// Every panel of the vehicle at a moment; at the end of everything where `moment` is none.
pub fn wanted(exercise: &Exercise, played: &Played, moment: Option<Seconds>) -> Vec<Wanted> {
    let over = |role: Role, panel: usize| {
        let row = exercise.operation(panel, role).and_then(|o| played.row(o))?;
        moment.is_none_or(|now| row.interval.end <= now).then_some(row.interval.end)
    };
    let at = |panel: usize| {
        if exercise.done.contains(&panel) || over(Role::Level, panel).is_some() {
            return Wanted::Done;
        }
        if exercise.wet.contains(&panel) {
            return Wanted::Level(deadline(exercise, panel));
        }
        match over(Role::Apply, panel) {
            Some(end) => Wanted::Level(Some(end + exercise.window_s().1)),
            None if exercise.is_in_play(panel) => Wanted::Apply,
            None => Wanted::Nothing,
        }
    };
    (0..exercise.template.panels.len()).map(at).collect()
}

/// When the window of a panel closes that was wet at the beginning.
pub(super) fn deadline(exercise: &Exercise, panel: usize) -> Option<Seconds> {
    let level = &exercise.spec.operations[exercise.operation(panel, Role::Level)?].id;
    let lags = exercise.spec.lags.iter().filter(|l| l.to == *level);
    lags.filter_map(|l| l.max_s.map(|max| max + crate::practice::surprise::NOW_ENDS_S)).min()
}
