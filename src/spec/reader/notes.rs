//! What a reader is asked for, noted while a set is being described.
//!
//! The schema is made from these notes, so that the code which reads a key is the
//! only one that says what the key may hold.

use std::cell::RefCell;
use std::collections::{BTreeMap, BTreeSet};

use crate::quantity::Phrasing;

/// What a key may hold.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(in crate::spec) enum Shape {
    /// Known, and not read here.
    Any,
    /// A text, and its greatest length.
    Text(usize),
    /// A list of texts; `filled` where it may not be empty.
    Texts { filled: bool },
    /// A text that may carry its source.
    SourcedText,
    /// A quantity that may carry its source.
    Quantity(Phrasing),
    /// A list of quantities.
    Quantities(Phrasing),
    /// A list of pairs of quantities.
    Pairs(Phrasing, Phrasing),
    /// True or false, which may carry its source.
    Flag,
    /// A plain number, which may carry its source.
    Number,
    /// One of these words.
    Word(Vec<&'static str>),
    /// One of these words, which may carry its source.
    SourcedWord(Vec<&'static str>),
    /// A list of these words.
    Words(Vec<&'static str>),
    /// A table.
    Table,
    /// A list of tables; `filled` where it may not be empty.
    Tables { filled: bool },
    /// A table, or a list of them.
    TableOrTables,
    /// A text, or a table that says more.
    TextOrTable,
    /// A list that is read by hand.
    List(&'static Item),
}

/// What stands in a list that is read by hand.
#[derive(Debug, PartialEq, Eq)]
pub(in crate::spec) enum Item {
    /// A plain number.
    Number,
    /// A whole number, not below zero.
    Count,
    /// A text with something in it.
    Text,
    /// A text that matches.
    Pattern(&'static str),
    /// One of these.
    OneOf(&'static [Item]),
    /// A list of just these.
    Row(&'static [Item]),
    /// A list of any length.
    RowOf(&'static Item),
}

/// What was asked of one table.
#[derive(Debug, Clone, Default)]
pub(in crate::spec) struct TableNotes {
    /// The keys in the order in which they were first asked for.
    pub keys: Vec<(&'static str, Shape)>,
    /// Those that have to be there.
    pub required: BTreeSet<&'static str>,
    /// Those of which exactly one has to be there.
    pub one_of: Vec<&'static str>,
    /// What stands under keys that are the user's own.
    pub entries: Option<Shape>,
    /// Whether keys that were not asked for are found.
    pub closed: bool,
    /// Whether something has to stand there.
    pub says_something: bool,
}

impl TableNotes {
    pub(in crate::spec) fn shape(&self, key: &str) -> Option<&Shape> {
        self.keys.iter().find(|(known, _)| *known == key).map(|(_, shape)| shape)
    }

    pub(in crate::spec) fn has(&self, key: &str) -> bool {
        self.shape(key).is_some()
    }
}

/// What was asked of every table, by its name.
#[derive(Debug, Default)]
pub(in crate::spec) struct Notes {
    tables: RefCell<BTreeMap<String, TableNotes>>,
}

impl Notes {
    /// Notes a key; what was asked for first is what it holds.
    pub(super) fn key(&self, table: &str, key: &'static str, shape: Shape) {
        self.table(table, |notes| match notes.keys.iter_mut().find(|(known, _)| *known == key) {
            Some((_, known)) if *known == Shape::Any => *known = shape,
            Some(_) => {}
            None => notes.keys.push((key, shape)),
        });
    }

    pub(super) fn table(&self, table: &str, note: impl FnOnce(&mut TableNotes)) {
        note(self.tables.borrow_mut().entry(table.to_owned()).or_default());
    }

    /// Ends the noting.
    pub(in crate::spec) fn into_tables(self) -> BTreeMap<String, TableNotes> {
        self.tables.into_inner()
    }
}
