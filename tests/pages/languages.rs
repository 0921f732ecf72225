//! Every kind of paper in every language and system of units: words and figures of any length
//! stay on their pages.

use std::collections::BTreeSet;
use std::panic::{AssertUnwindSafe, catch_unwind};

use bayleaf::document::{self, Document, Edition, Paperwork};
use bayleaf::quantity::{Temperature, Units};
use bayleaf::typeset::{Piece, Typesetter};
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

/// What a word that is broken at a syllable ends its line with.
const SOFT_HYPHEN: &str = "\u{ad}";

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

/// Without a bay temperature a window's place is taken by words, which are longest in German.
#[test]
fn sheets_without_a_bay_temperature_fit_in_every_language() {
    let model = demo();
    for language in Language::ALL {
        let words = Words::of(*language);
        let typesetter = Typesetter::new(&words.paper_json());
        let edition = Edition { bay: None, ..Edition::of(&model, &words) };
        let mut sheets = 0;
        for listed in document::list(&model) {
            if !matches!(listed.paperwork, Paperwork::TestSheet { .. } | Paperwork::Report { .. }) {
                continue;
            }
            let document = document::compose(edition.context(&model, &words, date()), &listed);
            check_geometry_with(&typesetter, &document.expect("it composes"));
            sheets += 1;
        }
        assert!(sheets > 15, "{sheets}");
    }
}

/// A narrow column of the program's own words breaks them at syllables of their language; what a
/// lead typed, ids and figures stay whole.
///
/// # Source
/// Syllables as dictionaries of the languages have them (from memory).
#[test]
fn cautions_of_a_narrow_card_break_at_syllables_and_nothing_else_does() {
    for (language, expected) in [
        (Language::English, vec!["them-selves", "ve-hicle", "vehi-cle"]),
        (Language::Spanish, vec!["Cir-cuito", "Desconec-tar", "arran-can", "prue-ba"]),
    ] {
        let (typesetter, documents) = of_edition(language, Units::Both);
        let mut broken = BTreeSet::new();
        for document in documents.iter().filter(|document| document.id.ends_with("-STRIP")) {
            let pieces = typesetter.pieces(job(document)).expect("it lays out");
            let text = |piece: &Piece| piece.text.as_ref().map(|(text, _)| text.clone()).unwrap_or_default();
            for three in pieces.windows(3).filter(|three| text(&three[1]) == SOFT_HYPHEN) {
                let (before, after) = (text(&three[0]), text(&three[2]));
                let last = before.split_whitespace().next_back().unwrap_or_default();
                let first: String = after.chars().take_while(|char| char.is_alphabetic()).collect();
                broken.insert(format!("{last}-{first}"));
            }
        }
        assert_eq!(broken.into_iter().collect::<Vec<_>>(), expected, "{}", language.code());
    }
}
