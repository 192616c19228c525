//! How high a picture may be, so that the sheet it stands on ends on the page it should.

use super::input::SheetInput;
use super::model::{Block, Sheet};
use super::pictures::{drawn, room};
use crate::scene::MapScene;

/// Heights that are tried differ by so much, mm.
const STEP: usize = 4;

/// A picture whose height is still open.
pub(super) struct Fitting<'a> {
    pub(super) scene: &'a MapScene,
    pub(super) title: &'a str,
    /// Radius of its numbers, mm.
    pub(super) badge: f32,
    /// Least and greatest height without its legend, mm.
    pub(super) heights: (u8, u8),
    /// On how many pages the sheet is to end.
    pub(super) pages: usize,
}

/// How high the picture may be in the place of the first figure of the sheet, mm; none where the sheet does not end where it should even
/// with the least. The sheet has room for it then, with nothing drawn there: see [`draw`].
///
/// Where things stand follows from the room that the picture takes, so it is drawn once, when its size is known. A sheet with a higher
/// picture never has fewer pages.
pub(super) fn fit(sheet: &mut Sheet, input: &SheetInput<'_>, fitting: &Fitting<'_>) -> Option<f32> {
    let place = place(sheet)?;
    let (least, most) = fitting.heights;
    let heights: Vec<f32> = (least..=most).rev().step_by(STEP).map(f32::from).collect();
    let mut fits = |height: f32| {
        sheet.blocks[place] = Block::Figure(room(input, fitting.scene, height));
        sheet.pages(input.options.paper).pages.len() <= fitting.pages
    };
    let first = heights.partition_point(|height| !fits(*height));
    heights.get(first).copied()
}

/// Draws the picture as high as [`fit`] says, or of its least height.
pub(super) fn draw(sheet: &mut Sheet, input: &SheetInput<'_>, fitting: &Fitting<'_>, height: Option<f32>) {
    let height = height.unwrap_or(f32::from(fitting.heights.0));
    if let Some(place) = place(sheet) {
        sheet.blocks[place] = Block::Figure(drawn(input, fitting.scene, fitting.title, height, fitting.badge));
    }
}

fn place(sheet: &Sheet) -> Option<usize> {
    sheet.blocks.iter().position(|b| matches!(b, Block::Figure(_)))
}
