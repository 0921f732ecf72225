//! Composes, typesets and writes documents one after another in this process.

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::PathBuf;

use serde::{Deserialize, Serialize};

use super::plan::Unit;
use super::sheets::{self, Bundled, Kept};
use crate::cli::args::{PaperFormat, Print};
use crate::cli::outcome::{Outcome, say};
use crate::cli::setter::Setter;
use crate::cli::templates::Templates;
use crate::cli::whole;
use crate::cli::why::Why;
use crate::diag::reason;
use crate::document::{self, Context, Document, Listed};
use crate::typeset::{Job, Laid, Leaf, Picture, Press, Typesetter};

/// What a process says about one document.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
pub(super) struct Report {
    pub id: String,
    pub pages: usize,
    /// How many pages it was made for; 0 where any number will do.
    pub expected: usize,
    pub no_source: Vec<String>,
    pub not_given: Vec<String>,
    /// Pages without the bar of 100 mm, of those that should have it.
    pub without_bar: Vec<usize>,
    /// Why it could not be made.
    pub failure: Option<Why>,
}

/// What a process says; workers send it to their parent as a line of JSON.
#[derive(Debug, Clone, Serialize, Deserialize)]
pub(super) enum Told {
    Document(Report),
    Sheets(Bundled),
}

/// A file's name, and what it holds.
type Named = (String, Vec<u8>);

/// A process's typesetter and output folder.
pub(super) struct Batch<'a> {
    context: Context<'a>,
    out: PathBuf,
    form: PaperFormat,
    ppi: f64,
    setter: Setter,
    /// How sheets are printed, where cards go onto sheets.
    press: Option<Press>,
}

impl<'a> Batch<'a> {
    /// Makes the output folder and sees that a file can be written there.
    pub(super) fn new(context: Context<'a>, arguments: &Print, templates: Templates) -> io::Result<Self> {
        let out = &arguments.out;
        fs::create_dir_all(out)?;
        drop(whole::temporary(out)?);
        // One thread each: processes share the work, and a pool of several
        // threads would keep many layouts in memory at once.
        let pool = rayon::ThreadPoolBuilder::new().num_threads(1).use_current_thread();
        pool.build_global().map_err(io::Error::other)?;
        let setter = Setter::new(templates, context.words);
        let press = sheets::press(arguments, context);
        Ok(Self { context, out: out.clone(), form: arguments.format, ppi: arguments.ppi, setter, press })
    }

    /// How sheets are printed.
    pub(super) fn press(&self) -> Option<&Press> {
        self.press.as_ref()
    }

    /// The templates that it prints with.
    pub(super) fn templates(&self) -> &Templates {
        self.setter.templates()
    }

