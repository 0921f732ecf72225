//! Composes, typesets and writes documents one after another in this process.

use std::fs;
use std::io;
use std::path::PathBuf;
use std::time::Instant;

use serde::{Deserialize, Serialize};

use crate::cli::args::{PaperFormat, Print};
use crate::cli::outcome::{Outcome, say};
use crate::cli::templates::Templates;
use crate::cli::whole;
use crate::diag::reason;
use crate::document::{self, Context, Document, Listed, Paperwork};
use crate::typeset::{Failure, Picture, Typesetter};

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
        let started = Instant::now();
        let mut report = Report { id: listed.id.clone(), ..Report::default() };
        let Some(document) = document::compose(self.context, &self.counted(listed)) else {
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
            Err(failure) => report.failure = Some(failure.said(self.context.words)),
        }
        report.no_source = document.no_source;
        report.not_given = document.not_given;
        report.milliseconds = started.elapsed().as_secs_f64() * 1000.0;
        report
    }

    /// The index of documents with the pages of those that have to be counted; any other
    /// document as it is listed.
    fn counted(&self, listed: &Listed) -> Listed {
        let mut listed = listed.clone();
        let Paperwork::Index { pages } = &mut listed.paperwork else { return listed };
        let others = document::list(self.context.model);
        let others = others.iter().filter(|other| other.id != listed.id);
        let composed = others.filter_map(|other| document::compose(self.context, other));
        for document in composed.filter(|document| document.pages == 0) {
            // One that cannot be laid out is reported where it is printed.
            if let Ok(count) = self.typesetter.page_count(super::job(&document, self.context.date)) {
                pages.insert(document.id.clone(), count);
            }
        }
        listed
    }

    /// The document's files by name, and how many pages it has.
    fn files(&self, document: &Document) -> Result<(usize, Vec<Named>), Failure> {
        let job = super::job(document, self.context.date);
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
