//! HTML, SVG, PNG and CSV, each read by a general-purpose library.

use super::jobs::{Case, coach, empty, read_twice};
use html5ever::tendril::TendrilSink;
use html5ever::tokenizer::{BufferQueue, Token, TokenSink, TokenSinkResult, Tokenizer, TokenizerOpts};
use html5ever::{ParseOpts, parse_document};
use lapwright::scene::Overlay;
use lapwright::sheets::{self, html, map_picture, svg};
use std::cell::RefCell;

const ALL: [Overlay; 4] = Overlay::ALL;

/// Keeps what the tokenizer of the HTML standard complains about.
#[derive(Default)]
struct Errors(RefCell<Vec<String>>);

impl TokenSink for Errors {
    type Handle = ();

    fn process_token(&self, token: Token, _line: u64) -> TokenSinkResult<()> {
        if let Token::ParseError(error) = token {
            self.0.borrow_mut().push(error.into_owned());
        }
        TokenSinkResult::Continue
    }
}

fn complaints(text: &str) -> Vec<String> {
    let input = BufferQueue::default();
    input.push_back(text.into());
    let tokenizer = Tokenizer::new(Errors::default(), TokenizerOpts { exact_errors: true, ..TokenizerOpts::default() });
    drop(tokenizer.feed(&input));
    tokenizer.end();
    tokenizer.sink.0.into_inner()
}

#[test]
fn html_is_well_formed_self_contained_and_has_words_for_every_picture() {
    for case in [Case::sample(|_| ()), Case::sample(read_twice), coach(), empty()] {
        for make in [sheets::customer, sheets::crew, sheets::record] {
            let text = html(&make(&case.input()));
            assert_eq!(complaints(&text), [] as [&str; 0]);
            let opts = ParseOpts::default();
            let parsed = parse_document(Tree::default(), opts).one(text.as_str());
            assert_eq!(parsed.errors, [] as [&str; 0], "{}", case.loaded.job.name);
            assert!(text.contains("<html lang=\"en-GB\">") && text.contains("<title>") && text.contains("<h1>"));
            for foreign in ["<script", "src=", "href=", "url(", "@import", "http://", "https://"] {
                let text = text.replace("http://www.w3.org/2000/svg", "");
                assert!(!text.contains(foreign), "{foreign}");
            }
            assert_eq!(text.matches("<svg ").count(), text.matches("<title id=").count());
            assert_eq!(text.matches("<svg ").count(), text.matches("<desc id=").count());
            assert_eq!(text.matches("<svg ").count(), text.matches("role=\"img\"").count());
        }
    }
}

#[test]
fn names_with_signs_of_html_stay_text() {
    let evil = "<b>A & \"B\"</b> <script>alert(1)</script>";
    let case = Case::sample(|job| job.customer.name = evil.to_owned());
    let text = html(&sheets::customer(&case.input()));
    assert!(!text.contains("<script") && !text.contains("<b>"));
    assert!(text.contains("&lt;b&gt;A &amp; &quot;B&quot;&lt;/b&gt;"));
}

#[test]
fn maps_are_svg_that_an_xml_parser_reads_with_a_title_and_a_description() {
    let case = Case::sample(|_| ());
    for overlay in ALL {
        let figure = map_picture(&case.input(), overlay);
        let text = svg(&figure);
        let tree = roxmltree::Document::parse(&text).unwrap();
        let root = tree.root_element();
        assert_eq!(root.tag_name().name(), "svg");
        assert_eq!(root.tag_name().namespace(), Some("http://www.w3.org/2000/svg"));
        let child = |name: &str| root.children().find(|c| c.tag_name().name() == name).and_then(|c| c.text());
        assert!(child("title").is_some_and(|t| !t.is_empty()));
        assert!(child("desc").is_some_and(|t| t.contains("front at the left")), "{overlay:?}");
        let paths = root.children().filter(|c| c.tag_name().name() == "path").count();
        assert!(paths > case.loaded.template.panels.len() * 2, "{overlay:?}: {paths}");
    }
}

/// The words of a map say the value of every panel that shows one.
#[test]
fn the_words_of_a_map_name_every_panel_with_a_value() {
    let case = Case::sample(|_| ());
    let figure = map_picture(&case.input(), Overlay::Film);
    for (panel, insight) in case.loaded.template.panels.iter().zip(&case.insight.panels) {
        let name = panel.name(lapwright::vehicle::Naming::Uk).replace(", ", " ");
        assert_eq!(figure.words.contains(&name), insight.film.is_some(), "{name}");
    }
}

#[test]
fn every_text_of_a_map_lies_on_its_paper() {
    for case in [Case::sample(|_| ()), coach()] {
        for overlay in ALL {
            let figure = map_picture(&case.input(), overlay);
            for item in &figure.items {
                if let sheets::Item::Text(run) = item {
                    let inside = (0.0..=figure.width).contains(&run.at.x) && (0.0..=figure.height).contains(&run.at.y);
                    assert!(inside, "{overlay:?}: {} at {:?}", run.text, run.at);
                }
            }
        }
    }
}

