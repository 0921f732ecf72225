//! How a run ends, and how it says so.

use std::fmt;
use std::io::{self, IsTerminal, Write};
use std::path::Path;
use std::process::ExitCode;
use std::time::Instant;

use crate::diag::reason;
use crate::quantity::{Rounding, figure, noted};
use crate::words::{Message, Words};

/// How a run ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Outcome {
    /// All was done.
    Done,
    /// The specs have errors, and nothing was written; or a template of the shop's own fails.
    Findings,
    /// The run itself failed.
    Failed,
    /// Papers are to be issued or withdrawn.
    Due,
}

impl From<Outcome> for ExitCode {
    fn from(outcome: Outcome) -> Self {
        match outcome {
            Outcome::Done => Self::SUCCESS,
            Outcome::Findings => Self::from(1),
            Outcome::Failed => Self::from(2),
            Outcome::Due => Self::from(3),
        }
    }
}

/// Writes a line of data to standard output.
///
/// # Errors
/// When it cannot be written. A reader that has seen enough and closed the pipe
/// is no failure: see [`Outcome::of_output`].
pub(super) fn say(line: impl fmt::Display) -> io::Result<()> {
    writeln!(io::stdout().lock(), "{line}")
}

impl Outcome {
    /// The outcome of a command that did its work and told it.
    pub(super) fn of_output(words: &Words, told: io::Result<()>) -> Self {
        match told {
            Ok(()) => Self::Done,
            Err(error) if error.kind() == io::ErrorKind::BrokenPipe => Self::Done,
            Err(error) => fail(words, &Message::new("run-no-output").with("reason", reason(&error))),
        }
    }

    /// This one; but findings, where there are some and all else was done.
    pub(super) fn or_findings(self, there_are: bool) -> Self {
        if there_are && self == Self::Done { Self::Findings } else { self }
    }
}

/// Writes a line about the run to standard error.
pub(super) fn note(line: impl fmt::Display) {
    drop(writeln!(io::stderr().lock(), "{line}"));
}

/// Whether what is said to standard error has colours.
pub(super) fn colour() -> bool {
    io::stderr().is_terminal() && std::env::var_os("NO_COLOR").is_none_or(|v| v.is_empty())
}

/// Says why a run failed.
pub(super) fn fail(words: &Words, message: &Message) -> Outcome {
    complain(words, message);
    Outcome::Failed
}

/// Says what could not be done.
pub(super) fn complain(words: &Words, message: &Message) {
    note(format_args!("{}: {}", words.word("finding-error"), words.say(message)));
}

/// Says what is doubtful; the run goes on.
pub(super) fn warn(words: &Words, message: &Message) {
    note(format_args!("{}: {}", words.word("finding-warning"), words.say(message)));
}

/// What a file or folder that cannot be written is told with.
pub(super) fn unwritten(path: &Path, error: &io::Error) -> Message {
    Message::new("run-cannot-write").with("path", path.display()).with("reason", reason(error))
}

/// Seconds since then, as the language writes numbers.
pub(super) fn seconds_since(words: &Words, started: Instant) -> String {
    noted(words.notation(), || figure(started.elapsed().as_secs_f64(), 2, Rounding::Nearest))
}
