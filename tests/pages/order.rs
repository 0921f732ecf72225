//! The reading order of a tagged PDF: what the structure tree visits, in order, is what a
//! person reads, in order.

use hayro_interpret::hayro_syntax::Pdf;
use hayro_interpret::hayro_syntax::object::{Array, Dict, ObjRef, Object};

use super::{demo, documents, job, squeezed, text_of, typesetter};

/// Every piece of marked content in the order of the structure tree: page object, number.
fn visited(pdf: &[u8]) -> Vec<(i32, i32)> {
    let pdf = Pdf::new(pdf.to_vec()).expect("the PDF can be read");
    let root: Dict<'_> = pdf.xref().get(pdf.xref().root_id()).expect("it has a catalog");
    let tree: Dict<'_> = root.get("StructTreeRoot").expect("it is tagged");
    let mut found = Vec::new();
    walk(&tree, None, &mut found);
    found
}

fn walk(element: &Dict<'_>, page: Option<i32>, found: &mut Vec<(i32, i32)>) {
    let page = element.get_ref("Pg").map(|ObjRef { obj_number, .. }| obj_number).or(page);
    if let Some(kids) = element.get::<Array<'_>>("K") {
        kids.iter::<Object<'_>>().for_each(|kid| kid_of(&kid, page, found));
    } else if let Some(kid) = element.get::<Object<'_>>("K") {
        kid_of(&kid, page, found);
    }
}

fn kid_of(kid: &Object<'_>, page: Option<i32>, found: &mut Vec<(i32, i32)>) {
    match kid {
        Object::Number(number) => {
            found.push((page.expect("marked content is on a page"), number.as_f64() as i32));
        }
        Object::Dict(dict) => match dict.get::<i32>("MCID") {
            Some(number) => {
                let page = dict.get_ref("Pg").map(|ObjRef { obj_number, .. }| obj_number).or(page);
                found.push((page.expect("marked content is on a page"), number));
            }
            None => walk(dict, page, found),
        },
        _ => {}
    }
}

/// How many pieces a table's head may be drawn behind its place: cells that span rows or
/// columns are drawn after their neighbours, and read before them.
const HEAD: i32 = 60;

/// By how many places a piece may be read later than it is drawn, for that.
const LATER: i32 = 12;

#[test]
fn the_tree_visits_every_piece_once_page_after_page_in_the_order_of_drawing() {
    let typesetter = typesetter();
    for document in documents(&demo()) {
        let printed = typesetter.pdf(job(&document)).expect("it exports");
        let visited = visited(&printed.pdf);
        assert!(visited.len() > 20, "{}: {} pieces", document.id, visited.len());
        let mut pages: Vec<i32> = visited.iter().map(|(page, _)| *page).collect();
        pages.dedup();
        assert_eq!(pages.len(), printed.pages, "{}: the tree leaves a page and comes back", document.id);
        for page in pages {
            let numbers: Vec<i32> =
                visited.iter().filter(|(at, _)| *at == page).map(|(_, number)| *number).collect();
            let mut sorted = numbers.clone();
            sorted.sort_unstable();
            let all: Vec<i32> = (0..).take(numbers.len()).collect();
            assert_eq!(sorted, all, "{}: pieces are left out or read twice", document.id);
            for (place, number) in all.iter().zip(&numbers) {
                assert!(
                    number - place <= HEAD && place - number <= LATER,
                    "{}: piece {number} is read as number {place}",
                    document.id
                );
            }
        }
    }
}

/// What a person reads first stands first: the order of drawing, which the tree keeps.
#[test]
fn blocks_are_read_in_the_order_of_doing() {
    let cases: [(&str, &[&str]); 4] = [
        (
            "CUR-EVAP",
            &[
                "Evaporator outlet air",
                "applies to",
                "C2 · climate control unit",
                "0 °C",
                "V: key on",
                "WARNING",
                "How to measure",
                "Circuit",
                "Next steps",
                "What faults read",
                "Worked example",
                "How wrong",
                "Given data",
                "Sources",
            ],
        ),
        ("CUR-SENSORS.AMB-12", &["Ambulance 12", "Volts at the control unit", "Evaporator outlet air"]),
        ("HER-MODES", &["applies to", "Sources"]),
        ("CUR-NO-COLD", &["No cold air", "applies to", "Sources"]),
    ];
    let documents = documents(&demo());
    for (id, blocks) in cases {
        let document = documents.iter().find(|document| document.id == id).expect("it is in the demo set");
        let text = text_of(&typesetter().pdf(job(document)).expect("it exports").pdf);
        let mut from = 0;
        for block in blocks {
            let found = text[from..].find(&squeezed(block));
            from += found.unwrap_or_else(|| panic!("{id}: `{block}` does not come next"));
        }
    }
}
