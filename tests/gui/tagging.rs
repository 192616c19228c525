//! Defects drawn on the map, opened and changed; facts and defects for several panels; pictures.

use super::pictures::egui_role::PANEL;
use super::scripted::{choose, click_at, drop_file, scratch};
use super::window;
use eframe::egui::{Event, Key, Modifiers, Pos2, Role, vec2};
use egui_kittest::Harness;
use egui_kittest::kittest::Queryable;
use image::codecs::jpeg::JpegEncoder;
use image::{ImageDecoder, ImageReader, Rgb, RgbImage};
use lapwright::file::{KEPT_SIDE, photo_file, show_picture, take_picture};
use lapwright::gui::App;
use lapwright::job::{Defect, Extent, PreviousCoating};
use lapwright::polish::{DefectKind, Fingernail, Finish};
use lapwright::vehicle::PanelId;
use std::io::Cursor;
use std::time::Duration;

const SIZE: [f32; 2] = [1280.0, 800.0];

fn defects(window: &Harness<'_, App>, panel: &str) -> Vec<Defect> {
    window.state().job().record(&PanelId::from(panel)).map(|r| r.defects.clone()).unwrap_or_default()
}

fn drag(window: &mut Harness<'_, App>, way: &[Pos2]) {
    window.hover_at(way[0]);
    window.run();
    window.drag_at(way[0]);
    window.run();
    for at in &way[1..] {
        window.hover_at(*at);
        window.run();
    }
    window.drop_at(way[way.len() - 1]);
    window.run();
}

fn pick(window: &mut Harness<'_, App>, field: &str, value: &str) {
    window.get_by_role_and_label(Role::ComboBox, field).click();
    window.run();
    let option = window.query_by(|n| n.role() == Role::Button && n.label().as_deref() == Some(value));
    option.unwrap_or_else(|| panic!("{field} has no {value}")).click();
    window.run();
}

#[test]
fn defects_are_drawn_as_lines_and_areas_with_keys_for_kind_and_shape() {
    let mut window = window(SIZE);
    choose(&mut window, "Boot lid, left");
    let middle = window.get_by_role_and_label(PANEL, "Boot lid, left").rect().center();
    window.key_press(Key::D);
    window.run();
    for _ in 0..2 {
        window.key_press(Key::D); // deep scratch, dust nib
        window.run();
    }
    window.key_press(Key::D); // and round again
    window.key_press(Key::Num2);
    window.run();
    let before = defects(&window, "boot-lid-left").len();
    drag(&mut window, &[middle, middle + vec2(10.0, 4.0), middle + vec2(30.0, 0.0)]);
    let line = defects(&window, "boot-lid-left").last().cloned().unwrap();
    assert_eq!(defects(&window, "boot-lid-left").len(), before + 1);
    assert_eq!(line.kind, DefectKind::DeepScratch);
    assert_eq!(line.extent.points().len(), 2, "{:?}", line.extent);
    assert_eq!(Some(line.size_mm), line.extent.size());
    window.key_press(Key::O); // oxidation
    window.key_press(Key::Num3);
    window.run();
    let corner = |x: f32, y: f32| middle + vec2(x, y);
    drag(&mut window, &[corner(-20.0, -20.0), corner(20.0, -20.0), corner(20.0, 20.0), corner(-20.0, 20.0)]);
    let area = defects(&window, "boot-lid-left").last().cloned().unwrap();
    assert_eq!(area.kind, DefectKind::Oxidation);
    assert!(matches!(area.extent, Extent::Area(ref corners) if corners.len() >= 4), "{:?}", area.extent);
    assert!((area.at - area.extent.middle().unwrap()).length() < 0.01);
    window.key_press(Key::Escape);
    window.run();
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
    window.run();
    assert!(!window.state().is_dirty(), "a drawing is one step");
}

