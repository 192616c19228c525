//! Contrast of every text as it is drawn, in every theme (1.4.3): at least 4.5:1, for large text 3:1.
//!
//! The window is painted shape by shape; where a text comes, its colour is held against what lies there by then. Text that is
//! covered later, as below a question, and text of what can't be used now is left out, as the standard does.

use super::super::raster::Raster;
use super::scenes::{SIZE, every_scene};
use super::{Window, nothing_in};
use eframe::egui::epaint::TextShape;
use eframe::egui::{Color32, FontFamily, Pos2, Rect, Shape};
use egui_kittest::kittest::NodeT;
use image::RgbaImage;
use lapwright::gui::{Theme, set_theme};

/// WCAG 2.2, "relative luminance".
fn luminance(colour: [f64; 3]) -> f64 {
    let channel = |v: f64| if v <= 0.04045 { v / 12.92 } else { ((v + 0.055) / 1.055).powf(2.4) };
    0.2126 * channel(colour[0]) + 0.7152 * channel(colour[1]) + 0.0722 * channel(colour[2])
}

/// WCAG 2.2, "contrast ratio".
fn ratio(a: f64, b: f64) -> f64 {
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

/// A letter on what lies below it.
struct Letter {
    text: String,
    area: Rect,
    ink: Color32,
    /// Mean colour below it when it was drawn, 0 to 1.
    ground: [f64; 3],
    least: f64,
}

/// The mean colour of a place; none outside the picture.
fn mean(picture: &RgbaImage, area: Rect) -> Option<[f64; 3]> {
    let (mut sum, mut count) = ([0.0; 3], 0.0);
    for y in area.top().max(0.0) as u32..(area.bottom().max(0.0) as u32 + 1).min(picture.height()) {
        for x in area.left().max(0.0) as u32..(area.right().max(0.0) as u32 + 1).min(picture.width()) {
            for (sum, value) in sum.iter_mut().zip(picture.get_pixel(x, y).0) {
                *sum += f64::from(value) / 255.0;
            }
            count += 1.0;
        }
    }
    (count > 0.0).then(|| sum.map(|sum| sum / count))
}

/// The letters of a text, each word by its first.
fn letters(text: &TextShape, clip: Rect, picture: &RgbaImage, found: &mut Vec<Letter>) {
    if text.angle != 0.0 {
        return;
    }
    let job = &text.galley.job;
    let mut at = 0; // in bytes of the text
    for row in &text.galley.rows {
        let mut before = ' ';
        for glyph in &row.glyphs {
            let begins = before == ' ' && !glyph.chr.is_whitespace();
            before = if glyph.chr.is_whitespace() { ' ' } else { glyph.chr };
            let section = job.sections.iter().find(|s| s.byte_range.end.0 > at).or(job.sections.last());
            let Some(format) = section.map(|section| &section.format) else { continue };
            at += glyph.chr.len_utf8();
            let height = format.font_id.size;
            // From the baseline to the height of small letters.
            let foot = text.pos + row.pos.to_vec2() + glyph.pos.to_vec2();
            let area = Rect::from_min_max(
                foot - eframe::egui::vec2(0.0, height * 0.5),
                foot + eframe::egui::vec2(glyph.advance_width, 0.0),
            );
            if !begins || !clip.contains_rect(area) {
                continue;
            }
            let own = if format.color == Color32::PLACEHOLDER { text.fallback_color } else { format.color };
            let ink = text.override_text_color.unwrap_or(own).gamma_multiply(text.opacity_factor);
            let is_bold = format.font_id.family != FontFamily::Proportional;
            // "Large" is 18 pt, or 14 pt in bold, a point being 1.333 px.
            let is_large = height >= 24.0 || (is_bold && height >= 18.66);
            let Some(ground) = mean(picture, area) else { continue };
            let text = text.galley.text().to_owned();
            found.push(Letter { text, area, ink, ground, least: if is_large { 3.0 } else { 4.5 } });
        }
        at += usize::from(row.ends_with_newline);
    }
}

/// Takes texts out of a shape.
fn texts(shape: &Shape, out: &mut Vec<TextShape>) {
    match shape {
        Shape::Text(text) => out.push(text.clone()),
        Shape::Vec(shapes) => {
            for shape in shapes {
                texts(shape, out);
            }
        }
        _ => {}
    }
}

/// What reads too badly in a window.
fn too_weak(window: &Window, size: [f32; 2]) -> Vec<String> {
    let ground = Raster::without_text();
    let mut picture = RgbaImage::from_pixel(size[0] as u32, size[1] as u32, image::Rgba([255; 4]));
    let mut found = Vec::new();
    for clipped in &window.output().shapes {
        let mut inside = Vec::new();
        texts(&clipped.shape, &mut inside);
        if inside.is_empty() {
            ground.add(&mut picture, &window.ctx, clipped.clone());
        }
        let clip = clipped.clip_rect.intersect(Rect::from_min_size(Pos2::ZERO, size.into()));
        for text in &inside {
            letters(text, clip, &picture, &mut found);
        }
    }
    let nodes = window.root().children_recursive();
    let unusable: Vec<Rect> = nodes.filter(|n| n.accesskit_node().is_disabled()).map(|n| n.rect()).collect();
    let is_weak = |letter: &Letter| {
        let now = mean(&picture, letter.area).unwrap_or(letter.ground);
        let is_covered = now.iter().zip(letter.ground).any(|(now, then)| (now - then).abs() > 0.02);
        let is_unusable = unusable.iter().any(|area| area.contains(letter.area.center()));
        let [r, g, b, a] = letter.ink.to_array().map(|v| f64::from(v) / 255.0);
        let [below_r, below_g, below_b] = letter.ground.map(|below| below * (1.0 - a));
        let ink = [r + below_r, g + below_g, b + below_b];
        let ratio = ratio(luminance(ink), luminance(letter.ground));
        let weak = !is_covered && !is_unusable && ratio < letter.least;
        weak.then(|| format!("{ratio:.2}:1 “{}” at {:?}", letter.text, letter.area))
    };
    found.iter().filter_map(is_weak).collect()
}

#[test]
fn the_formula_is_that_of_the_standard() {
    // WCAG 2.2: the ratio is from 1 to 21. W3C, technique G18: #777777 on white is just below 4.5:1, #767676 just above.
    let grey = |v: u8| luminance([f64::from(v) / 255.0; 3]);
    assert!((ratio(grey(0), grey(255)) - 21.0).abs() < 1e-9 && (ratio(grey(9), grey(9)) - 1.0).abs() < 1e-9);
    assert!(ratio(grey(0x76), grey(255)) >= 4.5 && ratio(grey(0x77), grey(255)) < 4.5);
}

#[test]
fn every_text_reads_in_every_theme() {
    let mut found = Vec::new();
    every_scene(SIZE, &mut |scene, window| {
        for theme in Theme::ALL {
            set_theme(&window.ctx, theme);
            window.step();
            window.step();
            found.extend(too_weak(window, SIZE).into_iter().map(|what| format!("{scene}, {}: {what}", theme.name())));
        }
        set_theme(&window.ctx, Theme::Light);
        window.step();
    });
    nothing_in(found);
}
