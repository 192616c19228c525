//! From a job to its plan: budgets are kept, every decision has a reason, changes reach what they must and nothing else.
#![expect(clippy::expect_used, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::crew::{Problem, violations};
use lapwright::file::Loaded;
use lapwright::insight::{CrewOrder, Insight, coated_panels, crew_problem, order_rows, report};
use lapwright::job::{Command, Document, Role, carry_over};
use lapwright::measure::GaugePrinciple;
use lapwright::polish::{DefectKind, Goal, Level};
use lapwright::units::Micrometres;
use lapwright::vehicle::{PanelId, embedded};
use lapwright::work::{Effort, find_order};
use proptest::prelude::*;
use serde_json::Value;
use std::sync::atomic::AtomicBool;
use std::sync::{Arc, LazyLock};
use support::command::command;
use support::job::job_on;
use support::{index_of, sample};

/// The sample, and a fully read job on every template.
fn jobs() -> impl Iterator<Item = Loaded> {
    std::iter::once(sample()).chain(embedded().iter().map(|e| job_on(e.id).read_all(115.0).build()))
}

fn insight(loaded: &Loaded) -> Insight {
    Insight::new(&loaded.job, &loaded.template)
}

/// An order that depends on the seed alone: one thread and a fixed number of steps.
fn order(loaded: &Loaded) -> CrewOrder {
    let problem = Arc::new(crew_problem(&loaded.job, &loaded.template, &insight(loaded)));
    let effort = Effort { seconds: 30.0, nodes: Some(10_000), threads: 1, seed: 1 };
    find_order(&problem, effort, &AtomicBool::new(false), &|_| ()).expect("there is an order")
}

#[test]
fn no_plan_takes_more_than_the_budget_and_each_has_a_reason() {
    let mut worked = 0;
    for loaded in jobs() {
        for (panel, insight) in loaded.template.panels.iter().zip(&insight(&loaded).panels) {
            let place = format!("{} {}", loaded.template.id, panel.id);
            assert!(insight.removal_upper() <= insight.budget.allowed, "{place}");
            assert!(insight.polish.removal <= insight.polish.removal_upper, "{place}");
            for limit in &insight.budget.limits {
                assert!(insight.budget.allowed <= limit.um, "{place}: {limit:?}");
                assert!(!limit.what.is_empty() && !limit.source.is_empty(), "{place}");
            }
            assert!(!insight.polish.why.is_empty() && insight.polish.why.iter().all(|w| !w.is_empty()), "{place}");
            assert_eq!(insight.polish.outcomes.len(), insight.defects.len(), "{place}");
            worked += usize::from(insight.polish.level != Level::Leave);
        }
    }
    assert!(worked > 20 * (1 + embedded().len()) / 2, "most painted panels are worked: {worked}");
}

#[test]
fn a_panel_that_was_not_read_is_left_whatever_is_wrong_with_it() {
    let loaded = job_on("hatch").defect("bonnet-left", DefectKind::Swirl).build();
    let bonnet = &insight(&loaded).panels[index_of(&loaded.template, "bonnet-left")];
    assert_eq!((bonnet.budget.allowed, bonnet.polish.level), (Micrometres::ZERO, Level::Leave));
    assert!(bonnet.polish.why[0].contains("nothing was read"), "{:?}", bonnet.polish.why);
}

#[test]
fn a_gauge_that_reads_plastic_gives_the_bumper_a_film() {
    let magnetic = job_on("hatch").film("bumper-front-left", 120.0).build();
    let ultrasonic = job_on("hatch").gauge(GaugePrinciple::Ultrasonic).film("bumper-front-left", 120.0).build();
    let bumper = index_of(&magnetic.template, "bumper-front-left");
    assert!(insight(&magnetic).panels[bumper].unreadable.is_some());
    assert!(insight(&ultrasonic).panels[bumper].unreadable.is_none());
    assert!(insight(&ultrasonic).panels[bumper].budget.allowed > Micrometres::ZERO);
}

#[test]
fn gloss_only_takes_less_than_correcting() {
    let correct = job_on("hatch").read_all(115.0).build();
    let mut document = Document::opened(Arc::clone(&correct.job));
    document.apply(&Command::SetGoal(Goal::Gloss), None).expect("a goal");
    let gloss = Insight::new(document.job(), &correct.template);
    for (a, b) in gloss.panels.iter().zip(&insight(&correct).panels) {
        assert!(a.polish.level <= Level::Gloss, "{:?}", a.polish.level);
        assert!(a.polish.removal <= b.polish.removal);
    }
    assert!(gloss.polish_seconds() < insight(&correct).polish_seconds());
}

