//! What a protected input does to a pin that is pushed above the reference.

use super::{Circuit, Disturbance, Meter};
use crate::quantity::{Current, Resistance, Voltage};

/// k·T/q at 27 °C, in volts: 1.380649e-23 J/K × 300.15 K / 1.602176634e-19 C.
const THERMAL: f64 = 0.025_864_926;

/// A resistor from the pin to the converter, and a diode from there to the reference.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clamp {
    /// The protection resistor.
    pub resistor: Resistance,
    /// The diode's saturation current.
    pub saturation: Current,
}

/// The voltages of a protected input.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Clamped {
    /// At the pin.
    pub pin: Voltage,
    /// At the converter, behind the protection resistor.
    pub converter: Voltage,
}

impl Clamp {
    /// The readings of a disturbed circuit with this protection behind its pin.
    ///
    /// The diode follows I = Is (exp(V/Vt) − 1) with Vt = kT/q at 27 °C. Below the
    /// reference it carries nothing that a meter sees.
    ///
    /// # Range
    /// The drop of a real diode differs by some 0.1 V; the pin by what that makes
    /// through the protection resistor.
    ///
    /// # Source
    /// Shockley's diode law; tests/reference/03h_fault_injection.csv.
    #[must_use]
    pub fn voltages(
        &self,
        circuit: &Circuit,
        sensor: Resistance,
        disturbance: &Disturbance,
        meter: Option<&Meter>,
    ) -> Clamped {
        let network = circuit.nominal(meter);
        let open = network.solve(sensor.ohms(), disturbance).pin;
        let source = network.source_resistance(sensor.ohms(), disturbance);
        let reference = circuit.reference.nominal.volts();
        let current = self.current(open - reference, source + self.resistor.ohms());
        let pin = open - current * source;
        let converter = pin - current * self.resistor.ohms();
        Clamped { pin: Voltage::from_volts(pin), converter: Voltage::from_volts(converter) }
    }

    /// The current that `above` volts drive through resistor and diode, by bisection:
    /// the drop across both rises with the current.
    fn current(&self, above: f64, ohms: f64) -> f64 {
        let saturation = self.saturation.amperes();
        if above <= 0.0 || ohms <= 0.0 || saturation <= 0.0 {
            return 0.0;
        }
        let (mut low, mut high) = (0.0, above / ohms);
        for _ in 0..100 {
            let middle = 0.5 * (low + high);
            let drop = middle * ohms + THERMAL * libm::log1p(middle / saturation);
            if drop < above { low = middle } else { high = middle }
        }
        0.5 * (low + high)
    }
}
