//! The folder of issued papers: how its files are called, what of it is valid, what an earlier
//! paper says.

use std::collections::BTreeSet;
use std::ffi::OsString;
use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use chrono::NaiveDate;

use super::kept::Kept;
use super::plan::{Archive, Earlier};
use super::record::Record;
use crate::enclosure::{self, Known};

/// Its name below the folder of output.
const ISSUED: &str = "issued";

/// How the name of a pull list begins.
const PULL_LIST: &str = "pull-list_";

/// The folder of issued papers.
#[derive(Debug)]
pub struct Shelf {
    out: PathBuf,
    folder: PathBuf,
    /// The specs in papers that were looked into.
    specs: Known,
}

impl Shelf {
    /// Below a folder of output.
    #[must_use]
    pub fn of(out: &Path) -> Self {
        Self { out: out.to_owned(), folder: out.join(ISSUED), specs: Known::default() }
    }

    /// The folder.
    #[must_use]
    pub fn folder(&self) -> &Path {
        &self.folder
    }

    /// Where the folder leads, where that is outside the folder of output: through a symbolic
    /// link, what is issued would land where nobody looks for it.
    #[must_use]
    pub fn leads_outside(&self) -> Option<PathBuf> {
        let (out, folder) = (fs::canonicalize(&self.out).ok()?, fs::canonicalize(&self.folder).ok()?);
        (!folder.starts_with(out)).then_some(folder)
    }

    /// The file of a revision of a document.
    #[must_use]
    pub fn paper(&self, id: &str, revision: u32) -> PathBuf {
        self.folder.join(format!("{id}_r{revision}.pdf"))
    }

    /// The file of a pull list, by its number as the register has it: `2026-11-29/1`.
    #[must_use]
    pub fn pull_list(&self, number: &str) -> PathBuf {
        self.folder.join(format!("{PULL_LIST}{}.pdf", number.replace('/', "_")))
    }

    /// The number that the next pull list of a day gets.
    #[must_use]
    pub fn next_pull_list(&self, date: NaiveDate, record: &Record) -> u32 {
        let used = |number: u32| {
            let number = format!("{date}/{number}");
            record.pull_lists().any(|known| known == number)
        };
        (1..).find(|number| !used(*number)).unwrap_or(u32::MAX)
    }

    /// Papers and pull lists that the register has and the folder has not, each by the name of its
    /// file, in the order of the register. Older revisions are kept as the valid ones are.
    ///
    /// # Errors
    /// When the folder cannot be read; in one that is not there all are missing.
    pub fn lost(&self, record: &Record) -> io::Result<Vec<String>> {
        let names = self.names()?;
        let papers = record.documents().flat_map(|(id, history)| {
            history.issues().iter().map(move |issue| self.paper(id, issue.act.revision.value))
        });
        let files = papers.chain(record.pull_lists().map(|number| self.pull_list(number)));
        let name = |file: PathBuf| file.file_name().map(ToOwned::to_owned);
        let lost = files.filter_map(name).filter(|name| !names.contains(name));
        Ok(lost.map(|name| name.to_string_lossy().into_owned()).collect())
    }

    /// Files that look issued and which no entry of the register stands for: what an issue left
    /// that did not come to its end. They were never valid.
    ///
    /// # Errors
    /// When the folder cannot be read; one that is not there is empty.
    pub fn strays(&self, record: &Record) -> io::Result<Vec<PathBuf>> {
        let mut names = self.names()?;
        names.retain(|name| name.to_str().is_some_and(|name| is_stray(name, record)));
        Ok(names.into_iter().map(|name| self.folder.join(name)).collect())
    }

    /// The names of the files in it, in their order; none where it is not there.
    fn names(&self) -> io::Result<BTreeSet<OsString>> {
        match fs::read_dir(&self.folder) {
            Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(BTreeSet::new()),
            entries => entries?.map(|entry| Ok(entry?.file_name())).collect(),
        }
    }
}

/// Whether a file has the name of a paper or pull list that the register does not know.
fn is_stray(name: &str, record: &Record) -> bool {
    let Some(stem) = name.strip_suffix(".pdf") else { return false };
    if let Some(number) = stem.strip_prefix(PULL_LIST) {
        let number = number.replace('_', "/");
        return !record.pull_lists().any(|known| known == number);
    }
    let Some((id, number)) = stem.rsplit_once("_r") else { return false };
    let Ok(number) = number.parse() else { return false };
    record.of(id).is_none_or(|history| history.revision(number).is_none())
}

impl Archive for Shelf {
    fn earlier(&self, id: &str, revision: u32) -> Option<Earlier> {
        let bytes = fs::read(self.paper(id, revision)).ok()?;
        let enclosed = enclosure::read_knowing(&bytes, &self.specs).ok()?;
        // A file that somebody put in its place says nothing of this paper.
        if enclosed.record.id != id || enclosed.record.revision != revision {
            return None;
        }
        let title = enclosed.record.data.pointer("/furniture/title").and_then(serde_json::Value::as_str);
        Some(Earlier {
            title: title.unwrap_or_default().to_owned(),
            kept: Kept::of(&enclosed.record.cells(), &enclosed.record.data),
            texts: enclosed.specs,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_what_looks_issued_and_is_not_is_a_stray() {
        let record = Record::default();
        for stray in ["A_r1.pdf", "CUR.AMB-1_r12.pdf", "pull-list_2026-11-29_1.pdf"] {
            assert!(is_stray(stray, &record), "{stray}");
        }
        for other in ["A.pdf", "A_r1.txt", "notes_read.pdf", "A_r.pdf", ".seen"] {
            assert!(!is_stray(other, &record), "{other}");
        }
    }

    #[cfg(unix)]
    #[test]
    fn a_link_that_leads_out_is_seen() {
        let folder = tempfile::tempdir().expect("a temporary folder can be made");
        let (out, elsewhere) = (folder.path().join("out"), folder.path().join("elsewhere"));
        let shelf = Shelf::of(&out);
        assert_eq!(shelf.leads_outside(), None, "where there is nothing yet");
        fs::create_dir_all(&out).expect("it can be made");
        fs::create_dir_all(&elsewhere).expect("it can be made");
        std::os::unix::fs::symlink(&elsewhere, out.join("issued")).expect("links can be made");
        assert!(shelf.leads_outside().is_some_and(|to| to.ends_with("elsewhere")));
    }
}
