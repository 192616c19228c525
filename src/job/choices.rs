//! What people ask of the order of coating, beyond what the work itself asks.

use crate::vehicle::{PanelId, Side};
use serde::{Deserialize, Serialize};

/// Wishes about the order. None of them is asked by default: the planner is then free to find the best one.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct OrderChoices {
    /// Who begins where.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub begins: Vec<Beginning>,
    /// Panels that are applied before all others, in this order.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub first: Vec<PanelId>,
    /// The side of the vehicle that is applied before the other; never the centre.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub side: Option<Side>,
    /// Whether paint is applied before lamps and glass.
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    pub paint_first: bool,
}

/// The panel that somebody begins with.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Beginning {
    /// Name of the member of the crew.
    pub member: String,
    /// Their first panel.
    pub panel: PanelId,
}

impl OrderChoices {
    /// Whether nothing is asked.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// The panel that somebody begins with, if one was asked for.
    pub fn beginning_of(&self, member: &str) -> Option<&PanelId> {
        self.begins.iter().find(|b| b.member == member).map(|b| &b.panel)
    }

    /// With another beginning of a member, or none.
    #[must_use]
    pub fn with_beginning(mut self, member: &str, panel: Option<PanelId>) -> Self {
        self.begins.retain(|b| b.member != member);
        self.begins.extend(panel.map(|panel| Beginning { member: member.to_owned(), panel }));
        self
    }
}
