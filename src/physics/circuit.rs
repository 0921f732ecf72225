//! The divider that turns a sensor's ohms into volts at a pin.

use super::Band;
use crate::quantity::{Interval, Ratio, Resistance, Toleranced, Voltage};

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
    /// A resistor in the line, between the pin and the sensor.
    pub series: Option<Toleranced<Resistance>>,
    /// A resistor inside the control unit, across line and sensor: it stays
    /// when the sensor is unplugged.
    pub parallel: Option<Toleranced<Resistance>>,
}

/// A voltmeter on the line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Meter {
    /// Its input resistance.
    pub input: Toleranced<Resistance>,
    /// Where it touches.
    pub at: Probe,
}

/// One set of exact values of a circuit: a nominal one or a corner.
#[derive(Debug, Clone, Copy)]
struct Divider {
    topology: Topology,
    resistor: f64,
    series: f64,
    /// Infinite where there is none.
    parallel: f64,
    /// Infinite where there is none.
    meter: f64,
    probe: Probe,
}

impl Circuit {
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
    /// let circuit = Circuit {
    ///     topology: Topology::PullUp,
    ///     resistor: toleranced("10 kΩ")?,
    ///     reference: toleranced("5 V")?,
    ///     series: None,
    ///     parallel: None,
    /// };
    /// let ratio = circuit.ratio(Resistance::from_ohms(32_660.0), None);
    /// assert!((5.0 * ratio.part() - 3.827_941_87).abs() < 1e-8);
    /// # Ok::<(), bayleaf::quantity::Misread>(())
    /// ```
    #[must_use]
    pub fn ratio(&self, sensor: Resistance, meter: Option<&Meter>) -> Ratio {
        Ratio::new(self.nominal(meter).ratio(sensor.ohms()))
    }

    /// The reading with everything nominal, in volts.
    #[must_use]
    pub fn voltage(&self, sensor: Resistance, meter: Option<&Meter>) -> Voltage {
        Voltage::from_volts(self.reference.nominal.volts() * self.ratio(sensor, meter).part())
    }

    /// What the control unit's pin sees of the sensor: line and sensor in series,
    /// with the parallel resistor across both.
    #[must_use]
    pub fn leg(&self, sensor: Resistance) -> Resistance {
        let divider = self.nominal(None);
        Resistance::from_ohms(across(divider.series + sensor.ohms(), divider.parallel))
    }

    /// The sensor's resistance behind a nominal reading at the control unit.
    ///
    /// `None` when no resistance gives that reading: at or beyond the rails, or
    /// nearer to one than the parallel or series resistor lets it come.
    #[must_use]
    pub fn resistance(&self, reading: Voltage, meter: Option<&Meter>) -> Option<Resistance> {
        let divider = self.nominal(meter.filter(|meter| meter.at == Probe::ControlUnit));
        let ratio = reading.volts() / self.reference.nominal.volts();
        let leg = match self.topology {
            Topology::PullUp => {
                let lower = ratio / (1.0 - ratio) * divider.resistor;
                1.0 / (1.0 / lower - 1.0 / divider.meter)
            }
            Topology::PullDown => (1.0 / ratio - 1.0) * across(divider.resistor, divider.meter),
        };
        let line = 1.0 / (1.0 / leg - 1.0 / divider.parallel);
        let ohms = line - divider.series;
        (leg > 0.0 && ohms.is_finite() && ohms > 0.0).then(|| Resistance::from_ohms(ohms))
    }

    /// The reading over all corners of sensor, resistors, reference and meter.
    ///
    /// `None` when a part of the circuit has no tolerance: a limit is never
    /// computed from a tolerance that was not given. The voltage is monotone in
    /// each value while the others stand still, so its extremes lie at corners,
    /// and every corner is computed.
    ///
    /// # Source
    /// tests/reference/03g_worst_case_corners.csv and 03i_end_to_end_window.csv.
    #[must_use]
    pub fn voltage_window(
        &self,
        sensor: Interval<Resistance>,
        meter: Option<&Meter>,
    ) -> Option<Interval<Voltage>> {
        let reference = self.reference.limits?;
        let ratio = self.ratio_window(sensor, meter)?;
        Some(Interval {
            low: Voltage::from_volts(reference.low.volts() * ratio.low.part()),
            high: Voltage::from_volts(reference.high.volts() * ratio.high.part()),
        })
    }

