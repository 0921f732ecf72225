//! Issued papers: revision, date and who; a bar and a symbol beside every changed text, and the
//! list of changes, on every kind of paper.

use bayleaf::document::{self, Document, Edition, Moved, Since, Stamp};
use bayleaf::model::Model;
use bayleaf::quantity::{Size, Temperature};
use bayleaf::typeset::{Piece, Typesetter};
use bayleaf::words::{Language, Words};
use serde_json::Value;

use super::reader::text_of;
use super::{check_geometry_with, date, demo, job, squeezed};

/// Every `every`th text of the data that holds a digit, with its pointer.
fn texts(value: &Value, pointer: &str, all: &mut Vec<(String, String)>) {
    match value {
        Value::String(text) if text.chars().any(|c| c.is_ascii_digit()) => {
            all.push((pointer.to_owned(), text.clone()));
        }
        Value::Array(values) => {
            for (index, value) in values.iter().enumerate() {
                texts(value, &format!("{pointer}/{index}"), all);
            }
        }
        Value::Object(entries) => {
            // A head over several columns changes in all of them.
            let unseen = ["alt", "paper", "outline", "furniture", "head"];
            for (key, value) in entries.iter().filter(|(key, _)| !unseen.contains(&key.as_str())) {
                texts(value, &format!("{pointer}/{key}"), all);
            }
        }
        _ => {}
    }
}

/// A second issue of a document in which every `every`th figure changed.
fn stamp(document: &Document, every: usize) -> Stamp {
    let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
    let mut all = Vec::new();
    texts(&data, "", &mut all);
    let moved = all.into_iter().step_by(every).map(|(pointer, new)| Moved {
        place: pointer.trim_start_matches('/').replace('/', ", "),
        pointer,
        old: "4.70 kΩ".to_owned(),
        new,
        key: Some("sensor.curlew-evap.pull_up".to_owned()),
    });
    let why = "Pull-up of the control unit corrected after measurement".to_owned();
    let since = Since { revision: 1, why, moved: moved.collect(), is_known: true };
    Stamp { revision: 2, date: date(), by: "WB".to_owned(), since: Some(since) }
}

/// Every paper that is issued, as it is issued the second time.
fn issued(model: &Model, words: &Words, every: usize) -> Vec<(Document, Stamp)> {
    let bay = Some(Temperature::from_celsius(31.0));
    let context = Edition { bay, ..Edition::of(model, words) }.context(model, words, date());
    let listed = document::list(model);
    let both = listed.iter().map(|listed| {
        let draft = document::compose(context, listed).expect("a listed document exists");
        let stamp = stamp(&draft, every);
        (draft.issued(words, &stamp), stamp)
    });
    both.collect()
}

/// The bars among the pieces: upright black shapes in the margin.
fn bars(pieces: &[Piece]) -> Vec<&Piece> {
    let in_margin = |piece: &&Piece| {
        let [left, _, right, _] = piece.area;
        let margin = super::sizes::margin(piece.page_size);
        right <= margin - 0.2 || left >= piece.page_size.0 - margin + 0.2
    };
    pieces.iter().filter(|piece| piece.text.is_none()).filter(in_margin).collect()
}

