//! How much the measuring current warms the sensor itself.

use super::{Circuit, Disturbance};
use crate::physics::curve::{Curve, CurveError};
use crate::quantity::{Dissipation, Temperature, TemperatureDifference};

/// How much warmer than the air a sensor is by its own current, in its circuit.
///
/// P = V²/R with V across the sensor, ΔT = P/δ, where R is that of the warmed
/// sensor: the ΔT that satisfies both, by bisection. δ is the dissipation
/// constant, in watts per kelvin, for still or for moving air.
///
/// # Errors
/// Where the curve is not known at the warmed temperature, or δ is not above zero.
///
/// # Source
/// P = δ·ΔT is the definition of the dissipation constant (IEC 60539-1, number
/// from memory). Component makers' pages: 0.5 to 1.0 mW/K for small beads in
/// still air, 7 to 8 in stirred oil.
pub fn self_heating(
    circuit: &Circuit,
    curve: &Curve,
    air: Temperature,
    dissipation: Dissipation,
) -> Result<TemperatureDifference, CurveError> {
    let per_kelvin = dissipation.watts_per_kelvin();
    let sensible = per_kelvin.is_finite() && per_kelvin > 0.0;
    if !sensible {
        return Err(CurveError::NotPhysical);
    }
    let network = circuit.nominal(None);
    let rise = |by: f64| -> Result<f64, CurveError> {
        let ohms = curve.resistance(air.plus(TemperatureDifference::from_kelvins(by)))?.ohms();
        let across = network.across_sensor(ohms, &Disturbance::NONE);
        Ok(across * across / ohms / per_kelvin)
    };
    // The power cannot exceed what the whole reference would give the cold or the warm
    // sensor; the rise it makes bounds the search, which stays inside the curve.
    let room = curve.domain().high.celsius() - air.celsius();
    let (mut low, mut high) = (0.0, rise(0.0)?.max(1e-9));
    while high < room && rise(high)? > high {
        high *= 2.0;
    }
    if high >= room {
        high = room;
        if rise(high)? > high {
            return Err(CurveError::OutsideDomain);
        }
    }
    for _ in 0..80 {
        let middle = 0.5 * (low + high);
        if rise(middle)? > middle { low = middle } else { high = middle }
    }
    Ok(TemperatureDifference::from_kelvins(0.5 * (low + high)))
}
