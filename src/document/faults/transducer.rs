//! The fault dictionary of a pressure transducer.

use super::Ask;
use super::dictionary::{self, Block, Dictionary, Entry, Good, widened};
use crate::document::bench::Kit;
use crate::document::table::{Cell, Column, Show, Table};
use crate::model::{Model, Transducer};
use crate::physics::transducer::{Fault, Sense, Transducer as Line};
use crate::physics::uncertainty::{Instruments, meter_volts};
use crate::quantity::{Interval, Pressure, Ratio, Rounding, Toleranced, Units, Voltage, figure};
use crate::words::{Message, Words};

/// The dictionary of a transducer.
pub(super) fn of(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let part = model.transducers.get(id).ok_or_else(|| Message::new("run-no-faults").with("id", id))?;
    let not_given = |key| Message::new("run-faults-not-given").with("id", id).with("what", key);
    let line = part.line.as_ref().ok_or_else(|| not_given("low, high"))?;
    let reference = part.reference.ok_or_else(|| not_given("reference"))?;
    let range = line.range();
    if let Some(at) = ask.pressure.filter(|at| line.ratio(*at).is_err()) {
        return Err(Message::new("run-faults-pressure-outside")
            .with("at", at)
            .with("id", id)
            .with("low", range.low)
            .with("high", range.high));
    }
    let pressures = ask.pressure.map_or_else(|| vec![range.low, range.high], |at| vec![at]);
    let kit = Kit::of_system(model, ask.instruments, &part.system)?;
    let readings = Readings {
        words,
        units: ask.units,
        line,
        reference,
        air: model.shop.site.map(|site| site.pressure()),
        volts: Instruments { meter: kit.instruments().volts, ..Instruments::default() },
    };
    let dictionary = readings.dictionary(&pressures);
    let pins = part.pins.iter().flat_map(|pin| pin.pin.facts());
    let site = std::iter::once(&model.shop.elevation).filter(|_| readings.air.is_some());
    Ok(Table {
        title: part.title.clone(),
        notes: readings.notes(part, &kit, &pressures),
        columns: dictionary.columns(words),
        rows: dictionary.rows(words),
        formulas: ["table-formula-transducer", "faults-formula-pressure", "faults-formula-separable"]
            .into_iter()
            .chain(["faults-formula-sizes"])
            .map(|id| words.word(id))
            .collect(),
        inputs: dictionary::inputs(part.facts.iter().chain(pins).chain(site), &[], &kit),
    })
}

struct Readings<'a> {
    words: &'a Words,
    units: Units,
    line: &'a Line,
    reference: Toleranced<Voltage>,
    /// The air pressure of the shop, where its elevation was given.
    air: Option<Pressure>,
    volts: Instruments,
}

