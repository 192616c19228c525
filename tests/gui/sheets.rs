//! Writes a sheet of pictures per theme: every vehicle template under every overlay, at two fifths of its size.

use super::{EFFORT, settle, window_on};
use egui_kittest::kittest::Queryable;
use image::codecs::png::{CompressionType, FilterType as RowFilter, PngEncoder};
use image::imageops::{self, FilterType};
use image::{DynamicImage, Rgba, RgbaImage};
use lapwright::file::{Loaded, SAMPLE, job_from_text};
use lapwright::gui::{Theme, set_theme};
use lapwright::insight::recommended_spots;
use lapwright::job::{Defect, PanelRecord, Reading, Spot};
use lapwright::polish::DefectKind;
use lapwright::units::{Micrometres, Millimetres};
use lapwright::vehicle::{self, Surface, Template};
use lapwright::work::Effort;
use std::fs::File;
use std::io::BufWriter;
use std::path::Path;
use std::sync::Arc;

/// The map in a window of 1280 by 800, and the size of one picture of the sheet.
const MAP: (u32, u32, u32, u32) = (164, 48, 788, 604);
const CELL: (u32, u32) = (315, 242);

/// The sample's shop with another vehicle; readings and defects are invented, the same in every run.
fn busy(template: Arc<Template>) -> Loaded {
    let mut job = (*job_from_text("the sample", SAMPLE).unwrap().job).clone();
    job.vehicle.template.clone_from(&template.id);
    job.panels.clear();
    let kinds = [
        DefectKind::Swirl,
        DefectKind::WashMark,
        DefectKind::DeepScratch,
        DefectKind::WaterSpot,
        DefectKind::StoneChip,
    ];
    for (index, panel) in template.panels.iter().enumerate() {
        if panel.surface != Surface::Paint || index % 7 == 6 {
            continue;
        }
        let film = 92.0 + (index * 37 % 61) as f64;
        let reading = |k: usize| Reading { thickness_um: Micrometres::new(film + (k % 5) as f64).unwrap() };
        let spot = |(k, at)| Spot { at, edge: false, readings: (0..3).map(|r| reading(k + r)).collect() };
        let spots: Vec<Spot> = recommended_spots(panel).into_iter().enumerate().map(spot).collect();
        let defect = Defect {
            kind: kinds[index % kinds.len()],
            at: spots[spots.len() / 2].at,
            size_mm: Millimetres::of(300.0),
            quantity: 1 + (index % 5) as u8,
            depth_um: None,
            note: String::new(),
        };
        let defects = if index % 3 == 0 { Vec::new() } else { vec![defect] };
        job.panels.insert(panel.id.clone(), Arc::new(PanelRecord { spots, defects, ..PanelRecord::default() }));
    }
    Loaded { job: Arc::new(job), template }
}

fn save(sheet: &RgbaImage, name: &str) {
    let file = File::create(Path::new(env!("CARGO_MANIFEST_DIR")).join("screenshots").join(name)).unwrap();
    let opaque = DynamicImage::ImageRgba8(sheet.clone()).to_rgb8();
    let encoder = PngEncoder::new_with_quality(BufWriter::new(file), CompressionType::Best, RowFilter::Adaptive);
    opaque.write_with_encoder(encoder).unwrap();
}

#[test]
fn every_template_has_its_pictures_in_every_theme() {
    const OVERLAYS: [&str; 4] = ["Film", "Defects", "Polish", "Order"];
    let files = vehicle::embedded();
    let size = (CELL.0 * OVERLAYS.len() as u32, CELL.1 * files.len() as u32);
    let mut sheets = Theme::ALL.map(|_| RgbaImage::from_pixel(size.0, size.1, Rgba([255; 4])));
    for (row, file) in files.iter().enumerate() {
        let loaded = busy(vehicle::load_embedded(file.id).unwrap());
        let mut window = window_on(loaded, Effort { nodes: Some(300), ..EFFORT }, [1280.0, 800.0]);
        settle(&mut window);
        for (theme, sheet) in Theme::ALL.into_iter().zip(&mut sheets) {
            set_theme(&window.ctx, theme);
            for (column, overlay) in OVERLAYS.into_iter().enumerate() {
                window.get_by_label(overlay).click();
                window.run();
                let picture = window.render().unwrap();
                let map = imageops::crop_imm(&picture, MAP.0, MAP.1, MAP.2, MAP.3).to_image();
                let small = imageops::resize(&map, CELL.0, CELL.1, FilterType::Triangle);
                let colours: std::collections::BTreeSet<[u8; 4]> = small.pixels().map(|p| p.0).collect();
                assert!(colours.len() > 20, "{} under {overlay} is as good as blank", file.id);
                let (x, y) = (CELL.0 * column as u32, CELL.1 * row as u32);
                imageops::replace(sheet, &small, i64::from(x), i64::from(y));
            }
        }
    }
    for (theme, sheet) in Theme::ALL.into_iter().zip(&sheets) {
        let name = format!("templates-{}.png", theme.name().to_lowercase());
        save(sheet, &name);
    }
}
