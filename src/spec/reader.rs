//! Reads one TOML table key by key and remembers which keys it was asked for.
//!
//! Because every key is asked for by name, the keys nobody asked for are the
//! unknown ones, and the keys asked for are the words to offer instead.

use std::cell::{Cell, RefCell};

use toml::Spanned;
use toml::de::{DeArray, DeTable, DeValue};

use super::value::{At, Sourced};
use crate::diag::{FileId, Finding, Findings, Place, nearest};
use crate::words::Message;

mod lists;
pub(super) mod misread;
mod notes;
mod values;

pub use lists::Pair;
pub(super) use notes::{Item, Notes, Shape, TableNotes};
pub(super) use values::plain_number;

/// A file being read.
#[derive(Clone, Copy)]
pub(super) struct File<'a> {
    pub id: FileId,
    pub text: &'a str,
    pub findings: &'a Findings,
    /// The file is not valid TOML: what is missing in it may only be unread.
    pub broken: bool,
    /// Where to note what is asked for, while a set is described.
    pub notes: Option<&'a Notes>,
}

impl<'a> File<'a> {
    pub(super) fn new(id: FileId, text: &'a str, findings: &'a Findings) -> Self {
        Self { id, text, findings, broken: false, notes: None }
    }

    pub(super) fn place<T>(&self, spanned: &Spanned<T>) -> Place {
        Place { file: self.id, span: spanned.span() }
    }
}

/// One table being read.
pub(super) struct Reader<'a> {
    file: File<'a>,
    table: &'a DeTable<'a>,
    /// The table's name for findings: `sensor.evaporator.circuit`.
    name: String,
    /// Where its name stands.
    pub place: Place,
    /// The source of every value that has none of its own.
    source: Option<String>,
    asked: RefCell<Vec<&'static str>>,
    /// Keys that have to be there and are not.
    missing: RefCell<Vec<&'static str>>,
    /// Keys of which one has to be there.
    one_of: RefCell<Vec<&'static str>>,
    /// Whether any key has to be there.
    has_required: Cell<bool>,
}

impl<'a> Reader<'a> {
    /// Starts to read a table; `inherited` is the source of the table around it.
    pub(super) fn new(
        file: File<'a>,
        table: &'a DeTable<'a>,
        name: String,
        place: Place,
        inherited: Option<String>,
    ) -> Self {
        let mut reader = Self {
            file,
            table,
            name,
            place,
            source: inherited,
            asked: RefCell::default(),
            missing: RefCell::default(),
            one_of: RefCell::default(),
            has_required: Cell::default(),
        };
        if let Some(own) = reader.text("source") {
            reader.source = Some(own.value);
        }
        reader
    }

    /// Notes what a key may hold, where anyone wants to know.
    fn note(&self, key: &'static str, shape: impl FnOnce() -> Shape) {
        if let Some(notes) = self.file.notes {
            notes.key(&self.name, key, shape());
        }
    }

    pub(super) fn get(&self, key: &'static str) -> Option<&'a Spanned<DeValue<'a>>> {
        self.asked.borrow_mut().push(key);
        self.table.get(key)
    }

    fn wrong_type(&self, key: &str, value: &Spanned<DeValue<'_>>, wanted: &'static str) {
        let message =
            Message::new("spec-wrong-type").with("key", key).with("found", value.get_ref().type_str());
        let label = Message::new(wanted);
        self.file.findings.report(Finding::error(message, self.file.place(value), label));
    }

