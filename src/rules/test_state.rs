//! A test says in which state it is made, and never drives ohms into a powered circuit.

use crate::diag::{Finding, Findings};
use crate::model::probes_of;
use crate::spec::{Ignition, Reads, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.tests {
        let test = &entry.item;
        let Some(reads) = &test.quantity else { continue };
        let missing = |key: &'static str| {
            let message = Message::new("rule-test-no-state").with("id", id).with("key", key);
            let label = Message::new("wanted-key").with("key", key);
            findings.report(Finding::error(message, entry.place.clone(), label));
        };
        if test.ignition.is_none() {
            missing("ignition");
        }
        if reads.value.is_electrical() && test.mated.is_none() {
            missing("mated");
        }
        let Some(meter) = test.meter.as_ref().filter(|meter| meter.value.feeds_the_circuit()) else {
            continue;
        };
        let powered = test.ignition.as_ref().filter(|ignition| ignition.value != Ignition::Off);
        if let Some(ignition) = powered {
            let message = Message::new("rule-test-powered").with("id", id);
            let finding = Finding::error(message, ignition.place.clone(), Message::new("wanted-key-off"))
                .because(meter.place.clone(), Message::new("label-meter-drives"));
            findings.report(finding);
        } else if let Some(mated) = test.mated.as_ref().filter(|mated| mated.value) {
            let message = Message::new("rule-test-parallel").with("id", id);
            let finding = Finding::warning(message, mated.place.clone(), Message::new("wanted-unmated"));
            findings.report(finding.because(meter.place.clone(), Message::new("label-meter-drives")));
        }
    }
    for (id, entry) in &set.tests {
        let test = &entry.item;
        let needs =
            |reads: Reads| reads.is_electrical() && reads != Reads::Contacts && reads != Reads::Current;
        if !test.quantity.as_ref().is_some_and(|reads| needs(reads.value)) {
            continue;
        }
        let probes = probes_of(set, test);
        if probes.iter().any(Option::is_none) && test.component.is_some() && test.place.is_some() {
            let message = Message::new("rule-test-no-pins").with("id", id);
            let finding = Finding::warning(message, entry.place.clone(), Message::new("wanted-probes"));
            findings.report(finding.help(Message::new("rule-test-no-pins-help")));
        }
    }
}
