//! Formulas through the points of a thermistor's table, by least squares in ln R.
//!
//! The three models are one after the other polynomials of L = ln R for 1/T:
//!
//! | model | 1/T = |
//! |---|---|
//! | beta | a + b L, that is B = 1/b and R₀ = exp[(1/T₀ − a)/b] |
//! | Steinhart–Hart | a + b L + c L³ |
//! | four terms | a + b L + c L² + d L³ |
//!
//! Minimised is the sum of the squares of the residuals of 1/T at the points' L,
//! all points weighing the same. One kelvin is a residual of 1/T², so a point at
//! −40 °C counts 8 times as much per K² as one at 125 °C; fits that minimise the
//! kelvins themselves differ by some hundredths of a kelvin at the ends
//! (tests/reference/01e_ntc_sh_fits.csv, `ls_T` beside `ls_invT`).

use std::fmt;

use nalgebra::{DMatrix, DVector};

use super::curve::outlier::{Outlier, Point, outlier};
use super::curve::{BetaCurve, Curve, CurveError, SteinhartHart, SteinhartHart4};
use crate::quantity::{Beta, Ratio, Resistance, Temperature, TemperatureDifference};

/// Which formula to fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Model {
    /// R₀ and B.
    Beta,
    /// 1/T = a + b L + c L³.
    SteinhartHart,
    /// 1/T = a + b L + c L² + d L³.
    SteinhartHart4,
}

impl Model {
    /// All of them, the one with fewest coefficients first.
    pub const ALL: [Self; 3] = [Self::Beta, Self::SteinhartHart, Self::SteinhartHart4];

    /// The powers of L = ln R that it has.
    fn powers(self) -> &'static [i32] {
        match self {
            Self::Beta => &[0, 1],
            Self::SteinhartHart => &[0, 1, 3],
            Self::SteinhartHart4 => &[0, 1, 2, 3],
        }
    }

    /// How many points it needs at least: as many as it has coefficients.
    #[must_use]
    pub fn fewest_points(self) -> usize {
        self.powers().len()
    }
}

/// A fitted formula and how far it misses each point.
#[derive(Debug, Clone, PartialEq)]
pub struct Fit {
    /// The formula.
    pub curve: Curve,
    /// One for each point, in the points' order.
    pub residuals: Vec<Residual>,
}

/// How far a formula misses one point: formula minus table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Residual {
    /// The formula's temperature at the point's resistance, less the point's.
    pub temperature: TemperatureDifference,
    /// The formula's resistance at the point's temperature, less the point's, as a
    /// part of the point's.
    pub resistance: Ratio,
}

impl Fit {
    /// The root of the mean square of the residuals.
    #[must_use]
    pub fn rms(&self) -> Residual {
        let count = self.residuals.len() as f64;
        let mean = |of: fn(&Residual) -> f64| {
            libm::sqrt(self.residuals.iter().map(|residual| of(residual) * of(residual)).sum::<f64>() / count)
        };
        Residual {
            temperature: TemperatureDifference::from_kelvins(mean(|residual| residual.temperature.kelvins())),
            resistance: Ratio::new(mean(|residual| residual.resistance.part())),
        }
    }

    /// The residuals that are largest in size, without their signs.
    #[must_use]
    pub fn largest(&self) -> Residual {
        let most = |of: fn(&Residual) -> f64| self.residuals.iter().map(of).map(f64::abs).fold(0.0, f64::max);
        Residual {
            temperature: TemperatureDifference::from_kelvins(most(|residual| residual.temperature.kelvins())),
            resistance: Ratio::new(most(|residual| residual.resistance.part())),
        }
    }
}

/// Why points have no fit.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FitError {
    /// Fewer points than the formula has coefficients.
    TooFewPoints,
    /// A temperature or a resistance that no sensor has.
    NotPhysical,
    /// The resistance does not fall from each point to the next hotter one.
    NotFalling,
    /// The best coefficients are not those of a thermistor over the points' range.
    NoThermistor,
}

impl fmt::Display for FitError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::TooFewPoints => "fewer points than coefficients",
            Self::NotPhysical => "not the data of a sensor",
            Self::NotFalling => "resistance does not fall",
            Self::NoThermistor => "no thermistor has the best coefficients",
        })
    }
}

