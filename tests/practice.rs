//! Practice: marks are the crew checker's violations, the planner's order is the best, hints keep the answer to themselves.
#![expect(clippy::unwrap_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::crew::{Control, Limits, Rule, Schedule, violations};
use lapwright::file::{Attempt, Fault, Learners, ProgressError, ReadError, RealDisk};
use lapwright::job::{Job, Role};
use lapwright::polish::Level;
use lapwright::practice::{
    CantLay, Done, Exercise, Laid, Lesson, MARGIN, Mark, Part, PolishAnswer, Setup, Trouble, Wanted, hint, long_ways,
    marks, next_rounds, play, polish_rounds, prepare, price_s, score, wanted,
};
use lapwright::units::Date;
use lapwright::vehicle::{Naming, Template, load_embedded};
use std::collections::{BTreeSet, HashSet};
use std::sync::{Arc, LazyLock};
use support::sample;

struct Quiet;

impl Control for Quiet {
    fn should_stop(&self) -> bool {
        false
    }
    fn improved(&self, _: &Schedule, _: i64) {}
}

const LIMITS: Limits = Limits { nodes: Some(6_000), threads: 1, seed: 1 };

fn made(template: &str, lesson: Lesson, part: Part, seed: u64) -> Exercise {
    let base: Job = (*sample().job).clone();
    let template: Arc<Template> = load_embedded(template).unwrap();
    let setup = Setup { lesson, part, air: lesson.air(), seed };
    prepare(&base, &template, &setup, &LIMITS, &Quiet).unwrap()
}

/// One exercise of every lesson, on different vehicles.
static ALL: LazyLock<Vec<Exercise>> = LazyLock::new(|| {
    let of = |(k, template): (usize, &str)| made(template, Lesson::ALL[k], Part::Both, k as u64);
    ["saloon", "hatch-3", "coupe", "van", "hatch"].into_iter().enumerate().map(of).collect()
});

/// Random numbers from the seed of a test: the linear congruential generator MMIX (Knuth, from memory), its upper bits.
struct Dice(u64);

impl Dice {
    fn new(seed: u64) -> Self {
        Self(seed)
    }
    fn below(&mut self, n: usize) -> usize {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        ((self.0 >> 33) % n as u64) as usize
    }
}

/// Panels in any order, each applied before it is levelled, with a wait on purpose now and then.
fn random_order(exercise: &Exercise, dice: &mut Dice) -> Laid {
    let mut laid = Laid::begin(exercise);
    loop {
        let panels: Vec<usize> =
            (0..exercise.template.panels.len()).filter(|&p| laid.next_on(exercise, p).is_ok()).collect();
        let Some(&panel) = panels.get(dice.below(panels.len().max(1))) else { return laid };
        let (worker, operation) = laid.next_on(exercise, panel).unwrap();
        let hold = if dice.below(6) == 0 { dice.below(90) as i64 } else { 0 };
        laid.lay(exercise, worker, operation, hold).unwrap();
    }
}

/// Every broken rule of what was played, found by looking at every second of the clock; shares no code with the checker.
fn second_by_second(exercise: &Exercise, laid: &Laid) -> HashSet<(Rule, Vec<String>)> {
    let spec = &exercise.spec;
    let played = play(exercise, laid);
    let row = |id: &str| {
        let row = played.rows.iter().find(|r| spec.operations[r.operation].id == id).unwrap();
        (row.worker, row.interval)
    };
    let mut found = HashSet::new();
    let end = played.rows.iter().map(|r| r.interval.end).max().unwrap();
    for now in 0..end {
        let busy: Vec<_> = played.rows.iter().filter(|r| r.interval.contains(now)).collect();
        for a in &busy {
            for b in &busy {
                let (oa, ob) = (&spec.operations[a.operation], &spec.operations[b.operation]);
                if (a.interval.start, a.operation) < (b.interval.start, b.operation)
                    && a.worker != b.worker
                    && spec.is_close(&oa.stance, &ob.stance)
                {
                    found.insert((Rule::Close, pair(&oa.id, &ob.id)));
                }
            }
        }
        for wet in &spec.wet {
            if row(&wet.from).1.start <= now && now < row(&wet.to).1.end {
                for blocked in wet.blocks.iter().filter(|b| row(b).1.contains(now)) {
                    found.insert((Rule::Wet, pair(&wet.from, blocked)));
                }
            }
        }
    }
    for lag in &spec.lags {
        let (from, to) = (row(&lag.from).1, row(&lag.to).1);
        if to.start < from.end + lag.min_s {
            found.insert((Rule::MinLag, pair(&lag.from, &lag.to)));
        }
        if lag.max_s.is_some_and(|max| to.end > from.end + max) {
            found.insert((Rule::MaxLag, pair(&lag.from, &lag.to)));
        }
    }
    found
}

