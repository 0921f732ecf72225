//! Systems of none, two and sixty things, and the cards of light sensors and transducers with
//! hardly anything given and with everything long.

use std::fmt::Write;

use bayleaf::diag::Sources;
use bayleaf::document::Document;
use bayleaf::typeset::Piece;

use super::{built, check_geometry, documents, job, typesetter};

const LONG: &str =
    "Left-hand patient compartment auxiliary evaporator outlet air sensor, rear unit, long wheelbase";
const SOURCE: &str = "Manual of the rear auxiliary climate unit, third edition, volume 2, chapter 14, table 14-7, page 212 (invented)";

fn extreme() -> Sources {
    let mut spec = format!(
        r#"
[shop]
title = "Bay"
paper = "letter"

[system.large]
title = "{LONG}"
reference = {{ value = "5.000 V ± 0.025 V", source = "{SOURCE}" }}

[system.bare]
title = "Bare"

[light.bare]
title = "Bare"
system = "bare"

[transducer.bare]
title = "Bare"
system = "bare"
pressure = "gauge"

[light.long]
title = "{LONG}"
system = "large"
location = "{LONG}"
current = "0.8 mA ± 25 %"
at = "1000 W/m²"
dark = "2 µA"
circuit = {{ topology = "load", resistor = "3.900 kΩ ± 0.039 kΩ" }}
least_span = "1.2 V"
pins = {{ signal = "REAR-AUX-UNIT-02/1", reference = "REAR-AUX-UNIT-02/2", ground = "REAR-AUX-UNIT-02/3" }}
source = "{SOURCE}"

[transducer.long]
title = "{LONG}"
system = "large"
location = "{LONG}"
pressure = "absolute"
low = {{ pressure = "1 bar", ratio = "10 %" }}
high = {{ pressure = "33 bar", ratio = "90 %" }}
accuracy = "1 %"
clamp = "5 % to 95 %"
pins = {{ signal = "REAR-AUX-UNIT-02/4", reference = "REAR-AUX-UNIT-02/2", return = "REAR-AUX-UNIT-02/3" }}
next = ["{LONG}: measure it.", "{LONG}: measure it again."]
source = "{SOURCE}"

[connector.REAR-AUX-UNIT-02]
title = "rear auxiliary climate control unit, 96-way, grey housing"
view = "wire-entry"
side = "harness"
latch = "latch up, two keys at the right"

[card.LARGE-SYSTEM]
system = "large"
[card.BARE-SYSTEM]
system = "bare"
[card.LIGHT-SENSOR-CARD-REAR-AUXILIARY-UNIT-01]
light = "long"
[card.BARE-LIGHT]
light = "bare"
[card.TRANSDUCER-CARD-REAR-AUXILIARY-UNIT-01]
transducer = "long"
[card.BARE-TRANSDUCER]
transducer = "bare"

[connector.REAR-AUX-UNIT-02.pins]
"#
    );
    for pin in 1..=96 {
        writeln!(spec, "{pin} = {{ function = \"signal\", wire = \"GN/YE-BK 0.35 mm² screened\" }}")
            .expect("a text");
    }
    // Sixty things with the two above: inputs and outputs, names short and long.
    for number in 0..58 {
        let title = if number % 3 == 0 { LONG } else { "Door" };
        let pin = number + 10;
        if number % 2 == 0 {
            writeln!(spec, "[light.thing-{number}]\ntitle = \"{title} {number}.\"\nsystem = \"large\"\npins = {{ signal = \"REAR-AUX-UNIT-02/{pin}\", return = \"REAR-AUX-UNIT-02/3\" }}")
        } else {
            writeln!(spec, "[actuator.thing-{number}]\ntitle = \"{title} {number}.\"\nsystem = \"large\"\npins = {{ signal = \"REAR-AUX-UNIT-02/{pin}\", return = \"REAR-AUX-UNIT-02/3\" }}")
        }
        .expect("a text takes any line");
    }
    let mut sources = Sources::default();
    sources.add("extreme.toml".to_owned(), spec);
    sources
}

fn of<'a>(documents: &'a [Document], id: &str) -> &'a Document {
    documents.iter().find(|document| document.id == id).expect("it is listed")
}

#[test]
fn systems_and_parts_of_any_size_stay_on_their_pages() {
    let documents = documents(&built(&extreme()));
    assert_eq!(documents.len(), 6);
    for document in &documents {
        check_geometry(document);
        typesetter().pdf(job(document)).expect("it exports to both standards");
    }
}

#[test]
fn a_system_of_sixty_things_goes_on_on_the_next_page_with_each_box_whole() {
    let documents = documents(&built(&extreme()));
    let large = of(&documents, "LARGE-SYSTEM");
    let pieces = typesetter().pieces(job(large)).expect("it lays out");
    let pages = pieces.iter().map(|piece| piece.page).max().unwrap_or_default();
    assert!((2..=5).contains(&pages), "{pages} pages");
    let text = |piece: &Piece| piece.text.as_ref().map(|(text, _)| text.trim().to_owned());
    // The pins of every thing, whose names break into lines, stand on one page with it.
    for pin in 10..68 {
        let name = format!("02/{pin} signal");
        let shown = pieces.iter().filter(|piece| text(piece).is_some_and(|text| text.ends_with(&name)));
        assert_eq!(shown.count(), 1, "{name}");
    }
    assert_eq!(typesetter().pdf(job(of(&documents, "BARE-SYSTEM"))).expect("it exports").pages, 1);
}
