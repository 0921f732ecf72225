//! How a run ends, and how it says so.

use std::fmt;
use std::io::{self, Write};
use std::process::ExitCode;

use crate::words::{Message, Words};

/// How a run ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// All was done.
    Done,
    /// The specs have errors; nothing was written.
    Findings,
    /// The run itself failed.
    Failed,
}

impl From<Outcome> for ExitCode {
    fn from(outcome: Outcome) -> Self {
        match outcome {
            Outcome::Done => Self::SUCCESS,
            Outcome::Findings => Self::from(1),
            Outcome::Failed => Self::from(2),
        }
    }
}

/// Writes a line of data to standard output.
///
/// A reader that has seen enough and closed the pipe is no failure.
pub(super) fn say(line: impl fmt::Display) {
    drop(writeln!(io::stdout().lock(), "{line}"));
}

/// Writes a line about the run to standard error.
pub(super) fn note(line: impl fmt::Display) {
    drop(writeln!(io::stderr().lock(), "{line}"));
}

/// Says why a run failed.
pub(super) fn fail(words: &Words, message: &Message) -> Outcome {
    note(format_args!("{}: {}", words.word("finding-error"), words.say(message)));
    Outcome::Failed
}
