//! A card for each worker: what they do now, what comes next.

use super::{BayFacts, Doing};
use crate::job::Role;
use crate::units::Seconds;

/// One worker.
#[derive(Debug, Clone, PartialEq)]
pub struct Card {
    /// Index into the workers of the problem.
    pub worker: usize,
    /// Their name.
    pub name: String,
    /// What they are at.
    pub state: CardState,
    /// What comes after that, and in how many seconds.
    pub next: Option<(Doing, Seconds)>,
    /// A panel that was levelled and of which nobody said yet how it felt.
    pub feel: Option<Doing>,
    /// Fresh pads they took so far.
    pub pads: u32,
}

/// What somebody is at.
#[derive(Debug, Clone, PartialEq)]
pub enum CardState {
    /// At a panel.
    Working {
        /// What and where.
        doing: Doing,
        /// Since how many seconds.
        since_s: Seconds,
        /// How many it should take, in all.
        takes_s: Seconds,
    },
    /// Free until something begins.
    Waiting {
        /// What and where.
        doing: Doing,
        /// In how many seconds; 0 is now.
        in_s: Seconds,
        /// Why it does not begin although it is time.
        why: Option<String>,
    },
    /// Not at the vehicle.
    Away {
        /// Expected in how many seconds.
        back_s: Seconds,
        /// What waits for them half done.
        doing: Option<Doing>,
    },
    /// Nothing is known to be left for them.
    Free,
}

pub(super) fn card(facts: &BayFacts<'_>, worker: usize) -> Card {
    let board = &facts.board.workers[worker];
    let now = facts.now_s;
    let in_s = |start: Seconds| (start - now).max(0);
    let mut next = board.next.iter().map(|n| (facts.doing(n.operation), in_s(n.start_s)));
    let state = if let Some(back) = board.away_until_s {
        CardState::Away { back_s: in_s(back), doing: board.current.map(|c| facts.doing(c.operation)) }
    } else if let Some(current) = board.current {
        CardState::Working {
            doing: facts.doing(current.operation),
            since_s: now - current.start_s,
            takes_s: facts.problem.operations[current.operation].duration_s,
        }
    } else if let Some((doing, in_s)) = next.next() {
        let holds = if in_s == 0 { facts.day.holds(facts.problem, worker, doing.operation, now) } else { Vec::new() };
        let why = holds.first().map(|h| facts.hold(*h));
        CardState::Waiting { doing, in_s, why }
    } else {
        CardState::Free
    };
    let felt = |o: &usize| facts.problem.operations[*o].role == Role::Level.id() && facts.day.felt(*o).is_none();
    Card {
        worker,
        name: facts.problem.workers[worker].id.clone(),
        state,
        next: next.next(),
        feel: facts.day.last_done(worker).filter(felt).map(|o| facts.doing(o)),
        pads: facts.day.pads(worker),
    }
}