impl Readings<'_> {
    fn dictionary(&self, pressures: &[Pressure]) -> Dictionary {
        let (show, unit) =
            (Show::Decimals(self.units.pressure_decimals(), Rounding::Nearest), self.units.pressure());
        let key = unit.symbol().to_lowercase();
        let head = |id| self.words.say(&Message::new(id).with("unit", unit.symbol()));
        Dictionary {
            condition: Some(Column::new(format!("pressure_{key}"), head("faults-pressure"), show)),
            shown: vec![
                // What an ohmmeter reads of electronics says nothing.
                Column::new("resistance_ohm", "", Show::Never),
                dictionary::voltage(self.words),
                dictionary::believed_temperature(),
                Column::new(format!("believed_pressure_{key}"), head("faults-believed-pressure"), show),
            ],
            tests: vec!["V"],
            blocks: pressures.iter().map(|at| self.block(*at)).collect(),
        }
    }

    fn block(&self, at: Pressure) -> Block {
        // A part of the other sense differs by the air pressure: without it, none.
        let exists = |fault: &Fault| self.air.is_some() || !matches!(fault, Fault::OtherSense);
        let faults = Fault::dictionary(None).into_iter().filter(exists);
        Block {
            condition: Some(self.units.of_pressure(at)),
            good: vec![self.widened(None, at)],
            entries: faults.map(|fault| self.entry(fault, at)).collect(),
        }
    }

    /// The pressure as absolute, and the air pressure. Only [`Fault::OtherSense`]
    /// depends on the air, and is left out where that is not known.
    fn absolute(&self, own: Pressure) -> (Pressure, Pressure) {
        let air = self.air.unwrap_or(Pressure::from_pascals(0.0));
        (self.line.sense().to_absolute(own, air), air)
    }

    fn entry(&self, fault: Fault, at: Pressure) -> Entry {
        let (absolute, air) = self.absolute(at);
        let reading = self.line.with_fault(fault, absolute, air).ok();
        let ratio = reading.and_then(|reading| reading.ratio);
        let believed = reading.and_then(|reading| reading.believed);
        let (key, id, size) = named(self.units, fault, self.line.sense());
        Entry {
            fault: (key, self.words.word(id)),
            size,
            shown: vec![
                Cell::Missing,
                Cell::from(ratio.map(|ratio| ratio.part() * self.reference.nominal.volts())),
                Cell::Missing,
                Cell::from(believed.map(|at| self.units.of_pressure(at))),
            ],
            windows: vec![self.widened(Some(fault), at)],
        }
    }

    /// The volts between the limits of part and reference.
    fn window(&self, fault: Option<Fault>, at: Pressure) -> Option<Interval<f64>> {
        let (absolute, air) = self.absolute(at);
        let ratio = self.line.fault_window(fault, absolute, air).ok().flatten()?;
        let limits = self.reference.limits?;
        let volts = |ratio: Ratio, reference: Voltage| ratio.part() * reference.volts();
        Some(Interval { low: volts(ratio.low, limits.low), high: volts(ratio.high, limits.high) })
    }

    fn widened(&self, fault: Option<Fault>, at: Pressure) -> Option<Interval<f64>> {
        widened(self.window(fault, at)?, |end| self.doubt(end))
    }

    fn doubt(&self, reading: f64) -> Option<f64> {
        let doubt = meter_volts(Voltage::from_volts(reading), &self.volts).ok()?;
        Some(doubt.budget.expanded())
    }

    fn notes(&self, part: &Transducer, kit: &Kit<'_>, pressures: &[Pressure]) -> Vec<String> {
        let sense = match part.sense {
            Sense::Absolute => "table-note-absolute",
            Sense::Gauge => "table-note-gauge",
        };
        let mut notes: Vec<String> =
            ["faults-at-transducer", "faults-no-matter", sense].map(|id| self.words.word(id)).to_vec();
        notes.extend(dictionary::instruments(self.words, kit));
        notes.push(self.words.word("faults-signal-open"));
        let beyond = |at: &Pressure| {
            let (absolute, air) = self.absolute(*at);
            let off = |fault: &Fault| self.line.with_fault(*fault, absolute, air).is_err();
            Fault::dictionary(None).iter().any(off)
        };
        if pressures.iter().any(beyond) {
            notes.push(self.words.word("faults-beyond-line"));
        }
        if self.air.is_none() {
            notes.push(self.words.word("faults-no-elevation"));
        }
        notes.extend(pressures.iter().map(|at| {
            let nominal = self.line.voltage(*at, self.reference).ok().map(Voltage::volts);
            let doubt = nominal.and_then(|nominal| self.doubt(nominal));
            let good = Good { nominal, window: self.window(None, *at), doubt };
            let at = shown(self.units, *at);
            let message = Message::new("faults-good-at")
                .with("position", at)
                .with("test", "V")
                .with("reading", good.told(self.words, "V"));
            self.words.say(&message)
        }));
        notes
    }
}

/// A pressure, or a difference of two, with its unit.
fn shown(units: Units, pressure: Pressure) -> String {
    let number = figure(units.of_pressure(pressure), units.pressure_decimals(), Rounding::Nearest);
    format!("{number} {}", units.pressure().symbol())
}

/// A fault's key, the id of its name, and its size.
fn named(units: Units, fault: Fault, sense: Sense) -> (&'static str, &'static str, Option<String>) {
    match fault {
        Fault::SignalOpen { .. } => ("signal open", "fault-signal-open", None),
        Fault::ShortToReturn => ("short to return", "fault-signal-to-return", None),
        Fault::ShortToReference => ("short to reference", "fault-short-to-reference", None),
        Fault::ReferenceLost => ("reference lost", "fault-reference-lost", None),
        Fault::ReturnLost => ("return lost", "fault-return-lost", None),
        Fault::Offset(by) => {
            let sign = if by.pascals() > 0.0 { "+" } else { "" };
            let size = format!("{sign}{}", shown(units, by));
            ("offset", "fault-offset", Some(size))
        }
        Fault::OtherSense => match sense {
            Sense::Absolute => ("other sense", "fault-gauge-part", None),
            Sense::Gauge => ("other sense", "fault-absolute-part", None),
        },
    }
}
