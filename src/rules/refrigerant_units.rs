//! A unit that a refrigerant's table would show in two columns.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for refrigerant in set.refrigerants.values() {
        let units = refrigerant.item.units.as_deref().unwrap_or_default();
        for (index, unit) in units.iter().enumerate() {
            let Some(first) = units[..index].iter().find(|first| first.value == unit.value) else { continue };
            let message = Message::new("rule-unit-twice").with("unit", unit.value.symbol());
            let finding = Finding::error(message, unit.place.clone(), Message::new("label-second"));
            findings.report(finding.because(first.place.clone(), Message::new("label-first")));
        }
    }
}
