//! The fault dictionary of one sensor at one temperature.

use super::dictionary::{self, Block, Dictionary, Entry, Good};
use super::{Ask, Place, temperature};
use crate::document::bench::{Bench, fault};
use crate::document::figures;
use crate::document::table::{self, Cell, Column, Show, Table};
use crate::model::{Model, Sensor};
use crate::physics::fault::{Condition, Fault, Instruments, Other, Subject, Test, widened};
use crate::physics::preferred::{Series, substitute};
use crate::quantity::{Interval, Rounding, Temperature, Units};
use crate::words::{Message, Words};

/// The dictionary of a sensor.
pub(super) fn of(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let bench = Bench::new(model, id, ask.instruments)?;
    let (sensor, at) = (bench.sensor, temperature(ask, id)?);
    bench.covers(at)?;
    let others: Vec<Other<'_>> = bench.others.iter().map(|(_, other)| *other).collect();
    let place = ask.place.unwrap_or(Place::ControlUnit);
    let readings = Readings::new((words, ask.units), &bench, &others, at, place);
    let dictionary = readings.dictionary(others.len());
    let method = ["faults-formula-reading", "faults-formula-believed", "faults-formula-separable"];
    let method = method.into_iter().chain(["faults-formula-sizes"]).map(|id| words.word(id));
    Ok(Table {
        title: sensor.title.clone(),
        notes: readings.notes(&bench, place),
        columns: dictionary.columns(words),
        rows: dictionary.rows(words),
        formulas: table::sensor::formulas(words, sensor).into_iter().chain(method).collect(),
        inputs: bench.inputs(),
    })
}

struct Readings<'a> {
    words: &'a Words,
    units: Units,
    bench: &'a Bench<'a>,
    names: Vec<&'a Sensor>,
    subject: Subject<'a>,
    instruments: Instruments,
    at: Temperature,
    /// Volts, then ohms.
    tests: [Test; 2],
}

/// What every fault of the bench's sensor reads at the control unit, at one temperature.
pub(in crate::document) fn at_unit(words: (&Words, Units), bench: &Bench<'_>, at: Temperature) -> Dictionary {
    let others: Vec<Other<'_>> = bench.others.iter().map(|(_, other)| *other).collect();
    Readings::new(words, bench, &others, at, Place::ControlUnit).dictionary(others.len())
}

impl<'a> Readings<'a> {
    fn new(
        (words, units): (&'a Words, Units),
        bench: &'a Bench<'a>,
        others: &'a [Other<'a>],
        at: Temperature,
        place: Place,
    ) -> Self {
        Self {
            words,
            units,
            bench,
            names: bench.others.iter().map(|(sensor, _)| *sensor).collect(),
            subject: bench.subject(others),
            instruments: bench.instruments(),
            at,
            tests: match place {
                Place::ControlUnit => [Test::VoltsAtUnit, Test::OhmsAtUnit],
                Place::Sensor => [Test::VoltsAtSensor, Test::OhmsAtSensor],
            },
        }
    }
}

