//! The JSON Schema of a spec file, for editors that complete and check while one types.
//!
//! It is made from what the readers of this room ask for; only what each key means
//! stands apart, in `keys.toml`. JSON Schema draft 7, the newest one that the TOML
//! language servers in use understand.

mod condition;
mod describe;
mod explore;
mod shape;
mod table;

use std::collections::BTreeMap;

use serde_json::{Map, Value, json};

use super::reader::Shape;
use super::set::{KINDS, LONGEST_ID, has_ids};
use describe::Descriptions;
pub use describe::described;
use explore::{Explored, KEY};
use shape::{Definitions, text};

/// Every key of each kind of table, by the table's path: `sensor.circuit`.
#[must_use]
pub fn keys() -> BTreeMap<String, Vec<&'static str>> {
    let mut keys = BTreeMap::new();
    for explored in KINDS.iter().map(|kind| Explored::of(kind)) {
        for name in explored.names() {
            let own = explored.known(name).keys.iter().map(|(key, _)| *key);
            keys.insert(describe::path_of(name), own.collect());
        }
    }
    keys
}

/// The JSON Schema of a spec file.
#[must_use]
pub fn schema() -> Value {
    let mut definitions = Definitions::default();
    let descriptions = Descriptions::load();
    let mut properties = Map::new();
    for kind in KINDS {
        let explored = Explored::of(kind);
        let mut writer =
            Writer { explored: &explored, definitions: &mut definitions, descriptions: &descriptions };
        let own = writer.table(&explored.root);
        let schema = if has_ids(kind) {
            let one = definitions.share(kind, own);
            let id = format!("^[A-Za-z0-9][A-Za-z0-9_-]{{0,{}}}$", LONGEST_ID - 1);
            json!({
                "type": "object", "minProperties": 1, "additionalProperties": false,
                "patternProperties": { id: one },
                "description": descriptions.table(kind),
            })
        } else {
            own
        };
        properties.insert((*kind).to_owned(), schema);
    }
    json!({
        "$schema": "http://json-schema.org/draft-07/schema#",
        "title": "Spec of bayleaf",
        "description": descriptions.table(""),
        "type": "object",
        "properties": properties,
        "additionalProperties": false,
        "definitions": definitions.into_json(),
    })
}

/// Writes the schemas of one kind's tables.
struct Writer<'a> {
    explored: &'a Explored,
    definitions: &'a mut Definitions,
    descriptions: &'a Descriptions,
}

impl Writer<'_> {
    /// The schema of a table and of all tables in it.
    fn table(&mut self, name: &str) -> Value {
        let explored = self.explored;
        let known = explored.known(name);
        let mut properties = Map::new();
        for (key, shapes) in &known.keys {
            properties.insert((*key).to_owned(), self.described(name, key, (shapes, shapes.len() > 1)));
        }
        let mut schema = Map::new();
        schema.insert("type".to_owned(), json!("object"));
        schema.insert("description".to_owned(), self.descriptions.table(&describe::path_of(name)));
        schema.insert("properties".to_owned(), properties.into());
        match &known.entries {
            Some(shape) => {
                let entry = self.shaped(name, KEY, shape);
                schema.insert("additionalProperties".to_owned(), entry);
            }
            None if known.closed || name == self.explored.root => {
                schema.insert("additionalProperties".to_owned(), json!(false));
            }
            None => {}
        }
        if !known.required.is_empty() {
            schema.insert("required".to_owned(), json!(known.required));
        }
        let mut all = Vec::new();
        if !known.one_of.is_empty() {
            let each: Vec<Value> = known.one_of.iter().map(|key| json!({ "required": [key] })).collect();
            all.push(json!({ "oneOf": each }));
        }
        if known.says_something {
            all.push(json!({ "minProperties": 1, "not": { "required": ["source"], "maxProperties": 1 } }));
        }
        all.extend(self.conditions(name));
        if !all.is_empty() {
            schema.insert("allOf".to_owned(), all.into());
        }
        schema.into()
    }

    /// A key with its description and examples.
    fn described(&mut self, table: &str, key: &str, (shapes, varies): (&[Shape], bool)) -> Value {
        let schema = match shapes {
            [shape] => self.shaped(table, key, shape),
            several => {
                json!({ "anyOf": several.iter().map(|shape| self.shaped(table, key, shape)).collect::<Vec<_>>() })
            }
        };
        self.descriptions.key(&describe::path_of(table), key, (shapes, varies), schema)
    }

    fn shaped(&mut self, table: &str, key: &str, shape: &Shape) -> Value {
        let name = format!("{table}.{key}");
        match shape {
            Shape::Table => self.table(&name),
            Shape::Tables { filled } => {
                json!({ "type": "array", "minItems": u8::from(*filled), "items": self.table(&name) })
            }
            Shape::TextOrTable => json!({ "anyOf": [text(), self.table(&name)] }),
            Shape::TableOrTables => {
                let one = self.table(&name);
                let several = self.where_several(table, key);
                json!({ "anyOf": [
                    one,
                    { "type": "array", "minItems": 1, "maxItems": 1, "items": one },
                    { "type": "array", "minItems": 2, "items": { "allOf": [one, several] } },
                ] })
            }
            other => self.definitions.of(other),
        }
    }
}
