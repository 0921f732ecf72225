//! The state in which a test is made, and what must be so before.

use crate::document::{Context, ends, figures};
use crate::model::{Actuator, Expect, Group, Model, PartEnd, RolePin, RowOf, Test, Vehicle};
use crate::quantity::Duration;
use crate::spec::{Function, Ignition, Origin, Reads, Role, View, Where};
use crate::words::{Message, Words};

/// The state that all tests of a group share; empty where one of its rows has its group's own.
pub(super) fn of_group(context: Context<'_>, group: &Group) -> Vec<String> {
    let tests = group.rows.iter().map(|row| match &row.of {
        RowOf::Test(id) => context.model.tests.get(id),
        RowOf::Sensor { .. } => None,
    });
    let Some(tests) = tests.collect::<Option<Vec<&Test>>>() else { return Vec::new() };
    let all: Vec<Vec<String>> = tests.iter().map(|test| of_test(context.words, test)).collect();
    let Some(first) = all.first() else { return Vec::new() };
    first.iter().filter(|part| all.iter().all(|state| state.contains(part))).cloned().collect()
}

/// Key, panel, blower, connector: each in a few words.
fn of_test(words: &Words, test: &Test) -> Vec<String> {
    let ignition = test.ignition.map(|ignition| {
        words.word(match ignition {
            Ignition::Off => "sheet-key-off",
            Ignition::On => "sheet-key-on",
            Ignition::Running => "sheet-engine-running",
        })
    });
    let of = |id: &'static str, what: &Option<String>| {
        what.as_ref().map(|what| words.say(&Message::new(id).with("what", what)))
    };
    let mode = test.mode.as_ref().map(|(_, title)| title.clone());
    let meter =
        (!test.meter.word().is_empty() && test.reads != Reads::Observation).then(|| match &test.instrument {
            Some(own) => format!("{}, {}", own.title, test.meter.word()),
            None if is_meter(test.meter) => {
                words.say(&Message::new("sheet-meter-on").with("what", test.meter.word()))
            }
            None => test.meter.word().to_owned(),
        });
    let parts = [
        ignition,
        of("sheet-mode", &mode),
        of("sheet-set-point", &test.set_point),
        of("sheet-blower", &test.blower),
        test.mated.map(|mated| words.word(mated_word(mated, test.place))),
        meter,
    ];
    parts.into_iter().flatten().collect()
}

/// Whether it is a setting of a multimeter, and no instrument of its own.
fn is_meter(function: Function) -> bool {
    !matches!(
        function,
        Function::Scope | Function::Thermometer | Function::Gauge | Function::Watch | Function::None
    )
}

fn mated_word(mated: bool, place: Where) -> &'static str {
    match (mated, place) {
        (true, _) => "sheet-all-mated",
        (false, Where::ControlUnit) => "sheet-unit-apart",
        (false, Where::Component) => "sheet-component-unmated",
        (false, Where::InLine | Where::Vehicle) => "sheet-both-ends-unmated",
    }
}

/// What stands under a row: its own state, what comes before, where something else holds.
pub(super) fn lines(words: &Words, test: &Test, shared: &[String]) -> Vec<String> {
    let joined = |id: &'static str, parts: Vec<String>| {
        (!parts.is_empty()).then(|| words.say(&Message::new(id).with("what", parts.join(" · "))))
    };
    let own = of_test(words, test).into_iter().filter(|part| !shared.contains(part)).collect();
    let time = |id: &'static str, time: Duration| {
        let (number, unit) = match time.seconds() {
            seconds if seconds >= 3600.0 => (seconds / 3600.0, "h"),
            seconds if seconds >= 120.0 => (seconds / 60.0, "min"),
            seconds => (seconds, "s"),
        };
        words.say(&Message::new(id).with("time", format!("{} {unit}", figures::trimmed(number))))
    };
    let soak = test.soak.as_ref().map(|soak| time("sheet-soaked", soak.value));
    let wait = test.wait.as_ref().map(|wait| time("sheet-wait", wait.value));
    let before = soak.into_iter().chain(test.before.iter().cloned()).chain(wait).collect();
    let differs = test.differs.iter().map(|(when, expect)| {
        words.say(&Message::new("sheet-differs").with("when", when).with("expect", expect))
    });
    [joined("sheet-state", own), joined("sheet-before", before)]
        .into_iter()
        .flatten()
        .chain(differs)
        .collect()
}

