//! Which cells of a paper read otherwise than in the revision before, and where they are.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use super::kept::{Kept, KeptCell};
use crate::document::Moved;

/// The cells that differ: changed and new ones in the order of the page, then those that are gone.
pub(super) fn moved(before: &Kept, now: &Kept, data: &Value) -> Vec<Moved> {
    let old: BTreeMap<String, &KeptCell> = before.named().into_iter().collect();
    let new = now.named();
    let known: BTreeSet<&str> = new.iter().map(|(name, _)| name.as_str()).collect();
    let changed = new.iter().filter_map(|(name, cell)| {
        let was = old.get(name);
        let differs = was.is_none_or(|was| was.meant != cell.meant);
        differs.then(|| Moved {
            pointer: cell.at.clone(),
            place: place(data, &cell.at),
            old: was.map(|was| was.printed.clone()).unwrap_or_default(),
            new: cell.printed.clone(),
            key: None,
        })
    });
    let gone = before.named().into_iter().filter(|(name, _)| !known.contains(name.as_str()));
    let gone = gone.map(|(name, cell)| Moved {
        pointer: String::new(),
        place: name.trim_start_matches('/').replace('/', " "),
        old: cell.printed.clone(),
        new: String::new(),
        key: None,
    });
    changed.chain(gone).collect()
}

/// Where a cell is, in words of the page: block, row, column.
fn place(data: &Value, pointer: &str) -> String {
    let mut steps: Vec<&str> = Vec::new();
    let mut words: Vec<String> = Vec::new();
    let mut add = |text: Option<&str>| {
        let text = text.unwrap_or_default().trim();
        if !text.is_empty() && words.last().is_none_or(|last| last != text) {
            words.push(text.to_owned());
        }
    };
    let (mut here, mut block) = (data, data);
    for step in pointer.split('/').skip(1) {
        match here {
            Value::Object(entries) => {
                block = here;
                let title = ["title", "what", "number", "pin", "id"]
                    .iter()
                    .find_map(|key| entries.get(*key).and_then(Value::as_str));
                if *step != *"title" && !steps.is_empty() {
                    add(title);
                }
            }
            Value::Array(_) => {
                // A row of texts: its first one, then the head of the column.
                let row = steps.last().is_some_and(|last| last.parse::<usize>().is_ok());
                if row {
                    add(here.get(0).and_then(Value::as_str));
                    let head =
                        block.get("columns").and_then(|columns| columns.get(step.parse().unwrap_or(0)));
                    for part in ["head", "sub"] {
                        add(head.and_then(|head| head.get(part)).and_then(Value::as_str));
                    }
                }
            }
            _ => {}
        }
        steps.push(step);
        let next = match here {
            Value::Array(all) => step.parse().ok().and_then(|at: usize| all.get(at)),
            other => other.get(step),
        };
        let Some(next) = next else { break };
        here = next;
    }
    if words.is_empty() { pointer.trim_start_matches('/').replace('/', " ") } else { words.join(", ") }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_place_is_said_by_block_row_and_column() {
        let data = serde_json::json!({
            "strip": { "title": "Strip", "columns": [{ "head": "°C" }, { "head": "volts", "sub": "min" }],
                       "rows": [["20", "2.5"]] },
            "given": [{ "what": "Pull-up resistor", "value": "4.7 kΩ" }],
        });
        assert_eq!(place(&data, "/strip/rows/0/1"), "Strip, 20, volts, min");
        assert_eq!(place(&data, "/given/0/value"), "Pull-up resistor");
        assert_eq!(place(&data, "/furniture/notice"), "furniture notice");
    }
}
