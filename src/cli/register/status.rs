//! `bayleaf status`: what is due.

use super::desk::{self, Book};
use super::told;
use crate::cli::args::{Edition, Status, StatusFormat};
use crate::cli::load::Loaded;
use crate::cli::outcome::{Outcome, fail, say, warn};
use crate::cli::templates::Templates;
use crate::enclosure::Encloser;
use crate::register::{Asked, Entry, Shelf, Texts, Today, plan};
use crate::words::{Language, Message, Words};

/// Runs the command.
pub(in crate::cli) fn run(arguments: &Status, language: Option<Language>) -> Outcome {
    status(arguments, language).unwrap_or_else(|outcome| outcome)
}

fn status(arguments: &Status, language: Option<Language>) -> Result<Outcome, Outcome> {
    let (loaded, book) = desk::open(arguments.specs.specs.as_deref(), language)?;
    let (words, shelf) = (&loaded.words, Shelf::of(&arguments.out.out));
    tell_strays(words, &shelf, &book);
    let encloser = Encloser::new(&loaded.sources);
    let entries = planned((&loaded, &encloser), &book, &shelf, (&arguments.edition, language))?;
    let told = match arguments.format {
        StatusFormat::Json => say(format_args!("{:#}", told::as_json(&entries, &book.record))),
        StatusFormat::Text => told::documents(words, &entries, &book.record)
            .and_then(|()| told::vehicles(words, &entries, &book.record)),
    };
    let outcome = Outcome::of_output(words, told);
    let is_due = entries.iter().any(|entry| entry.state.is_due());
    Ok(if is_due && outcome == Outcome::Done { Outcome::Due } else { outcome })
}

/// Every document beside what was issued of it.
pub(super) fn planned(
    (loaded, encloser): (&Loaded, &Encloser),
    book: &Book,
    shelf: &Shelf,
    (edition, language): (&Edition, Option<Language>),
) -> Result<Vec<Entry>, Outcome> {
    let words = &loaded.words;
    let templates = Templates::load(edition.templates.as_deref()).map_err(|message| fail(words, &message))?;
    let texts: Texts = (loaded.sources.texts())
        .map(|(file, text)| (loaded.sources.path(file).to_owned(), text.to_owned()))
        .collect();
    let today = Today {
        model: &loaded.model,
        texts: &texts,
        encloser,
        words,
        date: edition.issued(),
        asked: Asked { language, units: edition.units, size: edition.size, bay: edition.at },
        templates: &templates.state(),
    };
    Ok(plan(&today, &book.record, shelf))
}

/// Names what an act left that did not come to its end: it looks issued and never was.
pub(super) fn tell_strays(words: &Words, shelf: &Shelf, book: &Book) {
    for stray in shelf.strays(&book.record).unwrap_or_default() {
        warn(words, &Message::new("run-stray").with("path", stray.display()));
    }
}
