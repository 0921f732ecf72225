//! A control current that the lowest battery cannot drive through the hottest coil.

use crate::diag::{Finding, Findings};
use crate::physics::coil::RatedCoil;
use crate::physics::solenoid::ceiling;
use crate::quantity::{Resistance, Rounding, figure};
use crate::spec::{Driver, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for entry in set.drivers.values() {
        let driver = &entry.item;
        let points = driver.displacement.as_ref().and_then(|curve| curve.points.as_ref());
        let highest = points.into_iter().flatten().max_by(|a, b| {
            let amperes = |pair: &crate::spec::Pair<crate::quantity::Current, _>| pair.first.value.amperes();
            amperes(a).total_cmp(&amperes(b))
        });
        let battery = driver.drive.as_ref().and_then(|drive| drive.battery.as_ref());
        let (Some(highest), Some(battery), Some(hot)) = (highest, battery, hottest(driver)) else { continue };
        let Ok(most) = ceiling(battery.value.low, hot) else { continue };
        if highest.first.value <= most {
            continue;
        }
        let message = Message::new("rule-ceiling")
            .with("current", &highest.first.written)
            .with("most", format!("{} A", figure(most.amperes(), 2, Rounding::Down)))
            .with("battery", battery.value.low)
            .with("resistance", format!("{} Ω", figure(hot.ohms(), 2, Rounding::Nearest)));
        let finding = Finding::warning(message, highest.place.clone(), Message::new("wanted-reached"));
        let finding = finding.because(battery.place.clone(), Message::new("label-battery"));
        findings.report(finding.help(Message::new("rule-ceiling-help")));
    }
}

/// The greatest resistance of a coil at its hottest; nominal where no tolerance is given.
fn hottest(driver: &Driver) -> Option<Resistance> {
    let coil = driver.coil.as_ref()?;
    let rated = RatedCoil { resistance: coil.resistance.as_ref()?.value, at: coil.at.as_ref()?.value };
    let hot = coil.temperature.as_ref()?.value.high;
    let band = rated.band(hot).ok()?;
    band.map_or_else(|| rated.nominal(hot).ok(), |band| Some(band.high))
}
