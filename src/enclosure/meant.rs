//! A paper's texts in neutral words, written down by how they differ from those that are printed.
//!
//! Nine of ten texts with a figure or of the user's own read the same in neutral words: written down
//! one by one, they would be half of what a paper carries inside.

use std::collections::{HashMap, HashSet};

use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::document::{self, Cell};

/// Texts in neutral words, beside a page's data.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(untagged)]
pub(super) enum Meant {
    /// One by one, as records of the first form have them.
    Listed(Vec<Cell>),
    /// By how they differ from those of the page.
    Apart {
        /// Pointers of those that are words alone: no figure, and nobody's own.
        words: Vec<String>,
        /// Pointers and texts of those that read otherwise.
        otherwise: Vec<(String, String)>,
    },
}

impl Default for Meant {
    fn default() -> Self {
        Self::Listed(Vec::new())
    }
}

impl Meant {
    /// Tells the texts of a page apart from its content.
    pub(super) fn of(cells: &[Cell], data: &Value) -> Self {
        let printed = document::texts(data);
        let meant: HashSet<&str> = cells.iter().map(|cell| cell.pointer.as_str()).collect();
        let texts: HashMap<&str, &str> =
            printed.iter().map(|cell| (cell.pointer.as_str(), cell.text.as_str())).collect();
        let otherwise = cells.iter().filter(|cell| texts.get(&*cell.pointer) != Some(&&*cell.text));
        Self::Apart {
            otherwise: otherwise.map(|cell| (cell.pointer.clone(), cell.text.clone())).collect(),
            words: (printed.iter().map(|cell| &cell.pointer))
                .filter(|pointer| !meant.contains(pointer.as_str()))
                .cloned()
                .collect(),
        }
    }

    /// The texts one by one, in the order of the page; what the page has no place for comes last.
    pub(super) fn cells(&self, data: &Value) -> Vec<Cell> {
        let (words, otherwise) = match self {
            Self::Listed(cells) => return cells.clone(),
            Self::Apart { words, otherwise } => (words, otherwise),
        };
        let words: HashSet<&str> = words.iter().map(String::as_str).collect();
        let mut other: HashMap<&str, &str> =
            otherwise.iter().map(|(pointer, text)| (pointer.as_str(), text.as_str())).collect();
        let mut cells = document::texts(data);
        cells.retain(|cell| !words.contains(cell.pointer.as_str()));
        for cell in &mut cells {
            if let Some(text) = other.remove(cell.pointer.as_str()) {
                text.clone_into(&mut cell.text);
            }
        }
        let left = otherwise.iter().filter(|(pointer, _)| other.contains_key(pointer.as_str()));
        cells.extend(left.map(|(pointer, text)| Cell { pointer: pointer.clone(), text: text.clone() }));
        cells
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[test]
    fn what_is_told_apart_comes_back_as_it_was() {
        let data = json!({
            "furniture": { "id": "A", "title": "Sensor" },
            "rows": [["−20", "4,71"], ["0", ""]],
            "note": "Maß bei 20 °C",
        });
        let cell = |(pointer, text): (&str, &str)| Cell { pointer: pointer.into(), text: text.into() };
        let cells = [
            ("/furniture/title", "Sensor"),
            ("/note", "doc-note[20; °C]"),
            ("/rows/0/0", "−20"),
            ("/rows/0/1", "4.71"),
            ("/gone", "5"),
        ]
        .map(cell);
        let texts = Meant::of(&cells, &data);
        let Meant::Apart { words, otherwise } = &texts else { panic!("{texts:?}") };
        assert_eq!((words.as_slice(), otherwise.len()), (&["/rows/1/0".to_owned()][..], 3));
        let written = serde_json::to_string(&texts).expect("plain data");
        let read: Meant = serde_json::from_str(&written).expect("as it was written");
        assert_eq!(read.cells(&data), cells);
    }
}
