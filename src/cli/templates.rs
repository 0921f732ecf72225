//! The templates of a run: the built-in ones, and a shop's own in their place.

use std::borrow::Cow;
use std::path::{Path, PathBuf};

use sha2::{Digest, Sha256};
use walkdir::WalkDir;

use crate::diag::reason;
use crate::typeset::{TEMPLATES, Typesetter};
use crate::words::{Message, Words};

/// The templates of a run by their path below `templates/`.
pub(super) struct Templates {
    texts: Vec<(String, Cow<'static, str>)>,
    /// Paths of the shop's own that replace no built-in one.
    pub strangers: Vec<String>,
    own: bool,
}

impl Templates {
    /// The built-in ones, each replaced by the file of the same path in `folder`.
    ///
    /// # Errors
    /// When the folder cannot be read or holds no template.
    pub(super) fn load(folder: Option<&Path>) -> Result<Self, Message> {
        let mut texts: Vec<(String, Cow<'static, str>)> =
            TEMPLATES.iter().map(|(path, text)| ((*path).to_owned(), Cow::Borrowed(*text))).collect();
        let Some(folder) = folder else { return Ok(Self { texts, strangers: Vec::new(), own: false }) };
        let unread = |path: &Path, why: String| {
            Message::new("run-cannot-read").with("path", path.display()).with("reason", why)
        };
        let mut strangers = Vec::new();
        let files = files(folder).map_err(|error| {
            let why = error.io_error().map_or_else(|| error.to_string(), reason);
            unread(error.path().unwrap_or(folder), why)
        })?;
        if files.is_empty() {
            return Err(Message::new("run-no-templates").with("path", folder.display()));
        }
        for file in files {
            let text = std::fs::read_to_string(&file).map_err(|error| unread(&file, reason(&error)))?;
            let below = file.strip_prefix(folder).unwrap_or(&file);
            let path = below.components().map(|part| part.as_os_str().to_string_lossy());
            let path = path.collect::<Vec<_>>().join("/");
            match texts.iter_mut().find(|(known, _)| *known == path) {
                Some((_, known)) => *known = Cow::Owned(text),
                None => {
                    strangers.push(path.clone());
                    texts.push((path, Cow::Owned(text)));
                }
            }
        }
        Ok(Self { texts, strangers, own: true })
    }

    /// A typesetter with these templates.
    pub(super) fn typesetter(&self, words: &Words) -> Typesetter {
        let all: Vec<(&str, &str)> =
            self.texts.iter().map(|(path, text)| (path.as_str(), text.as_ref())).collect();
        Typesetter::with_templates(&all, &words.paper_json())
    }

    /// Tells one state of a shop's own templates from another.
    pub(super) fn digest(&self) -> String {
        if !self.own {
            return String::new();
        }
        let mut hash = Sha256::new();
        for (path, text) in &self.texts {
            for part in [path.as_str(), "\0", text, "\0"] {
                hash.update(part);
            }
        }
        hash.finalize().iter().map(|byte| format!("{byte:02x}")).collect()
    }
}

/// Every template below a folder, in the order of their paths.
fn files(folder: &Path) -> Result<Vec<PathBuf>, walkdir::Error> {
    let entries = WalkDir::new(folder).follow_links(true).sort_by_file_name();
    let mut files = Vec::new();
    for entry in entries {
        let entry = entry?;
        if entry.file_type().is_file() && entry.path().extension().is_some_and(|end| end == "typ") {
            files.push(entry.into_path());
        }
    }
    Ok(files)
}