impl std::error::Error for FitError {}

/// Fits a formula to points in any order.
///
/// As many points as coefficients are met exactly. A beta curve is stated at
/// 25 °C where the points reach around it, else at the middle one of them.
///
/// # Errors
/// With too few points, a resistance at or below zero, points that do not fall,
/// or when the best coefficients are of no thermistor: a c below zero in the
/// three-term formula, a four-term formula that turns inside the points' range.
///
/// # Source
/// tests/reference/01e_ntc_sh_fits.csv (`exact3`, `ls_invT`, `ls_invT_quad`).
///
/// # Example
/// Two rows of the NCPxxWB473 table of tests/reference/01c: B = 4049.88 K.
/// ```
/// use bayleaf::physics::curve::Curve;
/// use bayleaf::physics::fit::{Model, fit};
/// use bayleaf::quantity::{Resistance, Temperature};
/// let point = |t, r| (Temperature::from_celsius(t), Resistance::from_ohms(r));
/// let fitted = fit(Model::Beta, &[point(25.0, 47_000.0), point(50.0, 16_433.0)])?;
/// let Curve::Beta(curve) = fitted.curve else { unreachable!("a beta curve was asked for") };
/// assert!((curve.parameters().2.kelvins() - 4049.880_53).abs() < 1e-4);
/// # Ok::<(), bayleaf::physics::fit::FitError>(())
/// ```
pub fn fit(model: Model, points: &[(Temperature, Resistance)]) -> Result<Fit, FitError> {
    if points.len() < model.fewest_points() {
        return Err(FitError::TooFewPoints);
    }
    let mut sorted = points.to_vec();
    sorted.sort_by(|a, b| a.0.celsius().total_cmp(&b.0.celsius()));
    let real = |(at, of): &(Temperature, Resistance)| {
        at.kelvins() > 0.0 && at.kelvins().is_finite() && of.ohms().is_normal() && of.ohms() > 0.0
    };
    if !sorted.iter().all(real) {
        return Err(FitError::NotPhysical);
    }
    let falls = |pair: &[(Temperature, Resistance)]| pair[0].0 < pair[1].0 && pair[0].1 > pair[1].1;
    if !sorted.windows(2).all(falls) {
        return Err(FitError::NotFalling);
    }
    let coefficients = least_squares(model.powers(), &sorted).ok_or(FitError::NoThermistor)?;
    let curve = curve(model, &coefficients, &sorted).map_err(|_| FitError::NoThermistor)?;
    let residuals = points.iter().map(|point| residual(&curve, point)).collect::<Result<_, _>>();
    Ok(Fit { curve, residuals: residuals.map_err(|_| FitError::NoThermistor)? })
}

/// Solves for the coefficients of the given powers of ln R, by Householder QR of
/// the design matrix with each column scaled to length one.
fn least_squares(powers: &[i32], points: &[(Temperature, Resistance)]) -> Option<Vec<f64>> {
    let log: Vec<f64> = points.iter().map(|(_, of)| libm::log(of.ohms())).collect();
    let power = |base: f64, exponent: i32| (0..exponent).fold(1.0, |product, _| product * base);
    let mut design =
        DMatrix::from_fn(points.len(), powers.len(), |row, column| power(log[row], powers[column]));
    let scales: Vec<f64> = design.column_iter().map(|column| column.norm()).collect();
    for (mut column, scale) in design.column_iter_mut().zip(&scales) {
        column /= *scale;
    }
    let mut wanted = DVector::from_iterator(points.len(), points.iter().map(|(at, _)| 1.0 / at.kelvins()));
    let qr = design.qr();
    qr.q_tr_mul(&mut wanted);
    let solved = qr.unpack_r().solve_upper_triangular(&wanted.rows(0, powers.len()))?;
    let coefficients: Vec<f64> = solved.iter().zip(&scales).map(|(value, scale)| value / scale).collect();
    coefficients.iter().all(|value| value.is_finite()).then_some(coefficients)
}

