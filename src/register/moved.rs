//! Which cells of a paper read otherwise than in the revision before, and where they are.

use serde_json::Value;

use super::kept::Kept;
use crate::document::Moved;

/// Texts up to this many characters are shown whole; of longer ones what differs.
const WHOLE: usize = 40;

/// So many words on either side of what differs.
const AROUND: usize = 2;

/// So many words name a text that stands in no table.
const NAMING: usize = 4;

/// The cells that differ: changed and new ones in the order of the page, then those that are gone.
/// What is only read to those who do not see a drawing is left out where its figures stand beside
/// it.
pub(super) fn moved(before: &Kept, now: &Kept, data: &Value) -> Vec<Moved> {
    let (beside, gone) = now.beside(before);
    let changed = beside.iter().filter_map(|(cell, was)| {
        let printed = was.map(|was| was.printed.as_str()).unwrap_or_default();
        // One that means something else and reads the same has not changed to a reader.
        if was.is_some_and(|was| was.meant == cell.meant) || printed == cell.printed {
            return None;
        }
        let (old, new) = shortened(printed, &cell.printed);
        let place = place(data, &cell.at, &cell.printed);
        Some(Moved { pointer: cell.at.clone(), place, old, new, key: None })
    });
    let gone = gone.iter().map(|cell| Moved {
        pointer: String::new(),
        place: first_words(&cell.printed),
        old: shortened(&cell.printed, "").0,
        new: String::new(),
        key: None,
    });
    let all: Vec<Moved> = changed.chain(gone).collect();
    let is_read_out = |moved: &Moved| moved.pointer.ends_with("/alt");
    if all.iter().all(is_read_out) {
        all
    } else {
        all.into_iter().filter(|moved| !is_read_out(moved)).collect()
    }
}

/// Two long texts, cut down to where they differ.
fn shortened(old: &str, new: &str) -> (String, String) {
    if old.chars().count().max(new.chars().count()) <= WHOLE {
        return (old.to_owned(), new.to_owned());
    }
    let (before, now): (Vec<&str>, Vec<&str>) = (old.split(' ').collect(), new.split(' ').collect());
    let same = before.iter().zip(&now).take_while(|(one, other)| one == other).count();
    let most = before.len().min(now.len()) - same;
    let behind =
        before.iter().rev().zip(now.iter().rev()).take(most).take_while(|(one, other)| one == other).count();
    let cut = |words: &[&str]| {
        let (from, to) = (same.saturating_sub(AROUND), (words.len() - behind + AROUND).min(words.len()));
        let start = if from > 0 { "… " } else { "" };
        let end = if to < words.len() { " …" } else { "" };
        format!("{start}{}{end}", words[from..to].join(" "))
    };
    let whole = |text: &str, words: &[&str]| if text.is_empty() { String::new() } else { cut(words) };
    (whole(old, &before), whole(new, &now))
}

/// The first words of a text, as a name for it.
fn first_words(text: &str) -> String {
    let words: Vec<&str> = text.split_whitespace().collect();
    let more = if words.len() > NAMING { " …" } else { "" };
    format!("{}{more}", words[..words.len().min(NAMING)].join(" "))
}

/// What a block, an entry or a row is called by.
const NAMES: [&str; 6] = ["title", "what", "number", "pin", "id", "at"];

/// Where a cell is, in words of the page: block, row, column; where nothing there has a name, by
/// its own first words.
fn place(data: &Value, pointer: &str, printed: &str) -> String {
    let mut words: Vec<String> = Vec::new();
    let mut add = |text: Option<&str>| {
        let text = text.unwrap_or_default().trim();
        if !text.is_empty() && words.last().is_none_or(|last| last != text) {
            words.push(text.to_owned());
        }
    };
    let (mut here, mut block) = (data, data);
    let mut is_row = false;
    for (depth, step) in pointer.split('/').skip(1).enumerate() {
        match here {
            Value::Object(entries) => {
                block = here;
                let name = NAMES.iter().find(|name| entries.get(**name).is_some_and(Value::is_string));
                // The name itself is no place to stand at.
                if let Some(name) = name.filter(|name| **name != step && depth > 0) {
                    add(entries.get(*name).and_then(Value::as_str));
                }
            }
            // A row of texts: its first one, then the head of the column.
            Value::Array(_) if is_row => {
                add(here.get(0).and_then(Value::as_str));
                let column = step.parse().ok().and_then(|column: usize| block.get("columns")?.get(column));
                for part in ["head", "sub"] {
                    add(column.and_then(|head| head.get(part)).and_then(Value::as_str));
                }
            }
            _ => {}
        }
        is_row = here.is_array();
        let next = match here {
            Value::Array(all) => step.parse().ok().and_then(|at: usize| all.get(at)),
            other => other.get(step),
        };
        let Some(next) = next else { break };
        here = next;
    }
    if words.is_empty() { first_words(printed) } else { words.join(", ") }
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
            "key_figures": [{ "at": "0 °C", "value": "2.740–2.990" }],
            "steps": ["Hold a thermometer beside the sensor."],
        });
        let said = |pointer| {
            place(&data, pointer, data.pointer(pointer).and_then(Value::as_str).unwrap_or_default())
        };
        assert_eq!(said("/strip/rows/0/1"), "Strip, 20, volts, min");
        assert_eq!(said("/given/0/value"), "Pull-up resistor");
        assert_eq!(said("/key_figures/0/value"), "0 °C");
        assert_eq!(said("/steps/0"), "Hold a thermometer beside …");
    }

    #[test]
    fn of_long_texts_what_differs_is_shown_with_what_is_around() {
        let old = "V = 5 V × 1 745 Ω / (1 745 Ω + 4 700 Ω) = 1.354 V, with a meter of 10 MΩ the same.";
        let new = old.replace("4 700", "4 800").replace("1.354", "1.333");
        let (old, new) = shortened(old, &new);
        assert_eq!(
            (old.as_str(), new.as_str()),
            ("… + 4 700 Ω) = 1.354 V, with …", "… + 4 800 Ω) = 1.333 V, with …")
        );
        assert_eq!(shortened("2.7 V", "2.8 V"), ("2.7 V".to_owned(), "2.8 V".to_owned()));
    }
}