    /// The same as a part of the reference, whose own tolerance then drops out.
    #[must_use]
    pub fn ratio_window(
        &self,
        sensor: Interval<Resistance>,
        meter: Option<&Meter>,
    ) -> Option<Interval<Ratio>> {
        let corners = self.corners(meter)?;
        let ends = [sensor.low.ohms(), sensor.high.ohms()];
        let readings = corners.iter().flat_map(|corner| ends.map(|ohms| corner.ratio(ohms)));
        let (low, high) = readings
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), ratio| (low.min(ratio), high.max(ratio)));
        Some(Interval { low: Ratio::new(low), high: Ratio::new(high) })
    }

    /// A band from a sensor's band: nominal reading between its corners.
    #[must_use]
    pub fn voltage_band(&self, sensor: Band<Resistance>, meter: Option<&Meter>) -> Option<Band<Voltage>> {
        let window = self.voltage_window(Interval { low: sensor.low, high: sensor.high }, meter)?;
        Some(Band { low: window.low, nominal: self.voltage(sensor.nominal, meter), high: window.high })
    }

    fn nominal(&self, meter: Option<&Meter>) -> Divider {
        Divider {
            topology: self.topology,
            resistor: self.resistor.nominal.ohms(),
            series: self.series.map_or(0.0, |series| series.nominal.ohms()),
            parallel: self.parallel.map_or(f64::INFINITY, |parallel| parallel.nominal.ohms()),
            meter: meter.map_or(f64::INFINITY, |meter| meter.input.nominal.ohms()),
            probe: meter.map_or(Probe::ControlUnit, |meter| meter.at),
        }
    }

    /// Every combination of the ends of every tolerance but the reference's.
    fn corners(&self, meter: Option<&Meter>) -> Option<Vec<Divider>> {
        let resistor = ends(Some(self.resistor), 0.0)?;
        let series = ends(self.series, 0.0)?;
        let parallel = ends(self.parallel, f64::INFINITY)?;
        let meters = ends(meter.map(|meter| meter.input), f64::INFINITY)?;
        let mut corners = vec![self.nominal(meter)];
        let mut split = |values: &[f64], set: fn(&mut Divider, f64)| {
            corners = corners
                .iter()
                .flat_map(|corner| {
                    values.iter().map(move |value| {
                        let mut corner = *corner;
                        set(&mut corner, *value);
                        corner
                    })
                })
                .collect();
        };
        split(&resistor, |corner, value| corner.resistor = value);
        split(&series, |corner, value| corner.series = value);
        split(&parallel, |corner, value| corner.parallel = value);
        split(&meters, |corner, value| corner.meter = value);
        Some(corners)
    }
}

/// The ends of a tolerance; one value where the part is absent.
fn ends(part: Option<Toleranced<Resistance>>, absent: f64) -> Option<Vec<f64>> {
    match part {
        None => Some(vec![absent]),
        Some(part) => part.limits.map(|limits| vec![limits.low.ohms(), limits.high.ohms()]),
    }
}

impl Divider {
    /// The probed voltage as a part of the reference.
    fn ratio(&self, sensor: f64) -> f64 {
        let at_unit = if self.probe == Probe::ControlUnit { self.meter } else { f64::INFINITY };
        let at_sensor = if self.probe == Probe::Sensor { self.meter } else { f64::INFINITY };
        match self.topology {
            Topology::PullUp => {
                let end = across(sensor, at_sensor);
                let line = self.series + end;
                let leg = across(line, self.parallel);
                // In conductances an open leg is zero and a short is infinite,
                // and neither makes the quotient undefined.
                let pin = 1.0 / (1.0 + self.resistor * (1.0 / leg + 1.0 / at_unit));
                let behind_series = self.probe == Probe::Sensor && end.is_finite() && line > 0.0;
                if behind_series { pin * end / line } else { pin }
            }
            Topology::PullDown => match self.probe {
                Probe::ControlUnit => {
                    let lower = across(self.resistor, at_unit);
                    lower / (lower + across(self.series + sensor, self.parallel))
                }
                Probe::Sensor => self.behind_series_of_pull_down(sensor, at_sensor),
            },
        }
    }

    /// The voltage at a pull-down sensor's signal pin, behind the series resistor.
    ///
    /// Two nodes, sensor end and control unit pin, by Kirchhoff's current law;
    /// conductances, so that an open sensor or an absent resistor is a zero.
    fn behind_series_of_pull_down(&self, sensor: f64, meter: f64) -> f64 {
        let (down, across) = (1.0 / self.resistor, 1.0 / self.parallel);
        if self.series <= 0.0 {
            // One node.
            let lower = self::across(self.resistor, meter);
            return lower / (lower + self::across(sensor, self.parallel));
        }
        if sensor <= 0.0 {
            return 1.0;
        }
        let (feed, load, line) = (1.0 / sensor, 1.0 / meter, 1.0 / self.series);
        let pin = line + down + across;
        // end (feed + load + line) − line·pin_v = feed;  pin_v·pin − line·end = across
        (feed + line * across / pin) / (feed + load + line - line * line / pin)
    }
}

/// Two resistances in parallel; either may be zero or infinite.
fn across(a: f64, b: f64) -> f64 {
    if a.is_infinite() {
        b
    } else if b.is_infinite() {
        a
    } else if a + b > 0.0 {
        a * b / (a + b)
    } else {
        0.0
    }
}
