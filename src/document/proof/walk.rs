//! Every number of a card's data beside the computation that printed it.

use std::ops::Range;

use serde_json::{Map, Value};

use super::numbers::{around, numbers};
use crate::quantity::Traced;

/// Parts of the data that hold no figures: the page's furniture, warnings, names of pins,
/// what is drawn or read aloud.
const UNSEEN: &[&str] = &["furniture", "cautions", "ends", "alt", "outline", "paper", "mark", "place_mark"];

/// What a reader looks at first; blocks that are not named here follow.
const ORDER: &[&str] =
    &["key_figures", "strip", "figures", "main", "coil", "drops", "wrong", "readings", "example"];

/// Fields that hold the unit of their entry's figures.
const UNITS: &[&str] = &["expect_unit", "unit"];

/// One printed number.
#[derive(Debug, Clone)]
pub(in crate::document) struct Number {
    /// What it stands at: the row and column of a table, or the text around it.
    pub place: String,
    /// As printed.
    pub printed: String,
    /// What was rounded; nothing where the number stands as it was given.
    pub traced: Option<Traced>,
    /// The whole text it stands in, and where.
    pub text: String,
    pub range: Range<usize>,
    /// The unit that stands in a field of its own beside it; may be empty.
    pub unit: String,
    /// The head of its column, or what its entry is about.
    pub head: String,
    /// The titles of the tables and entries that it stands in, the innermost last.
    pub group: String,
}

/// One block of a card: its key in the data, and its numbers in the order of the page.
#[derive(Debug)]
pub(in crate::document) struct Part {
    pub key: String,
    pub numbers: Vec<Number>,
}

/// Every block of a card that holds numbers.
///
/// `written` are the values of the specs as they were written: where one stands on the card,
/// its digits are the user's own and no computation's.
pub(super) fn parts(data: &Value, record: &[Traced], written: &[String]) -> Vec<Part> {
    let Value::Object(entries) = data else { return Vec::new() };
    let shown = entries.iter().filter(|(key, _)| !UNSEEN.contains(&key.as_str()));
    let part = |(key, value): (&String, &Value)| {
        let mut walk = Walk {
            record,
            written,
            last: None,
            titles: Vec::new(),
            unit: String::new(),
            numbers: Vec::new(),
        };
        walk.value(value, "");
        Part { key: key.clone(), numbers: walk.numbers }
    };
    let mut parts: Vec<Part> = shown.map(part).filter(|part| !part.numbers.is_empty()).collect();
    let rank = |part: &Part| ORDER.iter().position(|key| part.key == *key).unwrap_or(ORDER.len());
    parts.sort_by_key(rank);
    parts
}

struct Walk<'a> {
    record: &'a [Traced],
    written: &'a [String],
    /// The place in the record of the number met last.
    last: Option<usize>,
    titles: Vec<String>,
    /// The unit beside the entry that is being read.
    unit: String,
    numbers: Vec<Number>,
}

