//! One row: what, where, what to expect, where to write.

use schemars::JsonSchema;
use serde::Serialize;

use super::group::Quoted;
use super::{place, state};
use crate::document::Context;
use crate::document::expectation::unit_of;
use crate::document::expectation::{self, Asked, Expectation, Field, Sketch, StepRow, Tools};
use crate::document::marks::Marks;
use crate::document::sensor_card::reading::Readings;
use crate::model::{Row, Test, Vehicle};
use crate::physics::circuit::Probe;
use crate::spec::{Measure, Spot};

/// One row of the data that the template gets.
#[derive(Debug, Default, Serialize, JsonSchema)]
pub(super) struct TestRow {
    /// Its number: `1`.
    pub number: String,
    /// What is tested.
    title: String,
    /// When or how; may be empty.
    note: String,
    /// Between which pins, with the meter's leads: `C3/1 + C3/3 −`.
    pins: String,
    /// How the connector is seen; empty where the group says it.
    pub view: String,
    /// The window: `1.285–1.424`, or words.
    expect: String,
    /// The window's unit; empty where there is no window.
    expect_unit: String,
    /// The reading's unit, printed in the box to write in; null where there is no such box.
    unit: Option<String>,
    /// Under the window: service limit, doubt, what an unplugged line reads; may be empty.
    expect_sub: String,
    /// The line below that.
    expect_sub2: String,
    /// The last of these lines.
    expect_sub3: String,
    /// Letters of its sources.
    marks: String,
    /// What must be so before, where something else is expected: under the row.
    lines: Vec<String>,
    /// More boxes to write in.
    fields: Vec<Field>,
    /// Rows of its own.
    steps: Vec<StepRow>,
    /// The line to be seen on a scope; null for other tests.
    sketch: Option<Sketch>,
    /// Whether there is anything to do on this vehicle.
    applies: bool,
}

/// A sensor, measured as its group says.
pub(super) fn of_sensor(
    context: Context<'_>,
    tools: Tools<'_>,
    row: &Row,
    (id, measure, spot): (&str, Measure, Spot),
    marks: &mut Marks,
) -> Option<TestRow> {
    let Context { model, words, bay, units, .. } = context;
    let sensor = model.sensors.get(id)?;
    let (end, probe) = match spot {
        Spot::ControlUnit => (&sensor.control_unit, Probe::ControlUnit),
        Spot::Sensor => (&sensor.component, Probe::Sensor),
    };
    let readings = Readings::at(sensor, tools.meter, probe);
    let card = row.card.as_deref();
    let expected =
        Asked { words, units, tools, readings: &readings, measure, place: spot, card }.expected(bay);
    let unit = unit_of(measure);
    Some(TestRow {
        title: sensor.title.clone(),
        note: row.note.clone().unwrap_or_default(),
        pins: end
            .as_ref()
            .map_or_else(|| words.word("doc-not-given"), |end| place::probes(words, sensor, end, measure)),
        view: end.as_ref().map_or_else(String::new, |end| place::seen(words, end, measure, spot)),
        unit: Some(unit.to_owned()),
        expect_unit: if expected.is_window { unit } else { "" }.to_owned(),
        expect: expected.main,
        expect_sub: expected.sub,
        expect_sub2: expected.sub2,
        expect_sub3: expected.sub3,
        marks: marks.letters(words, expectation::facts_with_pins(sensor, measure)),
        applies: true,
        ..TestRow::default()
    })
}

/// A test of its own; `shared` is the state that stands over its group.
pub(super) fn of_test(
    context: Context<'_>,
    tools: Tools<'_>,
    row: &Row,
    test: &Test,
    (vehicle, shared): (&Vehicle, &[String]),
    marks: &mut Marks,
) -> Option<TestRow> {
    let words = context.words;
    let marks = marks.letters(words, expectation::facts(context, test));
    let title = test.title.clone();
    let note = row.note.clone().unwrap_or_default();
    if let Some(why) = state::not_applicable(words, test, vehicle) {
        return Some(TestRow { title, note, marks, expect_sub: why, ..TestRow::default() });
    }
    let found = expectation::of(context, test, tools, row.card.as_deref());
    let Expectation { main, unit, subs, reading, fields, steps, sketch } = found;
    let mut subs = subs.into_iter();
    let mut sub = || subs.next().unwrap_or_default();
    Some(TestRow {
        title,
        note,
        pins: state::probes(context, test),
        view: state::view(context, test),
        expect: main,
        expect_unit: unit,
        unit: reading,
        expect_sub: sub(),
        expect_sub2: sub(),
        expect_sub3: sub(),
        marks,
        lines: state::lines(words, test, shared),
        fields,
        steps,
        sketch,
        applies: true,
        ..TestRow::default()
    })
}

impl TestRow {
    /// The row as a report quotes it.
    pub(super) fn quoted(self, test: String) -> Quoted {
        let figure = if self.expect_unit.is_empty() {
            self.expect
        } else {
            format!("{} {}", self.expect, self.expect_unit)
        };
        let window = if figure.is_empty() { self.expect_sub } else { figure };
        Quoted { number: self.number, title: self.title, window, unit: self.unit.unwrap_or_default(), test }
    }
}
