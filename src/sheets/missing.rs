//! Characters that the font of the sheets lacks, found before anything is printed.

use super::font;
use super::model::Sheet;
use crate::say;
use std::collections::BTreeSet;
use std::fmt;

/// Characters of one text that can't be printed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MissingCharacters {
    /// The heading they stand under.
    pub place: String,
    /// The text.
    pub text: String,
    /// The characters.
    pub characters: BTreeSet<char>,
}

impl fmt::Display for MissingCharacters {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let characters: Vec<String> =
            self.characters.iter().map(|c| format!("{c} (U+{:04X})", u32::from(*c))).collect();
        let beginning: String = self.text.chars().take(40).collect();
        let (place, characters) = (self.place.as_str(), characters.join(", "));
        f.write_str(&say!("sheet-lacks", place = place, text = beginning, characters = characters))
    }
}

/// Every text of a sheet with characters that the font lacks, each text once, in the order of reading.
pub fn missing_characters(sheet: &Sheet) -> Vec<MissingCharacters> {
    let mut found: Vec<MissingCharacters> = Vec::new();
    for (place, text) in sheet.texts() {
        let characters = font::missing(text);
        if !characters.is_empty() && found.iter().all(|m| m.text != text) {
            found.push(MissingCharacters { place, text: text.to_owned(), characters });
        }
    }
    found
}
