//! What a specification must satisfy before it is a problem; reports everything, not the first.

use super::consts::{LARGEST_HORIZON, LARGEST_TIME, LARGEST_WEIGHT, MOST_OPERATIONS, MOST_RULES, MOST_STANCES};
use super::spec::{FORMAT, ProblemSpec};
use crate::finding::{Code, Finding};
use crate::say;
use std::collections::HashMap;

/// All findings of a specification, in the order of the document; empty when it can be planned.
pub(crate) fn findings(spec: &ProblemSpec) -> Vec<Finding> {
    let mut out = Report { findings: Vec::new() };
    out.format(spec);
    if out.sizes(spec) {
        return out.findings; // anything further would take too long or say the same again
    }
    out.workers(spec);
    out.walking(spec);
    out.operations(spec);
    out.rules(spec);
    out.objective(spec);
    if out.findings.is_empty() {
        out.cycles(spec);
        out.horizon(spec);
    }
    out.findings
}

/// Index of each name; of a name used twice the first place counts.
pub(crate) fn index_of<'a>(names: impl Iterator<Item = &'a str>) -> HashMap<&'a str, usize> {
    let mut index = HashMap::new();
    for (at, name) in names.enumerate() {
        index.entry(name).or_insert(at);
    }
    index
}

struct Report {
    findings: Vec<Finding>,
}

/// What a name in a problem stands for.
#[derive(Clone, Copy)]
enum Named {
    Stance,
    Worker,
    Operation,
}

impl Report {
    fn say(&mut self, code: Code, place: impl Into<String>, cause: impl Into<String>, action: &str) {
        self.findings.push(Finding::new(code, place, cause, action));
    }

    fn format(&mut self, spec: &ProblemSpec) {
        if spec.format != FORMAT {
            self.say(
                Code::CrewFormat,
                "format",
                say!("crew-problem-format", format = spec.format.as_str()),
                say!("crew-problem-format-do"),
            );
        }
    }

    /// Whether the document is too large or too empty to look further.
    fn sizes(&mut self, spec: &ProblemSpec) -> bool {
        let before = self.findings.len();
        let rules = spec.lags.len() + spec.close.len() + spec.wet.iter().map(|w| w.blocks.len()).sum::<usize>();
        let lists = [
            ("workers", spec.workers.len(), 1, 64),
            ("stances", spec.stances.len(), 1, MOST_STANCES),
            ("operations", spec.operations.len(), 1, MOST_OPERATIONS),
            (say!("crew-problem-rules-together"), rules, 0, MOST_RULES),
        ];
        for (place, count, least, most) in lists {
            if count < least {
                self.say(Code::CrewSize, place, say!("crew-problem-list-empty"), say!("crew-problem-list-empty-do"));
            } else if count > most {
                self.say(
                    Code::CrewSize,
                    place,
                    say!("crew-problem-list-long", count = count, most = most),
                    say!("crew-problem-split"),
                );
            }
        }
        self.findings.len() > before
    }

