//! Composes, typesets and writes documents one after another in this process.

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::PathBuf;

use serde::{Deserialize, Serialize};

use crate::cli::args::{PaperFormat, Print};
use crate::cli::outcome::{Outcome, say};
use crate::cli::templates::Templates;
use crate::cli::{sizes, whole};
use crate::diag::reason;
use crate::document::{self, Context, Document, Listed};
use crate::typeset::{Failure, Job, Picture, Typesetter};

/// What a process says about one document; workers send it to their parent as
/// a line of JSON.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
pub(super) struct Report {
    pub id: String,
    pub pages: usize,
    /// How many pages it was made for; 0 where any number will do.
    pub expected: usize,
    pub no_source: Vec<String>,
    pub not_given: Vec<String>,
    /// Why it could not be made.
    pub failure: Option<String>,
}

/// A file's name, and what it holds.
type Named = (String, Vec<u8>);

/// A process's typesetter and output folder.
pub(super) struct Batch<'a> {
    context: Context<'a>,
    out: PathBuf,
    form: PaperFormat,
    ppi: f64,
    typesetter: Typesetter,
}

impl<'a> Batch<'a> {
    /// Makes the output folder and sees that a file can be written there.
    pub(super) fn new(context: Context<'a>, arguments: &Print, templates: &Templates) -> io::Result<Self> {
        let out = &arguments.out;
        fs::create_dir_all(out)?;
        drop(whole::temporary(out)?);
        // One thread each: processes share the work, and a pool of several
        // threads would keep many layouts in memory at once.
        let pool = rayon::ThreadPoolBuilder::new().num_threads(1).use_current_thread();
        pool.build_global().map_err(io::Error::other)?;
        let typesetter = templates.typesetter(context.words);
        Ok(Self { context, out: out.clone(), form: arguments.format, ppi: arguments.ppi, typesetter })
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
        self.written(listed, document::compose(self.context, listed))
    }

    /// Prints the index of documents; `printed` are the pages of those that are printed.
    pub(super) fn print_index(&self, listed: &Listed, printed: &BTreeMap<String, usize>) -> Report {
        let date = self.context.date;
        // One that cannot be laid out is reported where it is printed.
        let counted = |document: &Document| self.typesetter.page_count(Job::of(document, date)).ok();
        let pages = |document: &Document| printed.get(&document.id).copied().or_else(|| counted(document));
        self.written(listed, document::compose_index(self.context, listed, &pages))
    }

    fn written(&self, listed: &Listed, composed: Option<Document>) -> Report {
        let mut report = Report { id: listed.id.clone(), ..Report::default() };
        let Some(document) = composed else {
            report.failure = Some(listed.spec.clone());
            return report;
        };
        match self.files(&document) {
            Ok((pages, files)) => {
                report.pages = pages;
                report.expected = document.pages;
                let mut written = files.iter().map(|(name, bytes)| whole::write(&self.out, name, bytes));
                report.failure = written.find_map(Result::err).map(|error| reason(&error));
            }
            Err(failure) => {
                report.failure = Some(sizes::reason(self.context, &self.typesetter, listed, &failure));
            }
        }
        report.no_source = document.no_source;
        report.not_given = document.not_given;
        report
    }

    /// The document's files by name, and how many pages it has.
    fn files(&self, document: &Document) -> Result<(usize, Vec<Named>), Failure> {
        let job = Job::of(document, self.context.date);
        let picture = match self.form {
            PaperFormat::Pdf => {
                let printed = self.typesetter.pdf(job)?;
                return Ok((printed.pages, vec![(format!("{}.pdf", document.id), printed.pdf)]));
            }
            PaperFormat::Png => Picture::Png { ppi: self.ppi },
            PaperFormat::Svg => Picture::Svg,
        };
        let end = if picture == Picture::Svg { "svg" } else { "png" };
        let pictures = self.typesetter.pictures(job, picture)?;
        let named =
            |(index, bytes): (usize, Vec<u8>)| (format!("{}-{}.{end}", document.id, index + 1), bytes);
        Ok((pictures.len(), pictures.into_iter().enumerate().map(named).collect()))
    }
}
