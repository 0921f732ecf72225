//! `bayleaf new`: a folder with a small set to begin with.

use std::fs;
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use super::args::New;
use super::outcome::{Outcome, fail, say, unwritten};
use super::schema;
use crate::quantity::Units;
use crate::spec::{SCAFFOLD, SCHEMA_FILE};
use crate::words::{Language, Message, Words};

/// How the line of the shop's paper begins.
const PAPER: &str = "paper = ";

/// Runs the command.
pub(super) fn run(arguments: &New, language: Option<Language>) -> Outcome {
    let words = &Words::of(language.unwrap_or_default());
    let folder = &arguments.folder;
    match begin(folder, &choices(language, arguments.units)) {
        Ok(files) => {
            let message = Message::new("run-begun").with("path", folder.display());
            let told =
                files.iter().try_for_each(|file| say(file.display())).and_then(|()| say(words.say(&message)));
            Outcome::of_output(words, told)
        }
        Err(Refused::NotEmpty) => fail(words, &Message::new("run-not-empty").with("path", folder.display())),
        Err(Refused::Disk(error)) => fail(words, &unwritten(folder, &error)),
    }
}

/// Why there is no new set.
enum Refused {
    /// Something stands there that could be overwritten, or would be read as part of the set.
    NotEmpty,
    Disk(io::Error),
}

impl From<io::Error> for Refused {
    fn from(error: io::Error) -> Self {
        Self::Disk(error)
    }
}

/// What was asked for, as lines of the shop.
fn choices(language: Option<Language>, units: Option<Units>) -> String {
    let line = |key, value, note| format!("{:<34}# {note}\n", format!("{key} = \"{value}\""));
    let language =
        language.map(|language| line("language", language.code(), "of all fixed words: en, de, fr or es"));
    let units =
        units.map(|units| line("units", units.word(), "of all figures: \"metric\", \"US\" or \"both\""));
    language.unwrap_or_default() + &units.unwrap_or_default()
}

/// Puts lines behind that of the shop's paper, in the file that has it.
fn with(text: &str, choices: &str) -> String {
    let behind = |line: &str| if line.starts_with(PAPER) { choices } else { "" };
    text.split_inclusive('\n').flat_map(|line| [line, behind(line)]).collect()
}

/// Writes every file; takes back what was written if one cannot be.
fn begin(folder: &Path, choices: &str) -> Result<Vec<PathBuf>, Refused> {
    let is_new = !folder.try_exists()?;
    if !is_new && fs::read_dir(folder)?.next().is_some() {
        return Err(Refused::NotEmpty);
    }
    fs::create_dir_all(folder)?;
    let mut written = Vec::new();
    let schema = schema::text() + "\n";
    let files = SCAFFOLD.iter().copied().chain([(SCHEMA_FILE, schema.as_str())]);
    for (name, text) in files {
        let path = folder.join(name);
        let made = fs::File::create_new(&path).and_then(|mut file| {
            written.push(path);
            file.write_all(with(text, choices).as_bytes())
        });
        if let Err(error) = made {
            written.iter().for_each(|path| drop(fs::remove_file(path)));
            if is_new {
                drop(fs::remove_dir(folder));
            }
            return Err(error.into());
        }
    }
    Ok(written)
}
