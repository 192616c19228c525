//! Breaking text into lines.

use super::font;

/// Breaks a text into lines no wider than `room`. Breaks at blanks and after hyphens and slashes, never at no-break blanks; a word
/// that is too long for a line of its own is cut. Line breaks of the text are kept.
pub(super) fn broken(text: &str, bold: bool, size: f32, room: f32) -> Vec<String> {
    let mut lines = Vec::new();
    for paragraph in text.split('\n') {
        one_paragraph(paragraph, bold, size, room, &mut lines);
    }
    lines
}

fn one_paragraph(text: &str, bold: bool, size: f32, room: f32, lines: &mut Vec<String>) {
    let blank = font::width(" ", bold, size);
    let (mut line, mut taken) = (String::new(), 0.0);
    for (word, spaced) in words(text) {
        let mut word = word;
        let mut width = font::width(word, bold, size);
        let gap = if spaced && !line.is_empty() { blank } else { 0.0 };
        if taken + gap + width > room && !line.is_empty() {
            lines.push(std::mem::take(&mut line));
            taken = 0.0;
        } else if gap > 0.0 {
            line.push(' ');
            taken += gap;
        }
        while width > room {
            let cut = fitting(word, bold, size, room);
            lines.push(word[..cut].to_owned());
            word = &word[cut..];
            width = font::width(word, bold, size);
        }
        line.push_str(word);
        taken += width;
    }
    lines.push(line);
}

/// Words, and whether a blank stands before each.
fn words(text: &str) -> Vec<(&str, bool)> {
    let mut found = Vec::new();
    for word in text.split([' ', '\t', '\r']).filter(|w| !w.is_empty()) {
        let mut spaced = true;
        let mut rest = word;
        while let Some(at) =
            rest.find(['-', '/', '\u{2013}']).map(|at| at + rest[at..].chars().next().map_or(1, char::len_utf8))
        {
            // Only between letters: "-5" and "A/" stay whole.
            if at >= rest.len() || at < 3 || !rest[at..].starts_with(char::is_alphabetic) {
                break;
            }
            found.push((&rest[..at], spaced));
            spaced = false;
            rest = &rest[at..];
        }
        found.push((rest, spaced));
    }
    found
}

/// How many bytes of a word fit; at least one character.
fn fitting(word: &str, bold: bool, size: f32, room: f32) -> usize {
    let ends: Vec<usize> = word.char_indices().map(|(at, c)| at + c.len_utf8()).collect();
    let fits = ends.partition_point(|end| font::width(&word[..*end], bold, size) <= room);
    ends.get(fits.saturating_sub(1)).copied().unwrap_or(word.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_keep_every_word_and_the_room() {
        let text = "The front-left door of a vehicle whose owner is called Bartholomew-Featherstonehaugh";
        let lines = broken(text, false, 4.0, 40.0);
        assert!(lines.len() > 3);
        assert!(lines.iter().all(|l| font::width(l, false, 4.0) <= 40.0 + 0.1), "{lines:?}");
        assert_eq!(lines.concat().replace(' ', ""), text.replace(' ', ""));
    }

    #[test]
    fn a_word_wider_than_the_line_is_cut_and_nothing_is_lost() {
        let word = "W".repeat(200);
        let lines = broken(&word, true, 4.0, 30.0);
        assert!(lines.len() > 10 && lines.concat() == word);
        assert_eq!(broken("", false, 4.0, 30.0), [""]);
    }

    #[test]
    fn a_number_stays_with_its_unit() {
        let lines = broken("at most 3.2\u{202f}µm", false, 4.0, 22.0);
        assert!(lines.iter().any(|l| l.contains("3.2\u{202f}µm")), "{lines:?}");
    }
}
