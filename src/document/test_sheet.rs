//! The test sheet: what to measure on one vehicle, where, and what to expect.

use serde::Serialize;

use super::caution::{self, Cautions};
use super::figures::{self, VOLT_DECIMALS};
use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::sensor_card::reading::{self, Readings};
use super::sensor_card::{self, advice, view};
use super::{Context, Data, Document, Listed, Paperwork, finish};
use crate::model::{Fact, Group, PinEnd, Row, Sensor, Sheet, Vehicle};
use crate::physics::Band;
use crate::physics::circuit::Probe;
use crate::physics::uncertainty::expanded;
use crate::quantity::{Resistance, Rounding, Temperature, Voltage, decimals_for, figure};
use crate::spec::{Measure, Paper, Side, Spot};
use crate::words::{Message, Words};

const TEMPLATE: &str = "test-sheet.typ";

/// Conditions to write down before measuring, with the unit printed in the box.
const BOXES: [(&str, &str); 11] = [
    ("sheet-box-technician", ""),
    ("sheet-box-date", ""),
    ("sheet-box-odometer", "km"),
    ("sheet-box-bay", "°C"),
    ("sheet-box-humidity", "%"),
    ("sheet-box-soak", "h"),
    ("sheet-box-battery-rest", "V"),
    ("sheet-box-battery-running", "V"),
    ("sheet-box-reference", "V"),
    ("sheet-box-leads", "Ω"),
    ("sheet-box-complaint", ""),
];

const SIGN_OFF: [&str; 4] =
    ["sheet-sign-name", "sheet-sign-signature", "sheet-sign-date", "sheet-sign-checked"];

/// Everything a test sheet's template gets.
#[derive(Debug, Serialize)]
struct TestSheet {
    furniture: Furniture,
    vehicle: Vec<Labelled>,
    boxes: Vec<WriteOn>,
    instruments: Vec<Instrument>,
    at: String,
    at_note: String,
    legend: String,
    groups: Vec<TestGroup>,
    else_lines: Vec<String>,
    sign_off: Vec<Label>,
    cautions: Cautions,
    remarks: bool,
}

impl Data for TestSheet {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

#[derive(Debug, Serialize)]
struct Labelled {
    label: String,
    value: String,
}

#[derive(Debug, Serialize)]
struct Label {
    label: String,
}

#[derive(Debug, Serialize)]
struct WriteOn {
    label: String,
    unit: &'static str,
}

#[derive(Debug, Serialize)]
struct Instrument {
    role: String,
    name: String,
    accuracy: String,
}

#[derive(Debug, Serialize)]
struct TestGroup {
    title: String,
    state: String,
    /// How the connectors are seen, where all rows share it.
    view: String,
    expect_head: String,
    rows: Vec<TestRow>,
}

#[derive(Debug, Serialize)]
struct TestRow {
    number: String,
    title: String,
    note: String,
    pins: String,
    view: String,
    expect: String,
    /// The window's unit; empty where there is no window.
    expect_unit: &'static str,
    /// The reading's unit, printed in the box to write in.
    unit: &'static str,
    expect_sub: String,
    expect_sub2: String,
    expect_sub3: String,
    marks: String,
}

/// Composes the sheet of one vehicle.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, bay, .. } = context;
    let Paperwork::TestSheet { vehicle } = &listed.paperwork else { return None };
    let sheet = model.sheets.get(&listed.spec)?;
    let vehicle = model.vehicles.get(vehicle)?;
    let system = model.systems.get(&sheet.system)?;
    let mut marks = Marks::default();
    let title = Message::new("sheet-title").with("title", &sheet.title).with("vehicle", &vehicle.title);
    let kind = Kind {
        word: "doc-test-sheet",
        paper: match model.shop.paper {
            Paper::A4 => "a4",
            Paper::Letter => "us-letter",
        },
        title: words.say(&title),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, &sheet.system, system, &mut marks);
    let mut number = 0;
    let groups = sheet.groups.iter().map(|group| {
        let rows = group.rows.iter().filter_map(|row| {
            number += 1;
            test_row(context, sheet, group, row, number, &mut marks)
        });
        let mut rows: Vec<TestRow> = rows.collect();
        TestGroup {
            title: group.title.clone(),
            state: state(words, group),
            view: shared_view(&mut rows),
            rows,
            expect_head: expect_head(words, bay),
        }
    });
    let groups = groups.collect();
    let data = TestSheet {
        furniture,
        vehicle: identity(words, vehicle, &system.title, &mut marks),
        boxes: BOXES.map(|(id, unit)| WriteOn { label: words.word(id), unit }).into(),
        instruments: instruments(words, sheet, &mut marks),
        at: bay.map(both_scales).unwrap_or_default(),
        at_note: words.word(if bay.is_some() { "sheet-bay" } else { "sheet-no-bay" }),
        legend: words.word("sheet-legend"),
        groups,
        else_lines: [
            "sheet-else-open",
            "sheet-else-other-end",
            "sheet-else-ohms",
            "sheet-else-all",
            "sheet-else-undecided",
        ]
        .map(|id| words.word(id))
        .into(),
        sign_off: SIGN_OFF.map(|id| Label { label: words.word(id) }).into(),
        cautions: caution::on_a_sheet(words),
        remarks: true,
    };
    Some(finish(listed, (TEMPLATE, 0), data, marks))
}

