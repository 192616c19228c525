//! The vehicles that there are: found when the window opens, loaded when they are first needed, kept for undo.

use crate::file::{Listed, ReadError, Templates, sized};
use crate::job::Vehicle;
use crate::say;
use crate::vehicle::{Size, Template};
use std::collections::BTreeMap;
use std::sync::Arc;

/// The vehicles that there are.
#[derive(Debug)]
pub(super) struct Bodies {
    templates: Templates,
    listed: Vec<Listed>,
    loaded: BTreeMap<String, Arc<Template>>,
    shown: (String, Option<Size>),
}

impl Bodies {
    /// What there is, and which of it a window shows now.
    pub(super) fn new(templates: Templates, shown: &Vehicle) -> Self {
        let shown = (shown.template.clone(), shown.size_mm);
        Self { listed: templates.list(), templates, loaded: BTreeMap::new(), shown }
    }

    /// Where they come from.
    pub(super) fn templates(&self) -> &Templates {
        &self.templates
    }

    /// Every one by name.
    pub(super) fn listed(&self) -> &[Listed] {
        &self.listed
    }

    /// One of them in its own size.
    pub(super) fn load(&mut self, id: &str) -> Result<Arc<Template>, ReadError> {
        if let Some(template) = self.loaded.get(id) {
            return Ok(Arc::clone(template));
        }
        let template = self.templates.load(say!("window-the-vehicle"), id)?;
        self.loaded.insert(id.to_owned(), Arc::clone(&template));
        Ok(template)
    }

    /// The template of a job's vehicle, if it is another one or of another size than the one shown last.
    pub(super) fn if_other(&mut self, vehicle: &Vehicle) -> Option<Result<Arc<Template>, ReadError>> {
        let wanted = (vehicle.template.clone(), vehicle.size_mm);
        if self.shown == wanted {
            return None;
        }
        let template = self.load(&vehicle.template);
        Some(template.map(|template| {
            let template = sized(template, vehicle.size_mm);
            self.shown = wanted;
            template
        }))
    }

    /// Takes in one that was just saved.
    pub(super) fn add(&mut self, template: Arc<Template>) {
        self.loaded.insert(template.id.clone(), template);
        self.listed = self.templates.list();
    }

    /// The user's own one of an id.
    pub(super) fn own(&self, id: &str) -> Option<&Listed> {
        self.listed.iter().find(|l| l.own && l.id == id)
    }

    /// Takes in one of the user's own that was saved over what it was.
    pub(super) fn replace(&mut self, template: Arc<Template>) {
        // What is shown is the old one, even though it has the same id.
        self.shown.0.clear();
        self.add(template);
    }

    /// Looks again after one was deleted. It stays loaded, so that undo can lead back to it.
    pub(super) fn list_again(&mut self) {
        self.listed = self.templates.list();
    }

    /// A name for a changed copy that none has yet: "Four-door saloon 2".
    pub(super) fn free_name(&self, name: &str) -> String {
        let stem = name.trim_end_matches(|c: char| c.is_ascii_digit()).trim_end();
        let is_free = |name: &String| self.listed.iter().all(|l| l.name.to_lowercase() != name.to_lowercase());
        (2..10_000).map(|n| format!("{stem} {n}")).find(is_free).unwrap_or_default()
    }
}
