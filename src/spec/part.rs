//! The part of a set that one document needs: its system's, and no other vehicle.
//!
//! Tables that name one another belong together, in whichever direction: a card shows who else
//! uses its connector, and which sheet tests its pin. What all systems share (the shop and its
//! instruments) is kept and joins nothing. Other vehicles are left out, since what
//! identifies somebody's vehicle has no place inside a paper that goes elsewhere; one that
//! says nothing of itself stands for those of each system, so that its sheets and tests still
//! are for some vehicle. Checklists and the complaints that lead to them are the longest of all
//! specs, and no other paper is made from them: only their own carry them.

mod cut;

use std::collections::{BTreeMap, BTreeSet};
use std::sync::{Arc, Mutex, PoisonError};

use cut::Cut;
use toml_edit::{DocumentMut, Item, TableLike, Value};

use super::set::KINDS;
use crate::diag::Sources;

/// The file with the vehicles that stand for those left out.
const OTHERS: &str = "vehicles-left-out.toml";

/// Kinds that every system may use, and which therefore join none.
const SHARED: [&str; 2] = ["shop", "instrument"];

/// Kinds that only papers of their own are made from.
pub const OF_CHECKLISTS: [&str; 2] = ["checklist", "symptom"];

/// The kind that is left out.
const VEHICLE: &str = "vehicle";

/// A table of a spec: its kind and id.
type Name = (String, String);

/// The files of a set: what each holds, by its path below the set's folder.
pub type Texts = BTreeMap<String, String>;

/// A set, taken apart.
#[derive(Debug)]
pub struct Parts {
    /// Each file's path below the folder of the set, and what it holds.
    files: Vec<(String, DocumentMut)>,
    /// Which tables belong together: a number for each, the same for those that do.
    joined: BTreeMap<Name, usize>,
    /// The files of each part: papers of many vehicles share them.
    cut: Mutex<BTreeMap<Part, Arc<Vec<Cut>>>>,
}

/// A part of a set.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Part {
    /// The number of the things that belong together; nothing for all.
    number: Option<usize>,
    has_checklists: bool,
}

impl Parts {
    /// Takes a set without errors apart.
    #[must_use]
    pub fn of(sources: &Sources) -> Self {
        let texts: Vec<(&str, &str)> =
            sources.texts().map(|(file, text)| (sources.path(file), text)).collect();
        let above = folder_of_all(&texts);
        let files: Vec<(String, DocumentMut)> = (texts.iter())
            .filter_map(|(path, text)| Some((path[above..].replace('\\', "/"), text.parse().ok()?)))
            .collect();
        let joined = joined(&files);
        Self { files, joined, cut: Mutex::default() }
    }

    /// The part that something with this id belongs to, with its checklists or without.
    #[must_use]
    pub fn part_of(&self, id: &str, has_checklists: bool) -> Part {
        let named = self.joined.iter().find(|((kind, known), _)| known == id && kind != VEHICLE);
        Part { number: named.map(|(_, number)| *number), has_checklists }
    }

    /// The files of a part, without any vehicle but this one.
    #[must_use]
    pub fn files(&self, part: Part, vehicle: Option<&str>) -> Texts {
        let is_kept = |kind: &str, id: &str| self.is_kept(part, kind, id);
        let others = self.others(vehicle, &is_kept);
        let mut files: Texts = (self.cut(part).iter())
            .filter_map(|file| Some((file.path.clone(), file.for_vehicle(vehicle, &others)?)))
            .collect();
        if !others.is_empty() {
            let stub = |(system, id): (&String, &String)| {
                let system = Value::from(system.as_str());
                format!("[vehicle.{id}]\ntitle = \"left out\"\nsystem = {system}\n")
            };
            files.insert(OTHERS.to_owned(), others.iter().map(stub).collect::<Vec<_>>().join("\n"));
        }
        files
    }

    /// Whether a table goes with a part.
    fn is_kept(&self, part: Part, kind: &str, id: &str) -> bool {
        if !part.has_checklists && OF_CHECKLISTS.contains(&kind) {
            return false;
        }
        let number = || self.joined.get(&(kind.to_owned(), id.to_owned()));
        SHARED.contains(&kind)
            || part.number.is_none()
            || number().is_none_or(|number| Some(*number) == part.number)
    }

