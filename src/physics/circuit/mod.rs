//! The divider that turns a sensor's ohms into volts at a pin.

mod clamp;
mod converter;
mod network;
mod self_heating;
mod window;

pub use clamp::{Clamp, Clamped};
pub use converter::{Bits, Converter};
pub use self_heating::self_heating;
pub use window::Corners;

use crate::quantity::{Ratio, Resistance, Toleranced, Voltage};
use network::Network;

/// Which side of the signal pin the sensor is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Topology {
    /// Resistor from reference to signal, sensor from signal to return.
    PullUp,
    /// Sensor from reference to signal, resistor from signal to ground.
    PullDown,
}

/// Where the meter's lead touches.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Probe {
    /// At the control unit's signal pin.
    ControlUnit,
    /// At the sensor's signal pin, behind a series resistor if there is one.
    Sensor,
}

/// A sensor input with tolerances.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Circuit {
    /// Which side the sensor is on.
    pub topology: Topology,
    /// The pull-up or pull-down resistor.
    pub resistor: Toleranced<Resistance>,
    /// The reference voltage.
    pub reference: Toleranced<Voltage>,
    /// A second resistor that the unit switches beside the first, for a second range.
    pub switched: Option<Toleranced<Resistance>>,
    /// A resistor in the line, between the pin and the sensor.
    pub series: Option<Toleranced<Resistance>>,
    /// A resistor inside the control unit, across line and sensor: it stays
    /// when the sensor is unplugged.
    pub parallel: Option<Toleranced<Resistance>>,
    /// Another unit that reads the same line.
    pub reader: Option<Reader>,
    /// How far the sensor's return lies above the unit's ground.
    pub offset: Option<Toleranced<Voltage>>,
}

/// A second control unit or gauge on the line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reader {
    /// Its pull-up, or its input resistance to ground.
    pub resistor: Toleranced<Resistance>,
    /// What its pull-up leads to; `None` for an input to ground.
    pub reference: Option<Toleranced<Voltage>>,
}

/// A voltmeter on the line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Meter {
    /// Its input resistance.
    pub input: Toleranced<Resistance>,
    /// Where it touches.
    pub at: Probe,
}

/// What is wrong with a circuit; [`NONE`](Self::NONE) is a good one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Disturbance {
    /// Resistance in the line that does not belong there.
    pub contact: Resistance,
    /// Between the sensor's two wires, as all leaks: infinite is none, 0 Ω a short.
    pub leak_across: Resistance,
    /// To the unit's ground, by way of the body.
    pub leak_to_ground: Resistance,
    /// To the reference.
    pub leak_to_reference: Resistance,
    /// To the battery's positive pole.
    pub leak_to_battery: Resistance,
    /// What the battery gives.
    pub battery: Voltage,
    /// The sensor's return above where it should be. A pull-down sensor has none.
    pub lift: Voltage,
    /// The pull-up or pull-down as a multiple of what it should be.
    pub resistor: f64,
}

impl Disturbance {
    /// Nothing wrong.
    pub const NONE: Self = {
        let none = Resistance::from_ohms(f64::INFINITY);
        Self {
            contact: Resistance::from_ohms(0.0),
            leak_across: none,
            leak_to_ground: none,
            leak_to_reference: none,
            leak_to_battery: none,
            battery: Voltage::from_volts(0.0),
            lift: Voltage::from_volts(0.0),
            resistor: 1.0,
        }
    };
}

impl Circuit {
    /// A divider of one resistor and a reference.
    #[must_use]
    pub fn divider(
        topology: Topology,
        resistor: Toleranced<Resistance>,
        reference: Toleranced<Voltage>,
    ) -> Self {
        let (switched, series, parallel, reader, offset) = (None, None, None, None, None);
        Self { topology, resistor, reference, switched, series, parallel, reader, offset }
    }

    /// The circuit with its second resistor switched in; `None` where it has none.
    ///
    /// The two resistors become one: side by side, R₁R₂/(R₁+R₂), whose ends are
    /// both at their low or both at their high ends.
    #[must_use]
    pub fn with_switched(&self) -> Option<Self> {
        let second = self.switched?;
        let side_by_side =
            |a: Resistance, b: Resistance| Resistance::from_ohms(1.0 / (1.0 / a.ohms() + 1.0 / b.ohms()));
        let limits =
            self.resistor.limits.zip(second.limits).map(|(first, second)| crate::quantity::Interval {
                low: side_by_side(first.low, second.low),
                high: side_by_side(first.high, second.high),
            });
        let resistor = Toleranced { nominal: side_by_side(self.resistor.nominal, second.nominal), limits };
        Some(Self { resistor, switched: None, ..*self })
    }

    /// The reading with everything nominal, as a part of the reference.
    ///
    /// A sensor of infinite resistance is an open circuit, one of 0 Ω a short.
    ///
    /// # Source
    /// Kirchhoff's laws; checked against a circuit simulator in
    /// tests/reference/03a, 03b and 03c.
    ///
    /// # Example
    /// ```
    /// use bayleaf::physics::circuit::{Circuit, Topology};
    /// use bayleaf::quantity::{Resistance, toleranced};
    /// let circuit = Circuit::divider(Topology::PullUp, toleranced("10 kΩ")?, toleranced("5 V")?);
    /// let ratio = circuit.ratio(Resistance::from_ohms(32_660.0), None);
    /// assert!((5.0 * ratio.part() - 3.827_941_87).abs() < 1e-8);
    /// # Ok::<(), bayleaf::quantity::Misread>(())
    /// ```
    #[must_use]
    pub fn ratio(&self, sensor: Resistance, meter: Option<&Meter>) -> Ratio {
        Ratio::new(self.voltage(sensor, meter).volts() / self.reference.nominal.volts())
    }

