//! From JSON text to a checked problem, with the place of whatever is wrong.

use super::problem::{Problem, ProblemErrors};
use super::spec::ProblemSpec;
use crate::finding::Finding;
use crate::say;

/// Why a text is not a crew problem.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum ReadError {
    /// Not JSON, or a field is missing, unknown or of the wrong type.
    #[error("{}", say!("crew-syntax", message = message, line = *line, column = *column, path = path))]
    Syntax {
        /// From 1.
        line: usize,
        /// From 1.
        column: usize,
        /// Field path such as `operations[3].duration_s`; `.` for the document itself.
        path: String,
        /// What the reader expected.
        message: String,
    },
    /// Well-formed, but not a problem that can be planned; all findings.
    #[error("{}", ProblemErrors::sentence(.0))]
    Invalid(Vec<Finding>),
}

impl Problem {
    /// Reads a `crew-problem/1` document.
    ///
    /// # Errors
    /// [`ReadError::Syntax`] for the first place that can't be read; [`ReadError::Invalid`] with everything wrong in a
    /// document that can.
    pub fn from_json(text: &str) -> Result<Self, ReadError> {
        let mut reader = serde_json::Deserializer::from_str(text);
        let spec: ProblemSpec = serde_path_to_error::deserialize(&mut reader).map_err(|error| {
            let path = error.path().to_string();
            syntax(&error.into_inner(), path)
        })?;
        reader.end().map_err(|error| syntax(&error, ".".to_owned()))?;
        Self::try_from(spec).map_err(|errors| ReadError::Invalid(errors.findings))
    }
}

fn syntax(error: &serde_json::Error, path: String) -> ReadError {
    let text = error.to_string();
    let message = text.split(" at line ").next().unwrap_or(&text).to_owned();
    ReadError::Syntax { line: error.line(), column: error.column(), path, message }
}
