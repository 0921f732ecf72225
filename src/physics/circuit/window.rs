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
        let corners = self.corners(meter)?;
        let (low, high) = extremes(&corners, sensor, |corner, ohms| corner.volts(ohms, disturbance));
        Some(Interval { low: Voltage::from_volts(low), high: Voltage::from_volts(high) })
    }

    /// The same as a part of the reference, whose own tolerance then drops out
    /// unless something else feeds the line.
    #[must_use]
    pub fn ratio_window(
        &self,
        sensor: Interval<Resistance>,
        meter: Option<&Meter>,
    ) -> Option<Interval<Ratio>> {
        let corners = self.corners(meter)?;
        let ratio = |corner: &Network, ohms| corner.volts(ohms, &Disturbance::NONE) / corner.reference;
        let (low, high) = extremes(&corners, sensor, ratio);
        Some(Interval { low: Ratio::new(low), high: Ratio::new(high) })
    }

    /// A band from a sensor's band: nominal reading between its corners.
    #[must_use]
    pub fn voltage_band(&self, sensor: Band<Resistance>, meter: Option<&Meter>) -> Option<Band<Voltage>> {
        let window = self.voltage_window(Interval { low: sensor.low, high: sensor.high }, meter)?;
        Some(Band { low: window.low, nominal: self.voltage(sensor.nominal, meter), high: window.high })
    }

    /// Every combination of the ends of every tolerance.
    fn corners(&self, meter: Option<&Meter>) -> Option<Vec<Network>> {
        let reader = self.reader.map(|reader| reader.resistor);
        let reader_reference = self.reader.and_then(|reader| reader.reference);
        let mut corners = vec![self.nominal(meter)];
        split(&mut corners, Some(self.resistor), |corner, value| corner.resistor = value)?;
        split(&mut corners, Some(self.reference), |corner, value| corner.reference = value)?;
        split(&mut corners, self.series, |corner, value| corner.series = value)?;
        split(&mut corners, self.parallel, |corner, value| corner.parallel = value)?;
        split(&mut corners, meter.map(|meter| meter.input), |corner, value| corner.meter = value)?;
        split(&mut corners, reader, |corner, value| corner.reader = value)?;
        split(&mut corners, reader_reference, |corner, value| corner.reader_reference = value)?;
        split(&mut corners, self.offset, |corner, value| corner.offset = value)?;
        Some(corners)
    }
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

/// The least and the greatest of a figure over corners and both ends of the sensor.
fn extremes(
    corners: &[Network],
    sensor: Interval<Resistance>,
    of: impl Fn(&Network, f64) -> f64,
) -> (f64, f64) {
    let ends = [sensor.low.ohms(), sensor.high.ohms()];
    let figures = corners.iter().flat_map(|corner| ends.map(|ohms| of(corner, ohms)));
    figures
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), figure| (low.min(figure), high.max(figure)))
}
