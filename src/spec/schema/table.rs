//! What all trials together say about each table, and what one trial changes.

use std::collections::{BTreeMap, BTreeSet};

use super::super::reader::{Shape, TableNotes};
use super::explore::{Explored, Trial};

/// One table as all trials know it.
pub(super) struct Known {
    /// Every key, with each shape that it has in some trial.
    pub keys: Vec<(&'static str, Vec<Shape>)>,
    /// Keys that every trial demands.
    pub required: BTreeSet<&'static str>,
    /// Keys of which exactly one has to be there.
    pub one_of: Vec<&'static str>,
    /// What stands under keys that are the user's own.
    pub entries: Option<Shape>,
    /// Whether keys that are not known are found.
    pub closed: bool,
    /// Whether something has to stand there.
    pub says_something: bool,
}

/// What a trial changes in one table.
#[derive(Debug, Default, Clone, PartialEq, Eq)]
pub(super) struct Effect {
    /// Keys that are not known then.
    pub forbidden: BTreeSet<&'static str>,
    /// Keys that have to be there then.
    pub required: BTreeSet<&'static str>,
    /// Keys that hold something in particular then.
    pub shapes: BTreeMap<&'static str, Vec<Shape>>,
}

impl Effect {
    fn is_nothing(&self) -> bool {
        *self == Self::default()
    }
}

impl Trial {
    /// Whether `other` has another value at the same key.
    fn is_another(&self, other: &Self) -> bool {
        (&self.table, self.key) == (&other.table, other.key) && self.what != other.what
    }
}

impl Explored {
    /// Every run, the empty one first.
    fn runs(&self) -> impl Iterator<Item = &BTreeMap<String, TableNotes>> {
        std::iter::once(&self.base).chain(self.trials.iter().map(|trial| &trial.asked))
    }

    /// What all runs together say about each table.
    pub(super) fn sum_up(&self) -> BTreeMap<String, Known> {
        let names: BTreeSet<&String> = self.runs().flat_map(BTreeMap::keys).collect();
        names.into_iter().map(|name| (name.clone(), self.sum_up_one(name))).collect()
    }

    /// The names of all tables.
    pub(super) fn names(&self) -> impl Iterator<Item = &str> {
        self.known.keys().map(String::as_str)
    }

    /// What is known of a table.
    pub(super) fn known(&self, name: &str) -> &Known {
        const NOTHING: &Known = &Known {
            keys: Vec::new(),
            required: BTreeSet::new(),
            one_of: Vec::new(),
            entries: None,
            closed: false,
            says_something: false,
        };
        self.known.get(name).unwrap_or(NOTHING)
    }

    fn sum_up_one(&self, name: &str) -> Known {
        let all: Vec<&TableNotes> = self.runs().filter_map(|asked| asked.get(name)).collect();
        let mut keys: Vec<(&'static str, Vec<Shape>)> = Vec::new();
        for (key, shape) in all.iter().flat_map(|notes| &notes.keys) {
            match keys.iter_mut().find(|(known, _)| known == key) {
                Some((_, shapes)) if shapes.contains(shape) => {}
                Some((_, shapes)) => shapes.push(shape.clone()),
                None => keys.push((key, vec![shape.clone()])),
            }
        }
        for (_, shapes) in &mut keys {
            if shapes.len() > 1 {
                shapes.retain(|shape| *shape != Shape::Any);
            }
        }
        let mut required = all.first().map(|notes| notes.required.clone()).unwrap_or_default();
        required.retain(|key| all.iter().all(|notes| notes.required.contains(key)));
        let entries = all.iter().filter_map(|notes| notes.entries.clone());
        Known {
            keys,
            required,
            one_of: all.first().map(|notes| notes.one_of.clone()).unwrap_or_default(),
            entries: entries.max_by_key(|shape| *shape != Shape::Any),
            closed: all.iter().any(|notes| notes.closed),
            says_something: all.iter().all(|notes| notes.says_something),
        }
    }

    /// What a trial changes, by the table's name.
    pub(super) fn effects(&self, trial: &Trial) -> BTreeMap<&str, Effect> {
        let mut effects = BTreeMap::new();
        for (name, base) in &self.base {
            let (known, Some(then)) = (self.known(name), trial.asked.get(name)) else { continue };
            let mut effect = Effect::default();
            let changed = then.required.difference(&base.required).copied();
            effect.required.extend(changed.filter(|key| !known.required.contains(key)));
            let others = || self.trials.iter().filter(|other| trial.is_another(other));
            let of = |other: &Trial, key: &str| other.asked.get(name)?.shape(key).cloned();
            for (key, shapes) in &known.keys {
                let then_shape = then.shape(key).cloned();
                match &then_shape {
                    None if then.closed
                        && (base.has(key) || others().any(|other| of(other, key).is_some())) =>
                    {
                        effect.forbidden.insert(*key);
                    }
                    Some(shape)
                        if shapes.len() > 1
                            && *shape != Shape::Any
                            && others().any(|other| of(other, key) != then_shape) =>
                    {
                        effect.shapes.insert(*key, vec![shape.clone()]);
                    }
                    _ => {}
                }
            }
            if !effect.is_nothing() {
                effects.insert(name.as_str(), effect);
            }
        }
        effects
    }

    /// Keys that are demanded unless one of these trials holds: table, key, trials.
    pub(super) fn unless(&self) -> Vec<(&str, &'static str, Vec<&Trial>)> {
        let mut found = Vec::new();
        for (name, base) in &self.base {
            let known = self.known(name);
            for key in base.required.difference(&known.required) {
                let frees =
                    |trial: &&Trial| trial.asked.get(name).is_some_and(|notes| !notes.required.contains(key));
                found.push((name.as_str(), *key, self.trials.iter().filter(frees).collect()));
            }
        }
        found
    }
}
