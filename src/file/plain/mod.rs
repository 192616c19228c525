//! A quick reader of jobs as this program writes them, for lists of thousands.
//!
//! It reads the part of RON that `job_to_text` makes: no comments, no names of structs, plain numbers. It fills the same types as the
//! full reader, so that every range, every missing and every unknown field is seen. Whatever it does not know it refuses, and
//! the full reader has the word; it never guesses.

mod text;
mod values;

use super::load::is_of_this_format;
use super::v1::{FORMAT, JobFile};
use crate::job::Job;
use serde::Deserialize;
use serde::de::Error;
use std::fmt::{self, Display};
use text::Plain;

/// The job of a text, not held against anything, where the text is of the plain kind; none where only the full reader can tell.
pub fn job_as_written(text: &str) -> Option<Job> {
    if !is_of_this_format(text) {
        return None;
    }
    let mut plain = Plain::new(text);
    let file = JobFile::deserialize(&mut plain).ok()?;
    plain.skip_blanks();
    (plain.is_at_end() && file.format == FORMAT).then(|| file.into_job().0)
}

/// Not of the plain kind, or wrong: the full reader says which.
#[derive(Debug)]
struct NotPlain;

impl Display for NotPlain {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not as the program writes it")
    }
}

impl std::error::Error for NotPlain {}

impl Error for NotPlain {
    fn custom<T: Display>(_: T) -> Self {
        Self
    }
}

#[cfg(test)]
mod tests {
    use super::job_as_written;
    use crate::file::load::read_fields;
    use crate::file::{SAMPLE, job_to_text};
    use crate::job::Job;

    const GOLDEN: [&str; 2] = [
        include_str!("../../../tests/data/golden/job-1-full.job.ron"),
        include_str!("../../../tests/data/golden/job-1-least.job.ron"),
    ];

    fn full(text: &str) -> Option<Job> {
        read_fields("a text", text).ok().map(|(job, _)| job)
    }

    /// The quick reader may refuse, but never say anything else than the full one. Returns whether it refused.
    fn refuses(text: &str) -> bool {
        let quick = job_as_written(text);
        assert!(quick.is_none() || quick == full(text), "the quick reader differs from the full one:\n{text}");
        quick.is_none()
    }

    fn as_written() -> Vec<String> {
        let sample = job_to_text(&full(SAMPLE).unwrap()).unwrap();
        GOLDEN.iter().map(|text| (*text).to_owned()).chain([sample]).collect()
    }

    #[test]
    fn what_the_program_writes_is_read_quickly() {
        for text in as_written() {
            assert!(!refuses(&text));
            assert!(!refuses(&text.replace('\n', "\r\n")), "an editor of another system saved it");
        }
        assert!(refuses(SAMPLE), "it has comments");
    }

    #[test]
    fn a_text_cut_off_anywhere_is_refused() {
        for text in as_written() {
            let end = text.trim_end().len();
            let each = if text.len() > 20_000 { 9 } else { 1 };
            for at in (0..end).filter(|at| text.is_char_boundary(*at)).step_by(each) {
                assert!(refuses(&text[..at]), "cut off after {at} bytes");
            }
        }
    }

    /// Signs in turn are taken out, doubled, or replaced by those that mean something in RON; in the long text each ninth.
    #[test]
    fn a_text_damaged_anywhere_is_read_as_the_full_reader_does_or_refused() {
        let (mut read, mut refused) = (0_u32, 0_u32);
        for text in as_written() {
            let each = if text.len() > 20_000 { 9 } else { 1 };
            let places = (0..text.len()).filter(|at| text.is_char_boundary(*at) && text.as_bytes()[*at] != b' ');
            for at in places.step_by(each) {
                let (before, rest) = text.split_at(at);
                let mut signs = rest.chars();
                let sign = signs.next().unwrap();
                let rest = signs.as_str();
                let put = ["", "\"", "\\", "0", "-", ")", ","][at % 7];
                for middle in [put.to_owned(), format!("{sign}{sign}"), format!("{sign}{put}")] {
                    *(if refuses(&format!("{before}{middle}{rest}")) { &mut refused } else { &mut read }) += 1;
                }
            }
        }
        assert!(read > 1_000 && refused > 1_000, "{read} read, {refused} refused");
    }

    #[test]
    fn other_ways_to_write_the_same_are_left_to_the_full_reader_or_read_as_it_does() {
        let text = as_written().pop().unwrap();
        for (plain, other) in [
            ("format: \"job/1\"", "format: \"job/\\u{31}\""),
            ("format: \"job/1\"", "format: \"job/2\""),
            ("format: \"job/1\"", "format: r\"job/1\""),
            ("  name: \"", "  name: \"\\x41\\u{00e9}\\n\\0\\'"),
            ("  name: \"", "  name: \"\\u{110000}"),
            ("  name: \"", "  name: \"\\q"),
            ("  name: \"", "  name: \"\\\n   "),
            ("  name: \"", "  r#name: \""),
            ("vehicle: (", "vehicle: Vehicle("),
            ("goal: ", "goal: /* said by phone */ "),
            ("humidity_pct: 5", "humidity_pct: +5"),
            ("humidity_pct: 5", "humidity_pct: 0_5"),
            ("humidity_pct: 5", "humidity_pct: .5"),
            ("humidity_pct: 5", "humidity_pct: 5e0"),
            ("humidity_pct: 5", "humidity_pct: -5"),
            ("humidity_pct: 5", "humidity_pct: inf, x: 5"),
            ("panel_s: 7", "panel_s: 0x7"),
            ("panel_s: 7", "panel_s: 007"),
            ("panel_s: 7", "panel_s: 7u32"),
            ("panel_s: 7", "panel_s: -7"),
            ("panel_s: 7", "panel_s: 7.0"),
            ("panel_s: 7", "panel_s: 99999999999999999999"),
            ("Some(", "Some( "),
            ("None,", "None ,"),
        ] {
            let other = text.replacen(plain, other, 1);
            refuses(&other);
            refuses(&format!("\u{feff}{other}"));
            refuses(&format!("#![enable(implicit_some)]\n{other}"));
        }
        assert!(refuses(&format!("{text}(")) && refuses(&format!("{text}// end")) && refuses("") && refuses("("));
    }
}
