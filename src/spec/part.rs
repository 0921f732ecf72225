//! The part of a set that one document needs: other vehicles are left out.
//!
//! What identifies somebody else's vehicle has no place inside a paper that goes elsewhere.
//! In their place each system gets one vehicle that says nothing of itself, so that its
//! sheets and tests still are for some vehicle.

use std::collections::BTreeMap;

use toml_edit::{Array, DocumentMut, Item, TableLike};

use crate::diag::Sources;

/// The file with the vehicles that stand for those left out.
const OTHERS: &str = "vehicles-left-out.toml";

/// The files of a set by their paths below its folder, without any vehicle but this one.
#[must_use]
pub fn part(sources: &Sources, vehicle: Option<&str>) -> Vec<(String, String)> {
    let texts: Vec<(&str, &str)> = sources.texts().map(|(file, text)| (sources.path(file), text)).collect();
    let above = folder_of_all(&texts);
    let mut documents: Vec<(&str, &str, Option<DocumentMut>)> = (texts.iter())
        .map(|(path, text)| {
            let read = || text.parse::<DocumentMut>().ok();
            (&path[above..], *text, text.contains("vehicle").then(read).flatten())
        })
        .collect();
    let mut others: BTreeMap<String, String> = BTreeMap::new();
    for (.., document) in &documents {
        for (id, item) in entries(document.as_ref(), "vehicle") {
            let system = item.get("system").and_then(Item::as_str).filter(|_| vehicle != Some(id));
            if let Some(system) = system {
                let number = others.len() + 1;
                others.entry(system.to_owned()).or_insert_with(|| format!("LEFT-OUT-{number}"));
            }
        }
    }
    for (.., document) in &mut documents {
        let Some(document) = document else { continue };
        if let Some(vehicles) = document.get_mut("vehicle").and_then(Item::as_table_like_mut) {
            let gone: Vec<String> =
                vehicles.iter().map(|(id, _)| id.to_owned()).filter(|id| vehicle != Some(id)).collect();
            for id in gone {
                vehicles.remove(&id);
            }
        }
        for kind in ["sheet", "checklist"] {
            let all = document.get_mut(kind).and_then(Item::as_table_like_mut);
            for (_, entry) in all.into_iter().flat_map(|all| all.iter_mut()) {
                if let Some(entry) = entry.as_table_like_mut() {
                    name_others(entry, vehicle, &others);
                }
            }
        }
    }
    let mut files: Vec<(String, String)> = documents
        .into_iter()
        .map(|(path, text, document)| {
            (path.to_owned(), document.map_or_else(|| text.to_owned(), |document| document.to_string()))
        })
        .collect();
    if !others.is_empty() {
        let stub = |(system, id): (&String, &String)| {
            format!(
                "[vehicle.{id}]\ntitle = \"left out\"\nsystem = {}\n",
                toml_edit::Value::from(system.as_str())
            )
        };
        files.push((OTHERS.to_owned(), others.iter().map(stub).collect::<Vec<_>>().join("\n")));
    }
    files
}

/// The tables of a kind by id.
fn entries<'a>(
    document: Option<&'a DocumentMut>,
    kind: &str,
) -> impl Iterator<Item = (&'a str, &'a dyn TableLike)> {
    let all = document.and_then(|document| document.get(kind)).and_then(Item::as_table_like);
    all.into_iter().flat_map(|all| all.iter()).filter_map(|(id, item)| Some((id, item.as_table_like()?)))
}

/// A paper for some vehicles only names this one, where it did, and the one that stands for the others.
fn name_others(entry: &mut dyn TableLike, vehicle: Option<&str>, others: &BTreeMap<String, String>) {
    let system = entry.get("system").and_then(Item::as_str).map(str::to_owned);
    let Some(named) = entry.get_mut("vehicles").and_then(Item::as_array_mut) else { return };
    let had = |id: &str| named.iter().any(|value| value.as_str() == Some(id));
    let kept = vehicle.filter(|id| had(id)).map(str::to_owned);
    let other = system
        .and_then(|system| others.get(&system).cloned())
        .filter(|_| named.len() > usize::from(kept.is_some()));
    *named = kept.into_iter().chain(other).collect::<Array>();
}

/// How long the path is that all files have in common, up to a folder.
fn folder_of_all(texts: &[(&str, &str)]) -> usize {
    let Some((first, _)) = texts.first() else { return 0 };
    let ends = first.match_indices(['/', '\\']).map(|(at, _)| at + 1);
    ends.filter(|end| texts.iter().all(|(path, _)| path.get(..*end) == first.get(..*end))).last().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn other_vehicles_are_left_out_and_stood_for() {
        let mut sources = Sources::default();
        let vehicles = "# ours\n[vehicle.A]\ntitle = \"A\"\nsystem = \"s\"\nchassis = \"X1\"\n\n\
                        [vehicle.B]\ntitle = \"B\"\nsystem = \"s\"\nchassis = \"X2\"\n";
        sources.add("/home/somebody/specs/fleet/vehicles.toml".to_owned(), vehicles.to_owned());
        let sheet = "[sheet.T]\nsystem = \"s\"\nvehicles = [\"B\", \"A\"]\n";
        sources.add("/home/somebody/specs/sheets.toml".to_owned(), sheet.to_owned());
        let files = part(&sources, Some("A"));
        let text = |name: &str| files.iter().find(|(path, _)| path == name).map(|(_, text)| text.as_str());
        let kept = text("fleet/vehicles.toml").expect("its path is below the set's folder");
        assert!(kept.contains("X1") && !kept.contains("X2"), "{kept}");
        assert_eq!(
            text("sheets.toml"),
            Some("[sheet.T]\nsystem = \"s\"\nvehicles = [\"A\", \"LEFT-OUT-1\"]\n")
        );
        assert!(text(OTHERS).is_some_and(|text| text.contains("[vehicle.LEFT-OUT-1]")), "{files:?}");
        let none = part(&sources, None);
        assert!(none.iter().all(|(_, text)| !text.contains("X1") && !text.contains("X2")), "{none:?}");
    }
}
