//! Names of panels and sides.

use serde::{Deserialize, Serialize};
use std::fmt;
use std::sync::Arc;

/// Name of a panel within its template, neutral to language and market: `bonnet-left`, `door-front-right`.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct PanelId(Arc<str>);

impl PanelId {
    /// Any text; whether a template has such a panel is for the template to say.
    pub fn new(text: impl Into<Arc<str>>) -> Self {
        Self(text.into())
    }

    /// The bare text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl fmt::Display for PanelId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.pad(&self.0)
    }
}
impl AsRef<str> for PanelId {
    fn as_ref(&self) -> &str {
        &self.0
    }
}
impl std::borrow::Borrow<str> for PanelId {
    fn borrow(&self) -> &str {
        &self.0
    }
}
impl From<&str> for PanelId {
    fn from(text: &str) -> Self {
        Self::new(text)
    }
}
impl From<String> for PanelId {
    fn from(text: String) -> Self {
        Self::new(text)
    }
}

/// Side of the vehicle as seen from the seat facing forward; never the driver's or the kerb's side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Side {
    /// Left of the centreline, +y.
    Left,
    /// Right of the centreline, -y.
    Right,
    /// Across the centreline.
    Centre,
}

impl Side {
    /// The other side; the centre is its own.
    #[must_use]
    pub fn opposite(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
            Self::Centre => Self::Centre,
        }
    }

    /// The ending of ids on this side; empty for the centre.
    pub(super) fn suffix(self) -> &'static str {
        match self {
            Self::Left => "-left",
            Self::Right => "-right",
            Self::Centre => "",
        }
    }
}