fn pair(a: &str, b: &str) -> Vec<String> {
    let mut both = vec![a.to_owned(), b.to_owned()];
    both.sort();
    both
}

fn marked(exercise: &Exercise, laid: &Laid) -> Vec<Mark> {
    marks(exercise, &play(exercise, laid), Naming::Uk)
}

fn share(exercise: &Exercise, laid: &Laid) -> Option<f64> {
    let played = play(exercise, laid);
    score(exercise, &played, &marks(exercise, &played, Naming::Uk)).map(|s| s.share)
}

#[test]
fn the_marks_of_a_hundred_random_orders_are_the_violations_and_nothing_else() {
    let mut dice = Dice::new(1);
    let mut seen = BTreeSet::new();
    for k in 0..100 {
        let exercise = &ALL[k % ALL.len()];
        let laid = random_order(exercise, &mut dice);
        assert!(laid.is_complete(exercise));
        let played = play(exercise, &laid);
        let marks = marks(exercise, &played, Naming::Uk);
        let judged = violations(&played.problem, &played.plan);
        assert_eq!(marks.len(), judged.len());
        for violation in &judged {
            assert_eq!(marks.iter().filter(|m| m.violation == *violation).count(), 1, "{violation}");
        }
        let own: HashSet<_> =
            judged.iter().map(|v| (v.rule, pair(&v.operations[0], v.operations.last().unwrap()))).collect();
        assert_eq!(own, second_by_second(exercise, &laid), "{} round {k}", exercise.setup.lesson.name());
        for mark in &marks {
            assert_ne!(mark.trouble, Trouble::Other, "{}", mark.violation);
            assert!((0..=played.end_s()).contains(&mark.at_s), "{mark:?}");
            assert!(!mark.panels.is_empty() && mark.panels.len() <= 2, "{mark:?}");
            assert!(mark.happens.ends_with('.') && mark.better.starts_with("A good order: "), "{mark:?}");
            assert!(!mark.happens.contains('/') && !mark.better.contains('/'), "no names of the planner: {mark:?}");
            seen.insert(mark.trouble);
        }
    }
    assert_eq!(seen.into_iter().collect::<Vec<_>>(), Trouble::ALL, "every kind of trouble was met");
}

#[test]
fn the_planners_own_order_has_no_mark_and_scores_a_hundred() {
    for lesson in Lesson::ALL {
        for (template, part) in [("saloon", Part::Both), ("coupe", Part::Levels), ("hatch", Part::Applies)] {
            let exercise = made(template, lesson, part, 5);
            let best = Laid::best(&exercise);
            let played = play(&exercise, &best);
            assert_eq!(played.plan.operations, exercise.best.operations, "played exactly as planned");
            let marks = marks(&exercise, &played, Naming::Uk);
            assert!(marks.is_empty(), "{}: {marks:#?}", lesson.name());
            let score = score(&exercise, &played, &marks).unwrap();
            assert_eq!(score.percent(), 100);
            assert!((score.share - 1.0).abs() < 1e-12);
            assert!(exercise.best.bound <= exercise.best.cost);
        }
    }
}

/// The steps of the best order laid by hand, one after another, lead to the same: nothing a learner could do is out of reach.
#[test]
fn the_best_order_can_be_laid_step_by_step() {
    for (lesson, part) in [
        (Lesson::OneSide, Part::Both),
        (Lesson::Partner, Part::Both),
        (Lesson::Partner, Part::Applies),
        (Lesson::HumidDay, Part::Levels),
        (Lesson::Surprise, Part::Both),
    ] {
        let exercise = made("hatch", lesson, part, 3);
        let best = Laid::best(&exercise);
        let mut laid = Laid::begin(&exercise);
        for row in &play(&exercise, &best).rows {
            let step = *best.lane(row.worker).iter().find(|s| s.operation == row.operation).unwrap();
            if !laid.has(step.operation) {
                laid.lay(&exercise, row.worker, step.operation, step.hold_s).unwrap();
            }
        }
        assert_eq!(share(&exercise, &laid), Some(1.0));
    }
}

