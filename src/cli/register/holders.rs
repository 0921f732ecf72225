//! `bayleaf holders`: who holds which copy.

use std::io;

use chrono::NaiveDate;

use super::desk::{self, Book, refused};
use super::{day, never_issued, too_early};
use crate::cli::args::{Holders, HoldersAct, ListCopies, ReturnCopy};
use crate::cli::outcome::{Outcome, fail, say};
use crate::diag::nearest;
use crate::register::{Copy, Disk, History, Ledger, Refused};
use crate::spec::Held;
use crate::words::{Language, Message, Words};

/// Runs the command.
pub(in crate::cli) fn run(arguments: &Holders, language: Option<Language>) -> Outcome {
    holders(arguments, language).unwrap_or_else(|outcome| outcome)
}

fn holders(arguments: &Holders, language: Option<Language>) -> Result<Outcome, Outcome> {
    let specs = arguments.specs.specs.as_deref();
    let words = desk::words(specs, language);
    let folder = desk::folder(specs, &words)?;
    let usual = HoldersAct::List(ListCopies::default());
    let act = arguments.act.as_ref().unwrap_or(&usual);
    if let HoldersAct::List(asked) = act {
        let book = Book::read(&folder, &words)?;
        known(&book, &asked.ids).map_err(|message| fail(&words, &message))?;
        return Ok(Outcome::of_output(&words, list(&words, &book, asked)));
    }
    let _lock = desk::lock(&folder, &words)?;
    let book = Book::read(&folder, &words)?;
    let mut ledger = book.ledger.clone();
    let lines = changed(&words, act, &book, &mut ledger).map_err(|message| fail(&words, &message))?;
    let written = Disk::default().replace(&book.path, ledger.text().as_bytes());
    written.map_err(|error| refused(&words, &Refused { path: book.path.clone(), error }))?;
    Ok(Outcome::of_output(&words, lines.iter().try_for_each(say)))
}

/// Changes the register's text; says what changed.
fn changed(
    words: &Words,
    act: &HoldersAct,
    book: &Book,
    ledger: &mut Ledger,
) -> Result<Vec<String>, Message> {
    match act {
        HoldersAct::List(_) => Ok(Vec::new()),
        HoldersAct::Add(add) => {
            known(book, &add.ids)?;
            let date = day(add.date, &book.record)?;
            let mut lines = Vec::new();
            for id in &add.ids {
                let revision = valid(book, id, add.revision, date)?;
                let (holder, place) = (add.holder.clone(), add.place.clone());
                let copy = Copy { id: id.clone(), revision, holder, place };
                if held(book, id).any(|held| copy_of(held) == copy) {
                    return Err(Message::new("holders-again").with("copy", said(&copy)));
                }
                ledger.hold(&copy, date);
                lines.push(words.say(&Message::new("holders-added").with("copy", said(&copy))));
            }
            Ok(lines)
        }
        HoldersAct::Move(asked) => {
            known(book, std::slice::from_ref(&asked.id))?;
            let date = day(asked.date, &book.record)?;
            let place = asked.place.as_deref();
            let found: Vec<&Held> = held(book, &asked.id)
                .filter(|held| {
                    held.holder == asked.holder && (place.is_none() || held.at.as_deref() == place)
                })
                .collect();
            let copy = match found.as_slice() {
                [one] => copy_of(one),
                [] => return Err(none(book, &asked.id, &asked.holder)),
                _ => {
                    return Err(Message::new("holders-several")
                        .with("id", &asked.id)
                        .with("holder", &asked.holder));
                }
            };
            not_before(found[0], date)?;
            let holder = asked.to.clone().unwrap_or_else(|| copy.holder.clone());
            let there = Copy { holder, place: asked.to_place.clone(), ..copy.clone() };
            ledger.end(&copy, date);
            ledger.hold(&there, date);
            let message = Message::new("holders-moved").with("copy", said(&copy));
            Ok(vec![words.say(&message.with("to", said(&there)))])
        }
        HoldersAct::Return(asked) => {
            known(book, &asked.ids)?;
            let date = day(asked.date, &book.record)?;
            let back = returned(book, asked);
            if back.is_empty() {
                return Err(Message::new("holders-nothing-back"));
            }
            let mut lines = Vec::new();
            for held in back {
                not_before(held, date)?;
                let copy = copy_of(held);
                ledger.end(&copy, date);
                lines.push(words.say(&Message::new("holders-back").with("copy", said(&copy))));
            }
            Ok(lines)
        }
    }
}

