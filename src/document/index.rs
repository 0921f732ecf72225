//! The index of all documents of a set: what there is, which issue of it, and what it lacks.

use std::collections::BTreeSet;

use schemars::JsonSchema;
use serde::Serialize;

use super::furniture::{Furniture, Kind};
use super::grid::{Column, Grid};
use super::marks::Marks;
use super::{Context, Data, Document, Listed, finish};
use crate::words::{Message, Order, Words};

const TEMPLATE: &str = "index.typ";

/// Its id. A full stop is in it because no id of a spec can hold one.
pub(super) const ID: &str = "SET.INDEX";

/// Everything the index's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Index {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// What the index is for.
    intro: String,
    /// A row each.
    documents: Grid,
    /// Sums over the set, a text each.
    totals: Vec<String>,
}

impl Data for Index {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// Composes the index; the documents are composed for their fingerprints. `pages` counts
/// those of a document that does not know how many it has, if it can; `issued` says which revision
/// of one is valid.
pub(super) fn compose(
    context: Context<'_>,
    listed: &Listed,
    pages: &dyn Fn(&Document) -> Option<usize>,
    issued: &dyn Fn(&str) -> Option<String>,
) -> Option<Document> {
    let Context { model, words, .. } = context;
    let others = super::list(model).into_iter().filter(|other| other.id != listed.id);
    let (mut no_source, mut not_given) = (BTreeSet::new(), BTreeSet::new());
    let (mut rows, mut sheets, mut counted) = (Vec::new(), 0, true);
    for other in others {
        let document = super::compose(context, &other)?;
        let count = if document.pages > 0 { Some(document.pages) } else { pages(&document) };
        sheets += count.unwrap_or_default();
        counted &= count.is_some();
        rows.push(row(words, &document, count, issued(&document.id)));
        no_source.extend(document.no_source);
        not_given.extend(document.not_given);
    }
    let order = Order::of(words.language());
    rows.sort_by(|one, other| order.compare(&one[0], &other[0]));
    let total = Message::new("index-total").with_count("documents", rows.len());
    let paper = match counted {
        true => Message::new("index-pages").with_count("pages", sheets),
        false => Message::new("index-pages-uncounted"),
    };
    let lacking =
        Message::new("index-lacking").with("not-given", not_given.len()).with("no-source", no_source.len());
    let title = words.say(&Message::new("index-title").with("shop", &model.shop.title));
    let kind = Kind { word: "doc-index", size: context.size_of(listed), title, id: listed.id.clone() };
    let all = words.word("index-applies");
    let figures = |word| Column::figures(words.word(word), "");
    let data = Index {
        furniture: Furniture::like(context, kind, all, None),
        intro: words.word("index-intro"),
        documents: Grid {
            title: String::new(),
            notes: Vec::new(),
            columns: vec![
                Column::words(words.word("index-id")),
                Column::words(words.word("index-kind")),
                Column::words(words.word("index-name")),
                Column::words(words.word("index-system")),
                figures("index-page-count"),
                Column::words(words.word("index-issue")),
                figures("index-not-given"),
                figures("index-no-source"),
            ],
            rows,
        },
        totals: vec![words.say(&total), words.say(&paper), words.say(&lacking)],
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, Marks::default()))
}

/// One document: what it is, and what it lacks.
fn row(words: &Words, document: &Document, pages: Option<usize>, issued: Option<String>) -> Vec<String> {
    let furniture = &document.furniture;
    let count = |keys: &[String]| if keys.is_empty() { "–".to_owned() } else { keys.len().to_string() };
    vec![
        document.id.clone(),
        furniture.kind.clone(),
        furniture.title.clone(),
        furniture.system.clone(),
        pages.map_or_else(|| words.word("index-uncounted"), |pages| pages.to_string()),
        issued.unwrap_or_else(|| format!("{} {}", furniture.revision, furniture.fingerprint)),
        count(&document.not_given),
        count(&document.no_source),
    ]
}
