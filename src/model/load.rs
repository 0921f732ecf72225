//! From a load as written to one that can be computed.
//!
//! Rules call these too, and stay silent where a part was not given.

use crate::physics::blower::{BlowerError, Motor};
use crate::physics::solenoid::{ControlCurve, CurveFault};
use crate::physics::wire::greatest_per_metre;
use crate::quantity::Resistance;
use crate::spec;

/// The control curve; `None` where direction or points were not given.
///
/// # Errors
/// When the points make no curve, or go against the stated direction.
pub fn control(written: &spec::Displacement) -> Option<Result<ControlCurve, CurveFault>> {
    let direction = written.more_current.as_ref()?.value;
    let points = written.points.as_ref()?;
    let points: Vec<_> = points.iter().map(|pair| (pair.first.value, pair.second.value)).collect();
    Some(ControlCurve::new(&points, direction))
}

/// A blower's motor; `None` where current, voltage or exponent was not given.
///
/// # Errors
/// When they are those of no motor.
pub fn motor(written: &spec::Blower) -> Option<Result<Motor, BlowerError>> {
    let (current, at) = (written.current.as_ref()?.value, written.at.as_ref()?.value);
    Some(Motor::new(current, at, written.exponent.as_ref()?.value))
}

/// The greatest resistance of one metre of a wire at 20 °C, where class and size are the cable standard's.
#[must_use]
pub fn greatest(wire: &spec::Wire) -> Option<Resistance> {
    greatest_per_metre(wire.size.as_ref()?.value, wire.class.as_ref()?.value).ok()
}

/// How many conductors a wire has; `None` where not given, or where it is neither 1 nor 2.
#[must_use]
pub fn conductors(wire: &spec::Wire) -> Option<u8> {
    let given = wire.conductors.as_ref()?.value;
    [1_u8, 2].into_iter().find(|count| f64::from(*count).total_cmp(&given).is_eq())
}
