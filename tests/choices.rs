//! What people ask of the order of coating: it is kept, or it is told why not.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::crew::{Problem, violations};
use lapwright::file::Loaded;
use lapwright::insight::{
    CrewOrder, Insight, OrderRow, choice_notes, crew_problem, free_problem, levelling_note, order_rows,
    roles_by_experience,
};
use lapwright::job::{Command, Document, Experience, Member, OrderChoices, Role};
use lapwright::vehicle::{Naming, PanelId, Side, Surface, Template, embedded};
use lapwright::work::{Effort, Task, find_task};
use proptest::prelude::*;
use std::sync::Arc;
use std::sync::atomic::AtomicBool;
use support::job::job_on;

const EFFORT: Effort = Effort { seconds: 60.0, nodes: Some(4_000), threads: 1, seed: 1 };

fn with(loaded: &Loaded, command: Command) -> Loaded {
    let mut document = Document::opened(Arc::clone(&loaded.job));
    document.apply(&command, None).expect("it can be done");
    Loaded { job: Arc::clone(document.job()), template: Arc::clone(&loaded.template) }
}

fn asked(loaded: &Loaded, choices: OrderChoices) -> Loaded {
    with(loaded, Command::SetChoices(choices))
}

fn planned(loaded: &Loaded) -> (CrewOrder, Vec<OrderRow>) {
    let insight = Insight::new(&loaded.job, &loaded.template);
    let problem = Arc::new(crew_problem(&loaded.job, &loaded.template, &insight));
    let free =
        (!loaded.job.choices.is_empty()).then(|| Arc::new(free_problem(&loaded.job, &loaded.template, &insight)));
    let task = Task::Coating { problem, free };
    let order = find_task(&task, EFFORT, &AtomicBool::new(false), &|_| ()).expect("there is an order");
    let checked = Problem::try_from((*order.problem).clone()).expect("a sound problem");
    assert_eq!(violations(&checked, &order.plan), [], "{}", loaded.template.id);
    let rows = order_rows(&loaded.job, &loaded.template, &order.problem, &order.plan);
    (order, rows)
}

fn begun(rows: &[OrderRow], template: &Template, is: impl Fn(usize) -> bool) -> Vec<i64> {
    let rows = rows.iter().filter(|r| r.role == Role::Apply && is(r.panel));
    let mut starts: Vec<i64> = rows.map(|r| r.at.start).collect();
    assert!(!starts.is_empty(), "{}", template.id);
    starts.sort_unstable();
    starts
}

fn first(starts: &[i64]) -> i64 {
    starts.first().copied().unwrap_or_default()
}

fn last(starts: &[i64]) -> i64 {
    starts.last().copied().unwrap_or_default()
}

#[test]
fn one_side_is_applied_before_the_other() {
    for template in ["hatch", "coupe"] {
        for side in [Side::Left, Side::Right] {
            let loaded = asked(&job_on(template).build(), OrderChoices { side: Some(side), ..Default::default() });
            let (_, rows) = planned(&loaded);
            let panels = &loaded.template.panels;
            let this = begun(&rows, &loaded.template, |p| panels[p].side == side);
            let other = begun(&rows, &loaded.template, |p| panels[p].side == side.opposite());
            assert!(last(&this) < first(&other), "{template} {side:?}");
            assert_eq!(choice_notes(&loaded.job, &loaded.template, Naming::Uk), Vec::<String>::new());
        }
    }
}

#[test]
fn lamps_and_glass_wait_for_the_paint_unless_one_leans_over_paint_to_reach_them() {
    let loaded = asked(&job_on("saloon").build(), OrderChoices { paint_first: true, ..Default::default() });
    let (_, rows) = planned(&loaded);
    let t = &loaded.template;
    let paint = begun(&rows, t, |p| t.panels[p].surface == Surface::Paint);
    let lamps = begun(&rows, t, |p| t.panels[p].surface == Surface::Lamp);
    assert!(last(&paint) < first(&lamps));
    let notes = choice_notes(&loaded.job, t, Naming::Uk);
    for panel in t.panels.iter().filter(|p| p.surface == Surface::Glass) {
        let at = begun(&rows, t, |p| t.panels[p].id == panel.id);
        let over_paint = panel.leans_over.iter().any(|u| t.panel(u).is_some_and(|u| u.surface == Surface::Paint));
        let told = notes.iter().any(|n| n.contains(&panel.name(Naming::Uk)));
        assert!(first(&at) > last(&paint) || told, "{} comes before paint and nobody is told", panel.id);
        assert!(!over_paint || told, "{}", panel.id);
    }
}

