//! A photodiode or small cell without bias: the single-diode equation.

use super::LightError;
use crate::quantity::{Current, Resistance, Temperature, Voltage};

/// Boltzmann's constant over the elementary charge, V/K.
///
/// # Source
/// 1.380649e-23 J/K and 1.602176634e-19 C, both exact in the SI of 2019.
const BOLTZMANN_PER_CHARGE: f64 = 1.380_649e-23 / 1.602_176_634e-19;

/// The diode's slope voltage n k T/q.
///
/// # Example
/// A slope factor of 1.15 at 25 °C (tests/reference/07a, photodiode A).
/// ```
/// use bayleaf::physics::light::slope_voltage;
/// use bayleaf::quantity::Temperature;
/// let volts = slope_voltage(1.15, Temperature::from_celsius(25.0)).volts();
/// assert!((volts - 0.029_546_465_989_2).abs() < 1e-13);
/// ```
#[must_use]
pub fn slope_voltage(factor: f64, at: Temperature) -> Voltage {
    Voltage::from_volts(factor * BOLTZMANN_PER_CHARGE * at.kelvins())
}

/// A cell without bias, all values at its temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SingleDiode {
    /// The photocurrent.
    pub photocurrent: Current,
    /// The saturation current of the diode.
    pub saturation: Current,
    /// The resistance in series.
    pub series: Resistance,
    /// The resistance across the diode.
    pub shunt: Resistance,
    /// n k T/q, see [`slope_voltage`].
    pub slope: Voltage,
}

impl SingleDiode {
    /// The voltage across a load resistor: photovoltaic mode.
    ///
    /// I = IL − I₀ (exp((V + I Rs)/nVt) − 1) − (V + I Rs)/Rsh with V = I R, solved for
    /// the voltage behind the series resistance by Newton's rule from above, where
    /// it converges without overshoot. Small loads give V ≈ IL R; large ones
    /// stop near the open-circuit voltage, whatever the light.
    ///
    /// # Errors
    /// [`LightError::NotPhysical`] for a value that no cell has.
    ///
    /// # Source
    /// tests/reference/07a_light_sensor_single_diode.csv.
    pub fn voltage(&self, load: Resistance) -> Result<Voltage, LightError> {
        let (light, dark) = (self.photocurrent.amperes(), self.saturation.amperes());
        let (series, shunt, load) = (self.series.ohms(), self.shunt.ohms(), load.ohms());
        let slope = self.slope.volts();
        let whole = series + load;
        let physical = (0.0..=1e3).contains(&light)
            && (1e-18..=1.0).contains(&dark)
            && (0.0..=1e12).contains(&series)
            && (1e-6..=1e15).contains(&shunt)
            && (1e-6..=1e12).contains(&load)
            && (1e-4..=10.0).contains(&slope);
        if !physical {
            return Err(LightError::NotPhysical);
        }
        let leak = 1.0 / shunt + 1.0 / whole;
        // Without the diode, and without the leaks: both are above the solution.
        let mut junction = (light / leak).min(slope * libm::log1p(light / dark));
        for _ in 0..MOST_STEPS {
            let growth = libm::exp(junction / slope);
            let excess = light - dark * (growth - 1.0) - junction * leak;
            let step = excess / (dark / slope * growth + leak);
            junction += step;
            if step.abs() <= 1e-15 * junction.abs() {
                break;
            }
        }
        Ok(Voltage::from_volts(junction * load / whole))
    }
}

/// Newton's rule doubles its digits from step to step once it is near; from an
/// upper bound it needs about one step for each slope voltage above.
const MOST_STEPS: usize = 200;
