//! What must stand on a sheet, and what must not.

use super::jobs::{Case, coach, empty, mark_all_over, read_twice};
use lapwright::coat::MeasuredWindow;
use lapwright::job::Job;
use lapwright::polish::{LedgerEntry, RemovalSource};
use lapwright::sheets::{self, Block, Sheet, missing_characters};
use lapwright::units::{Celsius, Micrometres, ShownUnits, TemperatureUnit, ThicknessUnit, VolumeUnit};
use std::sync::Arc;

fn words(sheet: &Sheet) -> String {
    sheet.texts().into_iter().map(|(_, text)| text.to_owned()).collect::<Vec<_>>().join("\n")
}

/// Writes a marker into every text that is for the shop alone; answers them.
fn mark(job: &mut Job) -> Vec<&'static str> {
    "INTERNALjobname".clone_into(&mut job.name);
    "INTERNALhistory".clone_into(&mut job.vehicle.history);
    "INTERNALreader".clone_into(&mut job.surveys[0].taken_by);
    "INTERNALmoney".clone_into(&mut job.shop.prices.currency);
    for (index, record) in job.panels.values_mut().enumerate() {
        let record = Arc::make_mut(record);
        "INTERNALpanelnote".clone_into(&mut record.note);
        for spot in &mut record.spots {
            "INTERNALspotnote".clone_into(&mut spot.note);
        }
        for defect in &mut record.defects {
            "INTERNALdefectnote".clone_into(&mut defect.note);
        }
        if index == 0 {
            let (removed_um, upper_um) = (Micrometres::of(0.1), Micrometres::of(0.2));
            let visit = "INTERNALvisit".to_owned();
            record.removals.entries.push(LedgerEntry { visit, removed_um, upper_um, source: RemovalSource::Told });
        }
    }
    vec![
        "INTERNALjobname",
        "INTERNALhistory",
        "INTERNALreader",
        "INTERNALpanelnote",
        "INTERNALspotnote",
        "INTERNALdefectnote",
        "INTERNALvisit",
    ]
}

/// One mil is 25.4 µm exactly (the inch by its definition of 1959).
#[test]
fn sheets_speak_in_the_units_that_are_wanted() {
    let metric = Case::sample(read_twice);
    let mut case = Case::sample(read_twice);
    case.options.units =
        ShownUnits { film: ThicknessUnit::Mil, temperature: TemperatureUnit::Fahrenheit, volume: VolumeUnit::FlOz };
    let named = case.loaded.job.product.name.clone();
    assert!(named.contains(" ml"), "what somebody wrote stays as it is");
    for make in [sheets::customer, sheets::crew, sheets::record] {
        for (place, text) in make(&case.input()).texts() {
            let text = text.replace(&named, "");
            let kept = ["µm", "°C", "\u{202f}ml", "\u{202f}K", ", ml"].into_iter().find(|unit| text.contains(unit));
            assert_eq!(kept, None, "{place}: {text}");
        }
    }
    let table = |case: &Case, head: &str| -> Vec<Vec<String>> {
        let sheet = sheets::record(&case.input());
        let tables = sheet.blocks.iter().filter_map(|b| if let Block::Table(t) = b { Some(t) } else { None });
        tables.filter(|t| t.columns.iter().any(|c| c.head == head)).flat_map(|t| t.rows.clone()).collect()
    };
    let (um, mil) = (table(&metric, "Budget"), table(&case, "Budget"));
    assert!(um.len() > 10 && um.len() == mil.len());
    for (um, mil) in um.iter().zip(&mil) {
        assert_eq!((&um[0], &um[1], &um[7]), (&mil[0], &mil[1], &mil[7]));
        for (um, mil) in um[2..7].iter().zip(&mil[2..7]).filter(|(um, _)| *um != "–") {
            let (um, mil): (f64, f64) = (um.parse().unwrap(), mil.parse().unwrap());
            // Each is rounded: to a tenth and to a hundredth.
            assert!((um - mil * 25.4).abs() <= 0.05 + 0.005 * 25.4 + 1e-9, "{um} {mil}");
        }
    }
    assert_eq!(table(&metric, "Takes off, µm").len(), table(&case, "Takes off, mil").len());
    assert!(words(&sheets::record(&case.input())).contains("68\u{202f}°F"), "the label's 20 °C");
}

#[test]
fn whose_work_it_is_stands_on_what_leaves_the_shop() {
    let mut case = Case::sample(|_| ());
    for make in [sheets::customer, sheets::record] {
        assert!(!words(&make(&case.input())).contains("Work by"));
    }
    case.shop = "Reedbed Paintwork, 4 Mill Lane";
    for make in [sheets::customer, sheets::record] {
        assert!(words(&make(&case.input())).contains("Work by\nReedbed Paintwork, 4 Mill Lane"));
    }
}

#[test]
fn nothing_of_the_shop_stands_on_the_customer_sheet_and_all_of_it_in_the_record() {
    let mut markers = Vec::new();
    let mut case = Case::sample(|job| {
        read_twice(job);
        markers = mark(job);
    });
    for costs in [false, true] {
        case.options.costs = costs;
        holds_nothing_internal(&sheets::customer(&case.input()));
    }
    let record = words(&sheets::record(&case.input()));
    for marker in markers {
        assert!(record.contains(marker), "{marker} is missing in the record");
    }
    assert!(!record.contains("INTERNALmoney"), "prices stand on no record");
}

