//! Pictures of defects: taken in the background, kept in memory until the job is saved, shown small.

use super::action::{Action, Effect};
use super::app::App;
use super::order::waker;
use crate::cli::Failure;
use crate::file::{Disk, Picture, RealDisk, SaveError, photo_folder, photos_of, read_photo, save_photo, show_picture};
use crate::job::{Command, Defect, Job, PhotoId};
use crate::say;
use crate::vehicle::PanelId;
use crate::work::{Ended, PictureRun};
use eframe::egui::{self, ColorImage, TextureHandle, TextureOptions};
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// Longest side of a picture on the sheet, in pixels.
const SHOWN_SIDE: u32 = 320;

/// The pictures of a job, as far as the window has them.
#[derive(Default)]
pub(super) struct Photos {
    /// Taken in since the job was saved last.
    fresh: BTreeMap<PhotoId, Arc<Vec<u8>>>,
    /// Ready to be shown; none where the file is missing or damaged.
    shown: BTreeMap<PhotoId, Option<TextureHandle>>,
    /// Being taken in, each with the defect that it is for.
    runs: Vec<(PanelId, Defect, PictureRun)>,
    /// The defect that a file is being asked for.
    pub(super) wanted: Option<(PanelId, usize)>,
    arrived: Vec<(PanelId, Defect, Result<Picture, String>)>,
}

impl std::fmt::Debug for Photos {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Photos")
            .field("fresh", &self.fresh.keys())
            .field("runs", &self.runs.len())
            .finish_non_exhaustive()
    }
}

impl Photos {
    /// A picture to show: not looked for yet, missing, or there.
    #[expect(clippy::option_option, reason = "not looked for yet is not the same as missing")]
    pub(super) fn of(&self, photo: &PhotoId) -> Option<Option<&TextureHandle>> {
        self.shown.get(photo).map(Option::as_ref)
    }

    /// Whether pictures are being taken in.
    pub(super) fn is_working(&self) -> bool {
        !self.runs.is_empty()
    }

    /// Gets one ready to be shown.
    pub(super) fn show(&mut self, photo: &PhotoId, job: Option<&Path>, ctx: &egui::Context) {
        let on_disk = || job.and_then(|job| read_photo(&RealDisk, job, photo).ok().map(Arc::new));
        let bytes = self.fresh.get(photo).cloned().or_else(on_disk);
        let texture = bytes.and_then(|bytes| show_picture(&bytes, SHOWN_SIDE).ok()).map(|shown| {
            let image = ColorImage::from_rgba_unmultiplied(shown.size, &shown.rgba);
            ctx.load_texture(photo.as_str(), image, TextureOptions::LINEAR)
        });
        self.shown.insert(photo.clone(), texture);
    }

    /// Takes what has arrived; answers with a wish when there is something.
    pub(super) fn listen(&mut self) -> Option<Action> {
        let arrived = &mut self.arrived;
        self.runs.retain(|(panel, defect, run)| {
            loop {
                match run.next_picture() {
                    Ok(Some(picture)) => arrived.push((panel.clone(), defect.clone(), picture)),
                    Ok(None) => return true,
                    Err(Ended) => return false,
                }
            }
        });
        (!self.arrived.is_empty()).then_some(Action::Effect(Effect::Photos(Vec::new())))
    }

    /// Those that may be in memory only.
    pub(super) fn in_memory(&self) -> Vec<(PhotoId, Arc<Vec<u8>>)> {
        self.fresh.iter().map(|(photo, bytes)| (photo.clone(), Arc::clone(bytes))).collect()
    }

    /// Takes in pictures that come with an unsaved job.
    pub(super) fn take_in(&mut self, photos: Vec<(PhotoId, Vec<u8>)>) {
        self.fresh.extend(photos.into_iter().map(|(photo, bytes)| (photo, Arc::new(bytes))));
    }

    /// Keeps the pictures of a job beside the file it is saved to; those of its old file come along.
    pub(super) fn save(&mut self, disk: &dyn Disk, from: Option<&Path>, to: &Path, job: &Job) -> Result<(), SaveError> {
        let moved = from.is_none_or(|from| photo_folder(from) != photo_folder(to));
        for photo in photos_of(job) {
            let bytes = self.fresh.get(&photo).cloned();
            let bytes = bytes.or_else(|| read_photo(disk, from.filter(|_| moved)?, &photo).ok().map(Arc::new));
            if let Some(bytes) = bytes {
                save_photo(disk, to, &photo, &bytes)?;
            }
        }
        Ok(())
    }
}

impl App {
    /// Takes pictures for the defect that they were asked for or that is open, and adds those that have come.
    pub(super) fn take_photos(&mut self, files: Vec<PathBuf>, ctx: &egui::Context) {
        if !files.is_empty() {
            self.question = None;
            let open = || Some((self.view.current.clone()?, self.view.defect?));
            let target = self.photos.wanted.take().or_else(open);
            let found = target.and_then(|(panel, index)| {
                let defect = self.document.job().record(&panel)?.defects.get(index)?.clone();
                Some((panel, defect))
            });
            let Some((panel, defect)) = found else {
                return self.fail(Failure::new(say!("survey-photo-no-defect"), say!("survey-photo-no-defect-do")));
            };
            match PictureRun::start(self.keep.keeper.disk(), files, waker(ctx)) {
                Ok(run) => self.photos.runs.push((panel, defect, run)),
                Err(error) => self.fail(Failure::new(
                    say!("survey-photo-unopened", why = error.to_string()),
                    say!("survey-photo-again"),
                )),
            }
        }
        for (panel, defect, picture) in std::mem::take(&mut self.photos.arrived) {
            match picture {
                Ok(picture) => self.add_photo(panel, &defect, picture, ctx),
                Err(reason) => self.fail(Failure::new(reason, say!("survey-photo-other"))),
            }
        }
    }

    /// Adds a picture to the defect it was taken for: the one of that kind at that place, as others may have come or gone.
    fn add_photo(&mut self, panel: PanelId, of: &Defect, picture: Picture, ctx: &egui::Context) {
        let defects = self.document.job().record(&panel).map(|r| r.defects.clone()).unwrap_or_default();
        let Some(index) = defects.iter().position(|d| d.kind == of.kind && d.at == of.at) else {
            return self.fail(Failure::new(say!("survey-photo-defect-gone"), say!("survey-photo-defect-gone-do")));
        };
        let mut value = defects[index].clone();
        let known: BTreeSet<&PhotoId> = value.photos.iter().collect();
        if known.contains(&picture.id) {
            return;
        }
        value.photos.push(picture.id.clone());
        self.photos.fresh.insert(picture.id.clone(), Arc::new(picture.jpeg));
        self.photos.shown.remove(&picture.id);
        self.apply(&Command::SetDefect { panel, defect: index, value }, None, ctx);
    }
}
