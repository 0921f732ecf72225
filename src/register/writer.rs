//! One act on the disk: everything is written to the side, and one rename makes it valid.
//!
//! Papers are staged, then named, then the register is replaced. Whatever ends the process
//! before that last rename leaves files that no register stands for: the next act removes them.

use std::io;
use std::path::{Path, PathBuf};

use super::disk::Disk;
use super::record::Record;
use super::shelf::Shelf;

/// What could not be written, and why.
#[derive(Debug)]
pub struct Refused {
    /// The file or folder.
    pub path: PathBuf,
    /// As the operating system says.
    pub error: io::Error,
}

/// An act that is being written.
#[derive(Debug)]
pub struct Writer<'a> {
    disk: &'a Disk,
    shelf: &'a Shelf,
    register: &'a Path,
    staged: Vec<PathBuf>,
    named: Vec<PathBuf>,
}

impl<'a> Writer<'a> {
    /// Makes the folder of issued papers, and removes what earlier acts left that did not come to
    /// their end. The lock must be held.
    ///
    /// # Errors
    /// When a folder cannot be made or read, or a file there not be removed.
    pub fn begin(
        disk: &'a Disk,
        shelf: &'a Shelf,
        register: &'a Path,
        record: &Record,
    ) -> Result<Self, Refused> {
        let of = |path: &Path| {
            let path = path.to_owned();
            move |error| Refused { path, error }
        };
        let folder = shelf.folder();
        disk.make_folder(folder).map_err(of(folder))?;
        disk.sweep(folder).map_err(of(folder))?;
        let beside = register.parent().unwrap_or(Path::new("."));
        disk.sweep(beside).map_err(of(beside))?;
        for stray in shelf.strays(record).map_err(of(folder))? {
            disk.remove(&stray).map_err(of(&stray))?;
        }
        Ok(Self { disk, shelf, register, staged: Vec::new(), named: Vec::new() })
    }

    /// Writes a paper to the side.
    ///
    /// # Errors
    /// When it cannot be written.
    pub fn stage(&mut self, path: PathBuf, bytes: &[u8]) -> Result<(), Refused> {
        match self.disk.stage(&path, bytes) {
            Ok(()) => {
                self.staged.push(path);
                Ok(())
            }
            Err(error) => Err(Refused { path, error }),
        }
    }

    /// Gives all papers their names, then makes them valid.
    ///
    /// # Errors
    /// When something cannot be named; then nothing is valid.
    pub fn commit(mut self, register: &str) -> Result<(), Refused> {
        while let Some(path) = self.staged.first() {
            let path = path.clone();
            self.disk.settle(&path).map_err(|error| Refused { path: path.clone(), error })?;
            self.staged.remove(0);
            self.named.push(path);
        }
        let folder = self.shelf.folder();
        if !self.named.is_empty() {
            self.disk.flush(folder).map_err(|error| Refused { path: folder.to_owned(), error })?;
        }
        let written = self.disk.replace(self.register, register.as_bytes());
        written.map_err(|error| Refused { path: self.register.to_owned(), error })?;
        self.named.clear();
        Ok(())
    }
}

impl Drop for Writer<'_> {
    /// Of an act that was refused nothing stays, as far as the disk lets it be removed.
    fn drop(&mut self) {
        self.staged.iter().for_each(|path| self.disk.drop_part(path));
        for path in &self.named {
            drop(self.disk.remove(path));
        }
    }
}
