//! Specs at the ends of what a lead may write: one row, 121 rows, forty tests, long words.

use std::fmt::Write;

use bayleaf::diag::Sources;

const LONG_TITLE: &str =
    "Left-hand patient compartment auxiliary evaporator outlet air temperature sensor, rear unit";
const LONG_PLACE: &str = "Behind the left rear wheel arch lining, above the auxiliary heater, clipped into the \
                          fins of the rear evaporator, reached from the stretcher side after the lower panel is off";
const LONG_SOURCE: &str = "Manual of the rear auxiliary climate unit, third edition, volume 2, chapter 14, table 14-7, page 212 (invented)";

/// Five documents: a card of one row, one of 121 rows, one with everything
/// long, one with hardly anything given, and a sheet of forty tests.
pub(crate) fn extreme() -> Sources {
    let mut spec = format!(
        r#"
[shop]
title = "{LONG_TITLE} workshop"
paper = "letter"
notice = "INVENTED: {LONG_TITLE}"

[system.gull]
title = "Gull with rear auxiliary unit and long wheelbase"
applicability = {{ value = "built 2019 week 14 to 2024 week 52, left- and right-hand drive, with rear auxiliary unit and roof condenser, all engines", source = "{LONG_SOURCE}" }}
reference = {{ value = "5.000 V ± 0.025 V", source = "{LONG_SOURCE}, again" }}
high_voltage = {{ value = "electric compressor below the left load floor, its inverter, and every orange cable between them and the traction battery", source = "{LONG_SOURCE}" }}

[system.bare]
title = "Bare"

[instrument.bench]
kind = "multimeter"
title = "{LONG_TITLE}"
input_resistance = "10 MΩ ± 1 %"

[connector.REAR-AUX-UNIT-02]
title = "rear auxiliary climate control unit, 48-way, grey housing"
view = "wire-entry"
side = "harness"
latch = "latch up, two keys at the right"
pins = {{ 41 = {{ function = "signal", wire = "GN/YE-BK 0.35 mm² screened" }}, 42 = "return" }}

[connector.REAR-SENSOR-17]
title = "rear evaporator outlet air sensor, sealed 2-way plug"
view = "mating-face"
side = "component"
pins = {{ 1 = "signal", 2 = "return" }}

[sensor.bare]
title = "Bare"
system = "bare"
range = "25 °C to 25 °C"
curve = {{ model = "beta", resistance = "2.2 kΩ", at = "25 °C", beta = "3500 K" }}

[card.BARE]
sensor = "bare"

[sensor.long]
title = "{LONG_TITLE}"
system = "gull"
location = "{LONG_PLACE}"
range = "-40 °C to 80 °C"
service_limit = "2.5 K"
source = "{LONG_SOURCE}"
curve = {{ model = "beta", resistance = "220 kΩ", at = "25 °C", beta = "4500 K" }}
tolerance = {{ resistance = "3 %", beta = "1.5 %" }}
circuit = {{ topology = "pull-up", resistor = "47.50 kΩ ± 0.25 kΩ", series = "1.00 kΩ ± 0.05 kΩ", parallel = "470.0 kΩ ± 5.0 kΩ" }}
pins = {{ signal = "REAR-AUX-UNIT-02/41", return = "REAR-AUX-UNIT-02/42" }}
component_pins = {{ signal = "REAR-SENSOR-17/1", return = "REAR-SENSOR-17/2" }}

[card.SENSOR-CARD-REAR-AUXILIARY-EVAPORATOR-01]
sensor = "long"
meter = "bench"

[card.ALL-ROWS]
sensor = "long"
meter = "bench"
step = "1 K"

[card.ONE-ROW]
sensor = "long"
range = "25 °C to 25 °C"

[vehicle.LONG-WHEELBASE-AMBULANCE-0012]
title = "{LONG_TITLE}"
system = "gull"

[sheet.FORTY]
title = "All temperature sensors of the rear auxiliary climate unit"
system = "gull"
meter = "bench"

[[sheet.FORTY.group]]
title = "Volts at the rear auxiliary control unit, all of them"
state = "key on · engine off · blower off · panel in maximum heat · rear doors shut for twenty minutes"
measure = "voltage"
place = "control unit"
test = [
"#
    );
    for number in 0..40 {
        let note = if number % 3 == 0 {
            "soaked for two hours with the rear doors shut and the blower off"
        } else {
            "soaked"
        };
        writeln!(spec, "    {{ sensor = \"long\", note = \"{note}\" }},").expect("a text takes any line");
    }
    spec.push_str("]\n");
    spec.push_str(&every_form());
    let mut sources = Sources::default();
    sources.add("extreme.toml".to_owned(), spec);
    sources
}

/// A sheet with every form of a test at its longest, one at its shortest, and its report.
fn every_form() -> String {
    let long =
        "with the rear doors shut, the auxiliary heater at rest and every other load of the vehicle off";
    let head = |id: &str, quantity: &str, meter: &str, key: &str| {
        format!(
            r#"
[test.{id}]
title = "{LONG_TITLE}"
component = "sensor.long"
quantity = "{quantity}"
place = "control unit"
mated = {mated}
ignition = "{key}"
set_point = "{long}"
blower = "{long}"
meter = "{meter}"
pins = {{ plus = "REAR-AUX-UNIT-02/41", minus = "REAR-AUX-UNIT-02/42" }}
soak = {{ value = "12 h", source = "{LONG_SOURCE}" }}
wait = "90 s"
before = ["{long}", "{long}", "{long}"]
differs = [{{ when = "{long}", expect = "{long}" }}]
faults = [{{ reads = "{long}", means = "{LONG_PLACE}" }}]
next = ["{LONG_PLACE}"]
"#,
            mated = key != "key off",
        )
    };
    let volts = |id: &str| head(id, "voltage", "DC volts", "engine running");
    let (mut rows, mut events) = (String::new(), String::new());
    for number in 0..12 {
        write!(rows, "{{ name = \"{long} {number}\", values = [\"{long}\", \"open\"] }}, ").expect("text");
        write!(
            events,
            "{{ event = \"{long} {number}\", expect = \"{long}\", after = \"1.25 s to 999 s\" }}, "
        )
        .expect("text");
    }
    let tests = [
        (head("curve", "resistance", "ohms", "key off"), r#"form = "curve""#.to_owned()),
        (volts("window"), r#"form = "window", window = "1234.5 mV to 123456.7 mV""#.to_owned()),
        (volts("limit"), r#"form = "limit", least = "-123.456 V""#.to_owned()),
        (volts("ratio"), r#"form = "ratio", to = "reference", window = "0.125 % to 99.875 %""#.to_owned()),
        (
            volts("difference"),
            format!(r#"form = "difference", of = ["{long}", "{long}"], window = "-0.125 V to 0.125 V""#),
        ),
        (
            volts("sweep"),
            r#"form = "sweep", start = "4.9 V to 5.1 V", end = "0.4 V to 0.6 V", time = "120 s", largest_step = "0.05 V""#
                .to_owned(),
        ),
        (volts("table"), format!(r#"form = "truth table", columns = ["{long}", "B"], rows = [{rows}]"#)),
        (volts("sequence"), format!(r#"form = "sequence", steps = [{events}]"#)),
        (
            head("waveform", "frequency", "oscilloscope", "engine running"),
            r#"form = "waveform", frequency = "0.25 Hz to 0.5 Hz", duty = "0 % to 1 %", high = "13.125 V to 14.875 V", low = "-0.875 V to 0.125 V""#
                .to_owned(),
        ),
    ];
    let mut spec = String::new();
    let mut listed = String::new();
    for (test, expect) in &tests {
        let id =
            test.split_once("[test.").and_then(|(_, rest)| rest.split_once(']')).map_or("", |(id, _)| id);
        writeln!(spec, "{test}expect = {{ {expect} }}").expect("text");
        write!(listed, "{{ test = \"{id}\", note = \"{long}\" }}, ").expect("text");
    }
    write!(
        spec,
        r#"
[test.short]
title = "A"
component = "system.gull"
quantity = "observation"
place = "vehicle"
ignition = "key off"
meter = "none"
expect = {{ form = "sequence", steps = [{{ event = "B", expect = "C" }}, {{ event = "D", expect = "E", within = "1 s" }}] }}

[sheet.EVERY-FORM]
title = "{LONG_TITLE}"
system = "gull"
meter = "bench"
surface = "laminated, permanent"

[[sheet.EVERY-FORM.group]]
title = "{LONG_TITLE}"
test = [{listed} {{ test = "short" }}]

[[sheet.EVERY-FORM.group]]
title = "A"
test = [{{ test = "short" }}]

[report.EVERY-FORM-REPORT]
title = "{LONG_TITLE}"
sheet = "EVERY-FORM"
evidence = ["curve", "window", "difference"]

[report.FORTY-REPORT]
title = "R"
sheet = "FORTY"
"#
    )
    .expect("text");
    spec
}
