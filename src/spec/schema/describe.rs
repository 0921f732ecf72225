//! What each key means, and how values of it look.

use std::collections::BTreeMap;

use serde_json::{Value, json};
use toml::Table;

use super::super::demo::DEMO;
use super::super::reader::Shape;
use super::super::set::has_ids;
use super::explore::{ID, KEY};
use crate::words::Words;

/// What each key means: a table for each table of a spec, `any` for keys that mean
/// the same wherever they stand.
const KEYS: &str = include_str!("keys.toml");

/// As many examples as an editor can show.
const MOST_EXAMPLES: usize = 3;

/// The path of a table without the user's own keys: `sensor.circuit`, `connector.pins.*`.
pub(super) fn path_of(name: &str) -> String {
    let parts: Vec<&str> = name.split('.').filter(|part| *part != ID).collect();
    parts.into_iter().map(|part| if part == KEY { "*" } else { part }).collect::<Vec<_>>().join(".")
}

/// Every path and key that `keys.toml` describes; a table itself has the key `""`.
#[must_use]
pub fn described() -> Vec<(String, String)> {
    let keys: Table = KEYS.parse().unwrap_or_default();
    let of = |(path, table): (&String, &toml::Value)| -> Vec<(String, String)> {
        table.as_table().into_iter().flatten().map(|(key, _)| (path.clone(), key.clone())).collect()
    };
    keys.iter().flat_map(of).collect()
}

/// Descriptions of keys, and examples from the demo set.
pub(super) struct Descriptions {
    keys: Table,
    examples: BTreeMap<(String, String), Vec<String>>,
    words: Words,
}

impl Descriptions {
    pub(super) fn load() -> Self {
        let keys = KEYS.parse().unwrap_or_default();
        let mut examples = BTreeMap::new();
        for (_, text) in DEMO {
            let spec: Table = text.parse().unwrap_or_default();
            for (kind, things) in &spec {
                let one = (!has_ids(kind)).then_some(things);
                let several = things.as_table().filter(|_| has_ids(kind)).into_iter().flatten();
                for thing in one.into_iter().chain(several.map(|(_, thing)| thing)) {
                    collect(kind, thing, &mut examples);
                }
            }
        }
        Self { keys, examples, words: Words::english() }
    }

    /// What a table is.
    pub(super) fn table(&self, path: &str) -> Value {
        json!(self.text(path, "").unwrap_or_default())
    }

    /// A key's schema with what the key means.
    ///
    /// A key that holds different things has no examples of the demo here: they may be of another.
    pub(super) fn key(
        &self,
        path: &str,
        key: &str,
        (shapes, varies): (&[Shape], bool),
        schema: Value,
    ) -> Value {
        let mut description = self.text(path, key).unwrap_or_default();
        let mut examples = if varies { Vec::new() } else { self.examples_of(path, key) };
        if let [Shape::Quantity(phrasing) | Shape::Quantities(phrasing)] = shapes
            && !phrasing.is_free()
        {
            if examples.is_empty() {
                examples = phrasing.examples();
            }
            let shown: Vec<String> = examples.iter().map(|example| format!("`{example}`")).collect();
            let dimension = phrasing.dimension().map(|dimension| self.words.word(dimension.word()));
            let of = dimension.map_or_else(String::new, |word| format!(" ({word})"));
            description = format!("{description}{of}\n\nAs in {}", shown.join(", "));
        }
        let mut all = json!({ "description": description });
        if !examples.is_empty() && !shapes.iter().any(is_table) {
            all["examples"] = json!(examples);
        }
        match schema {
            // Beside a reference everything else would be ignored.
            Value::Object(own) if own.contains_key("$ref") => all["allOf"] = json!([own]),
            Value::Object(own) => {
                for (name, value) in own {
                    if name != "description" || description.is_empty() {
                        all[name] = value;
                    }
                }
            }
            other => all = other,
        }
        all
    }

    pub(super) fn text(&self, path: &str, key: &str) -> Option<String> {
        let of = |path: &str| self.keys.get(path)?.get(key)?.as_str().map(str::to_owned);
        of(path).or_else(|| if key.is_empty() { None } else { of("any") })
    }

    fn examples_of(&self, path: &str, key: &str) -> Vec<String> {
        self.examples.get(&(path.to_owned(), key.to_owned())).cloned().unwrap_or_default()
    }
}

fn is_table(shape: &Shape) -> bool {
    matches!(
        shape,
        Shape::Table | Shape::Tables { .. } | Shape::TableOrTables | Shape::Word(_) | Shape::SourcedWord(_)
    )
}

/// Notes the texts of a table of the demo as examples of its keys.
fn collect(path: &str, value: &toml::Value, examples: &mut BTreeMap<(String, String), Vec<String>>) {
    let Some(table) = value.as_table() else { return };
    for (key, value) in table {
        let value = value.get("value").unwrap_or(value);
        let texts: Vec<&str> = match value {
            toml::Value::String(text) => vec![text],
            toml::Value::Array(items) => items.iter().filter_map(toml::Value::as_str).collect(),
            _ => Vec::new(),
        };
        let known = examples.entry((path.to_owned(), key.clone())).or_default();
        for text in texts {
            if known.len() < MOST_EXAMPLES && !known.iter().any(|other| other == text) {
                known.push(text.to_owned());
            }
        }
        let inner = format!("{path}.{key}");
        match value {
            toml::Value::Table(_) => collect(&inner, value, examples),
            toml::Value::Array(items) => items.iter().for_each(|item| collect(&inner, item, examples)),
            _ => {}
        }
    }
}
