//! A light circuit that lies at its rail below full sun.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::quantity::Rounding;
use crate::quantity::figure;
use crate::spec::Set;
use crate::words::Message;

/// Full sun, W/m² (common practice, no source: the usual figure of data sheets).
const FULL_SUN: f64 = 1000.0;

pub(super) fn check(set: &Set, findings: &Findings) {
    for light in set.lights.values().map(|entry| &entry.item) {
        let system = light.system.as_ref().and_then(|system| set.systems.get(&system.value));
        let reference = system.and_then(|system| system.item.reference.as_ref());
        let Some(sensor) = model::light(light, reference) else { continue };
        let resistor = light.circuit.as_ref().and_then(|circuit| circuit.resistor.as_ref());
        let (Some(resistor), Ok(saturation)) = (resistor, sensor.saturation()) else { continue };
        let irradiance = saturation.watts_per_square_metre();
        if irradiance >= FULL_SUN {
            continue;
        }
        let message = Message::new("rule-light-saturates")
            .with("resistor", &resistor.written)
            .with("irradiance", format!("{} W/m²", figure(irradiance, 0, Rounding::Nearest)));
        let most = resistor.value.nominal.ohms() * irradiance / FULL_SUN;
        let label = Message::new("wanted-smaller-resistor")
            .with("most", format!("{} Ω", figure(most, 0, Rounding::Down)));
        let finding = Finding::warning(message, resistor.place.clone(), label);
        let current = light.current.as_ref();
        findings.report(match current {
            Some(current) => finding.because(current.place.clone(), Message::new("label-photocurrent")),
            None => finding,
        });
    }
}
