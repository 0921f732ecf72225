//! What `status` said when nothing was due, for as long as nothing at all is another.
//!
//! Composing a thousand documents to find nothing changed takes a fifth of a second; reading their
//! specs a tenth of that. The answer is kept under a digest of all it depends on, beside the papers.
//! Whoever deletes the file loses nothing.

use std::fs;
use std::path::Path;

use sha2::{Digest, Sha256};

use super::desk;
use crate::cli::args::Status;
use crate::cli::load::{Written, hex};
use crate::cli::templates::Templates;
use crate::cli::whole;
use crate::register::Shelf;
use crate::spec::REGISTER_FILE;
use crate::words::Language;

/// The file's name.
const SEEN: &str = ".seen";

/// Whether the specs had findings, as it stands there.
const CLEAN: &str = "clean";
const FINDINGS: &str = "findings";

/// A digest of everything that an answer depends on: specs, register, papers, templates, what is
/// asked for, the program. Nothing where one of them cannot be read.
pub(super) fn state(written: &Written, arguments: &Status, language: Option<Language>) -> Option<String> {
    let folder = desk::folder_of(arguments.specs.specs.as_deref())?;
    let register = fs::read(folder.join(REGISTER_FILE)).ok()?;
    let templates = Templates::load(arguments.edition.templates.as_deref()).ok()?;
    let program = fs::metadata(std::env::current_exe().ok()?).ok()?;
    let changed = program.modified().ok()?.duration_since(std::time::UNIX_EPOCH).ok()?.as_nanos();
    let edition = &arguments.edition;
    let asked = format!(
        "{language:?} {:?} {:?} {:?} {:?} {} {} {changed}",
        edition.units,
        edition.size,
        edition.at,
        arguments.format,
        env!("CARGO_PKG_VERSION"),
        program.len(),
    );
    let mut hash = Sha256::new();
    for part in [written.digest.as_bytes(), &register, templates.state().as_bytes(), asked.as_bytes()] {
        hash.update(part);
        hash.update([0]);
    }
    names(&Shelf::of(&arguments.out.out)).iter().for_each(|name| hash.update(name));
    Some(hex(hash))
}

/// The names of the papers, in their order: one more may be a stray.
fn names(shelf: &Shelf) -> Vec<String> {
    let entries = fs::read_dir(shelf.folder()).into_iter().flatten().flatten();
    let mut names: Vec<String> =
        entries.map(|entry| entry.file_name().to_string_lossy().into_owned() + "\0").collect();
    names.retain(|name| !name.starts_with('.'));
    names.sort();
    names
}

/// What was said in a state.
pub(super) struct Answer {
    /// Whether there was nothing to find in the specs: else their findings are shown again.
    pub is_clean: bool,
    pub told: String,
}

/// What was said in this state.
pub(super) fn recall(shelf: &Shelf, state: &str) -> Option<Answer> {
    let kept = fs::read_to_string(shelf.folder().join(SEEN)).ok()?;
    let mut parts = kept.splitn(3, '\n');
    let (known, found, told) = (parts.next()?, parts.next()?, parts.next()?);
    (known == state).then(|| Answer { is_clean: found == CLEAN, told: told.to_owned() })
}

/// Keeps what is said; a folder that cannot be written in keeps nothing, and the next answer takes
/// longer.
pub(super) fn keep(shelf: &Shelf, state: &str, Answer { is_clean, told }: &Answer) {
    let found = if *is_clean { CLEAN } else { FINDINGS };
    if Path::exists(shelf.folder()) && shelf.leads_outside().is_none() {
        drop(whole::write(shelf.folder(), SEEN, format!("{state}\n{found}\n{told}").as_bytes()));
    }
}
