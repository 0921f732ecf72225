//! What a paper says, so that two revisions of it can be told apart cell by cell.

use std::collections::{HashMap, HashSet};

use serde_json::Value;

use crate::document::Cell;

/// What a paper said: its texts with a figure or of the user's own, in their order.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Kept(Vec<KeptCell>);

/// A cell, and the one of another paper that is called the same.
pub(super) type Pair<'a> = (&'a KeptCell, Option<&'a KeptCell>);

/// One text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct KeptCell {
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
            let said = at(data, &cell.pointer).and_then(Value::as_str);
            let printed = said.unwrap_or(&cell.text).to_owned();
            KeptCell { at: cell.pointer.clone(), meant: cell.text.clone(), printed }
        };
        Self(cells.iter().map(cell).collect())
    }

    /// Each cell beside the one that is called the same in another paper; then the cells of the other
    /// that none here is called like.
    pub(super) fn beside<'a>(&'a self, other: &'a Self) -> (Vec<Pair<'a>>, Vec<&'a KeptCell>) {
        if self.is_shaped_like(other) {
            return (self.0.iter().zip(other.0.iter().map(Some)).collect(), Vec::new());
        }
        let (own, others) = (self.named(), other.named());
        let by_name: HashMap<&str, &KeptCell> =
            others.iter().map(|(name, cell)| (name.as_str(), *cell)).collect();
        let known: HashSet<&str> = own.iter().map(|(name, _)| name.as_str()).collect();
        let gone = others.iter().filter(|(name, _)| !known.contains(name.as_str()));
        let gone = gone.map(|(_, cell)| *cell).collect();
        (own.iter().map(|(name, cell)| (*cell, by_name.get(name.as_str()).copied())).collect(), gone)
    }

    /// Whether all cells stand at the same places, and rows are called the same.
    fn is_shaped_like(&self, other: &Self) -> bool {
        let is_head = |at: &str| at.rsplit('/').next().is_some_and(|step| HEADS.contains(&step));
        let is_same = |(one, other): (&KeptCell, &KeptCell)| {
            one.at == other.at && (one.meant == other.meant || !is_head(&one.at))
        };
        self.0.len() == other.0.len() && self.0.iter().zip(&other.0).all(is_same)
    }

    /// The cells by names that stay when a row is put in or taken out: a row is called by its
    /// first text, not by its number.
    fn named(&self) -> Vec<(String, &KeptCell)> {
        let mut heads = Heads::of(&self.0);
        let mut met: HashMap<String, usize> = HashMap::new();
        let name = |cell| {
            let mut name = heads.name_of(cell);
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

/// What stands at a pointer. Keys are names of fields, in which nothing is escaped.
fn at<'a>(data: &'a Value, pointer: &str) -> Option<&'a Value> {
    pointer.split('/').skip(1).try_fold(data, |here, step| match here {
        Value::Array(all) => all.get(step.parse::<usize>().ok()?),
        other => other.get(step),
    })
}

/// What a row may be called by, below it.
const HEADS: [&str; 6] = ["0", "what", "id", "number", "pin", "title"];

/// What the rows of a paper are called by.
struct Heads<'a> {
    texts: HashMap<&'a str, &'a str>,
    /// By the pointers of rows: all the cells of one ask for it.
    known: HashMap<&'a str, Option<&'a str>>,
}

impl<'a> Heads<'a> {
    fn of(cells: &'a [KeptCell]) -> Self {
        let texts = cells.iter().map(|cell| (cell.at.as_str(), cell.meant.as_str())).collect();
        Self { texts, known: HashMap::new() }
    }

    fn name_of(&mut self, cell: &'a KeptCell) -> String {
        let (mut end, mut name) = (0, String::with_capacity(cell.at.len()));
        for step in cell.at.split('/').skip(1) {
            end += 1 + step.len();
            let is_row = end < cell.at.len() && step.bytes().all(|byte| byte.is_ascii_digit());
            match is_row.then(|| self.head(&cell.at[..end])).flatten() {
                Some(head) => name.extend(["/[", head, "]"]),
                None => name.extend(["/", step]),
            }
        }
        name
    }

    fn head(&mut self, row: &'a str) -> Option<&'a str> {
        let texts = &self.texts;
        let find = || HEADS.iter().find_map(|head| texts.get(format!("{row}/{head}").as_str()).copied());
        *self.known.entry(row).or_insert_with(find)
    }
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

    #[test]
    fn papers_of_one_shape_are_compared_place_by_place_and_others_by_name() {
        let before = kept(&[("/rows/0/0", "20"), ("/rows/0/1", "2.5"), ("/rows/1/0", "30"), ("/note", "n")]);
        let pairs = |now: &Kept| {
            let (pairs, gone) = now.beside(&before);
            let shown = |cell: &KeptCell| format!("{} {}", cell.at, cell.meant);
            let beside = |(cell, other): &Pair<'_>| (cell.meant.clone(), other.map(shown));
            (pairs.iter().map(beside).collect::<Vec<_>>(), gone.into_iter().map(shown).collect::<Vec<_>>())
        };
        let same = kept(&[("/rows/0/0", "20"), ("/rows/0/1", "2.6"), ("/rows/1/0", "30"), ("/note", "n")]);
        assert!(same.is_shaped_like(&before));
        assert_eq!(pairs(&same).0[1], ("2.6".to_owned(), Some("/rows/0/1 2.5".to_owned())));
        // As many cells at the same places, and the first row is another.
        let other = kept(&[("/rows/0/0", "30"), ("/rows/0/1", "2.6"), ("/rows/1/0", "40"), ("/note", "n")]);
        let (beside, gone) = pairs(&other);
        assert_eq!(beside[0], ("30".to_owned(), Some("/rows/1/0 30".to_owned())));
        assert_eq!(beside[1], ("2.6".to_owned(), None));
        assert_eq!(gone, ["/rows/0/0 20", "/rows/0/1 2.5"]);
    }
}
