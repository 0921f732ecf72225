//! `bayleaf schema`: what editors need to complete and check a spec while one types, and
//! what data a template receives.

use super::args::Schema;
use super::outcome::{Outcome, fail, say};
use crate::diag::nearest;
use crate::spec::schema;
use crate::typeset::{self, TEMPLATES};
use crate::words::{Message, Words};

/// Runs the command.
pub(super) fn run(arguments: &Schema, words: &Words) -> Outcome {
    match arguments.template.as_deref().map_or_else(|| Ok(text()), of_template) {
        Ok(text) => Outcome::of_output(words, say(text)),
        Err(message) => fail(words, &message),
    }
}

/// The schema of a spec file, as it is written beside a new set.
pub(super) fn text() -> String {
    format!("{:#}", schema::schema())
}

/// The schema of one template's data.
fn of_template(name: &str) -> Result<String, Message> {
    let all = typeset::schemas();
    let found =
        all.iter().find(|(template, _)| *template == name || template.strip_suffix(".typ") == Some(name));
    if let Some((_, schema)) = found {
        return Ok(format!("{schema:#}"));
    }
    if TEMPLATES.iter().any(|(path, _)| *path == name) {
        return Err(Message::new("run-template-without-data").with("name", name));
    }
    let known = || all.iter().map(|(template, _)| *template);
    Err(match nearest(name, known()) {
        Some(near) => Message::new("run-no-such-template-near").with("name", name).with("near", near),
        None => Message::new("run-no-such-template")
            .with("name", name)
            .with("known", known().collect::<Vec<_>>().join(", ")),
    })
}
