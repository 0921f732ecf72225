//! Pages as they are laid out and exported: nothing lost, nothing clipped, nothing too small.

#[path = "pages/cautions.rs"]
mod cautions;
#[path = "pages/changes.rs"]
mod changes;
#[path = "pages/checklists.rs"]
mod checklists;
#[path = "pages/codes.rs"]
mod codes;
#[path = "pages/enclosed.rs"]
mod enclosed;
#[path = "pages/faces.rs"]
mod faces;
#[path = "pages/languages.rs"]
mod languages;
#[path = "pages/layout.rs"]
mod layout;
#[path = "pages/legibility.rs"]
mod legibility;
#[path = "pages/loads.rs"]
mod loads;
#[path = "pages/look.rs"]
mod look;
#[path = "pages/modes.rs"]
mod modes;
#[path = "pages/order.rs"]
mod order;
#[path = "pages/parts.rs"]
mod parts;
#[path = "pages/pull.rs"]
mod pull;
#[path = "pages/reader.rs"]
mod reader;
#[path = "pages/sheets.rs"]
mod sheets;
#[path = "pages/sizes.rs"]
mod sizes;
#[path = "pages/specs.rs"]
mod specs;

use bayleaf::diag::Findings;
use bayleaf::document::{self, Distance, Document, Edition, Reading};
use bayleaf::model::{self, Model};
use bayleaf::quantity::{Temperature, Units};
use bayleaf::rules;
use bayleaf::spec::{self, Set};
use bayleaf::typeset::{Job, Piece, Typesetter};
use bayleaf::words::Words;
use chrono::NaiveDate;
use reader::text_of;
use serde_json::Value;

/// 15 minutes of arc at 400 mm are 1.75 mm of capital height: 6.8 pt in this
/// font; nothing is smaller than 7 pt (NUREG-0700 rev. 3, 11.4.1.5-1, quoted in
/// secondary sources: 0.004 times the distance).
const LEAST_POINTS: f64 = 7.0;

/// The figures of the strip table are read at arm's length.
const LEAST_STRIP_POINTS: f64 = 9.0;

/// A page that marks no parts.
const READ: Reading = Reading { rest: Distance::Hand, parts: &[] };

fn demo() -> Model {
    built(&spec::demo())
}

fn built(sources: &bayleaf::diag::Sources) -> Model {
    let findings = Findings::default();
    let set = Set::read(sources, &findings);
    rules::check(&set, &findings);
    assert!(!findings.has_errors(), "{:?}", findings.sorted());
    model::build(&set).expect("a set without findings makes a model")
}

fn date() -> NaiveDate {
    "2026-11-24".parse().expect("a date")
}

/// Every document that a spec asks for.
fn documents(model: &Model) -> Vec<Document> {
    let mut all = everything(model);
    all.retain(|document| !matches!(document.template, "index.typ" | "proof.typ"));
    all
}

/// Those, the index of them, and a proof sheet for each kind of card.
fn everything(model: &Model) -> Vec<Document> {
    let words = Words::english();
    let bay = Some(Temperature::from_celsius(31.0));
    let edition = Edition { language: words.language(), units: Units::Both, size: None, bay };
    let context = edition.context(model, &words, date());
    let compose = |listed| document::compose(context, listed).expect("a listed document exists");
    let mut listed = document::list(model);
    for proof in document::proofs(model) {
        if !listed.iter().any(|known| known.paperwork == proof.paperwork) {
            listed.push(proof);
        }
    }
    listed.iter().map(compose).collect()
}

fn typesetter() -> Typesetter {
    Typesetter::new(&Words::english().paper_json())
}

fn job(document: &Document) -> Job<'_> {
    Job::of(document, date())
}

/// Without the blanks that align and hold together, and those that wrapping takes.
fn squeezed(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace()).collect()
}

/// Every text of the data that holds a number and stands on the page as it is.
fn printed_texts(value: &Value, texts: &mut Vec<String>) {
    match value {
        Value::String(text) if text.chars().any(|c| c.is_ascii_digit()) => texts.push(text.clone()),
        Value::Array(values) => values.iter().for_each(|value| printed_texts(value, texts)),
        Value::Object(entries) => {
            // Alternative texts are not on the page; paper and outline are not words.
            let unseen = ["alt", "paper", "outline"];
            let shown = entries.iter().filter(|(key, _)| !unseen.contains(&key.as_str()));
            shown.for_each(|(_, value)| printed_texts(value, texts));
        }
        _ => {}
    }
}