#[test]
fn the_picture_of_a_map_has_the_size_asked_for_and_is_the_same_twice() {
    let case = Case::sample(|_| ());
    let figure = map_picture(&case.input(), Overlay::Polish);
    let one = sheets::figure_png(&figure, 4.0).unwrap();
    let read = image::load_from_memory(&one).unwrap();
    assert_eq!(read.width(), (figure.width * 4.0).round() as u32);
    assert_eq!(read.height(), (figure.height * 4.0).round() as u32);
    assert_eq!(one, sheets::figure_png(&figure, 4.0).unwrap());
    assert!(sheets::figure_png(&figure, 1_000.0).is_err(), "too large");
}

/// RFC 4180, read by the csv crate: as many cells in every row as in the head, quotes where names need them.
#[test]
fn the_list_of_the_crew_has_a_row_for_every_step() {
    let case = Case::sample(|job| job.crew[0].name = "Mara, \"the first\"".to_owned());
    let text = sheets::crew_list(&case.input()).unwrap();
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let rows: Vec<csv::StringRecord> = reader.records().map(|r| r.unwrap()).collect();
    let polishing = case.polishing.as_ref().map_or(0, |o| o.rows.len());
    assert_eq!(rows.len(), case.order.len() + polishing);
    for (row, planned) in rows[polishing..].iter().zip(&case.order) {
        assert_eq!(&row[1], case.loaded.job.crew[planned.worker].name);
        assert_eq!(&row[4], case.loaded.template.panels[planned.panel].id.as_str());
        assert_eq!(row[7].parse::<i64>().unwrap(), planned.at.start);
    }
}

/// A spreadsheet would carry out a cell that begins like a formula.
#[test]
fn a_name_like_a_formula_stays_text_in_a_spreadsheet() {
    for evil in ["=HYPERLINK(\"http://a.invalid\")", "+1+cmd|' /C calc'!A0", "-2+3+cmd", "@SUM(1;1)"] {
        let case = Case::sample(|job| job.crew[0].name = evil.to_owned());
        let text = sheets::crew_list(&case.input()).unwrap();
        let rows: Vec<_> = csv::Reader::from_reader(text.as_bytes()).into_records().map(Result::unwrap).collect();
        assert!(rows.iter().any(|row| row[1] == format!("'{evil}")), "{evil}");
        let formulas = rows.iter().flatten().filter(|cell| cell.starts_with(['=', '+', '-', '@']));
        assert_eq!(formulas.count(), 0, "{evil}");
    }
    for plain in ["Mara", "-12.5", "+3", "–", "12,5", ""] {
        assert_eq!(sheets::spreadsheet_cell(plain), plain);
    }
}

/// The least tree that html5ever can build; only what it complains about counts.
#[derive(Default)]
struct Tree {
    names: RefCell<Vec<html5ever::QualName>>,
    errors: RefCell<Vec<String>>,
}

struct Parsed {
    errors: Vec<String>,
}

impl html5ever::tree_builder::TreeSink for Tree {
    type Handle = usize;
    type Output = Parsed;
    type ElemName<'a> = html5ever::ExpandedName<'a>;

    fn finish(self) -> Parsed {
        Parsed { errors: self.errors.into_inner() }
    }
    fn parse_error(&self, message: std::borrow::Cow<'static, str>) {
        self.errors.borrow_mut().push(message.into_owned());
    }
    fn get_document(&self) -> usize {
        0
    }
    fn elem_name<'a>(&'a self, target: &'a usize) -> html5ever::ExpandedName<'a> {
        // Names are kept for ever, so that they can be lent out.
        let name = self.names.borrow()[*target - 1].clone();
        Box::leak(Box::new(name)).expanded()
    }
    fn create_element(
        &self,
        name: html5ever::QualName,
        _: Vec<html5ever::Attribute>,
        _: html5ever::tree_builder::ElementFlags,
    ) -> usize {
        self.names.borrow_mut().push(name);
        self.names.borrow().len()
    }
    fn create_comment(&self, _: html5ever::tendril::StrTendril) -> usize {
        0
    }
    fn create_pi(&self, _: html5ever::tendril::StrTendril, _: html5ever::tendril::StrTendril) -> usize {
        0
    }
    fn append(&self, _: &usize, _: html5ever::tree_builder::NodeOrText<usize>) {}
    fn append_based_on_parent_node(&self, _: &usize, _: &usize, _: html5ever::tree_builder::NodeOrText<usize>) {}
    fn append_doctype_to_document(
        &self,
        _: html5ever::tendril::StrTendril,
        _: html5ever::tendril::StrTendril,
        _: html5ever::tendril::StrTendril,
    ) {
    }
    fn get_template_contents(&self, target: &usize) -> usize {
        *target
    }
    fn same_node(&self, x: &usize, y: &usize) -> bool {
        x == y
    }
    fn set_quirks_mode(&self, mode: html5ever::tree_builder::QuirksMode) {
        assert_eq!(mode, html5ever::tree_builder::QuirksMode::NoQuirks);
    }
    fn append_before_sibling(&self, _: &usize, _: html5ever::tree_builder::NodeOrText<usize>) {}
    fn add_attrs_if_missing(&self, _: &usize, _: Vec<html5ever::Attribute>) {}
    fn remove_from_parent(&self, _: &usize) {}
    fn reparent_children(&self, _: &usize, _: &usize) {}
}
