//! Where vehicle templates come from: those of the program first, then the user's own folder, one `ID.ron` each.
//!
//! The program's templates can't be replaced, so that a job means the same vehicle everywhere. An id is only ever letters, digits
//! and hyphens, so that no name in a job leads out of the folder.

use super::disk::{Disk, RealDisk, is_file};
use super::error::ReadError;
use super::load::read_text;
use super::save::{SaveError, Saved, write_text};
use crate::finding::Severity;
use crate::say;
use crate::vehicle::{self, Template, TemplateError};
use std::collections::BTreeMap;
use std::ffi::OsString;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Longest id, in characters.
const LONGEST_ID: usize = 64;

/// Where to look for vehicle templates. The default knows those of the program only.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Templates {
    folder: Option<PathBuf>,
}

/// A template that there is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Listed {
    /// Its id.
    pub id: String,
    /// Its name for people.
    pub name: String,
    /// Whether it lies in the user's folder.
    pub own: bool,
}

impl Templates {
    /// Those of the program and of a folder, which need not exist yet.
    pub fn in_folder(folder: impl Into<PathBuf>) -> Self {
        Self { folder: Some(folder.into()) }
    }

    /// Those of the program and of the user's own folder, `lapwright/vehicle-templates` where programs keep data.
    pub fn of_user() -> Self {
        Self { folder: user_folder("vehicle-templates", |name| std::env::var_os(name), cfg!(windows)) }
    }

    /// The folder of the user's own templates; none where the system names no place for one.
    pub fn folder(&self) -> Option<&Path> {
        self.folder.as_deref()
    }

    /// Every template there is: those of the program from small to large, then the user's own by name.
    ///
    /// Only the heads of the user's files are looked at; whether one can be used shows when it is loaded. Files whose names are no
    /// ids, or those of a template of the program, are left out.
    pub fn list(&self) -> Vec<Listed> {
        let program = vehicle::embedded().iter();
        let mut listed: Vec<Listed> =
            program.map(|e| Listed { id: e.id.to_owned(), name: e.name().to_owned(), own: false }).collect();
        listed.extend(self.own());
        listed
    }

    fn own(&self) -> Vec<Listed> {
        let files = self.folder.as_deref().and_then(|folder| RealDisk.list(folder).ok()).unwrap_or_default();
        let mut found = BTreeMap::new();
        for path in files {
            let id = path.file_stem().and_then(|stem| stem.to_str()).filter(|id| is_id(id) && !is_embedded(id));
            let Some(id) = id.filter(|_| path.extension().is_some_and(|ending| ending == "ron")) else { continue };
            let text = read_text(&RealDisk, &path).unwrap_or_default();
            let name = name_in(&text).unwrap_or_else(|| id.to_owned());
            found.insert((name.to_lowercase(), id.to_owned()), Listed { id: id.to_owned(), name, own: true });
        }
        found.into_values().collect()
    }

    /// Loads a template; `asker` is who names it, for an error about one that does not exist.
    ///
    /// # Errors
    /// [`ReadError::UnknownTemplate`]; for a file of the user's that can't be used, what is wrong with it, with file and place.
    pub fn load(&self, asker: &str, id: &str) -> Result<Arc<Template>, ReadError> {
        // A template of the program is sound, which a test makes sure of.
        if let Ok(template) = vehicle::load_embedded(id) {
            return Ok(template);
        }
        match self.path_of(id).filter(|path| is_file(&RealDisk, path)) {
            Some(path) => read_template(&path, id).map(Arc::new),
            None => Err(ReadError::UnknownTemplate {
                name: asker.to_owned(),
                template: id.to_owned(),
                known: self.list().into_iter().map(|l| l.id).collect::<Vec<_>>().join(", "),
            }),
        }
    }

    /// An id for a new template of this name that no other one has: its letters and digits, and a number where needed.
    pub fn free_id(&self, name: &str) -> String {
        let plain = |c: char| if c.is_ascii_alphanumeric() { c.to_ascii_lowercase() } else { ' ' };
        let words: String = name.chars().map(plain).collect();
        let stem = words.split_whitespace().collect::<Vec<_>>().join("-");
        let stem = if stem.is_empty() { "vehicle".to_owned() } else { stem.chars().take(LONGEST_ID - 5).collect() };
        let ids = std::iter::once(stem.clone()).chain((2..10_000).map(|n| format!("{stem}-{n}")));
        let is_free = |id: &String| {
            is_id(id)
                && !is_embedded(id)
                && !self.path_of(id).is_some_and(|path| !matches!(RealDisk.about(&path), Ok(None)))
        };
        ids.into_iter().find(is_free).unwrap_or(stem)
    }

