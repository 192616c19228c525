//! What several tests need: the sample, a builder of jobs with defaults, generated commands.
#![allow(dead_code, reason = "each test binary uses a part of it")]
#![allow(clippy::expect_used, clippy::panic, reason = "helpers of tests; clippy only sees test functions as tests")]

pub(crate) mod command;
pub(crate) mod job;
pub(crate) mod survey;

use lapwright::file::{Loaded, SAMPLE, job_from_text};
use lapwright::vehicle::{PanelId, Template, embedded, load_embedded};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// The embedded sample.
pub(crate) fn sample() -> Loaded {
    job_from_text("the sample", SAMPLE).expect("the sample loads")
}

/// Every embedded template.
pub(crate) fn templates() -> impl Iterator<Item = Arc<Template>> {
    embedded().iter().map(|e| load_embedded(e.id).expect("an embedded template loads"))
}

/// Index of a panel in its template.
pub(crate) fn index_of(template: &Template, panel: &str) -> usize {
    template.index_of(&PanelId::from(panel)).unwrap_or_else(|| panic!("no panel {panel}"))
}

/// The folder of the package.
pub(crate) fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// Every file below a folder with an ending, sorted.
pub(crate) fn files(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap_or_else(|e| panic!("{}: {e}", folder.display())) {
        let path = entry.expect("an entry").path();
        if path.is_dir() {
            found.extend(files(&path, ending));
        } else if path.extension().is_some_and(|e| e == ending) {
            found.push(path);
        }
    }
    found.sort();
    found
}
