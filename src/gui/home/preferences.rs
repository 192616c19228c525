//! What somebody prefers, kept from one time to the next.

use crate::file::{Disk, Kept, SaveError, Saved, keep, kept};
use crate::geometry::Orientation;
use crate::gui::theme::Theme;
use crate::job::{Member, Role};
use crate::say;
use crate::units::{ShownUnits, TemperatureUnit, ThicknessUnit, VolumeUnit};
use crate::vehicle::Naming;
use crate::words::Language;
use serde::{Deserialize, Serialize};
use std::path::{Path, PathBuf};

/// Name of the file in the folder for preferences.
pub(in crate::gui) const FILE: &str = "preferences.ron";

/// The preferences. A field that is left out is as usual; one that is not known makes the file a broken one.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub(in crate::gui) struct Preferences {
    pub(in crate::gui) film: ThicknessUnit,
    pub(in crate::gui) temperature: TemperatureUnit,
    pub(in crate::gui) volume: VolumeUnit,
    pub(in crate::gui) names: Naming,
    /// None: what the system says.
    pub(in crate::gui) language: Option<Language>,
    pub(in crate::gui) theme: Theme,
    /// Size of everything in per cent.
    #[serde(deserialize_with = "scale")]
    pub(in crate::gui) scale_pct: u16,
    /// Larger things to press.
    pub(in crate::gui) large_targets: bool,
    pub(in crate::gui) front: Orientation,
    /// Who works on a new job; empty for the crew of the sample.
    #[serde(deserialize_with = "crew")]
    pub(in crate::gui) crew: Vec<Member>,
    /// Who does the work and how to reach them, as it stands on sheets; may be empty.
    pub(in crate::gui) shop: String,
    /// Where the jobs of the shop are.
    pub(in crate::gui) folder_of_jobs: Option<PathBuf>,
    /// Whether the hints of the first time have been seen.
    pub(in crate::gui) hints_seen: bool,
}

impl Default for Preferences {
    fn default() -> Self {
        Self {
            film: ThicknessUnit::default(),
            temperature: TemperatureUnit::default(),
            volume: VolumeUnit::default(),
            names: Naming::default(),
            language: None,
            theme: Theme::default(),
            scale_pct: 100,
            large_targets: false,
            front: Orientation::default(),
            crew: Vec::new(),
            shop: String::new(),
            folder_of_jobs: None,
            hints_seen: false,
        }
    }
}

/// Sizes of everything that can be chosen, in per cent.
pub(in crate::gui) const SCALES: [u16; 6] = [75, 100, 125, 150, 175, 200];

impl Preferences {
    /// Those of a folder, and what to say where they could not be read.
    pub(super) fn read(disk: &dyn Disk, folder: &Path) -> (Self, Option<String>) {
        match kept(disk, &folder.join(FILE)) {
            Kept::Nothing => (Self::default(), None),
            Kept::Read(read) => (read, None),
            Kept::Broken(why) => {
                let said = say!("home-unread", why = why);
                // Somebody who has preferences has been here before.
                (Self { hints_seen: true, ..Self::default() }, Some(said))
            }
        }
    }

    /// Writes them.
    pub(super) fn write(&self, disk: &dyn Disk, folder: &Path) -> Result<Saved, SaveError> {
        keep(disk, &folder.join(FILE), self)
    }

    /// The units of what is shown.
    pub(in crate::gui) fn units(&self) -> ShownUnits {
        ShownUnits { film: self.film, temperature: self.temperature, volume: self.volume }
    }

    /// The next size up or down.
    pub(in crate::gui) fn next_scale(&self, up: bool) -> Option<u16> {
        let mut larger = SCALES.into_iter().filter(|s| *s > self.scale_pct);
        let smaller = SCALES.into_iter().rev().find(|s| *s < self.scale_pct);
        if up { larger.next() } else { smaller }
    }
}

fn scale<'de, D: serde::Deserializer<'de>>(from: D) -> Result<u16, D::Error> {
    let value = u16::deserialize(from)?;
    let fits = (SCALES[0]..=SCALES[SCALES.len() - 1]).contains(&value);
    fits.then_some(value).ok_or_else(|| serde::de::Error::custom(say!("home-bad-size", value = value)))
}

fn crew<'de, D: serde::Deserializer<'de>>(from: D) -> Result<Vec<Member>, D::Error> {
    let crew = Vec::<Member>::deserialize(from)?;
    let can = |role: Role| crew.iter().any(|m| m.roles.contains(&role));
    let alike = crew.iter().enumerate().any(|(i, a)| crew[..i].iter().any(|b| a.name == b.name));
    let works = crew.is_empty() || (can(Role::Apply) && can(Role::Level) && !alike && crew.len() <= 4);
    works.then_some(crew).ok_or_else(|| serde::de::Error::custom(say!("home-bad-crew")))
}
