//! A mode says of every control point of its system whether it is forced, free or don't care.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.modes {
        let Some(system) = &entry.item.system else { continue };
        // What could not be read, or is misspelt, may be what is missing here.
        if entry.item.misread || super::names_a_stranger(set, &entry.item) {
            continue;
        }
        let named = |control: &str| entry.item.named().any(|at| at.value == control);
        let silent: Vec<_> =
            set.controls_of(&system.value).into_iter().filter(|(control, _)| !named(control)).collect();
        let Some((_, first)) = silent.first() else { continue };
        let controls = super::quoted(silent.iter().map(|(control, _)| *control));
        let message = Message::new("rule-mode-silent").with("id", id).with("controls", controls);
        let finding = Finding::error(message, entry.place.clone(), Message::new("wanted-every-control"))
            .because(first.place.clone(), Message::new("label-control"))
            .help(Message::new("rule-mode-silent-help"));
        findings.report(finding);
    }
}
