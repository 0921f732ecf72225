//! Values of a table: texts, quantities, flags, numbers, words to choose from, each bare or
//! with its source.

use toml::Spanned;
use toml::de::DeValue;

use super::{At, Reader, Shape, Sourced, misread};
use crate::diag::{Finding, Place, nearest};
use crate::fonts::can_show;
use crate::quantity::{Misread, Phrasing, Size, number};
use crate::words::Message;

impl<'a> Reader<'a> {
    /// Free text, such as a title.
    pub(in crate::spec) fn text(&self, key: &'static str) -> Option<At<String>> {
        self.note(key, || Shape::Text(longest(key)));
        let value = self.get(key)?;
        self.text_of(key, value, "wanted-text")
    }

    /// The text of a value that is read by hand.
    pub(in crate::spec) fn text_of(
        &self,
        key: &str,
        value: &'a Spanned<DeValue<'a>>,
        wanted: &'static str,
    ) -> Option<At<String>> {
        let Some(text) = value.get_ref().as_str() else {
            self.wrong_type(key, value, wanted);
            return None;
        };
        let place = self.file.place(value);
        if let Some(finding) = unprintable(self.file.text, key, text, &place) {
            self.file.findings.report(finding);
            return None;
        }
        let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
        if text.is_empty() {
            let message = Message::new("spec-empty-text").with("key", key);
            let finding = Finding::error(message, place, Message::new(wanted));
            self.file.findings.report(finding.help(Message::new(self.empty_help(key))));
            return None;
        }
        Some(At { value: text, place })
    }

    /// Several texts.
    pub(in crate::spec) fn texts(&self, key: &'static str) -> Option<Vec<At<String>>> {
        self.note(key, || Shape::Texts { filled: true });
        let value = self.get(key)?;
        let Some(array) = value.get_ref().as_array() else {
            self.wrong_type(key, value, "wanted-texts");
            return None;
        };
        self.not_empty(&At { value: array, place: self.file.place(value) }, key)?;
        Some(array.iter().filter_map(|value| self.text_of(key, value, "wanted-text")).collect())
    }

