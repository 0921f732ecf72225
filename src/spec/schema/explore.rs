//! Finds out which keys each kind of table has, by having small specs read.
//!
//! The reader is run over a spec in which every table is there and empty, then once
//! for every value that a key may have, all else left as it was. What it asks for
//! each time, and what it then demands or no longer knows, is the schema.

use std::collections::{BTreeMap, BTreeSet};

use toml::{Table, Value};

use super::super::reader::{Item, Notes, Shape, TableNotes};
use super::super::set::{Set, has_ids};
use super::table::Known;
use crate::diag::{Findings, Sources};

/// The id under which a thing is read.
pub(super) const ID: &str = "ID";
/// The key under which an entry with a key of the user's own is read.
pub(super) const KEY: &str = "KEY";

/// What was asked of every table of a spec, by the table's name.
pub(super) type Asked = BTreeMap<String, TableNotes>;

/// Everything found out about one kind of table.
pub(super) struct Explored {
    /// Its own name: `sensor.ID`.
    pub root: String,
    /// What is asked where every table is there and empty.
    pub base: Asked,
    /// What is asked where one more thing stands there.
    pub trials: Vec<Trial>,
    /// The tables that are entries of a list.
    pub listed: BTreeSet<String>,
    /// What all of it together says about each table.
    pub known: BTreeMap<String, Known>,
}

/// One spec with one more thing in it.
pub(super) struct Trial {
    /// The table that has it.
    pub table: String,
    /// Its key.
    pub key: &'static str,
    /// What stands there.
    pub what: What,
    /// What is asked then.
    pub asked: Asked,
}

/// What stands at the key of a trial.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum What {
    /// One of the key's words.
    Word(&'static str),
    /// Anything that the key may hold.
    Something,
    /// Two tables where one may stand.
    Several,
}

#[derive(Clone)]
enum Step {
    Key(String),
    /// The first of a list.
    First,
}

/// A spec, and where each of its tables is.
#[derive(Clone)]
struct Spec {
    root: Table,
    tables: BTreeMap<String, Vec<Step>>,
    listed: BTreeSet<String>,
}

impl Explored {
    /// Explores `[kind.ID]`, or `[kind]` where there is one of it.
    pub(super) fn of(kind: &str) -> Self {
        let root = if has_ids(kind) { format!("{kind}.{ID}") } else { kind.to_owned() };
        let mut spec = Spec::new(&root);
        let base = spec.grow();
        let mut trials = Vec::new();
        let mut listed = spec.listed.clone();
        let leaves: Vec<(String, &'static str, Shape)> = (base.iter())
            .flat_map(|(table, notes)| notes.keys.iter().map(move |(key, shape)| (table, *key, shape)))
            .filter(|(_, key, _)| *key != "source")
            .map(|(table, key, shape)| (table.clone(), key, shape.clone()))
            .collect();
        for (table, key, shape) in leaves {
            for (what, value) in values(&shape) {
                let mut tried = spec.clone();
                tried.put(&table, key, value);
                let asked = tried.grow();
                listed.append(&mut tried.listed);
                trials.push(Trial { table: table.clone(), key, what, asked });
            }
        }
        let mut explored = Self { root, base, trials, listed, known: BTreeMap::new() };
        explored.known = explored.sum_up();
        explored
    }
}

impl Spec {
    fn new(root: &str) -> Self {
        let mut spec = Self { root: Table::new(), tables: BTreeMap::new(), listed: BTreeSet::new() };
        let path: Vec<Step> = root.split('.').map(|part| Step::Key(part.to_owned())).collect();
        spec.tables.insert(root.to_owned(), path.clone());
        let inner = path.iter().rev().fold(Value::Table(Table::new()), |inner, step| {
            let Step::Key(key) = step else { return inner };
            Value::Table(Table::from_iter([(key.clone(), inner)]))
        });
        if let Value::Table(table) = inner {
            spec.root = table;
        }
        spec
    }

    /// Adds every table that is asked for, until none is missing.
    fn grow(&mut self) -> Asked {
        loop {
            let asked = self.read();
            let mut grown = false;
            for (name, notes) in &asked {
                if !self.tables.contains_key(name) {
                    continue;
                }
                let keys = notes.keys.iter().map(|(key, shape)| (*key, shape));
                for (key, shape) in keys.chain(notes.entries.iter().map(|shape| (KEY, shape))) {
                    grown |= self.add(name, key, shape);
                }
            }
            if !grown {
                return asked;
            }
        }
    }

