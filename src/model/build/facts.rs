//! The values behind a sensor's figures, each with its label and source.

use super::super::fact::Fact;
use crate::quantity::{Toleranced, Voltage};
use crate::spec::{self, Sourced};

/// The values behind the curve and its tolerance.
pub(super) fn curve(id: &str, sensor: &spec::Sensor) -> Vec<Fact> {
    let key = |part: &str| format!("sensor.{id}.curve.{part}");
    let mut facts = match sensor.curve.as_ref().map(|curve| &curve.value) {
        Some(spec::Curve::Beta { resistance, at, beta }) => vec![
            Fact::new(key("resistance"), "fact-rated-resistance", resistance.as_ref()),
            Fact::new(key("at"), "fact-rated-temperature", at.as_ref()),
            Fact::new(key("beta"), "fact-beta", beta.as_ref()),
        ],
        Some(spec::Curve::SteinhartHart { a, b, c }) => vec![
            Fact::new(key("a"), "fact-coefficient-a", a.as_ref()),
            Fact::new(key("b"), "fact-coefficient-b", b.as_ref()),
            Fact::new(key("c"), "fact-coefficient-c", c.as_ref()),
        ],
        Some(spec::Curve::SteinhartHart4 { resistance, a, b, c, d }) => {
            // Coefficients for ohms have no such value: that is not a missing one.
            let base = resistance
                .as_ref()
                .map(|resistance| Fact::new(key("resistance"), "fact-coefficients-for", Some(resistance)));
            let terms = [
                Fact::new(key("a"), "fact-coefficient-a", a.as_ref()),
                Fact::new(key("b"), "fact-coefficient-b", b.as_ref()),
                Fact::new(key("c"), "fact-coefficient-c", c.as_ref()),
                Fact::new(key("d"), "fact-coefficient-d", d.as_ref()),
            ];
            base.into_iter().chain(terms).collect()
        }
        Some(spec::Curve::Platinum { resistance }) => {
            vec![Fact::new(key("resistance"), "fact-resistance-at-zero", resistance.as_ref())]
        }
        Some(spec::Curve::SiliconPtc { resistance, at, a, b }) => vec![
            Fact::new(key("resistance"), "fact-rated-resistance", resistance.as_ref()),
            Fact::new(key("at"), "fact-rated-temperature", at.as_ref()),
            Fact::new(key("a"), "fact-coefficient-a", a.as_ref()),
            Fact::new(key("b"), "fact-coefficient-b-squared", b.as_ref()),
        ],
        Some(spec::Curve::Table { rows, temperature_unit, resistance_unit, source }) => {
            vec![Fact {
                key: key("points"),
                label: "fact-table",
                written: Some(format!(
                    "{} × {}, {}",
                    rows.len(),
                    temperature_unit.symbol(),
                    resistance_unit.symbol()
                )),
                source: source.clone(),
            }]
        }
        None => Vec::new(),
    };
    facts.extend(tolerance(id, sensor));
    facts
}

fn tolerance(id: &str, sensor: &spec::Sensor) -> Vec<Fact> {
    let key = |part: &str| format!("sensor.{id}.tolerance.{part}");
    let Some(given) = &sensor.tolerance else {
        // Columns of the source's own table are part of the table's fact.
        let columns = super::convert::tolerance(sensor).is_some();
        let missing = Fact::new::<()>(format!("sensor.{id}.tolerance"), "fact-tolerance", None);
        return if columns { Vec::new() } else { vec![missing] };
    };
    let given = &given.value;
    if given.temperature.is_some() {
        let fact = plus_minus(Fact::new(key("temperature"), "fact-tolerance", given.temperature.as_ref()));
        return vec![fact];
    }
    if given.class.is_some() {
        return vec![Fact::new(key("class"), "fact-tolerance-class", given.class.as_ref())];
    }
    let mut facts = vec![plus_minus(Fact::new(
        key("resistance"),
        "fact-tolerance-resistance",
        given.resistance.as_ref(),
    ))];
    if given.at.is_some() {
        facts.push(Fact::new(key("at"), "fact-tolerance-at", given.at.as_ref()));
    }
    let whole = given.beta.is_none() && super::convert::tolerance(sensor).is_some();
    if !whole {
        facts.push(plus_minus(Fact::new(key("beta"), "fact-tolerance-beta", given.beta.as_ref())));
    }
    facts
}

