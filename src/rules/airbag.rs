//! Airbag and belt-tensioner wiring: nobody probes it, and nothing of it is printed.

use crate::diag::{Finding, Findings, Place};
use crate::spec::{About, Connector, Set};
use crate::words::Message;

/// Words that such a connector's title or pins have (common practice, no source).
const WORDS: &[&str] = &["airbag", "air bag", "tensioner", "squib", "igniter"];

pub(super) fn check(set: &Set, findings: &Findings) {
    for card in set.cards.values().map(|entry| &entry.item) {
        let Some(about) = card.of(About::Connector) else { continue };
        let Some(entry) = set.connectors.get(&about.value) else { continue };
        if let Some(because) = is_airbag(&entry.item) {
            findings.report(stop("rule-airbag-card", &about.value, &about.place, because));
        }
    }
    for (id, entry) in &set.connectors {
        if let (Some(rows), Some(because)) = (&entry.item.rows, is_airbag(&entry.item)) {
            findings.report(stop("rule-airbag-face", id, &rows.place, because));
        }
    }
}

/// What tells that a connector belongs to an airbag or belt tensioner.
pub(super) fn is_airbag(connector: &Connector) -> Option<&Place> {
    if let Some(flag) = &connector.airbag {
        return flag.value.then_some(&flag.place);
    }
    let functions = connector.pins.values().filter_map(|pin| pin.function.as_ref());
    let names = connector.title.iter().chain(functions);
    let says = |text: &str| {
        let text = text.to_lowercase();
        WORDS.iter().any(|word| text.contains(word))
    };
    names.into_iter().find(|name| says(&name.value)).map(|name| &name.place)
}

fn stop(message: &'static str, id: &str, place: &Place, because: &Place) -> Finding {
    let finding =
        Finding::error(Message::new(message).with("id", id), place.clone(), Message::new("wanted-no-airbag"));
    let finding = finding.because(because.clone(), Message::new("label-airbag"));
    finding.help(Message::new("rule-airbag-help"))
}
