//! A sensor on the bench: with its circuit, its look-alikes and the instruments
//! that it is measured with.

pub mod fault;

use crate::diag::nearest;
use crate::model::{Fact, Model, Multimeter, Sensor, Thermometer};
use crate::physics::decision::Rule;
use crate::physics::fault::{Instruments, Other, Subject};
use crate::quantity::{Resistance, Temperature, TemperatureDifference, Toleranced, Voltage};
use crate::words::{Message, Words};

/// A sensor and everything that its readings are judged by.
pub struct Bench<'a> {
    /// The sensor.
    pub sensor: &'a Sensor,
    /// The other parts that could be fitted, and what they are called.
    pub others: Vec<(&'a Sensor, Other<'a>)>,
    /// The shop's decision rule.
    pub rule: Option<Rule>,
    meter: Option<&'a Multimeter>,
    thermometer: Option<&'a Thermometer>,
    soak: Option<TemperatureDifference>,
    battery: Option<Toleranced<Voltage>>,
    /// Whose instruments these are, where nobody named any.
    chosen: Option<Message>,
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
        let mut bench = Self {
            sensor,
            others: others(model, sensor),
            rule: model.shop.decision,
            meter: None,
            thermometer: None,
            soak: model.shop.soak,
            battery: battery.map(|battery| battery.value),
            chosen: None,
            facts: model.shop.facts.clone(),
        };
        if named.is_empty() {
            bench.choose(model);
        } else {
            bench.take(model, named)?;
        }
        bench.facts.extend(bench.meter.iter().flat_map(|meter| meter.facts.clone()));
        bench.facts.extend(bench.thermometer.iter().flat_map(|meter| meter.facts.clone()));
        let key = format!("system.{}.battery", sensor.system);
        bench.facts.push(Fact::new(key, "fact-system-battery", battery));
        Ok(bench)
    }

    fn choose(&mut self, model: &'a Model) {
        let reads = |rows: &[crate::model::Group]| {
            rows.iter().any(|group| group.rows.iter().any(|row| row.sensor == self.sensor.id))
        };
        if let Some((id, sheet)) = model.sheets.iter().find(|(_, sheet)| reads(&sheet.groups)) {
            self.meter = sheet.meter.as_ref();
            self.thermometer = sheet.thermometer.as_ref();
            self.chosen = Some(Message::new("judge-instruments-of").with("id", id));
            return;
        }
        let card = model.cards.iter().find(|(_, card)| card.sensor == self.sensor.id && card.meter.is_some());
        if let Some((id, card)) = card {
            self.meter = card.meter.as_ref();
            self.chosen = Some(Message::new("judge-instruments-of").with("id", id));
        }
    }

    fn take(&mut self, model: &'a Model, named: &[String]) -> Result<(), Message> {
        for id in named {
            let id = id.strip_prefix("instrument.").unwrap_or(id);
            let (meter, thermometer) = (model.multimeters.get(id), model.thermometers.get(id));
            if meter.is_none() && thermometer.is_none() {
                let known = model.multimeters.keys().chain(model.thermometers.keys()).map(String::as_str);
                return Err(match nearest(id, known) {
                    Some(near) => Message::new("run-no-instrument-near").with("id", id).with("near", near),
                    None => Message::new("run-no-instrument").with("id", id),
                });
            }
            if meter.is_some() && self.meter.is_some() || thermometer.is_some() && self.thermometer.is_some()
            {
                return Err(Message::new("run-instrument-twice").with("id", id));
            }
            self.meter = meter.or(self.meter);
            self.thermometer = thermometer.or(self.thermometer);
        }
        Ok(())
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
        Instruments {
            volts: self.meter.and_then(|meter| meter.volts),
            ohms: self.meter.and_then(|meter| meter.ohms),
            input: self.meter.and_then(|meter| meter.input),
            leads: self.meter.and_then(Multimeter::most_of_leads),
            thermometer: self.thermometer.and_then(|thermometer| thermometer.limit),
            soak: self.soak,
        }
    }

    /// The instruments by name, and whose choice they were.
    #[must_use]
    pub fn told(&self, words: &Words) -> String {
        let none = || words.word("judge-none");
        let meter = self.meter.map_or_else(none, |meter| meter.title.clone());
        let thermometer = self.thermometer.map_or_else(none, |meter| meter.title.clone());
        let message = Message::new("judge-instruments").with("meter", meter).with("thermometer", thermometer);
        let chosen = self.chosen.as_ref().map(|message| format!(" ({})", words.say(message)));
        format!("{}{}", words.say(&message), chosen.unwrap_or_default())
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
