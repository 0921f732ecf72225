//! Checklists as they are laid out: long ones, short ones, and what a finger needs.

use std::fmt::Write;

use bayleaf::diag::Sources;
use bayleaf::model::Chart;
use serde_json::Value;

use super::{built, check_geometry, demo, documents, job, typesetter};

/// Fourteen steps with the longest texts there may be, one step, and a full index.
fn extreme() -> Sources {
    let long = "unplug, measure, write down and compare with the card of the rear auxiliary unit; ".repeat(4);
    let long = long.trim_end_matches("; ");
    let mut spec = format!(
        r#"
[shop]
title = "Rear auxiliary workshop"
paper = "letter"
[system.gull]
title = "Gull with rear auxiliary unit and long wheelbase"
applicability = {{ value = "all of them", source = "{long}" }}
[vehicle.one]
title = "One"
system = "gull"
[connector.REAR-AUX-UNIT-02]
title = "rear auxiliary climate control unit, 48-way, grey housing"
view = "wire-entry"
side = "harness"
latch = "latch up, two keys at the right"
pins = {{ 41 = {{ function = "signal", wire = "GN/YE-BK 0.35 mm² screened" }}, 42 = "return" }}
[checklist.LONG]
title = "Left-hand patient compartment gets no cold air after two hours on the road in rain"
system = "gull"
vehicles = ["one"]
symptom = "{long}"
work = "refrigerant"
start = "s1"
"#
    );
    for step in 1..=14 {
        let next = if step == 14 { "fine".to_owned() } else { format!("s{}", step + 1) };
        let ending = if step % 2 == 0 { "part" } else { "refer" };
        write!(
            spec,
            r#"[checklist.LONG.step.s{step}]
title = "Rear auxiliary evaporator, step {step} of all"
question = "{long}?"
do = "{long}"
where = "{long}"
pins = ["REAR-AUX-UNIT-02/41", "REAR-AUX-UNIT-02/42"]
half = "component"
state = "{long}"
expect = "12.345 V or {long}"
unit = "V"
time = "{step} min"
cost = "unplug"
because = "{long}"
near = ["moving parts", "hot parts", "refrigerant", "refrigerant fitting"]
yes = {{ to = "{next}", note = "{long}" }}
no = {{ to = "{ending}", note = "{long}" }}
undecided = {{ to = "{ending}", note = "{long}" }}
"#
        )
        .expect("a text takes any line");
    }
    write!(
        spec,
        r#"[checklist.LONG.ending.fine]
kind = "no fault found"
do = "{long}"
[checklist.LONG.ending.part]
kind = "part"
what = "{long}"
do = "{long}"
[checklist.LONG.ending.refer]
kind = "refer to licensed refrigerant work"
do = "{long}"
[checklist.SHORT]
title = "Short"
system = "gull"
symptom = "Short"
work = "electrical"
start = "a"
[checklist.SHORT.step.a]
title = "A"
question = "A?"
do = "Look."
where = "there"
state = "off"
expect = "so"
time = "1 s"
cost = "look"
yes = "f"
no = "u"
[checklist.SHORT.ending.f]
kind = "no fault found"
do = "So."
[checklist.SHORT.ending.u]
kind = "control unit"
do = "Not so."
"#
    )
    .expect("a text takes any line");
    for symptom in 0..20 {
        let first = vec![format!("\"{long}\""); symptom % 3].join(", ");
        let first = if first.is_empty() { String::new() } else { format!("first = [{first}]\n") };
        write!(spec, "[symptom.s{symptom}]\ntitle = \"Rear unit blows warm, complaint number {symptom} of all that drivers have\"\nsystem = \"gull\"\n{first}")
            .expect("a text takes any line");
    }
    let mut sources = Sources::default();
    sources.add("extreme.toml".to_owned(), spec);
    sources
}

#[test]
fn long_and_short_checklists_stay_on_their_pages() {
    let documents = documents(&built(&extreme()));
    let ids: Vec<&str> = documents.iter().map(|document| document.id.as_str()).collect();
    assert_eq!(ids, ["LONG", "SHORT", "gull.SYMPTOMS"]);
    for document in &documents {
        check_geometry(document);
        typesetter().pdf(job(document)).expect("it exports to both standards");
    }
}

#[test]
fn a_step_has_its_boxes_on_its_own_page() {
    let documents = documents(&demo());
    let checklists: Vec<_> =
        documents.iter().filter(|document| document.template == "checklist.typ").collect();
    assert!(checklists.len() >= 6, "only {} checklists", checklists.len());
    for document in checklists {
        let pieces = typesetter().pieces(job(document)).expect("it lays out");
        let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
        let steps = data["steps"].as_array().expect("steps");
        let map = pieces.iter().map(|piece| piece.page).max().expect("there are pages");
        let mut ticks = 0;
        let mut readings = 0;
        for piece in pieces.iter().filter(|piece| piece.text.is_none() && piece.page < map) {
            let [left, top, right, bottom] = piece.area;
            let (width, height) = (right - left, bottom - top);
            // 5 mm for a tick (common practice, no source); 30 × 9 mm for a reading
            // (design-of-forms.online spacing allowances).
            ticks += usize::from((5.0..7.0).contains(&width) && (5.0..7.0).contains(&height));
            readings += usize::from((30.0..33.0).contains(&width) && (9.0..10.0).contains(&height));
        }
        let exits: usize = steps.iter().filter_map(|step| step["exits"].as_array()).map(Vec::len).sum();
        let endings = data["endings"].as_array().map_or(0, Vec::len);
        assert_eq!(ticks, exits + endings, "{}: boxes to tick", document.id);
        let read = steps.iter().filter(|step| step["unit"] != "").count();
        assert_eq!(readings, read, "{}: boxes for readings", document.id);
        // Number, question and what to expect stand on one page: a step is never split.
        for step in steps {
            let text = |value: &Value| value.as_str().expect("a text").to_owned();
            let number = text(&step["number"]);
            let is_number = |piece: &&super::Piece| {
                piece.text.as_ref().is_some_and(|(text, points)| *text == number && *points > 16.0)
            };
            let page = pieces.iter().find(is_number).map(|piece| piece.page).expect("the number is printed");
            let expect = step["lines"]
                .as_array()
                .and_then(|lines| lines.iter().find(|line| line["label"] == "expect"));
            for wanted in [text(&step["question"]), text(&expect.expect("it expects something")["text"])] {
                let on_page = pieces.iter().filter(|piece| piece.page == page);
                let texts = on_page.filter_map(|piece| Some(piece.text.as_ref()?.0.as_str()));
                let whole = super::squeezed(&texts.collect::<String>());
                assert!(
                    whole.contains(&super::squeezed(&wanted)),
                    "{} step {number}: `{wanted}`",
                    document.id
                );
            }
        }
    }
}

#[test]
fn no_line_of_a_demo_map_crosses_another() {
    for checklist in demo().checklists.values() {
        let chart = Chart::of(&checklist.ways).expect("there is no loop");
        assert_eq!(chart.map.crossings, 0, "{}", checklist.id);
    }
}
