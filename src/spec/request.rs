//! `[request.ID]`: a request, what permits or inhibits it, and a scenario to see it work.

use super::reader::{Pair, Reader};
use super::value::{At, Sourced};
use crate::diag::Place;
use crate::physics::request::{Effect, Side};
use crate::quantity::{
    Current, Dimension, Duration, Frequency, Interval, Misread, Pressure, Scalar, Temperature, Voltage,
    interval, ratio, scalar,
};

/// A request, such as the one for the compressor.
#[derive(Debug, Clone)]
pub struct Request {
    /// What it is called.
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// The pin that carries it, as `connector/pin`.
    pub line: Option<Sourced<String>>,
    /// How long it and all its conditions must stand before it is granted.
    pub hold: Option<Sourced<Duration>>,
    /// What a technician reads while nobody asks.
    pub absent: Option<Sourced<String>>,
    /// What a technician reads while it stands and is not granted.
    pub waiting: Option<Sourced<String>>,
    /// What a technician reads while it is granted.
    pub granted: Option<Sourced<String>>,
    /// Its conditions, in the order in which they are looked at.
    pub conditions: Vec<Condition>,
    /// What happens, to see it work.
    pub scenario: Option<Scenario>,
}

/// One condition.
#[derive(Debug, Clone)]
pub struct Condition {
    /// What it is called, such as "Evaporator too cold".
    pub title: Option<At<String>>,
    /// Whether it permits or inhibits.
    pub effect: Option<At<Effect>>,
    /// What watches its value: one of these.
    pub watch: Vec<(Watch, At<String>)>,
    /// What is watched.
    pub quantity: Option<At<Dimension>>,
    /// On which side of its threshold it is set.
    pub side: Option<At<Side>>,
    /// Where it is set.
    pub threshold: Option<Sourced<Level>>,
    /// Where it lets go.
    pub release: Option<Sourced<Level>>,
    /// How long the value must be past the threshold.
    pub delay: Option<Sourced<Duration>>,
    /// How long the value must be past the release threshold.
    pub release_delay: Option<Sourced<Duration>>,
    /// What the value does in the scenario.
    pub trace: Option<Vec<Pair<Duration, Level>>>,
    /// Whether a trace stands there that could not be read.
    pub trace_misread: bool,
    /// Where it stands.
    pub place: Place,
}

/// What watches a value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Watch {
    /// A temperature sensor of the set.
    Sensor,
    /// A pressure transducer of the set.
    Transducer,
    /// A reading by its name: another control unit's, seen as live data.
    Reading,
}

impl Watch {
    /// Every one, with the key that names it in a spec.
    pub const ALL: &[(&str, Self)] =
        &[("sensor", Self::Sensor), ("transducer", Self::Transducer), ("reading", Self::Reading)];
}

/// A scenario: when the request stands, and for how long it is looked at.
#[derive(Debug, Clone)]
pub struct Scenario {
    /// What it is called.
    pub title: Option<At<String>>,
    /// How long it is.
    pub length: Option<Sourced<Duration>>,
    /// When the request stands.
    pub requested: Option<Vec<Sourced<Interval<Duration>>>>,
    /// Where it stands.
    pub place: Place,
}

/// A threshold, or a point of a trace.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Level {
    /// What it measures.
    pub dimension: Dimension,
    /// In the SI unit; degrees Celsius for a temperature, in which whole degrees are exact.
    pub number: f64,
}

/// What conditions may watch, by the word for it.
const QUANTITIES: &[(&str, Dimension)] = &[
    ("temperature", Dimension::Temperature),
    ("pressure", Dimension::Pressure),
    ("voltage", Dimension::Voltage),
    ("current", Dimension::Current),
    ("speed", Dimension::Frequency),
    ("part", Dimension::Ratio),
];

impl Level {
    fn read(text: &str, dimension: Dimension) -> Result<Self, Misread> {
        fn si<T: Scalar + crate::quantity::Quantity>(text: &str) -> Result<f64, Misread> {
            Ok(scalar::<T>(text)?.si())
        }
        let number = match dimension {
            Dimension::Temperature => scalar::<Temperature>(text)?.celsius(),
            Dimension::Pressure => si::<Pressure>(text)?,
            Dimension::Voltage => si::<Voltage>(text)?,
            Dimension::Current => si::<Current>(text)?,
            Dimension::Frequency => si::<Frequency>(text)?,
            _ => ratio(text)?.part(),
        };
        Ok(Self { dimension, number })
    }
}

impl Request {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "condition"]);
        let reads = reader.table("reads");
        let text = |key| reads.as_ref().and_then(|reads| reads.sourced_text(key));
        let (absent, waiting, granted) = (text("absent"), text("waiting"), text("granted"));
        if let Some(reads) = reads {
            reads.finish();
        }
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            line: reader.sourced_text("line"),
            hold: reader.sourced("hold", scalar),
            absent,
            waiting,
            granted,
            conditions: reader.tables("condition").iter().map(Condition::read).collect(),
            scenario: reader.table("scenario").map(|scenario| Scenario::read(&scenario)),
        }
    }
}

impl Condition {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "effect", "quantity", "side"]);
        let watch = Watch::ALL.iter().filter_map(|(key, watch)| Some((*watch, reader.text(key)?))).collect();
        reader.require_one_of(Watch::ALL.iter().map(|(key, _)| *key));
        let quantity = reader.choice("quantity", QUANTITIES);
        // Without knowing what is watched its values stay unread: the finding is the quantity's.
        let dimension = quantity.as_ref().map(|quantity| quantity.value);
        let level = |key| match dimension {
            Some(dimension) => reader.sourced(key, |text| Level::read(text, dimension)),
            None => reader.sourced(key, |_| Ok(())).and(None),
        };
        let trace = match dimension {
            Some(dimension) => reader.pairs("trace", scalar, |text| Level::read(text, dimension)),
            None => reader.pairs("trace", scalar::<Duration>, |_| Ok(())).and(None),
        };
        let condition = Self {
            title: reader.text("title"),
            effect: reader.choice("effect", &[("permits", Effect::Permits), ("inhibits", Effect::Inhibits)]),
            watch,
            side: reader.choice("side", &[("above", Side::Above), ("below", Side::Below)]),
            threshold: level("threshold"),
            release: level("release"),
            delay: reader.sourced("delay", scalar),
            release_delay: reader.sourced("release_delay", scalar),
            trace_misread: reader.has("trace") && trace.is_none(),
            trace,
            quantity,
            place: reader.place.clone(),
        };
        reader.finish();
        condition
    }

    /// The id of what watches it, where that is one of this kind.
    #[must_use]
    pub fn of(&self, kind: Watch) -> Option<&At<String>> {
        self.watch.iter().find(|(watch, _)| *watch == kind).map(|(_, id)| id)
    }
}

impl Scenario {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "length", "requested"]);
        let scenario = Self {
            title: reader.text("title"),
            length: reader.sourced("length", scalar),
            requested: reader.sourced_list("requested", interval),
            place: reader.place.clone(),
        };
        reader.finish();
        scenario
    }
}