    /// The reading with everything nominal, in volts.
    #[must_use]
    pub fn voltage(&self, sensor: Resistance, meter: Option<&Meter>) -> Voltage {
        self.disturbed_voltage(sensor, &Disturbance::NONE, meter)
    }

    /// The reading with everything nominal but what is wrong.
    ///
    /// # Source
    /// tests/reference/03h_fault_injection.csv.
    #[must_use]
    pub fn disturbed_voltage(
        &self,
        sensor: Resistance,
        disturbance: &Disturbance,
        meter: Option<&Meter>,
    ) -> Voltage {
        Voltage::from_volts(self.nominal(meter).volts(sensor.ohms(), disturbance))
    }

    /// How much the nominal reading rises for one ohm more of the sensor, in V/Ω.
    ///
    /// # Units
    /// Volts per ohm, below zero for a pull-down.
    ///
    /// # Source
    /// The derivative of Kirchhoff's laws; for R from signal to ground under a
    /// resistor P it is Vref P/(R + P)².
    ///
    /// # Example
    /// Half of 5 V at 10 kΩ: 5 V × 10 kΩ/(20 kΩ)² = 0.125 mV/Ω.
    /// ```
    /// use bayleaf::physics::circuit::{Circuit, Topology};
    /// use bayleaf::quantity::{Resistance, toleranced};
    /// let circuit = Circuit::divider(Topology::PullUp, toleranced("10 kΩ")?, toleranced("5 V")?);
    /// let slope = circuit.voltage_slope(Resistance::from_ohms(10_000.0), None);
    /// assert!((slope - 0.125e-3).abs() < 1e-15);
    /// # Ok::<(), bayleaf::quantity::Misread>(())
    /// ```
    #[must_use]
    pub fn voltage_slope(&self, sensor: Resistance, meter: Option<&Meter>) -> f64 {
        self.nominal(meter).socket(&Disturbance::NONE).slope(sensor.ohms())
    }

    /// What the control unit's pin sees of the sensor: line and sensor in series,
    /// with the parallel resistor across both.
    #[must_use]
    pub fn leg(&self, sensor: Resistance) -> Resistance {
        let line = self.series.map_or(0.0, |series| series.nominal.ohms()) + sensor.ohms();
        Resistance::from_ohms(match self.parallel {
            // In conductances an open sensor is a zero.
            Some(parallel) if line > 0.0 => 1.0 / (1.0 / line + 1.0 / parallel.nominal.ohms()),
            _ => line,
        })
    }

    /// The sensor's resistance behind a nominal reading at the control unit, with a
    /// meter wherever it touches.
    ///
    /// `None` when no resistance gives that reading: at or beyond the rails, or
    /// nearer to one than the parallel or series resistor lets it come.
    #[must_use]
    pub fn resistance(&self, reading: Voltage, meter: Option<&Meter>) -> Option<Resistance> {
        self.nominal(meter).sensor_behind(reading.volts(), &Disturbance::NONE).map(Resistance::from_ohms)
    }

    /// What an ohmmeter reads across the sensor's two wires while everything is still
    /// plugged in, the unit's supply taken as a short: at the unit's plug or the sensor's.
    ///
    /// # Source
    /// Common practice, no source: the resistor then lies across the sensor, and
    /// E1 at 31 °C reads 1273 Ω instead of 1745 Ω.
    #[must_use]
    pub fn ohms_while_mated(&self, sensor: Resistance, at: Probe) -> Resistance {
        let beside = [Some(self.resistor), self.reader.map(|reader| reader.resistor), self.parallel];
        let unit = beside.into_iter().flatten().fold(0.0, |sum, part| sum + 1.0 / part.nominal.ohms());
        let series = self.series.map_or(0.0, |series| series.nominal.ohms());
        let sensor = sensor.ohms();
        Resistance::from_ohms(match at {
            Probe::ControlUnit => 1.0 / (unit + 1.0 / (series + sensor)),
            Probe::Sensor => 1.0 / (1.0 / (series + 1.0 / unit) + 1.0 / sensor),
        })
    }

    fn nominal(&self, meter: Option<&Meter>) -> Network {
        let ohms = |part: Option<Toleranced<Resistance>>, absent: f64| {
            part.map_or(absent, |part| part.nominal.ohms())
        };
        let reader = self.reader.map(|reader| reader.resistor);
        let reader_reference = self.reader.and_then(|reader| reader.reference);
        Network {
            topology: self.topology,
            reference: self.reference.nominal.volts(),
            resistor: self.resistor.nominal.ohms(),
            series: ohms(self.series, 0.0),
            parallel: ohms(self.parallel, f64::INFINITY),
            meter: ohms(meter.map(|meter| meter.input), f64::INFINITY),
            probe: meter.map_or(Probe::ControlUnit, |meter| meter.at),
            reader: ohms(reader, f64::INFINITY),
            reader_reference: reader_reference.map_or(0.0, |reference| reference.nominal.volts()),
            offset: self.offset.map_or(0.0, |offset| offset.nominal.volts()),
        }
    }
}
