//! PDFs read by `lopdf`, a general-purpose library.

use super::jobs::{Case, coach, crew_of, empty, read_twice};
use lapwright::sheets::{self, Paper, Sheet, pdf};
use lopdf::{Dictionary, Document, Object};

fn read(sheet: &Sheet, paper: Paper) -> (Vec<u8>, Document) {
    let bytes = pdf(&sheet.pages(paper)).expect("the PDF is made");
    let document = Document::load_mem(&bytes).expect("and can be read");
    (bytes, document)
}

/// Text of all pages; blanks of every kind as one.
fn text(document: &Document) -> String {
    let pages: Vec<u32> = document.get_pages().keys().copied().collect();
    let text = document.extract_text(&pages).expect("the text can be read");
    text.split_whitespace().collect::<Vec<_>>().join(" ")
}

fn dictionaries(document: &Document) -> impl Iterator<Item = &Dictionary> {
    document.objects.values().filter_map(|o| match o {
        Object::Dictionary(d) => Some(d),
        Object::Stream(s) => Some(&s.dict),
        _ => None,
    })
}

fn is_name(dictionary: &Dictionary, key: &[u8], value: &[u8]) -> bool {
    matches!(dictionary.get(key), Ok(Object::Name(name)) if name == value)
}

#[test]
fn a_customer_sheet_has_two_pages_and_says_everything_in_the_order_of_reading() {
    let case = Case::sample(|_| ());
    let (_, document) = read(&sheets::customer(&case.input()), Paper::A4);
    assert!(document.get_pages().len() <= 2, "{} pages", document.get_pages().len());
    let text = text(&document);
    let mut from = 0;
    for words in [
        "Your vehicle: what we found and what we will do",
        "R. Adeyemi",
        "What we found",
        "Bird etching",
        "What will be done",
        "What stays, and why",
        "Deep scratch",
        "Looking after it",
        "Thu 26 November 2026, 18:00",
        "Thu 3 December 2026, 17:00",
        "Bird droppings",
        "Please mind",
        "Your consent",
        "Signature",
    ] {
        let lower = text[from..].to_lowercase();
        let at = lower
            .find(&words.to_lowercase())
            .unwrap_or_else(|| panic!("\"{words}\" is missing or too early in\n{text}"));
        from += at;
    }
}

#[test]
fn the_foot_of_every_page_has_its_number_and_the_job_code() {
    let case = Case::sample(|_| ());
    let sheet = sheets::record(&case.input());
    let (_, document) = read(&sheet, Paper::A4);
    let pages = document.get_pages().len();
    assert!(pages > 2);
    for number in 1..=pages as u32 {
        let text = document.extract_text(&[number]).unwrap();
        let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(text.contains(&format!("Page {number} of {pages}")), "page {number}: {text}");
        assert!(text.contains(&format!("Job code {}", sheet.code)), "page {number}");
    }
}

#[test]
fn fonts_are_embedded_as_subsets_with_their_characters() {
    let case = Case::sample(|_| ());
    let (_, document) = read(&sheets::customer(&case.input()), Paper::A4);
    let descriptors: Vec<_> = dictionaries(&document).filter(|d| is_name(d, b"Type", b"FontDescriptor")).collect();
    assert_eq!(descriptors.len(), 2, "regular and bold");
    for descriptor in descriptors {
        assert!(descriptor.has(b"FontFile2") || descriptor.has(b"FontFile3"), "{descriptor:?}");
        // ISO 32000-1, 9.6.4: six capitals and a plus sign stand before the name of a subset.
        let Ok(Object::Name(name)) = descriptor.get(b"FontName") else { panic!("a font has a name") };
        let name = String::from_utf8_lossy(name).into_owned();
        assert!(name[..6].bytes().all(|b| b.is_ascii_uppercase()) && &name[6..7] == "+", "{name}");
        assert!(name.contains("NotoSans"), "{name}");
    }
    let composite: Vec<_> = dictionaries(&document).filter(|d| is_name(d, b"Subtype", b"Type0")).collect();
    assert!(!composite.is_empty() && composite.iter().all(|d| d.has(b"ToUnicode")));
}

/// ISO 14289-1: marked, with a structure, a language and a title; every figure has words.
#[test]
fn sheets_are_tagged_with_language_title_headings_tables_and_words_for_pictures() {
    let case = Case::sample(|_| ());
    let (_, document) = read(&sheets::customer(&case.input()), Paper::A4);
    let catalog = document.catalog().unwrap();
    assert!(catalog.has(b"StructTreeRoot") && catalog.has(b"MarkInfo") && catalog.has(b"Outlines"));
    assert!(matches!(catalog.get(b"Lang"), Ok(Object::String(lang, _)) if lang == b"en-GB"));
    let kinds = |kind: &[u8]| dictionaries(&document).filter(|d| is_name(d, b"S", kind)).count();
    assert_eq!(kinds(b"H1"), 1);
    assert!(kinds(b"H2") >= 6, "{}", kinds(b"H2"));
    assert!(kinds(b"Table") >= 3 && kinds(b"TR") > 10 && kinds(b"TH") > 5 && kinds(b"TD") > 20 && kinds(b"LI") > 8);
    let figures: Vec<_> = dictionaries(&document).filter(|d| is_name(d, b"S", b"Figure")).collect();
    assert_eq!(figures.len(), 1);
    let Ok(Object::String(words, _)) = figures[0].get(b"Alt") else { panic!("a picture has words") };
    assert!(words.len() > 200);
}

