//! Values as the specs have them, and beside them the same in the edition's own unit.
//!
//! What a document gives stays as it gives it: the reader must find it there again.

use crate::document::figures::trimmed;
use crate::model::Fact;
use crate::quantity::{
    Interval, Length, Pressure, Quantity, Rounding, SpecificEnthalpy, Temperature, TemperatureDifference,
    Unit, Units, figure, interval, range_word, reprinted, scalar,
};

/// Facts that are temperatures; a threshold may be one.
const TEMPERATURES: &[&str] = &[
    "fact-rated-temperature",
    "fact-tolerance-at",
    "fact-range",
    "fact-ambient",
    "fact-evaporator",
    "fact-cabin",
    "fact-coil-temperature",
    "fact-wire-temperature",
    "fact-sensors-at",
    "fact-threshold",
    "fact-release",
];

/// Facts that are differences of two temperatures.
const DIFFERENCES: &[&str] = &[
    "fact-tolerance",
    "fact-service-limit",
    "fact-soak",
    "fact-accuracy",
    "fact-superheat",
    "fact-subcooling",
    "fact-at-rest",
];

/// Facts that are pressures; a threshold may be one.
const PRESSURES: &[&str] = &[
    "fact-line-low-pressure",
    "fact-line-high-pressure",
    "fact-full-scale",
    "fact-threshold",
    "fact-release",
];

/// One British thermal unit (International Table) for a pound, in J/kg: exact by definition.
///
/// # Source
/// NIST Special Publication 811 (2008), B.8.
const BTU_PER_POUND: f64 = 2326.0;

/// A fact as written, and in brackets the same in the edition's unit where that is another.
pub(super) fn shown(units: Units, fact: &Fact) -> Option<String> {
    let written = fact.written.as_ref()?;
    Some(match converted(units, fact.label, written) {
        Some(converted) => format!("{} ({converted})", reprinted(written)),
        None => reprinted(written),
    })
}

/// A written value in the edition's unit, where that is another than the written one.
pub(super) fn converted(units: Units, label: &str, written: &str) -> Option<String> {
    if units == Units::Both || is_own(units, written) {
        return None;
    }
    let difference = units.difference_unit().symbol();
    // Of a value with a tolerance the nominal value is told.
    let (plain, sign) = match written.strip_prefix('±') {
        Some(plain) => (plain.trim(), "± "),
        None => (written.split(" ± ").next().unwrap_or(written).trim(), ""),
    };
    let temperature = || one_or_two(plain, units.symbol(), |at: Temperature| trimmed(units.degrees(at)));
    let pressure = || one_or_two(plain, units.pressure().symbol(), |at| of_pressure(units, at));
    match label {
        _ if DIFFERENCES.contains(&label) => {
            // A scale unit is a difference behind its sign alone.
            let text = if written.starts_with('±') { written } else { plain };
            let shown = |by: TemperatureDifference| trimmed(units.of_difference(by));
            Some(format!("{sign}{}", one_or_two(text, difference, shown)?))
        }
        _ if TEMPERATURES.contains(&label) => {
            temperature().or_else(|| PRESSURES.contains(&label).then(pressure).flatten())
        }
        _ if PRESSURES.contains(&label) => pressure(),
        "fact-elevation" => {
            let unit = if units == Units::Us { Unit::Foot } else { Unit::Metre };
            let shown = |at: Length| figure(unit.count_of(at).unwrap_or(f64::NAN), 0, Rounding::Nearest);
            one_or_two(plain, unit.symbol(), shown)
        }
        "fact-duty" if units == Units::Us => one_or_two(plain, "Btu/lb", |duty: SpecificEnthalpy| {
            figure(duty.joules_per_kilogram() / BTU_PER_POUND, 1, Rounding::Nearest)
        }),
        _ => None,
    }
}

/// Whether a value is written in the edition's own units.
fn is_own(units: Units, written: &str) -> bool {
    let us = ["°F", "degF", "℉", "psi", "ft", "foot", "feet"].iter().any(|unit| written.contains(unit));
    us == (units == Units::Us)
}

fn of_pressure(units: Units, pressure: Pressure) -> String {
    let number = units.of_pressure(pressure);
    let decimals = if units == Units::Us || number.abs() < 100.0 { 1 } else { 0 };
    figure(number, decimals, Rounding::Nearest)
}

/// A value, or a range of two, with a unit behind it.
fn one_or_two<T: Quantity>(text: &str, unit: &str, shown: impl Fn(T) -> String) -> Option<String> {
    if let Ok(one) = scalar::<T>(text) {
        return Some(format!("{} {unit}", shown(one)));
    }
    let Interval { low, high } = interval::<T>(text).ok()?;
    Some(format!("{} {} {} {unit}", shown(low), range_word(), shown(high)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn us(label: &str, written: &str) -> Option<String> {
        converted(Units::Us, label, written)
    }

    #[test]
    fn a_difference_is_never_a_point_on_the_scale() {
        assert_eq!(us("fact-service-limit", "2.5 K").as_deref(), Some("4.5 °F"));
        assert_eq!(us("fact-accuracy", "± 0.3 K").as_deref(), Some("± 0.54 °F"));
        assert_eq!(us("fact-rated-temperature", "25 °C").as_deref(), Some("77 °F"));
        let metric = converted(Units::Metric, "fact-service-limit", "± 3.6 °F");
        assert_eq!(metric.as_deref(), Some("± 2 K"));
    }

    #[test]
    fn what_is_written_in_the_editions_unit_stands_alone() {
        assert_eq!(us("fact-rated-temperature", "68 °F"), None);
        assert_eq!(converted(Units::Metric, "fact-elevation", "120 m"), None);
        assert_eq!(converted(Units::Both, "fact-service-limit", "2.5 K"), None);
    }

    #[test]
    fn pressures_heights_and_duties() {
        // NIST SP 811, B.9: 1 psi = 6.894 757 kPa, 1 ft = 0.3048 m, 1 Btu/lb = 2326 J/kg.
        assert_eq!(us("fact-threshold", "2.2 MPa").as_deref(), Some("319.1 psi"));
        assert_eq!(us("fact-elevation", "120 m").as_deref(), Some("394 ft"));
        assert_eq!(us("fact-duty", "30 kJ/kg ± 5 %").as_deref(), Some("12.9 Btu/lb"));
        assert_eq!(us("fact-ambient", "20 °C to 45 °C").as_deref(), Some("68 to 113 °F"));
    }
}
