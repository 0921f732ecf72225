//! Two scales of one panel: conversions of each other, or said to be separate.

use crate::diag::{Finding, Findings};
use crate::model::printed_scales;
use crate::physics::scale::{Comparison, compare};
use crate::quantity::{Rounding, SetPoints, Temperature, figure};
use crate::spec::{Panel, Set, Sourced};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.panels {
        let panel = &entry.item;
        if let Some(finding) = finding(id, panel) {
            findings.report(finding);
        }
    }
}

fn finding(id: &str, panel: &Panel) -> Option<Finding> {
    let separate = panel.separate.as_ref().filter(|separate| separate.value);
    let (Some(celsius), Some(fahrenheit)) = (&panel.celsius, &panel.fahrenheit) else {
        return None;
    };
    let found = compare(&printed_scales(celsius.value, fahrenheit.value)).ok()?;
    match (separate, found.are_conversions()) {
        (None, false) => Some(not_conversions(id, &found, celsius, fahrenheit)),
        (Some(separate), true) => {
            let message = differences("rule-panel-not-separate", id, &found);
            let finding =
                Finding::warning(message, separate.place.clone(), Message::new("wanted-no-separate"))
                    .because(fahrenheit.place.clone(), in_celsius(fahrenheit.value));
            Some(finding.help(Message::new("rule-panel-not-separate-help")))
        }
        (Some(separate), false) if separate.source.is_none() => {
            let message = Message::new("rule-panel-separate-source").with("id", id);
            let label = Message::new("wanted-source");
            let finding = Finding::warning(message, separate.place.clone(), label);
            Some(finding.help(Message::new("rule-panel-separate-source-help")))
        }
        _ => None,
    }
}

fn not_conversions(
    id: &str,
    found: &Comparison,
    celsius: &Sourced<SetPoints>,
    fahrenheit: &Sourced<SetPoints>,
) -> Finding {
    let message = differences("rule-panel-scales", id, found);
    Finding::warning(message, fahrenheit.place.clone(), in_celsius(fahrenheit.value))
        .because(celsius.place.clone(), in_fahrenheit(celsius.value))
        .help(Message::new("rule-panel-scales-help"))
}

/// How far the ends of the scales lie apart.
fn differences(message: &'static str, id: &str, found: &Comparison) -> Message {
    let kelvins = |end: crate::physics::scale::End| shown(end.difference.kelvins().abs());
    Message::new(message).with("id", id).with("low", kelvins(found.low)).with("high", kelvins(found.high))
}

fn in_celsius(scale: SetPoints) -> Message {
    ends("label-in-celsius", scale, Temperature::celsius)
}

fn in_fahrenheit(scale: SetPoints) -> Message {
    ends("label-in-fahrenheit", scale, Temperature::fahrenheit)
}

fn ends(message: &'static str, scale: SetPoints, in_unit: fn(Temperature) -> f64) -> Message {
    Message::new(message)
        .with("low", shown(in_unit(scale.ends.low)))
        .with("high", shown(in_unit(scale.ends.high)))
}

fn shown(number: f64) -> String {
    figure(number, 1, Rounding::Nearest)
}
