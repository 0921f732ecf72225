//! Turns a document's data and a template into PDF bytes.
//!
//! This room knows nothing of ohms: it sees a template name and JSON, and
//! returns pages. One [`Typesetter`] serves every document of a process.
//!
//! Invariant: a warning of the typesetting library is a failure. It means a
//! missing glyph, an unknown font or an element out of place, and none of
//! these may reach a wall.

mod attached;
mod cache;
mod changes;
mod embedded;
mod failure;
mod fits;
mod fonts;
mod geometry;
mod impose;
mod ink;
mod keep_out;
mod legible;
mod picture;
mod pieces;
mod world;

use std::sync::OnceLock;

use chrono::{Datelike, NaiveDate};
use serde_json::Value;
use typst::diag::{SourceDiagnostic, Warned};
use typst::foundations::{Datetime, Smart};
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards, Timestamp};

use crate::document::{self, Document, Reading};
use crate::model::Lamination;
use crate::words::Message;
pub use attached::Attachment;
pub use embedded::TEMPLATES;
pub use failure::{Complaint, Diagnosis, Failure, Spot};
pub use impose::{Flip, Imposed, Laid, Leaf, Press};
pub use picture::Picture;
pub use pieces::Piece;
use world::{Base, World};

/// A page with a little of everything, in the fonts of every page.
const WARM: &str = r#"#import "/theme.typ": *
#set text(font: family, stretch: stretch, fallback: false, lang: "en", hyphenate: true)
#block(width: 20mm)[Evaporator temperature *sensor* −20 °C]
#table(columns: 2, [1.234], [V])
"#;

/// Holds what all documents share: the library, the fonts, the templates.
pub struct Typesetter {
    base: Base,
    standards: PdfStandards,
    /// Of documents with files inside.
    enclosing_standards: PdfStandards,
    /// Of printed sheets, which have no structure.
    sheet_standards: PdfStandards,
    bar: OnceLock<Result<impose::Bar, Vec<Complaint>>>,
}

/// Names one document to typeset.
#[derive(Debug, Clone, Copy)]
pub struct Job<'a> {
    /// The document's id; it also seeds the identifier inside the PDF.
    pub id: &'a str,
    /// The template's file name, such as `sensor-card.typ`.
    pub template: &'a str,
    /// The document's data as JSON; the template reads it as `/data.json`.
    pub data: &'a [u8],
    /// How many pages are expected; 0 where they have to be counted. Counting
    /// takes a second layout. A number that turns out wrong costs that second
    /// layout and nothing else.
    pub pages: usize,
    /// How many pages it may have; 0 for any number.
    pub sides: usize,
    /// From where it is read: what is too small for that is refused.
    pub reading: Reading,
    /// How it is laminated, where it is: what that would cover or cut is refused.
    pub lamination: Option<&'a Lamination>,
    /// The date of issue, the only date the PDF carries.
    pub date: NaiveDate,
    /// Files that the PDF carries inside; with any it is PDF/A-3a and PDF/UA-1.
    pub attached: &'a [Attachment],
}

impl<'a> Job<'a> {
    /// The job of a composed document.
    #[must_use]
    pub fn of(document: &'a Document, date: NaiveDate) -> Self {
        Self {
            id: &document.id,
            template: document.template,
            data: &document.data,
            pages: document.pages,
            sides: document.sides,
            reading: document.reading,
            lamination: document.lamination.as_ref(),
            date,
            attached: &[],
        }
    }
}

/// The JSON Schema of the data of each template that receives any, by the template's name.
#[must_use]
pub fn schemas() -> Vec<(&'static str, Value)> {
    let mut all = document::schemas();
    all.push(impose::schema());
    all
}

/// A typeset document.
#[derive(Debug, Clone)]
pub struct Printed {
    /// The PDF file, whole.
    pub pdf: Vec<u8>,
    /// How many pages it has.
    pub pages: usize,
}

impl Typesetter {
    /// Prepares fonts and templates; `words` is the table of fixed words as JSON.
    #[must_use]
    pub fn new(words: &str) -> Self {
        Self::with_templates(TEMPLATES, words)
    }

