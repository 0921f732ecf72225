//! `bayleaf watch`: draws anew what a saved spec or template changes.
//!
//! The library, the fonts and what has been drawn stay in memory, so that a saved file is
//! a new picture before the hand is back at the mouse. Runs until it is interrupted.

mod desk;
mod eyes;

use std::path::PathBuf;
use std::thread;
use std::time::Duration;

use super::args::Watch;
use super::load::Origin;
use super::outcome::{Outcome, fail, note};
use crate::words::{Language, Message, Words};
use desk::Desk;
use eyes::{Eyes, Seen};

/// From look to look for a folder that is gone.
const PATIENCE: Duration = Duration::from_millis(200);

/// Runs the command.
pub(super) fn run(arguments: &Watch, language: Option<Language>) -> Outcome {
    let words = Words::of(language.unwrap_or_default());
    let Origin::Folder(specs) = Origin::of(arguments.specs.specs.as_deref()) else {
        return fail(&words, &Message::new("run-watch-demo"));
    };
    let mut folders = vec![specs];
    folders.extend(arguments.edition.templates.clone());
    let mut eyes = match Eyes::open(&folders) {
        Ok(eyes) => eyes,
        Err(error) => return fail(&words, &error),
    };
    let mut desk = match Desk::new(arguments, language) {
        Ok(desk) => desk,
        Err(error) => return fail(&words, &error),
    };
    loop {
        desk.pass();
        if eyes.next() == Seen::Gone {
            eyes = back(&folders, &words);
        }
    }
}

/// Waits until the folders are there again.
fn back(folders: &[PathBuf], words: &Words) -> Eyes {
    let mut told = false;
    loop {
        match Eyes::open(folders) {
            Ok(eyes) => return eyes,
            Err(error) if !told => {
                let waits = words.word("run-watch-waits");
                note(format_args!("{}; {waits}", words.say(&error)));
                told = true;
            }
            Err(_) => {}
        }
        thread::sleep(PATIENCE);
    }
}
