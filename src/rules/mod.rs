//! What a spec may not say, or should not: one rule per file.
//!
//! A rule looks at the set as written and reports findings; it repairs nothing.
//! It speaks about values that are there: a missing value is not wrong, it is
//! printed as NOT GIVEN.

mod airbag;
mod beta_plausible;
mod card_keys;
mod card_nothing;
mod checklist;
mod coefficients_plausible;
mod coil_plausible;
mod connector_card;
mod connector_face;
mod contact_codes;
mod contact_pins;
mod control_forced;
mod control_reached;
mod control_values;
mod converter;
mod copper_range;
mod decision_form;
mod displacement_direction;
mod divider_readable;
mod document_names;
mod drive_steps;
mod duty_tolerance;
mod elevation;
mod high_voltage;
mod ladder_decidable;
mod lamination;
mod light_saturates;
mod links;
mod magnitude;
mod meter_ranges;
mod mode_complete;
mod mode_controls;
mod mode_forces;
mod mode_order;
mod mode_same;
mod mode_values;
mod nominal_battery;
mod panel_scales;
mod part_circuits;
mod pins;
mod positive;
mod range_known;
mod refrigerant_range;
mod refrigerant_units;
mod report_evidence;
mod request_chain;
mod request_range;
mod request_release;
mod request_scenario;
mod request_watch;
mod set_points;
mod shared;
mod sheet_fits;
mod shop_named;
mod sizes;
mod stall_current;
mod stops_apart;
mod strip_rows;
mod table_one_way;
mod table_outlier;
mod test_applies;
mod test_form;
mod test_pins;
mod test_state;
mod test_units;
mod tolerance_form;
mod tolerance_missing;
mod transducer_line;
mod vent_air;
mod vent_rows;
mod wire_driver;
mod wire_drop;
mod wire_size;

pub use table_outlier::{Suspect, suspect_row};

use crate::diag::{Findings, Place};
use crate::quantity::{Interval, Temperature};
use crate::spec::{At, Curve, Mode, Sensor, Set};

/// Asks every rule.
pub fn check(set: &Set, findings: &Findings) {
    let rules = [
        airbag::check,
        beta_plausible::check,
        card_keys::check,
        card_nothing::check,
        checklist::airbag::check,
        checklist::costly_first::check,
        checklist::dangling::check,
        checklist::ending_named::check,
        checklist::exits::check,
        checklist::expects::check,
        checklist::fitted::check,
        checklist::loops::check,
        checklist::map_fits::check,
        checklist::measurable::check,
        checklist::names::check,
        checklist::one_question::check,
        checklist::opened::check,
        checklist::place_seen::check,
        checklist::replacing::check,
        checklist::same_exit::check,
        checklist::symptom_system::check,
        checklist::unreachable::check,
        coefficients_plausible::check,
        connector_card::check,
        connector_face::check,
        contact_codes::check,
        contact_pins::check,
        control_forced::check,
        control_values::check,
        converter::check,
        decision_form::check,
        lamination::check,
        coil_plausible::check,
        control_reached::check,
        copper_range::check,
        displacement_direction::check,
        divider_readable::check,
        document_names::check,
        duty_tolerance::check,
        elevation::check,
        drive_steps::check,
        high_voltage::check,
        ladder_decidable::check,
        light_saturates::check,
        links::check,
        magnitude::check,
        meter_ranges::check,
        mode_complete::check,
        mode_controls::check,
        mode_forces::check,
        mode_order::check,
        mode_same::check,
        mode_values::check,
        panel_scales::check,
        nominal_battery::check,
        pins::check,
        positive::check,
        range_known::check,
        report_evidence::check,
        set_points::check,
        refrigerant_range::check,
        refrigerant_units::check,
        request_chain::check,
        request_range::check,
        request_release::check,
        request_scenario::check,
        request_watch::check,
        sheet_fits::check,
        sizes::check,
        shop_named::check,
        stall_current::check,
        stops_apart::check,
        strip_rows::check,
        table_one_way::check,
        table_outlier::check,
        test_applies::check,
        test_form::check,
        test_pins::check,
        test_state::check,
        test_units::check,
        tolerance_form::check,
        tolerance_missing::check,
        vent_air::check,
        vent_rows::check,
        wire_driver::check,
        wire_drop::check,
        wire_size::check,
        transducer_line::check,
    ];
    for rule in rules {
        rule(set, findings);
    }
}

/// Asks the rules for tables about points that belong to no sensor yet.
pub fn check_points(curve: &At<Curve>, findings: &Findings) {
    let Curve::Table { rows, .. } = &curve.value else { return };
    positive::check_rows(rows, findings);
    table_one_way::check_rows(rows, &curve.place, findings);
    table_outlier::check_rows(rows, findings);
}

/// Every sensor with the place of its id.
fn sensors(set: &Set) -> impl Iterator<Item = (&str, &Sensor, &Place)> {
    set.sensors.iter().map(|(id, entry)| (id.as_str(), &entry.item, &entry.place))
}

/// The temperatures that a sensor is used at; `None` where nobody wrote them, or wrote them
/// so that they could not be read. A table has its own, a formula reaches further than its sensor.
fn covered(sensor: &Sensor, curve: &crate::physics::curve::Curve) -> Option<Interval<Temperature>> {
    match (&sensor.range, &sensor.curve.as_ref()?.value) {
        (Some(range), _) => Some(range.value),
        (None, Curve::Table { .. }) if !sensor.range_misread => Some(curve.domain()),
        (None, _) => None,
    }
}

/// Whether a mode names a control point that is not in the set, as after a slip of the finger.
fn names_a_stranger(set: &Set, mode: &Mode) -> bool {
    mode.named().any(|control| !set.controls.contains_key(&control.value))
}

/// Several ids as a finding names them.
fn quoted<'a>(ids: impl IntoIterator<Item = &'a str>) -> String {
    ids.into_iter().map(|id| format!("`{id}`")).collect::<Vec<_>>().join(", ")
}
