//! The instruments that something is measured with, and whose choice they were.

use crate::diag::nearest;
use crate::model::{Card, Fact, Model, Multimeter, Sheet, Thermometer};
use crate::physics::fault::Instruments;
use crate::spec::About;
use crate::words::{Message, Words};

/// A multimeter and a thermometer, where they are known.
pub struct Kit<'a> {
    /// The multimeter.
    pub meter: Option<&'a Multimeter>,
    /// The thermometer.
    pub thermometer: Option<&'a Thermometer>,
    /// Whose instruments these are, where nobody named any.
    chosen: Option<Message>,
    model: &'a Model,
}

/// The system of the thing that a card is about, where it is measured.
fn system_of<'a>(model: &'a Model, card: &Card) -> Option<&'a str> {
    let id = &card.thing;
    match card.about {
        About::Sensor => model.sensors.get(id).map(|sensor| sensor.system.as_str()),
        About::Actuator => model.actuators.get(id).map(|actuator| actuator.system.as_str()),
        About::Driver => model.drivers.get(id).map(|driver| driver.system.as_str()),
        _ => None,
    }
}

impl<'a> Kit<'a> {
    /// The instruments named; where none is named, those of the first sheet that
    /// uses the thing, or of the first card.
    ///
    /// # Errors
    /// When there is no such instrument.
    pub fn new(
        model: &'a Model,
        named: &[String],
        sheet: impl Fn(&Sheet) -> bool,
        card: impl Fn(&Card) -> bool,
    ) -> Result<Self, Message> {
        let mut kit = Self { meter: None, thermometer: None, chosen: None, model };
        if named.is_empty() {
            kit.choose(sheet, card);
        } else {
            kit.take(named)?;
        }
        Ok(kit)
    }

    /// The instruments named, or those of the first sheet or card of a system.
    ///
    /// # Errors
    /// When there is no such instrument.
    pub fn of_system(model: &'a Model, named: &[String], system: &str) -> Result<Self, Message> {
        Self::new(
            model,
            named,
            |sheet| sheet.system == system && sheet.meter.is_some(),
            |card| system_of(model, card) == Some(system),
        )
    }

    /// The set that they are of.
    pub(super) fn model(&self) -> &'a Model {
        self.model
    }

    fn choose(&mut self, uses: impl Fn(&Sheet) -> bool, shows: impl Fn(&Card) -> bool) {
        let chosen = |id: &String| Some(Message::new("judge-instruments-of").with("id", id));
        if let Some((id, sheet)) = self.model.sheets.iter().find(|(_, sheet)| uses(sheet)) {
            self.meter = sheet.meter.as_ref();
            self.thermometer = sheet.thermometer.as_ref();
            self.chosen = chosen(id);
            return;
        }
        let card = self.model.cards.iter().find(|(_, card)| card.meter.is_some() && shows(card));
        if let Some((id, card)) = card {
            self.meter = card.meter.as_ref();
            self.chosen = chosen(id);
        }
    }

    fn take(&mut self, named: &[String]) -> Result<(), Message> {
        let model = self.model;
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
            let meter_again = meter.is_some() && self.meter.is_some();
            let thermometer_again = thermometer.is_some() && self.thermometer.is_some();
            if meter_again || thermometer_again {
                return Err(Message::new("run-instrument-twice").with("id", id));
            }
            self.meter = meter.or(self.meter);
            self.thermometer = thermometer.or(self.thermometer);
        }
        Ok(())
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
            soak: self.model.shop.soak,
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

    /// The values of the specs that their accuracies rest on.
    pub fn facts(&self) -> impl Iterator<Item = &'a Fact> {
        let meter = self.meter.into_iter().flat_map(|meter| &meter.facts);
        meter.chain(self.thermometer.into_iter().flat_map(|meter| &meter.facts))
    }
}
