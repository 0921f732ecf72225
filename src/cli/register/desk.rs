//! The register of a folder of specs: found, read, and locked for one act.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use chrono::Local;

use crate::cli::load::{Loaded, Origin, Written, show};
use crate::cli::outcome::{Outcome, fail, unwritten};
use crate::diag::{Finding, Findings, Sources, reason};
use crate::register::{Ledger, Lock, Locked, Owner, Record, Refused};
use crate::spec::{self, REGISTER_FILE, Register};
use crate::words::{Language, Message, Words};

/// A folder's register.
pub(super) struct Book {
    /// The file; there is none before the first issue.
    pub path: PathBuf,
    pub record: Record,
    pub ledger: Ledger,
}

/// The folder whose register is meant.
pub(super) fn folder(specs: Option<&Path>, words: &Words) -> Result<PathBuf, Outcome> {
    folder_of(specs).ok_or_else(|| fail(words, &Message::new("run-register-demo")))
}

/// The same; nothing where the built-in set is meant.
pub(super) fn folder_of(specs: Option<&Path>) -> Option<PathBuf> {
    match Origin::of(specs) {
        Origin::Folder(folder) => Some(folder),
        Origin::Demo => None,
    }
}

/// The words of the language that is asked for, or of the shop's, whatever else is wrong with its
/// specs.
pub(super) fn words(specs: Option<&Path>, language: Option<Language>) -> Words {
    Words::of(language.or_else(|| Written::read(specs).language()).unwrap_or_default())
}

/// Reads the specs, which must be free of errors, and their register.
pub(super) fn open(specs: Option<&Path>, language: Option<Language>) -> Result<(Loaded, Book), Outcome> {
    opened(Written::read(specs), specs, language)
}

/// The same of specs that were read already.
pub(super) fn opened(
    written: Written,
    specs: Option<&Path>,
    language: Option<Language>,
) -> Result<(Loaded, Book), Outcome> {
    let loaded = written.check(language, false)?;
    let folder = folder(specs, &loaded.words)?;
    let book = Book::read(&folder, &loaded.words)?;
    Ok((loaded, book))
}

/// The same for an act: nobody else may be at it until the lock is dropped. Of a plan alone
/// nothing is written, not even a lock.
pub(super) fn open_for_act(
    specs: Option<&Path>,
    language: Option<Language>,
    is_plan: bool,
) -> Result<(Loaded, Book, Option<Lock>), Outcome> {
    if is_plan {
        let (loaded, book) = open(specs, language)?;
        return Ok((loaded, book, None));
    }
    let loaded = Written::read(specs).check(language, false)?;
    let folder = folder(specs, &loaded.words)?;
    let lock = lock(&folder, &loaded.words)?;
    // Read after the lock was taken: else what another wrote in between would be lost.
    let book = Book::read(&folder, &loaded.words)?;
    Ok((loaded, book, Some(lock)))
}

/// Takes the lock; who has it, where another does, is told with how long.
pub(super) fn lock(folder: &Path, words: &Words) -> Result<Lock, Outcome> {
    let owner = Owner { who: who(), process: std::process::id(), since: Local::now().fixed_offset() };
    Lock::take(folder, &owner).map_err(|locked| match locked {
        Locked::Held(Some(other)) => {
            let minutes = Local::now().signed_duration_since(other.since).num_minutes().max(0);
            let message = Message::new("run-register-locked")
                .with("who", &other.who)
                .with("process", other.process)
                .with("since", other.since.format("%Y-%m-%d %H:%M"));
            fail(words, &message.with_count("minutes", usize::try_from(minutes).unwrap_or(0)))
        }
        Locked::Held(None) => fail(words, &Message::new("run-register-locked-unknown")),
        Locked::Failed(error) => fail(words, &unwritten(folder, &error)),
    })
}

impl Book {
    /// Reads a folder's register; what is wrong with it is shown.
    pub(super) fn read(folder: &Path, words: &Words) -> Result<Self, Outcome> {
        let path = folder.join(REGISTER_FILE);
        let (mut sources, findings) = (Sources::default(), Findings::default());
        let text = match fs::read(&path) {
            Ok(bytes) => spec::text(path.display().to_string(), bytes, &mut sources, &findings)
                .map(|file| sources.text(file).to_owned()),
            Err(error) if error.kind() == io::ErrorKind::NotFound => None,
            Err(error) => {
                let message = Message::new("load-unreadable").with("reason", reason(&error));
                findings.report(Finding::about_path(message, path.display().to_string()));
                None
            }
        };
        let record = Record::checked(Register::read(&sources, &findings), &findings);
        if findings.has_errors() {
            show(&findings.sorted(), &sources, words);
            return Err(Outcome::Findings);
        }
        let text = text.unwrap_or_default();
        let ledger = if text.is_empty() { Ok(Ledger::empty()) } else { Ledger::of(&text) };
        let ledger = ledger.map_err(|error| {
            let message = Message::new("run-cannot-read").with("path", path.display());
            fail(words, &message.with("reason", error.message()))
        })?;
        Ok(Self { path, record, ledger })
    }
}

/// Who is at this machine, as far as it knows.
fn who() -> String {
    let of = |names: &[&str]| names.iter().find_map(|name| std::env::var(name).ok());
    let user = of(&["USER", "LOGNAME", "USERNAME"]);
    let host = fs::read_to_string("/etc/hostname").ok().map(|name| name.trim().to_owned());
    let host = of(&["HOSTNAME", "COMPUTERNAME"]).or(host).filter(|host| !host.is_empty());
    let parts: Vec<String> = user.into_iter().chain(host).collect();
    if parts.is_empty() { "?".to_owned() } else { parts.join("@").replace(['\n', '\r'], " ") }
}

/// Says what could not be written.
pub(super) fn refused(words: &Words, refused: &Refused) -> Outcome {
    fail(words, &unwritten(&refused.path, &refused.error))
}
