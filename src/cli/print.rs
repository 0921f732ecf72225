//! `bayleaf print`: shares the documents out over worker processes.
//!
//! Threads share the typesetting library's caches and their locks; processes
//! do not, and scale best. The parent takes a share of its own and shows what
//! the others report.

mod batch;
mod crew;
mod plan;
mod sheets;
mod summary;

use std::io::{self, IsTerminal};
use std::time::Instant;

use chrono::NaiveDate;

use super::args::{Print, Share};
use super::load::{Loaded, announce, load};
use super::outcome::{Outcome, fail, unwritten, warn};
use super::register::standing::standing;
use super::sizes;
use super::templates::Templates;
use crate::diag::{nearest, reason};
use crate::document::{self, Codes, Context, Listed, Paperwork};
use crate::typeset::Leaf;
use crate::words::{Language, Message, Words};
use batch::{Batch, Told};
use plan::Plan;
use sheets::{Bundled, Kept};
use summary::Summary;

/// Runs the command.
pub(super) fn run(arguments: &Print, language: Option<Language>) -> Outcome {
    let started = Instant::now();
    let is_worker = arguments.worker.is_some();
    let loaded = match load(arguments.specs.specs.as_deref(), language, is_worker) {
        Ok(loaded) => loaded,
        Err(outcome) => return outcome,
    };
    let words = &loaded.words;
    let templates = match Templates::load(arguments.edition.templates.as_deref()) {
        Ok(templates) => templates,
        Err(message) => return fail(words, &message),
    };
    let digest = loaded.digest.clone() + &templates.digest();
    if arguments.digest.as_ref().is_some_and(|known| *known != digest) {
        return fail(words, &Message::new("run-specs-changed"));
    }
    let listed = match select(&loaded, arguments) {
        Ok(listed) => listed,
        Err(message) => return fail(words, &message),
    };
    let codes = Codes::default();
    let context = arguments.edition.context(&loaded.model, words);
    let context = Context { codes: Some(&codes), ..context };
    if let Err(message) = sizes::refuse(context, listed.iter()) {
        return fail(words, &message);
    }
    let batch = match Batch::new(context, arguments, templates) {
        Ok(batch) => batch,
        Err(error) => return fail(words, &unwritten(&arguments.out, &error)),
    };
    // The index says how many pages the others came to have.
    let (index, listed): (Vec<Listed>, Vec<Listed>) =
        listed.into_iter().partition(|listed| listed.paperwork == Paperwork::Index);
    let plan = if arguments.sheet.is_some() { Plan::of_sheets(listed) } else { Plan::of_documents(listed) };
    if let Some(worker) = arguments.worker {
        return batch.work(&plan.share(worker));
    }
    // Paper comes first: a first line that nobody reads stops no printing.
    let announced = announce(&loaded.from, words);
    let templates = batch.templates();
    let unread = templates.show_unread(words);
    for path in &templates.strangers {
        warn(words, &Message::new("run-strange-template").with("path", path));
    }
    outside_range(&loaded, &plan, context, words);
    let summary = Summary::new(started, words, plan.documents() + index.len(), announced);
    let printed =
        lead(&loaded, (arguments, language), context.date, &batch, (&plan, &index), &digest, summary);
    printed.or_findings(unread)
}

/// Prints a share of its own while workers print theirs, then the index, and sums up.
fn lead(
    loaded: &Loaded,
    (arguments, language): (&Print, Option<Language>),
    date: NaiveDate,
    batch: &Batch<'_>,
    (plan, index): (&Plan, &[Listed]),
    digest: &str,
    mut summary: Summary<'_>,
) -> Outcome {
    let processors = std::thread::available_parallelism().map_or(1, usize::from);
    let wanted = arguments.jobs.map_or(processors, |jobs| usize::try_from(jobs).unwrap_or(1));
    let jobs = wanted.min(plan.units()).max(1);
    let crew = match crew::start((arguments, language), date, digest, jobs) {
        Ok(crew) => crew,
        Err(error) => {
            return fail(summary.words(), &Message::new("run-no-worker").with("reason", reason(&error)));
        }
    };
    let progress = io::stderr().is_terminal();
    let mut kept = Kept::default();
    for unit in plan.share(Share { index: 0, of: jobs }) {
        batch.print(unit, &mut kept, &mut |told| {
            summary.add(told);
            crew.reports().for_each(|told| summary.add(told));
            if progress {
                summary.show_progress();
            }
        });
    }
    for told in crew.remaining() {
        summary.add(told);
        if progress {
            summary.show_progress();
        }
    }
    if batch.press().is_some() {
        let left = left_over(batch, plan, &mut kept, &summary);
        summary.add(Told::Sheets(left));
    }
    for listed in index {
        let issued = standing(loaded, &arguments.specs, &arguments.edition);
        let report = batch.print_index(listed, summary.printed(), &issued);
        summary.add(Told::Document(report));
    }
    let lost = crew.wait();
    summary.finish((&arguments.out, batch.press()), batch.templates(), lost)
}

