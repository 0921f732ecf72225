//! The fault dictionary of a copper coil at its own temperature.

use super::dictionary::{self, Block, Dictionary, Entry, Good, widened};
use super::{Ask, temperature};
use crate::document::bench::Kit;
use crate::document::figures;
use crate::document::table::{Cell, Column, Show, Table};
use crate::model::{Coil, Driver, Load, Model};
use crate::physics::coil::{CoilFault, RatedCoil};
use crate::physics::copper::DOMAIN;
use crate::physics::uncertainty::{Instruments, meter_ohms, meter_volts};
use crate::quantity::{Current, Interval, Resistance, Rounding, Temperature, Units, Voltage, figure};
use crate::words::{Message, Words};

/// Facts of a driver that no reading of its coil rests on.
const OTHER_FACTS: [&str; 8] = [
    "coil.temperature",
    "drive.switch_drop",
    "drive.diode_drop",
    "drive.frequency",
    "drive.inductance",
    "drive.steps",
    "displacement.",
    "limits.",
];

/// The dictionary of a driver's coil.
pub(super) fn of(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let driver = model.drivers.get(id).ok_or_else(|| Message::new("run-no-faults").with("id", id))?;
    let coil = coil(driver).ok_or_else(|| Message::new("run-faults-no-coil").with("id", id))?;
    let at = temperature(ask, id)?;
    if !DOMAIN.contains(&at) {
        return Err(Message::new("run-table-outside")
            .with("at", at)
            .with("id", id)
            .with("low", DOMAIN.low)
            .with("high", DOMAIN.high));
    }
    let kit = Kit::of_system(model, ask.instruments, &driver.system)?;
    let known = kit.instruments();
    let readings = Readings {
        words,
        units: ask.units,
        driver,
        coil: &coil.rated,
        at,
        volts: Instruments { meter: known.volts, ..Instruments::default() },
        ohms: Instruments {
            meter: known.ohms,
            leads: known.leads,
            thermometer: known.thermometer,
            soak: known.soak,
        },
    };
    let others = others(model, driver, &coil.rated);
    let dictionary = readings.dictionary(&others);
    let soak = model.shop.facts.iter().filter(|fact| fact.label == "fact-soak");
    Ok(Table {
        title: driver.title.clone(),
        notes: readings.notes(&kit, coil),
        columns: dictionary.columns(words),
        rows: dictionary.rows(words),
        formulas: ["table-formula-copper", "faults-formula-coil", "faults-formula-separable"]
            .into_iter()
            .chain(["faults-formula-sizes"])
            .map(|id| words.word(id))
            .collect(),
        inputs: dictionary::inputs(driver.facts.iter().chain(soak), &OTHER_FACTS, &kit),
    })
}

fn coil(driver: &Driver) -> Option<&Coil> {
    match &driver.load {
        Load::Coil(coil, _) | Load::Solenoid(coil, _) => Some(coil),
        Load::Blower(_) => None,
    }
}

/// The other coils of the set, which may be fitted, or plugged in, by mistake.
fn others<'a>(model: &'a Model, driver: &Driver, own: &RatedCoil) -> Vec<(&'a Driver, &'a RatedCoil)> {
    let mut found: Vec<(&Driver, &RatedCoil)> = Vec::new();
    for other in model.drivers.values().filter(|other| other.id != driver.id) {
        let Some(coil) = coil(other) else { continue };
        let known = |same: &RatedCoil| *same == coil.rated;
        if !known(own) && !found.iter().any(|(_, same)| known(same)) {
            found.push((other, &coil.rated));
        }
    }
    found
}

struct Readings<'a> {
    words: &'a Words,
    units: Units,
    driver: &'a Driver,
    coil: &'a RatedCoil,
    at: Temperature,
    volts: Instruments,
    ohms: Instruments,
}

/// What is measured: ohms, volts across the coil, and the current that it takes.
struct Reading {
    ohms: Option<f64>,
    volts: Option<f64>,
    amperes: Option<f64>,
}