/// The currency is told with the costs, so it is no marker there.
fn holds_nothing_internal(customer: &Sheet) {
    let pdf = sheets::pdf(&customer.pages(sheets::Paper::A4)).unwrap();
    let document = lopdf::Document::load_mem(&pdf).unwrap();
    let pages: Vec<u32> = document.get_pages().keys().copied().collect();
    let printed: String = document.extract_text(&pages).unwrap().split_whitespace().collect();
    for (what, text) in [("PDF", printed), ("HTML", sheets::html(customer)), ("sheet", words(customer))] {
        let text = text.replace("INTERNALmoney", "");
        assert!(text.contains("Adeyemi"), "{what} says whose the vehicle is, so it was really read");
        assert!(!text.contains("INTERNAL"), "{what}: {}", &text[text.find("INTERNAL").unwrap()..][..40]);
    }
}

#[test]
fn costs_stand_on_the_customer_sheet_only_when_asked_for() {
    let mut case = Case::sample(|_| ());
    assert!(!words(&sheets::customer(&case.input())).contains("EUR"));
    case.options.costs = true;
    let text = words(&sheets::customer(&case.input()));
    assert!(text.contains("Costs") && text.contains("\u{202f}EUR"));
}

#[test]
fn the_customer_sheet_of_a_car_has_two_pages_at_most_on_every_paper() {
    for (name, mut case) in [
        ("the sample", Case::sample(|_| ())),
        ("read twice", Case::sample(read_twice)),
        ("nothing known", empty()),
        ("marked all over", Case::sample(mark_all_over)),
    ] {
        for paper in [sheets::Paper::A4, sheets::Paper::Letter] {
            case.options.paper = paper;
            let pages = sheets::customer(&case.input()).pages(paper).pages.len();
            assert!(pages <= 2, "{name} on {paper:?}: {pages} pages");
        }
    }
}

#[test]
fn the_record_tells_the_patch_the_warmest_panel_and_what_the_maker_warns_of() {
    let case = Case::sample(|job| {
        job.air.warmest_surface_temp_c = Some(Celsius::of(31.5));
        job.patch = Some(MeasuredWindow { min_s: 77, max_s: 288, air: job.air });
        "Keep away from open flames, says its sheet.".clone_into(&mut job.product.cautions);
    });
    let record = words(&sheets::record(&case.input()));
    for told in ["31.5\u{202f}°C", "1:17 to 4:48 at", "Keep away from open flames", "practised"] {
        assert!(record.contains(told), "{told}");
    }
}

#[test]
fn before_and_after_stand_there_when_the_vehicle_was_read_twice() {
    let once = words(&sheets::customer(&Case::sample(|_| ()).input()));
    assert!(!once.contains("Before and after"));
    let twice = words(&sheets::customer(&Case::sample(read_twice).input()));
    assert!(twice.contains("Before and after") && twice.contains("What was done"));
    // Every spot was made 2 µm thinner.
    assert!(twice.contains("about 2.0\u{202f}µm"), "{twice}");
}

#[test]
fn every_reading_and_every_defect_is_in_the_record() {
    let case = Case::sample(|_| ());
    let sheet = sheets::record(&case.input());
    let tables: Vec<_> =
        sheet.blocks.iter().filter_map(|b| if let sheets::Block::Table(t) = b { Some(t) } else { None }).collect();
    let with = |head: &str| tables.iter().find(|t| t.columns.iter().any(|c| c.head == head)).expect(head);
    let records = case.loaded.job.panels.values();
    let spots: usize = records.clone().map(|r| r.spots.len()).sum();
    let lines: Vec<&str> = with("Place on the map, mm: readings, µm")
        .rows
        .iter()
        .flat_map(|r| r[2].lines())
        .filter(|l| l.contains(": "))
        .collect();
    assert_eq!(lines.len(), spots);
    let values =
        |line: &&str| line.split_once(": ").map_or("", |(_, v)| v).split(';').next().unwrap_or("").split(' ').count();
    let readings: usize = lines.iter().map(values).sum();
    assert_eq!(readings, records.clone().map(|r| r.reading_count()).sum::<usize>());
    assert_eq!(with("Defect").rows.len(), records.map(|r| r.defects.len()).sum::<usize>());
}

#[test]
fn without_a_day_care_times_are_told_in_words() {
    let text = words(&sheets::customer(&Case::sample(|job| job.date = None).input()));
    assert!(text.contains("1 hour after the work") && text.contains("7 days after the work"), "{text}");
}

#[test]
fn american_sheets_have_american_names_and_dates() {
    let mut case = Case::sample(|_| ());
    case.options.naming = lapwright::vehicle::Naming::Us;
    case.options.dates = lapwright::units::DateOrder::MonthFirst;
    let text = words(&sheets::customer(&case.input()));
    assert!(text.contains("Hood") && !text.contains("Bonnet"));
    assert!(text.contains("Thu, November 26, 2026, 6:00\u{202f}pm"));
}

#[test]
fn characters_that_the_font_lacks_are_found_with_where_they_stand() {
    let fine = Case::sample(|_| ());
    for make in [sheets::customer, sheets::crew, sheets::record] {
        assert_eq!(missing_characters(&make(&fine.input())), []);
        assert_eq!(missing_characters(&make(&coach().input())), []);
    }
    let case = Case::sample(|job| job.customer.name = "李小龍 Lee".to_owned());
    let found = missing_characters(&sheets::customer(&case.input()));
    assert_eq!(found.len(), 1);
    assert_eq!(found[0].text, "李小龍 Lee");
    assert_eq!(found[0].characters.iter().collect::<String>(), "小李龍");
    assert!(found[0].to_string().contains("U+674E"), "{}", found[0]);
}

#[test]
fn an_empty_job_still_makes_sheets_that_say_so() {
    let case = empty();
    let text = words(&sheets::customer(&case.input()));
    assert!(text.contains("No marks were noted") && !text.contains("Looking after it"));
    assert!(words(&sheets::crew(&case.input())).contains("Nothing is planned for this person."));
}
