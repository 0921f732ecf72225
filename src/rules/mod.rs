//! What a spec may not say, or should not: one rule per file.
//!
//! A rule looks at the set as written and reports findings; it repairs nothing.
//! It speaks about values that are there: a missing value is not wrong, it is
//! printed as NOT GIVEN.

mod beta_plausible;
mod coefficients_plausible;
mod decision_form;
mod divider_readable;
mod document_names;
mod links;
mod magnitude;
mod pins;
mod positive;
mod range_known;
mod sheet_fits;
mod shop_named;
mod strip_rows;
mod table_falls;
mod table_outlier;
mod tolerance_form;
mod tolerance_missing;

use crate::diag::{Findings, Place};
use crate::spec::{Sensor, Set};

/// Asks every rule.
pub fn check(set: &Set, findings: &Findings) {
    let rules = [
        beta_plausible::check,
        coefficients_plausible::check,
        decision_form::check,
        divider_readable::check,
        document_names::check,
        links::check,
        magnitude::check,
        pins::check,
        positive::check,
        range_known::check,
        sheet_fits::check,
        shop_named::check,
        strip_rows::check,
        table_falls::check,
        table_outlier::check,
        tolerance_form::check,
        tolerance_missing::check,
    ];
    for rule in rules {
        rule(set, findings);
    }
}

/// Every sensor with the place of its id.
fn sensors(set: &Set) -> impl Iterator<Item = (&str, &Sensor, &Place)> {
    set.sensors.iter().map(|(id, entry)| (id.as_str(), &entry.item, &entry.place))
}
