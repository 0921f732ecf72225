//! Which values of the specs changed, and putting one of them back.
//!
//! An issued paper carries the specs that it was made from. What caused a moved cell is then
//! found by trying: with the old value in today's specs, does the cell read as it did? So the
//! answer holds for every value, also where a figure goes a long way.

use std::collections::{BTreeMap, BTreeSet};

use toml_edit::{DocumentMut, Item, TableLike, Value};

use crate::document::Because;
use crate::spec::{OF_CHECKLISTS, Texts};

/// Longer values are cut where they are shown.
const SHOWN: usize = 60;

/// A value that differs between two states of a set.
#[derive(Debug, Clone)]
pub(super) struct Changed {
    /// Its key, what it was, what it is: each as it is shown.
    pub(super) because: Because,
    path: Vec<Step>,
    /// What it was; nothing where there was none.
    old: Option<Item>,
}

/// A step on the way to a value.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Step {
    Key(String),
    Index(usize),
}

impl Changed {
    /// Tells one change from another: the same key with another old value is another.
    #[must_use]
    pub(super) fn name(&self) -> (String, String) {
        (self.because.key.clone(), self.old.as_ref().map(written).unwrap_or_default())
    }
}

/// The values that differ between two states of a set, by their keys.
pub(super) fn changed(before: &Texts, now: &Texts) -> Vec<Changed> {
    // A file that both states have takes part in no change.
    let (before, now) = (parsed_unlike(before, now), parsed_unlike(now, before));
    let (old, new) = (things(&before), things(&now));
    let mut names: BTreeSet<&Vec<Step>> = old.keys().chain(new.keys()).collect();
    // Earlier papers carry checklists although they are not made from them.
    let is_of_checklists = |name: &[Step]| match name.first() {
        Some(Step::Key(kind)) => OF_CHECKLISTS.contains(&kind.as_str()),
        _ => false,
    };
    if !new.keys().any(|name| is_of_checklists(name)) {
        names.retain(|name| !is_of_checklists(name));
    }
    let mut found = Vec::new();
    for name in names {
        differing(old.get(name).copied(), new.get(name).copied(), &mut name.clone(), &mut found);
    }
    found
}

/// The texts with one value as it was; nothing where it has no place in them.
pub(super) fn put_back(now: &Texts, value: &Changed) -> Option<Texts> {
    let (last, above) = value.path.split_last()?;
    for (path, mut document) in parsed(now.iter()) {
        let mut parent = Some(document.as_item_mut());
        for step in above {
            parent = parent.and_then(|parent| match step {
                Step::Key(key) => parent.get_mut(key.as_str()),
                Step::Index(index) => parent.get_mut(*index),
            });
        }
        let Some(parent) = parent else { continue };
        if put(parent, last, value.old.as_ref()) {
            let mut texts = now.clone();
            texts.insert(path, document.to_string());
            return Some(texts);
        }
    }
    None
}

/// Sets or removes what a table or list holds under a step; whether it could.
fn put(parent: &mut Item, step: &Step, old: Option<&Item>) -> bool {
    match (step, old) {
        (Step::Key(key), Some(old)) => {
            let table = parent.as_table_like_mut();
            table.map(|table| table.insert(key, old.clone())).is_some()
        }
        (Step::Key(key), None) => {
            let table = parent.as_table_like_mut();
            table.is_some_and(|table| table.remove(key).is_some())
        }
        (Step::Index(index), Some(old)) => {
            let there = parent.get_mut(*index);
            there.map(|there| *there = old.clone()).is_some()
        }
        (Step::Index(_), None) => false,
    }
}

/// Those of the texts that another state has not.
fn parsed_unlike(texts: &Texts, other: &Texts) -> Vec<(String, DocumentMut)> {
    parsed(texts.iter().filter(|(path, text)| other.get(*path) != Some(*text))).collect()
}

fn parsed<'a>(
    texts: impl Iterator<Item = (&'a String, &'a String)>,
) -> impl Iterator<Item = (String, DocumentMut)> {
    texts.filter_map(|(path, text)| Some((path.clone(), text.parse().ok()?)))
}

/// The things of a set by kind and id, whichever file they stand in.
fn things(files: &[(String, DocumentMut)]) -> BTreeMap<Vec<Step>, &Item> {
    let mut things = BTreeMap::new();
    for (kind, all) in files.iter().flat_map(|(_, document)| document.iter()) {
        let kind = || Step::Key(kind.to_owned());
        match all.as_table_like() {
            Some(table) if table.iter().all(|(_, item)| item.is_table_like()) => {
                for (id, item) in table.iter() {
                    things.insert(vec![kind(), Step::Key(id.to_owned())], item);
                }
            }
            _ => drop(things.insert(vec![kind()], all)),
        }
    }
    things
}

