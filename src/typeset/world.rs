//! What the typesetting library may see: templates, fonts, words, one document.
//!
//! File ids of the library are a leaked 16-bit number, so every document uses
//! the same few virtual paths. The data come as a file, not as `sys.inputs`,
//! so that the library object stays shared between documents.

use std::collections::HashMap;
use std::sync::LazyLock;

use typst::diag::{FileError, FileResult, Severity, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration};
use typst::syntax::{DiagSpan, FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World as _, WorldExt};

use super::TEMPLATES;
use super::failure::{Complaint, Diagnosis, Spot};

const DATA: &str = "data.json";
const WORDS: &str = "words.json";
const PAGES: &str = "pages.json";

/// The library, the fonts and the built-in templates, parsed: made once, whatever the languages of
/// a run.
static LIBRARY: LazyLock<LazyHash<Library>> = LazyLock::new(|| LazyHash::new(Library::builder().build()));
static FONTS: LazyLock<Vec<Font>> = LazyLock::new(super::fonts::load);
static BOOK: LazyLock<LazyHash<FontBook>> = LazyLock::new(|| LazyHash::new(FontBook::from_fonts(&*FONTS)));
static BUILT_IN: LazyLock<HashMap<FileId, Source>> = LazyLock::new(|| {
    let parsed = |&(path, text): &(&str, &str)| Source::new(file_id(path), text.to_owned());
    TEMPLATES.iter().map(parsed).map(|source| (source.id(), source)).collect()
});

/// What all documents in one language share.
pub(super) struct Base {
    sources: HashMap<FileId, FileResult<Source>>,
    words: Bytes,
    words_id: FileId,
    data_id: FileId,
    pages_id: FileId,
}

impl Base {
    pub(super) fn new<'a>(templates: impl IntoIterator<Item = &'a (&'a str, &'a str)>, words: &str) -> Self {
        let parsed = |&(path, text): &'a (&'a str, &'a str)| {
            let id = file_id(path);
            let built_in = BUILT_IN.get(&id).filter(|source| source.text() == text);
            (id, Ok(built_in.cloned().unwrap_or_else(|| Source::new(id, text.to_owned()))))
        };
        Self {
            sources: templates.into_iter().map(parsed).collect(),
            words: Bytes::from_string(words.to_owned()),
            words_id: file_id(WORDS),
            data_id: file_id(DATA),
            pages_id: file_id(PAGES),
        }
    }

    /// Has a template that is there and cannot be read as text.
    pub(super) fn refuse(&mut self, path: &str) {
        self.sources.insert(file_id(path), Err(FileError::InvalidUtf8));
    }
}

/// One document's view: the shared base plus its own template and data.
pub(super) struct World<'a> {
    base: &'a Base,
    main: FileId,
    data: Bytes,
    pages: usize,
}

impl<'a> World<'a> {
    pub(super) fn new(base: &'a Base, template: &str, data: &[u8], pages: usize) -> Self {
        Self { base, main: file_id(template), data: Bytes::new(data.to_vec()), pages }
    }

    /// What the library reports.
    pub(super) fn complaint(&self, reported: &SourceDiagnostic) -> Complaint {
        // The library passes a refused template on as a text.
        if reported.message == FileError::InvalidUtf8.to_string() {
            return Complaint::Unread;
        }
        Complaint::Template(self.diagnosis(reported))
    }

    /// What the library reports, without its spans, which mean nothing to another process.
    fn diagnosis(&self, reported: &SourceDiagnostic) -> Diagnosis {
        let hint = |(text, span): (&str, DiagSpan)| match self.spot(span) {
            Some(Spot { path, line, .. }) => format!("{text} ({path}:{line})"),
            None => text.to_owned(),
        };
        Diagnosis {
            warning: reported.severity == Severity::Warning,
            said: reported.message.to_string(),
            at: self.spot(reported.span),
            through: reported.trace.iter().filter_map(|point| self.spot(point.span.into())).collect(),
            hints: reported.hints.iter().map(|hinted| hint((&hinted.v, hinted.span))).collect(),
        }
    }

    fn spot(&self, span: DiagSpan) -> Option<Spot> {
        let id = span.id()?;
        let span = self.range(span)?;
        let line = self.source(id).ok()?.lines().byte_to_line(span.start)? + 1;
        Some(Spot { path: id.get().vpath().get_without_slash().to_owned(), span, line })
    }
}

impl typst::World for World<'_> {
    fn library(&self) -> &LazyHash<Library> {
        &LIBRARY
    }

    fn book(&self) -> &LazyHash<FontBook> {
        &BOOK
    }

    fn main(&self) -> FileId {
        self.main
    }

    fn source(&self, id: FileId) -> FileResult<Source> {
        self.base.sources.get(&id).cloned().unwrap_or_else(|| Err(not_found(id)))
    }

    fn file(&self, id: FileId) -> FileResult<Bytes> {
        if id == self.base.data_id {
            Ok(self.data.clone())
        } else if id == self.base.words_id {
            Ok(self.base.words.clone())
        } else if id == self.base.pages_id {
            Ok(Bytes::from_string(self.pages.to_string()))
        } else {
            self.source(id).map(|source| Bytes::from_string(source.text().to_owned()))
        }
    }

    fn font(&self, index: usize) -> Option<Font> {
        FONTS.get(index).cloned()
    }

    /// No clock: a page's date is part of its data.
    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}

fn file_id(path: &str) -> FileId {
    let path = VirtualPath::new(path).expect("template paths are plain relative paths");
    RootedPath::new(VirtualRoot::Project, path).intern()
}

fn not_found(id: FileId) -> FileError {
    FileError::NotFound(id.get().vpath().get_without_slash().into())
}