    /// Prepares fonts with the given templates, `(path, text)` each.
    #[must_use]
    pub fn with_templates<'a>(
        templates: impl IntoIterator<Item = &'a (&'a str, &'a str)>,
        words: &str,
    ) -> Self {
        Self {
            base: Base::new(templates, words),
            standards: PdfStandards::new(&[PdfStandard::A_2a, PdfStandard::Ua_1])
                .expect("PDF/A-2a and PDF/UA-1 go together"),
            enclosing_standards: PdfStandards::new(&[PdfStandard::A_3a, PdfStandard::Ua_1])
                .expect("PDF/A-3a and PDF/UA-1 go together"),
            sheet_standards: PdfStandards::new(&[PdfStandard::A_2u]).expect("PDF/A-2u goes alone"),
            bar: OnceLock::new(),
        }
    }

    /// Has a template that is there and is no text: who imports it cannot be typeset.
    #[must_use]
    pub fn refusing(mut self, path: &str) -> Self {
        self.base.refuse(path);
        self
    }

    /// Parses and evaluates the built-in templates, so that the first documents find that done.
    /// Worth it where a processor has nothing to do, such as while specs are read.
    pub fn warm_up() {
        let imports = TEMPLATES.iter().filter(|(path, _)| path.starts_with("parts/"));
        let imports: String = imports.map(|(path, _)| format!("#import \"/{path}\" as part\n")).collect();
        let text = imports + WARM;
        let all: Vec<(&str, &str)> = TEMPLATES.iter().copied().chain([("warm.typ", text.as_str())]).collect();
        let base = Base::new(&all, "{}");
        // What comes of it is of no interest, only what the library remembers.
        drop(layout(&World::new(&base, "warm.typ", b"{}", 1)));
    }

    /// Typesets one document to PDF/A-2a and PDF/UA-1.
    ///
    /// # Errors
    /// When the library reports an error or a warning.
    pub fn pdf(&self, job: Job<'_>) -> Result<Printed, Failure> {
        let (pdf, pages) = self.made(job, |world, document| self.export(world, job, document))?;
        Ok(Printed { pdf, pages })
    }

    /// The pages of one document as pictures, in their order.
    ///
    /// # Errors
    /// As [`pdf`](Self::pdf); also where a character has no glyph, which the standards
    /// of a PDF refuse by themselves.
    pub fn pictures(&self, job: Job<'_>, form: Picture) -> Result<Vec<Vec<u8>>, Failure> {
        self.made(job, |_, document| picture::of(document, form).map_err(library))
            .map(|(pictures, _)| pictures)
    }

    /// All pages of one document below one another in one PNG.
    ///
    /// # Errors
    /// As [`pictures`](Self::pictures).
    pub fn preview(&self, job: Job<'_>, ppi: f64) -> Result<Vec<u8>, Failure> {
        self.made(job, |_, document| picture::preview(document, ppi).map_err(library))
            .map(|(picture, _)| picture)
    }

    /// Lays one document out and makes something of it; how many pages it has.
    fn made<T>(
        &self,
        job: Job<'_>,
        make: impl Fn(&World<'_>, &PagedDocument) -> Result<T, Vec<Complaint>>,
    ) -> Result<(T, usize), Failure> {
        let once = |pages| {
            let world = World::new(&self.base, job.template, job.data, pages);
            let made = layout(&world).and_then(|document| {
                let count = document.pages().len();
                // A wrong number of pages is laid out again before anything is said or made of it.
                if pages > 0 && pages != count {
                    return Ok(None);
                }
                legible::check(&document, job.reading).map_err(on_page)?;
                if let Some(lamination) = job.lamination {
                    keep_out::check(&document, lamination).map_err(on_page)?;
                }
                let document = changes::drawn(document, job.lamination);
                let made = make(&world, &document)?;
                Ok(Some((made, count, fits(&document, job.sides))))
            });
            // Before any `?`: a failing document must not leave its cache behind.
            cache::done();
            made
        };
        let failure = |complaints, crowded| Failure { id: job.id.to_owned(), complaints, crowded };
        let mut made = once(job.pages);
        if matches!(made, Ok(None)) {
            made = once(0);
        }
        let made = made.map_err(|complaints| failure(complaints, false))?;
        // Where no number is expected there is no wrong one.
        let Some((made, count, fit)) = made else { return Err(failure(Vec::new(), false)) };
        fit.map_err(|message| failure(on_page(vec![message]), true))?;
        Ok((made, count))
    }

    /// How many pages a document has.
    ///
    /// # Errors
    /// As [`pdf`](Self::pdf).
    pub fn page_count(&self, job: Job<'_>) -> Result<usize, Failure> {
        self.made(job, |_, _| Ok(())).map(|((), count)| count)
    }

    /// Lays one document out and tells where everything lies on its pages.
    ///
    /// # Errors
    /// As [`pdf`](Self::pdf).
    pub fn pieces(&self, job: Job<'_>) -> Result<Vec<Piece>, Failure> {
        let world = World::new(&self.base, job.template, job.data, 0);
        let laid = layout(&world).map(|document| changes::drawn(document, job.lamination));
        let pieces = laid.map(|document| pieces::of(&document));
        cache::done();
        pieces.map_err(|complaints| Failure { id: job.id.to_owned(), complaints, crowded: false })
    }

    fn export(
        &self,
        world: &World<'_>,
        job: Job<'_>,
        document: &PagedDocument,
    ) -> Result<Vec<u8>, Vec<Complaint>> {
        if job.attached.is_empty() {
            return self.exported(world, (job.id, job.date), document, &self.standards, true);
        }
        let enclosed = attached::enclosed(document.clone(), job.attached);
        self.exported(world, (job.id, job.date), &enclosed, &self.enclosing_standards, true)
    }

    /// A PDF; `tagged` says whether it has a structure that a screen reader can follow.
    fn exported(
        &self,
        world: &World<'_>,
        (id, date): (&str, NaiveDate),
        document: &PagedDocument,
        standards: &PdfStandards,
        tagged: bool,
    ) -> Result<Vec<u8>, Vec<Complaint>> {
        let options = PdfOptions {
            ident: Smart::Custom(id.to_owned()),
            creator: Smart::Custom(Some(concat!("bayleaf ", env!("CARGO_PKG_VERSION")).to_owned())),
            timestamp: timestamp(date),
            standards: standards.clone(),
            tagged,
            ..PdfOptions::default()
        };
        typst_pdf::pdf(document, &options).map_err(|errors| told(world, &errors))
    }
}