fn differing(old: Option<&Item>, new: Option<&Item>, path: &mut Vec<Step>, found: &mut Vec<Changed>) {
    let tables = (old.and_then(Item::as_table_like), new.and_then(Item::as_table_like));
    if let (Some(before), Some(now)) = tables {
        let keys: BTreeSet<&str> = keys(before).chain(keys(now)).collect();
        for key in keys {
            path.push(Step::Key(key.to_owned()));
            differing(before.get(key), now.get(key), path, found);
            path.pop();
        }
        return;
    }
    if let (Some(before), Some(now)) = (old, new)
        && length(before).is_some_and(|length_before| Some(length_before) == length(now))
    {
        for index in 0..length(before).unwrap_or_default() {
            path.push(Step::Index(index));
            differing(before.get(index), now.get(index), path, found);
            path.pop();
        }
        return;
    }
    let texts = [old, new].map(|item| item.map(written).unwrap_or_default());
    if texts[0] != texts[1] {
        let [old_text, new_text] = texts.map(|text| plain(&text));
        let because = Because { key: shown(path), old: old_text, new: new_text };
        found.push(Changed { because, path: path.clone(), old: old.cloned() });
    }
}

fn keys(table: &dyn TableLike) -> impl Iterator<Item = &str> {
    table.iter().map(|(key, _)| key)
}

fn length(item: &Item) -> Option<usize> {
    let of_tables = item.as_array_of_tables().map(toml_edit::ArrayOfTables::len);
    of_tables.or_else(|| item.as_array().map(toml_edit::Array::len))
}

/// A value as it is written, without what stands around it.
fn written(item: &Item) -> String {
    match item {
        Item::Value(Value::String(text)) => text.value().clone(),
        other => other.to_string().trim().to_owned(),
    }
}

/// A path as a spec key; entries of a list are counted from 1.
fn shown(path: &[Step]) -> String {
    let mut shown = String::new();
    for step in path {
        match step {
            Step::Key(key) if shown.is_empty() => shown.push_str(key),
            Step::Key(key) => shown += &format!(".{key}"),
            Step::Index(index) => shown += &format!("[{}]", index + 1),
        }
    }
    shown
}

/// A text of the specs short enough for a line.
fn plain(written: &str) -> String {
    let text = written.split_whitespace().collect::<Vec<_>>().join(" ");
    let cut: String = text.chars().take(SHOWN).collect();
    if cut.len() < text.len() { format!("{cut}…") } else { text }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn one(text: &str) -> Texts {
        Texts::from([("a.toml".to_owned(), text.to_owned())])
    }

    fn told(changed: &[Changed]) -> Vec<(&str, &str, &str)> {
        changed
            .iter()
            .map(|one| (one.because.key.as_str(), one.because.old.as_str(), one.because.new.as_str()))
            .collect()
    }

    #[test]
    fn changed_values_are_named_by_key_and_can_be_put_back_alone() {
        let before = one("[sensor.a]\nr = \"4.7 kΩ\" # typed\npoints = [[0, 9], [5, 8]]\n");
        let now = one("[sensor.a]\nr = \"4.8 kΩ\" # typed\npoints = [[0, 9], [5, 7]]\n");
        let changed = changed(&before, &now);
        assert_eq!(told(&changed), [("sensor.a.points[2][2]", "8", "7"), ("sensor.a.r", "4.7 kΩ", "4.8 kΩ")]);
        let back = put_back(&now, &changed[1]).expect("it has a place");
        assert_eq!(back["a.toml"], now["a.toml"].replace("4.8", "4.7"));
        let back = put_back(&now, &changed[0]).expect("it has a place");
        assert!(back["a.toml"].contains("[5, 8]"), "{back:?}");
    }

    #[test]
    fn what_was_added_is_taken_out_and_what_was_removed_is_put_in() {
        let (with, without) =
            (one("[sensor.a]\nr = \"1 kΩ\"\nline = \"2 Ω\"\n"), one("[sensor.a]\nr = \"1 kΩ\"\n"));
        for (before, now) in [(&with, &without), (&without, &with)] {
            let changed = changed(before, now);
            assert_eq!(changed.len(), 1, "{changed:?}");
            assert_eq!(put_back(now, &changed[0]).as_ref(), Some(before));
        }
    }

    #[test]
    fn checklists_that_only_the_earlier_paper_carries_did_not_change() {
        let before = one("[sensor.a]\nr = 1\n[checklist.L]\ntitle = \"no cold air\"\n");
        assert_eq!(told(&changed(&before, &one("[sensor.a]\nr = 2\n"))), [("sensor.a.r", "1", "2")]);
        let other = one("[sensor.a]\nr = 1\n[checklist.M]\ntitle = \"no cold air\"\n");
        assert_eq!(changed(&before, &other).len(), 2);
    }

    #[test]
    fn a_thing_that_moved_to_another_file_did_not_change() {
        let before = one("[sensor.a]\nr = 1\n[sensor.b]\nr = 2\n");
        let mut now = one("[sensor.a]\nr = 1\n");
        now.insert("b.toml".to_owned(), "[sensor.b]\nr = 2\n".to_owned());
        assert!(changed(&before, &now).is_empty());
    }
}