static SAMPLE: LazyLock<Loaded> = LazyLock::new(sample);

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn results_brought_up_to_date_are_those_worked_out_anew(
        commands in proptest::collection::vec(command(&SAMPLE.template), 1..4),
    ) {
        let mut document = Document::opened(Arc::clone(&SAMPLE.job));
        let mut kept = insight(&SAMPLE);
        let mut step = |document: &Document| {
            kept.refresh(document.job(), &SAMPLE.template);
            let anew = Insight::new(document.job(), &SAMPLE.template);
            // What is worked out when asked for is asked for on both.
            let everything = |insight: &Insight| {
                let spots: Vec<_> = (0..insight.panels.len()).map(|i| insight.spot_budgets(i).to_vec()).collect();
                let (ambition, now) = (insight.ambition(), insight.ambition_now());
                let Insight { panels, air, learned, differences, .. } = insight;
                format!("{spots:?} {ambition:?} {now:?} {panels:?} {air:?} {learned:?} {differences:?}")
            };
            prop_assert_eq!(everything(&kept), everything(&anew));
            Ok(())
        };
        for command in &commands {
            drop(document.apply(command, None));
            step(&document)?;
        }
        document.undo();
        step(&document)?;
    }
}

#[test]
fn another_vehicle_is_worked_out_anew() {
    let other = job_on("hatch").film("bonnet-left", 110.0).build();
    let mut kept = insight(&SAMPLE);
    let panels = carry_over(&SAMPLE.job.panels, &SAMPLE.template, &other.template);
    let mut document = Document::opened(Arc::clone(&SAMPLE.job));
    document.apply(&Command::SetTemplate { template: "hatch".to_owned(), panels }, None).expect("it exists");
    assert_eq!(kept.refresh(document.job(), &other.template), other.template.panels.len());
    let anew = Insight::new(document.job(), &other.template);
    assert_eq!(format!("{:?}", kept.panels), format!("{:?}", anew.panels));
}

#[test]
fn a_new_reading_changes_the_budget_of_its_panel_and_of_no_other() {
    let panel = PanelId::from("boot-lid-left");
    let mut document = Document::opened(Arc::clone(&SAMPLE.job));
    let before = insight(&SAMPLE);
    let thin = Command::SetReading { panel: panel.clone(), spot: 0, reading: 0, thickness: Micrometres::of(75.0) };
    document.apply(&thin, None).expect("there is such a reading");
    let mut after = before.clone();
    assert_eq!(after.refresh(document.job(), &SAMPLE.template), 1, "one panel is worked out");
    for (i, p) in SAMPLE.template.panels.iter().enumerate() {
        let same = before.panels[i].budget == after.panels[i].budget;
        assert_eq!(same, p.id != panel, "{}", p.id);
    }
    let index = index_of(&SAMPLE.template, panel.as_str());
    assert!(after.panels[index].budget.allowed < before.panels[index].budget.allowed);
    assert!(after.panels[index].removal_upper() <= after.panels[index].budget.allowed);
}

#[test]
fn failing_clear_coat_keeps_its_panel_out_of_the_coating_at_once() {
    let loaded = sample();
    let before = crew_problem(&loaded.job, &loaded.template, &insight(&loaded));
    let panel = PanelId::from("roof-left");
    let mut document = Document::opened(Arc::clone(&loaded.job));
    let mut defect = loaded.job.record(&panel).expect("it was read").defects[0].clone();
    defect.kind = DefectKind::ClearFailure;
    document.apply(&Command::AddDefect(panel.clone(), defect), None).expect("a defect");
    let insight = Insight::new(document.job(), &loaded.template);
    let after = crew_problem(document.job(), &loaded.template, &insight);
    assert_eq!(after.operations.len(), before.operations.len() - 2, "apply and level of one panel");
    assert!(after.operations.iter().all(|o| o.panel != panel.as_str()));
    let gone = |id: &String| id.starts_with("roof-left/");
    assert!(!after.lags.iter().any(|l| gone(&l.from) || gone(&l.to)));
    assert!(!after.wet.iter().any(|w| gone(&w.from) || gone(&w.to) || w.blocks.iter().any(gone)));
    Problem::try_from(after).expect("what is left is a sound problem");
    document.undo();
    let insight = Insight::new(document.job(), &loaded.template);
    assert_eq!(crew_problem(document.job(), &loaded.template, &insight), before);
}

