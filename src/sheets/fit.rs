//! How high a picture may be, so that the sheet it stands on ends on the page it should.

use super::input::SheetInput;
use super::model::{Block, Figure, Sheet};
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

/// Puts the picture in the place of the first figure of the sheet, as high as it may be. Answers whether the sheet then ends where it
/// should; if not, the picture is of its least height.
///
/// Where things stand follows from the room that the picture takes, so it is drawn once, when its size is known.
pub(super) fn fit(sheet: &mut Sheet, input: &SheetInput<'_>, fitting: &Fitting<'_>) -> bool {
    let Some(place) = sheet.blocks.iter().position(|b| matches!(b, Block::Figure(_))) else { return true };
    let (least, most) = fitting.heights;
    let mut fits = |height: &u8| {
        let room: Figure = room(input, fitting.scene, f32::from(*height));
        sheet.blocks[place] = Block::Figure(room);
        sheet.pages(input.options.paper).pages.len() <= fitting.pages
    };
    let found = (least..=most).rev().step_by(STEP).find(&mut fits);
    let height = f32::from(found.unwrap_or(least));
    sheet.blocks[place] = Block::Figure(drawn(input, fitting.scene, fitting.title, height, fitting.badge));
    found.is_some()
}
