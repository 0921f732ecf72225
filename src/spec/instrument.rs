//! `[instrument.ID]`: a thermometer, a multimeter, a pressure gauge or a hygrometer, and how far to trust it.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::physics::thermocouple::Thermocouple;
use crate::quantity::{
    Accuracy, Pressure, Ratio, Resistance, Scalar, TemperatureDifference, Toleranced, Voltage, accuracy,
    ratio, scalar, toleranced,
};

/// An instrument.
#[derive(Debug, Clone)]
pub struct Instrument {
    /// What it is called.
    pub title: Option<At<String>>,
    /// What it measures.
    pub kind: Option<At<InstrumentKind>>,
    /// A thermometer's limit of error.
    pub accuracy: Option<Sourced<TemperatureDifference>>,
    /// The thermocouple behind a thermometer, where it is one.
    pub thermocouple: Option<Sourced<Thermocouple>>,
    /// A multimeter's ranges of DC volts.
    pub volts: Vec<Range<Voltage>>,
    /// A multimeter's ranges of ohms.
    pub ohms: Vec<Range<Resistance>>,
    /// A multimeter's input resistance on DC volts.
    pub input_resistance: Option<Sourced<Toleranced<Resistance>>>,
    /// What a multimeter's two leads add to ohms.
    pub leads: Option<Sourced<Toleranced<Resistance>>>,
    /// A pressure gauge's limit of error as a part of full scale: its class.
    pub accuracy_of_full_scale: Option<Sourced<Ratio>>,
    /// The end of a pressure gauge's scale.
    pub full_scale: Option<Sourced<Pressure>>,
    /// A hygrometer's limit of error, in percent of relative humidity.
    pub humidity: Option<Sourced<Ratio>>,
}

/// What an instrument measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum InstrumentKind {
    /// Temperature.
    Thermometer,
    /// Volts and ohms.
    Multimeter,
    /// Pressure against the air around it.
    PressureGauge,
    /// Relative humidity.
    Hygrometer,
}

/// One range of a multimeter.
#[derive(Debug, Clone)]
pub struct Range<T> {
    /// The greatest reading it shows, where the meter has several ranges.
    pub to: Option<Sourced<T>>,
    /// Percent of reading plus digits.
    pub accuracy: Option<Sourced<Accuracy>>,
    /// The value of one digit.
    pub resolution: Option<Sourced<T>>,
}

impl Instrument {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "kind"]);
        let kind = reader.choice(
            "kind",
            &[
                ("thermometer", InstrumentKind::Thermometer),
                ("multimeter", InstrumentKind::Multimeter),
                ("pressure gauge", InstrumentKind::PressureGauge),
                ("hygrometer", InstrumentKind::Hygrometer),
            ],
        );
        // The keys of the other kind stay unknown, so that a thermometer with
        // an input resistance is found.
        let is = |wanted| kind.as_ref().is_none_or(|kind| kind.value == wanted);
        let thermometer = is(InstrumentKind::Thermometer);
        let multimeter = is(InstrumentKind::Multimeter);
        let gauge = is(InstrumentKind::PressureGauge);
        if kind.is_none() {
            // In kelvin or in percent: without a kind nobody can say.
            reader.pass_over(&["accuracy"]);
        }
        let is_thermometer = kind.as_ref().is_some_and(|kind| kind.value == InstrumentKind::Thermometer);
        let hygrometer = kind.as_ref().is_some_and(|kind| kind.value == InstrumentKind::Hygrometer);
        Self {
            title: reader.text("title"),
            accuracy: is_thermometer.then(|| reader.sourced("accuracy", scalar)).flatten(),
            thermocouple: thermometer.then(|| thermocouple(reader)).flatten(),
            volts: if multimeter { Range::read_all(reader, "volts") } else { Vec::new() },
            ohms: if multimeter { Range::read_all(reader, "ohms") } else { Vec::new() },
            input_resistance: multimeter.then(|| reader.sourced("input_resistance", toleranced)).flatten(),
            leads: multimeter.then(|| reader.sourced("leads", toleranced)).flatten(),
            accuracy_of_full_scale: gauge.then(|| reader.sourced("accuracy_of_full_scale", ratio)).flatten(),
            full_scale: gauge.then(|| reader.sourced("full_scale", scalar)).flatten(),
            humidity: hygrometer.then(|| reader.sourced("accuracy", ratio)).flatten(),
            kind,
        }
    }
}

/// A type of thermocouple by its letter, with the instrument's own source.
fn thermocouple(reader: &Reader<'_>) -> Option<Sourced<Thermocouple>> {
    let types = [("K", Thermocouple::K), ("T", Thermocouple::T), ("J", Thermocouple::J)];
    let found = reader.choice("thermocouple", &types)?;
    let letter = types.iter().find(|(_, known)| *known == found.value).map_or("", |(letter, _)| letter);
    Some(Sourced {
        value: found.value,
        written: letter.to_owned(),
        place: found.place,
        source: reader.source(),
    })
}

impl<T: Scalar> Range<T> {
    /// One range as a table, or several as a list of tables.
    fn read_all(reader: &Reader<'_>, key: &'static str) -> Vec<Self> {
        let tables = reader.one_or_more(key);
        let several = tables.len() > 1;
        tables
            .iter()
            .map(|table| {
                if several {
                    table.require(&["to"]);
                }
                Self::read(table)
            })
            .collect()
    }

    fn read(reader: &Reader<'_>) -> Self {
        let range = Self {
            to: reader.sourced("to", scalar),
            accuracy: reader.sourced("accuracy", accuracy),
            resolution: reader.sourced("resolution", scalar),
        };
        reader.finish();
        range
    }
}