    /// Writes a new template into the user's folder, which is made where it is missing.
    ///
    /// # Errors
    /// [`SaveError::NoFolder`]; [`SaveError::Taken`] where there is one of this id or name; [`SaveError::Faulty`] where its check
    /// finds a fault; [`SaveError::Text`] and [`SaveError::Disk`] as for a job. Nothing has then changed.
    pub fn save(&self, disk: &dyn Disk, template: &Template) -> Result<Saved, SaveError> {
        let folder = self.folder.as_deref().ok_or(SaveError::NoFolder)?;
        let taken = || SaveError::Taken(template.name.clone());
        let path = self.path_of(&template.id).filter(|_| !is_embedded(&template.id)).ok_or_else(taken)?;
        let unknown = |cause| SaveError::Disk { path: path.clone(), doing: say!("file-doing-looking-whether"), cause };
        if disk.about(&path).map_err(unknown)?.is_some() {
            return Err(taken());
        }
        if self.list().iter().any(|l| l.name.to_lowercase() == template.name.to_lowercase()) {
            return Err(taken());
        }
        disk.make_folder(folder).map_err(|cause| SaveError::Disk {
            path: folder.to_owned(),
            doing: say!("file-doing-making-folder"),
            cause,
        })?;
        write_template(disk, &path, template)
    }

    /// Writes a changed template of the user's over what it was, which is kept as `ID.ron~`.
    ///
    /// # Errors
    /// [`SaveError::NotOwn`] where the folder has none of this id; else as [`Templates::save`]. Nothing has then changed.
    pub fn replace(&self, disk: &dyn Disk, template: &Template) -> Result<Saved, SaveError> {
        write_template(disk, &self.own_path(&template.id)?, template)
    }

    /// Deletes a template of the user's: its file is kept as `ID.ron~`, which is not looked at.
    ///
    /// # Errors
    /// [`SaveError::NotOwn`]; [`SaveError::Disk`]. Nothing has then changed.
    pub fn delete(&self, disk: &dyn Disk, id: &str) -> Result<(), SaveError> {
        let path = self.own_path(id)?;
        let refused = |cause| SaveError::Disk { path: path.clone(), doing: say!("file-doing-putting-aside"), cause };
        disk.rename(&path, &path.with_extension("ron~")).map_err(refused)
    }

    fn own_path(&self, id: &str) -> Result<PathBuf, SaveError> {
        let path = self.path_of(id).filter(|path| !is_embedded(id) && is_file(&RealDisk, path));
        path.ok_or_else(|| SaveError::NotOwn(id.to_owned()))
    }

    /// The file of an id in the user's folder; none for what is no id.
    fn path_of(&self, id: &str) -> Option<PathBuf> {
        self.folder.as_ref().filter(|_| is_id(id)).map(|folder| folder.join(format!("{id}.ron")))
    }
}

/// Writes a template that is sound and reads back as itself.
fn write_template(disk: &dyn Disk, path: &Path, template: &Template) -> Result<Saved, SaveError> {
    if let Some(fault) = template.check().into_iter().find(|f| f.severity() == Severity::Fault) {
        return Err(SaveError::Faulty(Box::new(fault)));
    }
    let text = template.to_ron();
    let again = Template::parse(&text).map_err(|e| SaveError::Text(e.to_string()))?;
    if again.to_ron() != text || again.panels.len() != template.panels.len() {
        return Err(SaveError::Text(say!("file-reads-other-vehicle").to_owned()));
    }
    write_text(disk, path, &text)
}

/// Reads a user's file and makes sure that it can be used.
fn read_template(path: &Path, id: &str) -> Result<Template, ReadError> {
    let text = read_text(&RealDisk, path)?;
    let unusable = |cause: TemplateError| ReadError::Template { path: path.to_owned(), cause };
    let template = Template::parse(&text).map_err(unusable)?;
    if template.id != id {
        return Err(ReadError::OtherTemplate { path: path.to_owned(), inside: template.id, named: id.to_owned() });
    }
    let faults: Vec<_> = template.check().into_iter().filter(|f| f.severity() == Severity::Fault).collect();
    if faults.is_empty() { Ok(template) } else { Err(unusable(TemplateError::Findings(faults))) }
}

