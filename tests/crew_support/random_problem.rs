//! Small random problems with every feature a crew problem may have.

use lapwright::crew::{FORMAT, LagSpec, ObjectiveSpec, OperationSpec, ProblemSpec, WetSpec, WorkerSpec};

/// A multiplicative congruential generator (Park and Miller 1988); nothing here needs more.
pub(crate) struct Dice(u64);

impl Dice {
    pub(crate) fn new(seed: u64) -> Self {
        let mut dice = Self((seed * 2_654_435_761 + 12_345) % 2_147_483_646 + 1);
        for _ in 0..5 {
            dice.below(2);
        }
        dice
    }
    pub(crate) fn below(&mut self, n: u64) -> u64 {
        self.0 = self.0 * 48_271 % 2_147_483_647;
        self.0 % n
    }
    pub(crate) fn range(&mut self, from: i64, to: i64) -> i64 {
        from + self.below((to - from + 1) as u64) as i64
    }
    fn chance(&mut self, percent: u64) -> bool {
        self.below(100) < percent
    }
}

/// Two to five operations, one to three workers, two to four stances on a line; jobs of one to four stages.
pub(crate) fn random_problem(dice: &mut Dice) -> ProblemSpec {
    let stances = dice.range(2, 4) as usize;
    let mut place: Vec<i64> = (0..stances).map(|_| dice.range(0, 9)).collect();
    place.sort_unstable();
    let walk_s = place.iter().map(|a| place.iter().map(|b| (a - b).abs()).collect()).collect();
    let name = |s: usize| format!("s{s}");
    let mut close = Vec::new();
    for a in 0..stances {
        for b in 0..a {
            if dice.chance(35) {
                close.push([name(a), name(b)]);
            }
        }
    }
    let workers = match dice.below(5) {
        0 => vec![("A", vec!["apply", "level"])],
        1 => vec![("A", vec!["apply"]), ("B", vec!["level"])],
        2 => vec![("A", vec!["apply", "level"]), ("B", vec!["apply", "level"])],
        3 => vec![("A", vec!["apply"]), ("B", vec!["level", "apply"])],
        _ => vec![("A", vec!["apply"]), ("B", vec!["level"]), ("C", vec!["level"])],
    };
    let worker = |(id, roles): (&str, Vec<&str>)| WorkerSpec {
        id: id.to_owned(),
        roles: roles.into_iter().map(str::to_owned).collect(),
    };
    let count = dice.range(2, 5) as usize;
    let mut operations: Vec<OperationSpec> = Vec::new();
    let mut lags = Vec::new();
    let mut panel = 0;
    while operations.len() < count {
        let stages = dice.range(1, 4).min((count - operations.len()) as i64);
        let stance = dice.below(stances as u64) as usize;
        for stage in 0..stages {
            let role = if stage % 2 == 0 { "apply" } else { "level" };
            let duration_s = dice.range(1, 9);
            let id = format!("p{panel}/{stage}");
            if stage > 0 {
                let min_s = dice.range(0, 12);
                let max_s = dice.chance(70).then(|| min_s + duration_s + dice.range(-1, 14));
                lags.push(LagSpec { from: format!("p{panel}/{}", stage - 1), to: id.clone(), min_s, max_s });
            }
            operations.push(OperationSpec {
                id,
                panel: format!("p{panel}"),
                role: role.to_owned(),
                duration_s,
                stance: name(if dice.chance(85) { stance } else { dice.below(stances as u64) as usize }),
                worker: None,
            });
        }
        panel += 1;
    }
    if dice.chance(15) {
        // a lag between any two, forwards so that there is no circle; sometimes a window
        let from = dice.below(count as u64 - 1) as usize;
        let to = from + 1 + dice.below((count - 1 - from) as u64) as usize;
        let min_s = dice.range(0, 5);
        let max_s = dice.chance(50).then(|| min_s + operations[to].duration_s + dice.range(0, 20));
        lags.push(LagSpec { from: operations[from].id.clone(), to: operations[to].id.clone(), min_s, max_s });
    }
    if dice.chance(25) {
        // one operation is somebody's alone
        let operation = &mut operations[dice.below(count as u64) as usize];
        let able: Vec<&str> =
            workers.iter().filter(|(_, roles)| roles.contains(&operation.role.as_str())).map(|(id, _)| *id).collect();
        operation.worker = (!able.is_empty()).then(|| able[dice.below(able.len().max(1) as u64) as usize].to_owned());
    }
    let mut wet = Vec::new();
    for lag in &lags {
        if dice.chance(30) {
            let others: Vec<&OperationSpec> =
                operations.iter().filter(|o| o.id != lag.from && o.id != lag.to).collect();
            if !others.is_empty() {
                let blocks = vec![others[dice.below(others.len() as u64) as usize].id.clone()];
                wet.push(WetSpec { from: lag.from.clone(), to: lag.to.clone(), blocks });
            }
        }
    }
    ProblemSpec {
        format: FORMAT.to_owned(),
        name: "random".to_owned(),
        workers: workers.into_iter().map(worker).collect(),
        stances: (0..stances).map(name).collect(),
        walk_s,
        close,
        operations,
        lags,
        wet,
        objective: ObjectiveSpec { makespan: dice.range(0, 10), walking: dice.range(1, 5) },
    }
}
