//! No path in a file leads out of the folder of the job: pictures and templates that name other places are refused, links are not followed.
#![expect(clippy::unwrap_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::file::{
    Disk, RealDisk, SAMPLE, Templates, copy_photos, job_from_text, job_to_text, photo_file, photo_folder, photo_id,
    read_photo, save_photo, why,
};
use lapwright::job::{Job, PhotoId};
use lapwright::words::{Language, within};
use std::path::Path;
use std::sync::Arc;

const ELSEWHERE: [&str; 7] = [
    "../elsewhere",
    "/outside/of/everything",
    "..\\elsewhere",
    "C:\\elsewhere",
    "a/../../elsewhere",
    "~/elsewhere",
    "file:///outside/of/everything",
];

const PICTURE: &[u8] = b"a picture, as far as its name goes";

/// The sample with one picture at a defect.
fn with_picture() -> (Job, PhotoId) {
    let mut job = (*job_from_text("the sample", SAMPLE).unwrap().job).clone();
    let photo = photo_id(PICTURE);
    let record = job.panels.values_mut().find(|record| !record.defects.is_empty()).unwrap();
    Arc::make_mut(record).defects[0].photos = vec![photo.clone()];
    (job, photo)
}

#[test]
fn a_picture_or_a_template_that_names_another_place_is_refused() {
    let (job, photo) = with_picture();
    let text = job_to_text(&job).unwrap();
    let folder = tempfile::tempdir().unwrap();
    let own = folder.path().join("own");
    std::fs::create_dir_all(&own).unwrap();
    // Were it followed, there would be a vehicle.
    let vehicle = Path::new(env!("CARGO_MANIFEST_DIR")).join("vehicle-templates/saloon.ron");
    std::fs::copy(vehicle, folder.path().join("elsewhere.ron")).unwrap();
    let templates = Templates::in_folder(&own);
    for place in ELSEWHERE {
        let written = place.replace('\\', "\\\\");
        let pictured = text.replacen(photo.as_str(), &written, 1);
        assert_ne!(pictured, text);
        let error = templates.job_from_text("job", &pictured).unwrap_err().to_string();
        assert!(error.contains("photos") && error.contains("64 digits"), "{place}: {error}");
        let named = text.replacen("template: \"saloon\"", &format!("template: \"{written}\""), 1);
        assert_ne!(named, text);
        assert!(templates.job_from_text("job", &named).is_err(), "{place}");
    }
}

#[cfg(unix)]
#[test]
fn a_picture_that_is_a_link_is_neither_shown_nor_copied() {
    use std::os::unix::fs::symlink;
    let (job, photo) = with_picture();
    let folder = tempfile::tempdir().unwrap();
    let secret = folder.path().join("secret");
    std::fs::write(&secret, "nobody's business").unwrap();
    let path = folder.path().join("here/one.job.ron");
    std::fs::create_dir_all(photo_folder(&path)).unwrap();
    symlink(&secret, photo_file(&path, &photo)).unwrap();
    assert!(read_photo(&RealDisk, &path, &photo).is_err());
    let to = folder.path().join("there/two.job.ron");
    copy_photos(&RealDisk, &path, &to, &job).unwrap();
    assert!(!photo_file(&to, &photo).exists());
    // A whole folder of pictures that is a link.
    let third = folder.path().join("here/three.job.ron");
    save_photo(&RealDisk, &third, &photo, PICTURE).unwrap();
    assert_eq!(read_photo(&RealDisk, &third, &photo).unwrap(), PICTURE);
    let fourth = folder.path().join("here/four.job.ron");
    symlink(photo_folder(&third), photo_folder(&fourth)).unwrap();
    assert!(read_photo(&RealDisk, &fourth, &photo).is_err());
    assert_eq!(std::fs::read(&secret).unwrap(), b"nobody's business");
}

#[test]
fn what_is_no_job_at_all_is_told_as_that() {
    let told = |text: &str| job_from_text("x.job.ron", text).map(drop).map_err(|error| error.to_string());
    assert_eq!(told("").unwrap_err(), "x.job.ron:1:1: it is empty");
    assert_eq!(told(" \n\n").unwrap_err(), "x.job.ron:1:1: it is empty");
    assert_eq!(told("Dear customer,\n").unwrap_err(), "x.job.ron:1:1: it is no job of this program");
    // A job that lost a part is still a job, and the place is named.
    assert!(told("(format: \"job/1\", name: ").unwrap_err().starts_with("x.job.ron:1:"));
}

#[test]
fn the_system_is_quoted_in_the_language_in_use_and_without_its_numbers() {
    let missing = RealDisk.read(Path::new("/no/such/file"), 1).unwrap_err();
    assert_eq!(why(&missing), "there is no such file or folder");
    assert_eq!(within(Language::German, || why(&missing)), "diese Datei oder diesen Ordner gibt es nicht");
    let folder = std::env::temp_dir();
    assert_eq!(why(&RealDisk.read(&folder, 1).unwrap_err()), "it is a folder");
    let rare = std::io::Error::from_raw_os_error(5);
    assert!(rare.to_string().contains("(os error 5)") && !why(&rare).contains("os error"));
    assert_eq!(why(&std::io::Error::other("our own words")), "our own words");
}

#[test]
fn a_picture_can_be_kept_twice_at_the_same_time() {
    let folder = tempfile::tempdir().expect("a folder");
    let job = folder.path().join("x.job.ron");
    for round in 0..200_u32 {
        let bytes = round.to_le_bytes().repeat(2_000);
        let id = photo_id(&bytes);
        std::thread::scope(|scope| {
            let keep = || save_photo(&RealDisk, &job, &id, &bytes);
            let all: Vec<_> = (0..4).map(|_| scope.spawn(keep)).collect();
            for one in all {
                one.join().expect("no panic").expect("kept");
            }
        });
        assert_eq!(read_photo(&RealDisk, &job, &id).expect("there"), bytes);
    }
}
