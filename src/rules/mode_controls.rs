//! A mode names control points of its own system, each of them once.

use std::collections::BTreeMap;

use crate::diag::{Finding, Findings, Place};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.modes {
        let mut named: BTreeMap<&str, &Place> = BTreeMap::new();
        for control in entry.item.named() {
            if let Some(first) = named.get(control.value.as_str()) {
                let message = Message::new("rule-mode-twice").with("id", id).with("control", &control.value);
                let finding = Finding::error(message, control.place.clone(), Message::new("label-second"))
                    .because((*first).clone(), Message::new("label-first"))
                    .help(Message::new("rule-mode-twice-help"));
                findings.report(finding);
                continue;
            }
            named.insert(&control.value, &control.place);
            let theirs = set.controls.get(&control.value).and_then(|known| known.item.system.as_ref());
            let (Some(theirs), Some(system)) = (theirs, &entry.item.system) else { continue };
            if theirs.value == system.value {
                continue;
            }
            let message = Message::new("rule-mode-other-system")
                .with("control", &control.value)
                .with("theirs", &theirs.value)
                .with("system", &system.value);
            let label = Message::new("wanted-of-system").with("system", &system.value);
            let finding = Finding::error(message, control.place.clone(), label);
            findings.report(finding.because(theirs.place.clone(), Message::new("label-its-system")));
        }
    }
}