/// The values behind the volts.
pub(super) fn circuit(
    id: &str,
    system: &str,
    circuit: Option<&spec::Circuit>,
    system_reference: Option<&Sourced<Toleranced<Voltage>>>,
) -> Vec<Fact> {
    let key = |part: &str| format!("sensor.{id}.circuit.{part}");
    let Some(circuit) = circuit else {
        return vec![Fact::new::<()>(format!("sensor.{id}.circuit"), "fact-circuit", None)];
    };
    let resistor = match circuit.topology.as_ref().map(|topology| topology.value) {
        Some(spec::Topology::PullDown) => "fact-pull-down",
        _ => "fact-pull-up",
    };
    let reference = match (&circuit.reference, system_reference) {
        (Some(own), _) => Fact::new(key("reference"), "fact-reference", Some(own)),
        (None, inherited) => Fact::new(format!("system.{system}.reference"), "fact-reference", inherited),
    };
    let mut facts = vec![Fact::new(key("resistor"), resistor, circuit.resistor.as_ref()), reference];
    // A part that a circuit does not have is not a missing value.
    let labels = [
        ("switched", "fact-switched"),
        ("series", "fact-series"),
        ("parallel", "fact-parallel"),
        ("reader.resistor", "fact-reader"),
    ];
    for (part, value) in circuit.resistors() {
        if let Some((_, label)) = labels.iter().find(|(known, _)| *known == part) {
            facts.push(Fact::new(key(part), label, Some(value)));
        }
        if value.value.limits.is_none() {
            let key = format!("{}.tolerance", key(part));
            facts.push(Fact::new::<()>(key, "fact-resistor-tolerance", None));
        }
    }
    let reader = circuit.reader.as_ref().and_then(|reader| reader.reference.as_ref());
    for (part, label, value) in [
        ("reader.reference", "fact-reader-reference", reader),
        ("return_offset", "fact-return-offset", circuit.return_offset.as_ref()),
    ] {
        let Some(value) = value else { continue };
        facts.push(Fact::new(key(part), label, Some(value)));
        if value.value.limits.is_none() {
            facts.push(Fact::new::<()>(format!("{}.tolerance", key(part)), "fact-reference-tolerance", None));
        }
    }
    if let Some(converter) = &circuit.converter {
        if converter.bits.is_some() {
            facts.push(Fact::new(key("converter.bits"), "fact-bits", converter.bits.as_ref()));
        }
        if converter.plausible.is_some() {
            facts.push(Fact::new(key("converter.plausible"), "fact-plausible", converter.plausible.as_ref()));
        }
    }
    let reference = circuit.reference.as_ref().or(system_reference);
    if reference.is_some_and(|reference| reference.value.limits.is_none()) {
        let key = format!("{}.tolerance", key("reference"));
        facts.push(Fact::new::<()>(key, "fact-reference-tolerance", None));
    }
    facts
}

/// Range, service limit and place.
pub(super) fn other(id: &str, sensor: &spec::Sensor) -> Vec<Fact> {
    let key = |part: &str| format!("sensor.{id}.{part}");
    let mut facts = Vec::new();
    // A table's own ends are its range; for a formula the range is a value of its own.
    if sensor.range.is_some() {
        facts.push(Fact::new(key("range"), "fact-range", sensor.range.as_ref()));
    }
    facts.push(plus_minus(Fact::new(
        key("service_limit"),
        "fact-service-limit",
        sensor.service_limit.as_ref(),
    )));
    facts.push(Fact::new(key("location"), "fact-location", sensor.location.as_ref()));
    if let Some(dissipation) = &sensor.dissipation {
        for (part, label, value) in [
            ("dissipation.still", "fact-dissipation-still", &dissipation.still),
            ("dissipation.moving", "fact-dissipation-moving", &dissipation.moving),
        ] {
            if value.is_some() {
                facts.push(Fact::new(key(part), label, value.as_ref()));
            }
        }
    }
    for (part, label, pins) in [
        ("pins", "fact-control-unit-pins", &sensor.pins),
        ("component_pins", "fact-component-pins", &sensor.component_pins),
    ] {
        if pins.is_none() {
            facts.push(Fact::new::<()>(key(part), label, None));
        }
    }
    facts
}

