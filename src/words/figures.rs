//! Numbers with the decimal sign of the language.

use super::language;

/// The decimal sign of the language in use.
pub fn decimal_sign() -> char {
    language().decimal_sign()
}

/// A number with so many decimals: `3.9`, in German and Spanish `3,9`.
pub fn decimal(value: f64, decimals: usize) -> String {
    localised(format!("{value:.decimals$}"))
}

/// A number with as many decimals as it has.
pub fn shortest(value: f64) -> String {
    localised(value.to_string())
}

/// A number written with a point, with the decimal sign of the language.
pub fn localised(number: String) -> String {
    match decimal_sign() {
        '.' => number,
        sign => number.replace('.', sign.encode_utf8(&mut [0; 4])),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::{Language, within};

    #[test]
    fn the_decimal_sign_is_that_of_the_language() {
        assert_eq!(decimal(3.94, 1), "3.9");
        assert_eq!(within(Language::German, || decimal(-3.94, 1)), "-3,9");
        assert_eq!(within(Language::Spanish, || shortest(112.5)), "112,5");
    }
}
