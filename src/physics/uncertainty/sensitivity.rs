//! Partial derivatives of a model, from the model itself.

use super::{Source, UncertaintyError};

/// One input of a model.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Input {
    /// What it is.
    pub source: Source,
    /// Its best value, in its own unit.
    pub value: f64,
    /// Its limit of error ± a, in the same unit.
    pub limit: f64,
}

/// A derivative and how far it may be off.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Derivative {
    /// ∂f/∂x.
    pub value: f64,
    /// The distance to the same derivative by a formula of lower order: a bound
    /// for smooth models.
    pub error: f64,
}

/// The step as a part of the limit of error, or of the value where that is more.
const STEP_OF_LIMIT: f64 = 1.0 / 16.0;
const STEP_OF_VALUE: f64 = 1.0 / 4096.0;

/// How often a step is halved when the model ends near the point.
const HALVINGS: u32 = 12;

/// The derivative of a model by one of its inputs, by central differences.
///
/// f′ ≈ [8 (f(x+h) − f(x−h)) − (f(x+2h) − f(x−2h))] / 12h, with h a sixteenth of
/// the input's limit of error or 1/4096 of its value, whichever is more; halved
/// while the model has no value at one of the four points.
///
/// # Range
/// The truncation error is h⁴ f⁽⁵⁾/30: for a tolerance of 10 % of the value and a
/// power law below 10⁻⁹ of the derivative. Rounding adds 1.5 ε |f|/h, below 10⁻¹¹
/// of f/x. [`Derivative::error`] bounds both for smooth models: it is the
/// distance to the formula with two points, which is of second order.
///
/// # Errors
/// When the model has no finite value at the four points, however near.
///
/// # Source
/// Abramowitz and Stegun, Handbook of Mathematical Functions, 25.3.21 for the
/// four-point formula (from memory); tests/reference/04a and 04b check it to 10⁻⁶.
pub fn derivative(
    inputs: &[Input],
    by: usize,
    model: impl Fn(&[f64]) -> Option<f64>,
) -> Result<Derivative, UncertaintyError> {
    let input = inputs.get(by).ok_or(UncertaintyError::OutsideModel)?;
    let mut point: Vec<f64> = inputs.iter().map(|input| input.value).collect();
    let mut at = |moved: f64| {
        point[by] = moved;
        model(&point).filter(|value| value.is_finite())
    };
    let mut step = (input.limit * STEP_OF_LIMIT).max(input.value.abs() * STEP_OF_VALUE);
    if !(step > 0.0 && step.is_finite()) {
        return Err(UncertaintyError::NotANumber);
    }
    for _ in 0..=HALVINGS {
        // The step that was really taken, after rounding.
        let (right, left) = (input.value + step, input.value - step);
        let (far_right, far_left) = (input.value + 2.0 * step, input.value - 2.0 * step);
        if let (Some(r), Some(l), Some(rr), Some(ll)) = (at(right), at(left), at(far_right), at(far_left)) {
            let near = (r - l) / (right - left);
            let far = (rr - ll) / (far_right - far_left);
            let value = (4.0 * near - far) / 3.0;
            let error = (value - near).abs();
            return if value.is_finite() && error.is_finite() {
                Ok(Derivative { value, error })
            } else {
                Err(UncertaintyError::OutsideModel)
            };
        }
        step /= 2.0;
    }
    Err(UncertaintyError::OutsideModel)
}