fn is_id(text: &str) -> bool {
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
    (1..=LONGEST_ID).contains(&text.len()) && text.chars().all(plain) && !is_device(text)
}

/// Names that mean a device on Windows, whatever ending they have. Source: Microsoft, "Naming Files, Paths, and Namespaces".
fn is_device(name: &str) -> bool {
    let numbered = name.strip_prefix("com").or_else(|| name.strip_prefix("lpt"));
    matches!(name, "con" | "prn" | "aux" | "nul")
        || numbered.is_some_and(|rest| rest.len() == 1 && rest.chars().all(|c| c.is_ascii_digit()))
}

fn is_embedded(id: &str) -> bool {
    vehicle::embedded().iter().any(|e| e.id == id)
}

/// The name that stands in the text of a template, found without building it.
fn name_in(text: &str) -> Option<String> {
    let line = text.lines().find_map(|l| l.trim().strip_prefix("name:"))?;
    let name = line.trim().trim_end_matches(',').strip_prefix('"')?.strip_suffix('"')?;
    Some(name.replace("\\\"", "\"").replace("\\\\", "\\")).filter(|name| !name.trim().is_empty())
}

/// The user's own folder for this program, `lapwright` where programs keep data; none where the system names no place for one.
pub fn data_folder(variable: impl Fn(&str) -> Option<OsString>, windows: bool) -> Option<PathBuf> {
    user_folder("", variable, windows)
}

/// Where the user keeps things of a kind. Source of the two names on Unix: XDG Base Directory Specification 0.8, which also says that a
/// path that is not absolute is to be ignored.
pub(super) fn user_folder(kind: &str, variable: impl Fn(&str) -> Option<OsString>, windows: bool) -> Option<PathBuf> {
    let data = user_folder_of("XDG_DATA_HOME", &[".local", "share"], "APPDATA", variable, windows);
    data.map(|data| data.join(kind))
}

/// The program's folder in the one that a variable names, else in one of the home folder; on Windows by another variable.
pub(super) fn user_folder_of(
    xdg: &str,
    below_home: &[&str],
    on_windows: &str,
    variable: impl Fn(&str) -> Option<OsString>,
    windows: bool,
) -> Option<PathBuf> {
    let path = |name: &str| variable(name).map(PathBuf::from).filter(|path| path.is_absolute());
    let folder = if windows {
        path(on_windows)
    } else {
        path(xdg).or_else(|| path("HOME").map(|home| home.join(below_home.iter().collect::<PathBuf>())))
    };
    folder.map(|folder| folder.join("lapwright"))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// An absolute path of any system.
    fn absolute(name: &str) -> PathBuf {
        std::env::temp_dir().join(name)
    }

    fn folder(variables: &[(&str, PathBuf)], windows: bool) -> Option<PathBuf> {
        let value = |name: &str| variables.iter().find(|(n, _)| *n == name).map(|(_, v)| v.clone().into_os_string());
        user_folder("vehicle-templates", value, windows)
    }

    #[test]
    fn the_folder_is_where_the_standard_says() {
        let (data, home) = (("XDG_DATA_HOME", absolute("data")), ("HOME", absolute("home")));
        let tail = Path::new("lapwright").join("vehicle-templates");
        assert_eq!(folder(&[data.clone(), home.clone()], false), Some(absolute("data").join(&tail)));
        let below_home = absolute("home").join(".local").join("share").join(&tail);
        assert_eq!(folder(std::slice::from_ref(&home), false), Some(below_home.clone()));
        assert_eq!(folder(&[("XDG_DATA_HOME", PathBuf::from("data")), home.clone()], false), Some(below_home));
        assert_eq!(folder(&[("APPDATA", absolute("roaming")), home], true), Some(absolute("roaming").join(&tail)));
        assert_eq!(folder(&[data], true), None);
        assert_eq!(folder(&[], false), None);
    }

    #[test]
    fn only_plain_names_are_ids() {
        for id in ["saloon", "our-van-2", "7", "console", "com10", "com-1"] {
            assert!(is_id(id), "{id}");
        }
        for text in [
            "",
            "..",
            "../saloon",
            "a/b",
            "a\\b",
            "C:van",
            "van.ron",
            "Van",
            "van ",
            "v\u{e4}n",
            "a\0b",
            "con",
            "com1",
            "lpt9",
        ] {
            assert!(!is_id(text), "{text:?}");
        }
        assert!(!is_id(&"a".repeat(LONGEST_ID + 1)));
    }
}