#[test]
fn a_defect_is_opened_and_changed_in_every_field() {
    let mut window = window(SIZE);
    choose(&mut window, "Rear door, left");
    let first = defects(&window, "door-rear-left")[0].clone();
    window.get_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with("Deep scratch, "))).click();
    window.run();
    pick(&mut window, "How many", "4, considerable");
    pick(&mut window, "Fingernail", "slides over");
    for (field, value) in [("Size across", "120"), ("Most", "3,5")] {
        window.get_by_role_and_label(Role::TextInput, field).focus();
        window.run();
        window.key_press_modifiers(Modifiers::COMMAND, Key::A);
        window.run();
        window.get_by_role_and_label(Role::TextInput, field).type_text(value);
        window.run();
        window.key_press(Key::Enter);
        window.run();
    }
    let now = defects(&window, "door-rear-left")[0].clone();
    assert_eq!((now.quantity, now.fingernail), (4, Fingernail::Slides));
    assert!((now.size_mm.mm() - 120.0).abs() < 0.01);
    assert!((now.depth().1.um() - 3.5).abs() < 0.01 && now.depth().0 <= now.depth().1, "{now:?}");
    assert_eq!(now.at, first.at);
    window.get_by_label("Remove this defect").click_accesskit(); // it may lie below what is on screen
    window.run();
    assert_eq!(defects(&window, "door-rear-left").iter().filter(|d| d.at == first.at).count(), 0);
    assert!(window.query_by_label("Remove this defect").is_none(), "the sheet of the panel is back");
}

#[test]
fn several_panels_get_the_same_defect_and_the_same_facts_in_one_step() {
    let mut window = window(SIZE);
    let places = ["Roof, left", "Roof, right", "Sill, right"]
        .map(|name| window.get_by_role_and_label(PANEL, name).rect().center() + vec2(0.0, 3.0));
    window.input_mut().events.push(Event::ModifiersChanged(Modifiers::SHIFT));
    for at in places {
        click_at(&mut window, at);
    }
    window.input_mut().events.push(Event::ModifiersChanged(Modifiers::NONE));
    window.run();
    assert!(window.query_by_label("3 panels chosen").is_some());
    pick(&mut window, "Kind", "Holograms");
    window.get_by_label("Add to 3 panels").click();
    window.run();
    let panels = ["roof-left", "roof-right", "sill-right"];
    for panel in panels {
        assert_eq!(defects(&window, panel).last().unwrap().kind, DefectKind::Hologram, "{panel}");
    }
    pick(&mut window, "On it already", "wax");
    pick(&mut window, "Finish", "matte");
    for panel in panels {
        let record = window.state().job().record(&PanelId::from(panel)).unwrap();
        assert_eq!((record.coating, record.finish), (PreviousCoating::Wax, Some(Finish::Matte)), "{panel}");
    }
    for _ in 0..3 {
        window.key_press_modifiers(Modifiers::COMMAND, Key::Z);
        window.run();
    }
    assert!(!window.state().is_dirty(), "three steps for three changes");
}

/// A JPEG of 40 by 20 pixels, red at its left end, that says it is to be turned clockwise by a quarter, and names a place.
///
/// **Source** of the layout: CIPA DC-008 (Exif 2.32), tag 0x0112 orientation 6, tag 0x8825 GPS (from memory).
pub(super) fn turned_jpeg() -> Vec<u8> {
    let picture = RgbImage::from_fn(40, 20, |x, _| if x < 20 { Rgb([250, 10, 10]) } else { Rgb([10, 10, 250]) });
    let mut jpeg = Vec::new();
    JpegEncoder::new_with_quality(&mut jpeg, 95).encode_image(&picture).unwrap();
    let mut exif = b"Exif\0\0MM\0\x2a\0\0\0\x08\0\x02".to_vec();
    exif.extend([0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0]); // orientation, short, 6
    exif.extend([0x88, 0x25, 0, 4, 0, 0, 0, 1, 0, 0, 0, 0x26]); // offset of the place
    exif.extend([0, 0, 0, 0, 0, 0]);
    let mut marked = jpeg[..2].to_vec();
    marked.extend([0xff, 0xe1]);
    marked.extend(u16::try_from(exif.len() + 2).unwrap().to_be_bytes());
    marked.extend(&exif);
    marked.extend(&jpeg[2..]);
    marked
}

