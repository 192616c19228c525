//! The program itself, as it is run from a terminal.
#![expect(clippy::expect_used, clippy::panic, reason = "helpers of tests; clippy only sees test functions as tests")]

mod support;

use lapwright::crew::{PlanFile, Problem, violations};
use lapwright::finding::Code;
use serde_json::{Value, json};
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};
use std::time::{Duration, Instant};
use support::root;
use tempfile::TempDir;

/// The program, without a display and without the settings of whoever runs the tests.
fn lapwright(arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_lapwright"));
    command.args(arguments);
    for variable in ["DISPLAY", "WAYLAND_DISPLAY", "WAYLAND_SOCKET", "RUST_BACKTRACE", "RUST_LOG"] {
        command.env_remove(variable);
    }
    command.env("LC_ALL", "C");
    command
}

fn run(arguments: &[&str]) -> Output {
    lapwright(arguments).output().expect("the program starts")
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8(bytes.to_vec()).expect("output is UTF-8")
}

/// What was printed, of a run that ended well and had nothing to remark.
fn fine(arguments: &[&str]) -> String {
    let output = run(arguments);
    assert_eq!(output.status.code(), Some(0), "{arguments:?}: {}", text(&output.stderr));
    assert_eq!(text(&output.stderr), "", "{arguments:?}");
    text(&output.stdout)
}

/// Error and hint of a run that could not do what it was asked: exactly these two lines, and no data.
fn failed(arguments: &[&str]) -> (String, String) {
    let begun = Instant::now();
    let output = run(arguments);
    assert!(begun.elapsed() < Duration::from_secs(2), "{arguments:?} took {:?}", begun.elapsed());
    assert_eq!(text(&output.stdout), "", "{arguments:?}");
    assert_eq!(output.status.code(), Some(2), "{arguments:?}");
    two_lines(&text(&output.stderr))
}

fn two_lines(notes: &str) -> (String, String) {
    let lines: Vec<&str> = notes.lines().collect();
    let [error, hint] = lines.as_slice() else { panic!("not two lines: {notes}") };
    let error = error.strip_prefix("error: ").unwrap_or_else(|| panic!("{notes}"));
    let hint = hint.strip_prefix("hint: ").unwrap_or_else(|| panic!("{notes}"));
    assert!(!error.trim().is_empty() && !hint.trim().is_empty(), "{notes}");
    (error.to_owned(), hint.to_owned())
}

struct Folder(TempDir);

impl Folder {
    fn new() -> Self {
        Self(tempfile::tempdir().expect("a folder"))
    }

    fn path(&self, name: &str) -> String {
        self.0.path().join(name).display().to_string()
    }

    fn file(&self, name: &str, content: impl AsRef<[u8]>) -> String {
        fs::write(self.path(name), content).expect("the folder takes a file");
        self.path(name)
    }

    fn names(&self) -> Vec<String> {
        let entries = fs::read_dir(self.0.path()).expect("the folder is there");
        entries.map(|e| e.expect("an entry").file_name().to_string_lossy().into_owned()).collect()
    }
}

fn bad(name: &str) -> String {
    root().join("tests/data/jobs/bad").join(name).display().to_string()
}

/// A crew problem of two panels, as a value to break.
fn problem() -> Value {
    let operation = |id: &str, panel: &str, role: &str, stance: &str| json!({"id": id, "panel": panel, "role": role, "duration_s": 30, "stance": stance});
    json!({
        "format": "crew-problem/1", "name": "two panels",
        "workers": [{"id": "A", "roles": ["apply"]}, {"id": "B", "roles": ["level"]}],
        "stances": ["front", "left", "rear"],
        "walk_s": [[0, 3, 5], [3, 0, 3], [5, 3, 0]],
        "close": [["front", "left"]],
        "operations": [
            operation("a1", "bonnet", "apply", "front"), operation("l1", "bonnet", "level", "front"),
            operation("a2", "boot", "apply", "rear"), operation("l2", "boot", "level", "rear"),
        ],
        "lags": [
            {"from": "a1", "to": "l1", "min_s": 60, "max_s": 300}, {"from": "a2", "to": "l2", "min_s": 60, "max_s": 300},
        ],
        "wet": [{"from": "a1", "to": "l1", "blocks": []}],
        "objective": {"makespan": 10, "walking": 1},
    })
}