impl Walk<'_> {
    fn value(&mut self, value: &Value, label: &str) {
        match value {
            Value::String(text) => self.text(text, label),
            Value::Array(values) => values.iter().for_each(|value| self.value(value, label)),
            Value::Object(entries) => {
                let title = entries.get("title").and_then(Value::as_str).filter(|title| !title.is_empty());
                let inside = self.titles.len();
                self.titles.extend(title.map(|title| title.replace('\u{a0}', " ")));
                self.object(entries, label);
                self.titles.truncate(inside);
            }
            _ => {}
        }
    }

    fn object(&mut self, entries: &Map<String, Value>, label: &str) {
        if let (Some(Value::Array(columns)), Some(Value::Array(rows))) =
            (entries.get("columns"), entries.get("rows"))
        {
            let rest = entries.iter().filter(|(key, _)| !matches!(key.as_str(), "columns" | "rows"));
            rest.for_each(|(_, value)| self.value(value, label));
            columns.iter().for_each(|column| self.value(column, label));
            let heads: Vec<String> = columns.iter().map(head).collect();
            rows.iter().filter_map(Value::as_array).for_each(|row| self.row(&heads, row));
            return;
        }
        // What an entry of a list is about is the first that it says.
        let names = ["at", "reads", "what", "title", "name", "label", "pin", "role"];
        let named = names.iter().find_map(|name| entries.get(*name).and_then(Value::as_str));
        let own = named.unwrap_or(label);
        let unit = UNITS.iter().find_map(|key| entries.get(*key).and_then(Value::as_str)).unwrap_or_default();
        let outer = std::mem::replace(&mut self.unit, unit.to_owned());
        for (key, value) in entries.iter().filter(|(key, _)| !UNSEEN.contains(&key.as_str())) {
            let is_name = value.as_str().is_some_and(|text| Some(text) == named);
            if is_name || key != "pin" {
                self.value(value, if is_name { "" } else { own });
            }
        }
        self.unit = outer;
    }

    fn row(&mut self, heads: &[String], row: &[Value]) {
        // A row is known by the first of its cells that says anything.
        let texts = || row.iter().map(|cell| cell.as_str().unwrap_or_default());
        let key = texts().position(|text| !text.is_empty()).unwrap_or_default();
        let first = texts().nth(key).unwrap_or_default();
        for (index, cell) in row.iter().enumerate() {
            let head = heads.get(index).map(String::as_str).unwrap_or_default();
            let place = if index <= key { head.to_owned() } else { format!("{first}, {head}") };
            self.value(cell, &place);
        }
    }

    fn text(&mut self, text: &str, label: &str) {
        // Blanks that hold together are blanks here.
        let text = text.replace('\u{a0}', " ");
        for number in numbers(&text) {
            let printed = text[number.clone()].to_owned();
            let place = place(&text, &number, label);
            let traced = if self.is_written(&text, &number) { None } else { self.find(&printed) };
            let group = self.titles.join(", ");
            let head = label.rsplit(", ").next().unwrap_or_default().to_owned();
            self.numbers.push(Number {
                place,
                printed,
                traced,
                text: text.clone(),
                range: number,
                unit: self.unit.clone(),
                head,
                group,
            });
        }
    }

    /// Whether a number stands within a value as the specs have it.
    fn is_written(&self, text: &str, number: &Range<usize>) -> bool {
        self.written.iter().any(|written| {
            text.match_indices(written.as_str())
                .any(|(from, _)| from <= number.start && number.end <= from + written.len())
        })
    }

    /// The computation that printed a number. Where several did, and from different values,
    /// the next one after the number before it: a block is composed in its order.
    fn find(&mut self, printed: &str) -> Option<Traced> {
        let after = self.last.map_or(0, |last| last + 1);
        let find = |wanted: &str| {
            let mut behind = (after..self.record.len()).chain(0..after);
            behind.find(|index| self.record[*index].printed == wanted)
        };
        // A minus sign may also stand between two numbers.
        let found = find(printed).or_else(|| find(printed.strip_prefix('−')?))?;
        self.last = Some(found);
        self.record.get(found).cloned()
    }
}

/// The head of a column: a text, or an object with head and sub.
fn head(column: &Value) -> String {
    let part = |key: &str| column.get(key).and_then(Value::as_str).unwrap_or_default();
    column
        .as_str()
        .map_or_else(|| format!("{} {}", part("head"), part("sub")), str::to_owned)
        .trim()
        .to_owned()
}

/// What tells a reader which number this is.
fn place(text: &str, number: &Range<usize>, label: &str) -> String {
    let alone = text.chars().count() <= number.len() + 6;
    match (label.is_empty(), alone) {
        (false, true) => label.to_owned(),
        (false, false) if text.chars().count() < 24 => format!("{label}: {text}"),
        _ => around(text, number),
    }
}
