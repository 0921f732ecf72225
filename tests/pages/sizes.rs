//! Every kind of paper in every size it is laid out for; small cards measured on the raster.

use std::collections::BTreeMap;

use bayleaf::document::{self, Context, Document, Edition, Trial};
use bayleaf::model::{Model, offered};
use bayleaf::quantity::{Size, Step, Temperature, Units};
use bayleaf::spec::PaperKind;
use bayleaf::typeset::{Picture, Piece, Typesetter};
use bayleaf::words::{Language, Words};

use super::{check_geometry, check_geometry_with, date, demo, job, typesetter};

/// How many papers of a kind are looked at in each size.
const OF_A_KIND: usize = 2;

const PPI: f64 = 200.0;

/// The margin of a size, in millimetres, as the theme has it.
pub(super) fn margin((width, height): (f64, f64)) -> f64 {
    match width.max(height) {
        longest if longest < 160.0 => 5.0,
        longest if longest < 220.0 => 8.0,
        _ => 14.0,
    }
}

fn in_size(model: &Model, size: Size) -> Vec<Document> {
    in_edition(model, size, (Language::English, Units::Both), OF_A_KIND)
}

/// So many papers of every kind that is laid out for a size.
fn in_edition(
    model: &Model,
    size: Size,
    (language, units): (Language, Units),
    of_a_kind: usize,
) -> Vec<Document> {
    let words = Words::of(language);
    let bay = Some(Temperature::from_celsius(31.0));
    // A strip table of few rows is on two sides of every size.
    let trial = Trial { step: Some(Step::of_kelvins(10.0)), sides: Some(2) };
    let edition = Edition { language: words.language(), units, size: Some(size), bay };
    let context = Context { trial, ..edition.context(model, &words, date()) };
    let mut seen: BTreeMap<PaperKind, usize> = BTreeMap::new();
    let mut listed = document::list(model);
    // From the end, then from the front: one paper of each system.
    listed.reverse();
    listed.extend(document::proofs(model));
    let few = listed.into_iter().filter(|listed| {
        let kind = listed.paperwork.kind();
        let count = seen.entry(kind).or_default();
        let wanted = offered::sizes(kind).any(|offered| offered == size) && *count < of_a_kind;
        *count += usize::from(wanted);
        wanted
    });
    few.map(|listed| document::compose(context, &listed).expect("a listed document exists")).collect()
}

#[test]
fn every_kind_keeps_to_its_pages_in_every_size_it_is_laid_out_for() {
    let model = demo();
    for size in Size::all() {
        let documents = in_size(&model, size);
        for document in &documents {
            check_geometry(document);
            let pieces = typesetter().pieces(job(document)).expect("it lays out");
            let (width, height) = size.millimetres();
            let as_asked = |piece: &Piece| {
                (piece.page_size.0 - width).abs() < 0.01 && (piece.page_size.1 - height).abs() < 0.01
            };
            assert!(pieces.iter().all(as_asked), "{} is not {size}", document.id);
            typesetter().page_count(job(document)).unwrap_or_else(|failure| {
                panic!("{} in {size}: {}", document.id, failure.said(&Words::english()))
            });
        }
        let expected = if size.format.millimetres().0 > 120.0 { 2 } else { 0 };
        assert!(documents.len() >= expected, "{size}: {} documents", documents.len());
    }
}

#[test]
fn every_kind_keeps_to_its_pages_in_every_size_and_every_other_language() {
    let model = demo();
    let mut seen = 0;
    for language in Language::ALL.iter().filter(|language| **language != Language::English) {
        let typesetter = Typesetter::new(&Words::of(*language).paper_json());
        for size in Size::all() {
            for document in in_edition(&model, size, (*language, Units::Both), 1) {
                check_geometry_with(&typesetter, &document);
                seen += 1;
            }
        }
    }
    assert!(seen > 200, "only {seen} documents");
}

