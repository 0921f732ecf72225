//! Every change that the register makes on disk, a step at a time.
//!
//! All goes through one type, so that a test can have the n-th step fail as on a full or
//! protected disk, or have nothing happen from the n-th step on, as after a kill.

use std::cell::Cell;
use std::fs::{self, File, OpenOptions};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

/// How files are called while they are written.
const PART: &str = ".bayleaf-";

/// What goes wrong, and at which step, counted from 1.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Trouble {
    /// That step fails, and all steps after it that write.
    Fails(usize, io::ErrorKind),
    /// The process ends there: no step is done any more, and nothing is tidied up.
    Ends(usize),
}

/// The disk.
#[derive(Debug, Default)]
pub struct Disk {
    trouble: Option<Trouble>,
    steps: Cell<usize>,
}

/// What may be in the way of a file.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Before {
    /// It is replaced.
    Replace,
    /// It stays, and the step fails.
    Keep,
}

impl Disk {
    /// A disk with trouble to come.
    #[must_use]
    pub fn troubled(trouble: Trouble) -> Self {
        Self { trouble: Some(trouble), steps: Cell::default() }
    }

    /// How many steps have been tried.
    #[must_use]
    pub fn steps(&self) -> usize {
        self.steps.get()
    }

    /// Makes a folder and those above it.
    ///
    /// # Errors
    /// As the operating system says.
    pub fn make_folder(&self, folder: &Path) -> io::Result<()> {
        self.step(|| fs::create_dir_all(folder))
    }

    /// Writes a whole file in place of what may be there: to the side, flushed, renamed,
    /// and the folder flushed.
    ///
    /// # Errors
    /// As the operating system says; what was there is as it was.
    pub fn replace(&self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        self.put(path, bytes, Before::Replace)
    }

    /// Writes a whole file where there is none.
    ///
    /// # Errors
    /// As the operating system says, and where there is one; it is as it was.
    pub fn create(&self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        self.put(path, bytes, Before::Keep)
    }

    /// Removes a file; one that is not there is no failure.
    ///
    /// # Errors
    /// As the operating system says.
    pub fn remove(&self, path: &Path) -> io::Result<()> {
        self.step(|| match fs::remove_file(path) {
            Err(error) if error.kind() != io::ErrorKind::NotFound => Err(error),
            _ => Ok(()),
        })
    }

    /// Removes what writers left in a folder that were ended. Nobody else may be writing there.
    ///
    /// # Errors
    /// As the operating system says.
    pub fn sweep(&self, folder: &Path) -> io::Result<()> {
        let Ok(entries) = fs::read_dir(folder) else { return Ok(()) };
        for entry in entries {
            let entry = entry?;
            if entry.file_name().to_string_lossy().starts_with(PART) {
                self.remove(&entry.path())?;
            }
        }
        Ok(())
    }

    /// Writes a file to the side, whole and flushed; [`settle`](Self::settle) gives it its name.
    ///
    /// # Errors
    /// As the operating system says.
    pub fn stage(&self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        let part = part_of(path)?;
        let staged = self.written(&part, bytes);
        if staged.is_err() {
            self.drop_part(path);
        }
        staged
    }

    /// Gives a staged file its name, where nothing has it.
    ///
    /// # Errors
    /// As the operating system says, and where something has it.
    pub fn settle(&self, path: &Path) -> io::Result<()> {
        let part = part_of(path)?;
        // A link and a removal: unlike a rename, a link never replaces a file.
        let linked = self.step(|| fs::hard_link(&part, path));
        match linked {
            Err(error) if error.kind() == io::ErrorKind::AlreadyExists => return Err(error),
            // Some disks know no links. There is nobody else: the lock is held.
            Err(_) if !path.exists() => return self.step(|| fs::rename(&part, path)),
            other => other?,
        }
        self.step(|| fs::remove_file(&part))
    }

    /// Has the operating system write down what was named in a folder.
    ///
    /// # Errors
    /// As the operating system says.
    pub fn flush(&self, folder: &Path) -> io::Result<()> {
        self.step(|| flush_folder(folder))
    }