/// The view that all rows share is said once, over them.
fn shared_view(rows: &mut [TestRow]) -> String {
    let Some(first) = rows.first().map(|row| row.view.clone()) else { return String::new() };
    if rows.iter().any(|row| row.view != first) {
        return String::new();
    }
    rows.iter_mut().for_each(|row| row.view.clear());
    first
}

/// A temperature in both scales: `31.0 °C (87.8 °F)`.
fn both_scales(at: Temperature) -> String {
    let one = |value| figure(value, 1, Rounding::Nearest);
    format!("{} °C ({} °F)", one(at.celsius()), one(at.fahrenheit()))
}

fn expect_head(words: &Words, bay: Option<Temperature>) -> String {
    match bay {
        Some(at) => {
            let at = format!("{} °C", figure(at.celsius(), 1, Rounding::Nearest));
            words.say(&Message::new("sheet-expect-at").with("temperature", at))
        }
        None => words.word("sheet-expect"),
    }
}

/// The group's state, and what is mated for this measurement.
fn state(words: &Words, group: &Group) -> String {
    let mated = match (group.measure, group.place) {
        (Measure::Voltage, _) => "sheet-all-mated",
        (Measure::OpenVoltage, _) => "sheet-sensor-unmated",
        (Measure::Resistance, Spot::ControlUnit) => "sheet-unit-unmated",
        (Measure::Resistance, Spot::Sensor) => "sheet-sensor-unmated",
    };
    format!("{} · {}", group.state, words.word(mated))
}

fn identity(words: &Words, vehicle: &Vehicle, system: &str, marks: &mut Marks) -> Vec<Labelled> {
    let mut known = |part: &str, label, value: &Option<String>| {
        let fact = Fact {
            key: format!("vehicle.{}.{part}", vehicle.id),
            label,
            written: value.clone(),
            source: Some(String::new()),
        };
        if fact.is_missing() {
            marks.mark(words, &fact);
        }
        Labelled {
            label: words.word(label),
            value: fact.written.unwrap_or_else(|| words.word("doc-not-given")),
        }
    };
    vec![
        known("title", "sheet-vehicle", &Some(vehicle.title.clone())),
        known("system", "sheet-system", &Some(system.to_owned())),
        known("registration", "sheet-registration", &vehicle.registration),
        known("chassis", "sheet-chassis", &vehicle.chassis),
        known("built", "sheet-built", &vehicle.built),
    ]
}

fn instruments(words: &Words, sheet: &Sheet, marks: &mut Marks) -> Vec<Instrument> {
    let mut all = Vec::new();
    let mut line = |role, found: Option<(&String, &Vec<Fact>)>| {
        let Some((title, facts)) = found else {
            let not_given = words.word("doc-not-given");
            let key = format!("sheet.{}.{role}", sheet.id);
            marks.mark(words, &Fact::new::<()>(key, role, None));
            all.push(Instrument { role: words.word(role), name: not_given, accuracy: String::new() });
            return;
        };
        let shown = facts.iter().map(|fact| {
            let value = Message::new("sheet-instrument-value")
                .with_word("what", fact.label)
                .with("value", marks.shown(words, fact));
            words.say(&value)
        });
        let accuracy = shown.collect::<Vec<_>>().join(" · ");
        all.push(Instrument { role: words.word(role), name: title.clone(), accuracy });
    };
    let thermometer = sheet.thermometer.as_ref();
    line("sheet-thermometer", thermometer.map(|meter| (&meter.title, &meter.facts)));
    line("sheet-multimeter", sheet.meter.as_ref().map(|meter| (&meter.title, &meter.facts)));
    all
}

