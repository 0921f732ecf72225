//! A file of a part: without tables of other parts, and then without other vehicles.

use std::collections::BTreeMap;

use toml_edit::{Array, DocumentMut, Item, TableLike};

use super::{KINDS, VEHICLE, entries};

/// What says for which vehicles something is.
const VEHICLES: &str = "vehicles";

/// A file without the tables of other parts.
#[derive(Debug)]
pub(super) struct Cut {
    pub path: String,
    document: DocumentMut,
    text: String,
    /// Whether it holds vehicles, or says for which of them something is.
    names_vehicles: bool,
}

impl Cut {
    /// Nothing where no table is left.
    pub(super) fn of(
        path: &str,
        document: &DocumentMut,
        is_kept: &dyn Fn(&str, &str) -> bool,
    ) -> Option<Self> {
        let is_left = |(kind, item): (&str, &Item)| match item.as_table_like() {
            Some(all) if has_ids(kind) => all.iter().any(|(id, _)| is_kept(kind, id)),
            _ => true,
        };
        if !document.iter().any(is_left) {
            return None;
        }
        let mut document = document.clone();
        without(&mut document, |kind, id| !is_kept(kind, id));
        let names_vehicles = KINDS.iter().filter(|kind| has_ids(kind)).any(|kind| {
            entries(&document, kind).any(|(_, entry)| *kind == VEHICLE || entry.contains_key(VEHICLES))
        });
        Some(Self { path: path.to_owned(), text: document.to_string(), document, names_vehicles })
    }

    /// Its text with no vehicle but this one; nothing where no table is left.
    pub(super) fn for_vehicle(
        &self,
        vehicle: Option<&str>,
        others: &BTreeMap<String, String>,
    ) -> Option<String> {
        if !self.names_vehicles {
            return Some(self.text.clone());
        }
        let mut document = self.document.clone();
        without(&mut document, |kind, id| kind == VEHICLE && vehicle != Some(id));
        for kind in KINDS.iter().filter(|kind| has_ids(kind)) {
            let all = document.get_mut(kind).and_then(Item::as_table_like_mut);
            for (_, entry) in all.into_iter().flat_map(TableLike::iter_mut) {
                if let Some(entry) = entry.as_table_like_mut() {
                    name_others(entry, vehicle, others);
                }
            }
        }
        document.iter().next()?;
        Some(document.to_string())
    }
}

/// Whether tables of a kind have ids: a shop has none.
fn has_ids(kind: &str) -> bool {
    kind != "shop" && KINDS.contains(&kind)
}

/// Takes tables out, and kinds of which none is left.
fn without(document: &mut DocumentMut, is_out: impl Fn(&str, &str) -> bool) {
    for kind in KINDS.iter().filter(|kind| has_ids(kind)) {
        let Some(all) = document.get_mut(kind).and_then(Item::as_table_like_mut) else { continue };
        let out: Vec<String> =
            all.iter().map(|(id, _)| id.to_owned()).filter(|id| is_out(kind, id)).collect();
        for id in out {
            all.remove(&id);
        }
        if all.is_empty() {
            document.remove(kind);
        }
    }
}

/// A paper for some vehicles only names this one, where it did, and the one that stands for the others.
fn name_others(entry: &mut dyn TableLike, vehicle: Option<&str>, others: &BTreeMap<String, String>) {
    let system = entry.get("system").and_then(Item::as_str).map(str::to_owned);
    let Some(named) = entry.get_mut(VEHICLES).and_then(Item::as_array_mut) else { return };
    let kept = vehicle.filter(|id| named.iter().any(|value| value.as_str() == Some(id))).map(str::to_owned);
    let are_more = named.len() > usize::from(kept.is_some());
    let other = system.and_then(|system| others.get(&system).cloned()).filter(|_| are_more);
    *named = kept.into_iter().chain(other).collect::<Array>();
}