#[test]
fn every_number_of_a_document_can_be_read_back_from_its_pdf() {
    let typesetter = typesetter();
    let documents = everything(&demo());
    let mut checked = 0;
    for document in &documents {
        let printed = typesetter.pdf(job(document)).expect("the demo set exports to both standards");
        let text = text_of(&printed.pdf);
        let whole = text.replace(['-', '\u{ad}', '\u{2010}'], "");
        let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
        let mut texts = Vec::new();
        printed_texts(&data, &mut texts);
        for wanted in texts {
            checked += 1;
            // A caution of a narrow card may be broken at a syllable.
            let wanted = squeezed(&wanted);
            let there = text.contains(&wanted) || whole.contains(&wanted.replace('-', ""));
            assert!(there, "{}: `{wanted}` is not in:\n{text}", document.id);
        }
    }
    assert!(checked > 3000, "only {checked} numbers were looked for");
}

#[test]
fn the_demo_set_claims_both_standards_and_is_the_same_twice() {
    let typesetter = typesetter();
    let documents = everything(&demo());
    assert!(documents.len() >= 48, "only {} documents", documents.len());
    for document in &documents {
        let first = typesetter.pdf(job(document)).expect("it exports");
        let second = typesetter.pdf(job(document)).expect("it exports again");
        assert!(first.pdf == second.pdf, "{} differs from run to run", document.id);
        let metadata = String::from_utf8_lossy(&first.pdf);
        for claim in
            ["<pdfaid:part>2</pdfaid:part>", "<pdfaid:conformance>A<", "<pdfuaid:part>1</pdfuaid:part>"]
        {
            assert!(metadata.contains(claim), "{} does not claim {claim}", document.id);
        }
        let foreseen = document.pages == 0 || first.pages == document.pages;
        assert!(foreseen, "{} has {} pages, not {}", document.id, first.pages, document.pages);
    }
}

#[test]
fn a_wrong_expectation_of_pages_changes_nothing() {
    let typesetter = typesetter();
    let documents = documents(&demo());
    let document = documents.iter().find(|document| document.pages == 0).expect("sheets are counted");
    let counted = typesetter.pdf(job(document)).expect("it exports");
    let expected = typesetter.pdf(Job { pages: 7, ..job(document) }).expect("it exports");
    assert!(counted.pdf == expected.pdf);
}

#[test]
fn a_character_without_a_glyph_is_a_failure() {
    let documents = documents(&demo());
    let document = documents.first().expect("there are documents");
    let data = String::from_utf8(document.data.clone()).expect("data is UTF-8");
    let data = data.replacen("Saltmarsh", "Saltm\u{4e2d}rsh", 1);
    let failure = typesetter().pdf(Job { data: data.as_bytes(), ..job(document) });
    assert!(failure.is_err(), "a blank where a character should be must not pass");
}

#[test]
fn a_template_that_warns_is_a_failure() {
    let templates = [("page.typ", "#set document(title: \"x\")\n#set text(font: \"No Such Font\")\nx")];
    let typesetter = Typesetter::with_templates(&templates, "{}");
    let job = Job {
        id: "X",
        template: "page.typ",
        data: b"{}",
        pages: 0,
        sides: 0,
        reading: READ,
        lamination: None,
        date: date(),
        attached: &[],
    };
    let failure = typesetter.pdf(job).expect_err("an unknown font is only a warning to the library");
    let said = failure.said(&Words::english());
    assert!(said.contains("page.typ:2"), "{said}");
}

#[test]
fn nothing_of_the_demo_set_is_clipped_crowded_or_too_small() {
    for document in everything(&demo()) {
        check_geometry(&document);
    }
}

#[test]
fn long_short_and_extreme_content_stays_on_its_pages() {
    let model = built(&specs::extreme());
    let documents = documents(&model);
    assert_eq!(documents.len(), 8);
    for document in &documents {
        check_geometry(document);
        typesetter().pdf(job(document)).expect("it exports to both standards");
    }
}

#[test]
fn mode_request_and_air_cards_of_any_length_stay_on_their_pages() {
    let model = built(&modes::extreme());
    let documents = documents(&model);
    assert_eq!(documents.len(), 6);
    for document in &documents {
        check_geometry(document);
        typesetter().pdf(job(document)).expect("it exports to both standards");
    }
}

