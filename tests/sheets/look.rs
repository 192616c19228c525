//! Pages as pictures, for whoever looks: the sample's go to `screenshots/`, the others below the target folder.

use super::jobs::{Case, coach, crew_of, empty, mark_all_over, read_twice};
use lapwright::sheets::{self, Page, Paper, Sheet, png};
use std::path::{Path, PathBuf};

/// 80 dots to an inch.
const PER_MM: f32 = 80.0 / 25.4;

fn shoot(sheet: &Sheet, paper: Paper, folder: &Path, name: &str, most: usize) {
    let pages = sheet.pages(paper).pages;
    for (number, page) in pages.iter().enumerate().take(most) {
        let picture = png(page, PER_MM).unwrap();
        let read = image::load_from_memory(&picture).unwrap().to_luma8();
        let dark = read.pixels().filter(|p| p.0[0] < 120).count();
        assert!(dark > 60, "page {} of {name} is as good as blank: {dark}", number + 1);
        std::fs::write(folder.join(format!("{name}-{}.png", number + 1)), picture).unwrap();
        inside_margins(page, name, number + 1);
    }
}

/// No text reaches into the margins of 15 mm at the sides; the foot stands below the column.
fn inside_margins(page: &Page, name: &str, number: usize) {
    let picture = image::load_from_memory(&png(page, 2.0).unwrap()).unwrap().to_luma8();
    let dark =
        picture.enumerate_pixels().filter(|(x, _, p)| p.0[0] < 100 && (*x < 28 || *x > picture.width() - 29)).count();
    assert_eq!(dark, 0, "something stands in the margin of page {number} of {name}");
}

fn looks() -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("looks");
    std::fs::create_dir_all(&folder).unwrap();
    folder
}

#[test]
fn the_sheets_of_the_sample_have_their_pictures() {
    let case = Case::sample(|_| ());
    let shots = Path::new(env!("CARGO_MANIFEST_DIR")).join("screenshots");
    shoot(&sheets::customer(&case.input()), Paper::A4, &shots, "sheet-customer", 9);
    shoot(&sheets::crew(&case.input()), Paper::A4, &shots, "sheet-crew", 3);
    shoot(&sheets::record(&case.input()), Paper::A4, &shots, "sheet-record", 2);
    shoot(&sheets::crew(&case.input()), Paper::A4, &looks(), "sheet-crew", 99);
    shoot(&sheets::record(&case.input()), Paper::A4, &looks(), "sheet-record", 99);
}

#[test]
fn other_jobs_have_theirs_too() {
    let mut twice = Case::sample(read_twice);
    twice.options.costs = true;
    twice.options.paper = Paper::Letter;
    shoot(&sheets::customer(&twice.input()), Paper::Letter, &looks(), "twice-customer", 9);
    shoot(&sheets::record(&twice.input()), Paper::Letter, &looks(), "twice-record", 3);
    let mut marked = Case::sample(mark_all_over);
    marked.options.paper = Paper::Letter;
    shoot(&sheets::customer(&marked.input()), Paper::Letter, &looks(), "marked-customer", 9);
    let coach = coach();
    shoot(&sheets::customer(&coach.input()), Paper::A4, &looks(), "coach-customer", 9);
    shoot(&sheets::crew(&coach.input()), Paper::A4, &looks(), "coach-crew", 9);
    shoot(&sheets::record(&coach.input()), Paper::A4, &looks(), "coach-record", 3);
    let empty = empty();
    shoot(&sheets::customer(&empty.input()), Paper::A4, &looks(), "empty-customer", 9);
    shoot(&sheets::crew(&empty.input()), Paper::A4, &looks(), "empty-crew", 9);
    shoot(&sheets::record(&empty.input()), Paper::A4, &looks(), "empty-record", 9);
    let alone = Case::sample(|job| job.crew = crew_of(1));
    shoot(&sheets::crew(&alone.input()), Paper::A4, &looks(), "alone-crew", 9);
}