    /// The files of a part with all its vehicles.
    fn cut(&self, part: Part) -> Arc<Vec<Cut>> {
        let mut known = self.cut.lock().unwrap_or_else(PoisonError::into_inner);
        let cut = known.entry(part).or_insert_with(|| {
            let is_kept = |kind: &str, id: &str| self.is_kept(part, kind, id);
            let cut = |(path, document): &(String, DocumentMut)| Cut::of(path, document, &is_kept);
            Arc::new(self.files.iter().filter_map(cut).collect())
        });
        Arc::clone(cut)
    }

    /// The systems of vehicles that are left out, each with the id of what stands for them.
    fn others(
        &self,
        vehicle: Option<&str>,
        is_kept: &dyn Fn(&str, &str) -> bool,
    ) -> BTreeMap<String, String> {
        let mut others = BTreeMap::new();
        for (_, document) in &self.files {
            for (id, entry) in entries(document, VEHICLE).filter(|(id, _)| vehicle != Some(*id)) {
                let system = entry.get("system").and_then(Item::as_str);
                if let Some(system) =
                    system.filter(|system| is_kept("system", system) && is_kept(VEHICLE, id))
                {
                    let number = others.len() + 1;
                    others.entry(system.to_owned()).or_insert_with(|| format!("LEFT-OUT-{number}"));
                }
            }
        }
        others
    }
}

/// Gives tables that name one another the same number.
fn joined(files: &[(String, DocumentMut)]) -> BTreeMap<Name, usize> {
    let mut named: BTreeMap<Name, BTreeSet<String>> = BTreeMap::new();
    for (_, document) in files {
        for kind in KINDS.iter().filter(|kind| !SHARED.contains(kind)) {
            for (id, entry) in entries(document, kind) {
                let words = named.entry(((*kind).to_owned(), id.to_owned())).or_default();
                words.insert(id.to_owned());
                for (key, item) in entry.iter() {
                    words.insert(key.to_owned());
                    mentioned(item, words);
                }
            }
        }
    }
    // By each id, the tables that bear it or name it.
    let mut by_id: BTreeMap<&str, Vec<usize>> =
        named.keys().map(|(_, id)| (id.as_str(), Vec::new())).collect();
    for (index, words) in named.values().enumerate() {
        for word in words {
            if let Some(those) = by_id.get_mut(word.as_str()) {
                those.push(index);
            }
        }
    }
    let mut part: Vec<usize> = (0..named.len()).collect();
    for those in by_id.values() {
        for pair in those.windows(2) {
            let (one, other) = (first(&part, pair[0]), first(&part, pair[1]));
            part[one.max(other)] = one.min(other);
        }
    }
    let numbers: Vec<usize> = (0..part.len()).map(|index| first(&part, index)).collect();
    named.into_keys().zip(numbers).collect()
}

/// The first of those that an entry is joined with.
fn first(part: &[usize], mut index: usize) -> usize {
    while part[index] != index {
        index = part[index];
    }
    index
}

/// What a value may name: a text as it is, and the pieces of a pin or of a thing with its kind.
fn mentioned(item: &Item, words: &mut BTreeSet<String>) {
    if let Some(text) = item.as_str() {
        words.insert(text.to_owned());
        if text.contains(['/', '.']) {
            words.extend(text.split(['/', '.', ',', '+', ' ']).map(str::to_owned));
        }
    } else if let Some(table) = item.as_table_like() {
        for (key, item) in table.iter() {
            words.insert(key.to_owned());
            mentioned(item, words);
        }
    } else if let Some(array) = item.as_array() {
        array.iter().for_each(|value| mentioned(&Item::Value(value.clone()), words));
    } else if let Some(tables) = item.as_array_of_tables() {
        tables.iter().flat_map(|table| table.iter()).for_each(|(key, item)| {
            words.insert(key.to_owned());
            mentioned(item, words);
        });
    }
}

