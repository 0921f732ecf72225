//! A card about the modes or the air of a system that has none.

use crate::diag::{Finding, Findings};
use crate::spec::{About, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (about, thing) in set.cards.values().flat_map(|entry| &entry.item.about) {
        let (system, has_some, help) = match about {
            About::Panel => {
                let Some(system) = set.panels.get(&thing.value).and_then(|panel| panel.item.system.as_ref())
                else {
                    continue;
                };
                let has_some = !set.modes_of(&system.value).is_empty();
                (&system.value, has_some, "rule-card-no-modes-help")
            }
            About::Air if set.systems.contains_key(&thing.value) => {
                let mut of_fluids = set.refrigerants.values().map(|entry| &entry.item.system);
                let mut of_vents = set.vents.values().map(|entry| &entry.item.system);
                let mine = |system: &Option<crate::spec::At<String>>| {
                    system.as_ref().is_some_and(|system| system.value == thing.value)
                };
                (&thing.value, of_fluids.any(mine) || of_vents.any(mine), "rule-card-no-air-help")
            }
            _ => continue,
        };
        if has_some {
            continue;
        }
        let message = Message::new("rule-card-nothing").with("system", system);
        let finding = Finding::error(message, thing.place.clone(), Message::new("label-card-system"));
        findings.report(finding.help(Message::new(help)));
    }
}
