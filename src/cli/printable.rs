//! What a terminal may show: text without the characters that would command it, or that would turn the order of a line.

use std::io::{self, Write};

/// A writer for people. Control characters other than the line break and the tab, and the marks that change the direction of a text,
/// become U+FFFD; a name in a job then can't move the cursor or pass for another one.
#[derive(Debug)]
pub struct Printable<W>(pub W);

impl<W: Write> Write for Printable<W> {
    /// Takes whole characters only, as formatted text comes.
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let text = String::from_utf8_lossy(bytes);
        if text.contains(commands) {
            self.0.write_all(text.replace(commands, "\u{fffd}").as_bytes())?;
        } else {
            self.0.write_all(bytes)?;
        }
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        self.0.flush()
    }
}

/// Source of the marks of direction: Unicode Standard Annex #9, "Unicode Bidirectional Algorithm", 2.
fn commands(c: char) -> bool {
    c.is_control() && !matches!(c, '\n' | '\t') || matches!(c, '\u{202a}'..='\u{202e}' | '\u{2066}'..='\u{2069}')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_commands_a_terminal_is_taken_out_and_nothing_else() {
        for (text, shown) in [
            ("Mara\tµm – 12,5\n", "Mara\tµm – 12,5\n"),
            ("\u{1b}]0;title\u{7}red \u{1b}[31m", "\u{fffd}]0;title\u{fffd}red \u{fffd}[31m"),
            ("\u{9b}31m over\rwritten", "\u{fffd}31m over\u{fffd}written"),
            ("\u{202e}txt.exe\u{2069}", "\u{fffd}txt.exe\u{fffd}"),
        ] {
            let mut out = Printable(Vec::new());
            write!(out, "{text}").expect("a vector takes everything");
            assert_eq!(String::from_utf8(out.0).expect("text"), shown);
        }
    }
}
