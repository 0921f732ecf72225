//! Every fixed word of papers and findings, one table per language.
//!
//! Code names a word by its id; the words themselves stand in `en.ftl` and in the
//! table of each further language. This room knows no sensor and no file, and a test
//! walks the sources to see that no id is missing and none is left over.

mod language;
mod order;

use std::collections::BTreeMap;
use std::fmt;
use std::sync::{Arc, OnceLock};

use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use fluent_syntax::ast::Entry;
use unic_langid::LanguageIdentifier;

use crate::quantity::Notation;
pub use language::Language;
pub use order::Order;

/// A word of the table together with what goes into its gaps.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Message {
    id: &'static str,
    gaps: Vec<(&'static str, Gap)>,
}

/// What fills a gap of a message.
#[derive(Debug, Clone, PartialEq, Eq)]
enum Gap {
    /// Text as it is: the user's own words, a number.
    Text(String),
    /// Another word of the table.
    Word(&'static str),
    /// A count, which decides between singular and plural.
    Count(usize),
}

impl Message {
    /// Names a word.
    #[must_use]
    pub fn new(id: &'static str) -> Self {
        Self { id, gaps: Vec::new() }
    }

    /// Fills a gap with text.
    #[must_use]
    pub fn with(mut self, gap: &'static str, text: impl fmt::Display) -> Self {
        self.gaps.push((gap, Gap::Text(text.to_string())));
        self
    }

    /// Fills a gap with another word of the table.
    #[must_use]
    pub fn with_word(mut self, gap: &'static str, id: &'static str) -> Self {
        self.gaps.push((gap, Gap::Word(id)));
        self
    }

    /// Fills a gap with a count.
    #[must_use]
    pub fn with_count(mut self, gap: &'static str, count: usize) -> Self {
        self.gaps.push((gap, Gap::Count(count)));
        self
    }

    /// The id and, in brackets, what fills the gaps in their order.
    fn neutral(&self) -> String {
        if self.gaps.is_empty() {
            return self.id.to_owned();
        }
        let filled = self.gaps.iter().map(|(_, gap)| match gap {
            Gap::Text(text) => text.clone(),
            Gap::Word(id) => (*id).to_owned(),
            Gap::Count(count) => count.to_string(),
        });
        format!("{}[{}]", self.id, filled.collect::<Vec<_>>().join("; "))
    }

    /// The word's id.
    #[must_use]
    pub fn id(&self) -> &'static str {
        self.id
    }
}

/// A table of words, ready to be asked.
pub struct Words {
    language: Language,
    /// Nothing in neutral words.
    table: Option<Arc<Table>>,
}

/// A language's words.
struct Table {
    bundle: FluentBundle<FluentResource>,
    ids: Vec<String>,
}

/// Each language's, read once.
static TABLES: [OnceLock<Arc<Table>>; Language::ALL.len()] = [const { OnceLock::new() }; Language::ALL.len()];

impl Words {
    /// The English words.
    #[must_use]
    pub fn english() -> Self {
        Self::of(Language::English)
    }

    /// The words of a language.
    #[must_use]
    pub fn of(language: Language) -> Self {
        let table = TABLES[language as usize].get_or_init(|| Arc::new(Table::of(language)));
        Self { language, table: Some(Arc::clone(table)) }
    }

    /// Words of no language: each is its id, with what fills its gaps in brackets.
    ///
    /// What is composed with them says which words were chosen, but not how any language
    /// says them, and so stays the same when a table is improved.
    #[must_use]
    pub fn neutral() -> Self {
        Self { language: Language::English, table: None }
    }

    /// Whether these are the words of no language.
    #[must_use]
    pub fn are_neutral(&self) -> bool {
        self.table.is_none()
    }

    /// The language of these words.
    #[must_use]
    pub fn language(&self) -> Language {
        self.language
    }

    /// How numbers are written among these words; nothing where as in specs.
    #[must_use]
    pub fn notation(&self) -> Option<Notation> {
        let (decimal, grouped_from) = self.language.numbers();
        let notation = || Notation {
            decimal,
            grouped_from,
            to: self.word("doc-quantity-to"),
            digits: self.word("doc-quantity-digits"),
        };
        (self.language != Language::English).then(notation)
    }

    /// The words of a message, its gaps filled.
    #[must_use]
    pub fn say(&self, message: &Message) -> String {
        let Some(table) = &self.table else { return message.neutral() };
        let mut args = FluentArgs::new();
        for (name, gap) in &message.gaps {
            match gap {
                Gap::Text(text) => args.set(*name, text.as_str()),
                Gap::Word(id) => args.set(*name, self.word(id)),
                Gap::Count(count) => args.set(*name, *count),
            }
        }
        formatted(&table.bundle, message.id, &args)
    }

    /// A word without gaps.
    #[must_use]
    pub fn word(&self, id: &str) -> String {
        match &self.table {
            Some(table) => formatted(&table.bundle, id, &FluentArgs::new()),
            None => id.to_owned(),
        }
    }

    /// All ids of the table, in its order.
    #[must_use]
    pub fn ids(&self) -> &[String] {
        self.table.as_ref().map_or(&[], |table| &table.ids)
    }

    /// The words that templates use, as JSON: every id that begins with `paper-`.
    #[must_use]
    pub fn paper_json(&self) -> String {
        let words: BTreeMap<&str, String> = (self.ids().iter())
            .filter(|id| id.starts_with("paper-"))
            .map(|id| (id.as_str(), self.word(id)))
            .collect();
        serde_json::Value::from_iter(words).to_string()
    }
}

impl Table {
    fn of(language: Language) -> Self {
        let resource = FluentResource::try_new(language.table().to_owned());
        let resource = resource.unwrap_or_else(|(resource, _)| resource);
        let ids = resource.entries().filter_map(message_id).map(str::to_owned).collect();
        let plurals: LanguageIdentifier = language.code().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![plurals]);
        // Isolation marks would end up as stray glyphs on paper.
        bundle.set_use_isolating(false);
        bundle.add_resource_overriding(resource);
        Self { bundle, ids }
    }
}

/// A missing id shows as itself in angle brackets; a test sees to it that none is.
fn formatted(bundle: &FluentBundle<FluentResource>, id: &str, args: &FluentArgs<'_>) -> String {
    let pattern = bundle.get_message(id).and_then(|message| message.value());
    pattern.map_or_else(
        || format!("⟨{id}⟩"),
        |pattern| bundle.format_pattern(pattern, Some(args), &mut Vec::new()).into_owned(),
    )
}

fn message_id<'a>(entry: &'a Entry<&'a str>) -> Option<&'a str> {
    if let Entry::Message(message) = entry { Some(message.id.name) } else { None }
}
