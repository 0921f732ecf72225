//! Keeps two people from issuing on one folder at the same time.
//!
//! The operating system holds the lock, so that a process that ends in whatever way sets
//! it free; the file says who has it and since when, for the second person.

use std::fs::{self, File, OpenOptions, TryLockError};
use std::io::{self, Read, Seek, Write};
use std::path::{Path, PathBuf};

use chrono::{DateTime, FixedOffset};
use same_file::Handle;

/// The file, hidden beside the register.
const LOCK_FILE: &str = ".register.lock";

/// How often the file may vanish between opening and locking it before that is a failure.
const TRIES: usize = 20;

/// Who holds the lock.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Owner {
    /// Who, as far as the operating system knows: user and machine.
    pub who: String,
    /// The number of the process.
    pub process: u32,
    /// Since when.
    pub since: DateTime<FixedOffset>,
}

/// A lock that is held until it is dropped.
#[derive(Debug)]
pub struct Lock {
    file: File,
    path: PathBuf,
}

/// Why there is no lock.
#[derive(Debug)]
pub enum Locked {
    /// Another process has it; by whom where the file says so.
    Held(Option<Owner>),
    /// The file cannot be made, or the disk knows no locks.
    Failed(io::Error),
}

impl From<io::Error> for Locked {
    fn from(error: io::Error) -> Self {
        Self::Failed(error)
    }
}

impl Lock {
    /// Takes the lock of a folder of specs, without waiting.
    ///
    /// # Errors
    /// When somebody else has it, or the file cannot be made.
    pub fn take(folder: &Path, owner: &Owner) -> Result<Self, Locked> {
        let path = folder.join(LOCK_FILE);
        for _ in 0..TRIES {
            let mut file =
                OpenOptions::new().read(true).write(true).create(true).truncate(false).open(&path)?;
            match file.try_lock() {
                Ok(()) => {}
                Err(TryLockError::WouldBlock) => return Err(Locked::Held(read(&mut file))),
                Err(TryLockError::Error(error)) => return Err(error.into()),
            }
            // Whoever had it before may have removed the file that was opened.
            let is_there = Handle::from_path(&path).ok() == Handle::from_file(file.try_clone()?).ok();
            if is_there {
                file.set_len(0)?;
                file.write_all(written(owner).as_bytes())?;
                file.flush()?;
                return Ok(Self { file, path });
            }
        }
        Err(Locked::Failed(io::ErrorKind::ResourceBusy.into()))
    }
}

impl Drop for Lock {
    fn drop(&mut self) {
        // Before it is set free: afterwards the file may be another's.
        drop(fs::remove_file(&self.path));
        drop(self.file.unlock());
    }
}

fn written(owner: &Owner) -> String {
    format!("{}\n{}\n{}\n", owner.since.to_rfc3339(), owner.process, owner.who)
}

fn read(file: &mut File) -> Option<Owner> {
    let mut text = String::new();
    file.rewind().ok()?;
    file.take(1000).read_to_string(&mut text).ok()?;
    let mut lines = text.lines();
    let since = DateTime::parse_from_rfc3339(lines.next()?).ok()?;
    let process = lines.next()?.parse().ok()?;
    Some(Owner { who: lines.next()?.to_owned(), process, since })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn owner(who: &str) -> Owner {
        let since = DateTime::parse_from_rfc3339("2026-11-28T21:55:00+01:00").expect("a time");
        Owner { who: who.to_owned(), process: 4711, since }
    }

    #[test]
    fn the_second_is_told_who_and_since_when() {
        let folder = tempfile::tempdir().expect("a temporary folder can be made");
        let first = Lock::take(folder.path(), &owner("km at bench-2")).expect("nobody has it");
        match Lock::take(folder.path(), &owner("rs at bench-1")) {
            Err(Locked::Held(Some(known))) => assert_eq!(known, owner("km at bench-2")),
            other => panic!("{other:?}"),
        }
        drop(first);
        assert!(!folder.path().join(LOCK_FILE).exists());
        assert!(Lock::take(folder.path(), &owner("rs at bench-1")).is_ok());
    }

    #[test]
    fn what_a_dead_process_left_is_no_lock() {
        let folder = tempfile::tempdir().expect("a temporary folder can be made");
        fs::write(folder.path().join(LOCK_FILE), written(&owner("km at bench-2")))
            .expect("it can be written");
        assert!(Lock::take(folder.path(), &owner("rs at bench-1")).is_ok());
    }
}
