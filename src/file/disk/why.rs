//! What a system says of a failure, in the language in use.

use crate::say;
use std::io::{Error, ErrorKind};

/// Why a call failed, as a part of a sentence: in the words of the program where it knows the kind, otherwise as the system says it,
/// without the system's number. Errors that the program made itself are in its words already.
pub fn why(error: &Error) -> String {
    let Some(number) = error.raw_os_error() else { return error.to_string() };
    let known = match error.kind() {
        ErrorKind::NotFound => say!("file-why-missing"),
        ErrorKind::PermissionDenied => say!("file-why-not-allowed"),
        ErrorKind::ReadOnlyFilesystem => say!("file-why-read-only"),
        ErrorKind::StorageFull => say!("file-why-full"),
        ErrorKind::QuotaExceeded => say!("file-why-quota"),
        ErrorKind::IsADirectory => say!("file-why-folder"),
        ErrorKind::NotADirectory => say!("file-why-no-folder"),
        ErrorKind::InvalidFilename => say!("file-why-name"),
        _ => {
            let said = error.to_string();
            let end = format!(" (os error {number})");
            return said.strip_suffix(&end).unwrap_or(&said).to_owned();
        }
    };
    known.to_owned()
}
