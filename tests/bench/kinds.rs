//! Milliseconds a document of each kind takes, and the whole demo set on one process and two.

use std::collections::BTreeMap;
use std::time::Instant;

use bayleaf::document;
use bayleaf::typeset::{Job, Typesetter};

use super::{Bench, ROUNDS, one_thread, peak_memory, print};

/// Each kind, then all of them.
pub(super) fn report() {
    one_thread();
    let scratch = tempfile::tempdir().expect("a temporary folder can be made");
    let bench = Bench::new(scratch.path());
    let typesetter = Typesetter::new(&bench.words.paper_json());
    // By template: documents, pages, the best round's seconds to compose and altogether.
    let mut kinds: BTreeMap<&str, (usize, usize, f64, f64)> = BTreeMap::new();
    for round in 0..ROUNDS {
        let mut spent: BTreeMap<&str, (usize, usize, f64, f64)> = BTreeMap::new();
        for listed in document::list(&bench.model) {
            let started = Instant::now();
            let document = document::compose(bench.context(), &listed).expect("it composes");
            let composed = started.elapsed().as_secs_f64();
            let date = bench.context().date;
            let (id, data) = (&document.id, &document.data);
            let (pages, reading) = (document.pages, document.reading);
            let job = Job { id, template: document.template, data, pages, reading, date };
            let printed = typesetter.pdf(job).expect("it typesets");
            let kind = spent.entry(document.template).or_default();
            kind.0 += 1;
            kind.1 += printed.pages;
            kind.2 += composed;
            kind.3 += started.elapsed().as_secs_f64();
        }
        for (template, new) in spent {
            let best = kinds.entry(template).or_insert(new);
            if round > 0 && new.3 < best.3 {
                *best = new;
            }
        }
    }
    for (template, (documents, pages, composing, all)) in kinds {
        let each = |seconds: f64| seconds * 1000.0 / documents as f64;
        let name = template.trim_end_matches(".typ");
        println!(
            "| {name}: {documents} documents, {pages} pages; each | {:.1} ms, of it {:.2} ms to compose |",
            each(all),
            each(composing)
        );
    }
    for jobs in ["1", "2"] {
        let mut best = (f64::MAX, 0.0);
        for _ in 0..ROUNDS {
            let started = Instant::now();
            let peak = peak_memory(print(scratch.path(), &["--jobs", jobs]));
            let seconds = started.elapsed().as_secs_f64();
            if seconds < best.0 {
                best = (seconds, peak);
            }
        }
        println!("| the whole demo set, {jobs} process(es) | {:.2} s, peak {:.0} MiB |", best.0, best.1);
    }
}