#[test]
fn help_and_version_are_data() {
    let help = fine(&["--help"]);
    for command in ["sample", "plan", "check", "crew", "explain"] {
        assert!(help.contains(command), "{help}");
        assert!(fine(&[command, "--help"]).contains("Usage: lapwright"), "{command}");
    }
    assert_eq!(fine(&["--version"]), format!("lapwright {}\n", env!("CARGO_PKG_VERSION")));
}

/// A job from elsewhere may hold what would command a terminal, or turn the order of a line.
#[test]
fn what_is_said_about_a_file_never_commands_the_terminal() {
    let folder = Folder::new();
    let file = folder.file("evil\u{202e}.job.ron", "(format: \"\u{1b}]0;gotcha\u{7}\u{9b}31m\", \u{1b}[2J)");
    let output = run(&["plan", &file]);
    let said = String::from_utf8(output.stderr).expect("text");
    assert!(said.contains("error: ") && said.contains('\u{fffd}'), "{said}");
    let commands = |c: char| c.is_control() && c != '\n' || c == '\u{202e}';
    assert!(!said.contains(commands), "{said:?}");
}

#[test]
fn bad_usage_ends_with_two_and_says_what_is_wrong() {
    for (arguments, word) in [
        (&["--nonsense"][..], "--nonsense"),
        (&["plan", "--seconds", "soon"], "soon"),
        (&["plan", "--seconds", "-1"], "-1"),
        (&["plan", "--seconds", "NaN"], "NaN"),
        (&["plan", "--seed", "1.5"], "1.5"),
        (&["plan", "one.ron", "two.ron"], "two.ron"),
        (&["crew", "--threads", "0", "x.json"], "0"),
        (&["crew"], "PROBLEM.json"),
        (&["check"], "FILE"),
        (&["sample"], "--out"),
        (&["explain"], "CODE"),
        (&["explain", "nonsense"], "nonsense"),
    ] {
        let (error, _) = failed(arguments);
        assert!(error.contains(word), "{arguments:?}: {error}");
    }
}

#[test]
fn the_sample_is_written_once_and_is_sound() {
    let folder = Folder::new();
    let job = folder.path("job.ron");
    assert_eq!(fine(&["sample", "--out", &job]), "");
    assert_eq!(fs::read_to_string(&job).expect("written"), lapwright::file::SAMPLE, "comments and all");
    assert!(fine(&["check", &job]).contains("nothing to complain about"));
    fs::write(&job, "mine").expect("own file");
    let (error, _) = failed(&["sample", "--out", &job]);
    assert!(error.contains("exists already"), "{error}");
    assert_eq!(fs::read_to_string(&job).expect("still there"), "mine");
}

#[test]
fn a_sample_that_can_not_be_written_leaves_nothing_behind() {
    let folder = Folder::new();
    for name in ["missing/job.ron", ""] {
        let path = if name.is_empty() { String::new() } else { folder.path(name) };
        let output = lapwright(&["sample", "--out", &path]).current_dir(folder.0.path()).output().expect("it starts");
        assert_eq!(output.status.code(), Some(2), "{name:?}");
        two_lines(&text(&output.stderr));
        assert_eq!(folder.names(), Vec::<String>::new(), "{name:?}");
    }
}

#[test]
fn a_plan_as_text_tells_polishing_coating_and_cautions() {
    let plan = fine(&["plan", "--seconds", "0.2"]);
    let parts = ["Polishing\n", "Bonnet, left", "\nCoating\n", "Dew point", "The order takes", "Mara", "\nCautions\n"];
    for part in parts.into_iter().chain(["\nOrder of polishing\n", "vibration A(8)", "dB(A)", "\nMaterials\n"]) {
        assert!(plan.contains(part), "{part:?} is not in\n{plan}");
    }
}

#[test]
fn without_a_display_the_plan_is_printed_instead_of_a_window() {
    for arguments in [&[][..], &["sample.ron"]] {
        let folder = Folder::new();
        folder.file("sample.ron", lapwright::file::SAMPLE);
        let output = lapwright(arguments).current_dir(folder.0.path()).output().expect("the program starts");
        assert_eq!(output.status.code(), Some(0), "{}", text(&output.stderr));
        assert!(text(&output.stdout).contains("The order takes"), "{arguments:?}");
        assert!(!text(&output.stderr).contains("panicked"), "{}", text(&output.stderr));
    }
}

