//! What an issue puts on a page: revision, date, by whom, and what changed since the one before.
//!
//! Changed texts get a mark at either end that no reader sees: templates leave an empty
//! place there, and `typeset` draws bar and symbol into the margin beside it. The marks are
//! variation selectors, which belong to the character before them, so that a text counts as
//! many characters as without.

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;

use super::code::Code;
use super::tie::tie;
use super::{Document, PLAIN};
use crate::quantity::noted;
use crate::words::{Message, Words};

/// Behind the first character of a changed text.
pub const CHANGED_FROM: char = '\u{fe00}';

/// Behind the last one.
pub const CHANGED_TO: char = '\u{fe01}';

/// An issue of one document.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Stamp {
    /// Its number, from 1.
    pub revision: u32,
    /// When it was issued.
    pub date: NaiveDate,
    /// Who issued it: initials.
    pub by: String,
    /// What changed, where there was a revision before.
    pub since: Option<Since>,
}

/// What changed since an earlier revision.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Since {
    /// The earlier revision.
    pub revision: u32,
    /// Why, in the words of who issued it.
    pub why: String,
    /// The cells that read otherwise.
    pub moved: Vec<Moved>,
    /// Whether that is known: nobody can tell where the earlier revision is lost.
    pub is_known: bool,
}

/// A cell that reads otherwise than in the revision before.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Moved {
    /// JSON pointer into the document's data.
    pub pointer: String,
    /// Where it is, in words: row, column.
    pub place: String,
    /// What it said; empty where there was no such cell.
    pub old: String,
    /// What it says; empty where it is gone.
    pub new: String,
    /// The spec key that caused it.
    pub key: Option<String>,
}

impl Document {
    /// A draft, as it is issued.
    ///
    /// # Panics
    /// Never: a document's data are JSON.
    #[must_use]
    pub fn issued(&self, words: &Words, stamp: &Stamp) -> Self {
        let mut furniture = self.furniture.clone();
        noted(words.notation(), || furniture.issue(words, stamp));
        furniture.code = Code::new(&furniture.id, &furniture.revision, &furniture.fingerprint);
        let mut data: Value = serde_json::from_slice(&self.data).expect(PLAIN);
        let text = tie(&serde_json::to_string(&furniture).expect(PLAIN));
        data["furniture"] = serde_json::from_str(&text).expect(PLAIN);
        stamp.mark(&mut data);
        let data = serde_json::to_vec(&data).expect(PLAIN);
        Self { data, furniture, ..self.clone() }
    }
}

/// The same for the template.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub(super) struct Changed {
    /// How many cells changed since which revision.
    line: String,
    /// The same for a small paper.
    short: String,
    /// Why it was issued again, in the words of who issued it.
    why: String,
    /// Over the list of them.
    title: String,
    /// The two revisions, over their columns.
    old: String,
    /// The revision of this paper.
    new: String,
    /// A row each.
    cells: Vec<Cell>,
    /// Whether the page's own title is among them.
    in_title: bool,
}

/// A text that changed.
#[derive(Debug, Clone, Serialize, JsonSchema)]
struct Cell {
    /// Row and column, in words.
    place: String,
    /// What it said.
    old: String,
    /// What it says.
    new: String,
    /// The spec key that caused it, or empty.
    key: String,
}

/// The title is also the file's title, its bookmark: its mark stands before it.
const TITLE: &str = "/furniture/title";

/// Parts of the furniture that are running text.
const FURNITURE_TEXTS: [&str; 4] = ["applicability", "notice", "stop", "sources"];

/// In place of a cell that is not there.
const NO_CELL: &str = "–";

/// A revision's number as it is printed.
pub(super) fn revision(number: u32) -> String {
    format!("r{number}")
}

impl Stamp {
    /// The revision as it is printed.
    pub(super) fn printed(&self) -> String {
        revision(self.revision)
    }

    /// When and by whom.
    pub(super) fn issued(&self, words: &Words) -> String {
        let date = self.date.format(words.language().dates());
        words.say(&Message::new("doc-issued").with("date", date).with("by", &self.by))
    }

    /// What changed.
    pub(super) fn changed(&self, words: &Words) -> Option<Changed> {
        let since = self.since.as_ref()?;
        let cells = since.moved.iter().map(|moved| {
            let shown = |text: &str| if text.is_empty() { NO_CELL.to_owned() } else { text.to_owned() };
            Cell {
                place: moved.place.clone(),
                old: shown(&moved.old),
                new: shown(&moved.new),
                key: moved.key.clone().unwrap_or_default(),
            }
        });
        let about = |id| Message::new(id).with("revision", revision(since.revision));
        let line = about(match (since.is_known, since.moved.is_empty()) {
            (false, _) => "doc-changed-unknown",
            (true, true) => "doc-changed-none",
            (true, false) => "doc-changed",
        });
        let line = line.with_count("cells", since.moved.len());
        let short = about(if since.is_known { "doc-changed-short" } else { "doc-changed-unknown" });
        let short = short.with("cells", since.moved.len());
        Some(Changed {
            line: words.say(&line),
            short: words.say(&short),
            why: since.why.clone(),
            title: words.say(&about("doc-changed-title")),
            old: revision(since.revision),
            new: self.printed(),
            cells: cells.collect(),
            in_title: since.moved.iter().any(|moved| moved.pointer == TITLE),
        })
    }

    /// Puts the marks into the data.
    pub(super) fn mark(&self, data: &mut Value) {
        let moved = self.since.iter().flat_map(|since| &since.moved);
        for pointer in moved.map(|moved| moved.pointer.as_str()).filter(|pointer| is_shown(pointer)) {
            if let Some(Value::String(text)) = data.pointer_mut(pointer) {
                *text = marked(text);
            }
        }
    }
}

/// Whether a text stands on the page as it is in the data.
fn is_shown(pointer: &str) -> bool {
    match pointer.strip_prefix("/furniture/") {
        Some(rest) => FURNITURE_TEXTS.iter().any(|text| rest.split('/').next() == Some(text)),
        // What is read to those who do not see a drawing.
        None => !pointer.ends_with("/alt"),
    }
}

fn marked(text: &str) -> String {
    let mut all = text.chars();
    match all.next() {
        Some(first) if !text.contains(CHANGED_FROM) => {
            format!("{first}{CHANGED_FROM}{}{CHANGED_TO}", all.as_str())
        }
        _ => text.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_mark_stands_at_either_end_of_a_changed_text_once() {
        let moved = |pointer: &str| Moved {
            pointer: pointer.to_owned(),
            place: String::new(),
            old: "1".to_owned(),
            new: "2".to_owned(),
            key: None,
        };
        let moved =
            vec![moved("/rows/0/1"), moved("/rows/0/1"), moved("/alt"), moved("/rows/9"), moved(TITLE)];
        let since = Some(Since { revision: 1, why: String::new(), moved, is_known: true });
        let date = NaiveDate::default();
        let stamp = Stamp { revision: 2, date, by: "WB".to_owned(), since };
        let mut data =
            serde_json::json!({"rows": [["−20", "4.71"]], "alt": "4.71", "furniture": {"title": "T"}});
        stamp.mark(&mut data);
        assert_eq!(data["rows"][0][1], "4\u{fe00}.71\u{fe01}");
        assert_eq!((data["alt"].as_str(), data["furniture"]["title"].as_str()), (Some("4.71"), Some("T")));
        let mut empty = serde_json::json!({"rows": [["", ""]]});
        stamp.mark(&mut empty);
        assert_eq!(empty["rows"][0][1], "");
    }
}
