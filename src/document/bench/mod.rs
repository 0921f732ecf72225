//! A sensor on the bench: with its circuit, its look-alikes and the instruments
//! that it is measured with.

pub mod fault;
mod kit;

pub use kit::Kit;

use crate::diag::nearest;
use crate::model::{Card, Fact, Model, Sensor};
use crate::physics::decision::Rule;
use crate::physics::fault::{Instruments, Other, Subject};
use crate::quantity::{Resistance, Temperature, Toleranced, Voltage};
use crate::spec::About;
use crate::words::{Message, Words};

/// A sensor and everything that its readings are judged by.
pub struct Bench<'a> {
    /// The sensor.
    pub sensor: &'a Sensor,
    /// The other parts that could be fitted, and what they are called.
    pub others: Vec<(&'a Sensor, Other<'a>)>,
    /// The shop's decision rule.
    pub rule: Option<Rule>,
    kit: Kit<'a>,
    battery: Option<Toleranced<Voltage>>,
    facts: Vec<Fact>,
}

impl<'a> Bench<'a> {
    /// The bench of a sensor with the instruments named, or those of the first
    /// sheet, or of the card, that reads it.
    ///
    /// # Errors
    /// When there is no such sensor or instrument.
    pub fn new(model: &'a Model, id: &str, named: &[String]) -> Result<Self, Message> {
        let id = id.strip_prefix("sensor.").unwrap_or(id);
        let sensor = model.sensors.get(id).ok_or_else(|| {
            let near = nearest(id, model.sensors.keys().map(String::as_str));
            match near {
                Some(near) => Message::new("run-no-sensor-near").with("id", id).with("near", near),
                None => Message::new("run-no-sensor").with("id", id),
            }
        })?;
        let system = model.systems.get(&sensor.system);
        let battery = system.and_then(|system| system.battery.as_ref());
        let reads = |rows: &[crate::model::Group]| {
            rows.iter().any(|group| group.rows.iter().any(|row| row.sensor() == Some(sensor.id.as_str())))
        };
        let kit = Kit::new(
            model,
            named,
            |sheet| reads(&sheet.groups),
            |card| card.of(About::Sensor) == Some(&sensor.id),
        )?;
        let key = format!("system.{}.battery", sensor.system);
        let battery_fact = Fact::new(key, "fact-system-battery", battery);
        Ok(Self {
            sensor,
            others: others(model, sensor),
            rule: model.shop.decision,
            battery: battery.map(|battery| battery.value),
            facts: model.shop.facts.iter().chain(kit.facts()).cloned().chain([battery_fact]).collect(),
            kit,
        })
    }

    /// The bench of a card's sensor: with the card's own meter where it names one.
    #[must_use]
    pub fn of_card(model: &'a Model, card: &'a Card) -> Option<Self> {
        let mut bench = Self::new(model, card.of(About::Sensor)?, &[]).ok()?;
        bench.kit.meter = card.meter.as_ref().or(bench.kit.meter);
        Some(bench)
    }

    /// The id of the first card about a sensor, or its own where it has none.
    #[must_use]
    pub fn card_of(&self, sensor: &'a Sensor) -> &'a str {
        let mut cards = self.kit.model().cards.values();
        let card = cards.find(|card| card.of(About::Sensor) == Some(&sensor.id));
        card.map_or(&sensor.id, |card| &card.id)
    }

    /// The sensor as physics sees it.
    #[must_use]
    pub fn subject<'b>(&'b self, others: &'b [Other<'b>]) -> Subject<'b> {
        Subject {
            curve: &self.sensor.curve,
            tolerance: self.sensor.tolerance.as_ref(),
            circuit: self.sensor.circuit.as_ref(),
            others,
            battery: self.battery,
        }
    }

    /// What is known of the instruments.
    #[must_use]
    pub fn instruments(&self) -> Instruments {
        self.kit.instruments()
    }

    /// The instruments by name, and whose choice they were.
    #[must_use]
    pub fn told(&self, words: &Words) -> String {
        self.kit.told(words)
    }

    /// The instruments.
    #[must_use]
    pub fn kit(&self) -> &Kit<'a> {
        &self.kit
    }

    /// The values of the specs that a judgement rests on.
    #[must_use]
    pub fn inputs(&self) -> Vec<Fact> {
        let sensor = [&self.sensor.curve_facts, &self.sensor.circuit_facts, &self.sensor.other_facts];
        // Where it sits changes no figure.
        let counts = |fact: &&Fact| fact.label != "fact-location";
        sensor.into_iter().flatten().filter(counts).chain(&self.facts).cloned().collect()
    }

    /// The ids of other parts that cannot be compared, since nobody gave their tolerance.
    #[must_use]
    pub fn without_tolerance(&self) -> Vec<String> {
        let bare = self.others.iter().filter(|(sensor, _)| sensor.tolerance.is_none());
        bare.map(|(sensor, _)| sensor.id.clone()).collect()
    }

    /// Whether the control unit takes a sensor of this resistance for a sensor at all.
    #[must_use]
    pub fn is_plausible(&self, sensor: Resistance) -> bool {
        let plausible = self.sensor.converter.and_then(|converter| converter.plausible);
        let circuit = self.sensor.circuit.as_ref();
        circuit
            .zip(plausible)
            .is_none_or(|(circuit, plausible)| plausible.contains(&circuit.ratio(sensor, None)))
    }

    /// Refuses a temperature outside the sensor's range.
    ///
    /// # Errors
    /// With the range.
    pub fn covers(&self, at: Temperature) -> Result<(), Message> {
        let range = self.sensor.range;
        if range.contains(&at) {
            return Ok(());
        }
        Err(Message::new("run-table-outside")
            .with("at", at)
            .with("id", &self.sensor.id)
            .with("low", range.low)
            .with("high", range.high))
    }

    /// Whether a battery voltage is known.
    #[must_use]
    pub fn has_battery(&self) -> bool {
        self.battery.is_some()
    }
}

/// Every other sensor of the set with another curve, each curve once: parts with the
/// same curve cannot be told apart.
fn others<'a>(model: &'a Model, sensor: &Sensor) -> Vec<(&'a Sensor, Other<'a>)> {
    let mut found: Vec<(&Sensor, Other<'_>)> = Vec::new();
    for other in model.sensors.values() {
        let same = |one: &Sensor| one.curve == other.curve;
        if !same(sensor) && !found.iter().any(|(known, _)| same(known)) {
            found.push((other, Other { curve: &other.curve, tolerance: other.tolerance.as_ref() }));
        }
    }
    found
}