#[test]
fn every_job_gives_a_sound_crew_problem_and_an_order_that_breaks_no_rule() {
    for loaded in jobs() {
        let order = order(&loaded);
        let problem = Problem::try_from((*order.problem).clone()).expect("a sound problem");
        assert_eq!(violations(&problem, &order.plan), [], "{}", loaded.template.id);
        assert!(order.plan.bound <= order.plan.cost && order.plan.bound > 0, "{:?}", order.plan);
        let chance = order.lateness.as_ref().expect("days were simulated").late_chance;
        assert!((0.0..=1.0).contains(&chance), "{chance}");

        let rows = order_rows(&loaded.job, &loaded.template, &order.problem, &order.plan);
        let coated = coated_panels(&loaded.job, &loaded.template);
        assert_eq!(rows.len(), 2 * coated.len(), "{}", loaded.template.id);
        for panel in coated {
            let when = |role| rows.iter().find(|r| r.panel == panel && r.role == role).expect("it is in the order").at;
            assert!(when(Role::Apply).end <= when(Role::Level).start);
        }
    }
}

#[test]
fn two_layers_are_laid_one_after_the_other() {
    let product = lapwright::coat::Product { layers: 2, recoat_s: 600, ..Default::default() };
    let loaded = job_on("hatch").product(product).build();
    let order = order(&loaded);
    let rows = order_rows(&loaded.job, &loaded.template, &order.problem, &order.plan);
    for panel in coated_panels(&loaded.job, &loaded.template) {
        let find = |role, layer| rows.iter().find(|r| r.panel == panel && r.role == role && r.layer == layer);
        let first = find(Role::Level, 1).expect("the first layer is levelled");
        let second = find(Role::Apply, 2).expect("the second is applied");
        assert!(second.at.start >= first.at.end + 600);
    }
}

/// Nobody can finish before the one who levels has levelled everything, nor, where there is enough to do meanwhile, take much
/// longer than that: the windows are wide enough to fill with other panels.
#[test]
fn the_order_of_the_sample_takes_little_longer_than_its_busier_worker_works() {
    let loaded = sample();
    let order = order(&loaded);
    let of =
        |role: &str| -> i64 { order.problem.operations.iter().filter(|o| o.role == role).map(|o| o.duration_s).sum() };
    let busier = of("apply").max(of("level"));
    let makespan = order.plan.makespan_s;
    assert!(makespan >= busier, "{makespan} {busier}");
    assert!(makespan <= busier * 3 / 2, "{makespan} {busier}");
}

/// Two practised people coat a compact vehicle of two doors in 17 to 24 minutes; one of four doors may be a little sooner, as its
/// panels are smaller (common practice, no source).
#[test]
fn a_compact_vehicle_is_coated_in_about_twenty_minutes() {
    let two_doors = embedded().iter().find(|e| e.id == "hatch-3");
    let (id, least) = two_doors.map_or(("hatch", 14.0), |e| (e.id, 17.0));
    let minutes = order(&job_on(id).build()).plan.makespan_s as f64 / 60.0;
    assert!((least..=24.0).contains(&minutes), "{id}: {minutes:.1} min");
}

/// Dew point by hand: γ = ln 0.52 + 17.62·21/(243.12 + 21) = 0.7470; T = 243.12·γ/(17.62 − γ) = 10.76 °C (Magnus, factors of
/// Sonntag 1990 as in WMO-No. 8).
#[test]
fn the_air_comes_through_to_the_report() {
    let loaded = sample();
    let insight = insight(&loaded);
    let problem = crew_problem(&loaded.job, &loaded.template, &insight);
    let coating = report(&loaded.job, &loaded.template, &insight, &problem, None).coating;
    assert!((coating.dew_point_c - 10.76).abs() < 0.02, "{}", coating.dew_point_c);
    assert!((coating.surface_margin_c - (19.5 - 10.76)).abs() < 0.02, "{}", coating.surface_margin_c);
    assert!(coating.go && coating.stops.is_empty());
    assert_eq!((coating.window_s.min, coating.window_s.max), (insight.air.window.min_s, insight.air.window.max_s));
    assert!(coating.window_s.min < coating.window_s.max);

    let mut wet = (*loaded.job).clone();
    wet.air.surface_temp_c = lapwright::units::Celsius::of(12.0);
    let insight = Insight::new(&Arc::new(wet.clone()), &loaded.template);
    let coating = report(&wet, &loaded.template, &insight, &problem, None).coating;
    assert!(!coating.go, "1.2 K above the dew point is too little");
    assert!(coating.stops.iter().any(|s| s.contains("dew point")), "{:?}", coating.stops);
}

/// Shape of a JSON value, for comparing with what users of `plan --json` were promised.
fn is(value: &Value, kind: &str) -> bool {
    match kind {
        "text" => value.as_str().is_some_and(|t| !t.is_empty()),
        "number" => value.is_number(),
        "count" => value.is_u64(),
        "flag" => value.is_boolean(),
        "texts" => value.as_array().is_some_and(|l| l.iter().all(Value::is_string)),
        "list" => value.is_array(),
        "object" => value.is_object(),
        "number or null" => value.is_number() || value.is_null(),
        "object or null" => value.is_object() || value.is_null(),
        other => unreachable!("no kind {other}"),
    }
}