#[test]
fn the_same_job_gives_the_same_bytes_and_another_job_another_code() {
    let (one, two) = (Case::sample(|_| ()), Case::sample(|_| ()));
    for make in [sheets::customer, sheets::crew, sheets::record] {
        let (a, b) = (make(&one.input()), make(&two.input()));
        assert_eq!(read(&a, Paper::A4).0, read(&b, Paper::A4).0);
        assert_eq!(sheets::html(&a), sheets::html(&b));
    }
    let other = Case::sample(|job| job.air.humidity_pct = lapwright::units::RelativeHumidity::of(53.0));
    assert_ne!(sheets::job_code(&one.loaded.job), sheets::job_code(&other.loaded.job));
}

#[test]
fn paper_is_a4_or_letter_to_the_tenth_of_a_point() {
    // ISO 216 and ANSI/ASME Y14.1, in points of 1/72 in.
    let case = Case::sample(|_| ());
    for (paper, width, height) in [(Paper::A4, 595.3, 841.9), (Paper::Letter, 612.0, 792.0)] {
        let (_, document) = read(&sheets::customer(&case.input()), paper);
        for id in document.get_pages().values() {
            let page = document.get_dictionary(*id).unwrap();
            let Ok(Object::Array(sides)) = page.get(b"MediaBox") else { panic!("a page has a size") };
            let side = |k: usize| sides[k].as_float().unwrap();
            assert!((side(2) - width).abs() < 0.1 && (side(3) - height).abs() < 0.1, "{sides:?}");
        }
    }
}

#[test]
fn no_sheet_of_a_car_is_larger_than_300_kb_nor_any_of_a_coach_than_500() {
    let mut cases = vec![Case::sample(|_| ()), Case::sample(read_twice), coach(), empty()];
    cases.extend((1..=4).map(|n| Case::sample(|job| job.crew = crew_of(n))));
    for case in &cases {
        for make in [sheets::customer, sheets::crew, sheets::record] {
            for paper in [Paper::A4, Paper::Letter] {
                let sheet = make(&case.input());
                let (bytes, document) = read(&sheet, paper);
                let pages = document.get_pages().len();
                assert_eq!(pages, sheet.pages(paper).pages.len());
                // The coach has 122 panels, and four people with two maps each.
                let most = if case.loaded.template.panels.len() > 100 { 500_000 } else { 300_000 };
                assert!(bytes.len() < most, "{} of {}: {} bytes", sheet.title, case.loaded.job.name, bytes.len());
            }
        }
    }
}

#[test]
fn names_of_any_length_are_wrapped_and_kept_whole() {
    let long = "Maximiliana-Konstanze von und zu Hohenfels-Altenbruchhausen ".repeat(4);
    let unbroken = "X".repeat(150);
    let case = Case::sample(|job| {
        job.customer.name.clone_from(&long);
        job.vehicle.description.clone_from(&unbroken);
        job.crew[0].name = "Bartholomew Featherstonehaugh the Younger of Upper Wetherby".to_owned();
    });
    for make in [sheets::customer, sheets::crew, sheets::record] {
        let sheet = make(&case.input());
        let (_, document) = read(&sheet, Paper::A4);
        let solid: String = text(&document).split(' ').collect();
        assert!(solid.contains(&unbroken), "{}", sheet.title);
        if sheet.title != "Crew cards" {
            assert!(solid.contains(&long.replace(' ', "")), "{}", sheet.title);
        }
    }
}

#[test]
fn every_worker_has_a_card_with_exactly_their_own_order() {
    for count in 1..=4 {
        let case = Case::sample(|job| job.crew = crew_of(count));
        let sheet = sheets::crew(&case.input());
        let (_, document) = read(&sheet, Paper::A4);
        let text = text(&document);
        for (worker, member) in case.loaded.job.crew.iter().enumerate() {
            let from = text.find(&format!("Coating: {}", member.name));
            let mine: Vec<_> = case.order.iter().filter(|r| r.worker == worker).collect();
            assert_eq!(from.is_some(), !mine.is_empty(), "{count} {}", member.name);
            let Some(mut at) = from else { continue };
            for (place, row) in mine.iter().enumerate() {
                let name =
                    case.loaded.template.panels[row.panel].name(lapwright::vehicle::Naming::Uk).replace(", ", " ");
                let words = format!("{} ", place + 1);
                let next = text[at..].find(&words).unwrap_or_else(|| panic!("{count} {} {words}", member.name));
                let name_at = text[at..].find(&name).unwrap_or_else(|| panic!("{count} {} {name}", member.name));
                at += next.min(name_at) + 1;
            }
        }
    }
}
