//! Each position has a code of its own, as long as there are contacts; a door
//! passes from one to the next by one contact.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::physics::contacts::{ContactsError, MOST_CONTACTS};
use crate::spec::{Actuator, Contacts, DoorPosition, Ladder, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for Actuator { contacts, ladder, .. } in set.actuators.values().map(|entry| &entry.item) {
        if let Some(contacts) = contacts {
            check_contacts(contacts, findings);
        }
        if let Some(ladder) = ladder {
            check_ladder(ladder, findings);
        }
    }
}

fn check_contacts(contacts: &Contacts, findings: &Findings) {
    let names = contacts.names.as_ref().map(Vec::len);
    check_lengths(&contacts.positions, names, findings);
    let table = match model::truth_table(contacts) {
        Some(Ok(table)) => table,
        Some(Err(ContactsError::Contacts)) => {
            let name = contacts.names.iter().flatten().next().map(|name| &name.place);
            let Some(place) = name.or(contacts.positions.first().map(|position| &position.place)) else {
                return;
            };
            let message = Message::new("rule-contact-count").with_count("count", names.unwrap_or(0));
            let label = Message::new("wanted-contacts").with("most", MOST_CONTACTS);
            return findings.report(Finding::error(message, place.clone(), label));
        }
        Some(Err(_)) | None => return,
    };
    for (first, second) in table.same_codes() {
        twice(&contacts.positions[first], &contacts.positions[second], findings);
    }
    for jump in table.jumps() {
        let (from, to) = (&contacts.positions[jump.from], &contacts.positions[jump.from + 1]);
        let message = Message::new("rule-code-jump")
            .with("from", &from.name)
            .with("to", &to.name)
            .with("count", jump.distance);
        let finding = Finding::warning(message, to.place.clone(), Message::new("wanted-one-contact"));
        let finding = finding.because(from.place.clone(), Message::new("label-position-before"));
        let codes = jump.glitches.iter().map(|(code, _)| code.to_string()).collect::<Vec<_>>().join(", ");
        findings.report(finding.help(Message::new("rule-code-jump-help").with("codes", codes)));
    }
}

fn check_ladder(ladder: &Ladder, findings: &Findings) {
    let contacts = model::ladder_contacts(ladder);
    check_lengths(&ladder.positions, contacts, findings);
    let Some(contacts) = contacts else { return };
    let codes: Vec<_> = ladder.positions.iter().map(|position| position.code.closed(contacts)).collect();
    for (second, code) in codes.iter().enumerate().filter(|(_, code)| code.is_some()) {
        if let Some(first) = codes[..second].iter().position(|other| other == code) {
            twice(&ladder.positions[first], &ladder.positions[second], findings);
        }
    }
}

/// A code names as many contacts as there are.
fn check_lengths(positions: &[DoorPosition], contacts: Option<usize>, findings: &Findings) {
    let Some(contacts) = contacts else { return };
    for position in positions.iter().filter(|position| position.code.closed(contacts).is_none()) {
        let message = Message::new("rule-code-length").with("position", &position.name);
        let label = Message::new("wanted-code-length").with_count("count", contacts);
        findings.report(Finding::error(message, position.place.clone(), label));
    }
}

fn twice(first: &DoorPosition, second: &DoorPosition, findings: &Findings) {
    let message = Message::new("rule-code-twice").with("first", &first.name).with("second", &second.name);
    let finding = Finding::error(message, second.place.clone(), Message::new("wanted-own-code"));
    findings.report(finding.because(first.place.clone(), Message::new("label-first")));
}