    /// Removes a staged file, as far as the disk lets it: the next run sweeps.
    pub fn drop_part(&self, path: &Path) {
        if let Ok(part) = part_of(path)
            && !self.is_ended()
        {
            drop(fs::remove_file(part));
        }
    }

    fn put(&self, path: &Path, bytes: &[u8], before: Before) -> io::Result<()> {
        self.stage(path, bytes)?;
        let named = match before {
            Before::Replace => part_of(path).and_then(|part| self.step(|| fs::rename(part, path))),
            Before::Keep => self.settle(path),
        };
        if named.is_err() {
            self.drop_part(path);
        }
        named?;
        self.flush(path.parent().unwrap_or(Path::new("")))
    }

    fn written(&self, part: &Path, bytes: &[u8]) -> io::Result<()> {
        // A part that an ended process left under this very name holds nothing of worth.
        let mut file = self.step(|| OpenOptions::new().write(true).create(true).truncate(true).open(part))?;
        let (first, second) = bytes.split_at(bytes.len() / 2);
        self.step(|| file.write_all(first))?;
        self.step(|| file.write_all(second))?;
        self.step(|| file.sync_all())
    }

    fn is_ended(&self) -> bool {
        matches!(self.trouble, Some(Trouble::Ends(at)) if self.steps.get() >= at)
    }

    fn step<T>(&self, act: impl FnOnce() -> io::Result<T>) -> io::Result<T> {
        self.steps.set(self.steps.get() + 1);
        match self.trouble {
            Some(Trouble::Fails(at, kind)) if self.steps.get() >= at => Err(kind.into()),
            Some(Trouble::Ends(at)) if self.steps.get() >= at => Err(io::ErrorKind::Interrupted.into()),
            _ => act(),
        }
    }
}

/// The name under which a file is written before it gets its own.
fn part_of(path: &Path) -> io::Result<PathBuf> {
    let name = path.file_name().ok_or(io::ErrorKind::InvalidFilename)?;
    Ok(path.with_file_name(format!("{PART}{}.part", name.to_string_lossy())))
}

/// Has the operating system write down that a folder has another entry.
#[cfg(unix)]
fn flush_folder(folder: &Path) -> io::Result<()> {
    let folder = if folder.as_os_str().is_empty() { Path::new(".") } else { folder };
    File::open(folder)?.sync_all()
}

/// Elsewhere a rename is written down by itself, and a folder cannot be opened as a file.
#[cfg(not(unix))]
fn flush_folder(_: &Path) -> io::Result<()> {
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_file_is_the_old_one_or_the_new_one_wherever_it_ends() {
        let folder = tempfile::tempdir().expect("a temporary folder can be made");
        let path = folder.path().join("register.toml");
        let sound = Disk::default();
        sound.replace(&path, b"old").expect("it can be written");
        for at in 1..=sound.steps() {
            for trouble in [Trouble::Ends(at), Trouble::Fails(at, io::ErrorKind::StorageFull)] {
                assert!(Disk::troubled(trouble).replace(&path, b"new").is_err(), "{trouble:?}");
                let found = fs::read(&path).expect("it is there");
                assert!(found == b"old" || found == b"new", "{trouble:?}");
                Disk::default().replace(&path, b"old").expect("it can be written again");
                Disk::default().sweep(folder.path()).expect("parts can be removed");
                assert_eq!(fs::read_dir(folder.path()).expect("it can be listed").count(), 1);
            }
        }
    }

    #[test]
    fn what_is_there_is_not_overwritten() {
        let folder = tempfile::tempdir().expect("a temporary folder can be made");
        let path = folder.path().join("A_r1.pdf");
        let disk = Disk::default();
        disk.create(&path, b"first").expect("there is none");
        let refused = disk.create(&path, b"second").expect_err("there is one");
        assert_eq!(refused.kind(), io::ErrorKind::AlreadyExists);
        assert_eq!(fs::read(&path).expect("it is there"), b"first");
    }
}
