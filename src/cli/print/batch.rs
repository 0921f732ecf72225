//! Composes, typesets and writes documents one after another in this process.

use std::fs::{self, Permissions};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::time::Instant;

use serde::{Deserialize, Serialize};

use crate::cli::outcome::{Outcome, say};
use crate::cli::templates::Templates;
use crate::diag::reason;
use crate::document::{self, Context, Listed};
use crate::typeset::{Job, Typesetter};

/// What a process says about one document; workers send it to their parent as
/// a line of JSON.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
pub(super) struct Report {
    pub id: String,
    pub pages: usize,
    /// How many pages it was made for; 0 where any number will do.
    pub expected: usize,
    pub milliseconds: f64,
    pub no_source: Vec<String>,
    pub not_given: Vec<String>,
    /// Why it could not be made.
    pub failure: Option<String>,
}

/// A process's typesetter and output folder.
pub(super) struct Batch<'a> {
    context: Context<'a>,
    out: PathBuf,
    typesetter: Typesetter,
}

impl<'a> Batch<'a> {
    /// Makes the output folder and sees that a file can be written there.
    pub(super) fn new(context: Context<'a>, out: &Path, templates: &Templates) -> io::Result<Self> {
        fs::create_dir_all(out)?;
        drop(temporary(out)?);
        // One thread each: processes share the work, and a pool of several
        // threads would keep many layouts in memory at once.
        let pool = rayon::ThreadPoolBuilder::new().num_threads(1).use_current_thread();
        pool.build_global().map_err(io::Error::other)?;
        let typesetter = templates.typesetter(context.words);
        Ok(Self { context, out: out.to_owned(), typesetter })
    }

    /// Prints documents as a worker, a line of JSON each.
    pub(super) fn work<'b>(&self, documents: impl Iterator<Item = &'b Listed>) -> Outcome {
        for listed in documents {
            // A parent that is gone reads no reports: then there is nobody to print for.
            let told = serde_json::to_string(&self.print(listed)).map_err(io::Error::from).and_then(say);
            if told.is_err() {
                return Outcome::Failed;
            }
        }
        Outcome::Done
    }

    /// Prints one document.
    pub(super) fn print(&self, listed: &Listed) -> Report {
        let started = Instant::now();
        let mut report = Report { id: listed.id.clone(), ..Report::default() };
        let Some(document) = document::compose(self.context, listed) else {
            report.failure = Some(listed.spec.clone());
            return report;
        };
        let job = Job {
            id: &document.id,
            template: document.template,
            data: &document.data,
            pages: document.pages,
            date: self.context.date,
        };
        match self.typesetter.pdf(job) {
            Ok(printed) => {
                report.pages = printed.pages;
                report.expected = document.pages;
                let path = self.out.join(listed.file_name());
                report.failure = self.write(&path, &printed.pdf).err().map(|error| reason(&error));
            }
            Err(failure) => report.failure = Some(failure.to_string()),
        }
        report.no_source = document.no_source;
        report.not_given = document.not_given;
        report.milliseconds = started.elapsed().as_secs_f64() * 1000.0;
        report
    }

    /// Writes a file whole or not at all: to the side, then renamed.
    fn write(&self, path: &Path, bytes: &[u8]) -> io::Result<()> {
        let mut file = temporary(&self.out)?;
        file.write_all(bytes)?;
        file.persist(path).map_err(|error| error.error)?;
        Ok(())
    }
}

/// A file beside the real ones that vanishes if it is not renamed.
fn temporary(folder: &Path) -> io::Result<tempfile::NamedTempFile> {
    let mut builder = tempfile::Builder::new();
    builder.prefix(".bayleaf-").suffix(".part");
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        // As any new file: the user's mask decides, not the library's privacy.
        builder.permissions(Permissions::from_mode(0o666));
    }
    builder.tempfile_in(folder)
}