#[test]
fn a_picture_is_turned_upright_and_says_nothing_of_where_it_was_taken() {
    let taken = take_picture(&turned_jpeg()).unwrap();
    let has = |what: &[u8]| taken.jpeg.windows(what.len()).any(|w| w == what);
    assert!(!has(b"Exif") && !has(&[0xff, 0xe1]), "no metadata is kept");
    let mut decoder = ImageReader::new(Cursor::new(&taken.jpeg)).with_guessed_format().unwrap().into_decoder().unwrap();
    assert_eq!(decoder.dimensions(), (20, 40));
    assert_eq!(decoder.orientation().unwrap(), image::metadata::Orientation::NoTransforms);
    let shown = show_picture(&taken.jpeg, 320).unwrap();
    let top = &shown.rgba[..3];
    assert!(top[0] > 200 && top[2] < 60, "the left end is at the top after a quarter turn clockwise: {top:?}");
    assert_eq!(take_picture(&turned_jpeg()).unwrap().id, taken.id, "the same picture has the same name");
}

#[test]
fn a_picture_is_made_small_and_one_too_large_is_refused() {
    let large = RgbImage::from_pixel(2_400, 1_200, Rgb([90, 120, 90]));
    let mut jpeg = Vec::new();
    JpegEncoder::new(&mut jpeg).encode_image(&large).unwrap();
    let taken = take_picture(&jpeg).unwrap();
    assert_eq!(show_picture(&taken.jpeg, 4_000).unwrap().size, [KEPT_SIDE as usize, KEPT_SIDE as usize / 2]);
    // The head of a PNG of 20,000 by 20,000 pixels; nothing of it is ever allocated.
    let mut png = b"\x89PNG\r\n\x1a\n\0\0\0\x0dIHDR".to_vec();
    png.extend([0, 0, 0x4e, 0x20, 0, 0, 0x4e, 0x20, 8, 2, 0, 0, 0, 0, 0, 0, 0]);
    assert!(take_picture(&png).is_err());
    for bad in [&b""[..], b"hello", &jpeg[..jpeg.len() / 3]] {
        drop(take_picture(bad)); // whatever it is, it ends
    }
    assert!(take_picture(b"hello").is_err());
}

#[test]
fn a_picture_dropped_on_an_open_defect_is_kept_beside_the_saved_job() {
    let job = scratch("pictures.job.ron");
    let picture = scratch("scratch.jpg");
    std::fs::write(&job, lapwright::file::SAMPLE).unwrap();
    std::fs::write(&picture, turned_jpeg()).unwrap();
    let mut window = window(SIZE);
    drop_file(&mut window, &job);
    choose(&mut window, "Rear door, left");
    drop_file(&mut window, &picture);
    assert!(window.query_by_label("That could not be done").is_some(), "no defect is open yet");
    window.get_by_label("Close").click();
    window.run();
    window.get_by(|n| n.role() == Role::Button && n.label().is_some_and(|l| l.starts_with("Deep scratch, "))).click();
    window.run();
    drop_file(&mut window, &picture);
    for _ in 0..200 {
        window.step();
        if !defects(&window, "door-rear-left")[0].photos.is_empty() {
            break;
        }
        std::thread::sleep(Duration::from_millis(10));
    }
    window.run();
    let photo = defects(&window, "door-rear-left")[0].photos[0].clone();
    assert!(!photo_file(&job, &photo).exists(), "nothing is written before the job is saved");
    window.key_press_modifiers(Modifiers::COMMAND, Key::S);
    window.run();
    assert!(photo_file(&job, &photo).exists());
    assert!(window.query_by_label("Picture 1").is_some(), "and it is shown");
    let again = lapwright::file::read_job(&lapwright::file::RealDisk, &job).unwrap();
    assert_eq!(*again.job, **window.state().job());
    std::fs::remove_dir_all(photo_file(&job, &photo).parent().unwrap()).unwrap();
    for file in [&picture, &job] {
        std::fs::remove_file(file).unwrap();
    }
}
