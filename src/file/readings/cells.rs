//! What stands in one cell.

use crate::say;
use crate::units::{Micrometres, ThicknessUnit, number};

/// The decimal sign of a text that has exactly one, and no other.
pub(super) fn decimal_sign(text: &str) -> Option<char> {
    let mut signs = text.chars().filter(|c| matches!(c, '.' | ','));
    signs.next().filter(|_| signs.next().is_none())
}

/// A thickness as it stands in a file whose decimal sign is known.
///
/// # Errors
/// Why it can't be taken, as the end of a sentence.
pub(super) fn thickness(text: &str, unit: ThicknessUnit, decimal: Option<char>) -> Result<Micrometres, String> {
    let text = text.trim();
    if text.is_empty() {
        return Err(say!("file-row-no-thickness").to_owned());
    }
    let short = shortened(text);
    if text.contains('.') && text.contains(',') {
        return Err(say!("file-row-both-signs", text = short));
    }
    let sign = decimal_sign(text);
    if let (Some(sign), Some(decimal)) = (sign, decimal)
        && sign != decimal
    {
        let comma = sign == ',';
        return Err(if comma {
            say!("file-row-comma-not-point", text = short)
        } else {
            say!("file-row-point-not-comma", text = short)
        });
    }
    if unit == ThicknessUnit::Um && looks_like_thousands(text) {
        return Err(say!("file-row-thousand", text = short));
    }
    let value = number(text).ok_or_else(|| say!("file-row-no-number", text = short))?;
    unit.thickness(value)
}

/// One to three digits, a sign, three digits: a separator of thousands looks like this too.
fn looks_like_thousands(text: &str) -> bool {
    let parts: Vec<&str> = text.split(['.', ',']).collect();
    let digits = |part: &&str| part.bytes().all(|b| b.is_ascii_digit());
    matches!(parts.as_slice(), [whole, rest] if (1..=3).contains(&whole.len()) && rest.len() == 3)
        && parts.iter().all(digits)
        && !text.starts_with('0')
}

/// The number of a reading, from 1.
///
/// # Errors
/// Why it is none, as the end of a sentence.
pub(super) fn reading_number(text: &str) -> Result<u32, String> {
    match text.trim().parse::<u32>() {
        Ok(number) if number > 0 => Ok(number),
        _ if text.trim().is_empty() => Err(say!("file-row-no-reading").to_owned()),
        _ => Err(say!("file-row-bad-reading", text = shortened(text.trim()))),
    }
}

/// At most 40 characters of a text, for a message.
pub(super) fn shortened(text: &str) -> String {
    match text.char_indices().nth(40) {
        Some((end, _)) => format!("{}…", &text[..end]),
        None => text.to_owned(),
    }
}
