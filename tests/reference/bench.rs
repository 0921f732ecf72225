//! Circuits and meters of the checks, written the way a spec writes them.

use bayleaf::physics::circuit::{Circuit, Meter, Probe, Topology};
use bayleaf::quantity::{Interval, Resistance, Scalar, Toleranced, Voltage, toleranced};

/// Reads a value with its tolerance, such as `10000 Ω ± 1 %`.
pub(crate) fn written<T: Scalar>(text: &str) -> Toleranced<T> {
    toleranced(text).unwrap_or_else(|misread| panic!("{text}: {misread}"))
}

/// A resistance without any tolerance: both limits are the value.
pub(crate) fn exactly(value: Resistance) -> Toleranced<Resistance> {
    Toleranced { nominal: value, limits: Some(Interval { low: value, high: value }) }
}

/// A divider with no part but the resistor and the reference.
pub(crate) fn divider(
    topology: Topology,
    reference: Toleranced<Voltage>,
    resistor: Toleranced<Resistance>,
) -> Circuit {
    Circuit::divider(topology, resistor, reference)
}

/// A meter at the control unit's pin.
pub(crate) fn meter_at_pin(input: Toleranced<Resistance>) -> Meter {
    Meter { input, at: Probe::ControlUnit }
}

/// A meter at the sensor's pin.
pub(crate) fn meter_at_sensor(input: Toleranced<Resistance>) -> Meter {
    Meter { input, at: Probe::Sensor }
}

/// A voltage without any tolerance: both limits are the value.
pub(crate) fn exactly_volts(volts: f64) -> Toleranced<Voltage> {
    let value = Voltage::from_volts(volts);
    Toleranced { nominal: value, limits: Some(Interval { low: value, high: value }) }
}
