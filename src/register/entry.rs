//! How one document stands to what was issued of it.

use std::sync::Arc;

use super::plan::{Archive, Today};
use crate::document::{Because, Document, Edition, Listed, Moved};
use crate::spec::Issue;

/// How a document stands to what was issued of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum State {
    /// Never issued.
    New,
    /// It says something else.
    Changed,
    /// Issued, and in the set no more.
    Gone,
    /// It says the same, and looks otherwise.
    Layout,
    /// Withdrawn, and still in the set.
    Withdrawn,
    /// As issued.
    Same,
}

impl State {
    /// Every state, those first that somebody has to do something about.
    pub const ALL: [Self; 6] =
        [Self::New, Self::Changed, Self::Gone, Self::Layout, Self::Withdrawn, Self::Same];

    /// Whether the register is behind the specs.
    #[must_use]
    pub fn is_due(self) -> bool {
        matches!(self, Self::New | Self::Changed | Self::Gone)
    }
}

/// One document.
#[derive(Debug, Clone)]
pub struct Entry {
    /// Its id.
    pub id: String,
    /// Its title; empty where it is as issued and no such titles are asked for.
    pub title: String,
    /// Which document of the set it is; nothing where it is gone.
    pub listed: Option<Listed>,
    /// How it stands.
    pub state: State,
    /// The newest revision that was issued.
    pub revision: Option<u32>,
    /// Whether it says something else than that.
    pub is_other: bool,
    /// The edition that it is compared in.
    pub edition: Edition,
    /// The fingerprint of what it says today.
    pub content: String,
    /// The document, where it has to be issued and few others have.
    pub draft: Option<Arc<Document>>,
    /// The fingerprint of how it looks today.
    pub layout: String,
    /// What differs from the newest revision, where it changed and that revision's paper is kept.
    pub difference: Option<Difference>,
}

/// What makes a document another than the one that was issued.
#[derive(Debug, Clone, Default)]
pub struct Difference {
    /// The cells that read otherwise.
    pub moved: Vec<Moved>,
    /// The values that made them so.
    pub because: Vec<Because>,
}

impl Entry {
    /// The revision that it is issued with.
    #[must_use]
    pub fn next(&self) -> u32 {
        self.revision.map_or(1, |revision| revision.saturating_add(1))
    }

    pub(super) fn new(
        listed: &Listed,
        edition: Edition,
        (content, layout): (String, String),
        title: &str,
    ) -> Self {
        Self {
            id: listed.id.clone(),
            title: title.to_owned(),
            listed: Some(listed.clone()),
            state: State::New,
            revision: None,
            is_other: false,
            edition,
            content,
            draft: None,
            layout,
            difference: None,
        }
    }

    pub(super) fn gone(id: &str, issue: &Issue, today: &Today<'_>, archive: &dyn Archive) -> Self {
        let revision = issue.act.revision.value;
        Self {
            id: id.to_owned(),
            title: archive.earlier(id, revision).map(|earlier| earlier.title).unwrap_or_default(),
            listed: None,
            state: State::Gone,
            revision: Some(revision),
            is_other: false,
            edition: today.edition(Some(issue)),
            content: issue.content.clone(),
            draft: None,
            layout: issue.layout.clone(),
            difference: None,
        }
    }
}