    /// Adds an empty table where one may stand; false where it cannot, or is there.
    fn add(&mut self, table: &str, key: &str, shape: &Shape) -> bool {
        let is_list = match shape {
            Shape::Table | Shape::TableOrTables | Shape::TextOrTable => false,
            Shape::Tables { .. } => true,
            // An entry of which nothing is known yet is read as a table.
            Shape::Any if key == KEY => false,
            _ => return false,
        };
        let name = format!("{table}.{key}");
        if self.tables.contains_key(&name) || self.holds(table, key) {
            return false;
        }
        let empty = Value::Table(Table::new());
        self.put(table, key, if is_list { Value::Array(vec![empty]) } else { empty });
        let mut path = self.tables.get(table).cloned().unwrap_or_default();
        path.push(Step::Key(key.to_owned()));
        if is_list {
            path.push(Step::First);
            self.listed.insert(name.clone());
        }
        self.tables.insert(name, path);
        true
    }

    fn holds(&mut self, table: &str, key: &str) -> bool {
        self.table(table).is_none_or(|table| table.contains_key(key))
    }

    fn put(&mut self, table: &str, key: &str, value: Value) {
        if let Some(table) = self.table(table) {
            table.insert(key.to_owned(), value);
        }
    }

    fn table(&mut self, name: &str) -> Option<&mut Table> {
        let path = self.tables.get(name)?.clone();
        let mut table = &mut self.root;
        let mut steps = path.iter().peekable();
        while let Some(Step::Key(key)) = steps.next() {
            let mut value = table.get_mut(key)?;
            if matches!(steps.peek(), Some(Step::First)) {
                steps.next();
                value = value.as_array_mut()?.first_mut()?;
            }
            table = value.as_table_mut()?;
        }
        Some(table)
    }

    /// Has it read, and hears what is asked for.
    fn read(&self) -> Asked {
        let text = self.root.to_string();
        let mut sources = Sources::default();
        sources.add("described.toml".to_owned(), text);
        let notes = Notes::default();
        Set::read_noting(&sources, &Findings::default(), Some(&notes));
        notes.into_tables()
    }
}

/// What to try at a key.
fn values(shape: &Shape) -> Vec<(What, Value)> {
    let text = |text: &str| Value::String(text.to_owned());
    let something = |value| vec![(What::Something, value)];
    match shape {
        // Every table is there already; of a key that is not read here nothing can be tried.
        Shape::Any | Shape::Table | Shape::Tables { .. } | Shape::TextOrTable => Vec::new(),
        Shape::Text(_) | Shape::SourcedText => something(text("x")),
        Shape::Texts { .. } => something(Value::Array(vec![text("x")])),
        Shape::Quantity(phrasing) => something(text(&phrasing.sample())),
        Shape::Quantities(phrasing) => something(Value::Array(vec![text(&phrasing.sample())])),
        Shape::Pairs(first, second) => {
            something(Value::Array(vec![Value::Array(vec![text(&first.sample()), text(&second.sample())])]))
        }
        Shape::Flag => something(Value::Boolean(true)),
        Shape::Number => something(Value::Integer(1)),
        Shape::Word(words) | Shape::SourcedWord(words) => {
            words.iter().map(|word| (What::Word(word), text(word))).collect()
        }
        Shape::Words(words) => something(Value::Array(words.iter().map(|word| text(word)).collect())),
        Shape::List(item) => something(Value::Array(vec![value_of(item)])),
        Shape::TableOrTables => {
            let empty = Value::Table(Table::new());
            vec![(What::Several, Value::Array(vec![empty.clone(), empty]))]
        }
    }
}

fn value_of(item: &Item) -> Value {
    match item {
        Item::Number | Item::Count => Value::Integer(1),
        Item::Text | Item::Pattern(_) => Value::String("x".to_owned()),
        Item::OneOf(items) => items.first().map_or(Value::Integer(1), value_of),
        Item::Row(items) => Value::Array(items.iter().map(value_of).collect()),
        Item::RowOf(item) => Value::Array(vec![value_of(item)]),
    }
}