/// A multimeter's accuracies and input resistance.
pub(super) fn multimeter(id: &str, meter: &spec::Instrument) -> Vec<Fact> {
    let key = |part: &str| format!("instrument.{id}.{part}");
    let mut facts = ranges(&key("volts"), "fact-volts", &meter.volts);
    facts.extend(ranges(&key("ohms"), "fact-ohms", &meter.ohms));
    facts.push(Fact::new(key("input_resistance"), "fact-input", meter.input_resistance.as_ref()));
    facts.push(Fact::new(key("leads"), "fact-leads", meter.leads.as_ref()));
    facts
}

/// Accuracy and digit of each range; a function without any lacks both.
fn ranges<T>(key: &str, label: &'static str, written: &[spec::Range<T>]) -> Vec<Fact> {
    let facts = |key: String, range: Option<&spec::Range<T>>| {
        let accuracy = range.and_then(|range| range.accuracy.as_ref());
        let mut accuracy = Fact::new(format!("{key}.accuracy"), label, accuracy);
        if let Some(to) = range.and_then(|range| range.to.as_ref()) {
            accuracy.written = accuracy.written.map(|text| format!("{text} (≤ {})", to.written));
        }
        let digit = range.and_then(|range| range.resolution.as_ref());
        [accuracy, Fact::new(format!("{key}.resolution"), "fact-digit", digit)]
    };
    match written {
        [] => facts(key.to_owned(), None).into(),
        [range] => facts(key.to_owned(), Some(range)).into(),
        several => (several.iter().enumerate())
            .flat_map(|(index, range)| facts(format!("{key}.{}", index + 1), Some(range)))
            .collect(),
    }
}

/// A thermometer's accuracy, and its thermocouple where it has one.
pub(super) fn thermometer(id: &str, meter: &spec::Instrument) -> Vec<Fact> {
    let key = |part: &str| format!("instrument.{id}.{part}");
    let mut facts = vec![Fact::new(key("accuracy"), "fact-accuracy", meter.accuracy.as_ref())];
    // A thermometer without a thermocouple lacks nothing.
    if let Some(wire) = &meter.thermocouple {
        facts.push(Fact::new(key("thermocouple"), "fact-thermocouple", Some(wire)));
    }
    facts
}

/// How a shop decides and soaks. A rule is the shop's own and needs no source.
pub(super) fn shop(shop: &spec::Shop) -> Vec<Fact> {
    let own = |rule: &spec::At<spec::Decision>| match rule.value {
        spec::Decision::Simple => "simple".to_owned(),
        spec::Decision::Guarded => "guarded".to_owned(),
    };
    let written = shop.decision.as_ref().map(own);
    let source = Some(String::new());
    let decision = Fact { key: "shop.decision".to_owned(), label: "fact-decision", written, source };
    let guard =
        shop.guard.as_ref().map(|guard| Fact::new("shop.guard".to_owned(), "fact-guard", Some(guard)));
    let soak = plus_minus(Fact::new("shop.soak".to_owned(), "fact-soak", shop.soak.as_ref()));
    [Some(decision), guard, Some(soak)].into_iter().flatten().collect()
}

/// A distance to either side is shown with its sign, whether the user wrote it or not.
pub(super) fn plus_minus(fact: Fact) -> Fact {
    let written = fact.written.map(|text| {
        let signed = ["±", "+/-", "+-"].iter().any(|sign| text.starts_with(sign));
        if signed { text } else { format!("± {text}") }
    });
    Fact { written, ..fact }
}
