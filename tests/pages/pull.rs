//! Pull lists of any length: rows whole, heads on every page, boxes to tick, in every language.

use bayleaf::document::{Because, Document, Edition, Pull, PullList, compose_pull_list};
use bayleaf::model::Model;
use bayleaf::spec::Paper;
use bayleaf::typeset::Typesetter;
use bayleaf::words::{Language, Words};

use super::reader::text_of;
use super::{check_geometry_with, date, demo, job, squeezed};

/// So many copies of a few papers at a few places, with short and long names.
pub(super) fn copies(count: usize) -> Vec<Pull> {
    let papers = [
        ("CUR-EVAP", "Evaporator outlet air temperature sensor"),
        ("CUR-C2", "C2 · climate control unit, 24-way"),
        ("CUR-SENSORS.AMB-12", "Temperature sensors · Ambulance 12"),
        ("HER-PARTS.RRV-3", "Doors, blower, compressor · Rapid response 3"),
    ];
    let places = [
        "Bay 2, wall above the bench",
        "Bay 10, wall",
        "Van 3, glove box",
        "Office of the technical lead, folder 4 (invented)",
        "",
    ];
    let holders = ["Day shift", "Night shift of the second workshop", "J. Marsh (invented)", ""];
    let copy = |index: usize| {
        let (id, title) = papers[index % papers.len()];
        let because = (0..[1, 0, 2, 8][index % 4]).map(|value| Because {
            key: ["sensor.curlew-evap.pull_up", "connector.curlew-c2.pin.7.wire"][value % 2].to_owned(),
            old: if index.is_multiple_of(3) { String::new() } else { "4.64 kΩ ± 1 %".to_owned() },
            new: "4.7 kΩ ± 1 %".to_owned(),
        });
        Pull {
            id: id.to_owned(),
            title: title.to_owned(),
            old: 1,
            new: (index % 5 != 4).then_some(2),
            holder: holders[index % holders.len()].to_owned(),
            place: places[index % places.len()].to_owned(),
            because: because.collect(),
        }
    };
    (0..count).map(copy).collect()
}

fn list(model: &Model, words: &Words, count: usize) -> Document {
    list_of(model, words, copies(count))
}

fn list_of(model: &Model, words: &Words, copies: Vec<Pull>) -> Document {
    let context = Edition::of(model, words).context(model, words, date());
    let why = "Pull-up of the control unit corrected after measurement".to_owned();
    let list = PullList { date: date(), number: 1, by: "WB".to_owned(), why, copies };
    compose_pull_list(context, &list)
}

#[test]
fn a_pull_list_of_any_length_has_whole_rows_heads_and_boxes() {
    let mut model = demo();
    for paper in [Paper::A4, Paper::Letter] {
        model.shop.paper = paper;
        for language in Language::ALL {
            let words = Words::of(*language);
            let typesetter = Typesetter::new(&words.paper_json());
            for count in [1, 12, 90] {
                let document = list(&model, &words, count);
                check_geometry_with(&typesetter, &document);
                let pieces = typesetter.pieces(job(&document)).expect("it lays out");
                let pages = pieces.iter().map(|piece| piece.page).max().unwrap_or_default();
                let with = |page: usize, text: &str| {
                    let mut on_page = pieces.iter().filter(|piece| piece.page == page);
                    on_page.any(|piece| piece.text.as_ref().is_some_and(|(said, _)| said.contains(text)))
                };
                // 5 mm for a tick (common practice, no source).
                let is_tick = |area: [f64; 4]| {
                    let sides = [area[2] - area[0], area[3] - area[1]];
                    sides.iter().all(|side| (5.0..7.0).contains(side))
                };
                let ticks = pieces.iter().filter(|piece| piece.text.is_none() && is_tick(piece.area));
                assert_eq!(ticks.count(), 2 * count, "{} {count}", language.code());
                assert!(count < 90 || pages > 3, "{pages} pages");
                let head = words.word("pulled-because");
                let first = head.split(' ').next().unwrap_or_default();
                // The last page may hold nothing but the signature.
                assert!((1..pages).all(|page| with(page, first)), "{} {count}", language.code());
            }
        }
    }
}

#[test]
fn a_row_is_as_high_as_its_words_however_they_break() {
    let (model, words) = (demo(), Words::english());
    let typesetter = Typesetter::new(&words.paper_json());
    let holders = [
        "Halle 1, hinten links neben dem Kompressor",
        "Innenseite der Schranktür am Eingang",
        "Atelier du deuxième étage, armoire à gauche de la porte",
        "i i i i i i i i i i i i i i i i i i i i i i i i i i i i i i",
    ];
    let mut all = copies(2 * holders.len());
    for (pull, holder) in all.iter_mut().zip(holders.iter().cycle()) {
        pull.holder = (*holder).to_owned();
        pull.place = holder.chars().rev().collect();
        pull.because.clear();
    }
    let document = list_of(&model, &words, all);
    let pieces = typesetter.pieces(job(&document)).expect("it lays out");
    let is_rule = |area: [f64; 4]| area[2] - area[0] > 150.0 && area[3] - area[1] < 1.0;
    let rules: Vec<_> = pieces.iter().filter(|piece| piece.text.is_none() && is_rule(piece.area)).collect();
    assert!(rules.len() > holders.len(), "{} rules", rules.len());
    for piece in pieces.iter().filter(|piece| piece.text.is_some() && !piece.blank()) {
        let across = |rule: &&&bayleaf::typeset::Piece| {
            rule.page == piece.page && piece.area[1] < rule.area[1] && piece.area[3] > rule.area[3]
        };
        assert!(!rules.iter().any(|rule| across(&rule)), "{:?} lies on a rule", piece.text);
    }
}

#[test]
fn a_pull_list_is_no_draft_and_has_a_number_of_its_own() {
    let (model, words) = (demo(), Words::english());
    let typesetter = Typesetter::new(&words.paper_json());
    let document = list(&model, &words, 12);
    let text = text_of(&typesetter.pdf(job(&document)).expect("it exports to both standards").pdf);
    assert!(text.contains("SET.PULL-LIST2026-11-24/1") && !text.contains("DRAFT"), "{text}");
    assert!(text.contains(&squeezed("sensor.curlew-evap.pull_up: 4.64 kΩ ± 1 % → 4.7 kΩ ± 1 %")), "{text}");
}
