//! The fault dictionary of one sensor at one temperature: what each fault reads,
//! what the control unit would believe, and which can be told apart.

use crate::document::bench::{Bench, fault};
use crate::document::figures;
use crate::document::table::{Cell, Column, Show, Table};
use crate::model::{Model, Sensor};
use crate::physics::fault::{Condition, Fault, Instruments, Other, Setup, Signature, Subject, Test};
use crate::quantity::{Rounding, Temperature, figure};
use crate::words::{Message, Words};

/// Where the readings are taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// At the control unit's connector.
    ControlUnit,
    /// At the sensor's own plug.
    Sensor,
}

impl Place {
    fn tests(self) -> [Test; 2] {
        match self {
            Self::ControlUnit => [Test::VoltsAtUnit, Test::OhmsAtUnit],
            Self::Sensor => [Test::VoltsAtSensor, Test::OhmsAtSensor],
        }
    }
}

/// The dictionary as a table.
///
/// # Errors
/// When there is no such sensor or instrument, or the sensor's curve does not
/// reach the temperature.
pub fn of(
    model: &Model,
    words: &Words,
    (id, at, place): (&str, Temperature, Place),
    instruments: &[String],
) -> Result<Table, Message> {
    let bench = Bench::new(model, id, instruments)?;
    let sensor = bench.sensor;
    if sensor.curve.resistance(at).is_err() {
        let domain = sensor.curve.domain();
        return Err(Message::new("run-table-outside")
            .with("at", at)
            .with("id", &sensor.id)
            .with("low", domain.low)
            .with("high", domain.high));
    }
    let others: Vec<Other<'_>> = bench.others.iter().map(|(_, other)| *other).collect();
    let (subject, instruments) = (bench.subject(&others), bench.instruments());
    let setup = |test| subject.setup(Condition { test, at }, &instruments);
    let dictionary = Dictionary {
        words,
        names: bench.others.iter().map(|(sensor, _)| *sensor).collect(),
        subject,
        at,
        setups: place.tests().map(setup),
        instruments,
        tests: place.tests(),
    };
    let good = dictionary.signatures(None);
    let all: Vec<Entry> = (Fault::dictionary(others.len()).into_iter())
        .map(|fault| Entry { fault, signatures: dictionary.signatures(Some(&fault)) })
        .filter(|entry| entry.signatures.iter().any(Option::is_some))
        .collect();
    Ok(Table {
        title: sensor.title.clone(),
        notes: dictionary.notes(&bench, place),
        columns: columns(words),
        rows: (0..all.len()).map(|index| dictionary.row(index, &all, &good)).collect(),
        formulas: ["faults-formula-reading", "faults-formula-believed", "faults-formula-separable"]
            .into_iter()
            .chain(["faults-formula-sizes"])
            .map(|id| words.word(id))
            .collect(),
        inputs: bench.inputs(),
    })
}

struct Dictionary<'a> {
    words: &'a Words,
    names: Vec<&'a Sensor>,
    subject: Subject<'a>,
    instruments: Instruments,
    at: Temperature,
    /// Volts, then ohms, as all below.
    tests: [Test; 2],
    setups: [Option<Setup<'a>>; 2],
}

/// What volts and ohms read; `None` where the test does not apply.
type Signatures = [Option<Signature>; 2];

/// A fault that exists here: it reads something in volts or ohms.
struct Entry {
    fault: Fault,
    signatures: Signatures,
}

fn columns(words: &Words) -> Vec<Column> {
    let nearest = |decimals| Show::Decimals(decimals, Rounding::Nearest);
    vec![
        Column::new("number", "", nearest(0)),
        Column::new("fault", words.word("faults-fault"), nearest(0)),
        Column::new("size", words.word("faults-size"), nearest(0)),
        Column::new("resistance_ohm", "Ω", Show::Digits(Rounding::Nearest)),
        Column::new("voltage_v", "V", nearest(3)),
        Column::new("believed_temperature_c", words.word("faults-believed"), nearest(1)),
        Column::new("separable", words.word("faults-separable"), nearest(0)),
        Column::new("separable_by", words.word("faults-separable-by"), nearest(0)),
        Column::new("alike", words.word("faults-alike"), nearest(0)),
    ]
}

