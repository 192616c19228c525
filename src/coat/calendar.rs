//! What happens to the vehicle after the last panel is levelled.

use super::product::Product;
use crate::units::Seconds;
use crate::words::Message;
use crate::{message, say};

/// A moment after the end of the work, from which something is allowed or over.
#[derive(Debug, Clone, PartialEq)]
pub struct Milestone {
    /// Seconds after the last panel was levelled.
    pub after_s: Seconds,
    /// What is allowed from then on, in plain words.
    pub what: String,
}

/// Days in which fresh coating picks up dust; common practice, no source.
const DUST_DAYS: Seconds = 2;
const DAY: Seconds = 24 * 3600;

/// The milestones of a product in the order of time; equal ones keep this order: drive, rain, dust, wash, full hardness.
///
/// The figures are the product's, from its label where the shop entered it. They are not shortened by warmth: the label holds.
pub fn cure_calendar(product: &Product) -> Vec<Milestone> {
    let mut milestones = vec![
        Milestone { after_s: product.drive_s, what: say!("coat-may-drive").to_owned() },
        Milestone { after_s: product.rain_s, what: say!("coat-may-rain").to_owned() },
        Milestone { after_s: DUST_DAYS * DAY, what: say!("coat-no-dust").to_owned() },
        Milestone { after_s: product.wash_s, what: say!("coat-may-wash").to_owned() },
        Milestone { after_s: product.full_cure_s, what: say!("coat-full-hardness").to_owned() },
    ];
    milestones.sort_by_key(|m| m.after_s);
    milestones
}

/// What the owner does about bird droppings before washing is allowed; common practice, no source.
pub const DROPPINGS_ADVICE: Message = message!("coat-droppings");
