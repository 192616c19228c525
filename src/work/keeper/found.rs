//! A journal from before: found, taken up again, or put aside.

use super::{Keeper, Standing, absolute};
use crate::file::{
    Disk, FoundJournal, Hold, Holder, Loaded, Lock, ReadError, SaveError, Templates, hold, journal_of,
    journals_without_file, keep_job, keep_torn, photos_of, put_aside, read_journal, read_photo, remove_journal,
};
use crate::job::{Job, PhotoId, Revision};
use crate::say;
use crate::work::clock::clock_stamp;
use std::io;
use std::path::{Path, PathBuf};
use std::sync::Arc;

/// An unsaved state that was taken up again.
#[derive(Debug, Clone)]
pub struct Taken {
    /// The job with its vehicle.
    pub loaded: Loaded,
    /// Pictures of it that are beside the journal only.
    pub photos: Vec<(PhotoId, Vec<u8>)>,
}

impl Keeper {
    /// Looks for an unsaved state of the job in the window; for a job without a file, of any such job. One that holds nothing but
    /// `job` goes.
    ///
    /// # Errors
    /// What the system says.
    pub fn look_for_unsaved(&mut self, job: &Job) -> io::Result<()> {
        let Some(shelf) = &self.shelf else { return Ok(()) };
        let disk = &*shelf.disk;
        let beside = match &self.file {
            Some(file) if matches!(self.standing, Standing::Ours(_) | Standing::NoLocks(_)) => {
                let journal = journal_of(disk, file)?;
                if self.run.is_some() && self.journal() == Some(&journal) {
                    return Ok(()); // this window writes it
                }
                read_journal(disk, &journal)?.map(|found| (found, None))
            }
            _ => None,
        };
        self.found = match (beside, &shelf.data) {
            // What could not be kept beside the file is in the user's folder.
            (None, Some(data)) => orphan(disk, data, &Holder::me(shelf.clock.now_s()), self.file.as_deref())?,
            (beside, _) => beside,
        };
        if let Some((found, _)) = self.found.take_if(|(found, _)| found.is_only(job)) {
            remove_journal(disk, &found.path)?;
        }
        Ok(())
    }

    /// The unsaved state that was found and not dealt with yet.
    pub fn found(&self) -> Option<&FoundJournal> {
        self.found.as_ref().map(|(found, _)| found)
    }

    /// Whether the file is another one than when the unsaved state was begun.
    pub fn found_is_of_another_version(&self) -> bool {
        let base = self.found().and_then(|found| found.head.as_ref()?.base_sha256.clone());
        base.is_some_and(|base| self.print.is_some_and(|print| print.sha256() != base))
    }

    /// Takes the unsaved state up again; its journal stays until the job is saved. What was unsaved in this window is given up: whoever
    /// wants it keeps it first ([`Keeper::keep_state`]).
    ///
    /// # Errors
    /// [`ReadError`] where it is no job that can be worked on. It is then still there.
    pub fn take_up(&mut self, templates: &Templates) -> Result<Option<Taken>, ReadError> {
        let (Some(shelf), Some((found, _))) = (&self.shelf, &self.found) else { return Ok(None) };
        let Some(text) = &found.text else { return Ok(None) };
        let loaded = templates.job_from_text(say!("work-unsaved-state"), text)?;
        let disk = &*shelf.disk;
        if found.torn.is_some() {
            // A newer state that is damaged; somebody may still read it by eye.
            drop(keep_torn(disk, &self.data_for(&found.path), found, &clock_stamp(shelf.clock.now_s())));
        }
        let beside = found.head.as_ref().and_then(|head| head.file.as_deref()).map(Path::new);
        // Those that are beside the file of the job come from there, as always.
        let is_there = |photo: &PhotoId| self.file.as_deref().is_some_and(|file| read_photo(disk, file, photo).is_ok());
        let wanted = photos_of(&loaded.job).into_iter().filter(|photo| !is_there(photo));
        let photo = |photo: PhotoId| {
            let bytes = read_photo(disk, &found.path, &photo);
            let orphan = beside.filter(|_| self.file.is_none());
            let bytes = bytes.or_else(|error| orphan.map_or(Err(error), |file| read_photo(disk, file, &photo)));
            bytes.ok().map(|bytes| (photo, bytes))
        };
        let photos = wanted.filter_map(photo).collect();
        self.older_base = self.found_is_of_another_version();
        if let Some((found, lock)) = self.found.take() {
            if let Some(run) = self.run.take() {
                run.remove();
            }
            self.before = found.head.as_ref().map_or(0, |head| head.changes);
            self.saved_at = Revision::default();
            self.journal = Some((found.path, lock));
        }
        self.followed = None;
        Ok(Some(Taken { loaded, photos }))
    }

    /// Puts the unsaved state aside; gives the file that keeps it.
    ///
    /// # Errors
    /// [`SaveError`]; it is then still there.
    pub fn put_aside(&mut self) -> Result<Option<PathBuf>, SaveError> {
        let (Some(shelf), Some((found, _))) = (&self.shelf, &self.found) else { return Ok(None) };
        let at_s = found.head.as_ref().map_or_else(|| shelf.clock.now_s(), |head| head.at_s);
        let data = self.data_for(&found.path);
        // An orphan is one of the user's own folder, so it may say where its file is.
        let of_orphan = found.head.as_ref().and_then(|head| head.file.as_deref()).map(Path::new);
        let kept = put_aside(&*shelf.disk, &data, found, self.file.as_deref().or(of_orphan), &clock_stamp(at_s))?;
        self.found = None;
        Ok(Some(kept))
    }

    /// Keeps a state of the job that is about to be replaced, with its pictures; gives the file. `photos` are those in memory.
    ///
    /// # Errors
    /// [`SaveError`], also where there is no folder for it.
    pub fn keep_state(&self, job: &Job, photos: &[(PhotoId, Arc<Vec<u8>>)]) -> Result<Option<PathBuf>, SaveError> {
        let Some(shelf) = &self.shelf else { return Ok(None) };
        let beside = || self.file.as_deref().map(|file| self.data_for(file));
        let data = shelf.data.clone().or_else(beside).ok_or(SaveError::NowhereToKeep)?;
        let stamp = clock_stamp(shelf.clock.now_s());
        keep_job(&*shelf.disk, &data, job, photos, self.file.as_deref(), &stamp).map(Some)
    }

    /// The user's folder; where there is none, the folder of the file.
    pub(super) fn data_for(&self, file: &Path) -> PathBuf {
        let data = self.shelf.as_ref().and_then(|shelf| shelf.data.clone());
        data.unwrap_or_else(|| file.parent().unwrap_or(Path::new("")).to_owned())
    }
}

/// The newest journal in the user's folder that no window has: of a file, or for a window without one of any job.
fn orphan(
    disk: &dyn Disk,
    data: &Path,
    me: &Holder,
    file: Option<&Path>,
) -> io::Result<Option<(FoundJournal, Option<Lock>)>> {
    let file = file.map(absolute).map(|file| file.display().to_string());
    let is_wanted = |found: &FoundJournal| file.is_none() || found.head.as_ref().is_some_and(|head| head.file == file);
    for path in journals_without_file(disk, data)?.into_iter().rev() {
        if let Hold::Ours(lock) = hold(disk, &path, me)
            && let Some(found) = read_journal(disk, &path)?.filter(is_wanted)
        {
            return Ok(Some((found, Some(lock))));
        }
    }
    Ok(None)
}