#[test]
fn first_panels_come_first_in_their_order() {
    let wanted: Vec<PanelId> = ["wing-right", "bonnet-left", "lamp-rear-left"].map(PanelId::from).to_vec();
    let plain = job_on("hatch").build();
    let known: Vec<PanelId> = wanted.into_iter().filter(|id| plain.template.panel(id).is_some()).collect();
    assert!(known.len() >= 2, "{known:?}");
    let loaded = asked(&plain, OrderChoices { first: known.clone(), ..Default::default() });
    let (order, rows) = planned(&loaded);
    let t = &loaded.template;
    let starts: Vec<i64> = known.iter().map(|id| first(&begun(&rows, t, |p| t.panels[p].id == *id))).collect();
    let others = begun(&rows, t, |p| !known.contains(&t.panels[p].id));
    let notes = choice_notes(&loaded.job, t, Naming::Uk);
    // The bonnet is reached over the wing, so it has to come before it, and that is told.
    let refused = |id: &PanelId| notes.iter().any(|n| t.panel(id).is_some_and(|p| n.contains(&p.name(Naming::Uk))));
    for (pair, ids) in starts.windows(2).zip(known.windows(2)) {
        assert!(pair[0] < pair[1] || refused(&ids[0]), "{starts:?} {notes:?}");
    }
    assert!(starts.iter().all(|s| *s <= first(&others)) || !notes.is_empty(), "{starts:?} {others:?}");
    let free = order.free.expect("an order with nothing asked");
    assert!(free.makespan_s > 0 && free.cost <= order.plan.cost, "asking for something never makes it better");
}

#[test]
fn a_panel_that_others_must_come_before_is_told() {
    let plain = job_on("hatch").build();
    let t = &plain.template;
    let under = t.panels.iter().find_map(|p| p.leans_over.first()).expect("somebody leans over something").clone();
    let loaded = asked(&plain, OrderChoices { first: vec![under.clone()], ..Default::default() });
    let notes = choice_notes(&loaded.job, t, Naming::Uk);
    assert!(notes.iter().any(|n| n.contains("one leans over it")), "{notes:?}");
    planned(&loaded);
}

#[test]
fn everybody_begins_where_they_were_asked_to() {
    let roles = [vec![Role::Apply], vec![Role::Apply], vec![Role::Level], vec![Role::Level]];
    let names = ["Ada", "Bo", "Cy", "Di"];
    let crew: Vec<Member> = names.iter().zip(roles).map(|(name, roles)| Member::new(*name, &roles)).collect();
    let loaded = with(&job_on("van").build(), Command::SetCrew(crew));
    let t = &loaded.template;
    // Nothing is leant over to reach these, and they lie far apart.
    let free = |p: &&lapwright::vehicle::Panel| {
        p.skip.is_none() && t.panels.iter().all(|other| !other.leans_over.contains(&p.id))
    };
    let far: Vec<PanelId> = t.panels.iter().filter(free).map(|p| p.id.clone()).collect();
    let (a, b) = (far.first().expect("a panel"), far.last().expect("a panel"));
    let choices = OrderChoices::default().with_beginning("Bo", Some(a.clone())).with_beginning("Ada", Some(b.clone()));
    let loaded = asked(&loaded, choices);
    let (_, rows) = planned(&loaded);
    for (worker, wanted) in [(1, a), (0, b)] {
        let begins = rows.iter().find(|r| r.worker == worker).expect("everybody works");
        assert_eq!(t.panels[begins.panel].id, *wanted);
    }
}

#[test]
fn choices_follow_a_new_name_and_go_with_whoever_leaves() {
    let panel = PanelId::from("bonnet-left");
    let choices = OrderChoices::default().with_beginning("Ada", Some(panel.clone()));
    let loaded = asked(&job_on("hatch").build(), choices);
    let mut crew = loaded.job.crew.clone();
    crew[0].name = "Adam".to_owned();
    let renamed = with(&loaded, Command::SetCrew(crew.clone()));
    assert_eq!(renamed.job.choices.beginning_of("Adam"), Some(&panel));
    crew[0] = Member { name: "Cy".to_owned(), roles: vec![Role::Apply, Role::Level], ..crew[0].clone() };
    crew.remove(1);
    assert!(with(&renamed, Command::SetCrew(crew)).job.choices.is_empty());
}