fn plan_json(arguments: &[&str]) -> Value {
    let arguments = [&["plan", "--json", "--seconds", "0.3"], arguments].concat();
    serde_json::from_str(&fine(&arguments)).expect("one JSON object")
}

#[test]
fn two_plans_of_one_job_agree_in_all_that_is_computed() {
    let (mut first, mut second) = (plan_json(&["--seed", "7"]), plan_json(&["--seed", "7"]));
    for plan in [&mut first, &mut second] {
        // How far the search comes in a given time is not the same twice; what it searches in is.
        for field in ["crew_plan", "order", "late_chance", "late_chance_error", "jumps", "changes_of_side"] {
            assert!(plan["coating"].as_object_mut().expect("an object").remove(field).is_some(), "{field}");
        }
        for field in ["crew_plan", "order", "days", "handed"] {
            assert!(plan["polishing"].as_object_mut().expect("an object").remove(field).is_some(), "{field}");
        }
        // Who holds which machine follows the order; how long machines run in all does not.
        let exposure = plan.as_object_mut().expect("an object").remove("exposure").expect("exposure");
        let workers = exposure.as_array().expect("a list");
        let running: i64 = workers.iter().filter_map(|w| w["running_s"].as_i64()).sum();
        assert!(running > 3_600, "{exposure}");
        plan["running_s"] = running.into();
    }
    assert_eq!(first, second);
}

#[test]
fn a_plan_in_json_holds_a_valid_order_and_keeps_every_budget() {
    let plan = plan_json(&[]);
    for part in ["coating", "polishing"] {
        let problem = Problem::from_json(&plan[part]["crew_problem"].to_string()).expect("a sound problem");
        let order: PlanFile = serde_json::from_value(plan[part]["crew_plan"].clone()).expect("a plan");
        assert_eq!(violations(&problem, &order), [], "{part}");
    }
    for panel in plan["panels"].as_array().expect("a list") {
        let (upper, budget) = (panel["polish"]["removal_upper_um"].as_f64(), panel["budget_um"].as_f64());
        assert!(upper.expect("a number") <= budget.expect("a number"), "{panel}");
        assert!(!panel["polish"]["why"].as_array().expect("a list").is_empty(), "{panel}");
    }
}

#[test]
fn a_job_that_can_not_be_coated_in_time_ends_with_one_and_the_reason() {
    let folder = Folder::new();
    let text_of = lapwright::file::SAMPLE.replace("window_max_s: 300", "window_max_s: 61");
    let job = folder.file("hasty.ron", text_of);
    let output = run(&["plan", "--json", &job]);
    assert_eq!(output.status.code(), Some(1));
    let plan: Value = serde_json::from_slice(&output.stdout).expect("the rest of the plan is still there");
    assert!(plan["coating"]["crew_plan"].is_null());
    let notes = text(&output.stderr);
    assert!(notes.lines().count() >= 1 && notes.lines().all(|l| l.starts_with("no valid order: ")), "{notes}");
}

