//! `bayleaf completions` and `bayleaf man`: help for shells and readers, from the same
//! types as the command line itself.

use std::fs;
use std::io::{self, Write};

use clap::CommandFactory;

use super::args::{Arguments, Completions, Man};
use super::outcome::{Outcome, fail, say, unwritten};
use crate::words::Words;

/// The program's name, as it is called.
const NAME: &str = "bayleaf";

/// Writes the completions of a shell to standard output.
pub(super) fn completions(arguments: &Completions, words: &Words) -> Outcome {
    let mut script = Vec::new();
    clap_complete::generate(arguments.shell, &mut Arguments::command(), NAME, &mut script);
    Outcome::of_output(words, io::stdout().lock().write_all(&script))
}

/// Writes a manual page for the program and each of its commands.
pub(super) fn man(arguments: &Man, words: &Words) -> Outcome {
    let folder = &arguments.folder;
    let written =
        fs::create_dir_all(folder).and_then(|()| clap_mangen::generate_to(Arguments::command(), folder));
    match written {
        Ok(()) => Outcome::of_output(words, say(folder.display())),
        Err(error) => fail(words, &unwritten(folder, &error)),
    }
}
