//! Reading what a list says out of job files, on as many threads as there are cores.

use super::{Found, JobHead, Reading};
use crate::file::disk::Disk;
use crate::file::load::{read_fields, read_text};
use crate::file::plain::job_as_written;
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::{Mutex, PoisonError};
use std::thread;

/// Files for each thread beyond the first; fewer are read sooner than it starts.
const WORTH_A_THREAD: usize = 64;
/// More threads wait for the disk only.
const MOST_THREADS: usize = 8;

/// The heads of files, in any order, and whether it was ended before all were read. `go_on` is told how far it is, beginning with
/// `from`; once it has said no, each thread reads the file it is at and no other.
pub(super) fn read_heads(
    disk: &dyn Disk,
    files: &[Found],
    from: Reading,
    go_on: &mut dyn FnMut(Reading) -> bool,
) -> (Vec<JobHead>, bool) {
    let (next, ended) = (AtomicUsize::new(0), AtomicBool::new(false));
    let heads = Mutex::new(Vec::with_capacity(files.len()));
    let take = || files.get(next.fetch_add(1, Ordering::Relaxed)).filter(|_| !ended.load(Ordering::Relaxed));
    // A list of whole heads is never broken, whichever thread failed.
    let keep = |head| {
        heads.lock().unwrap_or_else(PoisonError::into_inner).push(head);
    };
    thread::scope(|scope| {
        for _ in 1..threads_for(files.len()) {
            let helper = || {
                while let Some(file) = take() {
                    keep(head(disk, file));
                }
            };
            // Without a helper it takes longer, and that is all.
            drop(thread::Builder::new().name("read-jobs".to_owned()).spawn_scoped(scope, helper));
        }
        while let Some(file) = take() {
            let given_out_before = next.load(Ordering::Relaxed).min(files.len()).saturating_sub(1);
            if !go_on(Reading { done: from.done + given_out_before, ..from }) {
                ended.store(true, Ordering::Relaxed);
            }
            keep(head(disk, file));
        }
    });
    (heads.into_inner().unwrap_or_else(PoisonError::into_inner), ended.into_inner())
}

fn threads_for(files: usize) -> usize {
    let cores = thread::available_parallelism().map_or(1, usize::from);
    cores.min(MOST_THREADS).min(files.div_ceil(WORTH_A_THREAD))
}

fn head(disk: &dyn Disk, file: &Found) -> JobHead {
    let job = read_text(disk, &file.path).and_then(|text| match job_as_written(&text) {
        Some(job) => Ok(job),
        None => read_fields(&file.file, &text).map(|(job, _)| job),
    });
    match job {
        Ok(job) => JobHead::of(&file.file, file.stamp, &job),
        Err(reason) => JobHead::unreadable(&file.file, file.stamp, &reason.to_string()),
    }
}
