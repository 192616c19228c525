//! What stands against saving, and what follows from having saved.

use super::{Keeper, Standing, absolute, stand};
use crate::file::{Change, Fingerprint, Holder, Saved, journal_of, put_aside, read_journal};
use crate::job::Revision;
use crate::work::clock::clock_stamp;
use std::io;
use std::path::Path;

/// What stands against saving under a name.
#[derive(Debug)]
pub enum Obstacle {
    /// Another window has the file.
    Others(Option<Holder>),
    /// Nothing can be written in its folder, and why.
    NoWriting(String),
    /// The file is read-only.
    Protected,
    /// A newer version of the program wrote it in this format.
    Newer(String),
    /// Somebody changed it since it was read or saved last.
    Changed(Fingerprint),
    /// It can't be looked at.
    Unreadable(io::Error),
}

impl Keeper {
    /// Makes sure that a job may be saved under a name, and holds the file against other windows. `over` is a change of the file that
    /// shall be written over.
    ///
    /// # Errors
    /// What stands against it.
    pub fn may_save(&mut self, path: &Path, over: Option<Fingerprint>) -> Result<(), Obstacle> {
        let Some(shelf) = &self.shelf else { return Ok(()) };
        if !self.is_own(path) {
            // Held from here on, until it is saved or another name is taken.
            let standing = stand(shelf, path, None);
            obstacle(&standing).map_or(Ok(()), Err)?;
            self.next = Some((path.to_owned(), standing));
            return Ok(());
        }
        obstacle(&self.standing).map_or(Ok(()), Err)?;
        let Some(print) = &self.print else { return Ok(()) };
        let Some(shelf) = &self.shelf else { return Ok(()) };
        if self.older_base && over != Some(*print) {
            return Err(Obstacle::Changed(*print));
        }
        match print.compare(&*shelf.disk, path) {
            Ok(Change::Changed(now)) if over != Some(now) => Err(Obstacle::Changed(now)),
            Ok(_) => Ok(()),
            Err(error) => Err(Obstacle::Unreadable(error)),
        }
    }

    /// Whether a path means the file of this window, however it is written.
    fn is_own(&self, path: &Path) -> bool {
        let (Some(own), Some(shelf)) = (self.file.as_deref(), &self.shelf) else { return false };
        let journal = |file: &Path| journal_of(&*shelf.disk, &absolute(file)).ok();
        own == path || journal(own).is_some_and(|journal_of_own| journal(path) == Some(journal_of_own))
    }

    /// Notes that the job as it was at a revision is now in a file. Its journal goes once that is sure.
    pub fn saved(&mut self, path: &Path, saved: Saved, revision: Revision) {
        let Some(shelf) = &self.shelf else { return };
        self.print = Fingerprint::read(&*shelf.disk, path).ok().flatten();
        self.left = None;
        (self.saved_at, self.before, self.older_base) = (revision, 0, false);
        self.followed = Some(revision);
        if saved == Saved::Confirmed
            && let Some(run) = &self.run
        {
            run.remove();
        }
        let is_own = self.is_own(path);
        self.file = Some(path.to_owned());
        if is_own {
            return;
        }
        let Some(shelf) = &self.shelf else { return };
        self.standing = match self.next.take() {
            Some((held, standing)) if held == path => standing,
            _ => stand(shelf, path, None),
        };
        // What a crash once left beside the file that was written over is of that one.
        if let Ok(Some(left)) = journal_of(&*shelf.disk, path).and_then(|journal| read_journal(&*shelf.disk, &journal))
        {
            let stamp = clock_stamp(left.head.as_ref().map_or_else(|| shelf.clock.now_s(), |head| head.at_s));
            // Where even that can't be, the next journal keeps it as its previous version.
            drop(put_aside(&*shelf.disk, &self.data_for(path), &left, Some(path), &stamp));
        }
        if saved == Saved::Confirmed {
            self.run = None; // done first; the next journal is beside the new file
            self.journal = None;
        }
    }
}

fn obstacle(standing: &Standing) -> Option<Obstacle> {
    Some(match standing {
        Standing::Free | Standing::Ours(_) | Standing::NoLocks(_) => return None,
        Standing::Others(holder) => Obstacle::Others(holder.clone()),
        Standing::NoWriting(reason) => Obstacle::NoWriting(reason.clone()),
        Standing::Protected => Obstacle::Protected,
        Standing::Newer(format) => Obstacle::Newer(format.clone()),
    })
}
