//! Which neighbours would look different after polishing.

use super::PanelInsight;
use crate::polish::{Beside, SeamDifference, seam_differences};
use crate::vehicle::{Surface, Template};

/// Every seam across which the finish would visibly differ; each pair of panels once, the one with the lower place first.
///
/// Panels that are not polished because of what they are (glass, trim, film, matte) are not held against paint.
pub(super) fn differences(template: &Template, panels: &[PanelInsight]) -> Vec<SeamDifference> {
    let beside: Vec<Beside<'_>> = template
        .panels
        .iter()
        .zip(panels)
        .map(|(panel, insight)| Beside {
            name: panel.id.as_str(),
            plan: &insight.polish,
            painted: panel.surface == Surface::Paint && insight.finish.refusal().is_none(),
        })
        .collect();
    let pairs = (0..panels.len()).flat_map(|a| template.neighbours(a).iter().map(move |&b| (a, b)));
    let pairs: Vec<(usize, usize)> = pairs.filter(|(a, b)| a < b).collect();
    seam_differences(&beside, &pairs)
}
