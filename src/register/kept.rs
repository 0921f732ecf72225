//! What a paper says, so that two revisions of it can be told apart cell by cell.

use std::collections::HashMap;

use serde_json::Value;

use crate::document::Cell;

/// What a paper said: its texts with a figure or of the user's own, in their order.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Kept(Vec<KeptCell>);

/// One text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct KeptCell {
    /// JSON pointer into the paper's data.
    pub at: String,
    /// In neutral words.
    pub meant: String,
    /// As printed.
    pub printed: String,
}

impl Kept {
    /// What a paper says, from its content and the data of the page.
    #[must_use]
    pub fn of(cells: &[Cell], data: &Value) -> Self {
        let cell = |cell: &Cell| {
            let said = data.pointer(&cell.pointer).and_then(Value::as_str);
            let printed = said.unwrap_or(&cell.text).to_owned();
            KeptCell { at: cell.pointer.clone(), meant: cell.text.clone(), printed }
        };
        Self(cells.iter().map(cell).collect())
    }

    /// The cells by names that stay when a row is put in or taken out: a row is called by its
    /// first text, not by its number.
    #[must_use]
    pub fn named(&self) -> Vec<(String, &KeptCell)> {
        let texts: HashMap<&str, &str> =
            self.0.iter().map(|cell| (cell.at.as_str(), cell.meant.as_str())).collect();
        let mut met: HashMap<String, usize> = HashMap::new();
        let name = |cell| {
            let mut name = name_of(cell, &texts);
            let count = met.entry(name.clone()).or_default();
            *count += 1;
            if *count > 1 {
                name += &format!("#{count}");
            }
            (name, cell)
        };
        self.0.iter().map(name).collect()
    }
}

/// What a row may be called by, below it.
const HEADS: [&str; 6] = ["0", "what", "id", "number", "pin", "title"];

fn name_of(cell: &KeptCell, texts: &HashMap<&str, &str>) -> String {
    let (mut end, mut name, mut below) = (0, String::with_capacity(cell.at.len()), String::new());
    for step in cell.at.split('/').skip(1) {
        end += 1 + step.len();
        let is_number = step.bytes().all(|byte| byte.is_ascii_digit());
        let mut head = || {
            HEADS.iter().find_map(|head| {
                below.clear();
                below.extend([&cell.at[..end], "/", head]);
                texts.get(below.as_str())
            })
        };
        match is_number.then(&mut head).flatten() {
            Some(head) => name.extend(["/[", head, "]"]),
            None => name.extend(["/", step]),
        }
    }
    name
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kept(cells: &[(&str, &str)]) -> Kept {
        let cell = |(at, meant): &(&str, &str)| Cell { pointer: (*at).into(), text: (*meant).into() };
        Kept::of(&cells.iter().map(cell).collect::<Vec<_>>(), &Value::Null)
    }

    #[test]
    fn a_row_keeps_its_name_when_another_is_put_in_before_it() {
        let before = kept(&[("/strip/rows/0/0", "20"), ("/strip/rows/0/1", "2.5")]);
        let after = kept(&[
            ("/strip/rows/0/0", "10"),
            ("/strip/rows/0/1", "3.0"),
            ("/strip/rows/1/0", "20"),
            ("/strip/rows/1/1", "2.5"),
        ]);
        let names = |kept: &Kept| kept.named().into_iter().map(|(name, _)| name).collect::<Vec<_>>();
        assert_eq!(names(&before), ["/strip/rows/[20]/0", "/strip/rows/[20]/1"]);
        assert_eq!(names(&after)[2..], names(&before)[..]);
    }
}
