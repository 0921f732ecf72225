//! Figures as cards and sheets print them: windows rounded inward, ranges, temperatures.

use crate::physics::Band;
use crate::quantity::{Rounding, Temperature, Units, decimals_for, figure, ten_to};

/// Volts are printed to the millivolt, the last digit of a workshop meter.
pub(super) const VOLT_DECIMALS: usize = 3;

/// How many digits more a window may get when rounding would close it.
const EXTRA_DECIMALS: usize = 4;

/// Limits and nominal value of a window as text.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Shown {
    pub low: String,
    pub nominal: String,
    pub high: String,
}

/// A band with its limits rounded inward, so that rounding passes no bad part.
///
/// Where a window is narrower than its last digit it gets more digits, up to
/// four; where even those cannot open it (a tolerance of zero) the limits are
/// the nominal value itself.
pub(super) fn band(band: Band<f64>, decimals: usize) -> Shown {
    let shown = |decimals| Shown {
        low: figure(band.low, decimals, Rounding::Up),
        nominal: figure(band.nominal, decimals, Rounding::Nearest),
        high: figure(band.high, decimals, Rounding::Down),
    };
    let open = |decimals: usize| {
        let power = ten_to(decimals);
        let (low, high) = ((band.low * power - 1e-6).ceil(), (band.high * power + 1e-6).floor());
        let nominal = (band.nominal * power).round();
        low <= nominal && nominal <= high
    };
    let found = (decimals..=decimals + EXTRA_DECIMALS).find(|&decimals| open(decimals));
    found.map_or_else(
        || {
            let nominal = figure(band.nominal, decimals, Rounding::Nearest);
            Shown { low: nominal.clone(), nominal: nominal.clone(), high: nominal }
        },
        shown,
    )
}

/// A resistance band with as many digits as its nominal value calls for.
pub(super) fn ohms(ohms: Band<f64>) -> Shown {
    band(ohms, decimals_for(ohms.nominal))
}

/// How many decimals a whole column of ohms has, so that it aligns: as many as its
/// smallest value needs for three significant digits.
pub(super) fn column_decimals(smallest: f64) -> usize {
    match smallest {
        v if v >= 100.0 => 0,
        v if v >= 10.0 => 1,
        _ => 2,
    }
}

/// A window as a range: `1.272–1.438`.
pub(super) fn range(shown: &Shown) -> String {
    format!("{}–{}", shown.low, shown.high)
}

/// A nominal resistance in ohms.
pub(super) fn nominal_ohms(ohms: f64) -> String {
    figure(ohms, decimals_for(ohms), Rounding::Nearest)
}

/// A nominal voltage in volts.
pub(super) fn nominal_volts(volts: f64) -> String {
    figure(volts, VOLT_DECIMALS, Rounding::Nearest)
}

/// A temperature on the edition's scale, with no more decimals than it needs, up to two.
pub(super) fn degrees(units: Units, at: Temperature) -> String {
    trimmed(units.degrees(at))
}

/// The same with its unit: `31 °C`, `87.8 °F`.
pub(super) fn temperature(units: Units, at: Temperature) -> String {
    format!("{} {}", degrees(units, at), units.symbol())
}

/// The same to a tenth, as a bay's thermometer shows it.
pub(super) fn tenths(units: Units, at: Temperature) -> String {
    format!("{} {}", figure(units.degrees(at), 1, Rounding::Nearest), units.symbol())
}

/// A temperature in °C with no more decimals than it needs, up to two.
pub(super) fn celsius(temperature: Temperature) -> String {
    trimmed(temperature.celsius())
}

/// A number with no more decimals than it needs, up to two.
pub(super) fn trimmed(value: f64) -> String {
    let decimals = (0_usize..2).find(|&decimals| {
        let power = ten_to(decimals);
        ((value * power).round() / power - value).abs() < 1e-9
    });
    figure(value, decimals.unwrap_or(2), Rounding::Nearest)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn limits_go_inward() {
        let shown = band(Band { low: 1.3206, nominal: 1.3536, high: 1.3868 }, 3);
        assert_eq!((shown.low.as_str(), shown.high.as_str()), ("1.321", "1.386"));
    }

    #[test]
    fn a_narrow_window_gets_more_digits_rather_than_crossing() {
        let shown = band(Band { low: 1.35411, nominal: 1.3542, high: 1.35429 }, 3);
        assert_eq!(range(&shown), "1.3542–1.3542");
    }

    #[test]
    fn no_tolerance_is_one_value() {
        let third = 1.0 / 3.0;
        let shown = band(Band { low: third, nominal: third, high: third }, 3);
        assert_eq!(range(&shown), "0.333–0.333");
    }
}
