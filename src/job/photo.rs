//! The name of a picture that is kept beside the job.

use crate::say;
use serde::{Deserialize, Serialize};
use std::fmt;

/// A picture by the SHA-256 of its bytes, as 64 hexadecimal digits: the same picture is kept once, and no name from outside
/// ever becomes a path.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct PhotoId(String);

impl PhotoId {
    /// The name for a hash.
    pub fn of_hash(hash: [u8; 32]) -> Self {
        let digit = |half: u8| char::from_digit(u32::from(half), 16).unwrap_or('0');
        Self(hash.iter().flat_map(|byte| [digit(byte >> 4), digit(byte & 15)]).collect())
    }

    /// The digits.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl TryFrom<String> for PhotoId {
    type Error = String;

    fn try_from(text: String) -> Result<Self, String> {
        let is_hash = text.len() == 64 && text.bytes().all(|b| matches!(b, b'0'..=b'9' | b'a'..=b'f'));
        if is_hash { Ok(Self(text)) } else { Err(say!("job-picture-name").to_owned()) }
    }
}

impl From<PhotoId> for String {
    fn from(id: PhotoId) -> Self {
        id.0
    }
}

impl fmt::Display for PhotoId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}
