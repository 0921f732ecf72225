//! The formulas and values that a card's figures rest on: those of the tables and fault
//! dictionaries of what it is about.

use crate::document::table::{self, Table};
use crate::document::{Context, Listed, faults, users};
use crate::model::{Card, Fact, Model, RowOf};
use crate::quantity::Temperature;
use crate::spec::About;

/// Formulas, each once, and inputs, each once.
#[derive(Debug, Default)]
pub(in crate::document) struct Basis {
    pub formulas: Vec<String>,
    pub inputs: Vec<Fact>,
}

/// What a paper's figures rest on.
pub(super) fn of(Context { model, words, units, .. }: Context<'_>, listed: &Listed) -> Basis {
    let mut basis = Basis::default();
    let known = table::known(model);
    let card = model.cards.get(&listed.spec).filter(|_| listed.paperwork.is_card());
    let things = card.map_or_else(|| tested(model, listed), |card| things(model, card));
    for (key, id) in things {
        // A card's own table has its meter; another's has none.
        let of_it = |card: &&Card| (key, id.as_str()) == (card.about.key(), card.thing.as_str());
        let own = card.filter(of_it).map(|card| format!("card.{}", card.id));
        let own = own.filter(|name| known.contains(name));
        let wanted =
            |name: &&String| name.split_once('.').is_some_and(|(kind, of)| of == id && of_kind(key, kind));
        let names = own.map_or_else(|| known.iter().filter(wanted).cloned().collect(), |name| vec![name]);
        for name in names {
            let ask = table::Ask { id: &name, units, ..table::Ask::default() };
            basis.add(table::of(model, words, &ask).ok());
        }
        let at = temperature(model, key, &id);
        let name = format!("{key}.{id}");
        let ask = faults::Ask { id: &name, at, units, ..faults::Ask::default() };
        basis.add(faults::of(model, words, &ask).ok());
    }
    basis
}

impl Basis {
    fn add(&mut self, table: Option<Table>) {
        let Some(table) = table else { return };
        for formula in table.formulas {
            if !self.formulas.contains(&formula) {
                self.formulas.push(formula);
            }
        }
        for fact in table.inputs {
            if !self.inputs.iter().any(|known| known.key == fact.key) {
                self.inputs.push(fact);
            }
        }
    }
}

/// The values as they may stand on a card: whole, and without their tolerance.
pub(super) fn written(inputs: &[Fact]) -> Vec<String> {
    let is_quantity = |text: &&str| {
        text.contains(' ') && text.starts_with(|c: char| c.is_ascii_digit() || "−±".contains(c))
    };
    let shown: Vec<String> = inputs.iter().filter_map(Fact::shown).collect();
    let whole = shown.iter().map(String::as_str);
    let nominal = whole.clone().filter_map(|written| written.split_once(" ± ").map(|(nominal, _)| nominal));
    whole.chain(nominal).filter(is_quantity).map(str::to_owned).collect()
}

/// The things whose figures a card shows, by kind and id.
fn things(model: &Model, card: &Card) -> Vec<(&'static str, String)> {
    let thing = card.thing.as_str();
    let mut things = vec![(card.about.key(), card.thing.clone())];
    match card.about {
        About::Connector => {
            for user in users::of_connector(model, thing) {
                let (key, id) = user.thing.name();
                if !things.iter().any(|(kind, known)| (*kind, known.as_str()) == (key, id)) {
                    things.push((key, id.to_owned()));
                }
            }
        }
        About::Driver => {
            let wires = model.wires.values().filter(|wire| wire.driver.as_deref() == Some(thing));
            things.extend(wires.map(|wire| ("wire", wire.id.clone())));
        }
        About::Air => {
            let refrigerants = model.refrigerants.values().filter(|refrigerant| refrigerant.system == thing);
            things.extend(refrigerants.map(|refrigerant| ("refrigerant", refrigerant.id.clone())));
            let vents = model.vents.values().filter(|vent| vent.system == thing);
            things.extend(vents.map(|vent| ("vent", vent.id.clone())));
        }
        About::Panel => {
            let modes = model.panels.get(thing).map(|panel| ("modes", panel.system.clone()));
            things.extend(modes);
        }
        About::Sensor
        | About::Light
        | About::Transducer
        | About::System
        | About::Actuator
        | About::Request => {}
    }
    things
}

/// The things that a sheet's or a checklist's tests are about, each once.
fn tested(model: &Model, listed: &Listed) -> Vec<(&'static str, String)> {
    let of_test = |id: &String| model.tests.get(id).map(|test| (test.thing.key(), test.component.clone()));
    let rows = model.sheets.get(&listed.spec).into_iter().flat_map(|sheet| &sheet.groups);
    let of_rows = rows.flat_map(|group| &group.rows).filter_map(|row| match &row.of {
        RowOf::Sensor { id, .. } => Some(("sensor", id.clone())),
        RowOf::Test(id) => of_test(id),
    });
    let steps = model.checklists.get(&listed.spec).into_iter().flat_map(|list| &list.steps);
    let of_steps = steps.filter_map(|step| of_test(step.test.as_ref()?));
    let mut things = Vec::new();
    for thing in of_rows.chain(of_steps) {
        // The table of a system is that of its modes, which no limit of a test comes from.
        if thing.0 != "system" && !things.contains(&thing) {
            things.push(thing);
        }
    }
    things
}

/// Whether a table of this kind is about a thing named by this key.
fn of_kind(key: &str, kind: &str) -> bool {
    kind == key || (key == "driver" && kind == "coil")
}

/// A dictionary of a sensor or a coil holds at one temperature; its formulas at any.
fn temperature(model: &Model, key: &str, id: &str) -> Option<Temperature> {
    match key {
        "sensor" => model.sensors.get(id).map(|sensor| sensor.range.low),
        "driver" => Some(Temperature::from_celsius(20.0)),
        _ => None,
    }
}