fn test_row(
    context: Context<'_>,
    sheet: &Sheet,
    group: &Group,
    row: &Row,
    number: usize,
    marks: &mut Marks,
) -> Option<TestRow> {
    let Context { model, words, bay, .. } = context;
    let sensor = model.sensors.get(&row.sensor)?;
    let (end, probe) = match group.place {
        Spot::ControlUnit => (&sensor.control_unit, Probe::ControlUnit),
        Spot::Sensor => (&sensor.component, Probe::Sensor),
    };
    let readings = Readings::at(sensor, sheet.meter.as_ref(), probe);
    let expected = expected(words, sheet, &readings, group.measure, bay, row);
    let not_given = || words.word("doc-not-given");
    let unit = match group.measure {
        Measure::Voltage | Measure::OpenVoltage => "V",
        Measure::Resistance => "Ω",
    };
    Some(TestRow {
        number: number.to_string(),
        title: sensor.title.clone(),
        note: row.note.clone().unwrap_or_default(),
        pins: end.as_ref().map_or_else(not_given, |end| probes(words, sensor, end, group.measure)),
        view: end.as_ref().map_or_else(String::new, |end| seen(words, end, group)),
        unit,
        expect_unit: if expected.is_window { unit } else { "" },
        expect: expected.main,
        expect_sub: expected.sub,
        expect_sub2: expected.sub2,
        expect_sub3: expected.sub3,
        marks: marks.letters(words, facts(sensor, group.measure)),
    })
}

/// The facts that a row's window rests on.
fn facts(sensor: &Sensor, measure: Measure) -> Vec<&Fact> {
    let pins = [&sensor.control_unit, &sensor.component].into_iter().flatten();
    // A sheet names pins, not wires.
    let pins = pins.flat_map(PinEnd::facts).filter(|fact| fact.label != "fact-wire");
    let curve = sensor.curve_facts.iter().filter(|_| measure != Measure::OpenVoltage);
    let circuit = sensor.circuit_facts.iter().filter(|_| measure != Measure::Resistance);
    let other = sensor.other_facts.iter().filter(|fact| fact.label == "fact-service-limit");
    curve.chain(circuit).chain(other).chain(pins).collect()
}

/// How the half of the connector that is probed is seen.
///
/// Unplugged, ohms at the sensor are measured on the component's half, all else
/// on the harness's. Where the spec describes the other half, its view and latch
/// would be a mirror image: then only the half is named.
fn seen(words: &Words, end: &PinEnd, group: &Group) -> String {
    let (wanted, half) = match (group.measure, group.place) {
        (Measure::Voltage, _) => return view(words, end),
        (Measure::Resistance, Spot::Sensor) => (Side::Component, "sheet-component-half"),
        _ => (Side::Harness, "sheet-harness-half"),
    };
    if end.side == Some(wanted) { view(words, end) } else { words.word(half) }
}

/// Where the two probes go; ohms have no polarity.
fn probes(words: &Words, sensor: &Sensor, end: &PinEnd, measure: Measure) -> String {
    if measure != Measure::Resistance {
        return sensor_card::probes(words, sensor, end);
    }
    let pins = end.signal.iter().chain(&end.other).map(|pin| pin.name.as_str());
    pins.collect::<Vec<_>>().join("  ")
}

/// What the instruments leave undecided next to a limit.
///
/// The expanded uncertainty from the thermometer, through the sensor's slope, and
/// from the meter at the window's upper end. `None` where an instrument's
/// accuracy was not given.
fn doubt(
    words: &Words,
    sheet: &Sheet,
    measure: Measure,
    window: Band<f64>,
    per_kelvin: f64,
) -> Option<String> {
    let thermometer = sheet.thermometer.as_ref()?.limit?.kelvins();
    let meter = sheet.meter.as_ref()?;
    let (range, decimals, unit) = match measure {
        Measure::Resistance => (meter.ohms?, decimals_for(window.nominal), "Ω"),
        Measure::Voltage | Measure::OpenVoltage => (meter.volts?, VOLT_DECIMALS, "V"),
    };
    let (accuracy, digit) = range;
    let meter = accuracy.limit(window.high, digit);
    let doubt = expanded(&[thermometer * per_kelvin.abs(), meter]);
    let id = if 2.0 * doubt < window.high - window.low { "sheet-doubt" } else { "sheet-doubt-all" };
    let doubt = figure(doubt, decimals, Rounding::Up);
    Some(words.say(&Message::new(id).with("doubt", doubt).with("unit", unit)))
}

