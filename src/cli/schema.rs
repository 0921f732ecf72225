//! `bayleaf schema`: what editors need to complete and check a spec while one types.

use super::args::Schema;
use super::outcome::{Outcome, say};
use crate::spec::schema;
use crate::words::{Language, Words};

/// Runs the command.
pub(super) fn run(_: &Schema, language: Option<Language>) -> Outcome {
    Outcome::of_output(&Words::of(language.unwrap_or_default()), say(text()))
}

/// The schema of a spec file, as it is written beside a new set.
pub(super) fn text() -> String {
    format!("{:#}", schema::schema())
}
