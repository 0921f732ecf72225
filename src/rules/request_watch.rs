//! A condition watched by something that cannot see it: of another quantity, or in another system.

use crate::diag::{Finding, Findings};
use crate::quantity::Dimension;
use crate::spec::{At, Set, Watch};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for request in set.requests.values().map(|entry| &entry.item) {
        for condition in &request.conditions {
            for (watch, thing) in &condition.watch {
                let (sees, system, word) = match watch {
                    Watch::Sensor => {
                        let Some(sensor) = set.sensors.get(&thing.value) else { continue };
                        (Dimension::Temperature, &sensor.item.system, "kind-sensor")
                    }
                    Watch::Transducer => {
                        let Some(transducer) = set.transducers.get(&thing.value) else { continue };
                        (Dimension::Pressure, &transducer.item.system, "kind-transducer")
                    }
                    Watch::Reading => continue,
                };
                if let Some(quantity) = condition.quantity.as_ref().filter(|found| found.value != sees) {
                    let message = Message::new("rule-request-quantity")
                        .with("id", &thing.value)
                        .with_word("watch", word)
                        .with_word("quantity", quantity.value.word());
                    let label = Message::new("wanted-measured").with_word("quantity", sees.word());
                    let finding = Finding::error(message, quantity.place.clone(), label);
                    let finding = finding.because(thing.place.clone(), Message::new("label-watches"));
                    findings.report(finding.help(Message::new("rule-request-quantity-help")));
                }
                same_system(&request.system, system, thing, findings);
            }
        }
    }
}

fn same_system(
    own: &Option<At<String>>,
    other: &Option<At<String>>,
    thing: &At<String>,
    findings: &Findings,
) {
    let (Some(own), Some(other)) = (own, other) else { return };
    if own.value == other.value {
        return;
    }
    let message = Message::new("rule-request-system").with("id", &thing.value).with("system", &other.value);
    let label = Message::new("wanted-of-system").with("system", &own.value);
    let finding = Finding::error(message, thing.place.clone(), label);
    findings.report(finding.because(own.place.clone(), Message::new("label-its-system")));
}
