//! Paper: what is handed to the customer, to the crew, and kept for the next visit. Drawn once, written as PDF, HTML, SVG, PNG.
//!
//! [`customer()`], [`crew()`] and [`record()`] say what stands on a sheet ([`Sheet`]: headings, tables, pictures). [`Sheet::pages`] says where
//! it stands ([`Pages`]: lists of paths and lines of text in mm), and [`pdf()`] and [`png()`] only draw that; a preview that draws the same
//! pages shows exactly what is printed. [`html()`] is written from the sheet itself. The pictures are those of `scene`.
//!
//! No clock and no files: the same job gives the same bytes.

mod calendar;
mod crew;
mod crew_list;
mod customer;
mod fit;
mod font;
mod html;
mod input;
mod layout;
mod lines;
mod map;
mod missing;
mod model;
mod page;
mod palette;
mod pdf;
mod pictures;
mod png;
mod record;
mod svg;

pub use calendar::{calendar, calendar_stamp, care};
pub use crew::crew;
pub use crew_list::{CrewListError, crew_list, spreadsheet_cell};
pub use customer::customer;
pub use html::html;
pub use input::{Options, SheetInput, job_code};
pub use map::{MapStyle, figure as map_figure};
pub use missing::{MissingCharacters, missing_characters};
pub use model::{Block, Column, Figure, Sheet, Table, TextSize};
pub use page::{Drawn, Item, Line, Page, Pages, Paper, PaperPoint, PaperSpace, Part, PartKind, Piece, Run};
pub use palette::Rgb;
pub use pdf::{PdfError, pdf};
pub use pictures::map_picture;
pub use png::{PngError, figure_png, png};
pub use record::record;
pub use svg::svg;

impl Sheet {
    /// Sets the sheet on paper.
    pub fn pages(&self, paper: Paper) -> Pages {
        layout::pages(self, paper)
    }
}
