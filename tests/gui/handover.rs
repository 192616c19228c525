//! The Handover workspace: pages as they are printed, files, and the big screen.

use super::scripted::scratch;
use super::{EFFORT, settle, window, window_on};
use eframe::egui::{Key, Role};
use egui_kittest::Harness;
use egui_kittest::kittest::{NodeT, Queryable};
use lapwright::file::job_from_text;
use lapwright::gui::App;

const SIZE: [f32; 2] = [1280.0, 800.0];

fn open(window: &mut Harness<'_, App>, tab: &str) {
    window.get_by(|n| n.role() == Role::Tab && n.label().is_some_and(|l| l.starts_with(tab))).click();
    window.run();
}

fn handover() -> Harness<'static, App> {
    let mut window = window(SIZE);
    open(&mut window, "Handover");
    window
}

fn pages(window: &Harness<'_, App>) -> Vec<String> {
    window.query_all_by_role(Role::Document).filter_map(|n| n.accesskit_node().label()).collect()
}

/// Writes a file by the path typed into the window; there is no dialog here.
fn write(window: &mut Harness<'_, App>, button: &str, file: &std::path::Path) {
    window.get_by_role_and_label(Role::Button, button).click_accesskit();
    for _ in 0..400 {
        window.step();
        if window.query_by_role_and_label(Role::Button, "Write").is_some() {
            break;
        }
        std::thread::sleep(std::time::Duration::from_millis(10));
    }
    let field =
        window.get_by(|n| n.role() == Role::TextInput && n.label().is_some_and(|l| l.starts_with("Path of the file")));
    field.focus();
    window.run();
    let field =
        window.get_by(|n| n.role() == Role::TextInput && n.label().is_some_and(|l| l.starts_with("Path of the file")));
    field.type_text(&file.to_string_lossy());
    window.run();
    window.key_press(Key::Enter);
    window.run();
}

#[test]
fn each_sheet_shows_its_pages_and_the_customers_has_two() {
    let mut window = handover();
    let customer = pages(&window);
    assert_eq!(customer.len(), 2, "one or two pages for the customer");
    assert!(customer[0].contains("page 1 of 2") && customer[0].contains("What we found"), "{}", customer[0]);
    for (sheet, words) in [("Crew cards", "Mara"), ("Technical record", "Job code")] {
        window.get_by_role_and_label(Role::RadioButton, sheet).click_accesskit();
        window.run();
        let pages = pages(&window);
        assert!(pages.iter().any(|p| p.contains(words)), "{sheet}: {pages:?}");
        assert!(pages.len() > 1);
    }
}

#[test]
fn what_is_written_is_what_the_library_writes() {
    let mut window = handover();
    for (button, ending, begins) in [
        ("Save as PDF…", "pdf", "%PDF-"),
        ("Save as web page…", "html", "<!DOCTYPE html>"),
        ("Save the map as a drawing…", "svg", "<?xml"),
        ("Save the map as a picture…", "png", "\u{FFFD}PNG"),
    ] {
        let file = scratch(&format!("sheet.{ending}"));
        write(&mut window, button, &file);
        let bytes = std::fs::read(&file).unwrap();
        assert!(String::from_utf8_lossy(&bytes).starts_with(begins), "{button}");
        std::fs::remove_file(&file).unwrap();
    }
    let file = scratch("care.ics");
    write(&mut window, "Save care times for a calendar…", &file);
    let told = window.query_all_by(|n| n.value().is_some_and(|v| v.contains("job has no day"))).count();
    assert!(told > 0, "without a day there are no care times");
    assert!(!file.exists());
}

#[test]
fn letters_that_paper_lacks_are_told_before_printing() {
    let text = lapwright::file::SAMPLE.replacen("R. Adeyemi", "R. 李", 1);
    assert_ne!(text, lapwright::file::SAMPLE);
    let loaded = job_from_text("another name", &text).unwrap();
    let mut window = window_on(loaded, EFFORT, SIZE);
    settle(&mut window);
    // The window's own letters lack it as well, so only the sheet is asked.
    let missing = lapwright::sheets::missing_characters(&sheet(&window));
    assert!(missing.iter().any(|m| m.to_string().contains('李')), "{missing:?}");
}

fn sheet(window: &Harness<'_, App>) -> lapwright::sheets::Sheet {
    let job = window.state().job();
    let loaded = job_from_text("again", &lapwright::file::job_to_text(job).unwrap()).unwrap();
    let insight = lapwright::insight::Insight::new(&loaded.job, &loaded.template);
    lapwright::sheets::customer(&lapwright::sheets::SheetInput {
        job: &loaded.job,
        template: &loaded.template,
        insight: &insight,
        order: &[],
        polishing: None,
        shop: "",
        options: lapwright::sheets::Options::default(),
    })
}

#[test]
fn the_big_screen_plays_the_plan_and_escape_leads_back() {
    let mut window = handover();
    window.get_by_role_and_label(Role::Button, "Show on the big screen").click_accesskit();
    for _ in 0..4 {
        window.step();
    }
    assert!(window.query_by_role_and_label(Role::Button, "Back").is_some());
    assert!(pages(&window).is_empty(), "the whole window is the map");
    let says = |window: &Harness<'_, App>, words: &str| {
        window
            .query_all_by(|n| n.role() == Role::Label && n.value().is_some_and(|v| v.contains(words)))
            .next()
            .is_some()
    };
    assert!(says(&window, "Mara applies the coating"));
    let first = window.render().unwrap();
    // Half a minute of the window's clock is over after so many pictures of a tenth of a second.
    for _ in 0..2_200 {
        window.step();
        if says(&window, "Mara is done") && says(&window, "Edwin is done") {
            break;
        }
    }
    assert!(says(&window, "Edwin is done"));
    assert!(window.query_by_role_and_label(Role::Button, "Play again").is_some());
    assert!(window.render().unwrap() != first);
    window.key_press(Key::Escape);
    window.run();
    assert_eq!(pages(&window).len(), 2);
}
