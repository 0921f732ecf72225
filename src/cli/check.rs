//! `bayleaf check`: findings, and what is missing or without a source.

use std::collections::BTreeSet;
use std::io;

use chrono::NaiveDate;

use super::args::Check;
use super::load::{announce, load};
use super::outcome::{Outcome, say};
use crate::document::{self, Edition};
use crate::words::{Language, Message, Words};

/// Runs the command.
pub(super) fn run(arguments: &Check, language: Option<Language>) -> Outcome {
    let loaded = match load(arguments.specs.specs.as_deref(), language, false) {
        Ok(loaded) => loaded,
        Err(outcome) => return outcome,
    };
    let (model, words) = (&loaded.model, &loaded.words);
    // No page is made, so no date is shown.
    let context = Edition::of(model, words).context(model, words, NaiveDate::MIN);
    let listed = document::list(model);
    let mut no_source = BTreeSet::new();
    let mut not_given = BTreeSet::new();
    for document in listed.iter().filter_map(|listed| document::compose(context, listed)) {
        no_source.extend(document.no_source);
        not_given.extend(document.not_given);
    }
    let message = Message::new("run-checked")
        .with_count("documents", listed.len())
        .with_count("sensors", model.sensors.len())
        .with_count("vehicles", model.vehicles.len())
        .with_count("no-source", no_source.len())
        .with_count("not-given", not_given.len());
    let told = announce(&loaded.from, words)
        .and_then(|()| list(words, "run-list-no-source", &no_source))
        .and_then(|()| list(words, "run-list-not-given", &not_given))
        .and_then(|()| say(words.say(&message)));
    Outcome::of_output(words, told)
}

fn list(words: &Words, head: &'static str, keys: &BTreeSet<String>) -> io::Result<()> {
    if keys.is_empty() {
        return Ok(());
    }
    say(words.word(head))?;
    keys.iter().try_for_each(|key| say(format_args!("  {key}")))
}
