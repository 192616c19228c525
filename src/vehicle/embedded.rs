//! The templates that come with the program.

use super::read::TemplateError;
use super::template::Template;
use crate::words::text_if_any;
use std::sync::Arc;

/// A template file that is part of the program.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Embedded {
    /// Its id, the same as inside the file.
    pub id: &'static str,
    /// The text of the file.
    pub text: &'static str,
}

impl Embedded {
    /// Its name for people, taken from the text without building the template; a test holds the two together.
    pub fn name(&self) -> &'static str {
        let line = self.text.lines().find_map(|l| l.trim().strip_prefix("name: \""));
        line.and_then(|rest| rest.split('"').next()).unwrap_or(self.id)
    }
}

/// The name of a template as people read it: those of the program in the language in use, others as their file has it.
pub fn template_name(id: &str, written: &str) -> String {
    let ours = embedded().iter().any(|e| e.id == id && e.name() == written);
    let said = if ours { text_if_any(&format!("vehicle-template-{id}")) } else { None };
    said.unwrap_or(written).to_owned()
}

macro_rules! files {
    ($($id:literal),* $(,)?) => {
        &[$(Embedded { id: $id, text: include_str!(concat!("../../vehicle-templates/", $id, ".ron")) }),*]
    };
}

/// Every template that comes with the program, from small to large.
pub fn embedded() -> &'static [Embedded] {
    files![
        "hatch-3",
        "hatch",
        "coupe",
        "convertible",
        "saloon",
        "estate",
        "off-roader",
        "people-carrier",
        "pickup",
        "van",
        "coach",
    ]
}

/// Reads one of them.
///
/// # Errors
/// [`TemplateError::Unknown`] when there is none of this id; no other, which a test makes sure of.
pub fn load_embedded(id: &str) -> Result<Arc<Template>, TemplateError> {
    let found = embedded().iter().find(|e| e.id == id).ok_or_else(|| TemplateError::Unknown(id.to_owned()))?;
    Template::parse(found.text).map(Arc::new)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_embedded_template_has_the_id_and_name_of_its_file() {
        for file in embedded() {
            let template = load_embedded(file.id).unwrap();
            assert_eq!((template.id.as_str(), template.name.as_str()), (file.id, file.name()));
        }
    }
}
