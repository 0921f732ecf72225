//! How far a reading can be trusted: budgets after JCGM 100.
//!
//! Each part of an error is known only to lie within ± a limit (rectangular,
//! standard uncertainty a/√3) and the parts are independent. A budget keeps the
//! parts apart, so that the greatest can be named.

mod reading;
mod sensitivity;

use std::fmt;

pub use reading::{Doubt, Errors, Instruments, Response, meter_ohms, meter_volts, ohms, volts};
pub use sensitivity::{Derivative, Input, derivative};

/// The coverage factor k that this project prints: about 95 %.
///
/// # Source
/// JCGM 100:2008, 6.3.3.
pub const COVERAGE: f64 = 2.0;

/// The expanded uncertainty of a reading from the limits of error of its parts.
///
/// U = k √(Σ aᵢ²/3) with k = 2: each part is known only to lie within ± aᵢ
/// (rectangular, standard uncertainty a/√3), and the parts are independent.
///
/// # Range
/// About 95 % coverage where no single part dominates. Where one does, k = 2
/// covers all of it: a single rectangular part needs k = 1.645 for 95 %, so U is
/// 21.5 % too wide, on the safe side; four equal parts need k = 1.940 and leave
/// 3 % (tests/reference/04e_rectangular_sums_exact.csv).
///
/// # Source
/// JCGM 100:2008, 4.3.7 and 5.1.2; tests/reference/04d_dmm_accuracy.csv for a/√3.
///
/// # Example
/// A meter good to 22 mV at 2.5 V (row d6): 2 × 12.70 mV.
/// ```
/// use bayleaf::physics::uncertainty::expanded;
/// assert!((expanded(&[0.022]) - 2.0 * 0.012_701_705_92).abs() < 1e-10);
/// ```
#[must_use]
pub fn expanded(limits: &[f64]) -> f64 {
    COVERAGE * root_sum_of_squares(limits.iter().map(|limit| limit / SQRT_3))
}

/// A half-width over this is the standard uncertainty of a rectangular input.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// Where a part of an uncertainty comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Source {
    /// The thermometer's limit of error.
    Thermometer,
    /// Sensor and thermometer are not at one temperature.
    Soak,
    /// The meter's percentage of the reading plus digits.
    MeterReading,
    /// The last digit of a display, where the limit of error does not hold it.
    Resolution,
    /// The resistance of the meter's leads.
    Leads,
    /// The reference voltage.
    Reference,
    /// The pull-up or pull-down resistor.
    Resistor,
    /// A resistor in the line.
    Series,
    /// A resistor across line and sensor.
    Parallel,
    /// The meter's input resistance.
    Loading,
    /// The sensor warms itself.
    SelfHeating,
    /// The control unit's converter.
    Converter,
    /// The part measured: its rated value.
    Rated,
    /// The part measured: its B value.
    Beta,
    /// A pressure gauge.
    Gauge,
}

/// Why there is no uncertainty.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum UncertaintyError {
    /// A limit below zero, or a number that is not finite.
    NotANumber,
    /// The model has no value at the point, or near it.
    OutsideModel,
}

impl fmt::Display for UncertaintyError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotANumber => "a limit of error that is no number",
            Self::OutsideModel => "outside the model",
        })
    }
}

impl std::error::Error for UncertaintyError {}

/// One line of a budget.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Contribution {
    /// Where it comes from.
    pub source: Source,
    /// The limit of error, ± a, in the input's unit.
    pub limit: f64,
    /// How far the reading moves for one unit of the input.
    pub sensitivity: f64,
}

impl Contribution {
    /// A limit of error ± `limit` (rectangular) and the reading's sensitivity to it.
    ///
    /// # Units
    /// `limit` in the input's unit, `sensitivity` in units of the reading per
    /// unit of the input.
    ///
    /// # Source
    /// JCGM 100:2008, 4.3.7.
    #[must_use]
    pub const fn limit(source: Source, limit: f64, sensitivity: f64) -> Self {
        Self { source, limit, sensitivity }
    }

    /// The last digit of a display: ± half of it.
    ///
    /// # Units
    /// `digit` in the reading's unit.
    ///
    /// # Source
    /// JCGM 100:2008, F.2.2.1: u = digit/(2√3); tests/reference/04d, column u_resolution.
    #[must_use]
    pub const fn resolution(digit: f64) -> Self {
        Self { source: Source::Resolution, limit: digit / 2.0, sensitivity: 1.0 }
    }

