//! A step at airbag wiring: it is not probed, not ohmed, not unplugged.

use crate::diag::{Finding, Findings, Place};
use crate::rules::airbag::is_airbag;
use crate::spec::{Near, Question, Set};
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set) {
        let Some((place, because)) = at_airbag(set, step) else { continue };
        let message = Message::new("rule-check-airbag").with("step", &step.id.value);
        let finding = Finding::error(message, place, Message::new("wanted-no-airbag-step"));
        let finding = finding.help(Message::new("rule-check-airbag-help"));
        findings.report(match because {
            Some(because) => finding.because(because, Message::new("label-airbag")),
            None => finding,
        });
    }
}

/// Where a step names such wiring: by its own word, or by a pin of such a connector.
fn at_airbag(set: &Set, step: &Question) -> Option<(Place, Option<Place>)> {
    if let Some(near) = step.near.iter().find(|near| near.value == Near::Airbag) {
        return Some((near.place.clone(), None));
    }
    step.pins.iter().find_map(|pin| {
        let connector = &set.connectors.get(pin.value.split_once('/')?.0)?.item;
        Some((pin.place.clone(), Some(is_airbag(connector)?.clone())))
    })
}
