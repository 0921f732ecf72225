//! Cards of actuators and switched loads at the ends of what a lead may write: hardly
//! anything, everything, and everything long.

use std::fmt::Write;

use bayleaf::diag::Sources;

use super::{built, check_geometry, documents, job, typesetter};

const LONG: &str = "Left-hand patient compartment auxiliary distribution housing, rear unit, lower shaft";
const PLACE: &str = "Behind the left rear wheel arch lining, above the auxiliary heater, reached from the stretcher \
                     side after the lower panel and its two foam seals are off";
const SOURCE: &str =
    "Manual of the rear auxiliary climate unit, third edition, volume 2, chapter 14, page 212 (invented)";
const STEP: &str = "Measure at the control unit first, then at the part's own plug, and write both down; a \
                    difference of more than a tenth of a volt is a wire or a contact, not the part.";

/// Eleven cards.
fn extreme() -> Sources {
    let steps = vec![format!("\"{STEP}\""); 6].join(", ");
    let contacts: Vec<String> = (1..=16).map(|contact| format!("\"C{contact}\"")).collect();
    let code = |position: usize| -> String {
        (0..16).map(|contact| if contact == position { '1' } else { '0' }).collect()
    };
    let positions: Vec<String> =
        (0..16).map(|at| format!("[\"{LONG}, position {at}\", \"{}\"]", code(at))).collect();
    let chain: Vec<String> = (1..=11).map(|ohms| format!("\"{} Ω ± 2 %\"", 150 * ohms)).collect();
    let rungs: Vec<String> = (0..12).map(|at| format!("[\"position {at}\", {at}]")).collect();
    let duties: Vec<String> = (1..=24).map(|duty| format!("\"{} %\"", 4 * duty)).collect();
    let parts: Vec<String> = (1..=18).map(|part| format!("\"{} %\"", 5 * part)).collect();
    let mut spec = format!(
        r#"
[shop]
title = "{LONG} workshop"
paper = "letter"
notice = "INVENTED: {LONG}"

[system.gull]
title = "Gull with rear auxiliary unit and long wheelbase"
applicability = {{ value = "built 2019 week 14 to 2024 week 52, left- and right-hand drive, with rear auxiliary unit, all engines", source = "{SOURCE}" }}
reference = {{ value = "5.000 V ± 0.025 V", source = "{SOURCE}, again" }}

[system.bare]
title = "Bare"

[connector.REAR-AUX-UNIT-02]
title = "rear auxiliary climate control unit, 48-way, grey housing"
view = "wire-entry"
side = "harness"
latch = "latch up, two keys at the right"

[connector.REAR-AUX-UNIT-02.pins]
1 = {{ function = "signal", wire = "GN/YE-BK 0.35 mm² screened" }}
2 = "reference"
3 = "return"
4 = "motor"
5 = "motor"
6 = "control"

[connector.REAR-ACTUATOR-17]
title = "rear distribution actuator, sealed 6-way plug"
pins = {{ 1 = "signal", 2 = "reference", 3 = "return", 4 = "motor", 5 = "motor" }}

[connector.REAR-LOAD-18]
title = "rear load, sealed 4-way plug with secondary lock"
view = "mating-face"
side = "component"
pins = {{ 1 = "control", 2 = "feed", 3 = "contact", 4 = "contact" }}

[actuator.bare]
title = "Bare"
system = "bare"

[actuator.stops]
title = "Stops"
system = "bare"
stops = {{ low = {{ ratio = "8 % to 14 %" }}, high = {{ ratio = "86 % to 92 %" }} }}

[actuator.long]
title = "{LONG} actuator"
system = "gull"
location = "{PLACE}"
moves = "lower left distribution door of the patient compartment"
recalibration = "{STEP}"
next = [{steps}]
source = "{SOURCE}"
feedback = {{ track = "4.700 kΩ ± 20 %", ends = "50 Ω ± 30 %", contact = "10 Ω ± 50 %", load = "100.0 kΩ ± 5 %", load_to = "reference" }}
sweep = {{ time = "120 s", step = "3.5 %", dead_band = "2.5 %", hysteresis = "3.5 %" }}
motor = {{ current = "140 mA to 1600 mA", stall = "2.35 A to 10.70 A", plain_dc = true }}

[actuator.long.stops]
low = {{ name = "lower outlets fully closed", ratio = "8 % to 14 %", nominal = "11 %" }}
high = {{ name = "lower outlets fully open", ratio = "86 % to 92 %", nominal = "89 %" }}

[actuator.long.pins]
signal = "REAR-AUX-UNIT-02/1"
reference = "REAR-AUX-UNIT-02/2"
return = "REAR-AUX-UNIT-02/3"
motor_plus = "REAR-AUX-UNIT-02/4"
motor_minus = "REAR-AUX-UNIT-02/5"

[actuator.long.component_pins]
signal = "REAR-ACTUATOR-17/1"
reference = "REAR-ACTUATOR-17/2"
return = "REAR-ACTUATOR-17/3"
motor_plus = "REAR-ACTUATOR-17/4"
motor_minus = "REAR-ACTUATOR-17/5"

[actuator.coded]
title = "{LONG} actuator"
system = "gull"
contacts = {{ names = [{}], closed = "5 Ω", positions = [{}] }}

[actuator.ladder]
title = "Ladder"
system = "gull"
ladder = {{ kind = "series", resistor = "1 kΩ ± 1 %", chain = [{}], closed = "5 Ω", positions = [{}] }}

[driver.bare]
kind = "relay"
title = "Bare"
system = "bare"
coil = {{ resistance = "90 Ω", at = "20 °C" }}

[driver.bare-blower]
kind = "blower"
title = "Bare"
system = "bare"
blower = {{ control = "transistor" }}

[driver.bare-solenoid]
kind = "solenoid"
title = "Bare"
system = "bare"
coil = {{ resistance = "10 Ω", at = "20 °C" }}

[driver.relay]
kind = "relay"
title = "{LONG} relay"
system = "gull"
location = "{PLACE}"
polarity = "low side"
drive = {{ battery = "12.0 V to 14.5 V", nominal = "13.8 V" }}
coil = {{ resistance = "90 Ω ± 10 %", at = "20 °C", temperature = "-40 °C to 125 °C", isolation = "10 MΩ" }}
limits = {{ supply_drop = "0.3 V", ground_drop = "0.1 V", contact_drop = "0.15 V" }}
pins = {{ control = "REAR-LOAD-18/1", feed = "REAR-LOAD-18/2", contact_in = "REAR-LOAD-18/3", contact_out = "REAR-LOAD-18/4" }}
unit_pins = {{ control = "REAR-AUX-UNIT-02/6" }}
next = [{steps}]
source = "{SOURCE}"

[driver.solenoid]
kind = "solenoid"
title = "{LONG} solenoid"
system = "gull"
location = "{PLACE}"
polarity = "high side"
coil = {{ resistance = "10.50 Ω ± 5 %", at = "68 °F", temperature = "-40 °F to 257 °F", isolation = "1 MΩ" }}
displacement = {{ more_current = "less displacement", points = [["0.00 A", "100 %"], ["0.15 A", "100 %"], ["0.40 A", "40 %"], ["0.60 A", "5 %"]] }}
source = "{SOURCE}"
drive = {{ battery = "10.0 V to 15.5 V", nominal = "13.8 V", switch_drop = "0.2 V ± 0.1 V", diode_drop = "0.8 V ± 0.2 V", frequency = "400 Hz", inductance = "25 mH", steps = [{}] }}

[driver.blower]
kind = "blower"
title = "{LONG} blower"
system = "gull"
polarity = "low side"
drive = {{ battery = "12.0 V to 14.5 V", nominal = "13.8 V" }}
source = "{SOURCE}"
blower = {{ control = "transistor", current = "22 A", at = "13.8 V", exponent = 1.7, step_tolerance = "2 %", bypass_drop = "0.3 V", wiring = "20 mΩ", steps = [{}] }}
"#,
        contacts.join(", "),
        positions.join(", "),
        chain.join(", "),
        rungs.join(", "),
        duties.join(", "),
        parts.join(", "),
    );
    for run in 1..=4 {
        let run = format!(
            "\n[wire.run-{run}]\ntitle = \"{LONG}, run {run}\"\nsystem = \"gull\"\ndriver = \"blower\"\nsize = \"4 mm²\"\n\
             class = \"5\"\nlength = \"2 m\"\nconductors = 2\ncurrent = \"22 A\"\n"
        );
        spec.push_str(&run);
    }
    for (kind, ids) in [
        ("actuator", ["bare", "stops", "long", "coded", "ladder", ""]),
        ("driver", ["bare", "bare-blower", "bare-solenoid", "relay", "solenoid", "blower"]),
    ] {
        for id in ids.into_iter().filter(|id| !id.is_empty()) {
            let card = format!("\n[card.{}-{id}]\n{kind} = \"{id}\"", &kind[..3]);
            writeln!(spec, "{card}").expect("a text takes any line");
        }
    }
    let mut sources = Sources::default();
    sources.add("loads.toml".to_owned(), spec);
    sources
}

#[test]
fn cards_of_actuators_and_loads_keep_to_their_pages() {
    let model = built(&extreme());
    let documents = documents(&model);
    assert_eq!(documents.len(), 11);
    for document in &documents {
        check_geometry(document);
        typesetter().pdf(job(document)).expect("it exports to both standards");
    }
}