    /// Prints a share as a worker, a line of JSON for each document and file of sheets.
    pub(super) fn work(&self, units: &[Unit<'_>]) -> Outcome {
        let mut kept = Kept::default();
        for unit in units {
            // A parent that is gone reads no reports: then there is nobody to print for.
            let mut told = Ok(());
            self.print(*unit, &mut kept, &mut |what| {
                if told.is_ok() {
                    told = serde_json::to_string(&what).map_err(io::Error::from).and_then(say);
                }
            });
            if told.is_err() {
                return Outcome::Failed;
            }
        }
        Outcome::Done
    }

    /// Prints a unit. Leaves that fill no sheet are kept.
    pub(super) fn print(&self, unit: Unit<'_>, kept: &mut Kept, tell: &mut dyn FnMut(Told)) {
        let (number, cards) = match unit {
            Unit::Single(listed) => (0, std::slice::from_ref(listed)),
            Unit::Bundle(number, cards) => (number, cards),
        };
        let mut leaves = Vec::new();
        for listed in cards {
            let (report, more) = self.written(listed, document::compose(self.context, listed));
            tell(Told::Document(report));
            leaves.extend(more);
        }
        let Some(press) = self.press.as_ref().filter(|_| !leaves.is_empty()) else { return };
        // One that was expected to be as large as the sheet, and is not, has no file to go into.
        let (full, rest) =
            if number == 0 { (Vec::new(), leaves) } else { Typesetter::full_sheets(leaves, press) };
        let mut bundled = self.imposed(number, full);
        bundled.left = kept.keep(rest);
        tell(Told::Sheets(bundled));
    }

    /// Places leaves on sheets and writes their file.
    pub(super) fn imposed(&self, number: usize, leaves: Vec<Leaf>) -> Bundled {
        let Some(press) = self.press.as_ref().filter(|_| !leaves.is_empty()) else {
            return Bundled { number, ..Bundled::default() };
        };
        // Laid out once more only where that fails.
        match self.setter.make(self.context.words, |typesetter| typesetter.impose(leaves.clone(), press)) {
            Ok(imposed) => {
                let written = whole::write(&self.out, &sheets::file(number), &imposed.pdf);
                Bundled::imposed(number, &imposed, written)
            }
            Err(why) => Bundled { number, failure: Some(why), ..Bundled::default() },
        }
    }

    /// The leaves of a document once more, where another process laid them out.
    pub(super) fn leaves(&self, listed: &Listed) -> Vec<Leaf> {
        self.press.as_ref().map_or_else(Vec::new, |press| {
            let document = document::compose(self.context, listed);
            // One that cannot be laid out was reported where it was first.
            let laid = document.map(|document| {
                self.setter.typesetter().for_sheet(Job::of(&document, self.context.date), press)
            });
            match laid {
                Some(Ok(Laid::Leaves(leaves, _))) => leaves,
                _ => Vec::new(),
            }
        })
    }

    /// Prints the index of documents; `printed` are the pages of those that are printed, `issued` their
    /// valid revisions.
    pub(super) fn print_index(
        &self,
        listed: &Listed,
        printed: &BTreeMap<String, usize>,
        issued: &BTreeMap<String, String>,
    ) -> Report {
        let date = self.context.date;
        // One that cannot be laid out is reported where it is printed.
        let counted = |document: &Document| self.setter.typesetter().page_count(Job::of(document, date)).ok();
        // Data are written without being laid out.
        let known = |document: &Document| printed.get(&document.id).copied().filter(|pages| *pages > 0);
        let pages = |document: &Document| known(document).or_else(|| counted(document));
        self.written(
            listed,
            document::compose_index(self.context, listed, &pages, &|id| issued.get(id).cloned()),
        )
        .0
    }

    /// Writes a document's files, or gives its leaves where they go onto sheets.
    fn written(&self, listed: &Listed, composed: Option<Document>) -> (Report, Vec<Leaf>) {
        let mut report = Report { id: listed.id.clone(), ..Report::default() };
        let Some(document) = composed else {
            report.failure = Some(Why::Run(listed.spec.clone()));
            return (report, Vec::new());
        };
        let mut leaves = Vec::new();
        match self.files((listed, &document), &mut report, &mut leaves) {
            Ok(files) => {
                report.expected = document.pages;
                let mut written = files.iter().map(|(name, bytes)| whole::write(&self.out, name, bytes));
                report.failure = written.find_map(Result::err).map(|error| Why::Run(reason(&error)));
            }
            Err(why) => report.failure = Some(why),
        }
        report.no_source = document.no_source;
        report.not_given = document.not_given;
        (report, leaves)
    }

    /// The document's files by name, and how many pages it has.
    fn files(
        &self,
        (listed, document): (&Listed, &Document),
        report: &mut Report,
        leaves: &mut Vec<Leaf>,
    ) -> Result<Vec<Named>, Why> {
        let context = self.context;
        let job = Job::of(document, context.date);
        let named = |pdf: Vec<u8>| vec![(format!("{}.pdf", document.id), pdf)];
        if let Some(press) = &self.press {
            let laid = self.setter.make_of(context, listed, |typesetter| typesetter.for_sheet(job, press))?;
            return Ok(match laid {
                Laid::Whole(printed, without_bar) => {
                    (report.pages, report.without_bar) = (printed.pages, without_bar);
                    named(printed.pdf)
                }
                Laid::Leaves(laid, pages) => {
                    report.pages = pages;
                    leaves.extend(laid);
                    Vec::new()
                }
            });
        }
        let picture = match self.form {
            PaperFormat::Pdf => {
                let printed = self.setter.make_of(context, listed, |typesetter| typesetter.pdf(job))?;
                report.pages = printed.pages;
                return Ok(named(printed.pdf));
            }
            PaperFormat::Png => Picture::Png { ppi: self.ppi },
            PaperFormat::Svg => Picture::Svg,
            PaperFormat::Json => return Ok(vec![(format!("{}.json", document.id), document.named_data())]),
        };
        let end = if picture == Picture::Svg { "svg" } else { "png" };
        let pictures =
            self.setter.make_of(context, listed, |typesetter| typesetter.pictures(job, picture))?;
        report.pages = pictures.len();
        let named =
            |(index, bytes): (usize, Vec<u8>)| (format!("{}-{}.{end}", document.id, index + 1), bytes);
        Ok(pictures.into_iter().enumerate().map(named).collect())
    }
}