impl Readings<'_> {
    fn dictionary(&self, others: usize) -> Dictionary {
        let believed = Column::new(
            format!("believed_temperature_{}", self.units.key()),
            self.words.say(&Message::new("faults-believed").with("unit", self.units.symbol())),
            Show::Decimals(1, Rounding::Nearest),
        );
        let faults = Fault::dictionary(others);
        // A fault exists here where it reads something in volts or ohms.
        let exists = |fault: &&Fault| self.tests.iter().any(|test| self.nominal(fault, *test).is_some());
        Dictionary {
            condition: None,
            shown: vec![dictionary::resistance(self.words), dictionary::voltage(self.words), believed],
            tests: vec!["V", "Ω"],
            blocks: vec![Block {
                condition: None,
                good: self.widened(None),
                entries: faults.iter().filter(exists).map(|fault| self.entry(fault)).collect(),
            }],
        }
    }

    fn nominal(&self, fault: &Fault, test: Test) -> Option<f64> {
        self.subject.reading(Some(fault), test, self.at, &self.instruments).map(|(nominal, _)| nominal)
    }

    fn widened(&self, fault: Option<&Fault>) -> Vec<Option<Interval<f64>>> {
        let window =
            |&test: &Test| widened(&self.subject, fault, Condition { test, at: self.at }, &self.instruments);
        self.tests.iter().map(window).collect()
    }

    fn is_plausible(&self, believed: Temperature) -> bool {
        self.subject.curve.resistance(believed).is_ok_and(|sensor| self.bench.is_plausible(sensor))
    }

    fn entry(&self, fault: &Fault) -> Entry {
        let [volts, ohms] = self.tests;
        let size = match (fault, fault::size(fault)) {
            (Fault::OtherPart(other), _) => self.names.get(*other).map(|sensor| sensor.id.clone()),
            (_, size) if size.is_empty() => None,
            (_, size) => Some(size),
        };
        // Outside the plausible part of the reference the unit believes nothing.
        let believed = self.subject.believed(Some(fault), self.at).filter(|at| self.is_plausible(*at));
        let believed = believed.map(|at| self.units.degrees(at));
        Entry {
            fault: (fault::key(fault), fault::name(self.words, fault, &self.names)),
            size,
            shown: vec![
                dictionary::ohms(self.words, self.nominal(fault, ohms)),
                Cell::from(self.nominal(fault, volts)),
                Cell::from(believed),
            ],
            windows: self.widened(Some(fault)),
        }
    }

    /// What a good sensor reads in a test, and how far that can be trusted.
    fn good(&self, test: Test) -> Option<Good> {
        let (nominal, window) = self.subject.reading(None, test, self.at, &self.instruments)?;
        Some(self.trusted(test, nominal, window))
    }

    fn trusted(&self, test: Test, nominal: f64, window: Option<Interval<f64>>) -> Good {
        let doubt = self.subject.doubt(nominal, test, self.at, &self.instruments);
        Good { nominal: Some(nominal), window, doubt: doubt.map(|doubt| doubt.budget.expanded()) }
    }

    /// What the readings are of: temperature, place, instruments, the good readings.
    fn notes(&self, bench: &Bench<'_>, place: Place) -> Vec<String> {
        let place = match place {
            Place::ControlUnit => "faults-at-unit",
            Place::Sensor => "faults-at-sensor",
        };
        let at = Message::new(place).with("at", figures::temperature(self.units, self.at));
        let mut notes = vec![self.words.say(&at)];
        notes.extend(dictionary::instruments(self.words, bench.kit()));
        let told = |id, good: &Good, unit| {
            self.words.say(&Message::new(id).with("reading", good.told(self.words, unit)))
        };
        for test in self.tests {
            let (unit, missing) =
                if test.is_ohms() { ("Ω", "faults-no-ohms") } else { ("V", "faults-no-volts") };
            notes.push(match self.good(test) {
                Some(good) => told("faults-good", &good, unit),
                None => self.words.word(missing),
            });
        }
        notes.extend(self.good(Test::VoltsUnplugged).map(|good| told("faults-unplugged", &good, "V")));
        notes.extend(self.substitute());
        if !bench.has_battery() {
            let message = Message::new("faults-no-battery").with("system", &bench.sensor.system);
            notes.push(self.words.say(&message));
        }
        notes
    }

    /// The resistor that stands in for a good sensor here, and what it must read.
    fn substitute(&self) -> Option<String> {
        let found = substitute(self.subject.curve, self.at, Series::E24).ok()?;
        let [test, _] = self.tests;
        let (nominal, window) = self.subject.with_resistor(found.resistor, test, &self.instruments)?;
        // No sensor is on the line, so that no thermometer has a part in the doubt.
        let Good { doubt, .. } = self.trusted(Test::VoltsUnplugged, nominal, window);
        let reading = Good { nominal: Some(nominal), window, doubt }.told(self.words, "V");
        let message = Message::new("faults-substitute")
            .with("resistor", dictionary::sized_ohms(found.resistor))
            .with("simulates", figures::tenths(self.units, found.simulates))
            .with("reading", reading);
        Some(self.words.say(&message))
    }
}
