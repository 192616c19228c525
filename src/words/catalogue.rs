//! The messages of each language, read once.

use super::Language;
use super::figures::localised;
use super::stretched::stretched;
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource, FluentValue};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet, HashMap};
use std::sync::LazyLock;
use unic_langid::LanguageIdentifier;

/// Names the files of all areas, each in every language.
macro_rules! areas {
    ($($area:literal),+ $(,)?) => {
        /// Every file: its area, and its text in British and American English, German and Spanish.
        const AREAS: &[(&str, [&str; 4])] = &[
            $(($area, [
                include_str!(concat!("en-GB/", $area, ".ftl")),
                include_str!(concat!("en-US/", $area, ".ftl")),
                include_str!(concat!("de/", $area, ".ftl")),
                include_str!(concat!("es/", $area, ".ftl")),
            ]),)+
        ];
    };
}

areas!(
    "bay",
    "check",
    "cli",
    "coat",
    "coating",
    "command",
    "common",
    "correction",
    "crew",
    "edit",
    "file",
    "find",
    "handover",
    "home",
    "insight",
    "job",
    "keep",
    "measure",
    "part",
    "polish",
    "practice",
    "scene",
    "sheet",
    "survey",
    "unit",
    "vehicle",
    "window",
    "work",
);

/// The messages of one language.
pub struct Text {
    bundle: FluentBundle<FluentResource>,
    /// Those without arguments, already as text.
    plain: HashMap<String, &'static str>,
}

impl std::fmt::Debug for Text {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Text").field("plain", &self.plain.len()).finish_non_exhaustive()
    }
}

static BRITISH: LazyLock<Text> = LazyLock::new(|| Text::of(Language::British));
static AMERICAN: LazyLock<Text> = LazyLock::new(|| Text::of(Language::American));
static GERMAN: LazyLock<Text> = LazyLock::new(|| Text::of(Language::German));
static SPANISH: LazyLock<Text> = LazyLock::new(|| Text::of(Language::Spanish));
static STRETCHED: LazyLock<Text> = LazyLock::new(|| Text::of(Language::Stretched));

fn of(language: Language) -> &'static Text {
    match language {
        Language::British => &BRITISH,
        Language::American => &AMERICAN,
        Language::German => &GERMAN,
        Language::Spanish => &SPANISH,
        Language::Stretched => &STRETCHED,
    }
}

/// The files of a language, those that count more later.
fn files(language: Language) -> Vec<Cow<'static, str>> {
    let column = |column: usize| AREAS.iter().map(move |(_, texts)| Cow::Borrowed(texts[column]));
    match language {
        Language::British => column(0).collect(),
        Language::American => column(0).chain(column(1)).collect(),
        Language::German => column(2).collect(),
        Language::Spanish => column(3).collect(),
        Language::Stretched => column(0).map(|file| Cow::Owned(stretched(&file))).collect(),
    }
}

fn resource(file: &str) -> FluentResource {
    // A file with a fault gives what could be read of it; the tests refuse such a file.
    FluentResource::try_new(file.to_owned()).unwrap_or_else(|(read, _)| read)
}

impl Text {
    fn of(language: Language) -> Self {
        let tag: LanguageIdentifier = language.tag().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        // The marks around arguments are for texts of mixed direction; they would end up in files and on the clipboard.
        bundle.set_use_isolating(false);
        bundle.set_formatter(Some(number));
        let mut plain = HashMap::new();
        for file in files(language) {
            bundle.add_resource_overriding(resource(&file));
        }
        for (key, variables) in all(language) {
            if let Some(pattern) = bundle.get_message(&key).and_then(|m| m.value()).filter(|_| variables.is_empty()) {
                let text = bundle.format_pattern(pattern, None, &mut Vec::new()).into_owned();
                plain.insert(key, &*Box::leak(text.into_boxed_str()));
            }
        }
        Self { bundle, plain }
    }
}

/// Numbers in messages have the decimal sign of the language.
fn number(value: &FluentValue<'_>, _: &intl_memoizer::concurrent::IntlLangMemoizer) -> Option<String> {
    match value {
        FluentValue::Number(number) => Some(localised(number.as_string().into_owned())),
        _ => None,
    }
}

pub(super) fn plain_if_any(language: Language, key: &str) -> Option<&'static str> {
    of(language).plain.get(key).or_else(|| BRITISH.plain.get(key)).copied()
}

pub(super) fn plain(language: Language, key: &str) -> &'static str {
    plain_if_any(language, key).unwrap_or_else(|| {
        debug_assert!(false, "no message {key} without arguments");
        // Never where the tests passed: every key of the code is held against every language.
        "\u{2026}"
    })
}

/// A text without arguments in a language of its own, such as the British name of a part.
pub fn text_in(language: Language, key: &str) -> Option<&'static str> {
    plain_if_any(language, key)
}

pub(super) fn filled(language: Language, key: &'static str, args: &FluentArgs<'_>) -> String {
    let text = of(language);
    let mut faults = Vec::new();
    let pattern = text.bundle.get_message(key).and_then(|m| m.value());
    let said = pattern.map(|pattern| text.bundle.format_pattern(pattern, Some(args), &mut faults).into_owned());
    debug_assert!(faults.is_empty(), "{key} in {}: {faults:?}", language.tag());
    match said {
        Some(said) => said,
        None if language != Language::British => filled(Language::British, key, args),
        None => {
            debug_assert!(false, "no message {key}");
            key.to_owned()
        }
    }
}

/// Every key of the files of a language with its area, as they stand there; for American English only what differs.
pub fn keys(language: Language) -> Vec<(&'static str, String)> {
    let column = match language {
        Language::British | Language::Stretched => 0,
        Language::American => 1,
        Language::German => 2,
        Language::Spanish => 3,
    };
    AREAS
        .iter()
        .flat_map(|(area, texts)| messages(texts[column]).map(|(key, _)| (*area, key)).collect::<Vec<_>>())
        .collect()
}

/// The arguments of every message of a language.
pub fn variables(language: Language) -> BTreeMap<String, BTreeSet<String>> {
    all(language).into_iter().collect()
}

fn all(language: Language) -> Vec<(String, BTreeSet<String>)> {
    files(language).iter().flat_map(|file| messages(file).collect::<Vec<_>>()).collect()
}

/// The messages of a file with their arguments.
fn messages(file: &str) -> impl Iterator<Item = (String, BTreeSet<String>)> + use<> {
    let resource = resource(file);
    let found: Vec<_> = resource
        .entries()
        .filter_map(|entry| match entry {
            Entry::Message(message) => {
                let mut found = BTreeSet::new();
                if let Some(pattern) = &message.value {
                    gather(pattern, &mut found);
                }
                Some((message.id.name.to_owned(), found))
            }
            _ => None,
        })
        .collect();
    found.into_iter()
}

fn gather(pattern: &Pattern<&str>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        let PatternElement::Placeable { expression } = element else { continue };
        match expression {
            Expression::Inline(inline) => gather_inline(inline, found),
            Expression::Select { selector, variants } => {
                gather_inline(selector, found);
                for variant in variants {
                    gather(&variant.value, found);
                }
            }
        }
    }
}

fn gather_inline(inline: &InlineExpression<&str>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.to_owned());
        }
        InlineExpression::FunctionReference { arguments, .. } => {
            for argument in &arguments.positional {
                gather_inline(argument, found);
            }
        }
        InlineExpression::Placeable { expression } => match &**expression {
            Expression::Inline(inline) => gather_inline(inline, found),
            Expression::Select { .. } => {}
        },
        _ => {}
    }
}
