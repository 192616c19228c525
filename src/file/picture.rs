//! Taking in a photograph: turned upright, made smaller, and without anything that it says about where and when it was taken.

use super::photos::photo_id;
use crate::job::PhotoId;
use crate::say;
use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::{DynamicImage, ImageDecoder, ImageReader, Limits};
use std::io::Cursor;

/// A larger file is not opened.
pub const PICTURE_LIMIT_MIB: u64 = 48;
/// Longest side of a picture that is opened, in pixels, and most memory for it.
const LONGEST_SIDE: u32 = 12_000;
const MOST_MEMORY: u64 = 256 * 1024 * 1024;
/// Longest side of a picture as it is kept, in pixels.
pub const KEPT_SIDE: u32 = 1_600;
/// Quality of what is kept, of 100.
const QUALITY: u8 = 85;

/// A picture as it is kept.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Picture {
    /// Its name: the hash of `jpeg`.
    pub id: PhotoId,
    /// A JPEG file without any metadata.
    pub jpeg: Vec<u8>,
}

/// A picture ready to be shown: width, height, and four bytes a pixel.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Shown {
    /// Width and height in pixels.
    pub size: [usize; 2],
    /// Red, green, blue and opacity, row by row.
    pub rgba: Vec<u8>,
}

/// Takes in a JPEG or PNG file.
///
/// # Errors
/// Why it can't be taken, as a sentence without its stop.
pub fn take_picture(bytes: &[u8]) -> Result<Picture, String> {
    let picture = decode(bytes)?;
    let small = if picture.width().max(picture.height()) > KEPT_SIDE {
        picture.resize(KEPT_SIDE, KEPT_SIDE, FilterType::Triangle)
    } else {
        picture
    };
    let mut jpeg = Vec::new();
    JpegEncoder::new_with_quality(&mut jpeg, QUALITY)
        .encode_image(&small.to_rgb8())
        .map_err(|e| say!("file-picture-unwritten", why = e.to_string()))?;
    Ok(Picture { id: photo_id(&jpeg), jpeg })
}

/// A picture at most `side` pixels wide and high.
///
/// # Errors
/// Why it can't be shown.
pub fn show_picture(bytes: &[u8], side: u32) -> Result<Shown, String> {
    let picture = decode(bytes)?;
    let small = picture.thumbnail(side.min(picture.width()), side.min(picture.height())).to_rgba8();
    Ok(Shown { size: [small.width() as usize, small.height() as usize], rgba: small.into_raw() })
}

/// Decodes within limits and turns the picture upright. The limits are checked here as well, since the decoder alone does not
/// keep them all.
fn decode(bytes: &[u8]) -> Result<DynamicImage, String> {
    let unreadable = |e: image::ImageError| say!("file-picture-unreadable", why = e.to_string());
    let mut limits = Limits::default();
    limits.max_image_width = Some(LONGEST_SIDE);
    limits.max_image_height = Some(LONGEST_SIDE);
    limits.max_alloc = Some(MOST_MEMORY);
    let mut reader = ImageReader::new(Cursor::new(bytes))
        .with_guessed_format()
        .map_err(|e| say!("file-picture-no", why = e.to_string()))?;
    reader.limits(limits.clone());
    let mut decoder = reader.into_decoder().map_err(unreadable)?;
    let (width, height) = decoder.dimensions();
    if width.max(height) > LONGEST_SIDE || decoder.total_bytes() > MOST_MEMORY {
        return Err(say!("file-picture-pixels", width = width, height = height));
    }
    decoder.set_limits(limits).map_err(unreadable)?;
    let turned = decoder.orientation().map_err(unreadable)?;
    let mut picture = DynamicImage::from_decoder(decoder).map_err(unreadable)?;
    picture.apply_orientation(turned);
    Ok(picture)
}
