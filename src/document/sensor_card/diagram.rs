//! The topology drawing: how the control unit reads the sensor.

use schemars::JsonSchema;
use serde::Serialize;

use crate::document::ends::short;
use crate::document::said;
use crate::model::{Card, PinEnd, PinUse, Sensor};
use crate::spec::Topology;
use crate::words::{Message, Words};

/// What stands at the parts of the drawing.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Diagram {
    /// `pull-up` or `pull-down`.
    kind: &'static str,
    /// The reference: `5.00 V ± 2 %`.
    reference: String,
    /// The unit's own resistor: `4.7 kΩ ± 1 %`.
    resistor: String,
    /// A resistor in the signal line; may be empty.
    series: String,
    /// A resistor beside the sensor; may be empty.
    parallel: String,
    /// A second resistor that the unit switches beside the first.
    switched: String,
    /// Another unit on the line: its resistor, and where that leads.
    reader: Vec<String>,
    /// How far the return lies above the unit's ground.
    offset: String,
    /// The meter's input resistance: `10 MΩ`.
    meter: String,
    /// The unit's pin of the signal: `C2/8`; each pin may be empty.
    signal: String,
    /// The ground side of the meter: the return pin of a pull-up.
    #[serde(rename = "return")]
    ground: String,
    /// The pin that feeds the sensor of a pull-down.
    supply: String,
    /// The sensor's own pin of the signal: `S1/1`.
    sensor_signal: String,
    /// The sensor's own pin of the return.
    sensor_return: String,
    /// Which way the sensor's resistance goes with temperature, as its symbol says.
    coefficient: &'static str,
    /// What it shows, for readers who cannot see it.
    alt: String,
}

/// Composes the drawing; `None` where nobody said which side the sensor is on.
pub(super) fn compose(words: &Words, sensor: &Sensor, card: &Card) -> Option<Diagram> {
    let (kind, alt) = match sensor.topology? {
        Topology::PullUp => ("pull-up", "card-alt-pull-up"),
        Topology::PullDown => ("pull-down", "card-alt-pull-down"),
    };
    let fact = |labels: &[&str]| {
        let found = sensor.circuit_facts.iter().find(|fact| labels.contains(&fact.label));
        found.map(|fact| said(words, fact))
    };
    let pin = |end: &Option<PinEnd>, of: fn(&PinEnd) -> &Option<PinUse>| {
        let pin = end.as_ref().and_then(|end| of(end).as_ref());
        pin.map(|pin| short(&pin.name))
    };
    let or_missing = |text: Option<String>| text.unwrap_or_else(|| words.word("doc-not-given"));
    let reference = or_missing(fact(&["fact-reference"]));
    let resistor = or_missing(fact(&["fact-pull-up", "fact-pull-down"]));
    let signal = or_missing(pin(&sensor.control_unit, |end| &end.signal));
    let other = or_missing(pin(&sensor.control_unit, |end| &end.other));
    let alt = Message::new(alt)
        .with("reference", &reference)
        .with("resistor", &resistor)
        .with("signal", &signal)
        .with("other", &other);
    let more = [
        ("card-alt-switched", fact(&["fact-switched"])),
        ("card-alt-reader", fact(&["fact-reader"])),
        ("card-alt-offset", fact(&["fact-return-offset"])),
    ];
    let more =
        more.into_iter().filter_map(|(id, value)| Some(words.say(&Message::new(id).with("value", value?))));
    let (ground, supply) = match sensor.topology? {
        Topology::PullUp => (other, String::new()),
        Topology::PullDown => (pin(&sensor.control_unit, |end| &end.ground).unwrap_or_default(), other),
    };
    let input = card.meter.as_ref().and_then(|meter| meter.input);
    Some(Diagram {
        kind,
        coefficient: if sensor.curve.falls() { "−t°" } else { "+t°" },
        alt: std::iter::once(words.say(&alt)).chain(more).collect::<Vec<_>>().join(" "),
        series: fact(&["fact-series"]).unwrap_or_default(),
        parallel: fact(&["fact-parallel"]).unwrap_or_default(),
        switched: fact(&["fact-switched"]).unwrap_or_default(),
        reader: fact(&["fact-reader"])
            .map(|resistor| vec![resistor, fact(&["fact-reader-reference"]).unwrap_or_default()])
            .unwrap_or_default(),
        offset: fact(&["fact-return-offset"]).unwrap_or_default(),
        meter: input.map(|input| input.nominal.to_string()).unwrap_or_default(),
        sensor_signal: pin(&sensor.component, |end| &end.signal).unwrap_or_default(),
        sensor_return: pin(&sensor.component, |end| &end.other).unwrap_or_default(),
        reference,
        resistor,
        signal,
        ground,
        supply,
    })
}
