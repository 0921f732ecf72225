//! A report rests on tests of its own sheet, three at most.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

/// As many readings as the report has lines for.
const MOST: usize = 3;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.reports {
        let report = &entry.item;
        if let Some(fourth) = report.evidence.get(MOST) {
            let message = Message::new("rule-report-evidence").with("id", id).with("most", MOST);
            findings.report(Finding::error(
                message,
                fourth.place.clone(),
                Message::new("wanted-three-tests"),
            ));
        }
        let Some(at) = &report.sheet else { continue };
        let Some(sheet) = set.sheets.get(&at.value) else { continue };
        let rows = sheet.item.groups.iter().flat_map(|group| &group.rows);
        let tested: Vec<&str> = rows.filter_map(|row| row.test()).map(|test| test.value.as_str()).collect();
        let strangers = report.evidence.iter().filter(|test| set.tests.contains_key(&test.value));
        for test in strangers.filter(|test| !tested.contains(&test.value.as_str())) {
            let message =
                Message::new("rule-report-other").with("test", &test.value).with("sheet", &at.value);
            let finding = Finding::error(message, test.place.clone(), Message::new("wanted-test-of-sheet"));
            findings.report(finding.because(at.place.clone(), Message::new("label-its-sheet")));
        }
    }
}