#[test]
fn nothing_scores_higher_than_the_best_and_leaving_out_scores_nothing() {
    let mut dice = Dice::new(2);
    for exercise in ALL.iter() {
        for _ in 0..12 {
            let mut laid = random_order(exercise, &mut dice);
            let whole = share(exercise, &laid).unwrap();
            assert!(whole > 0.0 && whole <= 1.0);
            if !marked(exercise, &laid).is_empty() {
                assert!(whole < 1.0);
            }
            laid.take_back();
            assert_eq!(share(exercise, &laid), None, "a panel left out");
        }
        assert_eq!(share(exercise, &Laid::begin(exercise)), None);
    }
}

/// One step of the best order moved to another place, or a wait added to any step: never better than the best.
#[test]
fn waiting_and_swapping_never_gain() {
    let mut dice = Dice::new(3);
    for exercise in ALL.iter() {
        let best = Laid::best(exercise);
        for _ in 0..20 {
            let mut steps: Vec<_> = play(exercise, &best)
                .rows
                .iter()
                .filter(|r| r.worker < exercise.people())
                .map(|r| (r.worker, *best.lane(r.worker).iter().find(|s| s.operation == r.operation).unwrap()))
                .collect();
            let at = dice.below(steps.len());
            if dice.below(2) == 0 {
                steps[at].1.hold_s += 1 + dice.below(120) as i64;
            } else {
                let moved = steps.remove(at);
                let to = dice.below(steps.len() + 1);
                steps.insert(to, moved);
            }
            let mut laid = Laid::begin(exercise);
            let possible = steps
                .iter()
                .filter(|(_, s)| exercise.panel_of(s.operation).is_some())
                .all(|(worker, s)| laid.has(s.operation) || laid.lay(exercise, *worker, s.operation, s.hold_s).is_ok());
            if !possible {
                continue; // levelled before it was applied
            }
            let changed = share(exercise, &laid).unwrap();
            // A plan found with few nodes may be improved on; then it scores as the best, never above. Nothing else does.
            let as_good = marked(exercise, &laid).is_empty() && play(exercise, &laid).plan.cost <= exercise.best.cost;
            assert!(changed <= 1.0);
            assert_eq!(changed.to_bits() == 1.0_f64.to_bits(), as_good, "{changed}");
        }
    }
}

/// The score falls with everything that is bad, each alone.
#[test]
fn a_longer_job_a_longer_way_and_a_broken_rule_each_cost() {
    let exercise = &ALL[2];
    let best = Laid::best(exercise);
    let last = play(exercise, &best).rows.last().copied().unwrap();
    let wait = |seconds: i64| {
        let mut laid = Laid::begin(exercise);
        for row in &play(exercise, &best).rows {
            let step = *best.lane(row.worker).iter().find(|s| s.operation == row.operation).unwrap();
            let more = if row.operation == last.operation { seconds } else { 0 };
            laid.lay(exercise, row.worker, step.operation, step.hold_s + more).unwrap();
        }
        laid
    };
    let shares: Vec<f64> = [0, 10, 20, 40, 600].map(|s| share(exercise, &wait(s)).unwrap()).to_vec();
    assert!(shares.windows(2).all(|w| w[1] < w[0]), "{shares:?}");
    let late = marked(exercise, &wait(600));
    assert_eq!(late.iter().map(|m| m.trouble).collect::<Vec<_>>(), [Trouble::Window], "{late:?}");
    let played = play(exercise, &wait(600));
    let without = score(exercise, &played, &[]).unwrap();
    let with = score(exercise, &played, &late).unwrap();
    assert!(with.share < without.share && with.price_s >= price_s(Trouble::Window));
}

