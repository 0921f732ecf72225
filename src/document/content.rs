//! What a document says, whatever the language and wording it says it in.
//!
//! A document is composed once more in neutral words (`Words::neutral`). What comes out
//! depends on figures, facts, the user's texts and on which words were chosen, but not on
//! a language's table, a template or a date: a better translation or layout changes no
//! fingerprint, a changed figure always does.

use std::collections::{HashMap, HashSet};
use std::sync::{LazyLock, Mutex, MutexGuard, PoisonError};

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
    /// Every text in it that holds a figure or is the user's own, in its order.
    pub cells: Vec<Cell>,
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

/// What a document says; nothing where there is no such document.
#[must_use]
pub fn content(context: Context<'_>, listed: &Listed) -> Option<Content> {
    let neutral = Words::neutral();
    // A proof's record is of the page that is printed, not of this.
    let (document, _) = traced(|| compose(Context { words: &neutral, stamp: None, ..context }, listed));
    let content = document?.content;
    if let Some(mut codes) = known(&context) {
        codes.insert(key(&context, listed), content.fingerprint.clone());
    }
    Some(content)
}

/// The code of what a document says; nothing where there is no such document.
pub(crate) fn code_of(context: Context<'_>, listed: &Listed) -> Option<String> {
    // Not under the lock: a paper may name others.
    let code = known(&context).and_then(|codes| codes.get(&key(&context, listed)).cloned());
    code.or_else(|| content(context, listed).map(|content| content.fingerprint))
}

/// The codes that hold for a context; what is tried in place of the specs is tried once.
fn known<'a>(context: &Context<'a>) -> Option<MutexGuard<'a, HashMap<String, String>>> {
    let codes = context.codes.filter(|_| context.trial == Trial::default())?;
    Some(codes.0.lock().unwrap_or_else(PoisonError::into_inner))
}

/// A document, and all beside the model that decides what it says.
fn key(Context { units, size, bay, .. }: &Context<'_>, listed: &Listed) -> String {
    format!("{} {units:?} {size:?} {:?}", listed.id, bay.map(|bay| bay.kelvins().to_bits()))
}

/// What data composed in neutral words say.
pub(super) fn of(data: &impl Data) -> Content {
    let mut data = serde_json::to_value(data).expect(PLAIN);
    strip(&mut data);
    let mut hash = Sha256::new();
    feed(&data, &mut hash);
    let mut cells = Vec::new();
    collect(&data, &mut String::new(), &mut cells);
    Content { fingerprint: fingerprint::code(&hash.finalize()), cells }
}

fn strip(data: &mut Value) {
    if let Some(furniture) = data.get_mut("furniture").and_then(Value::as_object_mut) {
        furniture.retain(|key, _| !OF_THE_ISSUE.contains(&key.as_str()));
    }
}

/// Feeds the leaves, each with what parts it from the next. What an object lacks and what it
/// has empty are the same, so that a new block that a paper does not use changes nothing.
fn feed(value: &Value, hash: &mut Sha256) {
    match value {
        Value::Object(entries) => {
            let mut entries: Vec<_> = entries.iter().filter(|(_, value)| !is_empty(value)).collect();
            entries.sort_by_key(|(key, _)| *key);
            for (key, value) in entries {
                hash.update(key);
                hash.update("\u{1}");
                feed(value, hash);
            }
            hash.update("\u{2}");
        }
        Value::Array(values) => {
            values.iter().for_each(|value| feed(value, hash));
            hash.update("\u{3}");
        }
        Value::String(text) => {
            hash.update(text);
            hash.update("\u{4}");
        }
        other => {
            hash.update(other.to_string());
            hash.update("\u{5}");
        }
    }
}

fn is_empty(value: &Value) -> bool {
    match value {
        Value::Null => true,
        Value::Bool(on) => !on,
        Value::String(text) => text.is_empty(),
        Value::Array(values) => values.is_empty(),
        Value::Object(entries) => entries.values().all(is_empty),
        Value::Number(_) => false,
    }
}

fn collect(value: &Value, pointer: &mut String, cells: &mut Vec<Cell>) {
    let mut below = |step: &str, value: &Value, cells: &mut Vec<Cell>| {
        let length = pointer.len();
        pointer.push('/');
        pointer.push_str(step);
        collect(value, pointer, cells);
        pointer.truncate(length);
    };
    match value {
        Value::Object(entries) => {
            // Keys are names of fields: they hold neither `/` nor `~`.
            entries.iter().for_each(|(key, value)| below(key, value, cells));
        }
        Value::Array(values) => {
            values.iter().enumerate().for_each(|(at, value)| below(&at.to_string(), value, cells));
        }
        Value::String(text) if !text.is_empty() && !IDS.contains(text) => {
            cells.push(Cell { pointer: pointer.clone(), text: tie(text) });
        }
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    fn code(value: &Value) -> String {
        let mut hash = Sha256::new();
        feed(value, &mut hash);
        fingerprint::code(&hash.finalize())
    }

    #[test]
    fn an_empty_block_changes_nothing_and_a_moved_text_does() {
        let one = json!({ "rows": [["a", ""], ["b", "c"]] });
        assert_eq!(code(&one), code(&json!({ "rows": [["a", ""], ["b", "c"]], "notes": [], "stop": null })));
        assert_ne!(code(&one), code(&json!({ "rows": [["", "a"], ["b", "c"]] })));
        assert_ne!(code(&one), code(&json!({ "rows": [["a", "", "b"], ["c"]] })));
    }

    #[test]
    fn cells_are_texts_that_are_no_words_with_their_places() {
        let mut cells = Vec::new();
        let data = json!({ "strip": { "rows": [["−20", "doc-units"]] }, "pages": 2 });
        collect(&data, &mut String::new(), &mut cells);
        assert_eq!(cells, [Cell { pointer: "/strip/rows/0/0".to_owned(), text: "−20".to_owned() }]);
    }
}
