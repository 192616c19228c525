//! The languages, and which one is in use.

use serde::{Deserialize, Serialize};
use std::cell::Cell;

/// A language that the program speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord, Default, Serialize, Deserialize)]
pub enum Language {
    /// English of the United Kingdom.
    #[default]
    #[serde(rename = "en-GB")]
    British,
    /// English of the United States.
    #[serde(rename = "en-US")]
    American,
    /// German.
    #[serde(rename = "de")]
    German,
    /// Spanish.
    #[serde(rename = "es")]
    Spanish,
    /// British English with every letter accented and every vowel twice: nobody's language, for tests of the room that texts need
    /// and of texts that are no messages.
    #[serde(skip)]
    Stretched,
}

impl Language {
    /// Those that somebody can choose.
    pub const ALL: [Self; 4] = [Self::British, Self::American, Self::German, Self::Spanish];

    /// Its tag after BCP 47, which is the name of its folder.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::British | Self::Stretched => "en-GB",
            Self::American => "en-US",
            Self::German => "de",
            Self::Spanish => "es",
        }
    }

    /// What it calls itself.
    pub const fn own_name(self) -> &'static str {
        match self {
            Self::British | Self::Stretched => "English (UK)",
            Self::American => "English (US)",
            Self::German => "Deutsch",
            Self::Spanish => "Español",
        }
    }

    /// Whether somebody of the trade who speaks it has read every message.
    pub const fn is_reviewed(self) -> bool {
        matches!(self, Self::British | Self::American | Self::Stretched)
    }

    /// The decimal sign.
    pub const fn decimal_sign(self) -> char {
        match self {
            Self::German | Self::Spanish => ',',
            _ => '.',
        }
    }

    /// The language that the environment asks for, by the first of `LC_ALL`, `LC_MESSAGES` and `LANG` that is set (POSIX.1-2017,
    /// chapter 8.2); British English where it asks for none of ours.
    pub fn of_environment(variable: impl Fn(&str) -> Option<String>) -> Self {
        let set = |name: &&str| variable(name).filter(|value| !value.is_empty());
        let asked = ["LC_ALL", "LC_MESSAGES", "LANG"].iter().find_map(set).unwrap_or_default();
        match asked.split(['.', '@']).next().unwrap_or_default() {
            "en_US" => Self::American,
            tag if tag == "de" || tag.starts_with("de_") => Self::German,
            tag if tag == "es" || tag.starts_with("es_") => Self::Spanish,
            _ => Self::British,
        }
    }
}

thread_local! {
    static IN_USE: Cell<Language> = const { Cell::new(Language::British) };
}

/// The language of this thread.
pub fn language() -> Language {
    IN_USE.get()
}

/// Changes the language of this thread.
pub fn set_language(language: Language) {
    IN_USE.set(language);
}

/// Does something in a language and goes back to the one before, after a panic too.
pub fn within<T>(language: Language, work: impl FnOnce() -> T) -> T {
    struct Back(Language);
    impl Drop for Back {
        fn drop(&mut self) {
            IN_USE.set(self.0);
        }
    }
    let _back = Back(IN_USE.replace(language));
    work()
}

/// Work for another thread, to be done there in the language of this one.
pub fn taking_along<T>(work: impl FnOnce() -> T) -> impl FnOnce() -> T {
    let here = language();
    move || within(here, work)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_environment_is_asked_in_the_order_of_posix() {
        let of = |set: &'static [(&str, &str)]| {
            Language::of_environment(|name| set.iter().find(|(n, _)| *n == name).map(|(_, v)| (*v).to_owned()))
        };
        assert_eq!(of(&[]), Language::British);
        assert_eq!(of(&[("LANG", "de_AT.UTF-8")]), Language::German);
        assert_eq!(of(&[("LANG", "de_DE.UTF-8"), ("LC_MESSAGES", "es")]), Language::Spanish);
        assert_eq!(of(&[("LC_ALL", ""), ("LANG", "en_US.UTF-8")]), Language::American);
        assert_eq!(of(&[("LC_ALL", "C"), ("LANG", "de_DE.UTF-8")]), Language::British);
        assert_eq!(of(&[("LANG", "deseret")]), Language::British);
    }

    #[test]
    fn a_language_lasts_as_long_as_its_work() {
        within(Language::German, || assert_eq!(language(), Language::German));
        let caught = std::panic::catch_unwind(|| within(Language::Spanish, || panic!("on purpose")));
        assert!(caught.is_err());
        assert_eq!(language(), Language::British);
    }
}
