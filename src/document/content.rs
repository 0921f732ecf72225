//! What a document says, whatever the language and wording it says it in.
//!
//! A document is composed once more in neutral words (`Words::neutral`). What comes out
//! depends on figures, facts, the user's texts and on which words were chosen, but not on
//! a language's table, a template or a date: a better translation or layout changes no
//! fingerprint, a changed figure always does.

use std::collections::{HashMap, HashSet};
use std::sync::{Arc, LazyLock, Mutex, MutexGuard, OnceLock, PoisonError};

use serde::{Deserialize, Serialize};
use serde_json::Value;
use sha2::{Digest, Sha256};

use super::tie::tie;
use super::{Context, Data, Listed, PLAIN, Trial, compose, fingerprint};
use crate::quantity::traced;
use crate::words::Words;

/// What a document says.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Content {
    /// The short code of it all.
    pub fingerprint: String,
    data: Value,
    cells: OnceLock<Vec<Cell>>,
}

impl Content {
    /// Its data in neutral words, without what tells one issue or edition from another.
    #[must_use]
    pub fn data(&self) -> &Value {
        &self.data
    }

    /// Every text in it that holds a figure or is the user's own, in its order. Found when somebody
    /// first asks: most papers are the same as before.
    #[must_use]
    pub fn cells(&self) -> &[Cell] {
        self.cells.get_or_init(|| {
            let mut cells = Vec::new();
            each_text(&self.data, &mut String::new(), &mut |pointer, text| {
                if !IDS.contains(text) {
                    cells.push(Cell { pointer: pointer.to_owned(), text: tie(text) });
                }
            });
            cells
        })
    }
}

/// One text of a document's data.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Cell {
    /// Where it stands in the data: a JSON pointer (RFC 6901).
    pub pointer: String,
    /// What stands there, in neutral words.
    pub text: String,
}

/// What of a page's furniture tells one issue or edition from another, not one content.
const OF_THE_ISSUE: [&str; 9] =
    ["changed", "id", "date", "revision", "draft", "code", "language", "paper", "fingerprint"];

/// Ids of words: a text that is one of them is no figure and nobody's own.
static IDS: LazyLock<HashSet<String>> = LazyLock::new(|| Words::english().ids().iter().cloned().collect());

/// Codes of what documents of one model say, each found once: a report names those of a dozen
/// papers.
#[derive(Debug, Default)]
pub struct Codes(Mutex<HashMap<String, String>>);

/// What one document says, where it was composed before: the document's id, and its content.
pub type Said<'a> = (&'a str, &'a Arc<Content>);

/// What a document says; nothing where there is no such document.
#[must_use]
pub fn content(context: Context<'_>, listed: &Listed) -> Option<Arc<Content>> {
    if let Some((_, content)) = context.said.filter(|(id, _)| *id == listed.id) {
        return Some(Arc::clone(content));
    }
    let neutral = Words::neutral();
    // A proof's record is of the page that is printed, not of this.
    let (document, _) = traced(|| compose(Context { words: &neutral, ..context }, listed));
    let content = document?.content;
    if let Some(codes) = context.codes {
        codes.add(&context, listed, &content.fingerprint);
    }
    Some(content)
}

/// The code of what a document says; nothing where there is no such document.
pub(crate) fn code_of(context: Context<'_>, listed: &Listed) -> Option<String> {
    // Not under the lock: a paper may name others.
    let code = context.codes.and_then(|codes| codes.of(&context, listed));
    code.or_else(|| content(context, listed).map(|content| content.fingerprint.clone()))
}

impl Codes {
    /// The code of what a document says, where that was composed before.
    pub(crate) fn of(&self, context: &Context<'_>, listed: &Listed) -> Option<String> {
        self.in_context(context)?.get(&key(context, listed)).cloned()
    }

    fn add(&self, context: &Context<'_>, listed: &Listed, code: &str) {
        if let Some(mut codes) = self.in_context(context) {
            codes.insert(key(context, listed), code.to_owned());
        }
    }

