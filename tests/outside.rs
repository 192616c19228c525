//! No path in a file leads out of the folder of the job: pictures and templates that name other places are refused, links are not followed.
#![expect(clippy::unwrap_used, reason = "helpers of tests; clippy only sees test functions as tests")]

use lapwright::file::{
    RealDisk, SAMPLE, Templates, copy_photos, job_from_text, job_to_text, photo_file, photo_folder, photo_id,
    read_photo, save_photo,
};
use lapwright::job::{Job, PhotoId};
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
