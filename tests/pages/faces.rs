//! Connectors of 2 and of 96 pins, with and without a face: drawn whole, every pin's row in one piece.

use std::collections::BTreeSet;
use std::fmt::Write;

use bayleaf::diag::Sources;
use bayleaf::document::Document;
use bayleaf::typeset::Piece;

use super::{built, check_geometry, documents, job, typesetter};

/// A connector in rows of 24 with a pin everywhere, all functions as long as a lead may want them.
fn connector(spec: &mut String, id: &str, pins: usize, rows: bool, function: &str) {
    writeln!(spec, "[connector.{id}]\ntitle = \"{id}\"\nview = \"wire-entry\"\nside = \"harness\"")
        .expect("a text takes any line");
    if rows {
        let marks: Vec<String> = (1..=pins).map(|pin| pin.to_string()).collect();
        let rows: Vec<String> = marks.chunks(24).map(|row| format!("[{}]", row.join(", "))).collect();
        writeln!(
            spec,
            "rows = [{}]\nlatch_side = \"left\"\nkeys = [\"right top\", \"bottom\"]",
            rows.join(", ")
        )
        .expect("a text takes any line");
    }
    writeln!(spec, "[connector.{id}.pins]").expect("a text takes any line");
    for pin in 1..=pins {
        let wire = "GN/YE-BK 0.35 mm² screened";
        writeln!(spec, "{pin} = {{ function = \"{function}\", wire = \"{wire}\", expect = {{ on = \"4.900 V to 5.100 V\" }} }}")
            .expect("a text takes any line");
    }
}

fn extreme() -> Sources {
    let long = "rear auxiliary evaporator outlet air temperature, signal, screened from the unit to the plug";
    let mut spec = "[shop]\ntitle = \"Bay\"\npaper = \"A4\"\n[system.gull]\ntitle = \"Gull\"\n".to_owned();
    connector(&mut spec, "SMALL", 2, true, "signal");
    connector(&mut spec, "WIDE", 96, true, long);
    connector(&mut spec, "FACELESS-CONNECTOR-WITH-A-LONG-NAME", 96, false, "signal");
    for (number, id) in ["SMALL", "WIDE", "FACELESS-CONNECTOR-WITH-A-LONG-NAME"].into_iter().enumerate() {
        // Every pin but the first is shared by nothing; the first return by forty sensors.
        for light in 0..40 {
            let pin = if light == 0 { format!("signal = \"{id}/1\", ") } else { String::new() };
            writeln!(spec, "[light.sun-{number}-{light}]\ntitle = \"Sun load sensor {light} of the rear unit\"\nsystem = \"gull\"\npins = {{ {pin}return = \"{id}/2\" }}")
                .expect("a text takes any line");
        }
        writeln!(spec, "[card.{id}]\nconnector = \"{id}\"").expect("a text takes any line");
    }
    spec.push_str("[card.MIRRORED]\nconnector = \"WIDE\"\nview = \"mating-face\"\n");
    let mut sources = Sources::default();
    sources.add("extreme.toml".to_owned(), spec);
    sources
}

/// Where the squares of a face stand on the first page, by their marks.
fn squares(document: &Document) -> Vec<(String, [f64; 4])> {
    let pieces = typesetter().pieces(job(document)).expect("it lays out");
    let text = |piece: &Piece| Some((piece.text.as_ref()?.0.trim().to_owned(), piece.area));
    let first: Vec<_> = pieces.iter().filter(|piece| piece.page == 1 && !piece.turned).collect();
    // Above the table of pins, whose head is the first thing below the drawing.
    let table = first.iter().filter_map(|piece| text(piece)).find(|(text, _)| text == "Pin");
    let top = table.expect("the pins have a table").1[1];
    let digits = |text: &str| !text.is_empty() && text.chars().all(|c| c.is_ascii_digit());
    first
        .iter()
        .filter_map(|piece| text(piece))
        .filter(|(text, area)| digits(text) && area[1] < top - 5.0)
        .collect()
}

#[test]
fn connectors_of_two_and_of_96_pins_stay_on_their_pages() {
    let documents = documents(&built(&extreme()));
    assert_eq!(documents.len(), 4);
    for document in &documents {
        check_geometry(document);
        typesetter().pdf(job(document)).expect("it exports to both standards");
    }
}

#[test]
fn every_pin_is_drawn_once_in_its_place_and_mirrored_where_asked() {
    let documents = documents(&built(&extreme()));
    let of = |id: &str| documents.iter().find(|document| document.id == id).expect("it is listed");
    let (wide, mirrored) = (squares(of("WIDE")), squares(of("MIRRORED")));
    let marks: BTreeSet<&str> = wide.iter().map(|(mark, _)| mark.as_str()).collect();
    assert_eq!((wide.len(), marks.len()), (96, 96));
    let left = |squares: &[(String, [f64; 4])], mark: &str| {
        squares.iter().find(|(found, _)| found == mark).expect("it is drawn").1[0]
    };
    assert!(left(&wide, "1") < left(&wide, "24") && left(&wide, "73") < left(&wide, "96"));
    assert!(left(&mirrored, "1") > left(&mirrored, "24") && left(&mirrored, "73") > left(&mirrored, "96"));
}
