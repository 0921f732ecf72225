//! What several rules say in the same way.

use std::collections::BTreeMap;

use crate::diag::{Finding, Findings};
use crate::spec::At;
use crate::words::Message;

/// Reports a link that leads to a thing of another system.
pub(super) fn of_system(
    findings: &Findings,
    kind: &str,
    link: &At<String>,
    theirs: Option<&At<String>>,
    system: &At<String>,
) {
    let Some(theirs) = theirs.filter(|theirs| theirs.value != system.value) else { return };
    let message = Message::new("rule-other-system")
        .with("kind", kind)
        .with("id", &link.value)
        .with("theirs", &theirs.value)
        .with("system", &system.value);
    let label = Message::new("wanted-of-system").with("system", &system.value);
    let finding = Finding::error(message, link.place.clone(), label);
    findings.report(finding.because(theirs.place.clone(), Message::new("label-its-system")));
}

/// Reports every id that a list names again.
pub(super) fn each_once<'a>(findings: &Findings, ids: impl IntoIterator<Item = &'a At<String>>) {
    let mut named = BTreeMap::new();
    for id in ids {
        if let Some(first) = named.insert(&id.value, &id.place) {
            let message = Message::new("spec-duplicate").with("name", &id.value);
            let finding = Finding::error(message, id.place.clone(), Message::new("label-second"));
            findings.report(finding.because(first.clone(), Message::new("label-first")));
        }
    }
}
