//! A sheet as headings, paragraphs, lists, tables and pictures: what it says, before anybody knows where it stands.

use super::page::Item;
use crate::words::language;

/// A sheet.
#[derive(Debug, Clone, PartialEq)]
pub struct Sheet {
    /// What it is called; stands in the foot of every page.
    pub title: String,
    /// The code of the job.
    pub code: String,
    /// Language tag (BCP 47).
    pub language: &'static str,
    /// Whether it is set in smaller type, since it has much to say on few pages.
    pub dense: bool,
    /// Its parts in the order of reading.
    pub blocks: Vec<Block>,
}

/// A part of a sheet.
#[derive(Debug, Clone, PartialEq)]
pub enum Block {
    /// A heading of level 1 (the title), 2 or 3.
    Heading(u8, String),
    /// A paragraph.
    Text(String),
    /// A paragraph in small print.
    Small(String),
    /// A list.
    List(Vec<String>),
    /// Names and what they are, one below the other.
    Facts(Vec<(String, String)>),
    /// A table.
    Table(Table),
    /// A picture.
    Figure(Figure),
    /// Lines to be filled in by hand, side by side.
    FillIn(Vec<String>),
    /// The rest begins on a new page.
    NewPage,
}

/// A table.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// The columns.
    pub columns: Vec<Column>,
    /// Rows of as many cells.
    pub rows: Vec<Vec<String>>,
    /// How large it is set.
    pub size: TextSize,
}

/// A column.
#[derive(Debug, Clone, PartialEq)]
pub struct Column {
    /// Its head.
    pub head: String,
    /// Whether it holds figures, which stand at the right.
    pub figures: bool,
    /// Its share of what the columns that are as wide as their content leave; 0 for one of those.
    pub share: f32,
}

/// How large a text is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TextSize {
    /// For long lists.
    Small,
    /// For reading.
    Normal,
    /// To be read from two metres.
    Large,
}

/// A picture.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Figure {
    /// A short name.
    pub title: String,
    /// What it shows, in words.
    pub words: String,
    /// Width, mm.
    pub width: f32,
    /// Height, mm.
    pub height: f32,
    /// What is drawn, from its upper left corner.
    pub items: Vec<Item>,
}

impl Table {
    /// A table without rows.
    pub(super) fn new(size: TextSize, columns: &[(&str, bool, f32)]) -> Self {
        let column = |(head, figures, share): &(&str, bool, f32)| Column {
            head: (*head).to_owned(),
            figures: *figures,
            share: *share,
        };
        Self { columns: columns.iter().map(column).collect(), rows: Vec::new(), size }
    }

    /// Adds a row.
    pub(super) fn row<const N: usize>(&mut self, cells: [String; N]) {
        self.rows.push(cells.to_vec());
    }
}

impl Sheet {
    /// A sheet that says nothing yet.
    pub(super) fn new(title: impl Into<String>, code: String) -> Self {
        Self { title: title.into(), code, language: language().tag(), dense: false, blocks: Vec::new() }
    }

    pub(super) fn heading(&mut self, level: u8, text: impl Into<String>) {
        self.blocks.push(Block::Heading(level, text.into()));
    }

    pub(super) fn text(&mut self, text: impl Into<String>) {
        self.blocks.push(Block::Text(text.into()));
    }

    pub(super) fn small(&mut self, text: impl Into<String>) {
        self.blocks.push(Block::Small(text.into()));
    }

    /// Adds a list, if there is anything on it.
    pub(super) fn list(&mut self, items: Vec<String>) {
        if !items.is_empty() {
            self.blocks.push(Block::List(items));
        }
    }

    /// Adds the facts that say something.
    pub(super) fn facts(&mut self, facts: Vec<(&str, String)>) {
        let told = facts.into_iter().filter(|(_, what)| !what.trim().is_empty());
        let told: Vec<_> = told.map(|(name, what)| (name.to_owned(), what)).collect();
        if !told.is_empty() {
            self.blocks.push(Block::Facts(told));
        }
    }

    /// Adds a table, if it has rows.
    pub(super) fn table(&mut self, table: Table) {
        if !table.rows.is_empty() {
            self.blocks.push(Block::Table(table));
        }
    }

    /// Every text with the part it stands in, for whoever looks for something in them.
    pub fn texts(&self) -> Vec<(String, &str)> {
        let mut place = self.title.clone();
        let mut found = Vec::new();
        for block in &self.blocks {
            if let Block::Heading(_, text) = block {
                place.clone_from(text);
            }
            found.extend(block.texts().into_iter().map(|text| (place.clone(), text)));
        }
        found
    }
}

impl Block {
    fn texts(&self) -> Vec<&str> {
        match self {
            Self::Heading(_, text) | Self::Text(text) | Self::Small(text) => vec![text],
            Self::List(items) | Self::FillIn(items) => items.iter().map(String::as_str).collect(),
            Self::Facts(facts) => facts.iter().flat_map(|(name, what)| [name.as_str(), what.as_str()]).collect(),
            Self::Table(table) => {
                let heads = table.columns.iter().map(|c| c.head.as_str());
                heads.chain(table.rows.iter().flatten().map(String::as_str)).collect()
            }
            Self::Figure(figure) => {
                let runs = figure
                    .items
                    .iter()
                    .filter_map(|i| if let Item::Text(run) = i { Some(run.text.as_str()) } else { None });
                [figure.title.as_str(), figure.words.as_str()].into_iter().chain(runs).collect()
            }
            Self::NewPage => Vec::new(),
        }
    }
}
