//! A mode forces a control point to one of the values that the point has.

use crate::diag::{Finding, Findings, nearest};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for force in set.modes.values().flat_map(|entry| &entry.item.forces) {
        let Some(control) = set.controls.get(&force.control.value) else { continue };
        let (Some(values), Some(value)) = (&control.item.values, &force.value) else { continue };
        let known = || values.iter().map(|known| known.value.as_str());
        if known().any(|known| known == value.value) {
            continue;
        }
        let message =
            Message::new("rule-mode-value").with("control", &force.control.value).with("value", &value.value);
        let label = Message::new("wanted-one-of").with("words", super::quoted(known()));
        let place = values.first().map_or(&control.place, |first| &first.place);
        let finding = Finding::error(message, value.place.clone(), label)
            .because(place.clone(), Message::new("label-values"));
        findings.report(match nearest(&value.value, known()) {
            Some(near) => finding.help(Message::new("did-you-mean").with("word", near)),
            None => finding,
        });
    }
}