    /// A table inside this one.
    pub(super) fn table(&self, key: &'static str) -> Option<Reader<'a>> {
        self.note(key, || Shape::Table);
        let value = self.get(key)?;
        if let Some(table) = value.get_ref().as_table() {
            return Some(self.nested(key, table, self.key_place(key)));
        }
        self.wrong_type(key, value, "wanted-table");
        None
    }

    /// A list of tables inside this one.
    pub(super) fn tables(&self, key: &'static str) -> Vec<Reader<'a>> {
        self.note(key, || Shape::Tables { filled: false });
        let Some(value) = self.get(key) else { return Vec::new() };
        let Some(array) = value.get_ref().as_array() else {
            self.wrong_type(key, value, "wanted-tables");
            return Vec::new();
        };
        let table_of = |value: &'a Spanned<DeValue<'a>>| {
            let table = value.get_ref().as_table();
            if table.is_none() {
                self.wrong_type(key, value, "wanted-table");
            }
            table.map(|table| self.nested(key, table, self.file.place(value)))
        };
        array.iter().filter_map(table_of).collect()
    }

    /// A list of tables, of which no rule asks whether there are any.
    pub(super) fn some_tables(&self, key: &'static str) -> Vec<Reader<'a>> {
        self.note(key, || Shape::Tables { filled: true });
        let array = self.table.get(key).and_then(|value| Some((value, value.get_ref().as_array()?)));
        if let Some((value, array)) = array {
            let _ = self.not_empty(&At { value: array, place: self.file.place(value) }, key);
        }
        self.tables(key)
    }

    /// A table, or a list of tables.
    pub(super) fn one_or_more(&self, key: &'static str) -> Vec<Reader<'a>> {
        self.note(key, || Shape::TableOrTables);
        let is_list = self.get(key).is_some_and(|value| value.get_ref().as_array().is_some());
        if is_list { self.some_tables(key) } else { self.table(key).into_iter().collect() }
    }

    /// A list of values that are read by hand, with their places.
    pub(super) fn list(&self, key: &'static str, item: &'static Item) -> Option<At<&'a DeArray<'a>>> {
        self.note(key, || Shape::List(item));
        self.array(key)
    }

    /// A list of values of any kind.
    fn array(&self, key: &'static str) -> Option<At<&'a DeArray<'a>>> {
        let value = self.get(key)?;
        if let Some(array) = value.get_ref().as_array() {
            return Some(At { value: array, place: self.file.place(value) });
        }
        self.wrong_type(key, value, "wanted-list");
        None
    }

    /// Reports a list in which nothing stands.
    fn not_empty(&self, list: &At<&'a DeArray<'a>>, key: &'static str) -> Option<()> {
        if !list.value.is_empty() {
            return Some(());
        }
        let message = Message::new("spec-empty-list").with("key", key);
        let finding = Finding::error(message, list.place.clone(), Message::new("wanted-entries"));
        self.report(finding.help(Message::new("spec-empty-text-help")));
        None
    }

    /// Every entry of a table whose keys are the user's own, such as pin numbers.
    pub(super) fn entries(&self) -> impl Iterator<Item = (At<String>, &'a Spanned<DeValue<'a>>)> {
        self.note_entries(Shape::Any);
        (self.table.iter()).filter(|(key, _)| key.get_ref() != "source").map(|(key, value)| {
            let place = Place { file: self.file.id, span: key.span() };
            (At { value: key.get_ref().to_string(), place }, value)
        })
    }

    /// Notes what stands under keys that are the user's own.
    fn note_entries(&self, shape: Shape) {
        if let Some(notes) = self.file.notes {
            notes.table(&self.name, |table| match &table.entries {
                Some(known) if *known != Shape::Any => {}
                _ => table.entries = Some(shape),
            });
        }
    }

    /// A reader for an entry of such a table, or its text if it is only text.
    pub(super) fn entry(
        &self,
        key: &At<String>,
        value: &'a Spanned<DeValue<'a>>,
    ) -> Result<Reader<'a>, Option<At<String>>> {
        self.note_entries(Shape::TextOrTable);
        match value.get_ref().as_table() {
            Some(table) => Ok(self.nested(&key.value, table, key.place.clone())),
            None => Err(self.text_of(&key.value, value, "wanted-text")),
        }
    }

    /// Notes the `keys` that have to be there; [`finish`](Self::finish) reports those that are not.
    pub(super) fn require(&self, keys: &[&'static str]) {
        self.pass_over(keys);
        self.has_required.set(true);
        self.note_table(|table| table.required.extend(keys));
        let missing = keys.iter().filter(|key| !self.table.contains_key(**key));
        self.missing.borrow_mut().extend(missing);
    }

    /// Notes keys of which exactly one has to be there.
    pub(super) fn require_one_of(&self, keys: impl Iterator<Item = &'static str>) {
        self.one_of.borrow_mut().extend(keys);
        self.pass_over(&self.one_of.borrow());
        self.note_table(|table| table.one_of = self.one_of.borrow().clone());
        self.has_required.set(true);
        let one_of = self.one_of.borrow();
        let mut there = one_of.iter().filter(|key| self.table.contains_key(**key));
        let (Some(first), Some(second)) = (there.next(), there.next()) else { return };
        let message = Message::new("spec-two-keys").with("first", first).with("second", second);
        let finding = Finding::error(message, self.key_place(second), Message::new("label-second"));
        self.report(finding.because(self.key_place(first), Message::new("label-first")));
    }

    /// Keys that are known here, and not read because something else is wrong.
    pub(super) fn pass_over(&self, keys: &[&'static str]) {
        keys.iter().for_each(|key| self.note(key, || Shape::Any));
        self.asked.borrow_mut().extend(keys);
    }

    fn note_table(&self, note: impl FnOnce(&mut TableNotes)) {
        if let Some(notes) = self.file.notes {
            notes.table(&self.name, note);
        }
    }

    /// Whether a key is there, readable or not.
    pub(super) fn has(&self, key: &str) -> bool {
        self.table.contains_key(key)
    }

    /// Reports every key that has to be there and is not, and every one that nobody asked for.
    ///
    /// A key that is only misspelt is one finding, about the word that stands there.
    pub(super) fn finish(&self) {
        self.note_table(|table| table.closed = true);
        let asked = self.asked.borrow();
        let strangers: Vec<_> =
            self.table.keys().filter(|key| !asked.iter().any(|known| known == key.get_ref())).collect();
        self.report_missing(|key| {
            strangers.iter().any(|word| nearest(word.get_ref(), asked.iter().copied()) == Some(key))
        });
        for word in strangers {
            let place = Place { file: self.file.id, span: word.span() };
            self.report(unknown("spec-unknown-key", &self.name, word.get_ref(), place, &asked));
        }
        self.says_something();
    }

    /// Gives a table up without the key that tells what its other keys are.
    pub(super) fn give_up(&self, key: &'static str) {
        let near = self.table.keys().find(|word| nearest(word.get_ref(), [key]).is_some());
        match near.filter(|_| !self.table.contains_key(key)) {
            Some(word) => {
                let place = Place { file: self.file.id, span: word.span() };
                self.report(unknown("spec-unknown-key", &self.name, word.get_ref(), place, &[key]));
            }
            None => self.report_missing(|_| false),
        }
    }

    /// Reports a table in which nothing stands, though nothing in particular has to.
    pub(super) fn says_something(&self) {
        if !self.has_required.get() {
            self.note_table(|table| table.says_something = true);
        }
        let empty = self.table.keys().all(|key| key.get_ref() == "source");
        if !empty || self.has_required.get() || self.file.broken {
            return;
        }
        let message = Message::new("spec-empty-table").with("name", &self.name);
        let finding = Finding::error(message, self.place.clone(), Message::new("wanted-keys"));
        self.report(finding.help(Message::new("spec-empty-text-help")));
    }

    fn report_missing(&self, is_misspelt: impl Fn(&str) -> bool) {
        if self.file.broken {
            return;
        }
        let one_of = self.one_of.borrow();
        if !one_of.is_empty() && !one_of.iter().any(|key| self.table.contains_key(*key) || is_misspelt(key)) {
            let words = one_of.iter().map(|key| format!("`{key}`")).collect::<Vec<_>>().join(", ");
            let message = Message::new("spec-missing-one-of").with("name", &self.name);
            let label = Message::new("wanted-one-of").with("words", words);
            self.report(Finding::error(message, self.place.clone(), label));
        }
        for key in self.missing.borrow().iter().filter(|key| !is_misspelt(key)) {
            let message = Message::new("spec-missing-key").with("name", &self.name).with("key", key);
            let label = Message::new("wanted-key").with("key", key);
            self.report(Finding::error(message, self.place.clone(), label));
        }
    }

    /// Reports a finding about this table.
    pub(super) fn report(&self, finding: Finding) {
        self.file.findings.report(finding);
    }

    /// The table's own source, for values that are read by hand.
    pub(super) fn source(&self) -> Option<String> {
        self.source.clone()
    }

    /// The file's text, for values that are read by hand.
    pub(super) fn file(&self) -> File<'a> {
        self.file
    }

    pub(super) fn key_place(&self, key: &str) -> Place {
        let span = self.table.get_key_value(key).map(|(key, _)| key.span());
        span.map_or_else(|| self.place.clone(), |span| Place { file: self.file.id, span })
    }

    fn nested(&self, key: &str, table: &'a DeTable<'a>, place: Place) -> Reader<'a> {
        Reader::new(self.file, table, format!("{}.{key}", self.name), place, self.source.clone())
    }
}

/// A finding for a word nobody knows, with the nearest known one.
pub(super) fn unknown(
    id: &'static str,
    name: &str,
    word: &str,
    place: Place,
    known: &[&'static str],
) -> Finding {
    let message = Message::new(id).with("name", name).with("word", word);
    let mut sorted = known.to_vec();
    sorted.sort_unstable();
    sorted.dedup();
    let all = sorted.iter().map(|word| format!("`{word}`")).collect::<Vec<_>>().join(", ");
    let finding = Finding::error(message, place, Message::new("wanted-one-of").with("words", all));
    match nearest(word, sorted) {
        Some(near) => finding.help(Message::new("did-you-mean").with("word", near)),
        None => finding,
    }
}
