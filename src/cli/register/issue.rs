//! `bayleaf issue`: final papers, the register, and the list of what to take down.

use std::collections::BTreeMap;
use std::io;
use std::mem;
use std::path::PathBuf;

use super::desk::{self, Book, refused};
use super::papers::Press;
use super::status::planned;
use super::{day, hands, not_before, not_outside, told};
use crate::cli::args::Issue;
use crate::cli::outcome::{Outcome, complain, fail, say};
use crate::cli::why::{Reasons, Why};
use crate::diag::nearest;
use crate::document::{Edition, Paperwork, Pull, PullList, Stamp};
use crate::enclosure::Encloser;
use crate::register::{self, Disk, Entry, Ledger, Order, Shelf, State, Writer};
use crate::typeset::Typesetter;
use crate::words::{Language, Message, Words};

/// Runs the command.
pub(in crate::cli) fn run(arguments: &Issue, language: Option<Language>) -> Outcome {
    issue(arguments, language, &Disk::default()).unwrap_or_else(|outcome| outcome)
}

/// The same on a disk that may fail.
pub(super) fn issue(arguments: &Issue, language: Option<Language>, disk: &Disk) -> Result<Outcome, Outcome> {
    let specs = arguments.specs.specs.as_deref();
    if !arguments.dry_run {
        // Specs are read on one processor.
        rayon::spawn(Typesetter::warm_up);
    }
    let (loaded, book, _lock) = desk::open_for_act(specs, language, arguments.dry_run)?;
    let words = &loaded.words;
    let told = |message: Message| fail(words, &message);
    let shelf = Shelf::of(&arguments.out.out);
    let date = day(arguments.edition.date, &book.record).map_err(told)?;
    let encloser = Encloser::new(&loaded.sources);
    let edition = &arguments.edition;
    let entries = planned((&loaded, &encloser), &book, &shelf, (edition, language), false)?;
    let chosen = chosen(&entries, arguments).map_err(told)?;
    let order = Order { by: arguments.because.by.clone(), why: arguments.because.why.clone(), date };
    let is_early = |entry: &&Entry| not_before(book.record.of(&entry.id), &entry.id, date);
    chosen.iter().try_for_each(is_early).map_err(told)?;
    named_alike(&chosen, &book).map_err(told)?;
    if chosen.is_empty() {
        return Ok(Outcome::of_output(words, say(words.word("issue-nothing"))));
    }
    let pulls: Vec<Pull> =
        chosen.iter().flat_map(|entry| register::pulls_of_issue(entry, &book.record)).collect();
    let number = shelf.next_pull_list(date, &book.record);
    let list = PullList { date, number, by: order.by.clone(), why: order.why.clone(), copies: pulls };
    if arguments.dry_run {
        return Ok(Outcome::of_output(words, tell_plan(words, &chosen, &book, &list)));
    }
    let languages = chosen.iter().map(|entry| entry.edition.language).chain([words.language()]);
    let press = Press::new(&loaded.model, &encloser, edition.templates.as_ref(), languages).map_err(told)?;
    let act = Act { words, shelf: &shelf, book: &book, order: &order, list: &list };
    act.carry_out(disk, &press, &chosen, Edition::of(&loaded.model, words))?;
    let unread = press.templates().is_some_and(|templates| templates.show_unread(words));
    let outcome = Outcome::of_output(words, act.tell(&chosen)).or_findings(unread);
    // The command ends here: taking a set apart piece by piece would take as long as a page.
    mem::forget((press, chosen));
    mem::forget((entries, encloser));
    mem::forget(loaded);
    Ok(outcome)
}

/// An issue that is decided on.
struct Act<'a> {
    words: &'a Words,
    shelf: &'a Shelf,
    book: &'a Book,
    order: &'a Order,
    list: &'a PullList,
}

