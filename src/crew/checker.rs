//! Does a written plan keep every rule of the problem? Works from the two documents by name and shares nothing with the
//! search, so that a mistake there can't hide here.

use super::problem::Problem;
use super::schedule::{PlanFile, PlanRow};
use super::spec::{OperationSpec, ProblemSpec};
use crate::say;
use std::collections::{BTreeMap, HashMap, HashSet};
use std::fmt;

/// One broken rule.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Violation {
    /// Which rule.
    pub rule: Rule,
    /// The operations it is about; the later one last; empty for a figure of the whole plan.
    pub operations: Vec<String>,
    /// By how many seconds (for [`Rule::Figure`] and [`Rule::Bound`] in units of the figure); 0 where there is no measure.
    pub amount: i64,
    sentence: String,
}

/// The rules of a crew problem, and the honesty of a plan's own figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Rule {
    /// Every operation of the problem exactly once, and none else.
    Placed,
    /// The worker exists and has the role.
    Role,
    /// Nothing starts before 0.
    Start,
    /// A worker does one thing at a time and has time to walk.
    Walk,
    /// `start(to) >= end(from) + min_s`.
    MinLag,
    /// `end(to) <= end(from) + max_s`.
    MaxLag,
    /// No two workers at the same moment in close stances.
    Close,
    /// Nobody leans over a wet panel.
    Wet,
    /// The plan's own finish, walking and cost are those computed here.
    Figure,
    /// The claimed lower bound is not above the plan's own cost.
    Bound,
}

impl fmt::Display for Violation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.sentence)
    }
}

/// Every broken rule of a plan; empty when it is valid.
pub fn violations(problem: &Problem, plan: &PlanFile) -> Vec<Violation> {
    let spec = problem.spec();
    let mut check = Check { spec, spans: HashMap::new(), found: Vec::new() };
    if check.place(plan) {
        check.walking();
        check.lags();
        check.close();
        check.wet();
        check.figures(plan);
    }
    check.found
}

/// One operation where the plan puts it.
#[derive(Clone, Copy)]
struct Span<'a> {
    operation: &'a OperationSpec,
    worker: &'a str,
    start: i64,
    end: i64,
}

struct Check<'a> {
    spec: &'a ProblemSpec,
    spans: HashMap<&'a str, Span<'a>>,
    found: Vec<Violation>,
}

impl<'a> Check<'a> {
    fn say(&mut self, rule: Rule, operations: &[&str], amount: i64, sentence: String) {
        let operations = operations.iter().map(|&o| o.to_owned()).collect();
        self.found.push(Violation { rule, operations, amount, sentence });
    }

    /// Takes the rows in; false when the plan does not place every operation once, so that nothing more can be said.
    fn place(&mut self, plan: &'a PlanFile) -> bool {
        let operations: HashMap<&str, &OperationSpec> =
            self.spec.operations.iter().map(|o| (o.id.as_str(), o)).collect();
        let mut complete = true;
        for row in &plan.operations {
            complete &= self.place_one(operations.get(row.id.as_str()).copied(), row);
        }
        for operation in &self.spec.operations {
            if !self.spans.contains_key(operation.id.as_str()) {
                self.say(Rule::Placed, &[&operation.id], 0, say!("crew-not-placed", operation = operation.id.as_str()));
                complete = false;
            }
        }
        complete
    }

    fn place_one(&mut self, operation: Option<&'a OperationSpec>, row: &'a PlanRow) -> bool {
        let Some(operation) = operation else {
            self.say(Rule::Placed, &[&row.id], 0, say!("crew-not-of-problem", operation = row.id.as_str()));
            return false;
        };
        let Some(worker) = self.spec.workers.iter().find(|w| w.id == row.worker) else {
            self.say(
                Rule::Role,
                &[&row.id],
                0,
                say!("crew-nobody", operation = row.id.as_str(), worker = row.worker.as_str()),
            );
            return false;
        };
        if !worker.roles.contains(&operation.role) {
            self.say(
                Rule::Role,
                &[&row.id],
                0,
                say!(
                    "crew-may-not",
                    worker = worker.id.as_str(),
                    role = operation.role.as_str(),
                    operation = row.id.as_str()
                ),
            );
        }
        if let Some(only) = operation.worker.as_ref().filter(|only| **only != worker.id) {
            let sentence =
                say!("crew-for-other", operation = row.id.as_str(), worker = worker.id.as_str(), only = only);
            self.say(Rule::Role, &[&row.id], 0, sentence);
        }
        if row.start_s < 0 {
            self.say(
                Rule::Start,
                &[&row.id],
                -row.start_s,
                say!("crew-before-zero", operation = row.id.as_str(), seconds = -row.start_s),
            );
        }
        let end = row.start_s.saturating_add(operation.duration_s);
        let span = Span { operation, worker: &worker.id, start: row.start_s, end };
        if self.spans.insert(&row.id, span).is_some() {
            self.say(Rule::Placed, &[&row.id], 0, say!("crew-placed-twice", operation = row.id.as_str()));
            return false;
        }
        true
    }

