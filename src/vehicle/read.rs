//! Reading a template: text in, one clear error or a template out.

use super::schema::{FORMAT, TemplateFile};
use super::template::Template;
use crate::finding::Finding;
use crate::words::Message;
use crate::{message, say};
use ron::extensions::Extensions;

/// Largest file that is read, bytes.
const MAX_BYTES: usize = 4 << 20;
/// Most panels of a file, before mirroring.
const MAX_PANELS: usize = 500;
/// Most points, curves, stances, wheels or features of a file.
const MAX_ENTRIES: usize = 5_000;
/// Most stances, before mirroring.
const MAX_STANCES: usize = 120;

/// Why a text is no template.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum TemplateError {
    /// The text is not RON of this format.
    #[error("{line}:{column}: {}{message}", place_prefix(.path))]
    Syntax {
        /// Line, from 1.
        line: usize,
        /// Column, from 1.
        column: usize,
        /// Where in the data: `panels[3].area_m2`; empty at the top.
        path: String,
        /// What is wrong, without a full stop.
        message: String,
    },
    /// The file is larger than anything a template needs.
    #[error("{}", say!("vehicle-too-many", what = .what.text(), limit = .limit, found = .found))]
    TooLarge {
        /// What there is too much of.
        what: Message,
        /// What is allowed.
        limit: usize,
        /// What there is.
        found: usize,
    },
    /// It is another format or another version.
    #[error("{}", say!("vehicle-wrong-format", format = .0))]
    Format(String),
    /// It could be read, but panels can't be built from it. Never empty.
    #[error("{}", first_of(.0))]
    Findings(Vec<Finding>),
    /// No template of this name comes with the program.
    #[error("{}", say!("vehicle-no-template", id = .0))]
    Unknown(String),
}

fn place_prefix(path: &str) -> String {
    if path.is_empty() || path == "." { String::new() } else { format!("{path}: ") }
}

fn first_of(findings: &[Finding]) -> String {
    let first = findings.first().map(ToString::to_string).unwrap_or_default();
    if findings.len() > 1 { say!("vehicle-and-more", first = first, count = findings.len() - 1) } else { first }
}

impl Template {
    /// Reads a template from the text of a `.ron` file.
    ///
    /// # Errors
    /// [`TemplateError::Syntax`] with line, column and field path; [`TemplateError::Findings`] with everything that keeps
    /// panels from being built. Faults of the drawing itself are for [`Template::check`].
    pub fn parse(text: &str) -> Result<Self, TemplateError> {
        super::build::build(&file(text)?)
    }
}

/// The data of a template file.
pub(super) fn file(text: &str) -> Result<TemplateFile, TemplateError> {
    if text.len() > MAX_BYTES {
        return Err(TemplateError::TooLarge {
            what: message!("vehicle-many-bytes"),
            limit: MAX_BYTES,
            found: text.len(),
        });
    }
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let options = ron::Options::default().with_default_extension(Extensions::IMPLICIT_SOME);
    let mut de = ron::Deserializer::from_str_with_options(text, &options).map_err(|e| syntax(&e, String::new()))?;
    let file: TemplateFile = serde_path_to_error::deserialize(&mut de).map_err(|e| {
        let path = e.path().to_string();
        syntax(&de.span_error(e.into_inner()), path)
    })?;
    de.end().map_err(|e| syntax(&de.span_error(e), String::new()))?;
    if file.format != FORMAT {
        return Err(TemplateError::Format(file.format));
    }
    let counts = [
        (message!("vehicle-many-panels"), file.panels.len(), MAX_PANELS),
        (message!("vehicle-many-points"), file.points.0.len(), MAX_ENTRIES),
        (message!("vehicle-many-lines"), file.lines.iter().map(|l| l.through.len()).sum(), MAX_ENTRIES),
        (message!("vehicle-many-curves"), file.curves.len(), MAX_ENTRIES),
        (message!("vehicle-many-stances"), file.stances.0.len(), MAX_STANCES),
        (message!("vehicle-many-wheels"), file.wheels.len(), MAX_PANELS),
        (message!("vehicle-many-features"), file.features.len(), MAX_ENTRIES),
        (message!("vehicle-many-outline-points"), file.panels.iter().map(|p| p.outline.len()).sum(), MAX_ENTRIES),
    ];
    match counts.into_iter().find(|(_, found, limit)| found > limit) {
        Some((what, found, limit)) => Err(TemplateError::TooLarge { what, limit, found }),
        None => Ok(file),
    }
}

fn syntax(e: &ron::error::SpannedError, path: String) -> TemplateError {
    let start = e.span.start;
    TemplateError::Syntax { line: start.line, column: start.col, path, message: e.code.to_string() }
}
