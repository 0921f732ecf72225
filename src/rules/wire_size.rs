//! A wire of a size that the cable standard does not list, a gauge with a class, an odd count of conductors.

use crate::diag::{Finding, Findings};
use crate::model::load::conductors;
use crate::physics::wire::{Class, WireError, greatest_per_metre, listed_sizes};
use crate::quantity::WireSize;
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for wire in set.wires.values().map(|entry| &entry.item) {
        let Some(size) = &wire.size else { continue };
        if let (WireSize::Gauge(_), Some(class)) = (size.value, &wire.class) {
            let message = Message::new("rule-gauge-class").with("size", &size.written);
            let finding = Finding::error(message, class.place.clone(), Message::new("wanted-no-gauge-class"));
            findings.report(finding.because(size.place.clone(), Message::new("label-its-size")));
        }
        // Every listed size has both classes: either tells whether the size is one.
        if greatest_per_metre(size.value, Class::Flexible) == Err(WireError::NotListed) {
            let message = Message::new("rule-wire-size").with("size", &size.written);
            let sizes = listed_sizes().map(|size| size.to_string()).collect::<Vec<_>>().join(", ");
            let label = Message::new("wanted-wire-size").with("sizes", sizes);
            let finding = Finding::warning(message, size.place.clone(), label);
            findings.report(finding.help(Message::new("rule-wire-size-help")));
        }
        if let Some(given) = &wire.conductors
            && conductors(wire).is_none()
        {
            let message = Message::new("rule-conductors").with("written", &given.written);
            let label = Message::new("wanted-conductors");
            findings.report(Finding::error(message, given.place.clone(), label));
        }
    }
}