#[test]
fn a_mode_card_has_one_page_and_a_box_to_tick_for_every_forced_cell() {
    for document in documents(&demo()).iter().filter(|document| document.template == "mode-card.typ") {
        let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
        let rows = data["modes"].as_array().expect("it has modes");
        let cells = rows.iter().flat_map(|row| row["cells"].as_array().expect("a mode has cells"));
        let forced = cells.filter(|cell| cell["kind"] == "forced").count();
        let pieces = typesetter().pieces(job(document)).expect("it lays out");
        assert!(pieces.iter().all(|piece| piece.page == 1), "{} has more than a page", document.id);
        let is_box = |piece: &&Piece| {
            let [left, top, right, bottom] = piece.area;
            let sides = [right - left, bottom - top];
            piece.text.is_none() && sides.iter().all(|side| (4.99..6.0).contains(side))
        };
        assert!(pieces.iter().filter(is_box).count() >= forced, "{}: {forced} are forced", document.id);
    }
}

#[test]
fn boxes_to_write_in_keep_their_sizes() {
    let documents = documents(&demo());
    // Each test has a box and three ticks; a row of a truth table or a sequence too.
    for (id, tests, fields) in
        [("CUR-SENSORS.AMB-12", 15, 0), ("HER-PARTS.RRV-3", 9 + 13, 11), ("HER-REPORT.RRV-3", 6, 0)]
    {
        let sheet = documents.iter().find(|document| document.id == id).expect("it is listed");
        let pieces = typesetter().pieces(job(sheet)).expect("it lays out");
        let box_count = |width: f64, height: f64, most: f64| {
            let fits = |piece: &&Piece| {
                let [left, top, right, bottom] = piece.area;
                piece.text.is_none()
                    && (right - left) >= width - 0.01
                    && (right - left) <= most
                    && (bottom - top) >= height - 0.01
                    && (bottom - top) <= most
            };
            pieces.iter().filter(fits).count()
        };
        // 30 × 9 mm for a reading (design-of-forms.online spacing allowances), 5 mm
        // for a tick (common practice, no source).
        assert!(
            box_count(30.0, 9.0, 44.0) >= tests + fields,
            "{id}: {} reading boxes",
            box_count(30.0, 9.0, 44.0)
        );
        let ticks = if id.contains("REPORT") { 2 } else { 3 };
        assert!(box_count(5.0, 5.0, 7.0) >= ticks * tests, "{id}: {} tick boxes", box_count(5.0, 5.0, 7.0));
    }
}

/// Every text inside the margins, none on another, none under the legible size.
fn check_geometry(document: &Document) {
    check_geometry_with(&typesetter(), document);
}

fn check_geometry_with(typesetter: &Typesetter, document: &Document) {
    let pieces = typesetter.pieces(job(document)).expect("it lays out");
    let is_card = document.template == "sensor-card.typ";
    let texts: Vec<&Piece> = pieces.iter().filter(|piece| piece.text.is_some() && !piece.turned).collect();
    assert!(texts.len() > 30, "{}: only {} texts", document.id, texts.len());
    for piece in &texts {
        let Some((text, points)) = &piece.text else { continue };
        if text.trim().is_empty() {
            continue;
        }
        let [left, top, right, bottom] = piece.area;
        let (width, height) = piece.page_size;
        let margin = sizes::margin(piece.page_size);
        let inside = left >= margin - 0.1
            && right <= width - margin + 0.1
            && top >= margin - 0.1
            && bottom <= height - margin + 0.1;
        assert!(inside, "{} page {}: `{text}` leaves its page: {:?}", document.id, piece.page, piece.area);
        assert!(*points >= LEAST_POINTS - 1e-6, "{}: `{text}` is {points} pt", document.id);
        let in_strip = is_card && piece.page == 1 && text.starts_with('−') && text.contains(['.', ',']);
        assert!(
            !in_strip || *points >= LEAST_STRIP_POINTS - 1e-6,
            "{}: `{text}` is {points} pt",
            document.id
        );
    }
    for (index, one) in texts.iter().enumerate() {
        for other in &texts[index + 1..] {
            let shared = |low: usize, high: usize| {
                one.area[high].min(other.area[high]) - one.area[low].max(other.area[low])
            };
            let blank = |piece: &Piece| piece.text.as_ref().is_none_or(|(text, _)| text.trim().is_empty());
            let overlap = one.page == other.page && shared(0, 2) > 0.3 && shared(1, 3) > 0.3;
            assert!(
                !overlap || blank(one) || blank(other),
                "{} page {}: {:?} lies on {:?}",
                document.id,
                one.page,
                one.text,
                other.text
            );
        }
    }
}
