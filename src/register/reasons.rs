//! Which changed value moved which cell: found by putting each back alone.

use std::collections::{BTreeMap, BTreeSet};

use rayon::prelude::*;

use super::cause::{self, Changed};
use super::entry::Entry;
use super::kept::Kept;
use super::plan::{Pair, Spoken, Today};
use crate::diag::{Findings, Sources};
use crate::document::{self, Codes, Context};
use crate::model::{self, Model};
use crate::rules;
use crate::spec::{Set, Texts};

/// More values than this are named as changed, but not tried one by one.
const MOST_TRIED: usize = 60;

/// Models with one value as it was, by the name of the change; none where it cannot be put back.
type Tried = BTreeMap<(String, String), Option<(Model, Codes)>>;

/// Names the values behind every changed document and cell.
pub(super) fn explain(today: &Today<'_>, spoken: &Spoken, pairs: &[Option<Pair>], entries: &mut [Entry]) {
    // Papers of one system carry the same specs.
    let mut states: BTreeMap<(&Texts, &Texts), Vec<Changed>> = BTreeMap::new();
    let mut tried = Tried::new();
    for pair in pairs.iter().flatten() {
        let state = (&*pair.before, &*pair.today);
        let changed = states.entry(state).or_insert_with(|| cause::changed(&pair.before, &pair.today));
        // What is alone stands behind all of it.
        let is_alone = pair.is_of_specs && changed.len() == 1;
        if !is_alone && tried.len() + changed.len() <= MOST_TRIED {
            for value in changed {
                let model = || cause::put_back(today.texts, value).and_then(|texts| built(&texts));
                let tried = tried.entry(value.name());
                tried.or_insert_with(|| model().map(|model| (model, Codes::default())));
            }
        }
    }
    entries.par_iter_mut().zip(pairs).for_each(|(entry, pair)| {
        let Some(pair) = pair else { return };
        if let Some(changed) = states.get(&(&*pair.before, &*pair.today)) {
            explain_one(today, spoken, pair, &tried, changed, entry);
        }
    });
}

fn explain_one(
    today: &Today<'_>,
    spoken: &Spoken,
    pair: &Pair,
    tried: &Tried,
    changed: &[Changed],
    entry: &mut Entry,
) {
    for value in changed {
        let tried = tried.get(&value.name()).and_then(Option::as_ref);
        let then = tried.and_then(|tried| said_with(today, spoken, tried, entry));
        let Some(difference) = &mut entry.difference else { return };
        let Some(differing) = then.as_ref().and_then(|then| differing(&pair.now, then)) else { continue };
        for moved in difference.moved.iter_mut().filter(|moved| moved.key.is_none()) {
            if differing.contains(moved.pointer.as_str()) {
                moved.key = Some(value.because.key.clone());
            }
        }
        difference.because.push(value.because.clone());
    }
    let Some(difference) = &mut entry.difference else { return };
    // What no single value explains: all that changed stands behind it.
    if difference.because.is_empty() {
        difference.because = changed.iter().map(|value| value.because.clone()).collect();
    }
    if let [only] = difference.because.as_slice() {
        let unexplained = difference.moved.iter_mut().filter(|moved| moved.key.is_none());
        unexplained.for_each(|moved| moved.key = Some(only.key.clone()));
    }
}

/// The cells of today that would read otherwise; nothing where none would.
fn differing<'a>(now: &'a Kept, then: &'a Kept) -> Option<BTreeSet<&'a str>> {
    let (beside, gone) = now.beside(then);
    let differing: BTreeSet<&str> = (beside.iter())
        .filter(|(cell, other)| other.is_none_or(|other| other.meant != cell.meant))
        .map(|(cell, _)| cell.at.as_str())
        .collect();
    (!gone.is_empty() || !differing.is_empty()).then_some(differing)
}

/// What a document would say of another model.
fn said_with(
    today: &Today<'_>,
    spoken: &Spoken,
    (model, codes): &(Model, Codes),
    entry: &Entry,
) -> Option<Kept> {
    let (words, _) = spoken.in_language(entry.edition.language)?;
    let context = entry.edition.context(model, words, today.date);
    let context = Context { codes: Some(codes), ..context };
    let content = document::content(context, entry.listed.as_ref()?)?;
    Some(Kept::of(content.cells(), &serde_json::Value::Null))
}

/// The model of a set's texts, where it is free of errors.
fn built(texts: &Texts) -> Option<Model> {
    let mut sources = Sources::default();
    for (path, text) in texts {
        sources.add(path.clone(), text.clone());
    }
    let findings = Findings::default();
    let set = Set::read(&sources, &findings);
    rules::check(&set, &findings);
    if findings.has_errors() { None } else { model::build(&set) }
}
