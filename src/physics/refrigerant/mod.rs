//! Saturation of three refrigerants, and what a gauge and a thermometer say together.
//!
//! Nothing here is a reason to open a circuit: that is the work of licensed people.

mod equation;
pub mod reading;

use std::fmt;

use crate::quantity::{Interval, Pressure, Ratio, Temperature};

/// A refrigerant whose saturation is known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Refrigerant {
    /// R-134a, 1,1,1,2-tetrafluoroethane.
    R134a,
    /// R-1234yf, 2,3,3,3-tetrafluoroprop-1-ene.
    R1234yf,
    /// R-744, carbon dioxide.
    R744,
}

/// Why there is no saturation, or no result that rests on one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RefrigerantError {
    /// Colder, or at less pressure, than the equation is checked for.
    BelowRange,
    /// Hotter, or at more pressure, than the equation is checked for.
    AboveRange,
    /// Above the critical point: there is no liquid and no saturation.
    AboveCritical,
    /// A limit of error, or a window, below zero or none.
    NoLimit,
}

impl fmt::Display for RefrigerantError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::BelowRange => "below the range of the saturation equation",
            Self::AboveRange => "above the range of the saturation equation",
            Self::AboveCritical => "above the critical point, where there is no saturation",
            Self::NoLimit => "not a limit of error",
        })
    }
}

impl std::error::Error for RefrigerantError {}

impl Refrigerant {
    /// Every refrigerant that is known here.
    pub const ALL: [Self; 3] = [Self::R134a, Self::R1234yf, Self::R744];

    /// Its number in ISO 817 and ASHRAE 34.
    #[must_use]
    pub fn number(self) -> &'static str {
        match self {
            Self::R134a => "R-134a",
            Self::R1234yf => "R-1234yf",
            Self::R744 => "R-744",
        }
    }

    /// The temperatures between which saturation is computed: −30 °C (R-1234yf: −34 °C) to 80 °C,
    /// for R-744 to its critical point, 30.98 °C.
    ///
    /// The equations reach further; these are the temperatures at which
    /// tests/reference/05a, 05b and 05c hold them against the full equations of state.
    #[must_use]
    pub fn range(self) -> Interval<Temperature> {
        let high = match self {
            Self::R134a | Self::R1234yf => Temperature::from_celsius(80.0),
            Self::R744 => self.critical_temperature(),
        };
        let low = Temperature::from_celsius(if self == Self::R1234yf { -34.0 } else { -30.0 });
        Interval { low, high }
    }

    /// The critical temperature, above which there is no saturation.
    #[must_use]
    pub fn critical_temperature(self) -> Temperature {
        Temperature::from_kelvins(self.equation().critical_kelvins)
    }

    /// The critical pressure, absolute.
    #[must_use]
    pub fn critical_pressure(self) -> Pressure {
        Pressure::from_pascals(self.equation().critical_pascals)
    }

    /// The terms (nᵢ, tᵢ) of the equation of [`saturation_pressure`](Self::saturation_pressure).
    #[must_use]
    pub fn terms(self) -> &'static [(f64, f64)] {
        self.equation().terms
    }

    /// The limit of error of [`saturation_pressure`](Self::saturation_pressure), as a part of it:
    /// 0.05 % for R-134a and R-744, 0.2 % for R-1234yf.
    ///
    /// It holds the distance from ancillary equation to equation of state (at most 0.0043 %,
    /// 0.001 % and 0.0233 %, tests/reference/05b) and that of the equation of state from
    /// nature (a few hundredths of a percent; about 0.1 % for R-1234yf, 05a).
    #[must_use]
    pub fn equation_limit(self) -> Ratio {
        Ratio::new(match self {
            Self::R134a | Self::R744 => 0.000_5,
            Self::R1234yf => 0.002,
        })
    }

    /// The absolute pressure at which liquid and vapour of one temperature T stand together:
    /// p = p_c exp[(T_c/T) Σ nᵢ θ^tᵢ], θ = 1 − T/T_c.
    ///
    /// # Range
    /// [`range`](Self::range), with the limit of error [`equation_limit`](Self::equation_limit).
    ///
    /// # Errors
    /// [`RefrigerantError::AboveCritical`] above the critical temperature,
    /// [`RefrigerantError::BelowRange`] and [`RefrigerantError::AboveRange`] outside the range.
    ///
    /// # Source
    /// tests/reference/05b_refrigerant_ancillary.csv names it for each fluid; checked against
    /// the equations of state in 05a and 05c.
    ///
    /// # Example
    /// R-134a at 31 °C: 792.6 kPa.
    /// ```
    /// use bayleaf::physics::refrigerant::Refrigerant;
    /// use bayleaf::quantity::Temperature;
    /// let pressure = Refrigerant::R134a.saturation_pressure(Temperature::from_celsius(31.0))?;
    /// assert!((pressure.pascals() / 792.6e3 - 1.0).abs() < 5e-4);
    /// # Ok::<(), bayleaf::physics::refrigerant::RefrigerantError>(())
    /// ```
    pub fn saturation_pressure(self, at: Temperature) -> Result<Pressure, RefrigerantError> {
        self.inside(at)?;
        Ok(Pressure::from_pascals(self.equation().pressure(at.kelvins())))
    }

    /// The temperature at which liquid and vapour stand together under an absolute pressure,
    /// the inverse of [`saturation_pressure`](Self::saturation_pressure), by halving.
    ///
    /// # Errors
    /// [`RefrigerantError::AboveCritical`] above the critical pressure,
    /// [`RefrigerantError::BelowRange`] and [`RefrigerantError::AboveRange`] outside the
    /// pressures of [`range`](Self::range).
    pub fn saturation_temperature(self, of: Pressure) -> Result<Temperature, RefrigerantError> {
        let (equation, range) = (self.equation(), self.range());
        let pascals = of.pascals();
        if pascals > equation.critical_pascals {
            return Err(RefrigerantError::AboveCritical);
        }
        if pascals > equation.pressure(range.high.kelvins()) {
            return Err(RefrigerantError::AboveRange);
        }
        // A pressure that is no number is below everything.
        let known = pascals >= equation.pressure(range.low.kelvins());
        if !known {
            return Err(RefrigerantError::BelowRange);
        }
        let (mut low, mut high) = (range.low.celsius(), range.high.celsius());
        for _ in 0..64 {
            let middle = 0.5 * (low + high);
            if equation.pressure(Temperature::from_celsius(middle).kelvins()) < pascals {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(Temperature::from_celsius(0.5 * (low + high)))
    }

    /// How fast the saturation pressure rises, dp/dT.
    ///
    /// # Units
    /// Pascals per kelvin.
    ///
    /// # Errors
    /// As [`saturation_pressure`](Self::saturation_pressure).
    pub fn saturation_slope(self, at: Temperature) -> Result<f64, RefrigerantError> {
        self.inside(at)?;
        Ok(self.equation().slope(at.kelvins()))
    }

    fn inside(self, at: Temperature) -> Result<(), RefrigerantError> {
        let range = self.range();
        if at > self.critical_temperature() {
            Err(RefrigerantError::AboveCritical)
        } else if at > range.high {
            Err(RefrigerantError::AboveRange)
        } else if at >= range.low {
            Ok(())
        } else {
            Err(RefrigerantError::BelowRange)
        }
    }
}
