//! The list of what to take down where: one row a copy, in the order of a walk through the
//! building.

use std::sync::Arc;

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::Serialize;

use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::stamp::{Stamp, revision};
use super::write_on::{self, WriteOn};
use super::{Context, Data, Document, Listed, Paperwork, Stage, content, finish_as};
use crate::model::offered;
use crate::quantity::noted;
use crate::spec::PaperKind;
use crate::words::{Message, Words};

const TEMPLATE: &str = "pull-list.typ";

/// Its id. A full stop is in it because no id of a spec can hold one.
const ID: &str = "SET.PULL-LIST";

/// So many values are named that made one copy wrong; the rest are counted.
const NAMED: usize = 6;

const SIGN_OFF: [&str; 3] = ["sheet-sign-name", "sheet-sign-signature", "sheet-sign-date"];

/// What an issue, or a withdrawal, makes out of date.
#[derive(Debug, Clone)]
pub struct PullList {
    /// When the issue was made.
    pub date: NaiveDate,
    /// Which list of that day it is, from 1.
    pub number: u32,
    /// Who issued: initials.
    pub by: String,
    /// Why, in the words of who issued.
    pub why: String,
    /// The copies, in any order.
    pub copies: Vec<Pull>,
}

/// One copy to take down.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Pull {
    /// The document's id.
    pub id: String,
    /// Its title.
    pub title: String,
    /// The revision that hangs there.
    pub old: u32,
    /// The one that takes its place; none where the document is withdrawn.
    pub new: Option<u32>,
    /// Who holds the copy; empty where nobody is recorded.
    pub holder: String,
    /// Where it is; empty where no place is recorded.
    pub place: String,
    /// Which values made it wrong.
    pub because: Vec<Because>,
}

/// A value that changed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Because {
    /// Its spec key.
    pub key: String,
    /// What it was; empty where it was not given.
    pub old: String,
    /// What it is; empty where it is not given any more.
    pub new: String,
}

/// Everything the list's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Page {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// What to do with the list.
    intro: String,
    /// Why the papers were issued anew or withdrawn; may be empty.
    why: String,
    /// Heads: place, holder, paper, revision, because of, taken down, destroyed.
    heads: Vec<String>,
    /// A row each copy.
    rows: Vec<Row>,
    /// Below the rows: how many there are.
    total: String,
    /// Boxes for who did it.
    sign_off: Vec<WriteOn>,
}

/// A copy to be taken down.
#[derive(Debug, Serialize, JsonSchema)]
struct Row {
    /// Where the copy is.
    place: String,
    /// Whether no row before is at this place.
    first: bool,
    /// Who holds it.
    holder: String,
    /// The document's id.
    id: String,
    /// Its title.
    title: String,
    /// The revision to take down, and the one that takes its place.
    revisions: String,
    /// The values that made it wrong, a line each.
    because: Vec<String>,
}

impl Data for Page {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// Composes the list.
#[must_use]
pub fn compose_pull_list(context: Context<'_>, list: &PullList) -> Document {
    noted(context.words.notation(), || composed(context, list))
}

fn composed(context: Context<'_>, list: &PullList) -> Document {
    let Context { model, words, .. } = context;
    let mut copies: Vec<&Pull> = list.copies.iter().collect();
    copies.sort_by_cached_key(|pull| {
        // What has no place is looked for at the end.
        (pull.place.is_empty(), walked(&pull.place), walked(&pull.holder), pull.id.clone())
    });
    let places = copies.chunk_by(|one, other| one.place == other.place).count();
    let count = Message::new("pulled-total").with_count("copies", copies.len()).with_count("places", places);
    let total = words.say(&count);
    // Of its own number: two lists of one day are told apart.
    let stamp = Stamp { revision: list.number, date: list.date, by: list.by.clone(), since: None };
    let kind = Kind {
        word: "doc-pull-list",
        size: offered::usual(PaperKind::Index, model.shop.paper),
        title: words.word("pulled-title"),
        id: ID.to_owned(),
    };
    let mut furniture = Furniture::like(context, kind, total.clone(), None);
    furniture.issue(words, &stamp);
    furniture.revision = format!("{}/{}", list.date, list.number);
    let heads = [
        "pulled-place",
        "pulled-holder",
        "pulled-paper",
        "pulled-revision",
        "pulled-because",
        "pulled-taken-down",
        "pulled-destroyed",
    ];
    let mut before: Option<&str> = None;
    let rows = copies.iter().map(|pull| {
        let first = before.replace(&pull.place) != Some(&pull.place);
        row(words, pull, first)
    });
    let data = Page {
        rows: rows.collect(),
        furniture,
        intro: words.word("pulled-intro"),
        why: list.why.clone(),
        heads: heads.map(|head| words.word(head)).to_vec(),
        total,
        sign_off: write_on::signatures(words, &SIGN_OFF),
    };
    // Read as the index is: in the hand, on the shop's paper.
    let listed = Listed { id: ID.to_owned(), spec: ID.to_owned(), paperwork: Paperwork::Index };
    // No set lists it: its own data are all there is.
    let content = Arc::new(content::of(&data));
    finish_as(&listed, (TEMPLATE, 0), data, (content, Marks::default()), Stage::Printed)
}

fn row(words: &Words, pull: &Pull, first: bool) -> Row {
    let or = |text: &str, word| if text.is_empty() { words.word(word) } else { text.to_owned() };
    let given = |text| or(text, "doc-not-given");
    let recorded = |text| or(text, "pulled-not-recorded");
    let mut because: Vec<String> = (pull.because.iter().take(NAMED))
        .map(|value| format!("{}: {} → {}", value.key, given(&value.old), given(&value.new)))
        .collect();
    if let Some(more) = pull.because.len().checked_sub(NAMED).filter(|more| *more > 0) {
        because.push(words.say(&Message::new("pulled-more").with_count("values", more)));
    }
    let old = revision(pull.old);
    let revisions = match pull.new {
        Some(new) => format!("{old} → {}", revision(new)),
        None => words.say(&Message::new("pulled-withdrawn").with("revision", old)),
    };
    Row {
        place: recorded(&pull.place),
        first,
        holder: recorded(&pull.holder),
        id: pull.id.clone(),
        title: pull.title.clone(),
        revisions,
        because,
    }
}

/// A name in the order in which people count: bay 2 before bay 10.
fn walked(name: &str) -> Vec<(String, u64)> {
    let mut parts: Vec<(String, u64)> = Vec::new();
    let mut rest = name;
    while !rest.is_empty() {
        let digits = rest.find(|c: char| c.is_ascii_digit()).unwrap_or(rest.len());
        let (text, after) = rest.split_at(digits);
        let end = after.find(|c: char| !c.is_ascii_digit()).unwrap_or(after.len());
        let (number, after) = after.split_at(end);
        parts.push((text.to_lowercase(), number.parse().unwrap_or(0)));
        rest = after;
    }
    parts
}

#[cfg(test)]
mod tests {
    use super::walked;

    #[test]
    fn places_stand_in_the_order_of_a_walk() {
        let mut places = ["Bay 10, wall", "bay 2, wall", "Office", "Bay 2, door", "Bay 1"];
        places.sort_by_cached_key(|place| walked(place));
        assert_eq!(places, ["Bay 1", "Bay 2, door", "bay 2, wall", "Bay 10, wall", "Office"]);
    }
}
