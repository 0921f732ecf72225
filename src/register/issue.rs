//! What an issue or withdrawal writes down, stamps on paper, and makes out of date.

use chrono::NaiveDate;

use super::entry::Entry;
use super::ledger::{Ledger, NewAct};
use super::record::{History, Record};
use crate::document::{Because, Pull, Since, Stamp};
use crate::quantity::Temperature;

/// Who does it, when, and why.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Order {
    /// Initials.
    pub by: String,
    /// Why.
    pub why: String,
    /// When.
    pub date: NaiveDate,
}

impl Order {
    fn act(&self, id: &str, revision: u32, pull_list: Option<&str>) -> NewAct {
        NewAct {
            id: id.to_owned(),
            revision,
            date: self.date,
            by: self.by.clone(),
            why: self.why.clone(),
            pull_list: pull_list.map(str::to_owned),
        }
    }
}

/// What an issue puts on a document's pages.
#[must_use]
pub fn stamp(entry: &Entry, order: &Order) -> Stamp {
    let since = entry.revision.map(|revision| Since {
        revision,
        why: order.why.clone(),
        moved: entry.difference.as_ref().map(|difference| difference.moved.clone()).unwrap_or_default(),
        is_known: entry.difference.is_some() || !entry.is_other,
    });
    Stamp { revision: entry.next(), date: order.date, by: order.by.clone(), since }
}

/// Writes an issue down.
pub fn write_down(ledger: &mut Ledger, entry: &Entry, order: &Order, pull_list: Option<&str>) {
    let edition = entry.edition;
    let mut more = vec![
        ("content", entry.content.clone()),
        ("layout", entry.layout.clone()),
        ("tool", env!("CARGO_PKG_VERSION").to_owned()),
        ("language", edition.language.code().to_owned()),
        ("units", edition.units.word().to_owned()),
    ];
    let vehicle = entry.listed.as_ref().and_then(|listed| listed.paperwork.vehicle());
    more.extend(vehicle.map(|vehicle| ("vehicle", vehicle.to_owned())));
    more.extend(edition.size.map(|size| ("size", size.name().to_owned())));
    more.extend(edition.bay.map(|bay: Temperature| ("at", format!("{} °C", bay.celsius()))));
    let pull_list = pull_list.filter(|_| entry.revision.is_some());
    ledger.issue(&order.act(&entry.id, entry.next(), pull_list), &more);
}

/// Writes the withdrawal of a document's newest revision down.
pub fn write_down_withdrawal(ledger: &mut Ledger, id: &str, revision: u32, order: &Order, pull_list: &str) {
    ledger.withdraw(&order.act(id, revision, Some(pull_list)));
}

/// What an issue makes out of date: every copy of an earlier revision, and each earlier
/// revision that nobody is recorded to hold.
#[must_use]
pub fn pulls_of_issue(entry: &Entry, record: &Record) -> Vec<Pull> {
    let Some(old) = entry.revision else { return Vec::new() };
    let because = entry.difference.as_ref().map(|difference| difference.because.clone());
    let of = (entry.id.as_str(), entry.title.as_str());
    pulls(of, record.of(&entry.id), (old, Some(entry.next())), &because.unwrap_or_default())
}

/// What a withdrawal makes out of date.
#[must_use]
pub fn pulls_of_withdrawal(id: &str, title: &str, history: &History) -> Vec<Pull> {
    let Some(current) = history.current() else { return Vec::new() };
    pulls((id, title), Some(history), (current.act.revision.value, None), &[])
}

fn pulls(
    (id, title): (&str, &str),
    history: Option<&History>,
    (old, new): (u32, Option<u32>),
    because: &[Because],
) -> Vec<Pull> {
    let pull = |old: u32, holder: &str, place: &str| Pull {
        id: id.to_owned(),
        title: title.to_owned(),
        old,
        new,
        holder: holder.to_owned(),
        place: place.to_owned(),
        because: because.to_vec(),
    };
    let held: Vec<Pull> = history
        .into_iter()
        .flat_map(History::held)
        .map(|copy| pull(copy.revision.value, &copy.holder, copy.at.as_deref().unwrap_or_default()))
        .collect();
    if held.is_empty() { vec![pull(old, "", "")] } else { held }
}
