//! Typesets what an act puts on paper: issued documents with all that they carry, pull lists.

use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::Arc;

use chrono::NaiveDate;

use crate::cli::setter::Setter;
use crate::cli::sizes;
use crate::cli::templates::Templates;
use crate::cli::why::Why;
use crate::document::{self, Codes, Context, Edition, PullList, Stamp};
use crate::enclosure::Encloser;
use crate::model::Model;
use crate::register::Entry;
use crate::typeset::Job;
use crate::words::{Language, Message, Words};

/// What papers are made with.
pub(super) struct Press<'a> {
    model: &'a Model,
    encloser: &'a Encloser<'a>,
    codes: Codes,
    /// A language's words, and what typesets with them.
    setters: BTreeMap<&'static str, (Words, Setter)>,
}

impl<'a> Press<'a> {
    /// For these editions.
    pub(super) fn new(
        model: &'a Model,
        encloser: &'a Encloser<'a>,
        folder: Option<&PathBuf>,
        languages: impl IntoIterator<Item = Language>,
    ) -> Result<Self, Message> {
        let mut setters = BTreeMap::new();
        for language in languages {
            if !setters.contains_key(language.code()) {
                let words = Words::of(language);
                let setter = Setter::new(Templates::load(folder.map(PathBuf::as_path))?, &words);
                setters.insert(language.code(), (words, setter));
            }
        }
        Ok(Self { model, encloser, codes: Codes::default(), setters })
    }

    /// Refuses a size that a document is not laid out for.
    pub(super) fn refuse(&self, entry: &Entry, date: NaiveDate) -> Result<(), Message> {
        let Some((words, _)) = self.setters.get(entry.edition.language.code()) else { return Ok(()) };
        sizes::refuse(entry.edition.context(self.model, words, date), entry.listed.iter())
    }

    /// The PDF of an issued document.
    pub(super) fn paper(&self, entry: &Entry, stamp: &Stamp) -> Result<Vec<u8>, Why> {
        let missing = || Why::Run(entry.id.clone());
        let listed = entry.listed.as_ref().ok_or_else(missing)?;
        let (words, setter) = self.setters.get(entry.edition.language.code()).ok_or_else(missing)?;
        let context = entry.edition.context(self.model, words, stamp.date);
        let context = Context { codes: Some(&self.codes), ..context };
        let draft = entry.draft.clone().or_else(|| document::compose(context, listed).map(Arc::new));
        let document = draft.ok_or_else(missing)?.issued(words, stamp);
        let attached = self.encloser.enclose(context, listed, (&document, stamp));
        let job = Job { attached: &attached, ..Job::of(&document, stamp.date) };
        setter.make_of(context, listed, |typesetter| typesetter.pdf(job)).map(|printed| printed.pdf)
    }

    /// The PDF of a pull list.
    pub(super) fn pull_list(&self, edition: Edition, list: &PullList) -> Result<Vec<u8>, Why> {
        let found = self.setters.get(edition.language.code());
        let (words, setter) = found.ok_or_else(|| Why::Run(edition.language.code().to_owned()))?;
        let context = Edition { size: None, ..edition }.context(self.model, words, list.date);
        let document = document::compose_pull_list(context, list);
        let job = Job::of(&document, list.date);
        setter.make(words, |typesetter| typesetter.pdf(job)).map(|printed| printed.pdf)
    }

    /// The templates that papers are made with.
    pub(super) fn templates(&self) -> Option<&Templates> {
        self.setters.values().next().map(|(_, setter)| setter.templates())
    }
}
