//! The disk of this machine.

use super::{About, Disk, Lock};
use std::fs::{self, File, OpenOptions};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

/// The disk of this machine.
#[derive(Debug, Clone, Copy, Default)]
pub struct RealDisk;

impl Disk for RealDisk {
    fn read(&self, path: &Path, limit: u64) -> io::Result<Vec<u8>> {
        let file = File::open(path)?;
        // Room for all of it at once; what the system says of its length is a hint only.
        let mut bytes = Vec::with_capacity(file.metadata().map_or(0, |about| about.len().min(limit)) as usize + 1);
        file.take(limit).read_to_end(&mut bytes)?;
        Ok(bytes)
    }

    fn about(&self, path: &Path) -> io::Result<Option<About>> {
        match fs::metadata(path) {
            Ok(found) => Ok(Some(About {
                is_file: found.is_file(),
                len: found.len(),
                modified: found.modified().ok(),
                protected: found.permissions().readonly(),
            })),
            Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error),
        }
    }

    fn target(&self, path: &Path) -> io::Result<Option<PathBuf>> {
        match fs::symlink_metadata(path) {
            Ok(found) if found.is_symlink() => fs::read_link(path).map(Some),
            Ok(_) => Ok(None),
            Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
            Err(error) => Err(error),
        }
    }

    fn list(&self, folder: &Path) -> io::Result<Vec<PathBuf>> {
        let mut found = fs::read_dir(folder)?.map(|entry| Ok(entry?.path())).collect::<io::Result<Vec<_>>>()?;
        found.sort();
        Ok(found)
    }

    fn make_folder(&self, folder: &Path) -> io::Result<()> {
        fs::create_dir_all(folder)
    }

    fn write_new(&self, path: &Path, bytes: &[u8], like: &Path) -> io::Result<()> {
        let mut file = OpenOptions::new().write(true).create_new(true).open(path)?;
        if let Ok(old) = fs::metadata(like) {
            file.set_permissions(old.permissions())?; // first, so that nobody else can read it meanwhile
        }
        file.write_all(bytes)?;
        file.sync_all()
    }

    fn append(&self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        let mut file = never_through_links(OpenOptions::new().append(true).create(true)).open(path)?;
        file.write_all(bytes)?;
        file.sync_all()
    }

    fn link(&self, from: &Path, to: &Path) -> io::Result<()> {
        fs::hard_link(from, to).or_else(|_| {
            fs::copy(from, to)?;
            File::open(to)?.sync_all()
        })
    }

    fn rename(&self, from: &Path, to: &Path) -> io::Result<()> {
        // On Windows a virus scanner may hold a file for a moment: refused and shared (5 and 32) pass.
        for wait_ms in [50, 100, 200, 400, 800] {
            match fs::rename(from, to) {
                Err(error) if cfg!(windows) && matches!(error.raw_os_error(), Some(5 | 32)) => {
                    std::thread::sleep(std::time::Duration::from_millis(wait_ms));
                }
                result => return result,
            }
        }
        fs::rename(from, to)
    }

    fn remove(&self, path: &Path) -> io::Result<()> {
        let is_folder = fs::symlink_metadata(path)?.is_dir();
        if is_folder { fs::remove_dir(path) } else { fs::remove_file(path) }
    }

    fn sync_folder(&self, folder: &Path) -> io::Result<()> {
        if cfg!(unix) { File::open(folder)?.sync_all() } else { Ok(()) }
    }

    fn lock(&self, path: &Path, holder: &str) -> io::Result<Option<Lock>> {
        Lock::take(path, holder)
    }
}

/// Looks for links once more while a file is opened, since a name can change its meaning in between; and does not wait for a pipe.
#[cfg(unix)]
pub(super) fn never_through_links(options: &mut OpenOptions) -> &mut OpenOptions {
    std::os::unix::fs::OpenOptionsExt::custom_flags(options, libc::O_NOFOLLOW | libc::O_NONBLOCK)
}

/// Elsewhere links are looked for before.
#[cfg(not(unix))]
pub(super) fn never_through_links(options: &mut OpenOptions) -> &mut OpenOptions {
    options
}

/// Makes a new folder that nobody else can read.
///
/// # Errors
/// What the system says; `AlreadyExists` where something of that name is there.
pub fn new_private_folder(folder: &Path) -> io::Result<()> {
    let mut builder = fs::DirBuilder::new();
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    builder.create(folder)
}