/// Whether the text of a document fits its pages, and these its sides.
fn fits(document: &PagedDocument, sides: usize) -> Result<(), Message> {
    let count = document.pages().len();
    if sides > 0 && count > sides {
        return Err(Message::new("run-too-many-sides").with_count("pages", count).with_count("sides", sides));
    }
    fits::check(&pieces::of(document))
}

/// Lays a document out; a warning is an error.
fn layout(world: &World<'_>) -> Result<PagedDocument, Vec<Complaint>> {
    let Warned { output, warnings } = typst::compile::<PagedDocument>(world);
    let document = output.map_err(|errors| told(world, &errors))?;
    if warnings.is_empty() { Ok(document) } else { Err(told(world, &warnings)) }
}

fn told(world: &World<'_>, all: &[SourceDiagnostic]) -> Vec<Complaint> {
    all.iter().map(|reported| world.complaint(reported)).collect()
}

fn library(said: Vec<String>) -> Vec<Complaint> {
    on_page(said.into_iter().map(|said| Message::new("run-library").with("said", said)).collect())
}

fn on_page(messages: Vec<Message>) -> Vec<Complaint> {
    messages.into_iter().map(Complaint::Page).collect()
}

/// Noon UTC of the day of issue, so that no time zone moves it to another day.
fn timestamp(date: NaiveDate) -> Option<Timestamp> {
    let (month, day) = (u8::try_from(date.month()).ok()?, u8::try_from(date.day()).ok()?);
    Datetime::from_ymd_hms(date.year(), month, day, 12, 0, 0).map(Timestamp::new_utc)
}