/// Prints what filled no sheet, in the order of the list.
fn left_over(batch: &Batch<'_>, plan: &Plan, kept: &mut Kept, summary: &Summary<'_>) -> Bundled {
    let mut leaves: Vec<Leaf> = Vec::new();
    for listed in plan.listed() {
        let of_this: Vec<&(String, usize)> = summary.left().filter(|(id, _)| *id == listed.id).collect();
        let mut again: Option<Vec<Leaf>> = None;
        for name in of_this {
            let leaf = kept.take(name).or_else(|| {
                let all = again.get_or_insert_with(|| batch.leaves(listed));
                all.iter().find(|leaf| leaf.number == name.1).cloned()
            });
            leaves.extend(leaf);
        }
    }
    batch.imposed(plan.bundles() + 1, leaves)
}

/// The share of this run, in the order of the list.
fn select(loaded: &Loaded, arguments: &Print) -> Result<Vec<Listed>, Message> {
    let chosen = chosen(loaded, &arguments.ids, arguments.proofs)?;
    if chosen.is_empty() {
        return Err(Message::new("run-nothing-to-print"));
    }
    let shard = arguments.shard;
    let mine = chosen.into_iter().enumerate().filter(|(number, _)| shard.has(*number));
    Ok(mine.map(|(_, listed)| listed).collect())
}

/// The documents that are meant by the ids, all where there are none, in the order of the list.
pub(super) fn chosen(loaded: &Loaded, ids: &[String], proofs: bool) -> Result<Vec<Listed>, Message> {
    let mut all = document::list(&loaded.model);
    // Who names a proof sheet wants it.
    let sheets = document::proofs(&loaded.model).into_iter();
    all.extend(sheets.filter(|sheet| proofs || ids.contains(&sheet.id)));
    if let Some(id) = ids.iter().find(|id| !all.iter().any(|listed| listed.is_meant_by(id))) {
        return Err(no_such_document(loaded, &all, id));
    }
    all.retain(|listed| ids.is_empty() || ids.iter().any(|id| listed.is_meant_by(id)));
    Ok(all)
}

/// Says that no document has this name, and which one has the nearest.
pub(super) fn no_such_document(loaded: &Loaded, all: &[Listed], id: &str) -> Message {
    let known = all.iter().flat_map(|listed| [listed.id.as_str(), listed.spec.as_str()]);
    match nearest(id, known.chain(loaded.model.vehicles.keys().map(String::as_str))) {
        Some(near) => Message::new("run-no-such-document-near").with("id", id).with("near", near),
        None => Message::new("run-no-such-document").with("id", id),
    }
}

/// Warns when the bay temperature lies outside a sensor's range.
fn outside_range(loaded: &Loaded, plan: &Plan, context: Context<'_>, words: &Words) {
    let Some(at) = context.bay else { return };
    let mut sheets: Vec<&str> = plan.listed().map(|listed| listed.spec.as_str()).collect();
    sheets.dedup();
    let used = sheets.iter().filter_map(|id| loaded.model.sheets.get(*id));
    let mut sensors: Vec<&str> = used
        .flat_map(|sheet| &sheet.groups)
        .flat_map(|group| &group.rows)
        .filter_map(|row| row.sensor())
        .collect();
    sensors.sort_unstable();
    sensors.dedup();
    for sensor in sensors.iter().filter_map(|id| loaded.model.sensors.get(*id)) {
        if !sensor.range.contains(&at) {
            let message = Message::new("run-bay-outside")
                .with("at", at.to_hundredths())
                .with("id", &sensor.id)
                .with("low", sensor.range.low.to_hundredths())
                .with("high", sensor.range.high.to_hundredths());
            warn(words, &message);
        }
    }
}
