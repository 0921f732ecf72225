//! A meter with more ranges than any has, two ranges with one end, or digits that do not
//! grow with the range.

use crate::diag::{Finding, Findings};
use crate::quantity::{MOST_RANGES, Scalar};
use crate::spec::{Range, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for meter in set.instruments.values().map(|entry| &entry.item) {
        of_function(&meter.volts, findings);
        of_function(&meter.ohms, findings);
    }
}

fn of_function<T: Scalar>(ranges: &[Range<T>], findings: &Findings) {
    if let Some(one) = ranges.get(MOST_RANGES).and_then(|range| range.to.as_ref()) {
        let message = Message::new("rule-many-ranges").with("count", ranges.len());
        let label = Message::new("wanted-few-ranges").with("most", MOST_RANGES);
        findings.report(Finding::error(message, one.place.clone(), label));
    }
    let mut known: Vec<&Range<T>> = ranges.iter().filter(|range| range.to.is_some()).collect();
    let end = |range: &Range<T>| range.to.as_ref().map_or(f64::INFINITY, |to| to.value.si());
    known.sort_by(|one, other| end(one).total_cmp(&end(other)));
    for pair in known.windows(2) {
        let [smaller, larger] = pair else { continue };
        let Some(to) = &larger.to else { continue };
        if end(smaller).total_cmp(&end(larger)).is_eq() {
            let message = Message::new("rule-same-range").with("written", &to.written);
            findings.report(Finding::error(message, to.place.clone(), Message::new("wanted-another-range")));
        }
        if let (Some(fine), Some(coarse)) = (&smaller.resolution, &larger.resolution)
            && coarse.value < fine.value
        {
            let message =
                Message::new("rule-range-digit").with("digit", &coarse.written).with("to", &to.written);
            let label = Message::new("wanted-range-digit").with("digit", &fine.written);
            findings.report(Finding::warning(message, coarse.place.clone(), label));
        }
    }
}
