//! The templates of a run: the built-in ones, and a shop's own in their place.

use std::borrow::Cow;
use std::fs;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};
use walkdir::WalkDir;

use super::load::{draw, hex};
use crate::diag::{Finding, Findings, Sources, reason};
use crate::spec;
use crate::typeset::{TEMPLATES, Typesetter};
use crate::words::{Message, Words};

/// The templates of a run by their path below `templates/`.
pub(super) struct Templates {
    all: Vec<Template>,
    /// Paths of the shop's own that replace no built-in one.
    pub strangers: Vec<String>,
    folder: Option<PathBuf>,
    /// What cannot be read, and the files that it stands in.
    unread: (Vec<Finding>, Sources),
}

/// A template, and where it comes from.
struct Template {
    path: String,
    text: Cow<'static, str>,
    own: Option<Own>,
}

/// A template of the shop's own.
struct Own {
    /// The file as the user would write it.
    file: String,
    /// Whether it differs from the built-in one.
    changed: bool,
    readable: bool,
}

impl Templates {
    /// The built-in ones, each replaced by the file of the same path in `folder`. Files that
    /// cannot be read as text are findings: only what needs them is not printed.
    ///
    /// # Errors
    /// When the folder cannot be read or holds no template.
    pub(super) fn load(folder: Option<&Path>) -> Result<Self, Message> {
        let built_in = |(path, text): &(&'static str, &'static str)| Template {
            path: (*path).to_owned(),
            text: Cow::Borrowed(*text),
            own: None,
        };
        let mut all: Vec<Template> = TEMPLATES.iter().map(built_in).collect();
        let mut strangers = Vec::new();
        let (findings, mut sources) = (Findings::default(), Sources::default());
        for file in folder.map_or_else(|| Ok(Vec::new()), files)? {
            let shown = file.display().to_string();
            let text = match fs::read(&file) {
                Ok(bytes) => spec::text(shown.clone(), bytes, &mut sources, &findings)
                    .map(|file| sources.text(file).to_owned()),
                Err(error) => {
                    let message = Message::new("load-unreadable").with("reason", reason(&error));
                    findings.report(Finding::about_path(message, shown.clone()));
                    None
                }
            };
            let readable = text.is_some();
            let below = folder.and_then(|folder| file.strip_prefix(folder).ok()).unwrap_or(&file);
            let path = below.components().map(|part| part.as_os_str().to_string_lossy());
            let path = path.collect::<Vec<_>>().join("/");
            let text: Cow<'static, str> = Cow::Owned(text.unwrap_or_default());
            let known = all.iter_mut().find(|template| template.path == path);
            let changed = known.as_ref().is_none_or(|known| known.text != text);
            let own = Some(Own { file: shown, changed, readable });
            match known {
                Some(known) => (known.text, known.own) = (text, own),
                None => {
                    strangers.push(path.clone());
                    all.push(Template { path, text, own });
                }
            }
        }
        let unread = (findings.sorted(), sources);
        Ok(Self { all, strangers, folder: folder.map(Path::to_owned), unread })
    }

    /// A typesetter with these templates.
    pub(super) fn typesetter(&self, words: &Words) -> Typesetter {
        let all: Vec<(&str, &str)> =
            self.all.iter().map(|template| (template.path.as_str(), template.text.as_ref())).collect();
        let typesetter = Typesetter::with_templates(&all, &words.paper_json());
        let unread =
            self.all.iter().filter(|template| template.own.as_ref().is_some_and(|own| !own.readable));
        unread.fold(typesetter, |typesetter, template| typesetter.refusing(&template.path))
    }

    /// The folder of the shop's own.
    pub(super) fn folder(&self) -> Option<&Path> {
        self.folder.as_deref()
    }

    /// The files of the shop's own that differ from the built-in ones.
    pub(super) fn changed(&self) -> impl Iterator<Item = &str> {
        let own = self.all.iter().filter_map(|template| template.own.as_ref());
        own.filter(|own| own.changed).map(|own| own.file.as_str())
    }

    /// Whether a template is the shop's own and differs from the built-in one.
    pub(super) fn is_changed(&self, path: &str) -> bool {
        let own = self.find(path).and_then(|template| template.own.as_ref());
        own.is_some_and(|own| own.changed)
    }

    /// A template's text, and its file as the user would write it where it is the shop's own.
    pub(super) fn shown(&self, path: &str) -> Option<(Option<&str>, &str)> {
        let template = self.find(path)?;
        Some((template.own.as_ref().map(|own| own.file.as_str()), &template.text))
    }

    fn find(&self, path: &str) -> Option<&Template> {
        self.all.iter().find(|template| template.path == path)
    }

    /// Shows what cannot be read; whether there is anything.
    pub(super) fn show_unread(&self, words: &Words) -> bool {
        let (findings, sources) = &self.unread;
        draw(findings, sources, words);
        !findings.is_empty()
    }

    /// Tells one state of a shop's own templates from another.
    pub(super) fn digest(&self) -> String {
        if self.folder.is_none() { String::new() } else { self.state() }
    }

    /// Tells one state of the templates from another, built-in ones too.
    pub(super) fn state(&self) -> String {
        let mut hash = Sha256::new();
        for template in &self.all {
            let readable = template.own.as_ref().is_none_or(|own| own.readable);
            for part in [template.path.as_str(), "\0", &template.text, if readable { "\0" } else { "\0\0" }] {
                hash.update(part);
            }
        }
        hex(hash)
    }
}

/// Every template below a folder, in the order of their paths.
fn files(folder: &Path) -> Result<Vec<PathBuf>, Message> {
    let entries = WalkDir::new(folder).follow_links(true).sort_by_file_name();
    let mut files = Vec::new();
    for entry in entries {
        let entry = entry.map_err(|error| {
            let why = error.io_error().map_or_else(|| error.to_string(), reason);
            let path = error.path().unwrap_or(folder);
            Message::new("run-cannot-read").with("path", path.display()).with("reason", why)
        })?;
        if entry.file_type().is_file() && entry.path().extension().is_some_and(|end| end == "typ") {
            files.push(entry.into_path());
        }
    }
    if files.is_empty() {
        return Err(Message::new("run-no-templates").with("path", folder.display()));
    }
    Ok(files)
}
