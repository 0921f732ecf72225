//! What the control unit's converter makes of the voltage.

use super::Circuit;
use crate::physics::curve::{Curve, CurveError};
use crate::physics::tolerance::{self, Tolerance};
use crate::quantity::{Interval, Ratio, Resistance, Temperature, TemperatureDifference};

/// How many bits a converter has: 6 to 24.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Bits(u8);

impl Bits {
    /// A number of bits; `None` for a converter that nobody builds.
    #[must_use]
    pub fn new(bits: u8) -> Option<Self> {
        (6..=24).contains(&bits).then_some(Self(bits))
    }

    /// The number.
    #[must_use]
    pub fn number(self) -> u8 {
        self.0
    }

    /// The count at the reference itself: 2ᵇ − 1.
    #[must_use]
    pub fn full_scale(self) -> u32 {
        (1 << u32::from(self.0)) - 1
    }
}

/// A ratiometric converter, and the ratios it takes for a sensor at all.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Converter {
    /// How many bits.
    pub bits: Option<Bits>,
    /// Outside this part of the reference the unit takes the line for open or shorted.
    pub plausible: Option<Interval<Ratio>>,
}

impl Converter {
    /// The count of a reading: round(V/Vref · (2ᵇ − 1)), held at the ends.
    ///
    /// `None` where the bits are not known.
    ///
    /// # Source
    /// Common practice, no source: the ideal characteristic of a ratiometric converter.
    #[must_use]
    pub fn count(&self, ratio: Ratio) -> Option<u32> {
        let full = f64::from(self.bits?.full_scale());
        let count = libm::round(ratio.part() * full).clamp(0.0, full);
        // Between 0 and 2²⁴ − 1, and whole.
        #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "clamped just above")]
        Some(count as u32)
    }

    /// How much the believed temperature moves from one count to the next.
    ///
    /// # Errors
    /// Where the curve is not known, or the reading does not move with temperature.
    pub fn step(
        &self,
        circuit: &Circuit,
        curve: &Curve,
        at: Temperature,
    ) -> Result<Option<TemperatureDifference>, CurveError> {
        let Some(bits) = self.bits else { return Ok(None) };
        let sensor = curve.resistance(at)?;
        let per_ohm = circuit.voltage_slope(sensor, None) / circuit.reference.nominal.volts();
        let per_kelvin = per_ohm * (curve.slope(at)? * sensor.ohms());
        let kelvins = 1.0 / (per_kelvin.abs() * f64::from(bits.full_scale()));
        if kelvins.is_finite() {
            Ok(Some(TemperatureDifference::from_kelvins(kelvins)))
        } else {
            Err(CurveError::OutsideDomain)
        }
    }

    /// The temperatures at which a good sensor would pass for open or shorted:
    /// where the reading leaves the plausible part of the reference.
    ///
    /// `None` for an end that the sensor does not reach inside its curve.
    #[must_use]
    pub fn good_sensor_limits(&self, circuit: &Circuit, curve: &Curve) -> [Option<Temperature>; 2] {
        let at = |ratio: Ratio| {
            let volts = circuit.reference.nominal.volts() * ratio.part();
            let sensor = circuit.resistance(crate::quantity::Voltage::from_volts(volts), None)?;
            curve.temperature(sensor).ok()
        };
        let Some(plausible) = self.plausible else { return [None, None] };
        let mut ends = [at(plausible.low), at(plausible.high)];
        // Colder end first: which of the ratios that is depends on topology and curve.
        let falls = {
            let domain = curve.domain();
            let ratio =
                |at| curve.resistance(at).map_or(0.0, |ohms: Resistance| circuit.ratio(ohms, None).part());
            ratio(domain.high) < ratio(domain.low)
        };
        if falls {
            ends.reverse();
        }
        ends
    }
}

