//! The test sheet: what to measure on one vehicle, where, and what to expect.

mod expected;
mod header;
mod place;

use serde::Serialize;

use super::caution::{self, Cautions, Room};
use super::furniture::{Furniture, Kind, shop_paper};
use super::marks::Marks;
use super::sensor_card::reading::Readings;
use super::{Context, Data, Document, Listed, Paperwork, finish};
use crate::model::{Fact, Group, PinEnd, Row, Sensor, Sheet};
use crate::physics::circuit::Probe;
use crate::quantity::{Rounding, Temperature, figure};
use crate::spec::{Measure, Spot};
use crate::words::{Message, Words};
use expected::Test;

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
    vehicle: Vec<header::Labelled>,
    boxes: Vec<WriteOn>,
    instruments: Vec<header::Instrument>,
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
struct Label {
    label: String,
}

#[derive(Debug, Serialize)]
struct WriteOn {
    label: String,
    unit: &'static str,
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
        paper: shop_paper(model),
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
            state: place::state(words, group),
            view: shared_view(&mut rows),
            rows,
            expect_head: expect_head(words, bay),
        }
    });
    let groups = groups.collect();
    let data = TestSheet {
        furniture,
        vehicle: header::identity(words, vehicle, &system.title, &mut marks),
        boxes: BOXES.map(|(id, unit)| WriteOn { label: words.word(id), unit }).into(),
        instruments: header::instruments(words, &model.shop, sheet, &mut marks),
        at: bay.map(both_scales).unwrap_or_default(),
        at_note: words.word(if bay.is_some() { "sheet-bay" } else { "sheet-no-bay" }),
        legend: header::legend(words, &model.shop, sheet, &mut marks),
        groups,
        else_lines: [
            "sheet-else-open",
            "sheet-else-other-end",
            "sheet-else-ohms",
            "sheet-else-all",
            header::near_a_limit(&model.shop),
        ]
        .map(|id| words.word(id))
        .into(),
        sign_off: SIGN_OFF.map(|id| Label { label: words.word(id) }).into(),
        cautions: caution::of(words, caution::AROUND, Room::Sheet),
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
    let test = Test {
        words,
        shop: &model.shop,
        sheet,
        readings: &readings,
        measure: group.measure,
        place: group.place,
        row,
    };
    let expected = test.expected(bay);
    let not_given = || words.word("doc-not-given");
    let unit = match group.measure {
        Measure::Voltage | Measure::OpenVoltage => "V",
        Measure::Resistance => "Ω",
    };
    Some(TestRow {
        number: number.to_string(),
        title: sensor.title.clone(),
        note: row.note.clone().unwrap_or_default(),
        pins: end.as_ref().map_or_else(not_given, |end| place::probes(words, sensor, end, group.measure)),
        view: end.as_ref().map_or_else(String::new, |end| place::seen(words, end, group)),
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