    /// The standard uncertainty in the reading's unit: |c| a/√3.
    #[must_use]
    pub fn standard(&self) -> f64 {
        (self.limit / SQRT_3 * self.sensitivity).abs()
    }
}

/// An uncertainty with its parts kept apart.
#[derive(Debug, Clone, PartialEq)]
pub struct Budget {
    contributions: Vec<Contribution>,
    combined: f64,
}

impl Budget {
    /// A budget of independent contributions.
    ///
    /// # Errors
    /// When a limit is below zero, or a number, or their sum, is not finite.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.2, equation (10).
    ///
    /// # Example
    /// A thermometer of ± 0.3 K on a sensor that falls by 3.78 %/K, and a meter
    /// of 0.9 %: U = 1.7 %.
    /// ```
    /// use bayleaf::physics::uncertainty::{Budget, Contribution, Source};
    /// let budget = Budget::new(vec![
    ///     Contribution::limit(Source::Thermometer, 0.3, -3.78),
    ///     Contribution::limit(Source::MeterReading, 0.9, 1.0),
    /// ])?;
    /// assert!((budget.expanded() - 1.67).abs() < 0.005);
    /// # Ok::<(), bayleaf::physics::uncertainty::UncertaintyError>(())
    /// ```
    pub fn new(contributions: Vec<Contribution>) -> Result<Self, UncertaintyError> {
        let combined = root_sum_of_squares(contributions.iter().map(Contribution::standard));
        let whole = contributions.iter().all(|part| part.limit >= 0.0 && part.limit.is_finite());
        if whole && (COVERAGE * combined).is_finite() {
            Ok(Self { contributions, combined })
        } else {
            Err(UncertaintyError::NotANumber)
        }
    }

    /// The budget of a model's output: each input within ± its limit, sensitivities
    /// from the model itself.
    ///
    /// # Errors
    /// When the model has no value near the inputs, or a limit is no number.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.3, with derivatives as [`derivative`] computes them.
    pub fn of_model(
        inputs: &[Input],
        model: impl Fn(&[f64]) -> Option<f64>,
    ) -> Result<Self, UncertaintyError> {
        let mut contributions = Vec::with_capacity(inputs.len());
        for (index, input) in inputs.iter().enumerate() {
            // An exact input has no part in the budget, whatever the slope.
            let slope = if input.limit > 0.0 { derivative(inputs, index, &model)?.value } else { 0.0 };
            contributions.push(Contribution::limit(input.source, input.limit, slope));
        }
        Self::new(contributions)
    }

    /// The lines of the budget, in the order they were given.
    #[must_use]
    pub fn contributions(&self) -> &[Contribution] {
        &self.contributions
    }

    /// The combined standard uncertainty u, in the reading's unit.
    #[must_use]
    pub fn combined(&self) -> f64 {
        self.combined
    }

    /// The expanded uncertainty U = 2 u; see [`expanded`] for what it covers.
    #[must_use]
    pub fn expanded(&self) -> f64 {
        COVERAGE * self.combined
    }

    /// The sum of all limits, as if every part were at its worst at once: no
    /// reading can be further off, to first order.
    #[must_use]
    pub fn worst_case(&self) -> f64 {
        self.contributions.iter().map(|part| (part.limit * part.sensitivity).abs()).sum()
    }

    /// Which part of the variance each source makes, all lines of one source
    /// together, the greatest first. Empty where the uncertainty is zero.
    #[must_use]
    pub fn shares(&self) -> Vec<(Source, crate::quantity::Ratio)> {
        let mut shares: Vec<(Source, f64)> = Vec::new();
        for part in &self.contributions {
            // Dividing before squaring keeps very small and very large numbers.
            let of_whole = part.standard() / self.combined;
            let share = of_whole * of_whole;
            if !share.is_finite() {
                return Vec::new();
            }
            match shares.iter_mut().find(|(source, _)| *source == part.source) {
                Some((_, sum)) => *sum += share,
                None => shares.push((part.source, share)),
            }
        }
        shares.sort_by(|(_, a), (_, b)| b.total_cmp(a));
        shares.into_iter().map(|(source, share)| (source, crate::quantity::Ratio::new(share))).collect()
    }
}

/// √Σxᵢ² without overflow of the squares.
fn root_sum_of_squares(values: impl Iterator<Item = f64>) -> f64 {
    values.fold(0.0, libm::hypot)
}
