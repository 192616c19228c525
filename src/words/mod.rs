//! What the program says: every message once in each language, as [Fluent](https://projectfluent.org) messages.
//!
//! The texts lie beside this file, one folder a language, one file an area; a key begins with the name of its area. British English
//! is complete and the measure of the others; American English holds only what differs from it. German and Spanish are
//! complete but **not reviewed** by somebody of the trade whose language it is.
//!
//! `say!("survey-defects")` is a text of the language in use; `say!("survey-taken", count = 3)` one with arguments. A constant holds a
//! [`Message`], which becomes text where it is read. Numbers with decimals go through [`decimal`], whole numbers as they are, so
//! that messages can choose their plural.
//!
//! The language belongs to the thread, so that a test, a sheet or a file for another program can be written in its own; threads
//! that are started take it along ([`language()`], [`set_language`]).

mod catalogue;
mod figures;
mod language;
mod stretched;

pub use catalogue::{Text, keys, text_in, variables};
pub use figures::{decimal, decimal_sign, localised, shortest};
pub use fluent_bundle::FluentValue;
pub use language::{Language, language, set_language, taking_along, within};

/// A text without arguments by its key, as a constant holds it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Message(
    /// The key; written through [`message!`](crate::message), so that the tests find it.
    pub &'static str,
);

impl Message {
    /// The text in the language in use.
    pub fn text(self) -> &'static str {
        text(self.0)
    }
}

/// The text of a key that is put together, such as `part-` and the name of a part. The key itself where there is none.
pub fn text(key: &str) -> &'static str {
    catalogue::plain(language(), key)
}

/// The text of a key, where there is one.
pub fn text_if_any(key: &str) -> Option<&'static str> {
    catalogue::plain_if_any(language(), key)
}

/// A text with its arguments in the language in use; written through [`say!`](crate::say).
pub fn said(key: &'static str, args: Vec<(&str, FluentValue<'_>)>) -> String {
    catalogue::filled(language(), key, &args.into_iter().collect())
}

/// Text in the language in use: `say!("key")` is a `&'static str`, `say!("key", name = value, …)` a `String`.
///
/// Arguments are texts (`&str`, `String`), whole numbers (which choose plurals), or what
/// [`decimal`] makes of others.
#[macro_export]
macro_rules! say {
    ($key:literal) => {
        $crate::words::text($key)
    };
    ($key:literal, $($name:ident = $value:expr),+ $(,)?) => {
        $crate::words::said($key, vec![$((stringify!($name), $crate::words::FluentValue::from($value))),+])
    };
}

/// A [`Message`] for a constant.
#[macro_export]
macro_rules! message {
    ($key:literal) => {
        $crate::words::Message($key)
    };
}
