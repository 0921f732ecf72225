//! Worst-case windows: every combination of the ends of all tolerances.

use super::network::Network;
use super::{Circuit, Disturbance, Meter};
use crate::physics::Band;
use crate::quantity::{Interval, Ratio, Resistance, Scalar, Toleranced, Voltage};

impl Circuit {
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
        self.disturbed_window(sensor, &Disturbance::NONE, meter)
    }

    /// The same with something wrong.
    #[must_use]
    pub fn disturbed_window(
        &self,
        sensor: Interval<Resistance>,
        disturbance: &Disturbance,
        meter: Option<&Meter>,
    ) -> Option<Interval<Voltage>> {
        Some(self.corners(meter)?.disturbed_window(sensor, disturbance))
    }

    /// The same as a part of the reference, whose own tolerance then drops out
    /// unless something else feeds the line.
    #[must_use]
    pub fn ratio_window(
        &self,
        sensor: Interval<Resistance>,
        meter: Option<&Meter>,
    ) -> Option<Interval<Ratio>> {
        Some(self.corners(meter)?.ratio_window(sensor))
    }

    /// A band from a sensor's band: nominal reading between its corners.
    #[must_use]
    pub fn voltage_band(&self, sensor: Band<Resistance>, meter: Option<&Meter>) -> Option<Band<Voltage>> {
        let window = self.voltage_window(Interval { low: sensor.low, high: sensor.high }, meter)?;
        Some(Band { low: window.low, nominal: self.voltage(sensor.nominal, meter), high: window.high })
    }

    /// Every combination of the ends of every tolerance, to be asked for many sensors.
    ///
    /// `None` when a part of the circuit has no tolerance.
    #[must_use]
    pub fn corners(&self, meter: Option<&Meter>) -> Option<Corners> {
        let reader = self.reader.map(|reader| reader.resistor);
        let reader_reference = self.reader.and_then(|reader| reader.reference);
        // As many as a divider with a meter has.
        let mut corners = Vec::with_capacity(8);
        corners.push(self.nominal(meter));
        split(&mut corners, Some(self.resistor), |corner, value| corner.resistor = value)?;
        split(&mut corners, Some(self.reference), |corner, value| corner.reference = value)?;
        split(&mut corners, self.series, |corner, value| corner.series = value)?;
        split(&mut corners, self.parallel, |corner, value| corner.parallel = value)?;
        split(&mut corners, meter.map(|meter| meter.input), |corner, value| corner.meter = value)?;
        split(&mut corners, reader, |corner, value| corner.reader = value)?;
        split(&mut corners, reader_reference, |corner, value| corner.reader_reference = value)?;
        split(&mut corners, self.offset, |corner, value| corner.offset = value)?;
        Some(Corners(corners))
    }
}

/// A circuit and a meter at every combination of the ends of their tolerances.
#[derive(Debug, Clone)]
pub struct Corners(Vec<Network>);

impl Corners {
    /// The least and the greatest voltage, over both ends of a sensor as well.
    #[must_use]
    pub fn voltage_window(&self, sensor: Interval<Resistance>) -> Interval<Voltage> {
        self.disturbed_window(sensor, &Disturbance::NONE)
    }

    /// The same with something wrong.
    #[must_use]
    pub fn disturbed_window(
        &self,
        sensor: Interval<Resistance>,
        disturbance: &Disturbance,
    ) -> Interval<Voltage> {
        let [volts] = self.extremes(sensor, disturbance, |_, volts| [volts]);
        voltages(volts)
    }

    /// The same as parts of the reference.
    #[must_use]
    pub fn ratio_window(&self, sensor: Interval<Resistance>) -> Interval<Ratio> {
        self.windows(sensor).1
    }

    /// Voltages and parts of the reference at once, for a table of both.
    #[must_use]
    pub fn windows(&self, sensor: Interval<Resistance>) -> (Interval<Voltage>, Interval<Ratio>) {
        let both = |corner: &Network, volts| [volts, volts / corner.reference];
        let [volts, parts] = self.extremes(sensor, &Disturbance::NONE, both);
        (voltages(volts), Interval { low: Ratio::new(parts.low), high: Ratio::new(parts.high) })
    }

    /// The least and the greatest of some figures over corners and both ends of the sensor.
    fn extremes<const N: usize>(
        &self,
        sensor: Interval<Resistance>,
        disturbance: &Disturbance,
        figures: impl Fn(&Network, f64) -> [f64; N],
    ) -> [Interval<f64>; N] {
        let mut extremes = [Interval { low: f64::INFINITY, high: f64::NEG_INFINITY }; N];
        for corner in &self.0 {
            let socket = corner.socket(disturbance);
            for ohms in [sensor.low, sensor.high] {
                let figures = figures(corner, socket.volts(ohms.ohms()));
                for (extreme, figure) in extremes.iter_mut().zip(figures) {
                    extreme.low = extreme.low.min(figure);
                    extreme.high = extreme.high.max(figure);
                }
            }
        }
        extremes
    }
}

fn voltages(volts: Interval<f64>) -> Interval<Voltage> {
    Interval { low: Voltage::from_volts(volts.low), high: Voltage::from_volts(volts.high) }
}

/// Doubles the corners for a part that has a width; `None` where it has no tolerance.
fn split<T: Scalar>(
    corners: &mut Vec<Network>,
    part: Option<Toleranced<T>>,
    set: fn(&mut Network, f64),
) -> Option<()> {
    let Some(part) = part else { return Some(()) };
    let limits = part.limits?;
    let (low, high) = (limits.low.si(), limits.high.si());
    let known = corners.len();
    if low < high {
        corners.extend_from_within(..);
    }
    for (index, corner) in corners.iter_mut().enumerate() {
        set(corner, if index < known { low } else { high });
    }
    Some(())
}