impl Readings<'_> {
    fn dictionary(&self, others: &[(&Driver, &RatedCoil)]) -> Dictionary {
        let amperes = Show::Decimals(3, Rounding::Nearest);
        let faults = CoilFault::dictionary(self.at);
        let own = faults.iter().filter_map(|fault| {
            let name = named(*fault, self.at, self.units);
            self.entry(self.coil, Some(*fault), (name.0, self.words.word(name.1)), name.2)
        });
        let other = others.iter().filter_map(|(driver, coil)| {
            let message =
                Message::new("fault-other-part").with("title", &driver.title).with("id", &driver.id);
            self.entry(coil, None, ("other part", self.words.say(&message)), Some(driver.id.clone()))
        });
        Dictionary {
            condition: None,
            shown: vec![
                dictionary::resistance(self.words),
                dictionary::voltage(self.words),
                dictionary::believed_temperature(),
                Column::new("current_a", self.words.word("faults-amperes"), amperes),
            ],
            tests: vec!["V", "Ω"],
            blocks: vec![Block {
                condition: None,
                good: self.widened(self.coil, None),
                entries: own.chain(other).collect(),
            }],
        }
    }

    /// `None` for a temperature that is not computed for copper.
    fn entry(
        &self,
        coil: &RatedCoil,
        fault: Option<CoilFault>,
        name: (&'static str, String),
        size: Option<String>,
    ) -> Option<Entry> {
        let reading = self.reading(coil, fault)?;
        let ohms = dictionary::ohms(self.words, reading.ohms);
        Some(Entry {
            fault: name,
            size,
            shown: vec![ohms, Cell::from(reading.volts), Cell::Missing, Cell::from(reading.amperes)],
            windows: self.widened(coil, fault),
        })
    }

    fn reading(&self, coil: &RatedCoil, fault: Option<CoilFault>) -> Option<Reading> {
        let none = Resistance::from_ohms(0.0);
        let battery = self.driver.nominal;
        let volts = battery.unwrap_or(Voltage::from_volts(0.0));
        let reading = coil.reading(fault, self.at, none, volts).ok()?;
        Some(Reading {
            ohms: Some(reading.resistance.map_or(f64::INFINITY, Resistance::ohms)),
            volts: battery.map(|_| reading.voltage.volts()),
            amperes: battery.and(reading.current).map(Current::amperes),
        })
    }

    /// The windows of volts and ohms.
    fn windows(&self, coil: &RatedCoil, fault: Option<CoilFault>) -> [Option<Interval<f64>>; 2] {
        let Ok(Some(window)) = coil.window(fault, self.at, self.driver.battery) else { return [None; 2] };
        let volts = window.voltage.map(|volts| Interval { low: volts.low.volts(), high: volts.high.volts() });
        let ohms = window.resistance;
        [volts, Some(Interval { low: ohms.low.ohms(), high: ohms.high.ohms() })]
    }

    fn widened(&self, coil: &RatedCoil, fault: Option<CoilFault>) -> Vec<Option<Interval<f64>>> {
        let [volts, ohms] = self.windows(coil, fault);
        vec![
            volts.and_then(|window| widened(window, |end| self.doubt_volts(end))),
            ohms.and_then(|window| widened(window, |end| self.doubt_ohms(end))),
        ]
    }

    fn doubt_volts(&self, reading: f64) -> Option<f64> {
        let doubt = meter_volts(Voltage::from_volts(reading), &self.volts).ok()?;
        Some(doubt.budget.expanded())
    }

    /// The thermometer enters through copper's slope, R₁ α/(1 + α (t₁ − 20 °C)).
    fn doubt_ohms(&self, reading: f64) -> Option<f64> {
        let degree = Temperature::from_celsius(self.coil.at.celsius() + 1.0);
        let degree = if DOMAIN.contains(&degree) { degree } else { DOMAIN.low };
        let rise = self.coil.nominal(degree).ok()?.ohms() - self.coil.resistance.nominal.ohms();
        let slope = rise / (degree.celsius() - self.coil.at.celsius());
        let doubt = meter_ohms(Resistance::from_ohms(reading), Some(slope), &self.ohms).ok()?;
        Some(doubt.budget.expanded())
    }

    fn notes(&self, kit: &Kit<'_>, coil: &Coil) -> Vec<String> {
        let at = figures::temperature(self.units, self.at);
        let mut notes = vec![self.words.say(&Message::new("faults-at-coil").with("at", at))];
        notes.extend(dictionary::instruments(self.words, kit));
        let battery = self.driver.battery.map(|battery| {
            Message::new("table-note-battery").with("low", battery.low).with("high", battery.high)
        });
        let nominal = self
            .driver
            .nominal
            .map(|nominal| Message::new("table-note-nominal-battery").with("nominal", nominal));
        notes.extend(battery.iter().chain(&nominal).map(|message| self.words.say(message)));
        if self.driver.nominal.is_none() {
            notes.push(self.words.word("faults-no-nominal-battery"));
        }
        if self.coil.resistance.limits.is_none() {
            notes.push(self.words.word("faults-no-coil-tolerance"));
        }
        let reading = self.reading(self.coil, None);
        let [volts, ohms] = self.windows(self.coil, None);
        let mut good = |nominal: Option<f64>, window, unit, doubt: fn(&Self, f64) -> Option<f64>| {
            let good = Good { nominal, window, doubt: nominal.and_then(|nominal| doubt(self, nominal)) };
            let message = Message::new("faults-good").with("reading", good.told(self.words, unit));
            notes.push(self.words.say(&message));
        };
        good(reading.as_ref().and_then(|reading| reading.ohms), ohms, "Ω", Self::doubt_ohms);
        good(reading.as_ref().and_then(|reading| reading.volts), volts, "V", Self::doubt_volts);
        let isolation = coil.isolation.map(|least| Message::new("table-note-isolation").with("least", least));
        notes.extend(isolation.map(|message| self.words.say(&message)));
        notes
    }
}

/// A fault's key, the id of its name, and its size.
fn named(fault: CoilFault, at: Temperature, units: Units) -> (&'static str, &'static str, Option<String>) {
    match fault {
        CoilFault::Open => ("open", "fault-winding-open", None),
        CoilFault::OpenWire => ("open wire", "fault-open-wire", None),
        CoilFault::Shorted => ("shorted", "fault-coil-shorted", None),
        CoilFault::ShortedTurns(part) => {
            let size = format!("{} %", figures::trimmed(100.0 * part.part()));
            ("shorted turns", "fault-shorted-turns", Some(size))
        }
        CoilFault::Series(ohms) => ("series", "fault-series", Some(dictionary::sized_ohms(ohms))),
        CoilFault::WrongPart(ohms) => ("other part", "fault-other-coil", Some(dictionary::sized_ohms(ohms))),
        CoilFault::OtherTemperature(other) => {
            let by = units.degrees(other) - units.degrees(at);
            let sign = if by > 0.0 { "+" } else { "" };
            let size =
                format!("{sign}{} {}", figure(by, 0, Rounding::Nearest), units.difference_unit().symbol());
            ("other temperature", "fault-other-temperature", Some(size))
        }
    }
}
