//! Loads a set, shows its findings, and hands on the model.

use std::io;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};

use super::outcome::{Outcome, colour, fail, note, say};
use crate::diag::{Finding, Findings, Renderer, Severity, Sources};
use crate::model::{self, Model};
use crate::rules;
use crate::spec::{self, Set};
use crate::words::{Language, Message, Words};

/// The folder that is read when none is named.
const USUAL: &str = "specs";

/// A set without errors.
pub(super) struct Loaded {
    pub model: Model,
    /// The words of the language that was asked for, or of the shop's.
    pub words: Words,
    pub from: Origin,
    /// The files as they were read.
    pub sources: Sources,
    /// Whether there was nothing to find in them.
    pub is_clean: bool,
    /// Tells one state of the specs from another.
    pub digest: String,
}

/// Where a set comes from.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Origin {
    Folder(PathBuf),
    Demo,
}

impl Origin {
    /// The named folder, or `specs/` here, or the built-in demo.
    pub(super) fn of(named: Option<&Path>) -> Self {
        match named {
            Some(folder) => Self::Folder(folder.to_owned()),
            None if Path::new(USUAL).exists() => Self::Folder(PathBuf::from(USUAL)),
            None => Self::Demo,
        }
    }
}

/// The files of a set as they were read, good or not.
pub(super) struct Written {
    from: Origin,
    sources: Sources,
    findings: Findings,
    /// Tells one state of the specs from another.
    pub digest: String,
}

impl Written {
    /// Reads the files of a set.
    pub(super) fn read(named: Option<&Path>) -> Self {
        let from = Origin::of(named);
        let findings = Findings::default();
        let sources = match &from {
            Origin::Folder(folder) => spec::folder(folder, &findings),
            Origin::Demo => spec::demo(),
        };
        let digest = digest(&sources);
        Self { from, sources, findings, digest }
    }

    /// The language of the shop, where it names one.
    pub(super) fn language(&self) -> Option<Language> {
        let set = Set::read(&self.sources, &Findings::default());
        set.shop.as_ref()?.item.language.as_ref().map(|language| language.value)
    }

    /// Checks them; shows every finding on standard error, in the language that was asked
    /// for, or in the shop's.
    ///
    /// `quiet` workers say nothing of warnings: their parent has shown them.
    pub(super) fn check(self, language: Option<Language>, quiet: bool) -> Result<Loaded, Outcome> {
        let Self { from, sources, findings, digest } = self;
        let set = Set::read(&sources, &findings);
        rules::check(&set, &findings);
        let own = || set.shop.as_ref()?.item.language.as_ref().map(|language| language.value);
        let words = Words::of(language.or_else(own).unwrap_or_default());
        let failed = findings.has_errors();
        let model = if failed { None } else { model::build(&set) };
        let findings = findings.sorted();
        let is_clean = findings.is_empty();
        if failed || !quiet {
            show(&findings, &sources, &words);
        }
        if failed {
            return Err(Outcome::Findings);
        }
        let Some(model) = model else {
            fail(&words, &Message::new("run-no-model"));
            return Err(Outcome::Findings);
        };
        Ok(Loaded { model, words, from, sources, is_clean, digest })
    }
}

/// Reads and checks.
pub(super) fn load(named: Option<&Path>, language: Option<Language>, quiet: bool) -> Result<Loaded, Outcome> {
    Written::read(named).check(language, quiet)
}

/// Loads a set and answers from it; what is refused is told with its reason.
pub(super) fn answer(
    named: Option<&Path>,
    language: Option<Language>,
    of: impl FnOnce(&Loaded, &Words) -> Result<Outcome, Message>,
) -> Outcome {
    match load(named, language, false) {
        Ok(loaded) => of(&loaded, &loaded.words).unwrap_or_else(|message| fail(&loaded.words, &message)),
        Err(outcome) => outcome,
    }
}

/// Says first of all when the set is the built-in one.
pub(super) fn announce(from: &Origin, words: &Words) -> io::Result<()> {
    if *from == Origin::Demo { say(words.word("run-demo")) } else { Ok(()) }
}

/// Shows findings on standard error, and how many there are.
pub(super) fn show(findings: &[Finding], sources: &Sources, words: &Words) {
    draw(findings, sources, words);
    let count = |severity| findings.iter().filter(|finding| finding.severity == severity).count();
    let (errors, warnings) = (count(Severity::Error), count(Severity::Warning));
    if errors + warnings > 0 {
        let message = Message::new(if errors > 0 { "run-errors" } else { "run-warnings" });
        note(words.say(&message.with_count("errors", errors).with_count("warnings", warnings)));
    }
}

/// Draws findings on standard error.
pub(super) fn draw(findings: &[Finding], sources: &Sources, words: &Words) {
    let renderer = Renderer::new(sources, words, colour());
    for finding in findings {
        note(format_args!("{}\n", renderer.draw(finding)));
    }
}

fn digest(sources: &Sources) -> String {
    let mut hash = Sha256::new();
    for (file, text) in sources.texts() {
        hash.update(sources.path(file));
        hash.update([0]);
        hash.update(text);
        hash.update([0]);
    }
    hex(hash)
}

/// A digest in hexadecimal digits.
pub(super) fn hex(hash: Sha256) -> String {
    hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
}
