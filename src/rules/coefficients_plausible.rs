//! Coefficients that describe no sensor: Steinhart–Hart, three terms or four, and silicon.

use super::beta_plausible::{GREATEST as GREATEST_BETA, LEAST as LEAST_BETA};
use crate::diag::{Finding, Findings, Place};
use crate::model;
use crate::physics::curve::FORMULA_DOMAIN;
use crate::quantity::Temperature;
use crate::spec::{At, Curve, Sensor, Set, Sourced};
use crate::words::Message;

/// Resistances that thermistors have at 25 °C (from memory: 10 Ω to 2 MΩ are
/// made; the rule leaves a factor of ten on both sides).
const LEAST: f64 = 1.0;
const GREATEST: f64 = 2e7;

/// Coefficients of R/R₂₅ taken for ones of ohms give a sensor of just 1 Ω.
const ONE_OHM: f64 = 1.2;

/// First coefficients of silicon sensors, 1/K: 7 to 8 × 10⁻³ is usual
/// (tests/reference/02f_silicon_ptc_quadratic.csv), a factor of four on both sides.
const SILICON: (f64, f64) = (2e-3, 3e-2);

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        findings.report_all(of_sensor(sensor));
    }
}

/// Whether the rule refuses a sensor's coefficients.
pub(super) fn is_wrong(sensor: &Sensor) -> bool {
    of_sensor(sensor).is_some()
}

fn of_sensor(sensor: &Sensor) -> Option<Finding> {
    let curve = sensor.curve.as_ref()?;
    match &curve.value {
        Curve::SteinhartHart { a: Some(a), b, .. } => {
            let wrong = thermistor(curve, &a.place, "wanted-coefficients");
            wrong.or_else(|| slope(curve, b.as_ref()))
        }
        Curve::SteinhartHart4 { a: Some(a), b, .. } => {
            let wrong = thermistor(curve, &a.place, "wanted-coefficients-4");
            wrong.or_else(|| slope(curve, b.as_ref()))
        }
        Curve::SiliconPtc { .. } => silicon(curve),
        _ => None,
    }
}

/// What is wrong with the coefficients of a thermistor, which begin at `place`.
fn thermistor(curve: &At<Curve>, place: &Place, wanted: &'static str) -> Option<Finding> {
    let at_25 = model::curve(&curve.value)?.and_then(|curve| {
        // A curve that ends before 25 °C is looked at where it is nearest.
        let usual = 25.0_f64.clamp(curve.domain().low.celsius(), curve.domain().high.celsius());
        curve.resistance(Temperature::from_celsius(usual))
    });
    let for_ratio = matches!(&curve.value, Curve::SteinhartHart4 { resistance: None, .. });
    let (message, help) = match at_25 {
        Ok(ohms) if for_ratio && (1.0 / ONE_OHM..ONE_OHM).contains(&ohms.ohms()) => {
            (Message::new("rule-coefficients-of-ratio"), "rule-coefficients-of-ratio-help")
        }
        Ok(ohms) if (LEAST..=GREATEST).contains(&ohms.ohms()) => return None,
        Ok(ohms) => {
            let message = Message::new("rule-coefficients").with("resistance", rough(ohms.ohms()));
            (message, "rule-coefficients-help")
        }
        Err(_) => (Message::new("rule-coefficients-not-falling"), "rule-coefficients-help"),
    };
    let finding = Finding::error(message, place.clone(), Message::new(wanted));
    Some(finding.help(Message::new(help)))
}

/// A curve as flat, or as steep, as that of no thermistor: seen as the B value between
/// two temperatures around 25 °C, which the second coefficient sets almost alone.
fn slope(curve: &At<Curve>, b: Option<&Sourced<f64>>) -> Option<Finding> {
    let (built, b) = (model::curve(&curve.value)?.ok()?, b?);
    let domain = built.domain();
    let middle = 25.0_f64.clamp(domain.low.celsius() + 5.0, domain.high.celsius() - 5.0);
    let at = |celsius: f64| {
        let temperature = Temperature::from_celsius(celsius);
        built.resistance(temperature).ok().map(|ohms| (libm::log(ohms.ohms()), 1.0 / temperature.kelvins()))
    };
    let ((cold, cold_inverse), (hot, hot_inverse)) = (at(middle - 5.0)?, at(middle + 5.0)?);
    let beta = (cold - hot) / (cold_inverse - hot_inverse);
    if (LEAST_BETA..=GREATEST_BETA).contains(&beta) {
        return None;
    }
    let message = Message::new("rule-coefficients-slope").with("beta", format!("{beta:.0} K"));
    let label = Message::new("wanted-slope").with("least", LEAST_BETA).with("greatest", GREATEST_BETA);
    let finding = Finding::error(message, b.place.clone(), label);
    Some(finding.help(Message::new("rule-coefficients-help")))
}

/// What is wrong with a silicon sensor's coefficients.
pub(super) fn silicon(curve: &At<Curve>) -> Option<Finding> {
    let Curve::SiliconPtc { resistance: Some(resistance), at: Some(at), a: Some(a), b: Some(b) } =
        &curve.value
    else {
        return None;
    };
    if !FORMULA_DOMAIN.contains(&at.value) || resistance.value.ohms() <= 0.0 {
        // Said by the rules for temperatures beyond a formula and for what is not above zero.
        return None;
    }
    let built = model::curve(&curve.value)?;
    let usual = (SILICON.0..=SILICON.1).contains(&a.value);
    // Twice the slope at the rated temperature, a hundred kelvins away from it.
    let bent = b.value.abs() * 100.0 > a.value.abs();
    let (place, message) = match (usual, bent, built) {
        (false, ..) => (&a.place, Message::new("rule-silicon").with("written", &a.written)),
        (true, true, _) | (true, false, Err(_)) => {
            (&b.place, Message::new("rule-silicon").with("written", &b.written))
        }
        (true, false, Ok(_)) => return None,
    };
    let label = Message::new("wanted-silicon").with("least", SILICON.0).with("greatest", SILICON.1);
    Some(Finding::error(message, place.clone(), label).help(Message::new("rule-silicon-help")))
}

/// A resistance of any size in a few characters.
fn rough(ohms: f64) -> String {
    format!("{ohms:.2e} Ω")
}