#[test]
fn an_exercise_is_the_same_for_the_same_seed_and_another_for_another() {
    for lesson in Lesson::ALL {
        let [a, b] = [7, 7].map(|seed| made("hatch", lesson, Part::Both, seed));
        assert_eq!((&a.spec, &a.best, &a.news), (&b.spec, &b.best, &b.news), "{}", lesson.name());
    }
    let sides: BTreeSet<String> =
        (0..8).map(|seed| made("hatch", Lesson::OneSide, Part::Both, seed).spec.operations[0].panel.clone()).collect();
    assert_eq!(sides.len(), 2, "now the left, now the right side");
}

#[test]
fn lessons_are_what_they_say() {
    let [side, alone, partner, humid, surprise] = [0, 1, 2, 3, 4].map(|k| &ALL[k]);
    assert!(side.people() == 1 && alone.people() == 1 && partner.people() == 2);
    let sides: BTreeSet<String> = (0..side.template.panels.len())
        .filter(|&p| side.is_in_play(p))
        .map(|p| format!("{:?}", side.template.panels[p].side))
        .collect();
    assert_eq!(sides.len(), 1);
    assert!(humid.window_s().1 < partner.window_s().1 * 4 / 5, "{:?} {:?}", humid.window_s(), partner.window_s());
    // The one who left is away for four minutes, whatever is laid.
    assert!(!surprise.done.is_empty() && !surprise.news.is_empty());
    let away = surprise.spec.operations.iter().find(|o| o.id.starts_with("now/")).unwrap();
    assert!(surprise.spec.operations.iter().any(|o| o.duration_s == 240 && o.id.starts_with("now/")), "{away:?}");
    let played = play(surprise, &Laid::begin(surprise));
    let state = wanted(surprise, &played, Some(0));
    assert_eq!(state.iter().filter(|w| **w == Wanted::Done).count(), surprise.done.len());
    assert!(state.iter().filter(|w| matches!(w, Wanted::Level(_))).count() >= surprise.wet.len());
    // Everything is done at the end, what was under way at the beginning too.
    let best = play(surprise, &Laid::best(surprise));
    let end = wanted(surprise, &best, None);
    assert!((0..end.len()).all(|p| end[p] == Wanted::Done || !surprise.is_coated(p)), "{end:?}");
}

#[test]
fn what_can_not_be_laid_is_refused_and_changes_nothing() {
    let exercise = made("saloon", Lesson::Partner, Part::Levels, 1);
    let mut laid = Laid::begin(&exercise);
    let panel = (0..exercise.template.panels.len()).find(|&p| exercise.is_in_play(p)).unwrap();
    let apply = exercise.operation(panel, Role::Apply).unwrap();
    let level = exercise.operation(panel, Role::Level).unwrap();
    let before = laid.clone();
    assert_eq!(laid.lay(&exercise, 0, apply, 0), Err(CantLay::Already), "given by the partner");
    assert_eq!(laid.lay(&exercise, 0, level, 0), Err(CantLay::NotYours));
    assert_eq!(laid.lay(&exercise, 9, level, 0), Err(CantLay::NotYours));
    assert_eq!(laid, before);
    laid.lay(&exercise, 1, level, 0).unwrap();
    assert_eq!(laid.lay(&exercise, 1, level, 0), Err(CantLay::Already));
    assert_eq!(laid.take_back().map(|s| s.operation), Some(level));
    assert_eq!(laid.take_back(), None, "what is given stays");
    assert_eq!(laid, before);
    let both = &ALL[2];
    let level = both.operation(panel, Role::Level).unwrap();
    assert_eq!(Laid::begin(both).lay(both, 1, level, 0), Err(CantLay::NotApplied));
}

#[test]
fn hints_are_reasons_and_name_no_panel() {
    let mut reasons = BTreeSet::new();
    for exercise in ALL.iter() {
        let names: Vec<String> = [Naming::Uk, Naming::Us]
            .into_iter()
            .flat_map(|naming| exercise.template.panels.iter().map(move |p| p.name(naming).to_lowercase()))
            .flat_map(|name| [name.replace(", ", " "), name])
            .collect();
        let mut laid = Laid::begin(exercise);
        while let Some(hint) = hint(exercise, &laid) {
            let said = hint.reason.to_lowercase();
            assert!(names.iter().all(|name| !said.contains(name.as_str())), "{said}");
            assert!(!said.contains(exercise.spec.operations[hint.operation].panel.as_str()), "{said}");
            assert!(hint.reason.ends_with('.') && hint.reason.len() > 30);
            reasons.insert(said.split(|c: char| c.is_ascii_digit()).next().unwrap().to_owned());
            laid.lay(exercise, hint.worker, hint.operation, hint.hold_s).unwrap();
        }
        assert!(laid.is_complete(exercise), "hints lead to the end");
        assert_eq!(share(exercise, &laid), Some(1.0), "who follows every hint lays the best order");
    }
    assert!(reasons.len() >= 6, "{reasons:#?}");
}

