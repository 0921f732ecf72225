//! `bayleaf withdraw`: papers that are not to be used any more.

use std::io;

use super::desk::{self, Book, refused};
use super::papers::Press;
use super::{day, never_issued, not_before, not_outside};
use crate::cli::args::Withdraw;
use crate::cli::outcome::{Outcome, complain, fail, say};
use crate::cli::why::Reasons;
use crate::document::{Edition, Pull, PullList};
use crate::enclosure::Encloser;
use crate::register::{self, Archive, Disk, Order, Shelf, Writer};
use crate::words::{Language, Message, Words};

/// Runs the command.
pub(in crate::cli) fn run(arguments: &Withdraw, language: Option<Language>) -> Outcome {
    withdraw(arguments, language, &Disk::default()).unwrap_or_else(|outcome| outcome)
}

fn withdraw(arguments: &Withdraw, language: Option<Language>, disk: &Disk) -> Result<Outcome, Outcome> {
    let specs = arguments.specs.specs.as_deref();
    let (loaded, book, _lock) = desk::open_for_act(specs, language, arguments.dry_run)?;
    let words = &loaded.words;
    let told = |message: Message| fail(words, &message);
    let date = day(arguments.date, &book.record).map_err(told)?;
    let ids = meant(&book, &arguments.ids).map_err(told)?;
    let order = Order { by: arguments.because.by.clone(), why: arguments.because.why.clone(), date };
    let shelf = Shelf::of(&arguments.out.out);
    let number = shelf.next_pull_list(date, &book.record);
    let named = format!("{date}/{number}");
    let (mut ledger, mut copies) = (book.ledger.clone(), Vec::new());
    for id in &ids {
        let Some(history) = book.record.of(id) else { continue };
        let Some(current) = history.current() else { continue };
        let revision = current.act.revision.value;
        not_before(Some(history), id, date).map_err(told)?;
        let title = shelf.earlier(id, revision).map(|earlier| earlier.title).unwrap_or_default();
        copies.extend(register::pulls_of_withdrawal(id, &title, history));
        register::write_down_withdrawal(&mut ledger, id, revision, &order, &named);
    }
    let list = PullList { date, number, by: order.by.clone(), why: order.why.clone(), copies };
    if arguments.dry_run {
        return Ok(Outcome::of_output(words, tell(words, &list, None)));
    }
    not_outside(&shelf).map_err(told)?;
    let encloser = Encloser::new(&loaded.sources);
    let press = Press::new(&loaded.model, &encloser, arguments.templates.as_ref(), [words.language()])
        .map_err(told)?;
    let pdf = press.pull_list(Edition::of(&loaded.model, words), &list).map_err(|why| {
        let mut reasons = Reasons::default();
        reasons.add(named.clone(), why);
        if let Some(templates) = press.templates() {
            reasons.show(templates, words);
        }
        complain(words, &Message::new("withdraw-none"));
        reasons.outcome()
    })?;
    let stopped = |error| refused(words, &error);
    let mut writer = Writer::begin(disk, &shelf, &book.path, &book.record).map_err(stopped)?;
    let path = shelf.pull_list(&named);
    writer.stage(path.clone(), &pdf).map_err(stopped)?;
    writer.commit(&ledger.text()).map_err(stopped)?;
    Ok(Outcome::of_output(words, tell(words, &list, Some(&path.display().to_string()))))
}

/// The valid documents that are meant: by their ids, or by a vehicle's.
fn meant(book: &Book, names: &[String]) -> Result<Vec<String>, Message> {
    let valid: Vec<(&str, Option<&str>)> = (book.record.documents())
        .filter_map(|(id, history)| Some((id, history.current()?.vehicle.as_deref())))
        .collect();
    let mut ids = Vec::new();
    for name in names {
        let of_name = valid.iter().filter(|(id, vehicle)| id == name || *vehicle == Some(name));
        let found: Vec<String> = of_name.map(|(id, _)| (*id).to_owned()).collect();
        if found.is_empty() {
            return Err(not_valid(book, &valid, name));
        }
        ids.extend(found);
    }
    ids.sort();
    ids.dedup();
    Ok(ids)
}

fn not_valid(book: &Book, valid: &[(&str, Option<&str>)], name: &str) -> Message {
    if let Some(history) = book.record.of(name)
        && let Some(newest) = history.newest()
        && let Some(act) = history.withdrawal_of(newest.act.revision.value)
    {
        return Message::new("withdraw-again").with("id", name).with("date", act.date.value);
    }
    let known = valid.iter().flat_map(|(id, vehicle)| [Some(*id), *vehicle]).flatten();
    never_issued(name, known)
}

/// A copy to be taken down, in a line.
pub(super) fn line(words: &Words, pull: &Pull) -> String {
    let place = [pull.place.as_str(), pull.holder.as_str()].map(str::to_owned);
    let place: Vec<String> = place.into_iter().filter(|text| !text.is_empty()).collect();
    let place = if place.is_empty() { words.word("pulled-not-recorded") } else { place.join(", ") };
    let message = Message::new("issue-line").with("id", &pull.id).with("revision", pull.old);
    words.say(&message.with("place", place))
}

/// Says what is withdrawn, and where copies of it are.
fn tell(words: &Words, list: &PullList, path: Option<&str>) -> io::Result<()> {
    list.copies.iter().try_for_each(|pull| say(line(words, pull)))?;
    let copies = list.copies.len();
    match path {
        Some(path) => {
            say(words.say(&Message::new("issue-pull").with_count("copies", copies).with("path", path)))
        }
        None => say(words.say(&Message::new("withdraw-dry").with_count("copies", copies))),
    }
}