impl Converter {
    /// The coldest and the hottest temperature at which the unit believes every good sensor in
    /// every good circuit: beyond, some of them leave the plausible part of the reference.
    ///
    /// Worst case over the tolerances of sensor and circuit. `None` for an end that the curve
    /// and its tolerance do not reach, and where a tolerance is not known.
    ///
    /// # Source
    /// Kirchhoff's laws at every corner, solved for temperature by bisection: from the middle of
    /// the plausible part on the window of V/Vref moves one way.
    #[must_use]
    pub fn every_good_sensor(
        &self,
        circuit: &Circuit,
        curve: &Curve,
        tolerance: &Tolerance,
    ) -> [Option<Temperature>; 2] {
        let Some(plausible) = self.plausible else { return [None, None] };
        let believed = |celsius: f64| {
            let band = tolerance::band(curve, tolerance, Temperature::from_celsius(celsius)).ok()?;
            let window = circuit.ratio_window(Interval { low: band.low, high: band.high }, None)?;
            Some(plausible.low <= window.low && window.high <= plausible.high)
        };
        let middle = Ratio::new(0.5 * (plausible.low.part() + plausible.high.part()));
        let volts = circuit.reference.nominal.volts() * middle.part();
        let domain = curve.domain();
        let middle = circuit
            .resistance(crate::quantity::Voltage::from_volts(volts), None)
            .and_then(|sensor| curve.temperature(sensor).ok())
            .map_or_else(|| 0.5 * (domain.low.celsius() + domain.high.celsius()), Temperature::celsius);
        if believed(middle) != Some(true) {
            return [None, None];
        }
        let first = |end: Temperature| {
            let (mut inside, mut outside) = (middle, end.celsius());
            if believed(outside) != Some(false) {
                return None;
            }
            // Sixty halvings reach the last bit of a temperature.
            for _ in 0..60 {
                let between = 0.5 * (inside + outside);
                if believed(between)? { inside = between } else { outside = between }
            }
            Some(Temperature::from_celsius(inside))
        };
        [first(domain.low), first(domain.high)]
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::circuit::{Circuit, Topology};
    use crate::physics::curve::Table;
    use crate::quantity::{Toleranced, Voltage};

    fn spread<T>(nominal: f64, part: f64, of: fn(f64) -> T) -> Toleranced<T> {
        let limits = Interval { low: of(nominal * (1.0 - part)), high: of(nominal * (1.0 + part)) };
        Toleranced { nominal: of(nominal), limits: Some(limits) }
    }

    /// By hand: behind 1 kΩ, V/Vref of 10 % is 111.11 Ω and 90 % is 9 kΩ. With ± 1 % of it and a sensor
    /// of ± 5 % that is 111.11 Ω × 1.01/0.95 = 118.13 Ω and 9 kΩ × 0.99/1.05 = 8485.7 Ω.
    #[test]
    fn the_worst_sensor_leaves_the_plausible_part_first() {
        let at = |celsius: f64, ohms| (Temperature::from_celsius(celsius), Resistance::from_ohms(ohms));
        let points =
            [at(-40.0, 20_000.0), at(0.0, 8_910.0 / 1.05), at(100.0, 1010.0 / 9.0 / 0.95), at(120.0, 60.0)];
        let curve = Curve::Table(Table::new(&points).expect("it falls"));
        let tolerance =
            Tolerance::Rated { resistance: Ratio::new(0.05), beta: Ratio::new(0.0), at: points[1].0 };
        let resistor = spread(1000.0, 0.01, Resistance::from_ohms);
        let reference = spread(5.0, 0.02, Voltage::from_volts);
        let circuit = Circuit::divider(Topology::PullUp, resistor, reference);
        let plausible = Interval { low: Ratio::new(0.1), high: Ratio::new(0.9) };
        let converter = Converter { bits: None, plausible: Some(plausible) };
        let [cold, hot] = converter
            .every_good_sensor(&circuit, &curve, &tolerance)
            .map(|end| end.expect("the curve goes beyond").celsius());
        assert!(cold.abs() < 1e-6 && (hot - 100.0).abs() < 1e-6, "{cold} to {hot}");
        // The nominal sensor is believed a little farther out.
        let [colder, hotter] = converter
            .good_sensor_limits(&circuit, &curve)
            .map(|end| end.expect("the curve goes beyond").celsius());
        assert!(colder < cold && hot < hotter, "{colder} to {hotter}");
        let none = Converter { bits: None, plausible: None };
        assert_eq!(none.every_good_sensor(&circuit, &curve, &tolerance), [None, None]);
    }
}
