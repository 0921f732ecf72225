//! Writes into `register.toml`, and touches nothing in it but what is new.

use chrono::{Datelike, NaiveDate};
use toml_edit::{ArrayOfTables, DocumentMut, Item, Table, TomlError, value};

use crate::spec::REGISTER_FORMAT;

/// What a new register begins with.
const HEAD: &str = "\
# What is issued, and who holds it: a file for version control, like the specs.
# `bayleaf issue`, `bayleaf withdraw` and `bayleaf holders` write here.
";

/// A register's text, open for additions.
#[derive(Debug, Clone)]
pub struct Ledger {
    document: DocumentMut,
    /// What is new, with its kind; put in its place when all is written.
    added: Vec<(&'static str, Table)>,
}

/// What somebody does to a revision of a document, as it is written down.
#[derive(Debug, Clone)]
pub struct NewAct {
    /// The document.
    pub id: String,
    /// The number of the revision, from 1.
    pub revision: u32,
    /// Since when it holds.
    pub date: NaiveDate,
    /// Who does it: initials.
    pub by: String,
    /// Why.
    pub why: String,
    /// The number of the pull list that says what it makes out of date, where anything is.
    pub pull_list: Option<String>,
}

/// A copy in somebody's hands.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Copy {
    /// The document.
    pub id: String,
    /// Which revision it is.
    pub revision: u32,
    /// Whose it is.
    pub holder: String,
    /// Where it hangs or lies.
    pub place: Option<String>,
}

impl Ledger {
    /// A register with nothing in it.
    #[must_use]
    pub fn empty() -> Self {
        let mut document = DocumentMut::new();
        document.insert("format", value(i64::from(REGISTER_FORMAT)));
        document.decor_mut().set_prefix(HEAD);
        Self { document, added: Vec::new() }
    }

    /// Opens a register's text.
    ///
    /// # Errors
    /// When it is not TOML.
    pub fn of(text: &str) -> Result<Self, TomlError> {
        text.parse().map(|document| Self { document, added: Vec::new() })
    }

    /// The whole text, with every new entry in its place: by id, then by revision, behind those
    /// like it. What was there keeps its order, even where that is another.
    #[must_use]
    pub fn text(&self) -> String {
        let mut document = self.document.clone();
        for kind in KINDS {
            let mut added: Vec<&Table> =
                self.added.iter().filter(|(of, _)| *of == kind).map(|(_, table)| table).collect();
            if added.is_empty() {
                continue;
            }
            added.sort_by_key(|table| key(table));
            let list = document.entry(kind).or_insert_with(|| Item::ArrayOfTables(ArrayOfTables::new()));
            let Some(list) = list.as_array_of_tables_mut() else { continue };
            let mut added = added.into_iter().peekable();
            let mut merged = ArrayOfTables::new();
            for known in list.iter() {
                let of_known = key(known);
                while let Some(new) = added.next_if(|new| key(new) < of_known) {
                    merged.push(new.clone());
                }
                merged.push(known.clone());
            }
            added.for_each(|new| merged.push(new.clone()));
            *list = merged;
        }
        document.to_string()
    }

    /// Adds a revision; `more` are further keys with their texts: fingerprints, edition, vehicle.
    pub fn issue(&mut self, act: &NewAct, more: &[(&str, String)]) {
        let mut table = act.entry();
        for (key, text) in more {
            table.insert(key, value(text));
        }
        self.added.push(("issue", table));
    }

    /// Adds the withdrawal of a revision.
    pub fn withdraw(&mut self, act: &NewAct) {
        self.added.push(("withdrawal", act.entry()));
    }

    /// Adds a copy.
    pub fn hold(&mut self, copy: &Copy, since: NaiveDate) {
        let mut table = entry(&copy.id, copy.revision);
        table.insert("holder", value(&copy.holder));
        if let Some(place) = &copy.place {
            table.insert("place", value(place));
        }
        table.insert("since", day(since));
        self.added.push(("copy", table));
    }

