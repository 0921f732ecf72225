//! Links refrigerants and vents with their instruments.

use super::super::fact::Fact;
use super::super::instrument::{Hygrometer, PressureGauge};
use super::super::refrigerant::Refrigerant;
use super::super::vent::{CabinAir, Position, Vent};
use super::facts::plus_minus;
use super::{text, thermometer};
use crate::physics::air::vent::Cooling;
use crate::physics::refrigerant::reading::Gauge;
use crate::quantity::Unit;
use crate::spec::{self, At, Set};

pub(super) fn refrigerant(set: &Set, id: &str, written: &spec::Refrigerant) -> Option<Refrigerant> {
    let key = |part: &str| format!("refrigerant.{id}.{part}");
    let fluid = written.fluid.as_ref()?.value;
    let units = written.units.as_ref().map(|units| units.iter().map(|unit| unit.value).collect());
    let (low_gauge, high_gauge) = (gauge(set, &written.low_gauge), gauge(set, &written.high_gauge));
    let thermometer = thermometer(set, &written.thermometer);
    let mut facts = vec![Fact::new(key("fluid"), "fact-fluid", written.fluid.as_ref())];
    if written.range.is_some() {
        facts.push(Fact::new(key("range"), "fact-range", written.range.as_ref()));
    }
    facts.push(Fact::new(key("superheat"), "fact-superheat", written.superheat.as_ref()));
    facts.push(Fact::new(key("subcooling"), "fact-subcooling", written.subcooling.as_ref()));
    facts.push(plus_minus(Fact::new(key("at_rest"), "fact-at-rest", written.at_rest.as_ref())));
    for (part, label, instrument) in [
        ("low_gauge", "fact-low-gauge", low_gauge.as_ref().map(|gauge| &gauge.facts)),
        ("high_gauge", "fact-high-gauge", high_gauge.as_ref().map(|gauge| &gauge.facts)),
        ("thermometer", "fact-thermometer", thermometer.as_ref().map(|thermometer| &thermometer.facts)),
    ] {
        facts.extend(of_instrument(key(part), label, instrument));
    }
    Some(Refrigerant {
        id: id.to_owned(),
        title: text(&written.title)?,
        system: text(&written.system)?,
        fluid,
        range: written.range.as_ref().map_or_else(|| fluid.range(), |range| range.value),
        step: written.step.as_ref().map(|step| step.value),
        units: units.unwrap_or_else(|| vec![Unit::Kilopascal, Unit::Bar, Unit::PoundPerSquareInch]),
        low_gauge,
        high_gauge,
        thermometer,
        superheat: written.superheat.as_ref().map(|window| window.value),
        subcooling: written.subcooling.as_ref().map(|window| window.value),
        at_rest: written.at_rest.as_ref().map(|window| window.value),
        facts,
    })
}

pub(super) fn vent(set: &Set, id: &str, written: &spec::Vent) -> Option<Vent> {
    let key = |part: &str| format!("vent.{id}.{part}");
    let thermometer = thermometer(set, &written.thermometer);
    let hygrometer = hygrometer(set, &written.hygrometer);
    let (duty, outlet) = (written.duty.as_ref()?, written.outlet_humidity.as_ref()?);
    let mut facts = vec![
        Fact::new(key("duty"), "fact-duty", Some(duty)),
        Fact::new(key("outlet_humidity"), "fact-outlet-humidity", Some(outlet)),
        Fact::new(key("ambient"), "fact-ambient", written.ambient.as_ref()),
        Fact::new(key("humidity"), "fact-humidity", written.humidity.as_ref()),
        Fact::new(key("evaporator"), "fact-evaporator", written.evaporator.as_ref()),
    ];
    if duty.value.limits.is_none() {
        facts.push(Fact::new::<()>(key("duty.tolerance"), "fact-duty-tolerance", None));
    }
    // Cabin air is a value only where a position takes some in.
    if written.positions.iter().any(takes_cabin_air) {
        facts.push(Fact::new(key("cabin"), "fact-cabin", written.cabin.as_ref()));
        facts.push(Fact::new(key("cabin_humidity"), "fact-cabin-humidity", written.cabin_humidity.as_ref()));
    }
    for (index, position) in written.positions.iter().enumerate() {
        let outside = Fact::new(
            key(&format!("position.{}.outside", index + 1)),
            "fact-outside-share",
            position.outside.as_ref(),
        );
        facts.push(outside);
    }
    let of_thermometer = thermometer.as_ref().map(|thermometer| &thermometer.facts);
    let of_hygrometer = hygrometer.as_ref().map(|hygrometer| &hygrometer.facts);
    facts.extend(of_instrument(key("thermometer"), "fact-thermometer", of_thermometer));
    facts.extend(of_instrument(key("hygrometer"), "fact-hygrometer", of_hygrometer));
    let cabin = written.cabin.as_ref().zip(written.cabin_humidity.as_ref());
    let positions = written.positions.iter().map(|position| {
        Some(Position { name: text(&position.name)?, outside: position.outside.as_ref()?.value })
    });
    Some(Vent {
        id: id.to_owned(),
        title: text(&written.title)?,
        system: text(&written.system)?,
        cooling: Cooling { duty: duty.value, outlet_humidity: outlet.value },
        ambient: (written.ambient.as_ref()?.value, written.ambient_step.as_ref()?.value),
        humidity: (written.humidity.as_ref()?.value, written.humidity_step.as_ref()?.value),
        evaporator: written.evaporator.as_ref().map(|evaporator| evaporator.value),
        cabin: cabin
            .map(|(dry_bulb, humidity)| CabinAir { dry_bulb: dry_bulb.value, humidity: humidity.value }),
        thermometer,
        hygrometer,
        positions: positions.collect::<Option<_>>()?,
        facts,
    })
}

/// Whether a position of the intake door takes in cabin air.
fn takes_cabin_air(position: &spec::Position) -> bool {
    position.outside.as_ref().is_some_and(|outside| outside.value.part() < 1.0)
}

/// What an instrument is good to; where none was named, that it is missing.
fn of_instrument(key: String, label: &'static str, facts: Option<&Vec<Fact>>) -> Vec<Fact> {
    facts.map_or_else(|| vec![Fact::new::<()>(key, label, None)], Clone::clone)
}

fn gauge(set: &Set, link: &Option<At<String>>) -> Option<PressureGauge> {
    let id = &link.as_ref()?.value;
    let meter = &set.instruments.get(id)?.item;
    let key = |part: &str| format!("instrument.{id}.{part}");
    let both = meter.accuracy_of_full_scale.as_ref().zip(meter.full_scale.as_ref());
    Some(PressureGauge {
        title: text(&meter.title)?,
        gauge: both.map(|(part, end)| Gauge { accuracy: part.value, full_scale: end.value }),
        facts: vec![
            plus_minus(Fact::new(
                key("accuracy_of_full_scale"),
                "fact-accuracy-of-full-scale",
                meter.accuracy_of_full_scale.as_ref(),
            )),
            Fact::new(key("full_scale"), "fact-full-scale", meter.full_scale.as_ref()),
        ],
    })
}

fn hygrometer(set: &Set, link: &Option<At<String>>) -> Option<Hygrometer> {
    let id = &link.as_ref()?.value;
    let meter = &set.instruments.get(id)?.item;
    let fact =
        Fact::new(format!("instrument.{id}.accuracy"), "fact-accuracy-of-humidity", meter.humidity.as_ref());
    Some(Hygrometer {
        title: text(&meter.title)?,
        limit: meter.humidity.as_ref().map(|limit| limit.value),
        facts: vec![plus_minus(fact)],
    })
}
