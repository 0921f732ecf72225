//! The test sheet: what to measure on one vehicle, where, and what to expect.

pub(super) mod group;
pub(super) mod header;
mod place;
mod row;
mod state;

use schemars::JsonSchema;
use serde::Serialize;

use super::caution::{self, Cautions, Room, Touch};
use super::figures;
use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::write_on::{self, WriteOn};
use super::{Context, Data, Document, Listed, Paperwork, finish};
use crate::model::{RowOf, Sheet, Shop};
use crate::quantity::{Temperature, Units};
use crate::spec::{Reads, Surface, Thing};
use crate::words::Message;
use group::TestGroup;

const TEMPLATE: &str = "test-sheet.typ";

/// Conditions to write down before measuring, with the unit printed in the box.
pub(super) const BOXES: [(&str, &str); 12] = [
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
    ("sheet-box-key", ""),
    ("sheet-box-mode", ""),
];

const SIGN_OFF: [&str; 4] =
    ["sheet-sign-name", "sheet-sign-signature", "sheet-sign-date", "sheet-sign-checked"];

/// Everything a test sheet's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct TestSheet {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// What is known of the vehicle.
    vehicle: Vec<header::Labelled>,
    /// Boxes for technician, date and conditions.
    boxes: Vec<WriteOn>,
    /// The label of the box for the complaint.
    complaint: String,
    /// What is measured with.
    instruments: Vec<header::Instrument>,
    /// The bay temperature of the windows: `31.0 °C (87.8 °F)`; may be empty.
    at: String,
    /// When the windows hold.
    at_note: String,
    /// What bold, service and ± mean.
    legend: String,
    /// The tests.
    groups: Vec<TestGroup>,
    /// What wrong readings of single tests mean, by their numbers.
    meanings: Vec<group::Meaning>,
    /// What else a reading may mean, a text each.
    else_lines: Vec<String>,
    /// Labels of the boxes for who signs.
    sign_off: Vec<Label>,
    /// The caution box.
    cautions: Cautions,
    /// How to correct an entry, and what to write with.
    corrections: String,
    /// Whether there are lines for remarks.
    remarks: bool,
}

impl Data for TestSheet {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// A box to sign in.
#[derive(Debug, Serialize, JsonSchema)]
struct Label {
    /// What belongs into it.
    label: String,
}

/// Composes the sheet of one vehicle.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, bay, .. } = context;
    let Paperwork::TestSheet { vehicle } = &listed.paperwork else { return None };
    let sheet = model.sheets.get(&listed.spec)?;
    let vehicle = model.vehicles.get(vehicle)?;
    let system = model.systems.get(&sheet.system)?;
    let mut marks = Marks::of(context.units);
    let title = Message::new("sheet-title").with("title", &sheet.title).with("vehicle", &vehicle.title);
    let kind = Kind {
        word: "doc-test-sheet",
        size: context.size_of(listed),
        title: words.say(&title),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, &sheet.system, system, &mut marks);
    let (groups, meanings) = group::all(context, sheet, vehicle, &mut marks);
    let data = TestSheet {
        furniture,
        vehicle: header::identity(words, vehicle, &system.title, &mut marks),
        complaint: words.word("sheet-box-complaint"),
        boxes: write_on::boxes(context, &BOXES),
        instruments: header::instruments(words, model, sheet, &mut marks),
        at: bay.map(|at| in_scales(context.units, at)).unwrap_or_default(),
        at_note: words.word(if bay.is_some() { "sheet-bay" } else { "sheet-no-bay" }),
        legend: header::legend(words, model, sheet, &mut marks),
        groups,
        meanings,
        else_lines: else_lines(&model.shop, sheet).into_iter().map(|id| words.word(id)).collect(),
        sign_off: SIGN_OFF.map(|id| Label { label: words.word(id) }).into(),
        cautions: caution::of(words, &touches(context, sheet), Room::Sheet),
        corrections: format!("{} {}", words.word(ink(sheet)), words.word("sheet-corrections")),
        remarks: true,
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

fn ink(sheet: &Sheet) -> &'static str {
    match sheet.surface {
        Surface::Paper => "sheet-surface-paper",
        Surface::WetErase => "sheet-surface-wet-erase",
        Surface::Permanent => "sheet-surface-permanent",
    }
}

/// What the tests of a sheet bring a person near to.
fn touches(context: Context<'_>, sheet: &Sheet) -> Vec<Touch> {
    let ids = sheet.groups.iter().flat_map(|group| &group.rows).filter_map(|row| match &row.of {
        RowOf::Test(id) => context.model.tests.get(id),
        RowOf::Sensor { .. } => None,
    });
    let mut touches = caution::AROUND.to_vec();
    for test in ids {
        let posts = test.probes.iter().flatten().any(|probe| probe.name.starts_with("battery"));
        if posts && !touches.contains(&Touch::Battery) {
            touches.push(Touch::Battery);
        }
        let pressure = test.reads == Reads::Pressure || test.thing == Thing::Refrigerant;
        if pressure && !touches.contains(&Touch::Refrigerant) {
            touches.push(Touch::Refrigerant);
        }
    }
    touches
}

/// What wrong readings mean in general; most of it is about sensors.
fn else_lines(shop: &Shop, sheet: &Sheet) -> Vec<&'static str> {
    let sensors = sheet.groups.iter().any(|group| group.measured().is_some());
    let of_sensors = ["sheet-else-open", "sheet-else-other-end", "sheet-else-ohms", "sheet-else-all"];
    let near = if sensors { header::near_a_limit(shop) } else { header::near_a_limit_of_any(shop) };
    of_sensors.into_iter().filter(|_| sensors).chain([near]).collect()
}

/// A temperature in the scales of the edition: `87.8 °F`, or in both `31.0 °C (87.8 °F)`.
fn in_scales(units: Units, at: Temperature) -> String {
    let first = figures::tenths(units, at);
    if units == Units::Both { format!("{first} ({})", figures::tenths(Units::Us, at)) } else { first }
}

fn expect_head(Context { words, bay, units, .. }: Context<'_>) -> String {
    match bay {
        Some(at) => {
            let at = figures::tenths(units, at);
            words.say(&Message::new("sheet-expect-at").with("temperature", at))
        }
        None => words.word("sheet-expect"),
    }
}