impl Act<'_> {
    /// Typesets everything to the side, then makes it valid: all of it or nothing.
    fn carry_out(
        &self,
        disk: &Disk,
        press: &Press<'_>,
        chosen: &[&Entry],
        edition: Edition,
    ) -> Result<(), Outcome> {
        let (words, shelf) = (self.words, self.shelf);
        not_outside(shelf).map_err(|message| fail(words, &message))?;
        for entry in chosen {
            press.refuse(entry, self.order.date).map_err(|message| fail(words, &message))?;
        }
        let mut writer = Writer::begin(disk, shelf, &self.book.path, &self.book.record)
            .map_err(|error| refused(words, &error))?;
        let number = self.number();
        let stamped = chosen.iter().map(|entry| Paper::Issued(entry, register::stamp(entry, self.order)));
        let list = number.as_deref().map(Paper::PullList);
        let mut papers: Vec<Paper<'_>> = stamped.chain(list).collect();
        // What takes longest comes first, so that no thread is left alone with it at the end.
        papers.sort_by_key(Paper::rank);
        // By their place in the list, whichever is done first.
        let mut failed: BTreeMap<usize, Why> = BTreeMap::new();
        let make = |paper: &Paper<'_>| match paper {
            Paper::Issued(entry, stamp) => press.paper(entry, stamp),
            Paper::PullList(_) => press.pull_list(edition, self.list),
        };
        hands::each(&papers, make, |at, made| match made {
            Ok(pdf) => writer.stage(papers[at].file(shelf), &pdf),
            Err(why) => {
                failed.insert(at, why);
                Ok(())
            }
        })
        .map_err(|error| refused(words, &error))?;
        let mut reasons = Reasons::default();
        failed.into_iter().for_each(|(at, why)| reasons.add(papers[at].name(), why));
        if reasons.documents() > 0 {
            if let Some(templates) = press.templates() {
                reasons.show(templates, words);
            }
            complain(words, &Message::new("issue-none"));
            return Err(reasons.outcome());
        }
        let mut ledger: Ledger = self.book.ledger.clone();
        for entry in chosen {
            register::write_down(&mut ledger, entry, self.order, number.as_deref());
        }
        writer.commit(&ledger.text()).map_err(|error| refused(words, &error))
    }

    /// The number of the pull list, where there is anything to pull.
    fn number(&self) -> Option<String> {
        let is_needed = !self.list.copies.is_empty();
        is_needed.then(|| format!("{}/{}", self.list.date, self.list.number))
    }

    /// Says what was issued and where it lies.
    fn tell(&self, chosen: &[&Entry]) -> io::Result<()> {
        for entry in chosen {
            let path = self.shelf.paper(&entry.id, entry.next());
            say(format_args!("{} r{}  {}", entry.id, entry.next(), path.display()))?;
        }
        let count = Message::new("issue-done").with_count("count", chosen.len());
        say(self.words.say(&count.with("path", self.book.path.display())))?;
        let Some(number) = self.number() else { return Ok(()) };
        let pull = Message::new("issue-pull").with_count("copies", self.list.copies.len());
        say(self.words.say(&pull.with("path", self.shelf.pull_list(&number).display())))
    }
}

/// What an issue makes.
enum Paper<'a> {
    Issued(&'a Entry, Stamp),
    /// By its number.
    PullList(&'a str),
}

impl Paper<'_> {
    fn file(&self, shelf: &Shelf) -> PathBuf {
        match self {
            Self::Issued(entry, stamp) => shelf.paper(&entry.id, stamp.revision),
            Self::PullList(number) => shelf.pull_list(number),
        }
    }

    /// Its place in the order of how long they take.
    fn rank(&self) -> usize {
        match self {
            Self::Issued(entry, _) => match entry.listed.as_ref().map(|listed| &listed.paperwork) {
                Some(Paperwork::Checklist) => 0,
                Some(paperwork) if paperwork.is_card() => 1,
                _ => 2,
            },
            Self::PullList(_) => 1,
        }
    }

    fn name(&self) -> String {
        match self {
            Self::Issued(entry, _) => entry.id.clone(),
            Self::PullList(number) => (*number).to_owned(),
        }
    }
}

/// Tells what an issue would do.
fn tell_plan(words: &Words, chosen: &[&Entry], book: &Book, list: &PullList) -> io::Result<()> {
    let entries: Vec<Entry> = chosen.iter().map(|entry| (*entry).clone()).collect();
    say(told::documents(words, &entries, &book.record).trim_end())?;
    for pull in &list.copies {
        say(super::withdraw::line(words, pull))?;
    }
    say(words.say(&Message::new("issue-dry").with_count("count", chosen.len())))
}

/// What is to be issued: what is new or changed, and what is named.
fn chosen<'a>(entries: &'a [Entry], arguments: &Issue) -> Result<Vec<&'a Entry>, Message> {
    let ids = &arguments.ids;
    let is_meant = |entry: &Entry, id: &String| {
        entry.listed.as_ref().is_some_and(|listed| listed.is_meant_by(id)) || entry.id == *id
    };
    for id in ids {
        let meant: Vec<&Entry> = entries.iter().filter(|entry| is_meant(entry, id)).collect();
        if meant.is_empty() {
            let known = entries.iter().map(|entry| entry.id.as_str());
            return Err(match nearest(id, known) {
                Some(near) => Message::new("run-no-such-document-near").with("id", id).with("near", near),
                None => Message::new("run-no-such-document").with("id", id),
            });
        }
        if let Some(gone) = meant.iter().find(|entry| entry.state == State::Gone) {
            return Err(Message::new("issue-gone").with("id", &gone.id));
        }
    }
    let is_wanted = |entry: &&Entry| match entry.state {
        State::New | State::Changed => true,
        State::Layout => arguments.layout,
        // Who names one that was withdrawn wants it back.
        State::Withdrawn => !ids.is_empty(),
        State::Gone | State::Same => false,
    };
    let is_named = |entry: &&Entry| ids.is_empty() || ids.iter().any(|id| is_meant(entry, id));
    Ok(entries.iter().filter(is_wanted).filter(is_named).collect())
}

/// Refuses a new document whose file would be that of another on a disk that knows no case.
fn named_alike(chosen: &[&Entry], book: &Book) -> Result<(), Message> {
    let issued: BTreeMap<String, &str> =
        book.record.documents().map(|(id, _)| (id.to_lowercase(), id)).collect();
    for entry in chosen {
        if let Some(other) = issued.get(&entry.id.to_lowercase()).filter(|other| **other != entry.id) {
            return Err(Message::new("issue-same-name").with("id", &entry.id).with("other", other));
        }
    }
    Ok(())
}
