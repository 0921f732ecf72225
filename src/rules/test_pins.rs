//! The probes of a test go to pins that exist, seen in a way that is stated.

use crate::diag::{Finding, Findings};
use crate::spec::{Probes, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for entry in set.tests.values() {
        let Some(pins) = &entry.item.pins else { continue };
        for pin in [&pins.plus, &pins.minus].into_iter().flatten() {
            if Probes::POSTS.contains(&pin.value.as_str()) || !super::pins::exists(set, pin, findings) {
                continue;
            }
            let Some((id, _)) = pin.value.split_once('/') else { continue };
            let Some(connector) = set.connectors.get(id) else { continue };
            for (key, given) in
                [("view", connector.item.view.is_some()), ("side", connector.item.side.is_some())]
            {
                if given {
                    continue;
                }
                let message = Message::new("rule-test-no-view").with("pin", &pin.value).with("key", key);
                let label = Message::new("wanted-seen-side").with("connector", id).with("key", key);
                let finding = Finding::warning(message, pin.place.clone(), label);
                findings.report(finding.because(connector.place.clone(), Message::new("label-connector")));
            }
        }
        if let (Some(plus), Some(minus)) = (&pins.plus, &pins.minus)
            && plus.value == minus.value
        {
            let message = Message::new("rule-test-one-pin").with("pin", &plus.value);
            let finding = Finding::error(message, minus.place.clone(), Message::new("wanted-other-pin"));
            findings.report(finding.because(plus.place.clone(), Message::new("label-first-use")));
        }
    }
}