    /// Spans of each worker by start.
    fn sequences(&self) -> BTreeMap<&'a str, Vec<Span<'a>>> {
        let mut sequences: BTreeMap<&str, Vec<Span<'_>>> = BTreeMap::new();
        for operation in &self.spec.operations {
            let span = self.spans[operation.id.as_str()];
            sequences.entry(span.worker).or_default().push(span);
        }
        for sequence in sequences.values_mut() {
            sequence.sort_by_key(|s| (s.start, s.end));
        }
        sequences
    }

    fn step(&self, a: &Span<'_>, b: &Span<'_>) -> i64 {
        let at = |name: &str| self.spec.stances.iter().position(|s| s == name).unwrap_or(0);
        self.spec.walk_s[at(&a.operation.stance)][at(&b.operation.stance)]
    }

    fn walking(&mut self) {
        for (worker, sequence) in self.sequences() {
            for pair in sequence.windows(2) {
                let step = self.step(&pair[0], &pair[1]);
                let late = pair[0].end + step - pair[1].start;
                if late > 0 {
                    let (a, b) = (&pair[0].operation.id, &pair[1].operation.id);
                    let sentence = say!("crew-unreachable", worker = worker, second = b, seconds = late, first = a);
                    self.say(Rule::Walk, &[a, b], late, sentence);
                }
            }
        }
    }

    fn lags(&mut self) {
        for lag in &self.spec.lags {
            let (from, to) = (self.spans[lag.from.as_str()], self.spans[lag.to.as_str()]);
            let (a, b) = (&lag.from, &lag.to);
            let gap = to.start - from.end;
            if gap < lag.min_s {
                let sentence = say!("crew-too-soon", second = b, gap = gap, first = a, least = lag.min_s);
                self.say(Rule::MinLag, &[a, b], lag.min_s - gap, sentence);
            }
            let all = to.end - from.end;
            if let Some(max) = lag.max_s.filter(|&max| all > max) {
                let sentence = say!("crew-too-late", second = b, all = all, first = a, most = max);
                self.say(Rule::MaxLag, &[a, b], all - max, sentence);
            }
        }
    }

    fn close(&mut self) {
        let close: HashSet<(&str, &str)> =
            self.spec.close.iter().flat_map(|[a, b]| [(a.as_str(), b.as_str()), (b.as_str(), a.as_str())]).collect();
        let mut spans: Vec<Span<'_>> = self.spec.operations.iter().map(|o| self.spans[o.id.as_str()]).collect();
        spans.sort_by_key(|s| s.start);
        for (at, a) in spans.iter().enumerate() {
            for b in spans[at + 1..].iter().take_while(|b| b.start < a.end) {
                let (sa, sb) = (a.operation.stance.as_str(), b.operation.stance.as_str());
                let near = sa == sb || close.contains(&(sa, sb));
                let shared = a.end.min(b.end) - a.start.max(b.start);
                if a.worker != b.worker && near && shared > 0 {
                    let (a, b) = (&a.operation.id, &b.operation.id);
                    let sentence = say!("crew-share", first = a, second = b, seconds = shared, one = sa, other = sb);
                    self.say(Rule::Close, &[a, b], shared, sentence);
                }
            }
        }
    }

    fn wet(&mut self) {
        for rule in &self.spec.wet {
            let (start, end) = (self.spans[rule.from.as_str()].start, self.spans[rule.to.as_str()].end);
            for name in &rule.blocks {
                let blocked = self.spans[name.as_str()];
                if start < blocked.end && blocked.start < end {
                    let shared = end.min(blocked.end) - start.max(blocked.start);
                    let sentence = say!("crew-leaning", second = name, first = rule.from.as_str(), seconds = shared);
                    self.say(Rule::Wet, &[&rule.from, name], shared, sentence);
                }
            }
        }
    }

    fn figures(&mut self, plan: &PlanFile) {
        let makespan = self.spans.values().map(|s| s.end).max().unwrap_or(0);
        let sequences = self.sequences();
        let walking =
            sequences.values().flat_map(|sequence| sequence.windows(2)).map(|p| self.step(&p[0], &p[1])).sum::<i64>();
        let cost = self.spec.objective.makespan * makespan + self.spec.objective.walking * walking;
        let figures = [
            ("makespan_s", plan.makespan_s, makespan),
            ("walking_s", plan.walking_s, walking),
            ("cost", plan.cost, cost),
        ];
        for (name, said, is) in figures {
            if said != is {
                self.say(
                    Rule::Figure,
                    &[],
                    (said - is).abs(),
                    say!("crew-figure", name = name, claimed = said, is = is),
                );
            }
        }
        if plan.bound > cost {
            let sentence = say!("crew-bound-high", bound = plan.bound, cost = cost);
            self.say(Rule::Bound, &[], plan.bound - cost, sentence);
        }
    }
}