impl Dictionary<'_> {
    fn signatures(&self, fault: Option<&Fault>) -> Signatures {
        self.setups.each_ref().map(|setup| setup.as_ref()?.signature(fault))
    }

    fn row(&self, index: usize, all: &[Entry], good: &Signatures) -> Vec<Cell> {
        let Entry { fault, signatures } = &all[index];
        let [volts, ohms] = signatures.map(|signature| signature.map(|signature| signature.nominal));
        let believed = self.setups.iter().flatten().next().and_then(|setup| setup.believed(Some(fault)));
        let number = Cell::from(index_of(index));
        let name = fault::name(self.words, fault, &self.names);
        let size = match (fault, fault::size(fault)) {
            (Fault::OtherPart(other), _) => self.names.get(*other).map(|sensor| sensor.id.clone()),
            (_, size) if size.is_empty() => None,
            (_, size) => Some(size),
        };
        let by = self.told_apart(good, signatures);
        let separable = match &by {
            None => Cell::Missing,
            Some(tests) => {
                let told = if tests.is_empty() { "faults-no" } else { "faults-yes" };
                Cell::Flag(!tests.is_empty(), self.words.word(told))
            }
        };
        let by = by.unwrap_or_default();
        let units: Vec<&str> = by.iter().map(|test| if test.is_ohms() { "Ω" } else { "V" }).collect();
        let alike: Vec<String> = (all.iter().enumerate())
            .filter(|(other, _)| *other != index)
            .filter(|(_, other)| {
                self.told_apart(signatures, &other.signatures).is_some_and(|by| by.is_empty())
            })
            .map(|(other, _)| (other + 1).to_string())
            .collect();
        vec![
            number,
            Cell::Named(fault::key(fault), name),
            size.map_or(Cell::Missing, Cell::Text),
            self.ohms(ohms),
            Cell::from(volts),
            Cell::from(believed.map(Temperature::celsius)),
            separable,
            Cell::Text(units.join(" ")),
            Cell::Text(alike.join(" ")),
        ]
    }

    /// An open circuit has no ohms that a number could tell.
    fn ohms(&self, ohms: Option<f64>) -> Cell {
        match ohms {
            Some(ohms) if ohms.is_infinite() => Cell::Named("OL", self.words.word("faults-open-line")),
            other => Cell::from(other),
        }
    }

    /// The tests that tell two faults, or a fault and a good sensor, apart.
    fn told_apart(&self, one: &Signatures, other: &Signatures) -> Option<Vec<Test>> {
        let apart = |(one, other): (&Option<Signature>, &Option<Signature>)| {
            one.as_ref()?.is_apart_from(other.as_ref()?)
        };
        let known: Vec<(Test, bool)> = (self.tests.iter().zip(one.iter().zip(other)))
            .filter_map(|(&test, pair)| Some((test, apart(pair)?)))
            .collect();
        let by = known.iter().filter(|(_, apart)| *apart).map(|(test, _)| *test).collect();
        (!known.is_empty()).then_some(by)
    }

    /// What the readings are of: temperature, place, instruments, the good reading.
    fn notes(&self, bench: &Bench<'_>, place: Place) -> Vec<String> {
        let place = match place {
            Place::ControlUnit => "faults-at-unit",
            Place::Sensor => "faults-at-sensor",
        };
        let at = Message::new(place).with("at", format!("{} °C", figures::celsius(self.at)));
        let mut notes = vec![self.words.say(&at), bench.told(self.words)];
        for test in self.tests {
            let Some((nominal, window)) = self.subject.reading(None, test, self.at, &self.instruments) else {
                let message = if test.is_ohms() { "faults-no-ohms" } else { "faults-no-volts" };
                notes.push(self.words.word(message));
                continue;
            };
            let good = if test.is_ohms() { "faults-good-ohms" } else { "faults-good-volts" };
            let decimals = if test.is_ohms() { crate::quantity::decimals_for(nominal) } else { 3 };
            let shown = |value, rounding| figure(value, decimals, rounding);
            let range = window.map_or_else(
                || self.words.word("doc-not-given"),
                |window| {
                    format!("{}–{}", shown(window.low, Rounding::Up), shown(window.high, Rounding::Down))
                },
            );
            let message =
                Message::new(good).with("nominal", shown(nominal, Rounding::Nearest)).with("range", range);
            notes.push(self.words.say(&message));
            if let Some(doubt) = self.subject.doubt(nominal, test, self.at, &self.instruments)
                && window.is_some()
            {
                let message = Message::new("faults-doubt")
                    .with("doubt", figure(doubt.budget.expanded(), decimals.max(1), Rounding::Nearest))
                    .with("unit", if test.is_ohms() { "Ω" } else { "V" });
                notes.push(self.words.say(&message));
            }
        }
        if !bench.has_battery() {
            notes.push(
                self.words.say(&Message::new("faults-no-battery").with("system", &bench.sensor.system)),
            );
        }
        notes
    }
}

/// A row's number, from 1, as a cell's number.
fn index_of(index: usize) -> f64 {
    u32::try_from(index + 1).map_or(f64::NAN, f64::from)
}
