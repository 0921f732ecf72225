//! A coil of a resistance that nobody winds for its purpose, or rated where nobody measures it.

use super::magnitude::outside;
use crate::diag::{Finding, Findings};
use crate::physics::copper::DOMAIN;
use crate::quantity::{Interval, Temperature};
use crate::spec::{Driver, DriverKind, Set};
use crate::words::Message;

/// From and to in ohms for coils of 12 V and 24 V (common practice, no source; a
/// factor of two or three is left on either side of what is usual).
const SOLENOID: (f64, f64) = (2.0, 100.0);
const CLUTCH: (f64, f64) = (1.0, 40.0);
const RELAY: (f64, f64) = (20.0, 2000.0);

/// Coils are rated at 20 °C, some at 23 °C or 25 °C, relays at 85 °C or more too (common
/// practice, no source).
const RATED: Interval<Temperature> =
    Interval { low: Temperature::from_celsius(0.0), high: Temperature::from_celsius(125.0) };

pub(super) fn check(set: &Set, findings: &Findings) {
    for driver in set.drivers.values().map(|entry| &entry.item) {
        rated(driver, findings);
        let usual = match driver.kind.as_ref().map(|kind| kind.value) {
            Some(DriverKind::Solenoid) => SOLENOID,
            Some(DriverKind::Clutch) => CLUTCH,
            Some(DriverKind::Relay) => RELAY,
            Some(DriverKind::Blower) | None => continue,
        };
        let resistance = driver.coil.as_ref().and_then(|coil| coil.resistance.as_ref());
        let Some(resistance) = resistance else { continue };
        outside(resistance, resistance.value.nominal.ohms(), usual, "Ω", findings);
    }
}

/// A resistance is given for a temperature that it can be measured at.
fn rated(driver: &Driver, findings: &Findings) {
    let Some(at) = driver.coil.as_ref().and_then(|coil| coil.at.as_ref()) else { return };
    // Beyond what copper is computed for is another rule's.
    if RATED.contains(&at.value) || !DOMAIN.contains(&at.value) {
        return;
    }
    let message = Message::new("rule-rated-coil").with("written", &at.written);
    let label = Message::new("wanted-magnitude").with("least", RATED.low).with("greatest", RATED.high);
    let finding = Finding::warning(message, at.place.clone(), label);
    findings.report(finding.help(Message::new("rule-rated-coil-help")));
}
