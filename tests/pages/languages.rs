//! Every kind of paper in every language and system of units: words and figures of any length
//! stay on their pages.

use std::panic::{AssertUnwindSafe, catch_unwind};

use bayleaf::document::{self, Document, Edition};
use bayleaf::quantity::{Temperature, Units};
use bayleaf::typeset::Typesetter;
use bayleaf::words::{Language, Words};

use super::{check_geometry_with, date, demo, job};

/// Every language with both scales, each single scale in English, and in the two languages with
/// the longest words.
const EDITIONS: [(Language, Units); 7] = [
    (Language::German, Units::Both),
    (Language::French, Units::Both),
    (Language::Spanish, Units::Both),
    (Language::English, Units::Metric),
    (Language::English, Units::Us),
    (Language::German, Units::Metric),
    (Language::French, Units::Us),
];

/// Every paper of the demo in a language and system of units, and the proof sheets of a few cards.
fn of_edition(language: Language, units: Units) -> (Typesetter, Vec<Document>) {
    let (model, words) = (demo(), Words::of(language));
    let bay = Some(Temperature::from_celsius(31.0));
    let edition = Edition { bay, units, ..Edition::of(&model, &words) };
    let context = edition.context(&model, &words, date());
    let mut listed = document::list(&model);
    for proof in document::proofs(&model) {
        if !listed.iter().any(|known| known.paperwork == proof.paperwork) {
            listed.push(proof);
        }
    }
    let compose = |listed| document::compose(context, listed).expect("a listed document exists");
    (Typesetter::new(&words.paper_json()), listed.iter().map(compose).collect())
}

#[test]
fn nothing_is_clipped_crowded_or_too_small_in_any_edition() {
    let mut wrong = Vec::new();
    for (language, units) in EDITIONS {
        let (typesetter, documents) = of_edition(language, units);
        for document in &documents {
            let checked = catch_unwind(AssertUnwindSafe(|| check_geometry_with(&typesetter, document)));
            if let Err(panic) = checked {
                let said = panic.downcast_ref::<String>().cloned().unwrap_or_default();
                wrong.push(format!("{} {units:?} {said}", language.code()));
            }
            let pages =
                typesetter.page_count(job(document)).map_err(|failure| failure.said(&Words::english()));
            let foreseen = pages.is_ok() && document.pages == 0 || pages == Ok(document.pages);
            if !foreseen {
                wrong.push(format!(
                    "{} {units:?} {}: {pages:?} pages, not {}",
                    language.code(),
                    document.id,
                    document.pages
                ));
            }
        }
    }
    assert!(wrong.is_empty(), "{}: {wrong:#?}", wrong.len());
}
