//! The signs of a plain text: names, numbers, strings. What they are read as is what the full reader reads them as.

use super::NotPlain;
use std::borrow::Cow;
use std::str::FromStr;

/// A text and how far it is read, in bytes; always between two characters.
pub(super) struct Plain<'de> {
    text: &'de str,
    at: usize,
}

impl<'de> Plain<'de> {
    pub(super) fn new(text: &'de str) -> Self {
        Self { text, at: 0 }
    }

    pub(super) fn is_at_end(&self) -> bool {
        self.at == self.text.len()
    }

    /// The next byte.
    pub(super) fn peek(&self) -> Option<u8> {
        self.text.as_bytes().get(self.at).copied()
    }

    pub(super) fn skip_blanks(&mut self) {
        while let Some(b' ' | b'\n' | b'\r' | b'\t') = self.peek() {
            self.at += 1;
        }
    }

    /// Whether this ASCII sign is next; it is then behind.
    pub(super) fn takes(&mut self, sign: u8) -> bool {
        let is_next = self.peek() == Some(sign);
        self.at += usize::from(is_next);
        is_next
    }

    /// Takes a sign behind any blanks.
    pub(super) fn needs(&mut self, sign: u8) -> Result<(), NotPlain> {
        self.skip_blanks();
        if self.takes(sign) { Ok(()) } else { Err(NotPlain) }
    }

    /// What stands before the first byte that ends it, always an ASCII one.
    fn until(&mut self, ends: impl Fn(u8) -> bool) -> &'de str {
        let rest = self.text.get(self.at..).unwrap_or_default();
        let length = rest.bytes().position(ends).unwrap_or(rest.len());
        self.at += length;
        rest.get(..length).unwrap_or_default()
    }

    /// The name of a field or of a kind, in the letters that the format uses.
    pub(super) fn name(&mut self) -> Result<&'de str, NotPlain> {
        let name = self.until(|b| b.is_ascii() && !b.is_ascii_alphanumeric() && b != b'_');
        if name.is_ascii() && name.starts_with(|c: char| c.is_ascii_alphabetic()) { Ok(name) } else { Err(NotPlain) }
    }

    /// A number in decimal digits without sign marks of a type; the standard library reads it, for the full reader too.
    pub(super) fn number<T: FromStr>(&mut self) -> Result<T, NotPlain> {
        let number = self.until(|b| matches!(b, b',' | b')' | b']' | b' ' | b'\n' | b'\r' | b'\t'));
        let is_plain = number.bytes().all(|b| b.is_ascii_digit() || matches!(b, b'-' | b'+' | b'.' | b'e' | b'E'));
        let first = number.starts_with(|c: char| c == '-' || c.is_ascii_digit());
        let last = number.ends_with(|c: char| c.is_ascii_digit());
        if is_plain && first && last { number.parse().ok().ok_or(NotPlain) } else { Err(NotPlain) }
    }

    /// A string in quotation marks; copied only where something in it is escaped.
    pub(super) fn string(&mut self) -> Result<Cow<'de, str>, NotPlain> {
        self.needs(b'"')?;
        let mut decoded = String::new();
        loop {
            let part = self.until(|b| b == b'"' || b == b'\\');
            if self.takes(b'"') {
                return Ok(if decoded.is_empty() { Cow::Borrowed(part) } else { Cow::Owned(decoded + part) });
            }
            self.needs(b'\\')?;
            decoded.push_str(part);
            decoded.push(self.escaped()?);
        }
    }

    fn escaped(&mut self) -> Result<char, NotPlain> {
        let sign = self.peek().filter(u8::is_ascii).ok_or(NotPlain)?;
        self.at += 1;
        match sign {
            b'"' | b'\\' | b'\'' => Ok(char::from(sign)),
            b'n' => Ok('\n'),
            b'r' => Ok('\r'),
            b't' => Ok('\t'),
            b'0' => Ok('\0'),
            b'u' if self.takes(b'{') => {
                let digits = self.until(|b| b.is_ascii() && !b.is_ascii_hexdigit());
                let is_closed = (1..=6).contains(&digits.len()) && self.takes(b'}');
                let code = u32::from_str_radix(digits, 16).ok().filter(|_| is_closed);
                code.and_then(char::from_u32).ok_or(NotPlain)
            }
            _ => Err(NotPlain),
        }
    }
}