    /// What to do about a text in which nothing stands. Leaving `high_voltage` out is no way to
    /// say that it is not known: then no paper would carry a STOP.
    fn empty_help(&self, key: &str) -> &'static str {
        let is_stop = key == "high_voltage" || self.name.ends_with(".high_voltage");
        if is_stop { "spec-empty-high-voltage-help" } else { "spec-empty-text-help" }
    }

    /// Several texts; `None` where one of them cannot be read.
    pub(in crate::spec) fn all_texts(&self, key: &'static str) -> Option<Vec<At<String>>> {
        self.note(key, || Shape::Texts { filled: false });
        let value = self.get(key)?;
        let Some(items) = value.get_ref().as_array() else {
            self.wrong_type(key, value, "wanted-texts");
            return None;
        };
        let all: Vec<_> = items.iter().map(|value| self.text_of(key, value, "wanted-text")).collect();
        all.into_iter().collect()
    }

    /// Text that is printed with its source.
    pub(in crate::spec) fn sourced_text(&self, key: &'static str) -> Option<Sourced<String>> {
        self.note(key, || Shape::SourcedText);
        let value = self.get(key)?;
        if let Some(inner) = self.with_source(key, value) {
            return inner.ending(|inner| inner.sourced_text("value"));
        }
        let text = self.text_of(key, value, "wanted-text")?;
        let (value, written) = (text.value.clone(), text.value);
        Some(Sourced { value, written, place: text.place, source: self.source.clone() })
    }

    /// A quantity as a string, or as `{ value = "…", source = "…" }`.
    pub(in crate::spec) fn sourced<T>(
        &self,
        key: &'static str,
        read: impl Fn(&str) -> Result<T, Misread>,
    ) -> Option<Sourced<T>> {
        self.note(key, || Shape::Quantity(Phrasing::of(|text| read(text).is_ok())));
        let value = self.get(key)?;
        if let Some(inner) = self.with_source(key, value) {
            return inner.ending(|inner| inner.sourced("value", read));
        }
        self.quantity_of(key, value, read)
    }

    /// A quantity as a string.
    pub(super) fn quantity_of<T>(
        &self,
        key: &str,
        value: &'a Spanned<DeValue<'a>>,
        read: impl Fn(&str) -> Result<T, Misread>,
    ) -> Option<Sourced<T>> {
        let text = self.text_of(key, value, "wanted-value")?;
        match read(&text.value) {
            Ok(value) => {
                Some(Sourced { value, written: text.value, place: text.place, source: self.source.clone() })
            }
            Err(misread) => {
                let inner = misread::inside(self.file.text, &text, &misread.at);
                self.file.findings.report(misread::finding(
                    key,
                    &text.value,
                    &misread,
                    Place { file: self.file.id, span: inner },
                ));
                None
            }
        }
    }

    /// Several quantities, each a string.
    pub(in crate::spec) fn sourced_list<T>(
        &self,
        key: &'static str,
        read: impl Fn(&str) -> Result<T, Misread>,
    ) -> Option<Vec<Sourced<T>>> {
        self.note(key, || Shape::Quantities(Phrasing::of(|text| read(text).is_ok())));
        let items = self.array(key)?;
        self.not_empty(&items, key)?;
        // Every bad item is reported before the list as a whole is given up.
        let all: Vec<Option<Sourced<T>>> =
            items.value.iter().map(|value| self.quantity_of(key, value, &read)).collect();
        all.into_iter().collect()
    }

    /// True or false, bare or as `{ value = true, source = "…" }`.
    pub(in crate::spec) fn flag(&self, key: &'static str) -> Option<Sourced<bool>> {
        self.note(key, || Shape::Flag);
        let value = self.get(key)?;
        if let Some(inner) = self.with_source(key, value) {
            return inner.ending(|inner| inner.flag("value"));
        }
        let Some(flag) = value.get_ref().as_bool() else {
            self.wrong_type(key, value, "wanted-flag");
            return None;
        };
        let place = self.file.place(value);
        Some(Sourced { value: flag, written: flag.to_string(), place, source: self.source.clone() })
    }

    /// A plain number, an integer or a float, bare or as `{ value = 4, source = "…" }`.
    pub(in crate::spec) fn number(&self, key: &'static str) -> Option<Sourced<f64>> {
        self.note(key, || Shape::Number);
        let value = self.get(key)?;
        if let Some(inner) = self.with_source(key, value) {
            return inner.ending(|inner| inner.number("value"));
        }
        let place = self.file.place(value);
        if let Some(number_value) = plain_number(value.get_ref()) {
            let written = self.file.text.get(value.span()).unwrap_or_default().to_owned();
            return Some(Sourced { value: number_value, written, place, source: self.source.clone() });
        }
        let quoted = value.get_ref().as_str().and_then(|text| number(text).ok().map(|_| text.trim()));
        let Some(quoted) = quoted else {
            self.wrong_type(key, value, "wanted-number");
            return None;
        };
        let message = Message::new("spec-quoted-number").with("key", key);
        let finding = Finding::error(message, place, Message::new("wanted-bare-number"));
        let plain = quoted.replace('−', "-");
        self.report(finding.help(Message::new("did-you-mean").with("word", format!("{key} = {plain}"))));
        None
    }

    /// One of a few words.
    pub(in crate::spec) fn choice<T: Copy>(
        &self,
        key: &'static str,
        words: &[(&'static str, T)],
    ) -> Option<At<T>> {
        self.note(key, || Shape::Word(words_of(words)));
        self.one_of(key, self.text(key)?, words)
    }

    /// The size of a page.
    pub(in crate::spec) fn size(&self, key: &'static str) -> Option<At<Size>> {
        self.note(key, || Shape::Word(Size::names().collect()));
        let text = self.text(key)?;
        if let Some(value) = Size::named(&text.value) {
            return Some(At { value, place: text.place });
        }
        let near = nearest(&text.value, Size::names());
        self.report(not_among("spec-unknown-size", key, text, Size::names(), near));
        None
    }

    /// One of a few words that people may know by other names: `like` tells which is meant.
    pub(in crate::spec) fn choice_like<T: Copy>(
        &self,
        key: &'static str,
        words: &[(&'static str, T)],
        like: &dyn Fn(&str) -> Option<&'static str>,
    ) -> Option<At<T>> {
        self.note(key, || Shape::Word(words_of(words)));
        self.one_of_like(key, self.text(key)?, words, like)
    }

    /// One of a few words, printed with its source.
    pub(in crate::spec) fn sourced_choice<T: Copy>(
        &self,
        key: &'static str,
        words: &[(&'static str, T)],
    ) -> Option<Sourced<T>> {
        self.note(key, || Shape::SourcedWord(words_of(words)));
        let text = self.sourced_text(key)?;
        let at = At { value: text.written.clone(), place: text.place.clone() };
        self.one_of(key, at, words).map(|at| text.map(at.value))
    }

    /// Some of a few words.
    pub(in crate::spec) fn choices<T: Copy>(
        &self,
        key: &'static str,
        words: &[(&'static str, T)],
    ) -> Option<Vec<At<T>>> {
        self.note(key, || Shape::Words(words_of(words)));
        self.not_empty(&self.array(key)?, key)?;
        let texts = self.texts(key)?;
        Some(texts.into_iter().filter_map(|text| self.one_of(key, text, words)).collect())
    }

    fn one_of<T: Copy>(
        &self,
        key: &'static str,
        text: At<String>,
        words: &[(&'static str, T)],
    ) -> Option<At<T>> {
        let like = |text: &str| nearest(text, words.iter().map(|(word, _)| *word));
        self.one_of_like(key, text, words, &like)
    }

    fn one_of_like<T: Copy>(
        &self,
        key: &'static str,
        text: At<String>,
        words: &[(&'static str, T)],
        like: &dyn Fn(&str) -> Option<&'static str>,
    ) -> Option<At<T>> {
        if let Some(&(_, value)) = words.iter().find(|(word, _)| *word == text.value) {
            return Some(At { value, place: text.place });
        }
        let near = like(&text.value);
        self.report(not_among("spec-unknown-word", key, text, words.iter().map(|(word, _)| *word), near));
        None
    }

    /// A reader for `{ value = …, source = "…" }`, where that stands here.
    fn with_source(&self, key: &str, value: &'a Spanned<DeValue<'a>>) -> Option<Reader<'a>> {
        let table = value.get_ref().as_table()?;
        let inner = self.nested(key, table, self.file.place(value));
        inner.require(&["value"]);
        Some(inner)
    }

    /// Reads this table to its end.
    fn ending<T>(self, read: impl FnOnce(&Self) -> T) -> T {
        let read = read(&self);
        self.finish();
        read
    }
}

/// The longest texts that a page has room for: a title stands in a band, all
/// else in a block.
const LONGEST_TITLE: usize = 120;
const LONGEST_TEXT: usize = 400;

fn longest(key: &str) -> usize {
    if key == "title" { LONGEST_TITLE } else { LONGEST_TEXT }
}

fn words_of<T>(words: &[(&'static str, T)]) -> Vec<&'static str> {
    words.iter().map(|(word, _)| *word).collect()
}

/// A text that no page could show: too long, or with a character without a glyph.
fn unprintable(file: &str, key: &str, text: &str, place: &Place) -> Option<Finding> {
    let longest = longest(key);
    let length = text.chars().count();
    if length > longest {
        let message = Message::new("spec-long-text").with("key", key).with("length", length);
        let label = Message::new("wanted-shorter").with("longest", longest);
        return Some(Finding::error(message, place.clone(), label));
    }
    let (at, bad) = text.char_indices().find(|(_, c)| !c.is_whitespace() && !can_show(*c))?;
    let whole = At { value: text.to_owned(), place: place.clone() };
    let span = misread::inside(file, &whole, &(at..at + bad.len_utf8()));
    let code = format!("U+{:04X}", u32::from(bad));
    let message = Message::new("spec-no-glyph").with("key", key).with("code", code);
    let finding = Finding::error(message, Place { file: place.file, span }, Message::new("wanted-glyph"));
    Some(finding)
}

/// A finding for a text that is none of a few words.
fn not_among(
    id: &'static str,
    key: &'static str,
    text: At<String>,
    words: impl Iterator<Item = &'static str>,
    near: Option<&'static str>,
) -> Finding {
    let all = words.map(|word| format!("`{word}`")).collect::<Vec<_>>().join(", ");
    let message = Message::new(id).with("key", key).with("found", &text.value);
    let finding = Finding::error(message, text.place, Message::new("wanted-one-of").with("words", all));
    match near {
        Some(near) => finding.help(Message::new("did-you-mean").with("word", near)),
        None => finding,
    }
}

/// A TOML integer or float as a number.
pub(in crate::spec) fn plain_number(value: &DeValue<'_>) -> Option<f64> {
    let text = match value {
        DeValue::Integer(integer) if integer.radix() == 10 => integer.as_str(),
        DeValue::Float(float) => float.as_str(),
        _ => return None,
    };
    text.replace('_', "").parse().ok().filter(|number: &f64| number.is_finite())
}
