//! `bayleaf templates`: the built-in templates and the schemas of their data, to be read and changed.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use super::args::Templates;
use super::outcome::{Outcome, fail, say, unwritten};
use super::whole;
use crate::document::file_of;
use crate::typeset::{self, TEMPLATES};
use crate::words::{Message, Words};

/// Runs the command.
pub(super) fn run(arguments: &Templates, words: &Words) -> Outcome {
    let Some(folder) = &arguments.write else {
        let told =
            TEMPLATES.iter().try_for_each(|(path, text)| say(format_args!("{path:24} {}", purpose(text))));
        return Outcome::of_output(words, told);
    };
    let schemas = schemas();
    let texts =
        || TEMPLATES.iter().copied().chain(schemas.iter().map(|(path, text)| (path.as_str(), text.as_str())));
    if let Some(message) = in_the_way(folder, texts()).filter(|_| !arguments.overwrite) {
        return fail(words, &message);
    }
    for (path, text) in texts() {
        if let Err((path, error)) = write(&folder.join(path), text) {
            return fail(words, &unwritten(&path, &error));
        }
    }
    let message = Message::new("run-templates-written")
        .with_count("count", TEMPLATES.len())
        .with("path", folder.display());
    Outcome::of_output(words, say(words.say(&message)))
}

/// What a template sets: its first line.
fn purpose(text: &str) -> &str {
    text.lines().next().map_or("", |line| line.trim_start_matches('/').trim())
}

/// The schema of each template's data, by the path of its file.
fn schemas() -> Vec<(String, String)> {
    typeset::schemas().iter().map(|(template, schema)| (file_of(template), format!("{schema:#}\n"))).collect()
}

/// A file that would be replaced by another text; nothing is written then.
fn in_the_way<'a>(folder: &Path, mut texts: impl Iterator<Item = (&'a str, &'a str)>) -> Option<Message> {
    let differs = |(path, text): &(&str, &str)| {
        let path = folder.join(path);
        path.symlink_metadata().is_ok() && fs::read(&path).ok().as_deref() != Some(text.as_bytes())
    };
    let (path, _) = texts.find(differs)?;
    Some(Message::new("run-template-exists").with("path", folder.join(path).display()))
}

fn write(path: &Path, text: &str) -> Result<(), (PathBuf, io::Error)> {
    let (Some(folder), Some(name)) = (path.parent(), path.file_name()) else { return Ok(()) };
    let failed = |error| (path.to_owned(), error);
    fs::create_dir_all(folder).map_err(failed)?;
    whole::write(folder, &name.to_string_lossy(), text.as_bytes()).map_err(failed)
}
