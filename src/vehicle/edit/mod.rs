//! Changing a template: pure functions that give a new one and leave the old one as it was.
//!
//! The drawing is symmetric, so what changes it (splitting, merging) changes both sides alike. What a panel is (its substrate,
//! why it is left out) is changed on the one side that was named.

mod merge;
mod outline;
mod split;

use super::build::build;
use super::entries::{Name, Number};
use super::id::{PanelId, Side};
use super::panel::{Skip, Substrate};
use super::read::TemplateError;
use super::schema::{PanelEntry, Sides, TemplateFile};
use super::template::Template;
use crate::finding::{Finding, Severity};
use crate::geometry::FloorPoint;
use crate::say;

/// Why a template can't be changed like that.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
pub enum EditError {
    /// There is no panel of this id.
    #[error("{}", say!("vehicle-no-panel-of-id", id = .0.as_str()))]
    UnknownPanel(PanelId),
    /// There is no stance of this id.
    #[error("{}", say!("vehicle-no-stance-of-id", id = .0))]
    UnknownStance(String),
    /// The two panels do not share a seam, or not one that can be taken away.
    #[error("{}", say!("vehicle-not-neighbours", one = .0.as_str(), other = .1.as_str()))]
    NotNeighbours(PanelId, PanelId),
    /// The line does not cut the panel in two.
    #[error("{}", say!("vehicle-no-cut", id = .0.as_str()))]
    NoCut(PanelId),
    /// A panel across the centreline can't be cut by a line that is mirrored.
    #[error("{}", say!("vehicle-across-centre", id = .0.as_str()))]
    AcrossCentre(PanelId),
    /// The changed drawing would have faults. Never empty.
    #[error("{}", say!("vehicle-leaves-fault", fault = .0.first().map(ToString::to_string).unwrap_or_default()))]
    Faults(Vec<Finding>),
    /// The changed template can't be built.
    #[error(transparent)]
    Template(#[from] TemplateError),
}

impl Template {
    /// The template under another id and name, to be saved as a new one.
    ///
    /// What an id can't hold becomes a hyphen.
    #[must_use]
    pub fn with_name(&self, id: &str, name: &str) -> Self {
        let mut changed = self.clone();
        changed.file.id = Name::made(id);
        name.clone_into(&mut changed.file.name);
        changed.file.id.as_str().clone_into(&mut changed.id);
        name.clone_into(&mut changed.name);
        changed
    }

    /// One panel made of something else.
    ///
    /// # Errors
    /// [`EditError::UnknownPanel`].
    pub fn with_substrate(&self, panel: &PanelId, substrate: Substrate) -> Result<Self, EditError> {
        self.with_entry(panel, |entry| entry.substrate = substrate)
    }

    /// One panel left out of the work, or taken in again with `None`.
    ///
    /// # Errors
    /// [`EditError::UnknownPanel`].
    pub fn with_skip(&self, panel: &PanelId, skip: Option<Skip>) -> Result<Self, EditError> {
        self.with_entry(panel, |entry| entry.skip = skip)
    }

    /// One stance moved to another place on the floor; its mirror image moves alike.
    ///
    /// A stance on the centreline keeps to it.
    ///
    /// # Errors
    /// [`EditError::UnknownStance`]; [`EditError::Faults`] where nobody can stand.
    pub fn with_stance(&self, stance: &str, at: FloorPoint) -> Result<Self, EditError> {
        let unknown = || EditError::UnknownStance(stance.to_owned());
        let built = self.stances.iter().find(|s| s.id == stance).ok_or_else(unknown)?;
        let side = match built.at.y {
            y if y > 0.0 => Side::Left,
            y if y < 0.0 => Side::Right,
            _ => Side::Centre,
        };
        let stem = stance.strip_suffix(side.suffix()).ok_or_else(unknown)?;
        let mut file = self.file.clone();
        let entry = file.stances.0.iter_mut().find(|(n, _)| n.as_str() == stem).ok_or_else(unknown)?;
        let y = match side {
            Side::Left => at.y.max(1.0),
            Side::Right => (-at.y).max(1.0),
            Side::Centre => 0.0,
        };
        entry.1 = (Number::rounded(f64::from(at.x)), Number::rounded(f64::from(y)));
        self.sound(&file)
    }

