//! A group of tests: its head, its rows, and what their wrong readings mean.

use schemars::JsonSchema;
use serde::Serialize;

use super::row::{self, TestRow};
use super::{expect_head, place, state};
use crate::document::Context;
use crate::document::expectation::Tools;
use crate::document::marks::Marks;
use crate::model::{Group, RowOf, Sheet, Test, Vehicle};

/// Tests under one head.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct TestGroup {
    /// Its head.
    title: String,
    /// In which state all is tested, what is mated, what the meter is set to.
    state: String,
    /// How the connectors are seen, where all rows share it.
    view: String,
    /// Head of the column of windows: `Expect at 31.0 °C`.
    expect_head: String,
    /// The tests in their order.
    rows: Vec<TestRow>,
}

/// One row as a report quotes it.
#[derive(Debug, Serialize, JsonSchema)]
pub(in crate::document) struct Quoted {
    /// Its number on the sheet.
    pub number: String,
    /// What is tested.
    pub title: String,
    /// The window, or what stands in its place.
    pub window: String,
    /// The unit of the reading.
    pub unit: String,
    /// The test's id; empty for a sensor.
    #[serde(skip)]
    pub test: String,
}

/// The rows of a sheet for one vehicle as a report quotes them.
pub(in crate::document) fn quoted(
    context: Context<'_>,
    sheet: &Sheet,
    vehicle: &Vehicle,
    marks: &mut Marks,
) -> Vec<Quoted> {
    let (groups, _) = all(context, sheet, vehicle, marks);
    let ids = sheet.groups.iter().flat_map(|group| &group.rows).map(|row| match &row.of {
        RowOf::Test(id) => id.clone(),
        RowOf::Sensor { .. } => String::new(),
    });
    let rows = groups.into_iter().flat_map(|group| group.rows);
    rows.zip(ids).map(|(row, test)| row.quoted(test)).collect()
}

/// What wrong readings of one test mean, and what to do next.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Meaning {
    /// The test's number.
    number: String,
    /// A reading and what it means each.
    lines: Vec<String>,
}

/// Every group of a sheet for one vehicle, its rows numbered through.
pub(super) fn all(
    context: Context<'_>,
    sheet: &Sheet,
    vehicle: &Vehicle,
    marks: &mut Marks,
) -> (Vec<TestGroup>, Vec<Meaning>) {
    let tools = Tools {
        shop: &context.model.shop,
        thermometer: sheet.thermometer.as_ref(),
        meter: sheet.meter.as_ref(),
    };
    let mut number = 0;
    let mut meanings = Vec::new();
    let group = |group: &Group| {
        let shared = state::of_group(context, group);
        let rows = group.rows.iter().filter_map(|entry| {
            number += 1;
            let made = match &entry.of {
                RowOf::Sensor { id, measure, place } => {
                    row::of_sensor(context, tools, entry, (id, *measure, *place), marks)
                }
                RowOf::Test(id) => {
                    let test = context.model.tests.get(id)?;
                    meanings.extend(meaning(context, test, number));
                    row::of_test(context, tools, entry, test, (vehicle, &shared), marks)
                }
            };
            made.map(|mut made| {
                made.number = number.to_string();
                made
            })
        });
        let mut rows: Vec<TestRow> = rows.collect();
        let mated = group.measured().map(|(measure, spot)| context.words.word(place::mated(measure, spot)));
        TestGroup {
            title: group.title.clone(),
            state: group.state.iter().cloned().chain(shared).chain(mated).collect::<Vec<_>>().join(" · "),
            view: shared_view(&mut rows),
            rows,
            expect_head: expect_head(context),
        }
    };
    (sheet.groups.iter().map(group).collect(), meanings)
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

fn meaning(context: Context<'_>, test: &Test, number: usize) -> Option<Meaning> {
    let words = context.words;
    let means = |(reads, means): &(String, String)| {
        words.say(&crate::words::Message::new("sheet-means").with("reads", reads).with("means", means))
    };
    let lines: Vec<String> = test.faults.iter().map(means).chain(test.next.iter().cloned()).collect();
    (!lines.is_empty()).then(|| Meaning { number: number.to_string(), lines })
}