#[test]
fn choices_that_cannot_be_are_refused_with_a_reason() {
    let loaded = job_on("hatch").build();
    let mut document = Document::opened(Arc::clone(&loaded.job));
    let nobody = OrderChoices::default().with_beginning("Nobody", Some(PanelId::from("bonnet-left")));
    let centre = OrderChoices { side: Some(Side::Centre), ..Default::default() };
    let twice = OrderChoices { first: vec![PanelId::from("bonnet-left"); 2], ..Default::default() };
    for (choices, word) in [(nobody, "not in the crew"), (centre, "no side"), (twice, "twice")] {
        let error = document.apply(&Command::SetChoices(choices), None).expect_err("it can't be");
        assert!(error.to_string().contains(word), "{error}");
    }
    assert!(Arc::ptr_eq(document.job(), &loaded.job));
}

/// Common practice, no source: who knows the work best levels, since a mistake there stays.
#[test]
fn the_most_experienced_level() {
    use Experience::{Expert, Learner, Practised};
    let crew = |experience: &[Experience]| -> Vec<Member> {
        let member = |(i, e): (usize, &Experience)| Member {
            name: format!("{i}"),
            roles: vec![Role::Apply, Role::Level],
            experience: *e,
        };
        experience.iter().enumerate().map(member).collect()
    };
    let (apply, level, both) = (vec![Role::Apply], vec![Role::Level], vec![Role::Apply, Role::Level]);
    let roles = |experience: &[Experience]| roles_by_experience(&crew(experience));
    assert_eq!(roles(&[Learner]), std::slice::from_ref(&both));
    assert_eq!(roles(&[Learner, Expert]), [apply.clone(), level.clone()]);
    assert_eq!(roles(&[Practised, Practised]), [level.clone(), apply.clone()]);
    assert_eq!(roles(&[Learner, Expert, Practised]), [apply.clone(), level.clone(), both]);
    assert_eq!(roles(&[Expert, Learner, Practised, Expert]), [level.clone(), apply.clone(), apply, level]);
    let mut wrong = crew(&[Learner, Expert]);
    (wrong[0].roles, wrong[1].roles) = (vec![Role::Level], vec![Role::Apply]);
    assert!(levelling_note(&wrong).is_some_and(|n| n.contains("stays")));
    (wrong[0].roles, wrong[1].roles) = (vec![Role::Apply], vec![Role::Level]);
    assert_eq!(levelling_note(&wrong), None);
}

fn any_choices(template: &Template) -> impl Strategy<Value = OrderChoices> + use<> {
    let ids: Vec<PanelId> = template.panels.iter().map(|p| p.id.clone()).collect();
    let panel = || proptest::option::of(proptest::sample::select(ids.clone()));
    let side = proptest::sample::select(vec![None, Some(Side::Left), Some(Side::Right)]);
    let first = proptest::sample::subsequence(ids.clone(), 0..4).prop_shuffle();
    (panel(), panel(), first, side, any::<bool>()).prop_map(|(a, b, first, side, paint_first)| {
        let choices = OrderChoices { first, side, paint_first, ..Default::default() };
        choices.with_beginning("Ada", a).with_beginning("Bo", b)
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, failure_persistence: None, ..ProptestConfig::default() })]

    /// Whatever is asked, nothing waits for itself, on any vehicle.
    #[test]
    fn any_choices_give_a_sound_problem(
        (at, choices) in (0..embedded().len()).prop_flat_map(|at| {
            let template = lapwright::vehicle::load_embedded(embedded()[at].id).expect("it loads");
            (Just(at), any_choices(&template))
        }),
    ) {
        let loaded = asked(&job_on(embedded()[at].id).build(), choices);
        let insight = Insight::new(&loaded.job, &loaded.template);
        let problem = crew_problem(&loaded.job, &loaded.template, &insight);
        let checked = Problem::try_from(problem);
        prop_assert!(checked.is_ok(), "{:?}", checked.err());
        for note in choice_notes(&loaded.job, &loaded.template, Naming::Uk) {
            prop_assert!(note.ends_with('.') && !note.contains('/'), "{note}");
        }
    }
}
