//! What one value demands or forbids elsewhere, as `if` and `then`.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::{Map, Value, json};

use super::super::reader::Shape;
use super::Writer;
use super::explore::{Trial, What};
use super::table::Effect;

/// Values of one key of a table that change the same, and what they change.
type Grouped<'a> = ((String, &'static str), BTreeSet<What>, BTreeMap<&'a str, Effect>);

impl Writer<'_> {
    /// The conditions that belong to a table: it is the innermost around the value and what hangs on it.
    pub(super) fn conditions(&mut self, here: &str) -> Vec<Value> {
        let mut all = Vec::new();
        // Values that change the same are one condition.
        let mut grouped: Vec<Grouped<'_>> = Vec::new();
        for trial in self.explored.trials.iter().filter(|trial| trial.what != What::Several) {
            let mut effects = self.explored.effects(trial);
            effects.retain(|changed, _| around(&trial.table, changed) == here);
            if effects.is_empty() {
                continue;
            }
            let at = (trial.table.clone(), trial.key);
            match grouped.iter_mut().find(|(known, _, changed)| *known == at && *changed == effects) {
                Some((_, values, _)) => drop(values.insert(trial.what)),
                None => grouped.push((at, BTreeSet::from([trial.what]), effects)),
            }
        }
        for ((table, key), values, effects) in grouped {
            let then: Vec<Value> = (effects.iter())
                .map(|(changed, effect)| {
                    let changes = self.changes(changed, effect);
                    self.below(here, changed, changes, Side::Then)
                })
                .collect();
            let condition = self.below(here, &table, self.holds(&table, key, &values), Side::If);
            let then = if let [only] = &then[..] { only.clone() } else { json!({ "allOf": then }) };
            all.push(json!({ "if": condition, "then": then }));
        }
        all.extend(self.unless(here));
        all
    }

    /// What entries of a list must have where there are two or more of them.
    pub(super) fn where_several(&self, table: &str, key: &str) -> Value {
        let name = format!("{table}.{key}");
        let several =
            |trial: &&Trial| trial.what == What::Several && (trial.table == table && trial.key == key);
        let effects = self.explored.trials.iter().find(several).map(|trial| self.explored.effects(trial));
        let required =
            effects.and_then(|mut effects| effects.remove(name.as_str())).unwrap_or_default().required;
        json!({ "required": required })
    }

    /// Keys that have to be there unless something else is.
    fn unless(&self, here: &str) -> Vec<Value> {
        let mut all = Vec::new();
        for (table, key, trials) in self.explored.unless() {
            let innermost =
                trials.iter().fold(table.to_owned(), |inner, trial| around(&inner, &trial.table).to_owned());
            if innermost != here {
                continue;
            }
            let mut by_key: BTreeMap<(&str, &'static str), BTreeSet<What>> = BTreeMap::new();
            for trial in trials {
                by_key.entry((&trial.table, trial.key)).or_default().insert(trial.what);
            }
            let mut any: Vec<Value> = (by_key.iter())
                .map(|((table, key), values)| {
                    self.below(here, table, self.holds(table, key, values), Side::If)
                })
                .collect();
            any.push(self.below(here, table, json!({ "required": [key] }), Side::Then));
            all.push(json!({ "anyOf": any }));
        }
        all
    }

    /// A table in which one of these values stands.
    fn holds(&self, table: &str, key: &'static str, values: &BTreeSet<What>) -> Value {
        let words: Vec<&str> = (values.iter())
            .filter_map(|what| if let What::Word(word) = what { Some(*word) } else { None })
            .collect();
        let known = self.explored.known(table);
        let shapes = known.keys.iter().find(|(other, _)| *other == key).map(|(_, shapes)| &shapes[..]);
        let of_words = |all: &[&str]| words.len() == all.len();
        let value = match shapes {
            // Every word does the same: that it stands there is enough.
            Some([Shape::Word(all) | Shape::SourcedWord(all)]) if of_words(all) => json!({}),
            _ if words.is_empty() => json!({}),
            Some([Shape::SourcedWord(_)]) => json!({ "anyOf": [
                { "enum": words },
                { "type": "object", "properties": { "value": { "enum": words } }, "required": ["value"] },
            ] }),
            _ => json!({ "enum": words }),
        };
        json!({ "properties": { key: value }, "required": [key] })
    }

    /// What holds of a table in which something is demanded or forbidden.
    fn changes(&mut self, table: &str, effect: &Effect) -> Value {
        let mut properties = Map::new();
        for key in &effect.forbidden {
            properties.insert((*key).to_owned(), json!({ "not": {} }));
        }
        for (key, shapes) in &effect.shapes {
            let schema = self.described(table, key, (shapes, true));
            properties.insert((*key).to_owned(), schema);
        }
        let mut schema = Map::new();
        if !properties.is_empty() {
            schema.insert("properties".to_owned(), properties.into());
        }
        if !effect.required.is_empty() {
            schema.insert("required".to_owned(), json!(effect.required));
        }
        schema.into()
    }

    /// `schema` of the table `to`, seen from the table `from` around it.
    fn below(&self, from: &str, to: &str, schema: Value, side: Side) -> Value {
        let Some((outer, key)) = to.rsplit_once('.').filter(|_| to != from) else { return schema };
        let is_list = self.explored.listed.contains(to);
        let inner = match (side, is_list) {
            (Side::If, true) => json!({ "type": "array", "contains": schema }),
            (Side::If, false) => schema,
            (Side::Then, true) => json!({ "items": schema }),
            (Side::Then, false) => schema,
        };
        let mut around = json!({ "properties": { key: inner } });
        if side == Side::If {
            around["required"] = json!([key]);
        }
        self.below(from, outer, around, side)
    }
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Side {
    If,
    Then,
}

/// The innermost table around both.
fn around<'a>(one: &'a str, other: &str) -> &'a str {
    let mut name = one;
    while !(other == name || other.starts_with(name) && other[name.len()..].starts_with('.')) {
        name = name.rsplit_once('.').map_or("", |(outer, _)| outer);
        if name.is_empty() {
            break;
        }
    }
    name
}