/// The copies that come back: of the named documents, or all that are not valid any more.
fn returned<'a>(book: &'a Book, asked: &ReturnCopy) -> Vec<&'a Held> {
    let is_meant = |held: &&Held| {
        asked.holder.as_ref().is_none_or(|holder| *holder == held.holder)
            && asked.place.as_ref().is_none_or(|place| Some(place) == held.at.as_ref())
    };
    let of = |(id, history): (&str, &'a History)| -> Vec<&'a Held> {
        if asked.ids.is_empty() {
            history.outdated().filter(is_meant).collect()
        } else if asked.ids.iter().any(|named| named == id) {
            history.held().filter(is_meant).collect()
        } else {
            Vec::new()
        }
    };
    book.record.documents().flat_map(of).collect()
}

/// Refuses ids of which nothing was issued.
fn known(book: &Book, ids: &[String]) -> Result<(), Message> {
    for id in ids {
        if book.record.of(id).is_none() {
            return Err(never_issued(id, book.record.documents().map(|(id, _)| id)));
        }
    }
    Ok(())
}

/// The revision of a copy: one that was issued by then.
fn valid(book: &Book, id: &str, asked: Option<u32>, date: NaiveDate) -> Result<u32, Message> {
    let history = book.record.of(id);
    let issue = match asked {
        Some(number) => history.and_then(|history| history.revision(number)),
        None => history.and_then(History::current),
    };
    let Some(issue) = issue else {
        return Err(match asked {
            Some(number) => Message::new("register-not-issued").with("id", id).with("revision", number),
            None => Message::new("holders-withdrawn").with("id", id),
        });
    };
    let issued = issue.act.date.value;
    if issued > date {
        return Err(too_early(id, date, issued));
    }
    Ok(issue.act.revision.value)
}

fn not_before(held: &Held, date: NaiveDate) -> Result<(), Message> {
    if held.since.value > date {
        return Err(too_early(&held.id.value, date, held.since.value));
    }
    Ok(())
}

fn none(book: &Book, id: &str, holder: &str) -> Message {
    match nearest(holder, held(book, id).map(|held| held.holder.as_str())) {
        Some(near) => {
            Message::new("holders-none-near").with("id", id).with("holder", holder).with("near", near)
        }
        None => Message::new("holders-none").with("id", id).with("holder", holder),
    }
}

fn held<'a>(book: &'a Book, id: &str) -> impl Iterator<Item = &'a Held> {
    book.record.of(id).into_iter().flat_map(History::held)
}

fn copy_of(held: &Held) -> Copy {
    Copy {
        id: held.id.value.clone(),
        revision: held.revision.value,
        holder: held.holder.clone(),
        place: held.at.clone(),
    }
}

/// A copy in a line.
fn said(copy: &Copy) -> String {
    let place = copy.place.as_deref().map(|place| format!(", {place}")).unwrap_or_default();
    format!("{} r{}: {}{place}", copy.id, copy.revision, copy.holder)
}

/// Lists copies by document.
fn list(words: &Words, book: &Book, asked: &ListCopies) -> io::Result<()> {
    let mut any = false;
    for (id, history) in book.record.documents() {
        if !asked.ids.is_empty() && !asked.ids.iter().any(|named| named == id) {
            continue;
        }
        let current = history.current().map(|issue| issue.act.revision.value);
        for held in history.held() {
            let is_valid = current == Some(held.revision.value);
            if asked.outdated && is_valid {
                continue;
            }
            any = true;
            let state = match (is_valid, current) {
                (true, _) => String::new(),
                (false, Some(current)) => words.say(&Message::new("holders-old").with("revision", current)),
                (false, None) => words.word("holders-of-withdrawn"),
            };
            let since = Message::new("holders-since").with("copy", said(&copy_of(held)));
            let since = words.say(&since.with("date", held.since.value.format(words.language().dates())));
            say(if state.is_empty() { since } else { format!("{since}; {state}") })?;
        }
    }
    if any { Ok(()) } else { say(words.word("holders-nobody")) }
}
