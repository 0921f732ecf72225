//! Lists of quantities: `["25 %", "50 %"]`, and of pairs: `[["0 A", "100 %"], …]`.

use toml::Spanned;
use toml::de::DeValue;

use super::{At, Reader, Shape, Sourced};
use crate::diag::{Finding, Place};
use crate::quantity::{Misread, Phrasing};
use crate::words::Message;

/// Two quantities that belong together, and where they stand.
#[derive(Debug, Clone)]
pub struct Pair<A, B> {
    /// The first.
    pub first: Sourced<A>,
    /// The second.
    pub second: Sourced<B>,
    /// Where both stand.
    pub place: Place,
}

impl<'a> Reader<'a> {
    /// Tables inside this one whose names are the user's own: `step.relay`, `step.fuse`.
    pub(in crate::spec) fn named_tables(&self, key: &'static str) -> Vec<(At<String>, Reader<'a>)> {
        let Some(table) = self.table(key) else { return Vec::new() };
        table.says_something();
        table.note_entries(Shape::Table);
        let read = |(key, value): (At<String>, &'a Spanned<DeValue<'a>>)| {
            let Some(inner) = value.get_ref().as_table() else {
                table.wrong_type(&key.value, value, "wanted-table");
                return None;
            };
            Some((key.clone(), table.nested(&key.value, inner, key.place)))
        };
        table.entries().filter_map(read).collect()
    }

    /// A text, or a table that says more.
    pub(in crate::spec) fn text_or_table(&self, key: &'static str) -> Option<Result<At<String>, Reader<'a>>> {
        self.note(key, || Shape::TextOrTable);
        let value = self.get(key)?;
        match value.get_ref().as_table() {
            Some(table) => Some(Err(self.nested(key, table, self.file.place(value)))),
            None => self.text_of(key, value, "wanted-text").map(Ok),
        }
    }

    /// A list of quantities; `None` where one of them cannot be read.
    pub(in crate::spec) fn quantities<T>(
        &self,
        key: &'static str,
        read: impl Fn(&str) -> Result<T, Misread>,
    ) -> Option<Vec<Sourced<T>>> {
        self.note(key, || Shape::Quantities(Phrasing::of(|text| read(text).is_ok())));
        let list: At<_> = self.array(key)?;
        self.not_empty(&list, key)?;
        // Every bad entry is reported before the list as a whole is given up.
        let all: Vec<_> = list.value.iter().map(|value| self.quantity_of(key, value, &read)).collect();
        all.into_iter().collect()
    }

    /// A list of pairs of quantities; `None` where one of them cannot be read.
    pub(in crate::spec) fn pairs<A, B>(
        &self,
        key: &'static str,
        first: impl Fn(&str) -> Result<A, Misread>,
        second: impl Fn(&str) -> Result<B, Misread>,
    ) -> Option<Vec<Pair<A, B>>> {
        self.note(key, || {
            let first = Phrasing::of(|text| first(text).is_ok());
            Shape::Pairs(first, Phrasing::of(|text| second(text).is_ok()))
        });
        let list = self.array(key)?;
        let pair = |value: &'a Spanned<DeValue<'a>>| {
            let place = self.file.place(value);
            let Some([one, two]) = value.get_ref().as_array().and_then(|array| array.get(..)) else {
                let message = Message::new("spec-bad-pair").with("key", key);
                self.report(Finding::error(message, place, Message::new("wanted-pair")));
                return None;
            };
            let (one, two) = (self.quantity_of(key, one, &first), self.quantity_of(key, two, &second));
            Some(Pair { first: one?, second: two?, place })
        };
        let all: Vec<_> = list.value.iter().map(pair).collect();
        all.into_iter().collect()
    }
}