#[test]
fn long_walks_are_told_apart_from_broken_rules() {
    let mut dice = Dice::new(4);
    let exercise = &ALL[1];
    let played = play(exercise, &random_order(exercise, &mut dice));
    let ways = long_ways(exercise, &played, Naming::Uk);
    assert!(ways.len() > 5, "an order by chance runs to and fro");
    assert!(ways.iter().all(|w| w.walk_s > 3 && w.happens.ends_with('.')));
    let best = long_ways(exercise, &play(exercise, &Laid::best(exercise)), Naming::Uk);
    assert!(best.len() < ways.len());
}

#[test]
fn which_panel_next_has_right_and_wrong_answers_with_reasons() {
    let base: Job = (*sample().job).clone();
    let template = load_embedded("hatch").unwrap();
    let ask = || next_rounds(&base, &template, (11, 4), Naming::Uk, &LIMITS, &Quiet).unwrap();
    let rounds = ask();
    assert_eq!(rounds.len(), 4);
    let best =
        |r: &lapwright::practice::NextRound| r.candidates.iter().filter_map(|c| c.extra_s).fold(f64::MAX, f64::min);
    for round in &rounds {
        assert_eq!(round.candidates.len(), 4);
        assert!(round.candidates.iter().any(|c| c.right) && round.candidates.iter().any(|c| !c.right));
        assert!(best(round).abs() < 1e-9, "one of them is the best");
        let dearest = round.candidates.iter().filter(|c| c.right).filter_map(|c| c.extra_s).fold(0.0, f64::max);
        let cheapest = round.candidates.iter().filter(|c| !c.right).filter_map(|c| c.extra_s).fold(f64::MAX, f64::min);
        assert!(dearest < cheapest, "right is what is near the best, {MARGIN}");
        assert!(round.candidates.iter().all(|c| c.why.ends_with('.')));
        let panels: BTreeSet<usize> = round.candidates.iter().map(|c| c.panel).collect();
        assert_eq!(panels.len(), 4);
        if round.role == Role::Level {
            assert!(panels.iter().all(|p| round.wet.iter().any(|(w, _)| w == p)), "only wet panels can be levelled");
        }
    }
    let again = ask();
    let said = |rounds: &[lapwright::practice::NextRound]| {
        rounds.iter().map(|r| (r.now_s, r.worker, r.candidates.clone())).collect::<Vec<_>>()
    };
    assert_eq!(said(&rounds), said(&again), "the same seed asks the same");
}

#[test]
fn how_hard_to_polish_is_answered_by_the_plan_and_never_above_the_budget() {
    let base: Job = (*sample().job).clone();
    let template = load_embedded("saloon").unwrap();
    let rounds = polish_rounds(&base, &template, 3, 12);
    assert_eq!(rounds.len(), 12);
    let levels: BTreeSet<Level> = rounds.iter().map(lapwright::practice::PolishRound::level).collect();
    assert!(levels.len() >= 4, "{levels:?}");
    for round in &rounds {
        assert!(round.insight().removal_upper() <= round.insight().budget.allowed);
        assert!(!round.insight().polish.why.is_empty() && !round.defects().is_empty());
        assert_eq!(round.judge(round.level()), PolishAnswer::Right);
        for answer in Level::ALL {
            let judged = round.judge(answer);
            assert_eq!(judged == PolishAnswer::TooHard, answer > round.level());
            assert!(judged.worth() <= 1.0 && (judged.worth() < 1.0 || answer == round.level()));
        }
        assert!(Level::ALL.iter().all(|l| !round.hint().contains(&l.to_string())), "{}", round.hint());
    }
    // Common practice, no source: where hardly any film is left, nobody sands; the answer follows the thinnest place.
    for round in rounds.iter().filter(|r| r.insight().film.as_ref().is_some_and(|f| f.lower.um() < 70.0)) {
        assert!(round.level() <= Level::Gloss, "{:?}", round.insight().film);
    }
}