/// The curve with the given coefficients; `points` in order of temperature.
fn curve(
    model: Model,
    coefficients: &[f64],
    points: &[(Temperature, Resistance)],
) -> Result<Curve, CurveError> {
    match (model, coefficients) {
        (Model::Beta, &[a, b]) => {
            let usual = Temperature::from_celsius(25.0);
            let around = points.first().is_some_and(|(coldest, _)| *coldest <= usual)
                && points.last().is_some_and(|(hottest, _)| *hottest >= usual);
            let at = if around { usual } else { points[points.len() / 2].0 };
            let rated = libm::exp((1.0 / at.kelvins() - a) / b);
            BetaCurve::new(Resistance::from_ohms(rated), at, Beta::from_kelvins(1.0 / b)).map(Curve::Beta)
        }
        (Model::SteinhartHart, &[a, b, c]) => SteinhartHart::new(a, b, c).map(Curve::SteinhartHart),
        (Model::SteinhartHart4, &[a, b, c, d]) => {
            SteinhartHart4::new([a, b, c, d], Resistance::from_ohms(1.0)).map(Curve::SteinhartHart4)
        }
        _ => Err(CurveError::NotPhysical),
    }
}

fn residual(curve: &Curve, &(at, of): &(Temperature, Resistance)) -> Result<Residual, CurveError> {
    let kelvins = curve.temperature(of)?.kelvins() - at.kelvins();
    let part = curve.resistance(at)?.ohms() / of.ohms() - 1.0;
    Ok(Residual { temperature: TemperatureDifference::from_kelvins(kelvins), resistance: Ratio::new(part) })
}

/// How many times the others' RMS a row must miss the formula through the others.
///
/// Clean published tables of five rows and more, thinned and cut in every way of
/// tests/reference/fits.rs, stay below; a row wrong by a digit in the second
/// place lies above. No source states a figure.
const FAR_OFF: f64 = 20.0;

/// A miss smaller than this is never called a mistyped row, in K: formulas miss
/// good tables by as much (tests/reference/01e_ntc_sh_fits.csv).
const NOT_SUSPECT: f64 = 0.15;

/// The row of a falling table that looks mistyped.
///
/// First asked are the neighbours, in ln R against 1/T
/// ([`outlier`]); they are blind to small
/// misprints towards the ends. Then each row is held against the three-term
/// formula through all the others: it is suspect when it misses that formula by 20
/// times what the others do, and by more than 0.15 K and its printed digits.
///
/// `None` with fewer than five rows, or when no one row stands out.
///
/// # Source
/// tests/reference/01e_ntc_sh_fits.csv, part `manual10k_LDT5525`: a printed 5331 Ω
/// that must be 5231 Ω.
#[must_use]
pub fn suspect(points: &[Point]) -> Option<Outlier> {
    outlier(points).or_else(|| off_formula(points))
}

fn off_formula(points: &[Point]) -> Option<Outlier> {
    if points.len() < 5 {
        return None;
    }
    let held: Vec<(Held, usize)> = (0..points.len())
        .filter_map(|index| Some((held_against_the_others(points, index)?, index)))
        .collect();
    let (worst, index) = held.iter().max_by(|a, b| a.0.times.total_cmp(&b.0.times))?;
    (worst.times > FAR_OFF).then_some(Outlier { index: *index, expected: worst.expected })
}

/// One row against the formula through the others.
struct Held {
    /// Its miss in parts of what the others miss.
    times: f64,
    expected: Resistance,
}

fn held_against_the_others(points: &[Point], left_out: usize) -> Option<Held> {
    let others: Vec<(Temperature, Resistance)> = (points.iter().enumerate())
        .filter(|(index, _)| *index != left_out)
        .map(|(_, point)| (point.at, point.of))
        .collect();
    let fitted = fit(Model::SteinhartHart, &others).ok()?;
    let point = points.get(left_out)?;
    let expected = fitted.curve.resistance(point.at).ok()?;
    let miss = residual(&fitted.curve, &(point.at, point.of)).ok()?.temperature.kelvins().abs();
    // Half a printed digit in kelvins, through the curve's slope.
    let slope = fitted.curve.slope(point.at).ok()?.abs();
    let rounding = |point: &Point| point.rounding.part() / slope;
    let printed = points.iter().map(rounding).fold(0.0, f64::max);
    let allowed = fitted.rms().temperature.kelvins().max(printed).max(NOT_SUSPECT / FAR_OFF);
    Some(Held { times: miss / allowed, expected })
}
