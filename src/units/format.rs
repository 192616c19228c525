//! Numbers and times as people read them.

use super::Seconds;

/// Time on the planner's clock as `m:ss`, or `h:mm:ss` from one hour on.
pub fn clock(seconds: Seconds) -> String {
    let (sign, s) = if seconds < 0 { ("\u{2212}", -seconds) } else { ("", seconds) };
    let (h, m, s) = (s / 3600, s / 60 % 60, s % 60);
    if h > 0 { format!("{sign}{h}:{m:02}:{s:02}") } else { format!("{sign}{m}:{s:02}") }
}

/// A duration in words: `45 s`, `12 min`, `1 h 05 min`.
pub fn minutes(seconds: Seconds) -> String {
    let rounded = (seconds + 30) / 60;
    match rounded {
        _ if seconds < 90 => format!("{seconds}\u{202f}s"),
        m if m < 60 => format!("{m}\u{202f}min"),
        m => format!("{}\u{202f}h {:02}\u{202f}min", m / 60, m % 60),
    }
}

/// A text with a capital at its beginning, unless the name of a file stands there.
pub fn capital(text: &str) -> String {
    let first = text.split_whitespace().next().unwrap_or_default();
    if first.trim_end_matches(['.', ':']).contains(['.', '/', '\\', ':']) {
        return text.to_owned();
    }
    let mut letters = text.chars();
    letters.next().map(|first| first.to_uppercase().chain(letters).collect()).unwrap_or_default()
}

/// Names as they stand in a sentence: "a", "a and b", "a, b and c"; nothing for none.
pub fn listed<S: AsRef<str>>(names: &[S]) -> String {
    let names: Vec<&str> = names.iter().map(AsRef::as_ref).collect();
    match names.as_slice() {
        [] => String::new(),
        [one] => (*one).to_owned(),
        [most @ .., last] => crate::say!("common-listed", most = most.join(", "), last = *last),
    }
}

/// Reads a number as a person types it: decimal point or comma, blanks around it; no thousands separators.
pub fn number(text: &str) -> Option<f64> {
    let text = text.trim();
    let plain = text.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '+'));
    let value = text.replace(',', ".").parse::<f64>().ok()?;
    (plain && value.is_finite()).then_some(value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn clocks_read_as_on_a_stopwatch() {
        assert_eq!(clock(0), "0:00");
        assert_eq!(clock(754), "12:34");
        assert_eq!(clock(3723), "1:02:03");
    }

    #[test]
    fn both_decimal_signs_are_read_and_nothing_else() {
        assert_eq!(number(" 112,5 "), Some(112.5));
        assert_eq!(number("112.5"), Some(112.5));
        assert_eq!(number("1.112,5"), None);
        assert_eq!(number("nan"), None);
        assert_eq!(number("1e3"), None);
        assert_eq!(number(""), None);
    }

    #[test]
    fn a_capital_is_set_once_and_on_letters_of_any_language() {
        assert_eq!(capital("roof left"), "Roof left");
        assert_eq!(capital("\u{e9}raflure"), "\u{c9}raflure");
        assert_eq!(capital(""), "");
        assert_eq!(capital("torn.job.ron:8:3: expected a name"), "torn.job.ron:8:3: expected a name");
        assert_eq!(capital("roof: thin"), "Roof: thin");
    }

    #[test]
    fn durations_read_as_words() {
        assert_eq!(minutes(45), "45\u{202f}s");
        assert_eq!(minutes(3900), "1\u{202f}h 05\u{202f}min");
    }
}