fn assert_fields(value: &Value, place: &str, fields: &[(&str, &str)]) {
    for (name, kind) in fields {
        assert!(value.get(name).is_some_and(|v| is(v, kind)), "{place}.{name} is no {kind}: {}", value[name]);
    }
}

fn assert_panel_fields(list: &[Value]) {
    let panels = [
        ("id", "text"),
        ("name", "text"),
        ("area_m2", "number"),
        ("substrate", "text"),
        ("film_um", "object or null"),
        ("clear_um", "object or null"),
        ("budget_um", "number"),
        ("limits", "list"),
        ("polish", "object"),
    ];
    let polish = [
        ("level", "text"),
        ("steps", "list"),
        ("removal_um", "number"),
        ("removal_upper_um", "number"),
        ("minutes", "number"),
        ("correction", "number"),
        ("why", "texts"),
    ];
    let (mut read, mut stepped) = (0, 0);
    for panel in list {
        assert_fields(panel, "panel", &panels);
        assert_fields(&panel["polish"], "polish", &polish);
        if !panel["film_um"].is_null() {
            read += 1;
            let film = [("n", "count"), ("mean", "number"), ("sd", "number or null"), ("lower", "number")];
            assert_fields(&panel["film_um"], "film_um", &film);
            assert_fields(&panel["clear_um"], "clear_um", &[("lower", "number"), ("basis", "text")]);
        }
        for limit in panel["limits"].as_array().expect("a list") {
            assert_fields(limit, "limit", &[("what", "text"), ("um", "number")]);
        }
        for step in panel["polish"]["steps"].as_array().expect("a list") {
            stepped += 1;
            assert_fields(step, "step", &[("name", "text"), ("passes", "count"), ("removal_um", "number")]);
        }
        let levels = ["Leave", "Gloss", "One-step", "Two-step", "Sand and polish"];
        assert!(levels.contains(&panel["polish"]["level"].as_str().expect("a text")), "{}", panel["polish"]["level"]);
    }
    assert!(read > 15 && stepped > 15, "{read} {stepped}");
}

#[test]
fn the_json_report_has_every_field_that_was_promised() {
    let loaded = sample();
    let order = order(&loaded);
    let insight = insight(&loaded);
    let report = report(&loaded.job, &loaded.template, &insight, &order.problem, Some(&order));
    let json = serde_json::to_value(&report).expect("it is plain data");
    assert_fields(
        &json,
        "",
        &[
            ("job", "text"),
            ("vehicle", "text"),
            ("template", "text"),
            ("panels", "list"),
            ("coating", "object"),
            ("exposure", "list"),
            ("cautions", "texts"),
        ],
    );
    assert_eq!(json["panels"].as_array().expect("a list").len(), loaded.template.panels.len());
    assert_panel_fields(json["panels"].as_array().expect("a list"));
    let coating = &json["coating"];
    assert_fields(
        coating,
        "coating",
        &[
            ("go", "flag"),
            ("stops", "texts"),
            ("dew_point_c", "number"),
            ("surface_margin_c", "number"),
            ("window_s", "object"),
            ("coating_ml", "number"),
            ("crew_problem", "object"),
            ("crew_plan", "object"),
            ("order", "list"),
            ("late_chance", "number"),
        ],
    );
    assert_fields(&coating["window_s"], "window_s", &[("min", "count"), ("max", "count")]);
    assert_eq!(coating["crew_problem"]["format"], "crew-problem/1");
    let plan = [
        ("operations", "list"),
        ("makespan_s", "count"),
        ("walking_s", "count"),
        ("cost", "count"),
        ("bound", "count"),
    ];
    assert_fields(&coating["crew_plan"], "crew_plan", &plan);
    for row in coating["order"].as_array().expect("a list") {
        let fields =
            [("worker", "text"), ("role", "text"), ("panel", "text"), ("start_s", "count"), ("end_s", "count")];
        assert_fields(row, "order", &fields);
    }
    assert_eq!(json["exposure"].as_array().expect("a list").len(), loaded.job.crew.len());
    for worker in json["exposure"].as_array().expect("a list") {
        let fields = [
            ("worker", "text"),
            ("hav_a8_ms2", "number"),
            ("hav_points", "number"),
            ("noise_lex8h_db", "number or null"),
        ];
        assert_fields(worker, "exposure", &fields);
    }
}
