//! Temperatures at which a refrigerant's saturation is not known, or does not exist.

use super::range_known::shown;
use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for refrigerant in set.refrigerants.values().map(|entry| &entry.item) {
        let Some(range) = &refrigerant.range else { continue };
        let Some(fluid) = &refrigerant.fluid else { continue };
        let known = fluid.value.range();
        if known.contains(&range.value.low) && known.contains(&range.value.high) {
            continue;
        }
        let critical = fluid.value.critical_temperature();
        let id = if range.value.high > critical { "rule-above-critical" } else { "rule-beyond-saturation" };
        let message = Message::new(id)
            .with("range", &range.written)
            .with("fluid", fluid.value.number())
            .with("critical", shown(critical));
        let label =
            Message::new("wanted-inside").with("low", shown(known.low)).with("high", shown(known.high));
        let finding = Finding::error(message, range.place.clone(), label);
        findings.report(finding.because(fluid.place.clone(), Message::new("label-its-fluid")));
    }
}
