//! A shape as JSON Schema.

use std::collections::BTreeMap;

use serde_json::{Map, Value, json};

use super::super::reader::{Item, Shape};
use crate::quantity::Phrasing;

/// Schemas that many keys share, by their names.
#[derive(Default)]
pub(super) struct Definitions {
    by_name: BTreeMap<String, Value>,
}

impl Definitions {
    /// Shares a schema under a name, and returns the reference to it.
    ///
    /// Where another one has the name already, a number is added to it.
    pub(super) fn share(&mut self, name: &str, schema: Value) -> Value {
        let names = std::iter::once(name.to_owned()).chain((2..).map(|number| format!("{name}-{number}")));
        for name in names {
            let known = self.by_name.entry(name.clone()).or_insert_with(|| schema.clone());
            if *known == schema {
                return json!({ "$ref": format!("#/definitions/{name}") });
            }
        }
        Value::Null
    }

    pub(super) fn into_json(self) -> Value {
        self.by_name.into_iter().collect::<Map<_, _>>().into()
    }

    /// The schema of a key that holds no table.
    pub(super) fn of(&mut self, shape: &Shape) -> Value {
        match shape {
            Shape::Text(longest) => json!({ "type": "string", "pattern": r"\S", "maxLength": longest }),
            Shape::Texts { filled } => {
                json!({ "type": "array", "minItems": u8::from(*filled), "items": text() })
            }
            Shape::SourcedText => self.sourced("text", text()),
            Shape::Quantity(phrasing) if phrasing.is_free() => self.sourced("text", text()),
            Shape::Quantity(phrasing) => {
                let schema = written(phrasing);
                self.sourced(&name_of(phrasing), schema)
            }
            Shape::Quantities(phrasing) => {
                json!({ "type": "array", "minItems": 1, "items": written(phrasing) })
            }
            Shape::Pairs(first, second) => {
                let pair = json!({
                    "type": "array", "items": [written(first), written(second)],
                    "minItems": 2, "maxItems": 2,
                });
                json!({ "type": "array", "items": pair })
            }
            Shape::Flag => self.sourced("flag", json!({ "type": "boolean" })),
            Shape::Number => self.sourced("number", json!({ "type": "number" })),
            Shape::Word(words) => json!({ "enum": words }),
            Shape::SourcedWord(words) => sourced(&json!({ "enum": words })),
            Shape::Words(words) => {
                json!({ "type": "array", "minItems": 1, "items": { "enum": words } })
            }
            Shape::List(item) => json!({ "type": "array", "items": of_item(item) }),
            Shape::Any | Shape::Table | Shape::Tables { .. } | Shape::TableOrTables | Shape::TextOrTable => {
                json!({})
            }
        }
    }

    fn sourced(&mut self, name: &str, value: Value) -> Value {
        let schema = sourced(&value);
        self.share(name, schema)
    }
}

/// A text that a block of a page has room for.
pub(super) fn text() -> Value {
    json!({ "type": "string", "pattern": r"\S", "maxLength": 400 })
}

/// A value, or the value in a table with its source.
fn sourced(value: &Value) -> Value {
    let table = json!({
        "type": "object",
        "properties": { "value": value, "source": text() },
        "required": ["value"],
        "additionalProperties": false,
    });
    json!({ "anyOf": [value, table] })
}

fn written(phrasing: &Phrasing) -> Value {
    if phrasing.is_free() {
        return text();
    }
    json!({ "type": "string", "pattern": phrasing.pattern(), "examples": phrasing.examples() })
}

/// A name for what is shared: what it measures, and how it is written.
fn name_of(phrasing: &Phrasing) -> String {
    let of = phrasing.dimension().map_or("quantity", |dimension| dimension.word());
    let form = phrasing.sample();
    let form = match (form.contains(" to "), form.contains('±'), form.contains("digits")) {
        (true, ..) => "-range",
        (_, true, _) => "-toleranced",
        (.., true) => "-accuracy",
        _ => "",
    };
    format!("{}{form}", of.trim_start_matches("dimension-"))
}

fn of_item(item: &Item) -> Value {
    match item {
        Item::Number => json!({ "type": "number" }),
        Item::Count => json!({ "type": "integer", "minimum": 0 }),
        Item::Text => text(),
        Item::Pattern("") => json!({ "type": "string" }),
        Item::Pattern(pattern) => json!({ "type": "string", "pattern": pattern }),
        Item::OneOf(items) => json!({ "anyOf": items.iter().map(of_item).collect::<Vec<_>>() }),
        Item::Row(items) => json!({
            "type": "array", "items": items.iter().map(of_item).collect::<Vec<_>>(),
            "minItems": items.len(), "maxItems": items.len(),
        }),
        Item::RowOf(item) => json!({ "type": "array", "items": of_item(item) }),
    }
}
