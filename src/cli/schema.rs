//! `bayleaf schema`: what editors need to complete and check a spec while one types.

use super::outcome::{Outcome, say};
use crate::spec::schema;
use crate::words::Words;

/// Runs the command.
pub(super) fn run(words: &Words) -> Outcome {
    Outcome::of_output(words, say(text()))
}

/// The schema of a spec file, as it is written beside a new set.
pub(super) fn text() -> String {
    format!("{:#}", schema::schema())
}