/// All that is asked of an issued paper.
fn check(typesetter: &Typesetter, document: &Document, stamp: &Stamp) {
    let id = &document.id;
    check_geometry_with(typesetter, document);
    let pieces = typesetter.pieces(job(document)).expect("it lays out");
    let bars = bars(&pieces);
    let since = stamp.since.as_ref().expect("it is a second issue");
    assert!(since.moved.is_empty() || bars.len() >= 2, "{id} has no mark");
    for bar in &bars {
        let [left, _, right, _] = bar.area;
        // The margins of the smallest papers are 5 mm, less half a line.
        let edge = if bar.page_size.0.min(bar.page_size.1) < 120.0 { 3.8 } else { 5.0 };
        assert!(left >= edge - 0.01 && right <= bar.page_size.0 - edge + 0.01, "{id}: {:?}", bar.area);
        let touched = pieces.iter().find(|piece| {
            let shared = |low: usize, high: usize| {
                piece.area[high].min(bar.area[high]) - piece.area[low].max(bar.area[low])
            };
            let same = piece.page == bar.page
                && piece.area.map(f64::to_bits) != bar.area.map(f64::to_bits)
                && !piece.turned;
            same && !piece.blank() && shared(0, 2) > 0.0 && shared(1, 3) > 0.0
        });
        assert!(touched.is_none(), "{id} page {}: {:?}, {touched:?}", bar.page, bar.area);
    }
    let printed = typesetter.pdf(job(document)).expect("it exports to both standards");
    assert!(document.pages == 0 || printed.pages == document.pages, "{id}: {} pages", printed.pages);
    let text = text_of(&printed.pdf);
    assert!(text.contains(&format!("{id}r2")), "{id}: no revision");
    // Every page has the line.
    let count = since.moved.len().to_string();
    let says_so = |page: &usize| {
        let on_page = pieces.iter().filter(|piece| piece.page == *page);
        let all: String = on_page.filter_map(|piece| Some(piece.text.as_ref()?.0.as_str())).collect();
        all.contains("r1") && all.contains("▶▌") && all.contains(&count)
    };
    assert!((1..=printed.pages).all(|page| says_so(&page)), "{id}: a page without the line");
    // A card may be full, a report is one page, a strip card has the sides its lead says;
    // whatever else has the list.
    let is_sheet = pieces.first().is_some_and(|piece| piece.page_size.0 > 150.0) && document.pages == 0;
    if is_sheet && !["report.typ", "strip-card.typ"].contains(&document.template) {
        for listed in ["sensor.curlew-evap.pull_up", &since.why] {
            assert!(since.moved.is_empty() || text.contains(&squeezed(listed)), "{id}: no list");
        }
    }
    assert!(!text.contains(['\u{fe00}', '\u{fe01}']), "{id}: a mark is text");
}

#[test]
fn every_kind_of_issued_paper_has_its_marks_and_nothing_touches() {
    let (model, words) = (demo(), Words::english());
    let typesetter = Typesetter::new(&words.paper_json());
    for (document, stamp) in issued(&model, &words, 1) {
        check(&typesetter, &document, &stamp);
    }
}

#[test]
fn one_changed_figure_in_seven_of_each_kind_in_every_language() {
    let model = demo();
    for language in Language::ALL {
        let words = Words::of(*language);
        let typesetter = Typesetter::new(&words.paper_json());
        let mut met: Vec<&str> = Vec::new();
        for (document, stamp) in issued(&model, &words, 7) {
            if !met.contains(&document.template) {
                met.push(document.template);
                check(&typesetter, &document, &stamp);
            }
        }
        assert!(met.len() >= 15, "{met:?}");
    }
}

/// The sensor card of the demo, issued with the changes made of its own figures.
fn card(change: impl Fn(&mut Stamp)) -> (Document, Stamp) {
    let (model, words) = (demo(), Words::english());
    let context = Edition::of(&model, &words).context(&model, &words, date());
    let listed = document::list(&model).into_iter().find(|listed| listed.id == "CUR-EVAP");
    let listed = listed.expect("the demo has it");
    let draft = document::compose(context, &listed).expect("it composes");
    let mut stamp = stamp(&draft, 1);
    change(&mut stamp);
    (draft.issued(&words, &stamp), stamp)
}

#[test]
fn an_issued_page_says_which_revision_when_and_by_whom_and_is_no_draft() {
    let typesetter = Typesetter::new(&Words::english().paper_json());
    let (first, _) = card(|stamp| *stamp = Stamp { revision: 1, since: None, ..stamp.clone() });
    let pieces = typesetter.pieces(job(&first)).expect("it lays out");
    assert!(bars(&pieces).is_empty(), "nothing changed in a first issue");
    let text = text_of(&typesetter.pdf(job(&first)).expect("it exports").pdf);
    assert!(text.contains("issued2026-11-24byWB") && !text.contains("DRAFT"), "{text}");
    assert!(!text.contains("Changedsince"), "{text}");
}

#[test]
fn a_mark_stands_at_the_height_of_its_cell() {
    let typesetter = Typesetter::new(&Words::english().paper_json());
    let (document, stamp) = card(|stamp| {
        let since = stamp.since.as_mut().expect("a second issue");
        since.moved.retain(|moved| moved.pointer == "/strip/rows/3/0");
    });
    let moved = &stamp.since.as_ref().expect("a second issue").moved[0];
    let pieces = typesetter.pieces(job(&document)).expect("it lays out");
    let bars = bars(&pieces);
    assert_eq!(bars.len(), 2, "a bar and its symbol: {bars:?}");
    let cell: Vec<f64> = pieces
        .iter()
        .filter(|piece| piece.page == 1 && piece.area[0] < 40.0)
        .filter(|piece| piece.text.as_ref().is_some_and(|(text, _)| moved.new.ends_with(text)))
        .map(|piece| piece.area[3])
        .collect();
    let [_, top, _, bottom] = bars[0].area;
    assert!(cell.iter().any(|line| top < *line && *line < bottom), "{bars:?} beside {cell:?}");
    let text = text_of(&typesetter.pdf(job(&document)).expect("it exports").pdf);
    let listed = squeezed("strip, rows, 3, 0 4.70 kΩ") + &squeezed(&moved.new);
    assert!(text.contains(&listed), "{text}");
}

