//! `bayleaf preview`: one document as one picture.

use std::path::{Path, PathBuf};

use super::args::Preview;
use super::load::{Loaded, answer};
use super::outcome::{Outcome, say, unwritten};
use super::setter::Setter;
use super::templates::Templates;
use super::why::Reasons;
use super::{print, sizes, whole};
use crate::document;
use crate::typeset::Job;
use crate::words::{Language, Message, Words};

/// Runs the command.
pub(super) fn run(arguments: &Preview, language: Option<Language>) -> Outcome {
    answer(arguments.specs.specs.as_deref(), language, |loaded, words| draw(arguments, loaded, words))
}

fn draw(arguments: &Preview, loaded: &Loaded, words: &Words) -> Result<Outcome, Message> {
    let id = arguments.id.as_str();
    let all = document::list(&loaded.model);
    let listed =
        all.iter().find(|listed| listed.id == id).ok_or_else(|| print::no_such_document(loaded, &all, id))?;
    let templates = Templates::load(arguments.edition.templates.as_deref())?;
    let context = arguments.edition.context(&loaded.model, words);
    sizes::refuse(context, std::iter::once(listed))?;
    let unread = templates.show_unread(words);
    let setter = Setter::new(templates, words);
    let document = document::compose(context, listed)
        .ok_or_else(|| Message::new("run-cannot-print").with("id", id).with("reason", &listed.spec))?;
    let job = Job::of(&document, context.date);
    let picture = match setter.make_of(context, listed, |typesetter| typesetter.preview(job, arguments.ppi)) {
        Ok(picture) => picture,
        Err(why) => {
            let mut reasons = Reasons::default();
            reasons.add(id.to_owned(), why);
            reasons.show(setter.templates(), words);
            return Ok(reasons.outcome());
        }
    };
    let path = arguments.out.clone().unwrap_or_else(|| PathBuf::from(format!("{id}.png")));
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let written = path
        .file_name()
        .ok_or_else(|| std::io::Error::from(std::io::ErrorKind::InvalidFilename))
        .and_then(|name| whole::write(folder, &name.to_string_lossy(), &picture));
    written.map_err(|error| unwritten(&path, &error))?;
    Ok(Outcome::of_output(words, say(path.display())).or_findings(unread))
}
