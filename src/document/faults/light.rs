//! The small fault dictionary of a light sensor: in the dark and in its rated light.

use super::Ask;
use super::dictionary::{self, Block, Dictionary, Entry, Good, widened};
use crate::document::bench::Kit;
use crate::document::table::{Cell, Column, Show, Table};
use crate::model::{Light, Model};
use crate::physics::light::LightSensor;
use crate::physics::light::fault::{DARKNESS, Fault};
use crate::physics::uncertainty::{Instruments, meter_volts};
use crate::quantity::{Interval, Irradiance, Resistance, Rounding, Toleranced, Voltage, figure};
use crate::words::{Message, Words};

/// The dictionary of a light sensor.
pub(super) fn of(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let light = model.lights.get(id).ok_or_else(|| Message::new("run-no-faults").with("id", id))?;
    let not_given = || Message::new("run-faults-not-given").with("id", id).with("what", "current, circuit");
    let sensor = light.sensor.as_ref().ok_or_else(not_given)?;
    let kit = Kit::of_system(model, ask.instruments, &light.system)?;
    let readings = Readings {
        words,
        sensor,
        meter: kit.instruments().input,
        volts: Instruments { meter: kit.instruments().volts, ..Instruments::default() },
    };
    let lights = [DARKNESS, sensor.at];
    let dictionary = readings.dictionary(&lights);
    let pins = light.pins.iter().flat_map(|pin| pin.pin.facts());
    Ok(Table {
        title: light.title.clone(),
        notes: readings.notes(light, &kit, &lights),
        columns: dictionary.columns(words),
        rows: dictionary.rows(words),
        formulas: ["faults-formula-reading", "faults-formula-separable"].map(|id| words.word(id)).to_vec(),
        inputs: dictionary::inputs(light.facts.iter().chain(pins), &[], &kit),
    })
}

struct Readings<'a> {
    words: &'a Words,
    sensor: &'a LightSensor,
    meter: Option<Toleranced<Resistance>>,
    volts: Instruments,
}

impl Readings<'_> {
    fn dictionary(&self, lights: &[Irradiance]) -> Dictionary {
        let whole = Show::Decimals(0, Rounding::Nearest);
        Dictionary {
            condition: Some(Column::new("irradiance_w_per_m2", "W/m²", whole)),
            shown: vec![
                Column::new("resistance_ohm", "", Show::Never),
                dictionary::voltage(self.words),
                dictionary::believed_temperature(),
                Column::new("believed_irradiance_w_per_m2", self.words.word("faults-believed-light"), whole),
            ],
            tests: vec!["V"],
            blocks: lights.iter().map(|at| self.block(*at)).collect(),
        }
    }

    fn block(&self, at: Irradiance) -> Block {
        // In the dark nothing is wrong with a sensor that is covered.
        let exists = |fault: &Fault| *fault != Fault::Covered || at > DARKNESS;
        Block {
            condition: Some(at.watts_per_square_metre()),
            good: vec![self.widened(self.sensor.voltage_window(at, self.meter).ok().flatten())],
            entries: Fault::ALL.into_iter().filter(exists).map(|fault| self.entry(fault)).collect(),
        }
    }

    fn entry(&self, fault: Fault) -> Entry {
        let volts = self.sensor.fault_voltage(fault, self.meter).ok();
        // What the control unit sees has no meter on it.
        let seen = self.sensor.fault_voltage(fault, None).ok();
        let believed = seen.and_then(|volts| self.sensor.irradiance(volts, None).ok());
        let (key, id) = match fault {
            Fault::Open => ("open", "fault-light-open"),
            Fault::Shorted => ("shorted", "fault-light-shorted"),
            Fault::Covered => ("covered", "fault-light-covered"),
        };
        Entry {
            fault: (key, self.words.word(id)),
            size: None,
            shown: vec![
                Cell::Missing,
                Cell::from(volts.map(Voltage::volts)),
                Cell::Missing,
                Cell::from(believed.map(Irradiance::watts_per_square_metre)),
            ],
            windows: vec![self.widened(self.sensor.fault_window(fault, self.meter).ok().flatten())],
        }
    }

    fn widened(&self, window: Option<Interval<Voltage>>) -> Option<Interval<f64>> {
        let window = window?;
        widened(Interval { low: window.low.volts(), high: window.high.volts() }, |end| self.doubt(end))
    }

    fn doubt(&self, reading: f64) -> Option<f64> {
        let doubt = meter_volts(Voltage::from_volts(reading), &self.volts).ok()?;
        Some(doubt.budget.expanded())
    }

    fn notes(&self, light: &Light, kit: &Kit<'_>, lights: &[Irradiance]) -> Vec<String> {
        let mut notes = vec![self.words.word("faults-at-light"), self.words.word("faults-no-matter")];
        notes.extend(dictionary::instruments(self.words, kit));
        notes.extend(lights.iter().map(|at| {
            let nominal = self.sensor.voltage(*at, self.meter).ok().map(Voltage::volts);
            let window = self.sensor.voltage_window(*at, self.meter).ok().flatten();
            let window = window.map(|w| Interval { low: w.low.volts(), high: w.high.volts() });
            let good = Good { nominal, window, doubt: nominal.and_then(|nominal| self.doubt(nominal)) };
            let at = format!("{} W/m²", figure(at.watts_per_square_metre(), 0, Rounding::Nearest));
            let message = Message::new("faults-good-at")
                .with("position", at)
                .with("test", "V")
                .with("reading", good.told(self.words, "V"));
            self.words.say(&message)
        }));
        let span = light.least_span.map(|span| Message::new("table-note-least-span").with("span", span));
        notes.extend(span.map(|message| self.words.say(&message)));
        notes.push(self.words.word("table-note-shop-light"));
        notes
    }
}