fn attempt(day: i8, score_pct: u32) -> Attempt {
    let date = Date::of(2026, 3, day).unwrap();
    Attempt {
        date,
        exercise: Done::Lesson(Lesson::Partner).written().to_owned(),
        vehicle: "Three-door \"hatch\", red".to_owned(),
        score_pct,
        broken: 2,
    }
}

#[test]
fn results_are_kept_one_behind_the_other_and_each_learner_has_their_own() {
    let folder = tempfile::tempdir().unwrap();
    let learners = Learners::in_folder(folder.path().join("deep").join("practice"));
    assert!(learners.list(&RealDisk).is_empty());
    let names = ["Zoë", "zoe", "Ann Lee", "Ann-Lee", "../up", "CON"];
    for (k, name) in names.into_iter().enumerate() {
        for day in 1..=3 {
            learners.add(&RealDisk, name, &attempt(day, 10 * k as u32)).unwrap();
        }
    }
    for (k, name) in names.into_iter().enumerate() {
        let all = learners.load(&RealDisk, name).unwrap();
        assert_eq!(all, (1..=3).map(|day| attempt(day, 10 * k as u32)).collect::<Vec<_>>(), "{name}");
    }
    let mut listed = learners.list(&RealDisk);
    listed.sort();
    let mut all = names.map(str::to_owned).to_vec();
    all.sort();
    assert_eq!(listed, all);
    for done in Done::ALL {
        learners.add(&RealDisk, "Bo", &Attempt { exercise: done.written().to_owned(), ..attempt(9, 100) }).unwrap();
    }
    assert_eq!(learners.load(&RealDisk, "bo ").unwrap().len(), Done::ALL.len(), "a name is the same in any letters");
}

#[test]
fn a_damaged_file_gives_one_error_with_its_line_and_is_never_written_over() {
    let folder = tempfile::tempdir().unwrap();
    let learners = Learners::in_folder(folder.path());
    learners.add(&RealDisk, "Ada", &attempt(1, 60)).unwrap();
    let path = folder.path().join("learner-ada.csv");
    let sound = std::fs::read_to_string(&path).unwrap();
    for (bad, line) in [
        (sound.replace("60", "160"), 2),
        (sound.replace("2026-03-01", "yesterday"), 2),
        (sound.replace("With a partner", " "), 2),
        (sound.replace("learner,date", "name,date"), 1),
        (format!("{sound}Ada,2026-03-02\n"), 3),
        (String::new(), 1),
    ] {
        std::fs::write(&path, &bad).unwrap();
        let error = learners.load(&RealDisk, "Ada").unwrap_err();
        assert!(matches!(error, ReadError::Syntax { line: l, .. } if l == line), "{error}");
        assert_eq!(error.to_string().lines().count(), 1);
        let refused = learners.add(&RealDisk, "Ada", &attempt(2, 70)).unwrap_err();
        assert!(matches!(refused, ProgressError::Faulty(_)) && !refused.hint().is_empty());
        assert_eq!(std::fs::read_to_string(&path).unwrap(), bad, "nothing was written");
    }
    assert!(matches!(Learners::default().add(&RealDisk, "Ada", &attempt(1, 1)), Err(ProgressError::NoFolder)));
    std::fs::write(&path, &sound).unwrap();
    assert_eq!(learners.load(&RealDisk, "Ada").unwrap(), [attempt(1, 60)]);
}

#[test]
fn a_result_is_there_whole_or_not_at_all_whatever_the_disk_does() {
    for nth in 0..12 {
        let folder = tempfile::tempdir().unwrap();
        let learners = Learners::in_folder(folder.path());
        learners.add(&RealDisk, "Ada", &attempt(1, 60)).unwrap();
        let disk = Fault::at(nth, true);
        let added = learners.add(&disk, "Ada", &attempt(2, 70)).is_ok();
        let kept = learners.load(&RealDisk, "Ada").unwrap();
        assert!(kept == [attempt(1, 60)] || kept == [attempt(1, 60), attempt(2, 70)], "{kept:?}");
        assert!(!added || kept.len() == 2, "what was said to be kept is there");
    }
}
