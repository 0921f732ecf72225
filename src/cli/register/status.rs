//! `bayleaf status`: what is due.

use super::desk::{self, Book};
use super::seen::Answer;
use super::{seen, told};
use crate::cli::args::{Edition, Status, StatusFormat};
use crate::cli::load::{Loaded, Written};
use crate::cli::outcome::{Outcome, fail, say, warn};
use crate::cli::templates::Templates;
use crate::enclosure::Encloser;
use crate::register::{Archive, Asked, Entry, Shelf, Today, plan};
use crate::spec::Texts;
use crate::words::{Language, Message, Words};

/// Runs the command.
pub(in crate::cli) fn run(arguments: &Status, language: Option<Language>) -> Outcome {
    status(arguments, language).unwrap_or_else(|outcome| outcome)
}

fn status(arguments: &Status, language: Option<Language>) -> Result<Outcome, Outcome> {
    let specs = arguments.specs.specs.as_deref();
    let written = Written::read(specs);
    let shelf = Shelf::of(&arguments.out.out);
    let state = seen::state(&written, arguments, language);
    // Nothing is due again where nothing at all is another than when nothing was.
    if let Some(answer) = state.as_ref().and_then(|state| seen::recall(&shelf, state)) {
        let words = Words::of(language.unwrap_or_default());
        if !answer.is_clean {
            written.check(language, false)?;
        }
        return Ok(Outcome::of_output(&words, say(answer.told)));
    }
    let (loaded, book) = desk::opened(written, specs, language)?;
    let words = &loaded.words;
    let is_in_order = is_in_order(words, &shelf, &book);
    let encloser = Encloser::new(&loaded.sources);
    let all_titles = arguments.format == StatusFormat::Json;
    let asked = (&arguments.edition, language);
    let entries = planned((&loaded, &encloser), &book, &shelf, asked, all_titles)?;
    let told = match arguments.format {
        StatusFormat::Json => format!("{:#}", told::as_json(&entries, &book.record)),
        StatusFormat::Text => {
            let documents = told::documents(words, &entries, &book.record);
            (documents + &told::vehicles(words, &entries, &book.record)).trim_end().to_owned()
        }
    };
    let is_due = entries.iter().any(|entry| entry.state.is_due());
    let answer = Answer { is_clean: loaded.is_clean, told };
    if let Some(state) = state.filter(|_| !is_due && is_in_order) {
        seen::keep(&shelf, &state, &answer);
    }
    let outcome = Outcome::of_output(words, say(&answer.told));
    Ok(if is_due && outcome == Outcome::Done { Outcome::Due } else { outcome })
}

/// Every document beside what was issued of it.
pub(super) fn planned(
    (loaded, encloser): (&Loaded, &Encloser<'_>),
    book: &Book,
    archive: &dyn Archive,
    (edition, language): (&Edition, Option<Language>),
    all_titles: bool,
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
        all_titles,
    };
    Ok(plan(&today, &book.record, archive))
}

/// Lost papers that are named; of more it is said how many.
const NAMED: usize = 5;

/// Whether the folder has every issued paper and no other. Names what an act left that did not come
/// to its end, which looks issued and never was, and what is lost.
fn is_in_order(words: &Words, shelf: &Shelf, book: &Book) -> bool {
    let strays = shelf.strays(&book.record).unwrap_or_default();
    for stray in &strays {
        warn(words, &Message::new("run-stray").with("path", stray.display()));
    }
    let lost = shelf.lost(&book.record).unwrap_or_default();
    if !lost.is_empty() {
        let more = if lost.len() > NAMED { ", …" } else { "" };
        let names = lost[..lost.len().min(NAMED)].join(", ") + more;
        let message = Message::new("run-lost").with_count("count", lost.len());
        warn(words, &message.with("path", shelf.folder().display()).with("names", names));
    }
    strays.is_empty() && lost.is_empty()
}