    /// Writes down that a copy was taken down; whether there was one.
    pub fn end(&mut self, copy: &Copy, until: NaiveDate) -> bool {
        let text = |table: &Table, key: &str| table.get(key).and_then(Item::as_str).map(str::to_owned);
        let copies = self.document.get_mut("copy").and_then(Item::as_array_of_tables_mut);
        let known = copies.into_iter().flat_map(ArrayOfTables::iter_mut);
        let added = self.added.iter_mut().filter(|(kind, _)| *kind == "copy").map(|(_, table)| table);
        let mut open = known.chain(added).filter(|table| {
            table.get("until").is_none()
                && text(table, "id").as_ref() == Some(&copy.id)
                && revision_of(table) == i64::from(copy.revision)
                && text(table, "holder").as_ref() == Some(&copy.holder)
                && text(table, "place") == copy.place
        });
        let found = open.next();
        let there = found.is_some();
        if let Some(table) = found {
            table.insert("until", day(until));
        }
        there
    }
}

/// The kinds of entries, in the order of a new file.
const KINDS: [&str; 3] = ["issue", "withdrawal", "copy"];

/// Where an entry stands among those of its kind.
fn key(table: &Table) -> (String, i64) {
    (table.get("id").and_then(Item::as_str).unwrap_or_default().to_owned(), revision_of(table))
}

impl NewAct {
    fn entry(&self) -> Table {
        let mut table = entry(&self.id, self.revision);
        table.insert("date", day(self.date));
        table.insert("by", value(&self.by));
        table.insert("why", value(&self.why));
        if let Some(number) = &self.pull_list {
            table.insert("pull-list", value(number));
        }
        table
    }
}

fn entry(id: &str, revision: u32) -> Table {
    let mut table = Table::new();
    table.decor_mut().set_prefix("\n");
    table.insert("id", value(id));
    table.insert("revision", value(i64::from(revision)));
    table
}

fn revision_of(table: &Table) -> i64 {
    table.get("revision").and_then(Item::as_integer).unwrap_or_default()
}

fn day(date: NaiveDate) -> Item {
    let part = |number: u32| u8::try_from(number).unwrap_or_default();
    let year = u16::try_from(date.year()).unwrap_or_default();
    let date = toml_edit::Date { year, month: part(date.month()), day: part(date.day()) };
    value(toml_edit::Datetime { date: Some(date), time: None, offset: None })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn issue(ledger: &mut Ledger, id: &str, revision: u32) {
        let date = NaiveDate::from_ymd_opt(2026, 11, 28).expect("a day");
        let (by, why) = ("KM".to_owned(), "first".to_owned());
        let act = NewAct { id: id.to_owned(), revision, date, by, why, pull_list: None };
        ledger.issue(&act, &[("content", "WERC-8GMR".to_owned())]);
    }

    #[test]
    fn entries_stand_by_id_and_revision_and_touch_nothing_else() {
        let mut ledger = Ledger::empty();
        ["B", "D", "A"].iter().for_each(|id| issue(&mut ledger, id, 1));
        let kept = ledger.text().replace("why = \"first\"", "why   = 'first' # as I typed it");
        let mut ledger = Ledger::of(&kept).expect("it is valid");
        issue(&mut ledger, "B", 2);
        let text = ledger.text();
        let order: Vec<_> = text.lines().filter(|line| line.starts_with("id")).collect();
        assert_eq!(order, ["id = \"A\"", "id = \"B\"", "id = \"B\"", "id = \"D\""]);
        // Only lines were added, in one place.
        let (old, new): (Vec<_>, Vec<_>) = (kept.lines().collect(), text.lines().collect());
        let same_before = old.iter().zip(&new).take_while(|(a, b)| a == b).count();
        let same_after = old.iter().rev().zip(new.iter().rev()).take_while(|(a, b)| a == b).count();
        assert!(same_before + same_after >= old.len(), "{text}");
        assert_eq!(new.len() - old.len(), 8, "{text}");
    }

    #[test]
    fn a_copy_ends_once() {
        let mut ledger = Ledger::empty();
        let date = NaiveDate::from_ymd_opt(2026, 11, 28).expect("a day");
        let copy = Copy {
            id: "A".to_owned(),
            revision: 1,
            holder: "bay 3".to_owned(),
            place: Some("wall".to_owned()),
        };
        ledger.hold(&copy, date);
        assert!(ledger.end(&copy, date));
        assert!(!ledger.end(&copy, date), "{}", ledger.text());
        assert!(ledger.text().contains("until = 2026-11-28"));
    }
}