    fn unique<'a>(&mut self, list: &str, field: &str, names: impl Iterator<Item = &'a str>) {
        let mut seen: HashMap<&str, usize> = HashMap::new();
        for (at, name) in names.enumerate() {
            if name.is_empty() {
                self.say(
                    Code::CrewName,
                    format!("{list}[{at}]{field}"),
                    say!("crew-problem-name-empty"),
                    say!("crew-problem-name-empty-do"),
                );
            } else if let Some(first) = seen.get(name) {
                self.say(
                    Code::CrewDuplicate,
                    format!("{list}[{at}]{field}"),
                    say!("crew-problem-name-taken", name = name, place = format!("{list}[{first}]")),
                    say!("crew-problem-name-taken-do"),
                );
            } else {
                seen.insert(name, at);
            }
        }
    }

    fn workers(&mut self, spec: &ProblemSpec) {
        self.unique("workers", ".id", spec.workers.iter().map(|w| w.id.as_str()));
        for (at, worker) in spec.workers.iter().enumerate() {
            if worker.roles.is_empty() {
                let cause = say!("crew-problem-no-role", worker = worker.id.as_str());
                self.say(Code::CrewRole, format!("workers[{at}].roles"), cause, say!("crew-problem-no-role-do"));
            }
        }
        self.unique("stances", "", spec.stances.iter().map(String::as_str));
    }

    fn walking(&mut self, spec: &ProblemSpec) {
        let n = spec.stances.len();
        if spec.walk_s.len() != n {
            let cause = say!("crew-problem-rows", rows = spec.walk_s.len(), stances = n);
            self.say(Code::CrewWalk, "walk_s", cause, say!("crew-problem-square"));
            return;
        }
        let mut sound = true;
        for (i, row) in spec.walk_s.iter().enumerate() {
            if row.len() != n {
                let cause = say!("crew-problem-columns", columns = row.len(), stances = n);
                self.say(Code::CrewWalk, format!("walk_s[{i}]"), cause, say!("crew-problem-square"));
                sound = false;
                continue;
            }
            for (j, &s) in row.iter().enumerate() {
                sound &= self.time(&format!("walk_s[{i}][{j}]"), s, 0);
            }
            if row[i] != 0 {
                let cause = say!("crew-problem-staying", stance = spec.stances[i].as_str(), seconds = row[i]);
                self.say(Code::CrewWalk, format!("walk_s[{i}][{i}]"), cause, say!("crew-problem-staying-do"));
            }
        }
        if sound {
            self.triangle(spec);
        }
    }

    /// A table measured along walkways never has a detour that is shorter; the bounds rely on it.
    fn triangle(&mut self, spec: &ProblemSpec) {
        let (walk, names) = (&spec.walk_s, &spec.stances);
        let mut broken = 0;
        for (k, via) in walk.iter().enumerate() {
            for (i, row) in walk.iter().enumerate() {
                for (j, &direct) in row.iter().enumerate() {
                    let detour = row[k] + via[j];
                    if direct > detour {
                        broken += 1;
                        if broken <= 5 {
                            let cause = say!(
                                "crew-problem-detour",
                                direct = direct,
                                from = names[i].as_str(),
                                to = names[j].as_str(),
                                detour = detour,
                                via = names[k].as_str(),
                            );
                            let action = say!("crew-problem-detour-do");
                            self.say(Code::CrewWalk, format!("walk_s[{i}][{j}]"), cause, action);
                        }
                    }
                }
            }
        }
        if broken > 5 {
            let cause = say!("crew-problem-detours", count = broken - 5);
            self.say(Code::CrewWalk, "walk_s", cause, say!("crew-problem-detours-do"));
        }
    }

    /// Reports a time that is negative, below `least` or absurdly long; true when it is fine.
    fn time(&mut self, place: &str, seconds: i64, least: i64) -> bool {
        if seconds < least {
            self.say(
                Code::CrewTime,
                place,
                say!("crew-problem-time-low", seconds = seconds.to_string(), least = least),
                say!("crew-problem-time-low-do"),
            );
        } else if seconds > LARGEST_TIME {
            self.say(
                Code::CrewTime,
                place,
                say!("crew-problem-time-high", seconds = seconds.to_string()),
                say!("crew-problem-time-high-do"),
            );
        }
        (least..=LARGEST_TIME).contains(&seconds)
    }

    fn known(&mut self, place: String, what: Named, name: &str, index: &HashMap<&str, usize>) -> bool {
        let found = index.contains_key(name);
        if !found {
            let cause = match what {
                Named::Stance => say!("crew-problem-unknown-stance", name = name),
                Named::Worker => say!("crew-problem-unknown-worker", name = name),
                Named::Operation => say!("crew-problem-unknown-operation", name = name),
            };
            self.say(Code::CrewName, place, cause, say!("crew-problem-unknown-do"));
        }
        found
    }

    fn operations(&mut self, spec: &ProblemSpec) {
        let stances = index_of(spec.stances.iter().map(String::as_str));
        let workers = index_of(spec.workers.iter().map(|w| w.id.as_str()));
        self.unique("operations", ".id", spec.operations.iter().map(|o| o.id.as_str()));
        for (at, operation) in spec.operations.iter().enumerate() {
            self.time(&format!("operations[{at}].duration_s"), operation.duration_s, 1);
            self.known(format!("operations[{at}].stance"), Named::Stance, &operation.stance, &stances);
            let place = || format!("operations[{at}].worker");
            if let Some(only) = &operation.worker
                && self.known(place(), Named::Worker, only, &workers)
                && !spec.workers.iter().any(|w| operation.is_for(w))
            {
                let cause = say!("crew-problem-lacks-role", worker = only, role = operation.role.as_str());
                self.say(Code::CrewRole, place(), cause, say!("crew-problem-lacks-role-do"));
            }
            if !spec.workers.iter().any(|w| w.roles.contains(&operation.role)) {
                self.say(
                    Code::CrewRole,
                    format!("operations[{at}].role"),
                    say!("crew-problem-nobody-has", role = operation.role.as_str()),
                    say!("crew-problem-nobody-has-do"),
                );
            }
        }
        for (at, pair) in spec.close.iter().enumerate() {
            for (side, name) in pair.iter().enumerate() {
                self.known(format!("close[{at}][{side}]"), Named::Stance, name, &stances);
            }
        }
    }

    fn rules(&mut self, spec: &ProblemSpec) {
        let operations = index_of(spec.operations.iter().map(|o| o.id.as_str()));
        for (at, lag) in spec.lags.iter().enumerate() {
            self.known(format!("lags[{at}].from"), Named::Operation, &lag.from, &operations);
            self.known(format!("lags[{at}].to"), Named::Operation, &lag.to, &operations);
            self.time(&format!("lags[{at}].min_s"), lag.min_s, 0);
            if let Some(max) = lag.max_s {
                self.time(&format!("lags[{at}].max_s"), max, 0);
            }
            if lag.from == lag.to {
                let cause = say!("crew-problem-waits-itself", operation = lag.from.as_str());
                self.say(Code::CrewCycle, format!("lags[{at}]"), cause, say!("crew-problem-waits-itself-do"));
            }
        }
        for (at, wet) in spec.wet.iter().enumerate() {
            self.known(format!("wet[{at}].from"), Named::Operation, &wet.from, &operations);
            self.known(format!("wet[{at}].to"), Named::Operation, &wet.to, &operations);
            for (b, name) in wet.blocks.iter().enumerate() {
                self.known(format!("wet[{at}].blocks[{b}]"), Named::Operation, name, &operations);
                if *name == wet.from || *name == wet.to {
                    let cause = say!("crew-problem-blocks-itself", operation = name);
                    let action = say!("crew-problem-blocks-itself-do");
                    self.say(Code::CrewCycle, format!("wet[{at}].blocks[{b}]"), cause, action);
                }
            }
        }
    }

    fn objective(&mut self, spec: &ProblemSpec) {
        let weights = [("makespan", spec.objective.makespan), ("walking", spec.objective.walking)];
        for (name, weight) in weights {
            if !(0..=LARGEST_WEIGHT).contains(&weight) {
                let cause = say!("crew-problem-weight", weight = weight.to_string(), most = LARGEST_WEIGHT);
                self.say(Code::CrewTime, format!("objective.{name}"), cause, say!("crew-problem-weight-do"));
            }
        }
        if spec.objective.makespan == 0 && spec.objective.walking == 0 {
            self.say(
                Code::CrewTime,
                "objective",
                say!("crew-problem-weights-zero"),
                say!("crew-problem-weights-zero-do"),
            );
        }
    }

    /// Lags must not lead in a circle; strips operations that wait for nobody until none is left.
    fn cycles(&mut self, spec: &ProblemSpec) {
        let index = index_of(spec.operations.iter().map(|o| o.id.as_str()));
        let mut waits_for = vec![0_usize; spec.operations.len()];
        let mut then = vec![Vec::new(); spec.operations.len()];
        for lag in &spec.lags {
            let (from, to) = (index[lag.from.as_str()], index[lag.to.as_str()]);
            waits_for[to] += 1;
            then[from].push(to);
        }
        let mut free: Vec<usize> = (0..waits_for.len()).filter(|&o| waits_for[o] == 0).collect();
        while let Some(operation) = free.pop() {
            for &next in &then[operation] {
                waits_for[next] -= 1;
                if waits_for[next] == 0 {
                    free.push(next);
                }
            }
        }
        let stuck: Vec<&str> =
            (0..waits_for.len()).filter(|&o| waits_for[o] > 0).map(|o| spec.operations[o].id.as_str()).collect();
        if !stuck.is_empty() {
            let shown = stuck.iter().take(6).copied().collect::<Vec<_>>().join("\", \"");
            let cause = say!("crew-problem-circle", operations = format!("\"{shown}\""));
            self.say(Code::CrewCycle, "lags", cause, say!("crew-problem-circle-do"));
        }
    }

    /// Doing everything one after the other must fit the planner's clock.
    fn horizon(&mut self, spec: &ProblemSpec) {
        let longest_walk = spec.walk_s.iter().flatten().max().copied().unwrap_or(0);
        let work: i64 = spec.operations.iter().map(|o| o.duration_s + longest_walk).sum();
        let waiting: i64 = spec.lags.iter().map(|l| l.min_s).sum();
        if work + waiting > LARGEST_HORIZON {
            let cause = say!("crew-problem-horizon", seconds = (work + waiting).to_string());
            self.say(Code::CrewTime, "operations", cause, say!("crew-problem-horizon-do"));
        }
    }
}
