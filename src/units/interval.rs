//! A stretch of planner time.

use super::Seconds;

/// Half-open stretch `[start, end)` on the planner's clock, in whole seconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Interval {
    /// First second inside.
    pub start: Seconds,
    /// First second after; never before `start`.
    pub end: Seconds,
}

impl Interval {
    /// The stretch that begins at `start` and lasts `duration` seconds.
    pub fn lasting(start: Seconds, duration: Seconds) -> Self {
        debug_assert!(duration >= 0, "a duration is never negative");
        Self { start, end: start + duration }
    }

    /// Seconds from start to end.
    pub fn duration(self) -> Seconds {
        self.end - self.start
    }

    /// Whether the two share a moment; touching ends do not.
    pub fn overlaps(self, other: Self) -> bool {
        self.start < other.end && other.start < self.end
    }

    /// Whether `moment` lies inside.
    pub fn contains(self, moment: Seconds) -> bool {
        self.start <= moment && moment < self.end
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn touching_stretches_do_not_overlap() {
        let first = Interval::lasting(0, 10);
        assert!(!first.overlaps(Interval::lasting(10, 5)));
        assert!(first.overlaps(Interval::lasting(9, 5)));
        assert!(first.contains(0) && !first.contains(10));
    }
}
