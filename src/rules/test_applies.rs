//! A test is for some vehicle of its system, and its mode is one of its system.

use crate::diag::{Finding, Findings};
use crate::spec::{At, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.tests {
        let test = &entry.item;
        let months = [&test.built_from, &test.built_to];
        let mut all_months = true;
        for month in months.into_iter().flatten().filter(|month| !is_month(&month.value)) {
            all_months = false;
            let message = Message::new("rule-test-month").with("written", &month.value);
            findings.report(Finding::error(message, month.place.clone(), Message::new("wanted-month")));
        }
        let component = test.component.as_ref().and_then(|at| set.named_component(&at.value));
        let Some(system) = component.and_then(|component| component.system) else { continue };
        if let Some(mode) = &test.mode {
            of_system(set, mode, system, findings);
        }
        if !all_months || months.iter().all(|month| month.is_none()) {
            continue;
        }
        let meets = |built: &Option<At<String>>| {
            // A vehicle whose month is not known is tested.
            let Some(built) = built else { return true };
            let from = test.built_from.as_ref().is_none_or(|from| from.value <= built.value);
            from && test.built_to.as_ref().is_none_or(|to| built.value <= to.value)
        };
        let vehicles = set.vehicles.values().filter(|vehicle| vehicle.item.has(system));
        if vehicles.clone().next().is_some() && !vehicles.clone().any(|vehicle| meets(&vehicle.item.built)) {
            let place = months.into_iter().flatten().next().map_or(&entry.place, |month| &month.place);
            let message = Message::new("rule-test-no-vehicle").with("id", id).with("system", system);
            findings.report(Finding::warning(message, place.clone(), Message::new("wanted-some-vehicle")));
        }
    }
}

fn of_system(set: &Set, mode: &At<String>, system: &str, findings: &Findings) {
    let Some(theirs) = set.modes.get(&mode.value).and_then(|entry| entry.item.system.as_ref()) else {
        return;
    };
    if theirs.value == system {
        return;
    }
    let message =
        Message::new("rule-test-other-system").with("id", &mode.value).with("theirs", &theirs.value);
    let label = Message::new("wanted-of-system").with("system", system);
    let finding = Finding::error(message, mode.place.clone(), label);
    findings.report(finding.because(theirs.place.clone(), Message::new("label-its-system")));
}

/// A year and a month, as `2021-01`.
fn is_month(text: &str) -> bool {
    let digits = |part: &str, length: usize| part.len() == length && part.bytes().all(|b| b.is_ascii_digit());
    text.split_once('-')
        .is_some_and(|(year, month)| digits(year, 4) && digits(month, 2) && ("01"..="12").contains(&month))
}
