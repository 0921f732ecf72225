//! How far a reading can be trusted.

/// The expanded uncertainty of a reading from the limits of error of its parts.
///
/// U = k √(Σ aᵢ²/3) with k = 2: each part is known only to lie within ± aᵢ
/// (rectangular, standard uncertainty a/√3), and the parts are independent.
///
/// # Range
/// About 95 % coverage where no single part dominates; where one does, k = 2
/// covers more (tests/reference/04e, not needed here).
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
    let variance: f64 = limits.iter().map(|limit| limit * limit / 3.0).sum();
    2.0 * libm::sqrt(variance)
}