#[test]
fn every_kind_keeps_to_its_pages_in_every_size_scale_and_language() {
    let model = demo();
    let mut seen = 0;
    let mut wrong = Vec::new();
    for language in Language::ALL {
        let words = Words::of(*language);
        let typesetter = Typesetter::new(&words.paper_json());
        for size in Size::all() {
            for units in [Units::Us, Units::Metric] {
                for document in in_edition(&model, size, (*language, units), 1) {
                    check_geometry_with(&typesetter, &document);
                    if let Err(failure) = typesetter.page_count(job(&document)) {
                        let (id, code) = (&document.id, language.code());
                        wrong.push(format!("{id} in {size}, {units:?}, {code}: {}", failure.said(&words)));
                    }
                    seen += 1;
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{}: {wrong:#?}", wrong.len());
    assert!(seen > 500, "only {seen} documents");
}

/// A strip whose step is not the lead's has as many rows as its paper holds.
#[test]
fn a_step_that_the_program_chooses_fits_every_size_and_language() {
    let mut model = demo();
    let bay = None;
    let ids: Vec<String> =
        model.cards.values().filter(|card| card.strip.is_some()).map(|card| card.id.clone()).collect();
    for id in &ids {
        let card = model.cards.get_mut(id).expect("a card");
        (card.step, card.range) = (None, None);
    }
    let all = document::list(&model);
    let mut too_many: Vec<String> = Vec::new();
    for language in Language::ALL {
        let words = Words::of(*language);
        for (size, sides) in Size::all().flat_map(|size| [(size, 1), (size, 2)]) {
            // Pins and cautions leave a low side a few rows at best: such a card has two.
            if sides == 1 && size.millimetres().1 < 110.0 {
                continue;
            }
            let trial = Trial { step: None, sides: Some(sides) };
            let edition = Edition { language: *language, units: Units::Both, size: Some(size), bay };
            let context = Context { trial, ..edition.context(&model, &words, date()) };
            for listed in all.iter().filter(|listed| ids.contains(&listed.id)) {
                let document = document::compose(context, listed).expect("a listed document exists");
                if let Err(failure) = typesetter().page_count(job(&document)) {
                    let said = failure.said(&words);
                    too_many.push(format!("{} in {size}, {sides}, {}: {said}", document.id, language.code()));
                }
            }
        }
    }
    assert!(too_many.is_empty(), "{too_many:#?}");
}

#[test]
fn small_cards_are_as_large_as_their_names_say() {
    let model = demo();
    // ISO 216 for A6 (from memory); the others are their own names, an inch is 25.4 mm.
    for (name, width, height) in
        [("A6", 105.0, 148.0), ("4x6 in", 4.0 * 25.4, 6.0 * 25.4), ("100x150 mm", 100.0, 150.0)]
    {
        let size = Size::named(name).expect("a size");
        for document in in_size(&model, size) {
            let pictures = typesetter().pictures(job(&document), Picture::Png { ppi: PPI }).expect("it fits");
            for picture in &pictures {
                let (columns, rows, _) = pixels(picture);
                let nominal = |millimetres: f64| millimetres / 25.4 * PPI;
                let near = |count: usize, millimetres| (count as f64 - nominal(millimetres)).abs() <= 1.0;
                assert!(
                    near(columns, width) && near(rows, height),
                    "{} in {name}: {columns} × {rows}",
                    document.id
                );
            }
        }
    }
}

#[test]
fn text_stands_out_from_what_is_behind_it() {
    let model = demo();
    for name in ["A6", "A5", "A4"] {
        for document in in_size(&model, Size::named(name).expect("a size")) {
            let typesetter = typesetter();
            let pictures = typesetter.pictures(job(&document), Picture::Png { ppi: PPI }).expect("it fits");
            let pieces = typesetter.pieces(job(&document)).expect("it lays out");
            let pages: Vec<_> = pictures.iter().map(|picture| pixels(picture)).collect();
            // The draft mark is turned, and is no text to be read.
            for piece in pieces.iter().filter(|piece| piece.text.is_some() && !piece.blank() && !piece.turned)
            {
                let (columns, rows, grey) = &pages[piece.page - 1];
                let at = |millimetres: f64, most: usize| {
                    ((millimetres / 25.4 * PPI).max(0.0) as usize).min(most - 1)
                };
                let [left, top, right, bottom] = piece.area;
                let (mut darkest, mut lightest) = (255_u8, 0_u8);
                for row in at(top, *rows)..=at(bottom, *rows) {
                    for column in at(left, *columns)..=at(right, *columns) {
                        let value = grey[row * columns + column];
                        darkest = darkest.min(value);
                        lightest = lightest.max(value);
                    }
                }
                let ratio = (luminance(lightest) + 0.05) / (luminance(darkest) + 0.05);
                // WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text.
                assert!(
                    ratio >= 4.5,
                    "{} in {name}, page {}: {:?} has {ratio:.1}",
                    document.id,
                    piece.page,
                    piece.text
                );
            }
        }
    }
}

#[test]
fn relative_luminance_is_that_of_its_definition() {
    // WCAG 2.2, contrast ratio: black on white is 21 to 1; #767676 on white is the lightest
    // grey of 4.5 to 1 (4.54, in many secondary sources).
    let ratio = |grey: u8| (luminance(255) + 0.05) / (luminance(grey) + 0.05);
    assert!((ratio(0) - 21.0).abs() < 1e-9);
    assert!((ratio(0x76) - 4.54).abs() < 0.01 && ratio(0x77) < 4.5);
}

/// The relative luminance of a grey.
///
/// # Source
/// WCAG 2.2, definition of relative luminance (from memory).
fn luminance(grey: u8) -> f64 {
    let part = f64::from(grey) / 255.0;
    if part <= 0.04045 { part / 12.92 } else { libm::pow((part + 0.055) / 1.055, 2.4) }
}

/// Columns, rows and grey values of a PNG.
fn pixels(picture: &[u8]) -> (usize, usize, Vec<u8>) {
    let mut reader = png::Decoder::new(std::io::Cursor::new(picture)).read_info().expect("it is a PNG");
    let mut grey = vec![0; reader.output_buffer_size().expect("it has a size")];
    let frame = reader.next_frame(&mut grey).expect("it has an image");
    (frame.width as usize, frame.height as usize, grey)
}