    /// Those that hold for a context; what is tried in place of the specs is tried once.
    fn in_context(&self, context: &Context<'_>) -> Option<MutexGuard<'_, HashMap<String, String>>> {
        let is_of_specs = context.trial == Trial::default();
        is_of_specs.then(|| self.0.lock().unwrap_or_else(PoisonError::into_inner))
    }
}

/// A document, and all beside the model that decides what it says.
fn key(Context { units, size, bay, .. }: &Context<'_>, listed: &Listed) -> String {
    format!("{} {units:?} {size:?} {:?}", listed.id, bay.map(|bay| bay.kelvins().to_bits()))
}

/// What data composed in neutral words say.
pub(super) fn of(data: &impl Data) -> Content {
    let mut data = serde_json::to_value(data).expect(PLAIN);
    strip(&mut data);
    Content { fingerprint: code_of_data(&data), data, cells: OnceLock::new() }
}

fn code_of_data(data: &Value) -> String {
    let mut leaves = Vec::new();
    feed(data, &mut leaves);
    fingerprint::code(&Sha256::digest(&leaves))
}

fn strip(data: &mut Value) {
    if let Some(furniture) = data.get_mut("furniture").and_then(Value::as_object_mut) {
        furniture.retain(|key, _| !OF_THE_ISSUE.contains(&key.as_str()));
    }
}

/// Writes down the leaves, each with what parts it from the next; whether there was any. What an
/// object lacks and what it has empty are the same, so that a new block that a paper does not use
/// changes nothing.
fn feed(value: &Value, into: &mut Vec<u8>) -> bool {
    match value {
        Value::Object(entries) => {
            let mut entries: Vec<_> = entries.iter().collect();
            entries.sort_unstable_by_key(|(key, _)| *key);
            let start = into.len();
            for (key, value) in entries {
                let before = into.len();
                into.extend(key.as_bytes());
                into.push(1);
                if !feed(value, into) {
                    into.truncate(before);
                }
            }
            let is_any = into.len() > start;
            into.push(2);
            is_any
        }
        Value::Array(values) => {
            for value in values {
                feed(value, into);
            }
            into.push(3);
            !values.is_empty()
        }
        Value::String(text) => {
            into.extend(text.as_bytes());
            into.push(4);
            !text.is_empty()
        }
        other => {
            into.extend(other.to_string().as_bytes());
            into.push(5);
            !matches!(other, Value::Null | Value::Bool(false))
        }
    }
}

/// Every text of a page's data, but for what tells one issue or edition from another, in their order.
pub(crate) fn texts(data: &Value) -> Vec<Cell> {
    let mut cells = Vec::new();
    each_text(data, &mut String::new(), &mut |pointer, text| {
        let of_furniture = pointer.strip_prefix("/furniture/").and_then(|below| below.split('/').next());
        if of_furniture.is_none_or(|part| !OF_THE_ISSUE.contains(&part)) {
            cells.push(Cell { pointer: pointer.to_owned(), text: text.to_owned() });
        }
    });
    cells
}

/// Tells every text that is not empty, with its pointer.
fn each_text(value: &Value, pointer: &mut String, tell: &mut dyn FnMut(&str, &str)) {
    let mut below = |step: &str, value: &Value| {
        let length = pointer.len();
        pointer.push('/');
        pointer.push_str(step);
        each_text(value, pointer, tell);
        pointer.truncate(length);
    };
    match value {
        // Keys are names of fields: they hold neither `/` nor `~`.
        Value::Object(entries) => entries.iter().for_each(|(key, value)| below(key, value)),
        Value::Array(values) => {
            values.iter().enumerate().for_each(|(at, value)| below(&at.to_string(), value));
        }
        Value::String(text) if !text.is_empty() => tell(pointer, text),
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn an_empty_block_changes_nothing_and_a_moved_text_does() {
        let one = json!({ "rows": [["a", ""], ["b", "c"]] });
        assert_eq!(
            code_of_data(&one),
            code_of_data(&json!({ "rows": [["a", ""], ["b", "c"]], "notes": [], "stop": null }))
        );
        assert_ne!(code_of_data(&one), code_of_data(&json!({ "rows": [["", "a"], ["b", "c"]] })));
        assert_ne!(code_of_data(&one), code_of_data(&json!({ "rows": [["a", "", "b"], ["c"]] })));
    }

    #[test]
    fn cells_are_texts_that_are_no_words_with_their_places() {
        let data = json!({ "strip": { "rows": [["−20", "doc-units"]] }, "pages": 2, "note": "" });
        let cell = Cell { pointer: "/strip/rows/0/0".to_owned(), text: "−20".to_owned() };
        assert_eq!(Content { data, ..Content::default() }.cells(), [cell]);
    }

    #[test]
    fn texts_of_a_page_are_all_but_those_of_its_issue() {
        let furniture =
            json!({ "title": "Sensor", "changed": { "line": "1" }, "sources": [{ "code": "a" }] });
        let found = texts(&json!({ "furniture": furniture, "code": "b" }));
        let pointers: Vec<&str> = found.iter().map(|cell| cell.pointer.as_str()).collect();
        assert_eq!(pointers, ["/code", "/furniture/sources/0/code", "/furniture/title"]);
    }
}
