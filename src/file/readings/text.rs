//! From bytes to text.

use encoding_rs::{Encoding, UTF_8, WINDOWS_1252};

/// How a file's letters are written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TextEncoding {
    /// UTF-8, with or without a byte order mark.
    Utf8,
    /// UTF-16, told by its byte order mark.
    Utf16,
    /// Windows-1252: taken for whatever is not UTF-8, as every byte means something in it.
    Windows1252,
}

impl TextEncoding {
    /// Its name.
    pub fn name(self) -> &'static str {
        match self {
            Self::Utf8 => "UTF-8",
            Self::Utf16 => "UTF-16",
            Self::Windows1252 => "Windows-1252",
        }
    }
}

/// The text of a file and how it was written; none where it is not text.
///
/// A byte order mark decides; without one, what is UTF-8 is taken as that, and anything else as Windows-1252.
pub(super) fn decode(bytes: &[u8]) -> Option<(String, TextEncoding)> {
    let (text, encoding) = match Encoding::for_bom(bytes) {
        Some((marked, length)) => {
            let text = marked.decode_without_bom_handling_and_without_replacement(&bytes[length..])?;
            (text, if marked == UTF_8 { TextEncoding::Utf8 } else { TextEncoding::Utf16 })
        }
        None => match UTF_8.decode_without_bom_handling_and_without_replacement(bytes) {
            Some(text) => (text, TextEncoding::Utf8),
            None => (WINDOWS_1252.decode_without_bom_handling(bytes).0, TextEncoding::Windows1252),
        },
    };
    let is_text = |c: char| !c.is_control() || matches!(c, '\n' | '\r' | '\t');
    text.chars().all(is_text).then(|| (text.into_owned(), encoding))
}