#[test]
fn a_language_may_stand_before_a_command_or_behind_it_and_a_job_only_behind() {
    for arguments in [&["--language", "de", "explain", "job-crew"][..], &["explain", "job-crew", "--language", "de"]] {
        assert!(fine(arguments).contains("job-crew (Fehler)"), "{arguments:?}");
    }
    let output = run(&["some.job.ron", "plan"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(text(&output.stderr).contains("stands before the command"), "{}", text(&output.stderr));
    let output = run(&["--language", "fr", "plan"]);
    assert_eq!(output.status.code(), Some(2));
    assert!(text(&output.stderr).contains("en-GB, en-US, de, es"), "{}", text(&output.stderr));
}

#[test]
fn a_job_with_nothing_to_coat_is_planned_without_an_order() {
    let folder = Folder::new();
    let loaded = support::sample();
    let mut job = (*loaded.job).clone();
    for panel in &loaded.template.panels {
        let record = job.panels.entry(panel.id.clone()).or_default();
        std::sync::Arc::make_mut(record).left_uncoated = true;
    }
    let job = folder.file("bare.ron", lapwright::file::job_to_text(&job).expect("it can be written"));
    assert!(fine(&["plan", &job]).contains("Every panel is left uncoated."));
    let plan = plan_json(&[&job]);
    assert!(plan["coating"]["crew_plan"].is_null());
    assert_eq!(plan["coating"]["order"], json!([]));
}

#[test]
fn bad_jobs_end_with_two_lines_that_name_the_place() {
    let folder = Folder::new();
    let brackets = folder.file("brackets.ron", "(".repeat(100_000));
    let missing = folder.path("missing.ron");
    for (job, place) in [
        (bad("missing-comma.ron"), "missing-comma.ron:11:49"),
        (bad("unknown-field.ron"), "unknown-field.ron:11:50"),
        (bad("unknown-panel.ron"), "panels[bonet-left].id"),
        (bad("nan.ron"), "panels[0].spots[0].readings[0].thickness_um"),
        (bad("negative-thickness.ron"), "panels[0].spots[0].readings[0].thickness_um"),
        (bad("not-utf-8.ron"), "not-utf-8.ron:10:1"),
        (brackets, "brackets.ron:1:"),
        (missing, "missing.ron"),
        (folder.0.path().display().to_string(), "cannot read"),
    ] {
        for arguments in [&["plan", &job][..], &["plan", "--json", &job], &[&job]] {
            let (error, _) = failed(arguments);
            assert!(error.contains(place), "{error}");
        }
    }
}

#[test]
fn check_reports_on_every_file_also_after_one_that_can_not_be_read() {
    let folder = Folder::new();
    let files = [
        folder.path("missing.ron"),
        bad("nan.ron"),
        bad("quantity-nine.ron"),
        bad("not-utf-8.ron"),
        root().join("vehicle-templates/saloon.ron").display().to_string(),
        root().join("tests/data/templates/overlap.ron").display().to_string(),
        folder.file("problem.json", problem().to_string()),
        folder.file("sample.ron", lapwright::file::SAMPLE),
    ];
    let arguments: Vec<&str> = std::iter::once("check").chain(files.iter().map(String::as_str)).collect();
    let output = run(&arguments);
    assert_eq!(output.status.code(), Some(2), "the worst of all counts");
    let (data, notes) = (text(&output.stdout), text(&output.stderr));
    for file in [&files[2], &files[4], &files[5], &files[6], &files[7]] {
        assert!(data.contains(file.as_str()), "{file} is not in {data}");
    }
    for file in [&files[0], &files[1], &files[3]] {
        assert!(notes.contains(file.as_str()), "{file} is not in {notes}");
    }
    assert!(data.contains("[job-defect-range] panels[bonnet-left].defects[0].quantity"), "{data}");
    assert!(data.contains("[template-overlap]"), "{data}");
    // The bonnet is written on line 23, its name from column 14 on.
    assert!(data.contains("overlap.ron:23:14: fault [template-overlap] panel \"bonnet-left\""), "{data}");
    assert_eq!(notes.lines().filter(|l| l.starts_with("error: ")).count(), 3, "{notes}");
    assert_eq!(notes.lines().filter(|l| l.starts_with("hint: ")).count(), 3, "{notes}");
    assert_eq!(notes.lines().count(), 6, "{notes}");
}

#[test]
fn check_lists_all_findings_of_a_file_and_ends_with_one() {
    let folder = Folder::new();
    let twice = lapwright::file::SAMPLE
        .replace("quantity: 4", "quantity: 9")
        .replace("id: \"boot-lid-right\"", "id: \"boot-lid-left\"")
        .replace("id: \"sill-left\"", "id: \"sil-left\"");
    let output = run(&["check", &folder.file("job.ron", twice)]);
    assert_eq!(output.status.code(), Some(1));
    let data = text(&output.stdout);
    for code in ["[job-defect-range]", "[job-panel-twice]", "[job-unknown-panel]"] {
        assert!(data.contains(code), "{code} is not in {data}");
    }
    assert!(data.contains("did you mean \"sill-left\""), "{data}");

    let mut wrong = problem();
    wrong["operations"][0]["duration_s"] = json!(0);
    wrong["operations"][1]["stance"] = json!("roof");
    wrong["walk_s"][0][2] = json!(100);
    let output = run(&["check", &folder.file("problem.json", wrong.to_string())]);
    assert_eq!(output.status.code(), Some(1));
    let data = text(&output.stdout);
    for part in ["[crew-time] operations[0].duration_s", "[crew-name] operations[1].stance", "[crew-walk] walk_s[0][2]"]
    {
        assert!(data.contains(part), "{part} is not in {data}");
    }
}

#[test]
fn a_crew_problem_is_solved_and_each_improvement_is_a_line_of_three_numbers() {
    let folder = Folder::new();
    let file = folder.file("problem.json", problem().to_string());
    let output = run(&["crew", &file, "--seconds", "5"]);
    assert_eq!(output.status.code(), Some(0), "{}", text(&output.stderr));
    let plan: PlanFile = serde_json::from_slice(&output.stdout).expect("a plan");
    let sound = Problem::from_json(&problem().to_string()).expect("a sound problem");
    assert_eq!(violations(&sound, &plan), []);
    // By hand: A applies the bonnet (0-30), walks 5 s, applies the boot (35-65); B levels the bonnet from 90 and the boot from
    // 125, 30 s after ending at 120 and 5 s of walking, and ends at 155. Nobody can be sooner: the boot can't be first either.
    assert_eq!((plan.makespan_s, plan.walking_s, plan.cost, plan.bound), (155, 10, 1_560, 1_560));
    let notes = text(&output.stderr);
    let (improvements, last) = notes.trim_end().rsplit_once('\n').expect("improvements and the end");
    assert_eq!(last, "optimal 1560");
    let mut before = (0.0, i64::MAX, 0);
    for line in improvements.lines() {
        let parts: Vec<&str> = line.split(' ').collect();
        let [seconds, cost, bound] = parts.as_slice() else { panic!("{line}") };
        let now: (f64, i64, i64) =
            (seconds.parse().expect("seconds"), cost.parse().expect("a cost"), bound.parse().expect("a bound"));
        assert!(now.0 >= before.0 && now.1 <= before.1 && now.2 >= before.2 && now.2 <= now.1, "{notes}");
        before = now;
    }
}

#[test]
fn a_crew_plan_goes_to_a_file_if_one_is_named() {
    let folder = Folder::new();
    let (file, plan) = (folder.file("problem.json", problem().to_string()), folder.path("plan.json"));
    let output = run(&["crew", &file, "--plan", &plan, "--threads", "1"]);
    assert_eq!(output.status.code(), Some(0));
    assert_eq!(text(&output.stdout), "");
    let written: PlanFile = serde_json::from_str(&fs::read_to_string(&plan).expect("written")).expect("a plan");
    assert_eq!(written.cost, 1_560);
}

#[test]
fn a_crew_problem_without_a_valid_plan_ends_with_one_and_names_the_conflict() {
    let folder = Folder::new();
    let mut tight = problem();
    tight["lags"][0]["max_s"] = json!(70);
    let output = run(&["crew", &folder.file("tight.json", tight.to_string())]);
    assert_eq!(output.status.code(), Some(1), "60 s of waiting and 30 s of levelling do not fit into 70 s");
    assert!(text(&output.stdout).contains("l1"), "{}", text(&output.stdout));
    assert!(!text(&output.stderr).contains("error:"));
}

#[test]
fn malformed_crew_problems_end_with_two_lines_that_name_the_place() {
    let folder = Folder::new();
    let mut cases: Vec<(String, &str)> = Vec::new();
    let mut case = |place: &'static str, change: &dyn Fn(&mut Value)| {
        let mut value = problem();
        change(&mut value);
        cases.push((value.to_string(), place));
    };
    case("`walk_s`", &|p| drop(p.as_object_mut().expect("an object").remove("walk_s")));
    case("`duration_s`", &|p| drop(p["operations"][2].as_object_mut().expect("an object").remove("duration_s")));
    case("operations[2].speed", &|p| p["operations"][2]["speed"] = json!(1));
    case("operations[1].duration_s", &|p| p["operations"][1]["duration_s"] = json!(-30));
    case("operations[1].duration_s", &|p| p["operations"][1]["duration_s"] = json!(0));
    case("operations[1].duration_s", &|p| p["operations"][1]["duration_s"] = json!(1.5));
    case("operations[1].duration_s", &|p| p["operations"][1]["duration_s"] = json!(1e300));
    case("operations[1].duration_s", &|p| p["operations"][1]["duration_s"] = json!(i64::MAX));
    case("lags[0].min_s", &|p| p["lags"][0]["min_s"] = json!(-1));
    case("lags[0].max_s", &|p| p["lags"][0]["max_s"] = json!(i64::MIN));
    case("walk_s[0][2]", &|p| p["walk_s"][0][2] = json!(50));
    case("walk_s[1][1]", &|p| p["walk_s"][1][1] = json!(4));
    case("walk_s[1]", &|p| p["walk_s"][1] = json!([0]));
    case("walk_s", &|p| p["walk_s"] = json!([]));
    case("lags", &|p| {
        let back = json!({"from": "l1", "to": "a1", "min_s": 0, "max_s": null});
        p["lags"].as_array_mut().expect("a list").push(back);
    });
    case("lags[0]", &|p| p["lags"][0]["to"] = json!("a1"));
    case("operations[3].id", &|p| p["operations"][3]["id"] = json!("a1"));
    case("workers[1].id", &|p| p["workers"][1]["id"] = json!("A"));
    case("stances[2]", &|p| p["stances"][2] = json!("front"));
    case("operations[0].role", &|p| p["operations"][0]["role"] = json!("sing"));
    case("close[0][1]", &|p| p["close"][0][1] = json!("roof"));
    case("wet[0].blocks[0]", &|p| p["wet"][0]["blocks"] = json!(["nothing"]));
    case("operations", &|p| p["operations"] = json!([]));
    case("operations", &|p| p["operations"] = json!(1_000_000_000));
    case("workers", &|p| p["workers"] = json!([]));
    case("format", &|p| p["format"] = json!("crew-problem/2"));
    case("objective.makespan", &|p| p["objective"]["makespan"] = json!(-1));
    case("objective.walking", &|p| p["objective"]["walking"] = json!(i64::MAX));
    case("operations", &|p| {
        let many = (0..10_000)
            .map(|i| json!({"id": i.to_string(), "panel": "", "role": "apply", "duration_s": 1, "stance": "front"}));
        p["operations"] = many.collect();
    });
    cases.push((String::new(), ":1:0"));
    cases.push(("[".repeat(100_000), ":1:"));
    cases.push(("{\"format\":".repeat(100_000), ":1:"));
    cases.push((format!("{} true", problem()), ":1:"));
    cases.push(("[]".to_owned(), ":1:"));
    for (number, (problem, place)) in cases.iter().enumerate() {
        let file = folder.file(&format!("{number}.json"), problem);
        let (error, _) = failed(&["crew", &file]);
        assert!(error.starts_with(&file) && error[file.len()..].contains(place), "{place}: {error}");
    }
    failed(&["crew", &folder.path("missing.json")]);
    let (error, _) =
        failed(&["crew", &folder.file("latin.json", b"{\"format\":\"crew-problem/1\",\n \"name\": \"\xe9\"}")]);
    assert!(error.contains("latin.json:2:11"), "{error}");
}

#[test]
fn a_crew_problem_with_a_byte_order_mark_is_read() {
    let folder = Folder::new();
    let file = folder.file("marked.json", format!("\u{feff}{}", problem()));
    assert_eq!(run(&["crew", &file]).status.code(), Some(0));
    assert_eq!(run(&["check", &file]).status.code(), Some(0));
}

#[test]
fn every_finding_can_be_explained() {
    for code in Code::ALL {
        let explained = fine(&["explain", code.id()]);
        assert!(explained.starts_with(&format!("{code} ({})\n", code.severity())), "{explained}");
        assert!(explained.contains(code.explanation()));
    }
    let (_, hint) = failed(&["explain", "template-gaps"]);
    assert!(hint.contains("template-gap,"), "{hint}");
}

#[test]
fn a_reader_that_goes_away_is_no_cause_for_panic_or_complaint() {
    for arguments in [&["plan", "--seconds", "0.1"][..], &["explain", "job-crew"], &["--help"]] {
        let mut child =
            lapwright(arguments).stdout(Stdio::piped()).stderr(Stdio::piped()).spawn().expect("the program starts");
        drop(child.stdout.take()); // closes the pipe before anything is written
        let output = child.wait_with_output().expect("the program ends");
        assert_eq!(text(&output.stderr), "", "{arguments:?}");
        assert!(output.status.code().is_some(), "{arguments:?}: {:?}", output.status);
    }
}

#[cfg(target_os = "linux")]
#[test]
fn a_full_disk_behind_the_output_is_an_error() {
    let full = Path::new("/dev/full");
    for arguments in
        [&["plan", "--seconds", "0.1"][..], &["plan", "--json", "--seconds", "0.1"], &["explain", "job-crew"]]
    {
        let device = fs::OpenOptions::new().write(true).open(full).expect("Linux has it");
        let output = lapwright(arguments).stdout(device).output().expect("the program starts");
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        let (error, _) = two_lines(&text(&output.stderr));
        assert!(error.contains("cannot write the output"), "{error}");
    }
}

#[cfg(unix)]
#[test]
fn a_file_name_that_is_not_utf_8_can_be_used() {
    use std::os::unix::ffi::OsStrExt;
    let folder = Folder::new();
    let job: PathBuf = folder.0.path().join(std::ffi::OsStr::from_bytes(b"b\xf6se.ron"));
    for command in ["sample --out", "check"] {
        let words: Vec<&str> = command.split(' ').collect();
        let status = lapwright(&words).arg(&job).stdout(Stdio::null()).status().expect("the program starts");
        assert_eq!(status.code(), Some(0), "{command}");
    }
    assert!(job.is_file());
    assert_eq!(folder.names().len(), 1);
}

/// A job and a file of readings in a folder of their own.
fn import_from(folder: &TempDir, csv: &str) -> (String, String) {
    let path = |name: &str| folder.path().join(name).display().to_string();
    let (job, readings) = (path("in.job.ron"), path("readings.csv"));
    fine(&["sample", "--out", &job]);
    fs::write(&readings, csv).expect("written");
    (job, readings)
}

#[test]
fn import_adds_readings_and_says_what_it_recognised() {
    let folder = TempDir::new().expect("a folder");
    let (job, readings) = import_from(
        &folder,
        "panel;reading;thickness_um\nsill-right;1;112,5\nSill, right;2;113\nRocker panel, right;3;112\n",
    );
    let out = folder.path().join("out.job.ron").display().to_string();
    let said = fine(&["import", &job, &readings, "--out", &out]);
    assert!(said.contains("separated by \u{201c};\u{201d}, decimal comma, thickness in µm"), "{said}");
    assert!(said.contains("sill-right: 3 readings (Sill, right)"), "{said}");
    assert!(said.ends_with("3 readings added, 0 not taken\n"), "{said}");
    assert!(fine(&["check", &out]).contains("nothing to complain about"));
    let plan: Value = serde_json::from_str(&fine(&["plan", &out, "--json", "--seconds", "0"])).expect("JSON");
    let sill = plan["panels"].as_array().expect("panels").iter().find(|p| p["id"] == "sill-right").expect("a sill");
    assert_eq!(sill["film_um"]["n"], 3);
}

#[test]
fn import_lists_every_row_that_is_not_taken_and_adds_the_others() {
    let folder = TempDir::new().expect("a folder");
    let (job, readings) =
        import_from(&folder, "panel;reading;thickness_um\nsill-right;1;112\nsill-right;2;thick\nHeck;1;120\n");
    let output = run(&["import", &job, &readings, "--out", &job]);
    assert_eq!(output.status.code(), Some(1));
    let said = text(&output.stdout);
    assert!(said.contains("readings.csv:3: not taken: \u{201c}thick\u{201d} is not a number"), "{said}");
    assert!(said.contains("readings.csv:4: not taken: the vehicle has no panel \u{201c}Heck\u{201d}"), "{said}");
    assert!(said.ends_with("1 reading added, 2 not taken\n"), "{said}");
    assert!(fs::read_to_string(&job).expect("written").contains("thickness_um: 112"));
}

#[test]
fn import_of_nothing_useful_writes_nothing() {
    let folder = TempDir::new().expect("a folder");
    let out = folder.path().join("out.job.ron").display().to_string();
    let (job, readings) = import_from(&folder, "panel;reading;thickness_um\nHeck;1;120\n");
    let (error, _) = failed(&["import", &job, &readings, "--out", &out]);
    assert!(error.contains("none of its 1 rows can be taken"), "{error}");
    fs::write(&readings, "a;b;c\n1;2;3\n").expect("written");
    let (error, hint) = failed(&["import", &job, &readings, "--out", &out]);
    assert!(error.contains("readings.csv:1:1: there is no column") && hint.contains("thickness_mil"), "{error} {hint}");
    let (error, _) = failed(&["import", &job, "no-such.csv", "--out", &out]);
    assert!(error.contains("no-such.csv"), "{error}");
    assert!(!Path::new(&out).exists());
}
