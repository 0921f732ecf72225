//! What the control unit's converter makes of the voltage.

use super::Circuit;
use crate::physics::curve::{Curve, CurveError};
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
