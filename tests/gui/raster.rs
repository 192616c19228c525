//! Draws a window into an image on the processor alone: no display, no graphics driver, the same picture everywhere.
//!
//! The window is made of textured triangles with premultiplied colours; this fills them with the top-left rule, a bilinear
//! texture and "over" blending, as a graphics card would.

use eframe::egui::epaint::{ClippedPrimitive, ClippedShape, ColorImage, ImageData, Mesh, Primitive, Vertex};
use eframe::egui::{Color32, Context, FullOutput, Pos2, Rect, TextureId, TexturesDelta};
use image::{Rgba, RgbaImage};
use std::collections::HashMap;

#[derive(Default)]
pub(super) struct Raster {
    textures: HashMap<TextureId, ColorImage>,
}

impl Raster {
    /// One that has white only, which is what everything but text and pictures is painted with.
    pub(super) fn without_text() -> Self {
        let white = ColorImage::filled([1, 1], Color32::WHITE);
        Self { textures: HashMap::from([(TextureId::default(), white)]) }
    }

    /// Draws one shape, no text, over a picture; pictures that the window shows are left out.
    pub(super) fn add(&self, canvas: &mut RgbaImage, ctx: &Context, shape: ClippedShape) {
        let scale = ctx.pixels_per_point();
        for ClippedPrimitive { clip_rect, primitive } in ctx.tessellate(vec![shape], scale) {
            if let Primitive::Mesh(mesh) = primitive
                && let Some(texture) = self.textures.get(&mesh.texture_id)
            {
                draw(canvas, clip_rect * scale, &mesh, texture, scale);
            }
        }
    }
}

impl egui_kittest::TestRenderer for Raster {
    fn handle_delta(&mut self, delta: &mut TexturesDelta) {
        for (id, changes) in delta.set.drain() {
            for change in changes {
                let ImageData::Color(patch) = change.image;
                match change.pos {
                    None => {
                        self.textures.insert(id, (*patch).clone());
                    }
                    Some([x, y]) => {
                        let whole = self.textures.get_mut(&id).expect("a patch belongs to a texture that is there");
                        for row in 0..patch.size[1] {
                            let (from, to) = (row * patch.size[0], (y + row) * whole.size[0] + x);
                            whole.pixels[to..to + patch.size[0]]
                                .copy_from_slice(&patch.pixels[from..from + patch.size[0]]);
                        }
                    }
                }
            }
        }
        for id in delta.free.drain() {
            self.textures.remove(&id);
        }
    }

    fn render(&mut self, ctx: &Context, output: &FullOutput) -> Result<RgbaImage, String> {
        let scale = output.pixels_per_point;
        let size = ctx.content_rect().size() * scale;
        let mut canvas = RgbaImage::from_pixel(size.x.round() as u32, size.y.round() as u32, Rgba([255; 4]));
        for ClippedPrimitive { clip_rect, primitive } in ctx.tessellate(output.shapes.clone(), scale) {
            let Primitive::Mesh(mesh) = primitive else { return Err("paint callbacks are not drawn".to_owned()) };
            let texture = self.textures.get(&mesh.texture_id).ok_or("unknown texture")?;
            draw(&mut canvas, clip_rect * scale, &mesh, texture, scale);
        }
        Ok(canvas)
    }
}

fn draw(canvas: &mut RgbaImage, clip: Rect, mesh: &Mesh, texture: &ColorImage, scale: f32) {
    for corners in mesh.indices.chunks_exact(3) {
        let mut v: [Vertex; 3] = [0, 1, 2].map(|k| mesh.vertices[corners[k] as usize]);
        for corner in &mut v {
            corner.pos = (corner.pos.to_vec2() * scale).to_pos2();
        }
        if area(v[0].pos, v[1].pos, v[2].pos) < 0.0 {
            v.swap(1, 2);
        }
        fill(canvas, clip, &v, texture);
    }
}

/// Twice the signed area.
fn area(a: Pos2, b: Pos2, c: Pos2) -> f32 {
    (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)
}

fn fill(canvas: &mut RgbaImage, clip: Rect, v: &[Vertex; 3], texture: &ColorImage) {
    let whole = area(v[0].pos, v[1].pos, v[2].pos);
    if whole <= 0.0 {
        return;
    }
    let bounds = Rect::from_points(&[v[0].pos, v[1].pos, v[2].pos]).intersect(clip);
    let end = |low: f32, limit: u32| (low.ceil().max(0.0) as u32).min(limit);
    let (width, height) = canvas.dimensions();
    for y in bounds.top().floor().max(0.0) as u32..end(bounds.bottom(), height) {
        for x in bounds.left().floor().max(0.0) as u32..end(bounds.right(), width) {
            let p = Pos2::new(x as f32 + 0.5, y as f32 + 0.5);
            if !clip.contains(p) {
                continue;
            }
            let edges = [(1, 2), (2, 0), (0, 1)].map(|(a, b)| (area(v[a].pos, v[b].pos, p), v[b].pos - v[a].pos));
            // On an edge that two triangles share, only the one whose top or left edge it is gets the pixel.
            let inside = edges.iter().all(|(w, e)| *w > 0.0 || (*w == 0.0 && (e.y < 0.0 || (e.y == 0.0 && e.x > 0.0))));
            if inside {
                let share = edges.map(|(w, _)| w / whole);
                blend(canvas.get_pixel_mut(x, y), source(v, share, texture));
            }
        }
    }
}

/// Colour of a place in a triangle, premultiplied, 0 to 1.
fn source(v: &[Vertex; 3], share: [f32; 3], texture: &ColorImage) -> [f32; 4] {
    let mix = |f: &dyn Fn(&Vertex) -> f32| (0..3).map(|k| f(&v[k]) * share[k]).sum::<f32>();
    let (u, w) = (mix(&|v| v.uv.x), mix(&|v| v.uv.y));
    let texel = bilinear(texture, u, w);
    std::array::from_fn(|c| mix(&|v| f32::from(v.color.to_array()[c]) / 255.0) * texel[c])
}

fn bilinear(texture: &ColorImage, u: f32, v: f32) -> [f32; 4] {
    let [width, height] = texture.size;
    let (x, y) = (u * width as f32 - 0.5, v * height as f32 - 0.5);
    let (fx, fy) = (x - x.floor(), y - y.floor());
    let at = |dx: f32, dy: f32| -> Color32 {
        let column = ((x.floor() + dx).max(0.0) as usize).min(width - 1);
        let row = ((y.floor() + dy).max(0.0) as usize).min(height - 1);
        texture.pixels[row * width + column]
    };
    let corners = [
        (at(0.0, 0.0), (1.0 - fx) * (1.0 - fy)),
        (at(1.0, 0.0), fx * (1.0 - fy)),
        (at(0.0, 1.0), (1.0 - fx) * fy),
        (at(1.0, 1.0), fx * fy),
    ];
    std::array::from_fn(|c| corners.iter().map(|(color, weight)| f32::from(color.to_array()[c]) / 255.0 * weight).sum())
}

fn blend(pixel: &mut Rgba<u8>, source: [f32; 4]) {
    for c in 0..4 {
        let under = f32::from(pixel.0[c]) / 255.0;
        pixel.0[c] = ((source[c] + under * (1.0 - source[3])) * 255.0).round().clamp(0.0, 255.0) as u8;
    }
}