#[test]
fn what_finds_no_room_in_the_list_is_counted() {
    let typesetter = Typesetter::new(&Words::english().paper_json());
    let (document, stamp) = card(|_| ());
    let text = text_of(&typesetter.pdf(job(&document)).expect("it exports").pdf);
    let shown = text.matches("sensor.curlew-evap.pull_up").count();
    let all = stamp.since.expect("a second issue").moved.len();
    assert!(0 < shown && shown < all);
    assert!(text.contains(&format!("…{}more", all - shown)), "{shown} of {all}: {text}");
}

#[test]
fn a_key_without_a_space_stays_on_the_smallest_papers() {
    let (model, words) = (demo(), Words::english());
    let typesetter = Typesetter::new(&words.paper_json());
    let listed = document::list(&model).into_iter().find(|listed| listed.id == "CUR-EVAP-STRIP");
    let listed = listed.expect("the demo has it");
    for size in ["A6", "4x6 in", "100x150 mm"] {
        let size = Size::named(size);
        assert!(size.is_some(), "it is one");
        let context = Edition { size, ..Edition::of(&model, &words) }.context(&model, &words, date());
        let draft = document::compose(context, &listed).expect("it composes");
        let mut stamp = stamp(&draft, 1);
        for moved in stamp.since.iter_mut().flat_map(|since| &mut since.moved) {
            moved.key = Some(format!("sensor.{}.circuit.resistor", "evaporator_outlet_air".repeat(2)));
        }
        check(&typesetter, &draft.issued(&words, &stamp), &stamp);
    }
}

#[test]
fn the_head_of_the_list_stands_clear_of_its_first_row_in_every_language() {
    let model = demo();
    let listed = document::list(&model).into_iter().find(|listed| listed.id == "CUR-S3");
    let listed = listed.expect("the demo has it");
    for language in Language::ALL {
        let words = Words::of(*language);
        let typesetter = Typesetter::new(&words.paper_json());
        let context = Edition::of(&model, &words).context(&model, &words, date());
        let draft = document::compose(context, &listed).expect("it composes");
        let mut stamp = stamp(&draft, 7);
        // A key of two lines reaches up to the top of its row.
        let moved = &mut stamp.since.as_mut().expect("a second issue").moved;
        moved.truncate(1);
        moved[0].key = Some("sensor.curlew-evaporator.circuit.resistor".to_owned());
        let document = draft.issued(&words, &stamp);
        check(&typesetter, &document, &stamp);
        let pieces = typesetter.pieces(job(&document)).expect("it lays out");
        let area = |text: &str| {
            let has =
                |piece: &&Piece| piece.text.as_ref().is_some_and(|(all, _)| all.trim_end().ends_with(text));
            pieces.iter().find(has).unwrap_or_else(|| panic!("{text} in {language:?}")).area
        };
        let head = words.word("paper-key");
        let head = area(head.split(' ').next_back().expect("it has words"));
        let row = area("curlew-evaporator.");
        assert!(
            head[3] < row[1] - 0.5,
            "{language:?}: the head down to {}, the row from {}",
            head[3],
            row[1]
        );
    }
}

#[test]
fn the_list_of_a_checklist_stands_before_its_map_where_there_is_room() {
    let (model, words) = (demo(), Words::english());
    let typesetter = Typesetter::new(&words.paper_json());
    let context = Edition::of(&model, &words).context(&model, &words, date());
    let listed = document::list(&model).into_iter().find(|listed| listed.id == "CUR-NO-COLD");
    let draft = document::compose(context, &listed.expect("the demo has it")).expect("it composes");
    let mut stamp = stamp(&draft, 7);
    stamp.since.as_mut().expect("a second issue").moved.truncate(1);
    let issued = draft.issued(&words, &stamp);
    check(&typesetter, &issued, &stamp);
    let pages = |document: &Document| typesetter.pdf(job(document)).expect("it exports").pages;
    assert_eq!(pages(&issued), pages(&draft), "a page more for one row");
}
