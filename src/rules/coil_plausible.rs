//! A coil of a resistance that nobody winds for its purpose.

use super::magnitude::outside;
use crate::diag::Findings;
use crate::spec::{DriverKind, Set};

/// From and to in ohms for coils of 12 V and 24 V (common practice, no source; a
/// factor of two or three is left on either side of what is usual).
const SOLENOID: (f64, f64) = (2.0, 100.0);
const CLUTCH: (f64, f64) = (1.0, 40.0);
const RELAY: (f64, f64) = (20.0, 2000.0);

pub(super) fn check(set: &Set, findings: &Findings) {
    for driver in set.drivers.values().map(|entry| &entry.item) {
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