/// Where the probes go: `K9/2 +  K9/3 −`; ohms have no polarity.
pub(super) fn probes(context: Context<'_>, test: &Test) -> String {
    let Context { model, words, .. } = context;
    let signed = match test.reads {
        Reads::Resistance => false,
        // Contacts along a chain of resistors are read in volts.
        Reads::Contacts => test.meter == Function::Volts,
        _ => true,
    };
    let names = test.probes.iter().zip(["+", "−"]).filter_map(|(probe, sign)| {
        let name = &probe.as_ref()?.name;
        Some(if signed { format!("{name} {sign}") } else { name.clone() })
    });
    let names: Vec<String> = names.collect();
    if names.is_empty() && matches!(test.expect, Expect::TruthOf(Origin::Contacts)) {
        return contacts(model, test);
    }
    if names.is_empty() && test.reads.is_electrical() && test.reads != Reads::Contacts {
        return words.word("doc-not-given");
    }
    names.join("  ")
}

/// Each contact with its pin, then what they lead to.
fn contacts(model: &Model, test: &Test) -> String {
    let Some(actuator) = model.actuators.get(&test.component) else { return String::new() };
    let names = actuator.contacts.as_ref().map(|contacts| &contacts.names[..]).unwrap_or_default();
    let pin = |pin: &RolePin| {
        let name = match pin.role {
            Role::Contact(index) => names.get(index)?.as_str(),
            Role::Common => "",
            _ => return None,
        };
        Some(format!("{name}\u{a0}{}", pin.pin.name).trim().to_owned())
    };
    let pins = coded_ends(actuator, test).iter().flat_map(|end| &end.pins);
    pins.filter_map(pin).collect::<Vec<_>>().join("  ")
}

/// The connectors of an actuator at the end where the test is made, where that has contacts.
fn coded_ends<'a>(actuator: &'a Actuator, test: &Test) -> &'a [PartEnd] {
    let coded = |end: &PartEnd| end.pins.iter().any(|pin| matches!(pin.role, Role::Contact(_)));
    let own = test.place == Where::Component && actuator.own_ends.iter().any(coded);
    if own { &actuator.own_ends } else { &actuator.unit_ends }
}

/// How the probed connector is seen.
pub(super) fn view(context: Context<'_>, test: &Test) -> String {
    let words = context.words;
    if let Some(end) = &test.end {
        let view = ends::view(words, end);
        // A mated plug is probed from its wires.
        let mirrored = test.mated == Some(true) && end.view == Some(View::MatingFace);
        return if mirrored { words.say(&Message::new("check-mirrored").with("view", view)) } else { view };
    }
    let coded = matches!(test.expect, Expect::TruthOf(Origin::Contacts));
    let actuator = context.model.actuators.get(&test.component).filter(|_| coded);
    let end = actuator.and_then(|actuator| coded_ends(actuator, test).first());
    end.map_or_else(String::new, |end| ends::looked_at(words, end.view, end.side, end.latch.as_deref()))
}

/// Why a test is not for this vehicle; a vehicle whose month is not known is tested.
pub(super) fn not_applicable(words: &Words, test: &Test, vehicle: &Vehicle) -> Option<String> {
    let built = vehicle.built.as_ref()?;
    // Months as `2021-01` sort as text does.
    let early = test.built[0].as_ref().filter(|from| built < *from);
    let late = test.built[1].as_ref().filter(|to| built > *to);
    let (id, month) = match (early, late) {
        (Some(from), _) => ("sheet-only-from", from),
        (None, Some(to)) => ("sheet-only-to", to),
        (None, None) => return None,
    };
    Some(words.say(&Message::new(id).with("month", month)))
}
