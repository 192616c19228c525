//! A language for tests: British English, accented and about two fifths longer.

use fluent_syntax::ast::{Entry, Expression, Pattern, PatternElement, Resource};
use fluent_syntax::{parser, serializer};

/// The messages of a file with their texts stretched; what stands in braces stays.
pub(super) fn stretched(file: &str) -> String {
    let mut resource = match parser::parse(file.to_owned()) {
        Ok(resource) | Err((resource, _)) => resource,
    };
    stretch_all(&mut resource);
    serializer::serialize(&resource)
}

fn stretch_all(resource: &mut Resource<String>) {
    for entry in &mut resource.body {
        match entry {
            Entry::Message(message) => {
                if let Some(pattern) = &mut message.value {
                    stretch(pattern);
                }
            }
            Entry::Term(term) => stretch(&mut term.value),
            _ => {}
        }
    }
}

fn stretch(pattern: &mut Pattern<String>) {
    for element in &mut pattern.elements {
        match element {
            PatternElement::TextElement { value } => *value = longer(value),
            PatternElement::Placeable { expression: Expression::Select { variants, .. } } => {
                for variant in variants {
                    stretch(&mut variant.value);
                }
            }
            PatternElement::Placeable { .. } => {}
        }
    }
}

/// Every vowel accented and twice, so that a text with a bare vowel is no message.
fn longer(text: &str) -> String {
    let mut long = String::new();
    for letter in text.chars() {
        let pair = match letter {
            'a' => "àá",
            'e' => "èé",
            'i' => "ìí",
            'o' => "òó",
            'u' => "ùú",
            'A' => "Àá",
            'E' => "Èé",
            'I' => "Ìí",
            'O' => "Òó",
            'U' => "Ùú",
            other => {
                long.push(other);
                continue;
            }
        };
        long.push_str(pair);
    }
    long
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn texts_are_stretched_and_arguments_kept() {
        let file = "a = Save { $name }\nb =\n    { $count ->\n        [one] one panel\n       *[other] { $count } panels\n    }\n";
        let long = stretched(file);
        assert!(long.contains("a = Sàávèé { $name }"), "{long}");
        assert!(long.contains("[one] òónèé pàánèél") && long.contains("*[other] { $count } pàánèéls"), "{long}");
    }
}