    /// One panel worked from another stance: that of the same name on the panel's own side.
    ///
    /// # Errors
    /// [`EditError::UnknownPanel`]; [`EditError::UnknownStance`], also where the stance is only on the other side.
    pub fn with_stance_of(&self, panel: &PanelId, stance: &str) -> Result<Self, EditError> {
        let unknown = || EditError::UnknownStance(stance.to_owned());
        let of_panel = self.panel(panel).ok_or_else(|| EditError::UnknownPanel(panel.clone()))?;
        let (_, side) =
            self.stances_for(of_panel.side).find(|(i, _)| self.stances[*i].id == stance).ok_or_else(unknown)?;
        let stem = stance.strip_suffix(side.suffix()).ok_or_else(unknown)?;
        let changed = self.with_entry(panel, |entry| entry.stance = Name::made(stem))?;
        self.sound(&changed.file)
    }

    /// The stances that a panel of a side can be worked from, as indices into the stances, each with its own side: those of that
    /// side and those on the centreline. A panel across the centreline is worked from the left where there is a choice.
    pub fn stances_for(&self, side: Side) -> impl Iterator<Item = (usize, Side)> {
        let sides = self.stances.iter().map(|stance| match stance.at.y {
            y if y > 0.0 => Side::Left,
            y if y < 0.0 => Side::Right,
            _ => Side::Centre,
        });
        let own = if side == Side::Right { Side::Right } else { Side::Left };
        sides.enumerate().filter(move |(_, s)| *s == own || *s == Side::Centre)
    }

    /// The entry of a panel and the side that was meant.
    fn entry_of(&self, panel: &PanelId) -> Result<(usize, Side), EditError> {
        let unknown = || EditError::UnknownPanel(panel.clone());
        let side = self.panel(panel).ok_or_else(unknown)?.side;
        let fits = |e: &PanelEntry| {
            let on_side = match e.side {
                Sides::Both => side != Side::Centre,
                Sides::Left => side == Side::Left,
                Sides::Right => side == Side::Right,
                Sides::Centre => side == Side::Centre,
            };
            on_side && panel.as_str().strip_suffix(side.suffix()) == Some(e.id.as_str())
        };
        self.file.panels.iter().position(fits).map(|i| (i, side)).ok_or_else(unknown)
    }

    /// Changes one panel; an entry for both sides becomes one for each first.
    fn with_entry(&self, panel: &PanelId, change: impl FnOnce(&mut PanelEntry)) -> Result<Self, EditError> {
        let (index, side) = self.entry_of(panel)?;
        let mut file = self.file.clone();
        let mut at = index;
        if file.panels[index].side == Sides::Both {
            let mut right = file.panels[index].clone();
            right.side = Sides::Right;
            file.panels[index].side = Sides::Left;
            file.panels.insert(index + 1, right);
            at += usize::from(side == Side::Right);
        }
        change(&mut file.panels[at]);
        if at > 0 {
            join_sides(&mut file, at - 1);
        }
        join_sides(&mut file, at);
        rebuilt(&file)
    }

    /// Builds a changed file and makes sure that it has no faults that this template does not have.
    fn sound(&self, file: &TemplateFile) -> Result<Self, EditError> {
        let changed = rebuilt(file)?;
        let old: Vec<Finding> = self.check();
        let serious = |f: &Finding| f.severity() == Severity::Fault && !old.contains(f);
        let new: Vec<Finding> = changed.check().into_iter().filter(serious).collect();
        if new.is_empty() { Ok(changed) } else { Err(EditError::Faults(new)) }
    }
}

/// Makes one entry of a left and a right one that have become equal again.
fn join_sides(file: &mut TemplateFile, left: usize) {
    let Some([a, b]) = file.panels.get(left..left + 2).and_then(|pair| <&[PanelEntry; 2]>::try_from(pair).ok()) else {
        return;
    };
    let as_left = PanelEntry { side: Sides::Left, ..b.clone() };
    if a.side == Sides::Left && b.side == Sides::Right && *a == as_left {
        file.panels[left].side = Sides::Both;
        file.panels.remove(left + 1);
    }
}

/// The template of a changed file.
pub(super) fn rebuilt(file: &TemplateFile) -> Result<Template, EditError> {
    Ok(build(file)?)
}
