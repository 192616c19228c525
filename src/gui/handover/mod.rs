//! Handing over: which sheet is shown and how, its pages as they are printed, and the big screen.

mod big_screen;
mod carry_out;
mod pages;
mod wish;

pub(super) use big_screen::big_screen_ui;
pub(super) use pages::pages_ui;
pub(super) use wish::{Form, HandoverWish, Which};

use crate::insight::{Insight, OrderRow, PolishOrder};
use crate::job::Job;
use crate::sheets::{self, MissingCharacters, Options, Pages, Sheet, SheetInput, missing_characters};
use crate::vehicle::Template;
use crate::words::{Language, language};
use pages::Preview;
use std::sync::Arc;

/// What is shown of the sheets.
#[derive(Debug, Default)]
pub(super) struct HandoverState {
    pub(super) which: Which,
    pub(super) options: Options,
    /// What was written last, as a sentence.
    pub(super) said: Option<String>,
    /// The plan being played over the map, and since when.
    playing: Option<f64>,
    built: Option<Built>,
}

/// A sheet and what it was made from.
#[derive(Debug)]
struct Built {
    from: From,
    sheet: Sheet,
    preview: Preview,
    missing: Vec<MissingCharacters>,
}

/// All that a sheet follows from.
#[derive(Debug, Clone)]
struct From {
    job: Arc<Job>,
    template: Arc<Template>,
    rows: Vec<OrderRow>,
    polishing: Option<Arc<PolishOrder>>,
    shop: String,
    which: Which,
    options: Options,
    language: Language,
}

impl From {
    fn is(&self, given: Given<'_>, which: Which, options: Options) -> bool {
        Arc::ptr_eq(&self.job, given.job)
            && Arc::ptr_eq(&self.template, given.template)
            && self.rows == given.rows
            && self.polishing.as_ref().map(Arc::as_ptr) == given.polishing.map(Arc::as_ptr)
            && self.shop == given.shop
            && (self.which, self.options, self.language) == (which, options, language())
    }
}

/// What the job gives to a sheet.
#[derive(Clone, Copy)]
pub(super) struct Given<'a> {
    pub(super) job: &'a Arc<Job>,
    pub(super) template: &'a Arc<Template>,
    pub(super) insight: &'a Insight,
    pub(super) rows: &'a [OrderRow],
    pub(super) polishing: Option<&'a Arc<PolishOrder>>,
    pub(super) shop: &'a str,
}

impl<'a> Given<'a> {
    pub(super) fn input(&self, options: Options) -> SheetInput<'a> {
        SheetInput {
            job: self.job,
            template: self.template,
            insight: self.insight,
            order: self.rows,
            polishing: self.polishing.map(|p| &**p),
            shop: self.shop,
            options,
        }
    }
}

impl HandoverState {
    /// Makes the sheet that is shown, where anything that it follows from has changed.
    pub(super) fn follow(&mut self, given: Given<'_>) {
        if self.built.as_ref().is_some_and(|built| built.from.is(given, self.which, self.options)) {
            return;
        }
        let from = From {
            job: Arc::clone(given.job),
            template: Arc::clone(given.template),
            rows: given.rows.to_vec(),
            polishing: given.polishing.cloned(),
            shop: given.shop.to_owned(),
            which: self.which,
            options: self.options,
            language: language(),
        };
        let sheet = self.sheet(given);
        let preview = Preview::of(&sheet.pages(self.options.paper));
        self.built = Some(Built { from, missing: missing_characters(&sheet), preview, sheet });
    }

    fn sheet(&self, given: Given<'_>) -> Sheet {
        let input = given.input(self.options);
        match self.which {
            Which::Customer => sheets::customer(&input),
            Which::Crew => sheets::crew(&input),
            Which::Record => sheets::record(&input),
        }
    }

    /// The pages that would be printed.
    fn pages(&self) -> Option<Pages> {
        self.built.as_ref().map(|b| b.sheet.pages(self.options.paper))
    }

    /// How many pages there are.
    pub(super) fn page_count(&self) -> usize {
        self.built.as_ref().map_or(0, |b| b.preview.pages.len())
    }

    /// What the letters of paper can't write.
    pub(super) fn missing(&self) -> &[MissingCharacters] {
        self.built.as_ref().map_or(&[], |b| &b.missing)
    }

    /// Whether the plan is being played for a customer.
    pub(super) fn is_on_big_screen(&self) -> bool {
        self.playing.is_some()
    }
}
