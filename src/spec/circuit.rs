//! `[sensor.ID.circuit]`: how the control unit reads a sensor.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{Interval, Ratio, Resistance, Toleranced, Voltage, deviation, interval, toleranced};

/// How the control unit reads the sensor.
#[derive(Debug, Clone)]
pub struct Circuit {
    /// Which side the sensor is on.
    pub topology: Option<At<Topology>>,
    /// The pull-up or pull-down resistor.
    pub resistor: Option<Sourced<Toleranced<Resistance>>>,
    /// The reference, where it is not the system's.
    pub reference: Option<Sourced<Toleranced<Voltage>>>,
    /// A second resistor that the unit switches beside the first.
    pub switched: Option<Sourced<Toleranced<Resistance>>>,
    /// A resistor in the line, between the pin and the sensor.
    pub series: Option<Sourced<Toleranced<Resistance>>>,
    /// A resistor inside the control unit, across line and sensor.
    pub parallel: Option<Sourced<Toleranced<Resistance>>>,
    /// How far the sensor's return lies above the unit's ground.
    pub return_offset: Option<Sourced<Toleranced<Voltage>>>,
    /// Another unit that reads the same line.
    pub reader: Option<OtherReader>,
    /// The unit's converter.
    pub converter: Option<Converter>,
}

/// Which side of the signal pin the sensor is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Topology {
    /// Resistor from reference to signal, sensor from signal to return: more ohms is more volts.
    PullUp,
    /// Sensor from reference to signal, resistor from signal to ground: more ohms is fewer volts.
    PullDown,
}

/// Another control unit, or a gauge, on the same line.
#[derive(Debug, Clone)]
pub struct OtherReader {
    /// Its pull-up, or its input resistance to ground.
    pub resistor: Option<Sourced<Toleranced<Resistance>>>,
    /// What its pull-up leads to; without it the resistor leads to ground.
    pub reference: Option<Sourced<Toleranced<Voltage>>>,
}

/// The converter behind the pin.
#[derive(Debug, Clone)]
pub struct Converter {
    /// How many bits it has.
    pub bits: Option<Sourced<f64>>,
    /// The part of the reference outside which the unit takes the line for open or shorted.
    pub plausible: Option<Sourced<Interval<Ratio>>>,
}

impl Circuit {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["topology"]);
        let topologies = [("pull-up", Topology::PullUp), ("pull-down", Topology::PullDown)];
        let circuit = Self {
            topology: reader.choice("topology", &topologies),
            resistor: reader.sourced("resistor", toleranced),
            reference: reader.sourced("reference", toleranced),
            switched: reader.sourced("switched", toleranced),
            series: reader.sourced("series", toleranced),
            parallel: reader.sourced("parallel", toleranced),
            return_offset: reader.sourced("return_offset", deviation),
            reader: reader.table("reader").map(|other| OtherReader::read(&other)),
            converter: reader.table("converter").map(|converter| Converter::read(&converter)),
        };
        reader.finish();
        circuit
    }

    /// Every resistor of it, in the order of their keys.
    pub fn resistors(&self) -> impl Iterator<Item = (&'static str, &Sourced<Toleranced<Resistance>>)> {
        let other = self.reader.as_ref().and_then(|reader| reader.resistor.as_ref());
        [
            ("resistor", self.resistor.as_ref()),
            ("switched", self.switched.as_ref()),
            ("series", self.series.as_ref()),
            ("parallel", self.parallel.as_ref()),
            ("reader.resistor", other),
        ]
        .into_iter()
        .filter_map(|(key, part)| Some((key, part?)))
    }
}

impl OtherReader {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["resistor"]);
        let other = Self {
            resistor: reader.sourced("resistor", toleranced),
            reference: reader.sourced("reference", toleranced),
        };
        reader.finish();
        other
    }
}

impl Converter {
    fn read(reader: &Reader<'_>) -> Self {
        let converter =
            Self { bits: reader.number("bits"), plausible: reader.sourced("plausible", interval) };
        reader.finish();
        converter
    }
}
