//! Every limit and tuning number of the planner.

/// Operations a problem may have; a coach with 120 panels and two layers has 480.
pub(crate) const MOST_OPERATIONS: usize = 5_000;
/// Stances a problem may have; checking the walking table takes the cube of it.
pub(crate) const MOST_STANCES: usize = 600;
/// Lags, close pairs and wet entries a problem may have, together.
pub(crate) const MOST_RULES: usize = 50_000;
/// Longest single time, in seconds: about 115 days.
pub(crate) const LARGEST_TIME: i64 = 10_000_000;
/// Longest plan, in seconds, so that times fit 32 bits in the search with room to add two.
pub(crate) const LARGEST_HORIZON: i64 = 1_000_000_000;
/// Largest weight in the objective; costs stay below 2^53.
pub(crate) const LARGEST_WEIGHT: i64 = 1_000_000;
/// Times a trial may push starts back for windows before it is given up.
pub(crate) const MOST_PUSHES: usize = 12;
/// Trials between two looks at the outside.
pub(crate) const POLL_EVERY: u64 = 1_000;
/// Neighbours an operation is moved next to.
pub(crate) const NEAR_OPERATIONS: usize = 14;
/// Attempts at a first plan before the exact search takes over.
pub(crate) const FIRST_TRIES: u32 = 60;
/// Orders tried in the first cooling; each next one is twice as long.
pub(crate) const FIRST_RUN: u64 = 30_000;
/// Trials for each operation in the longest cooling.
pub(crate) const LONGEST_RUN_EACH: u64 = 6_000;
/// Parts of the temperature that coolings begin with, in turn.
pub(crate) const HOT_TURNS: [f64; 4] = [1.0, 0.3, 0.6, 0.15];
/// Highest temperature a cooling begins with, in seconds of the whole job.
pub(crate) const HOT_S: f64 = 6.0;
/// Lowest temperature a cooling begins with.
pub(crate) const COOLEST_HOT_S: f64 = 0.7;
/// Trials for each operation that allow a cooling to begin one second hotter.
pub(crate) const TRIALS_A_DEGREE: f64 = 500.0;
/// Temperature of the last moment.
pub(crate) const COLD_S: f64 = 0.08;
/// Placements the exact search may try for one part of a problem, or for one question about a conflict.
pub(crate) const CONFLICT_NODES: u64 = 200_000;
/// Operations up to which the whole problem is given to the exact search.
pub(crate) const EXACT_OPERATIONS: usize = 16;
/// Operations up to which the exact search comes before any other.
pub(crate) const EXACT_AT_ONCE: usize = 9;
/// Placements the exact search of a whole problem may try.
pub(crate) const EXACT_NODES: u64 = 3_000_000;
/// Rounds of planning and measuring for a robust plan; seven halvings find the reserve to within a hundredth.
pub(crate) const ROBUST_ROUNDS: u32 = 8;
/// Nodes of each round when the outside sets no limit, times operations: about half a second a round.
pub(crate) const ROBUST_NODES: u64 = 24_000_000;
/// Most nodes of one such round.
pub(crate) const ROBUST_NODES_EACH: u64 = 400_000;
