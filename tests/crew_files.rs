//! Problem files that can't be read or planned: each fault with its place.
#![expect(clippy::panic, reason = "a helper of a test may fail it")]

use lapwright::crew::{Problem, ReadError};
use lapwright::finding::Code;
use serde_json::{Value, json};

/// Two panels, all fields; every test spoils one thing.
fn sound() -> Value {
    json!({
        "format": "crew-problem/1", "name": "two panels",
        "workers": [{"id": "A", "roles": ["apply"]}, {"id": "B", "roles": ["level"]}],
        "stances": ["left", "front", "right"],
        "walk_s": [[0, 4, 8], [4, 0, 4], [8, 4, 0]],
        "close": [["left", "front"]],
        "operations": [
            {"id": "a1", "panel": "p1", "role": "apply", "duration_s": 20, "stance": "left"},
            {"id": "l1", "panel": "p1", "role": "level", "duration_s": 20, "stance": "left"},
            {"id": "a2", "panel": "p2", "role": "apply", "duration_s": 30, "stance": "right"},
            {"id": "l2", "panel": "p2", "role": "level", "duration_s": 30, "stance": "right"}],
        "lags": [{"from": "a1", "to": "l1", "min_s": 60, "max_s": 300}, {"from": "a2", "to": "l2", "min_s": 60, "max_s": null}],
        "wet": [{"from": "a1", "to": "l1", "blocks": ["a2", "l2"]}],
        "objective": {"makespan": 10, "walking": 1}
    })
}

fn spoiled(pointer: &str, value: Value) -> Value {
    let mut problem = sound();
    *problem.pointer_mut(pointer).unwrap_or_else(|| panic!("no {pointer}")) = value;
    problem
}

fn faults(problem: &Value) -> Vec<(Code, String)> {
    match Problem::from_json(&problem.to_string()) {
        Err(ReadError::Invalid(findings)) => findings.into_iter().map(|f| (f.code, f.place)).collect(),
        other => panic!("expected findings, got {other:?}"),
    }
}

fn only_fault(pointer: &str, value: Value, code: Code, place: &str) {
    assert_eq!(faults(&spoiled(pointer, value)), [(code, place.to_owned())], "{pointer}");
}

#[test]
fn the_sound_problem_is_read_and_written_back() {
    let problem = Problem::from_json(&sound().to_string()).unwrap();
    assert_eq!(serde_json::to_value(problem.spec()).unwrap(), sound());
}

#[test]
fn each_fault_is_found_where_it_is() {
    only_fault("/format", json!("crew-problem/2"), Code::CrewFormat, "format");
    only_fault("/operations/3/duration_s", json!(-30), Code::CrewTime, "operations[3].duration_s");
    only_fault("/operations/3/duration_s", json!(0), Code::CrewTime, "operations[3].duration_s");
    only_fault("/operations/0/duration_s", json!(1_000_000_000), Code::CrewTime, "operations[0].duration_s");
    only_fault("/operations/1/stance", json!("roof"), Code::CrewName, "operations[1].stance");
    only_fault("/operations/1/role", json!("polish"), Code::CrewRole, "operations[1].role");
    let twice = faults(&spoiled("/operations/2/id", json!("a1")));
    assert!(twice.contains(&(Code::CrewDuplicate, "operations[2].id".to_owned())), "{twice:?}");
    only_fault("/lags/0/min_s", json!(-1), Code::CrewTime, "lags[0].min_s");
    only_fault("/lags/0/max_s", json!(-1), Code::CrewTime, "lags[0].max_s");
    only_fault("/lags/1/to", json!("l9"), Code::CrewName, "lags[1].to");
    only_fault("/lags/1/to", json!("a2"), Code::CrewCycle, "lags[1]");
    only_fault("/wet/0/blocks/1", json!("l9"), Code::CrewName, "wet[0].blocks[1]");
    only_fault("/wet/0/blocks/1", json!("l1"), Code::CrewCycle, "wet[0].blocks[1]");
    only_fault("/close/0/1", json!("roof"), Code::CrewName, "close[0][1]");
    only_fault("/walk_s/0/2", json!(9), Code::CrewWalk, "walk_s[0][2]");
    only_fault("/walk_s/1/1", json!(1), Code::CrewWalk, "walk_s[1][1]");
    only_fault("/walk_s/2", json!([8, 4]), Code::CrewWalk, "walk_s[2]");
    only_fault("/walk_s", json!([]), Code::CrewWalk, "walk_s");
    let idle = json!([{"id": "A", "roles": ["apply"]}, {"id": "B", "roles": ["level"]}, {"id": "C", "roles": []}]);
    only_fault("/workers", idle, Code::CrewRole, "workers[2].roles");
    only_fault("/objective/walking", json!(-1), Code::CrewTime, "objective.walking");
    only_fault("/operations", json!([]), Code::CrewSize, "operations");
}

#[test]
fn a_circle_of_lags_is_named() {
    let circle = json!([{"from": "a1", "to": "l1", "min_s": 0, "max_s": null}, {"from": "l1", "to": "a1", "min_s": 0, "max_s": null}]);
    only_fault("/lags", circle, Code::CrewCycle, "lags");
}

#[test]
fn all_faults_are_reported_at_once() {
    let mut problem = spoiled("/operations/3/duration_s", json!(-30));
    problem["lags"][0]["min_s"] = json!(-5);
    problem["close"][0][0] = json!("roof");
    assert_eq!(faults(&problem).len(), 3);
}

#[test]
fn more_operations_than_a_vehicle_has_are_refused_before_any_work() {
    let one = sound()["operations"][0].clone();
    let many: Vec<Value> = (0..5_001).map(|_| one.clone()).collect();
    only_fault("/operations", Value::Array(many), Code::CrewSize, "operations");
}

#[test]
fn what_is_not_a_problem_at_all_has_line_column_and_path() {
    let mut missing = sound();
    missing["operations"][1].as_object_mut().unwrap().remove("duration_s");
    let text = serde_json::to_string_pretty(&missing).unwrap();
    let Err(ReadError::Syntax { line, path, message, .. }) = Problem::from_json(&text) else { panic!("was read") };
    assert!(line > 1);
    assert_eq!(path, "operations[1]");
    assert!(message.contains("duration_s"), "{message}");

    let mut unknown = sound();
    unknown["lags"][0]["maximum"] = json!(3);
    assert!(
        matches!(Problem::from_json(&unknown.to_string()), Err(ReadError::Syntax { path, .. }) if path.starts_with("lags[0]"))
    );
    let text = spoiled("/operations/0/duration_s", json!("long")).to_string();
    assert!(
        matches!(Problem::from_json(&text), Err(ReadError::Syntax { path, .. }) if path == "operations[0].duration_s")
    );
    assert!(matches!(Problem::from_json("{"), Err(ReadError::Syntax { line: 1, .. })));
    assert!(matches!(Problem::from_json(&(sound().to_string() + "x")), Err(ReadError::Syntax { .. })));
}
