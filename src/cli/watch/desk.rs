//! What has been drawn, and what has to be drawn anew.

use std::collections::BTreeMap;
use std::fs;
use std::io::{self, IsTerminal, Write};
use std::time::Instant;

use sha2::{Digest, Sha256};

use crate::cli::args::Watch;
use crate::cli::load::{Loaded, Written};
use crate::cli::outcome::{complain, note, say, seconds_since, unwritten};
use crate::cli::setter::Setter;
use crate::cli::templates::Templates;
use crate::cli::why::{Reasons, Why};
use crate::cli::{print, sizes, whole};
use crate::diag::reason;
use crate::document::{self, Document, Paperwork};
use crate::typeset::Job;
use crate::words::{Language, Message, Words};

/// Clears the screen and goes to its top.
const CLEAR: &str = "\x1b[2J\x1b[H";

/// The pictures of a run, and what they were drawn from.
pub(super) struct Desk<'a> {
    arguments: &'a Watch,
    language: Option<Language>,
    /// The words of the last set that could be read.
    words: Words,
    /// The state of specs and templates at the last pass.
    state: String,
    /// The typesetter, and the language and state of the templates that it has.
    setter: Option<(String, Setter)>,
    /// What each picture was drawn from.
    drawn: BTreeMap<String, [u8; 32]>,
}

impl<'a> Desk<'a> {
    /// Makes the folder for the pictures.
    pub(super) fn new(arguments: &'a Watch, language: Option<Language>) -> Result<Self, Message> {
        fs::create_dir_all(&arguments.out).map_err(|error| unwritten(&arguments.out, &error))?;
        Ok(Self {
            arguments,
            language,
            words: Words::of(language.unwrap_or_default()),
            state: String::new(),
            setter: None,
            drawn: BTreeMap::new(),
        })
    }

    /// Draws what differs from the last pass; says nothing where nothing was changed.
    pub(super) fn pass(&mut self) {
        let started = Instant::now();
        let templates = Templates::load(self.arguments.edition.templates.as_deref());
        let of_templates = templates.as_ref().map_or_else(|error| self.words.say(error), Templates::digest);
        let written = Written::read(self.arguments.specs.specs.as_deref());
        let state = written.digest.clone() + &of_templates;
        if self.state == state {
            return;
        }
        self.state = state;
        if io::stderr().is_terminal() {
            drop(write!(io::stderr().lock(), "{CLEAR}"));
        }
        let told = match (written.check(self.language, false), templates) {
            (Ok(loaded), Ok(templates)) => {
                let told = self.draw(&loaded, templates, &of_templates).map(Some);
                self.words = loaded.words;
                told
            }
            (_, Err(error)) => Err(error),
            // The findings have been shown.
            (Err(_), Ok(_)) => Ok(None),
        };
        match told {
            Ok(Some((drawn, same))) => {
                let message =
                    Message::new("run-watch-drawn").with_count("drawn", drawn).with_count("same", same);
                let seconds = seconds_since(&self.words, started);
                note(self.words.say(&message.with("seconds", seconds)));
            }
            Ok(None) => note(self.words.word("run-watch-kept")),
            Err(error) => {
                complain(&self.words, &error);
                note(self.words.word("run-watch-kept"));
            }
        }
    }

    /// How many pictures were drawn, and how many are as they were.
    fn draw(
        &mut self,
        loaded: &Loaded,
        templates: Templates,
        of_templates: &str,
    ) -> Result<(usize, usize), Message> {
        let words = &loaded.words;
        let look = format!("{} {of_templates}", words.language().code());
        let kept = self.setter.take().filter(|(known, _)| *known == look);
        if kept.is_none() {
            self.drawn.clear();
        }
        let kept = kept.unwrap_or_else(|| (look, Setter::new(templates, words)));
        let (_, setter) = self.setter.insert(kept);
        setter.templates().show_unread(words);
        let mut reasons = Reasons::default();
        let context = self.arguments.edition.context(&loaded.model, words);
        let ids = &self.arguments.ids;
        let mut chosen = print::chosen(loaded, ids, false)?;
        // The index changes with each of the others; who names it wants it.
        chosen.retain(|listed| !ids.is_empty() || listed.paperwork != Paperwork::Index);
        sizes::refuse(context, chosen.iter())?;
        let (mut drawn, mut same) = (0, 0);
        for listed in &chosen {
            let Some(document) = document::compose(context, listed) else { continue };
            let state = state(&document);
            let file = format!("{}.png", document.id);
            let path = self.arguments.out.join(&file);
            if self.drawn.get(&document.id) == Some(&state) && path.exists() {
                same += 1;
                continue;
            }
            let job = Job::of(&document, context.date);
            let picture =
                setter.make_of(context, listed, |typesetter| typesetter.preview(job, self.arguments.ppi));
            let made = picture.and_then(|picture| {
                let written = whole::write(&self.arguments.out, &file, &picture);
                written.map_err(|error| Why::Run(reason(&error)))
            });
            match made {
                // A picture that nobody is told of is there all the same.
                Ok(()) => {
                    drawn += 1;
                    drop(say(path.display()));
                }
                Err(why) => reasons.add(document.id.clone(), why),
            }
            self.drawn.insert(document.id, state);
        }
        reasons.show(setter.templates(), words);
        self.drawn.retain(|id, _| chosen.iter().any(|listed| listed.id == *id));
        Ok((drawn, same))
    }
}

/// Tells one state of a document from another.
fn state(document: &Document) -> [u8; 32] {
    let mut hash = Sha256::new();
    hash.update(document.template);
    hash.update([0]);
    hash.update(&document.data);
    hash.finalize().into()
}
