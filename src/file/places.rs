//! Where the program keeps things of its own: preferences, the list of recent jobs, what it has read of folders.

use super::templates::user_folder_of;
use std::path::{Path, PathBuf};

/// The folders; one is none where the system names no place for it.
///
/// **Source** of the names on Unix: XDG Base Directory Specification 0.8.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Places {
    /// For preferences.
    pub config: Option<PathBuf>,
    /// For what is remembered but was never set by anybody.
    pub state: Option<PathBuf>,
    /// For what can be made again.
    pub cache: Option<PathBuf>,
}

impl Places {
    /// Those of the user.
    pub fn of_user() -> Self {
        let place = |xdg, home: &[&str], windows| {
            user_folder_of(xdg, home, windows, |name| std::env::var_os(name), cfg!(windows))
        };
        Self {
            config: place("XDG_CONFIG_HOME", &[".config"], "APPDATA"),
            state: place("XDG_STATE_HOME", &[".local", "state"], "LOCALAPPDATA"),
            cache: place("XDG_CACHE_HOME", &[".cache"], "LOCALAPPDATA"),
        }
    }

    /// All of them below one folder.
    pub fn below(folder: &Path) -> Self {
        let place = |name: &str| Some(folder.join(name));
        Self { config: place("config"), state: place("state"), cache: place("cache") }
    }
}