/// The window of one row and the lines under it.
#[derive(Debug, Default)]
struct Expected {
    main: String,
    is_window: bool,
    sub: String,
    sub2: String,
    sub3: String,
}

fn expected(
    words: &Words,
    sheet: &Sheet,
    readings: &Readings<'_>,
    measure: Measure,
    bay: Option<Temperature>,
    row: &Row,
) -> Expected {
    let sensor = readings.sensor;
    if measure == Measure::OpenVoltage {
        // Unplugged, the line does not depend on the bay's temperature.
        let limits = readings.open().filter(|_| readings.limits_known());
        return match (limits, readings.open()) {
            (Some(band), _) => Expected { main: volt_range(band), is_window: true, ..Expected::default() },
            (None, Some(band)) => nominal_only(words, &figures::nominal_volts(band.nominal.volts()), "V"),
            (None, None) => Expected { main: words.word("doc-not-given"), ..Expected::default() },
        };
    }
    let Some(at) = bay else {
        let sub = match &row.card {
            Some(card) => words.say(&Message::new("sheet-see-card").with("card", card)),
            None => words.word("sheet-no-card"),
        };
        return Expected { sub, ..Expected::default() };
    };
    if !sensor.range.contains(&at) {
        let outside = Message::new("sheet-outside")
            .with("low", figures::celsius(sensor.range.low))
            .with("high", figures::celsius(sensor.range.high));
        return Expected { sub: words.say(&outside), ..Expected::default() };
    }
    let service = |window: String, unit: &str| {
        words.say(&Message::new("sheet-service").with("window", window).with("unit", unit))
    };
    if measure == Measure::Resistance {
        let Some(band) = readings.ohm_band(at) else {
            let nominal = readings.ohms(at).map(|ohms| figures::nominal_ohms(ohms.ohms()));
            return nominal_only(words, &nominal.unwrap_or_default(), "Ω");
        };
        let plain = Band { low: band.low.ohms(), nominal: band.nominal.ohms(), high: band.high.ohms() };
        let per_kelvin = sensor.curve.slope(at).map_or(0.0, |slope| slope * plain.nominal);
        return Expected {
            main: ohm_range(band),
            is_window: true,
            sub: readings.service_ohms(at).map(|band| service(ohm_range(band), "Ω")).unwrap_or_default(),
            sub2: doubt(words, sheet, measure, plain, per_kelvin).unwrap_or_default(),
            ..Expected::default()
        };
    }
    let Some(band) = readings.volt_band(at) else {
        let nominal = readings.volts(at).map(|volts| figures::nominal_volts(volts.volts()));
        return nominal_only(words, &nominal.unwrap_or_default(), "V");
    };
    let plain = Band { low: band.low.volts(), nominal: band.nominal.volts(), high: band.high.volts() };
    let unplugged = readings.open().map(|band| {
        let window = advice::span(words, band);
        words.say(&Message::new("sheet-unplugged").with("window", window))
    });
    Expected {
        main: volt_range(band),
        is_window: true,
        sub: readings.service_volts(at).map(|band| service(volt_range(band), "V")).unwrap_or_default(),
        sub2: doubt(words, sheet, measure, plain, readings.volts_per_kelvin(at)).unwrap_or_default(),
        sub3: unplugged.unwrap_or_default(),
    }
}

/// NOT GIVEN where a window should be, with the nominal value where that is known.
fn nominal_only(words: &Words, nominal: &str, unit: &str) -> Expected {
    let main = words.word("doc-not-given");
    if nominal.is_empty() {
        return Expected { main, ..Expected::default() };
    }
    let value = Message::new("sheet-record-only").with("value", format!("{nominal} {unit}"));
    Expected { main, sub: words.say(&value), ..Expected::default() }
}

fn volt_range(band: Band<Voltage>) -> String {
    figures::range(&reading::volts(band))
}

fn ohm_range(band: Band<Resistance>) -> String {
    figures::range(&reading::ohms(band))
}