/// The tables of a kind by id.
fn entries<'a>(document: &'a DocumentMut, kind: &str) -> impl Iterator<Item = (&'a str, &'a dyn TableLike)> {
    let all = document.get(kind).and_then(Item::as_table_like);
    all.into_iter().flat_map(|all| all.iter()).filter_map(|(id, item)| Some((id, item.as_table_like()?)))
}

/// How long the path is that all files have in common, up to a folder.
fn folder_of_all(texts: &[(&str, &str)]) -> usize {
    let Some((first, _)) = texts.first() else { return 0 };
    let mut ends = first.match_indices(['/', '\\']).map(|(at, _)| at + 1);
    ends.rfind(|end| texts.iter().all(|(path, _)| path.get(..*end) == first.get(..*end))).unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn set() -> Sources {
        let mut sources = Sources::default();
        let vehicles = "# ours\n[vehicle.A]\ntitle = \"A\"\nsystem = \"s\"\nchassis = \"X1\"\n\n\
                        [vehicle.B]\ntitle = \"B\"\nsystem = \"s\"\nchassis = \"X2\"\n\n\
                        [vehicle.C]\ntitle = \"C\"\nsystem = \"t\"\nchassis = \"X3\"\n";
        sources.add("/home/somebody/specs/fleet/vehicles.toml".to_owned(), vehicles.to_owned());
        let sheet = "[sheet.T]\nsystem = \"s\"\nvehicles = [\"B\", \"A\"]\n";
        sources.add("/home/somebody/specs/sheets.toml".to_owned(), sheet.to_owned());
        let things = "[system.s]\n[system.t]\n[instrument.meter]\n[connector.C1]\n\
                      [sensor.a]\nsystem = \"s\"\npins = { signal = \"C1/3\" }\n[sensor.b]\nsystem = \"t\"\n";
        sources.add("/home/somebody/specs/things.toml".to_owned(), things.to_owned());
        sources
    }

    fn all(files: &Texts) -> String {
        files.values().map(String::as_str).collect()
    }

    #[test]
    fn other_vehicles_are_left_out_and_stood_for() {
        let parts = Parts::of(&set());
        let files = parts.files(parts.part_of("T", true), Some("A"));
        let text = |name: &str| files.get(name).map(String::as_str);
        let kept = text("fleet/vehicles.toml").expect("its path is below the set's folder");
        assert!(kept.contains("X1") && !kept.contains("X2"), "{kept}");
        assert_eq!(
            text("sheets.toml"),
            Some("[sheet.T]\nsystem = \"s\"\nvehicles = [\"A\", \"LEFT-OUT-1\"]\n")
        );
        assert!(text(OTHERS).is_some_and(|text| text.contains("[vehicle.LEFT-OUT-1]")), "{files:?}");
        let none = all(&parts.files(parts.part_of("T", true), None));
        assert!(["X1", "X2", "X3"].iter().all(|chassis| !none.contains(chassis)), "{none}");
    }

    #[test]
    fn checklists_go_with_papers_of_their_own_alone() {
        let mut set = set();
        let checklist = "[checklist.L]\nsystem = \"s\"\n[symptom.w]\nsystem = \"s\"\nchecklist = \"L\"\n";
        set.add("/home/somebody/specs/checklists.toml".to_owned(), checklist.to_owned());
        let parts = Parts::of(&set);
        let with = parts.files(parts.part_of("L", true), None);
        assert_eq!(with.get("checklists.toml").map(String::as_str), Some(checklist));
        assert!(!parts.files(parts.part_of("a", false), None).contains_key("checklists.toml"));
    }

    #[test]
    fn another_system_is_left_out_and_what_all_share_is_kept() {
        let parts = Parts::of(&set());
        let one = all(&parts.files(parts.part_of("a", true), None));
        for kept in ["sensor.a", "connector.C1", "system.s", "instrument.meter", "sheet.T"] {
            assert!(one.contains(kept), "no {kept} in {one}");
        }
        assert!(!one.contains("sensor.b") && !one.contains("system.t"), "{one}");
    }
}
