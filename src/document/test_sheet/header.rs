//! The head of a sheet: which vehicle, which instruments.

use schemars::JsonSchema;
use serde::Serialize;

use crate::document::marks::Marks;
use crate::document::said;
use crate::model::{Fact, Model, Multimeter, RowOf, Sheet, Shop, Vehicle};
use crate::physics::decision::Rule;
use crate::spec::{Measure, Reads};
use crate::words::{Message, Words};

/// A known fact of the vehicle.
#[derive(Debug, Serialize, JsonSchema)]
pub(in crate::document) struct Labelled {
    /// What it is.
    label: String,
    /// Its value, or NOT GIVEN.
    value: String,
}

/// An instrument, and how far to trust it.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Instrument {
    /// What it is used for.
    role: String,
    /// Which one.
    name: String,
    /// How far to trust it, with its sources' letters.
    accuracy: String,
}

/// What is known of the vehicle; what is not is NOT GIVEN.
pub(in crate::document) fn identity(
    words: &Words,
    vehicle: &Vehicle,
    system: &str,
    marks: &mut Marks,
) -> Vec<Labelled> {
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
        Labelled { label: words.word(label), value: said(words, &fact) }
    };
    vec![
        known("title", "sheet-vehicle", &Some(vehicle.title.clone())),
        known("system", "sheet-system", &Some(system.to_owned())),
        known("registration", "sheet-registration", &vehicle.registration),
        known("chassis", "sheet-chassis", &vehicle.chassis),
        known("built", "sheet-built", &vehicle.built),
    ]
}

/// The instruments that windows and ± assume.
pub(super) fn instruments(words: &Words, model: &Model, sheet: &Sheet, marks: &mut Marks) -> Vec<Instrument> {
    let shop = &model.shop;
    let mut all = Vec::new();
    let mut line = |role, found: Option<(&String, Vec<&Fact>)>| {
        let Some((title, facts)) = found else {
            let not_given = words.word("doc-not-given");
            let key = format!("sheet.{}.{role}", sheet.id);
            marks.mark(words, &Fact::new::<()>(key, role, None));
            all.push(Instrument { role: words.word(role), name: not_given, accuracy: String::new() });
            return;
        };
        let shown = facts.into_iter().map(|fact| {
            let value = Message::new("sheet-instrument-value")
                .with_word("what", fact.label)
                .with("value", marks.shown(words, fact));
            words.say(&value)
        });
        let accuracy = shown.collect::<Vec<_>>().join(" · ");
        all.push(Instrument { role: words.word(role), name: title.clone(), accuracy });
    };
    let soak = || shop.facts.iter().filter(|fact| fact.label == "fact-soak");
    let thermometer = sheet.thermometer.as_ref();
    line(
        "sheet-thermometer",
        thermometer.map(|meter| (&meter.title, meter.facts.iter().chain(soak()).collect())),
    );
    // Leads add nothing to volts.
    let ohms = reads_ohms(model, sheet);
    let of_meter = |fact: &&Fact| ohms || fact.label != "fact-leads";
    let meter = sheet.meter.as_ref();
    line(
        "sheet-multimeter",
        meter.map(|meter| (&meter.title, meter.facts.iter().filter(of_meter).collect())),
    );
    for meter in own_meters(model, sheet) {
        line("sheet-own-meter", Some((&meter.title, meter.facts.iter().collect())));
    }
    all
}

/// The meters that single tests ask for, each once.
fn own_meters<'a>(model: &'a Model, sheet: &Sheet) -> Vec<&'a Multimeter> {
    let mut found: Vec<&Multimeter> = Vec::new();
    for row in sheet.groups.iter().flat_map(|group| &group.rows) {
        let RowOf::Test(id) = &row.of else { continue };
        let meter = model.tests.get(id).and_then(|test| test.instrument.as_ref());
        found.extend(meter.filter(|meter| found.iter().all(|known| known.title != meter.title)));
    }
    found
}

fn reads_ohms(model: &Model, sheet: &Sheet) -> bool {
    sheet.groups.iter().flat_map(|group| &group.rows).any(|row| match &row.of {
        RowOf::Sensor { measure, .. } => *measure == Measure::Resistance,
        RowOf::Test(id) => model.tests.get(id).is_some_and(|test| test.reads == Reads::Resistance),
    })
}

/// What bold, service and ± mean, by the shop's own rule.
pub(super) fn legend(words: &Words, model: &Model, sheet: &Sheet, marks: &mut Marks) -> String {
    let shop = &model.shop;
    let rule = match shop.decision {
        Some(Rule::Guarded { multiple }) if (multiple.part() - 1.0).abs() > f64::EPSILON => {
            words.say(&Message::new("sheet-legend-guarded-part").with("part", multiple))
        }
        Some(Rule::Guarded { .. }) => words.word("sheet-legend-guarded"),
        Some(Rule::Simple) => words.word("sheet-legend-simple"),
        None => words.word("sheet-legend-no-rule"),
    };
    for fact in shop.facts.iter().filter(|fact| fact.label != "fact-soak" && fact.is_missing()) {
        marks.mark(words, fact);
    }
    let soak = (shop.soak.is_none() && sheet.thermometer.is_some()).then_some("fact-soak");
    let meter = sheet.meter.as_ref();
    let leads = (reads_ohms(model, sheet) && meter.is_some_and(|meter| meter.leads.is_none()))
        .then_some("fact-leads");
    let left_out: Vec<String> = [soak, leads].into_iter().flatten().map(|id| words.word(id)).collect();
    let mut parts = vec![words.word("sheet-legend"), rule];
    if !left_out.is_empty() {
        parts.push(words.say(&Message::new("sheet-left-out").with("what", left_out.join(", "))));
    }
    parts.join(" ")
}

/// What a reading within ± of a limit means, by the shop's own rule.
pub(super) fn near_a_limit(shop: &Shop) -> &'static str {
    match shop.decision {
        Some(Rule::Guarded { .. }) => "sheet-else-undecided",
        Some(Rule::Simple) => "sheet-else-simple",
        None => "sheet-else-no-rule",
    }
}

/// The same on a sheet without sensors, where there is no ice water to put anything in.
pub(super) fn near_a_limit_of_any(shop: &Shop) -> &'static str {
    match near_a_limit(shop) {
        "sheet-else-undecided" => "sheet-else-undecided-any",
        other => other,
    }
}
