//! What a test expects, in the form that fits what is measured.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::diag::Place;
use crate::quantity::{
    Dimension, Duration, Frequency, Interval, Measured, Pressure, Ratio, Voltage, interval, measured, scalar,
    window,
};

/// What a good one reads.
#[derive(Debug, Clone)]
pub struct Expect {
    /// How it is stated.
    pub form: Option<At<Form>>,
    /// Which computed figure it is, where its limits are not written here.
    pub from: Option<At<Origin>>,
    /// Lowest and highest value.
    pub window: Option<Sourced<Interval<Measured>>>,
    /// The lowest value, where there is no highest.
    pub least: Option<Sourced<Measured>>,
    /// The highest value, where there is no lowest.
    pub most: Option<Sourced<Measured>>,
    /// What a ratio is taken to.
    pub to: Option<At<RatioTo>>,
    /// Which step of a blower.
    pub step: Option<Sourced<f64>>,
    /// The pressure that a transducer is at.
    pub at: Option<Sourced<Pressure>>,
    /// The two readings of a difference.
    pub of: Option<Vec<At<String>>>,
    /// A sweep.
    pub sweep: SweepKeys,
    /// The steps of a sequence.
    pub steps: Vec<SequenceStep>,
    /// What stands over the columns of a truth table.
    pub columns: Option<Vec<At<String>>>,
    /// The rows of a truth table.
    pub rows: Vec<TruthRow>,
    /// A waveform.
    pub wave: WaveKeys,
    /// Whether a key stands there that could not be read.
    pub misread: bool,
    /// Where the table stands.
    pub place: Place,
}

/// How an expectation is stated.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Form {
    /// A computed curve with its tolerance, at the temperature of the bay.
    Curve,
    /// Between two limits.
    Window,
    /// Below or above one limit.
    Limit,
    /// A part of the battery's or the reference's voltage, both read at the moment.
    Ratio,
    /// For each position or control point one state.
    TruthTable,
    /// From one end to the other, one way all along.
    Sweep,
    /// Events one after the other, each with its delay.
    Sequence,
    /// How far two readings may be apart.
    Difference,
    /// Frequency, duty and levels of a switched line.
    Waveform,
}

impl Form {
    const WORDS: &'static [(&'static str, Self)] = &[
        ("curve", Self::Curve),
        ("window", Self::Window),
        ("limit", Self::Limit),
        ("ratio", Self::Ratio),
        ("truth table", Self::TruthTable),
        ("sweep", Self::Sweep),
        ("sequence", Self::Sequence),
        ("difference", Self::Difference),
        ("waveform", Self::Waveform),
    ];

    /// How specs name it.
    #[must_use]
    pub fn word(self) -> &'static str {
        Self::WORDS.iter().find(|(_, form)| *form == self).map_or("", |(word, _)| word)
    }
}

/// A figure that the component itself has: computed, or in its own table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    /// A sensor's line with the sensor unplugged.
    Unplugged,
    /// An actuator's feedback at the stop with fewer volts.
    LowStop,
    /// At the stop with more volts.
    HighStop,
    /// An actuator's feedback track from end to end.
    Track,
    /// An actuator's motor, running free.
    MotorCurrent,
    /// An actuator's travel from stop to stop.
    Travel,
    /// An actuator's position contacts.
    Contacts,
    /// A load's coil to its case.
    Isolation,
    /// What may be lost from battery positive to a load.
    SupplyDrop,
    /// What may be lost from a load to battery negative.
    GroundDrop,
    /// What may be lost along a wire.
    WireDrop,
    /// A blower's step, as a part of the battery.
    BlowerStep,
    /// A light sensor between dark and light.
    Span,
    /// The reference of a system.
    Reference,
    /// The battery of a system.
    Battery,
    /// What a panel mode forces.
    Mode,
}

impl Origin {
    /// How specs name each.
    pub const WORDS: &'static [(&'static str, Self)] = &[
        ("unplugged", Self::Unplugged),
        ("low stop", Self::LowStop),
        ("high stop", Self::HighStop),
        ("track", Self::Track),
        ("motor current", Self::MotorCurrent),
        ("travel", Self::Travel),
        ("contacts", Self::Contacts),
        ("isolation", Self::Isolation),
        ("supply drop", Self::SupplyDrop),
        ("ground drop", Self::GroundDrop),
        ("wire drop", Self::WireDrop),
        ("blower step", Self::BlowerStep),
        ("span", Self::Span),
        ("reference", Self::Reference),
        ("battery", Self::Battery),
        ("mode", Self::Mode),
    ];

    /// How specs name it.
    #[must_use]
    pub fn word(self) -> &'static str {
        Self::WORDS.iter().find(|(_, origin)| *origin == self).map_or("", |(word, _)| word)
    }
}

/// What a ratio is taken to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum RatioTo {
    /// The battery at the moment.
    Battery,
    /// The reference at the moment.
    Reference,
}

/// The keys of a sweep.
#[derive(Debug, Clone, Default)]
pub struct SweepKeys {
    /// Where it starts.
    pub start: Option<Sourced<Interval<Measured>>>,
    /// Where it ends.
    pub end: Option<Sourced<Interval<Measured>>>,
    /// The longest time.
    pub time: Option<Sourced<Duration>>,
    /// The largest step.
    pub largest_step: Option<Sourced<Measured>>,
}

/// The keys of a waveform.
#[derive(Debug, Clone, Default)]
pub struct WaveKeys {
    /// How often it is switched.
    pub frequency: Option<Sourced<Interval<Frequency>>>,
    /// The part of the time at the high level.
    pub duty: Option<Sourced<Interval<Ratio>>>,
    /// The high level.
    pub high: Option<Sourced<Interval<Voltage>>>,
    /// The low level.
    pub low: Option<Sourced<Interval<Voltage>>>,
}

/// One event of a sequence.
#[derive(Debug, Clone)]
pub struct SequenceStep {
    /// What is done or watched.
    pub event: At<String>,
    /// What is expected.
    pub expect: At<String>,
    /// How long after the step before, at least and at most.
    pub after: Option<Sourced<Interval<Duration>>>,
    /// How long after the step before, at most.
    pub within: Option<Sourced<Duration>>,
}

/// One row of a truth table.
#[derive(Debug, Clone)]
pub struct TruthRow {
    /// The position.
    pub name: At<String>,
    /// The state in each column.
    pub values: Vec<At<String>>,
    /// Where the row stands.
    pub place: Place,
}

impl Expect {
    /// Reads the keys of its form; those of another form stay unknown and are found.
    pub(super) fn read(reader: &Reader<'_>, dimension: Option<Dimension>) -> Self {
        reader.require(&["form"]);
        let form = reader.choice("form", Form::WORDS);
        let is = |wanted: &[Form]| form.as_ref().is_none_or(|form| wanted.contains(&form.value));
        // A ratio is read in percent, whatever its two readings are in.
        let wanted = match form.as_ref().map(|form| form.value) {
            Some(Form::Ratio) => Dimension::Ratio,
            _ => dimension.unwrap_or(Dimension::Voltage),
        };
        let one = |key| reader.sourced(key, |text| measured(text, wanted));
        let two = |key| reader.sourced(key, |text| window(text, wanted));
        let limited = is(&[Form::Limit, Form::Difference]);
        let mut expect = Self {
            misread: false,
            from: if is(&[Form::Curve, Form::Sequence]) {
                None
            } else {
                reader.choice("from", Origin::WORDS)
            },
            window: is(&[Form::Window, Form::Ratio, Form::Difference]).then(|| two("window")).flatten(),
            least: limited.then(|| one("least")).flatten(),
            most: limited.then(|| one("most")).flatten(),
            to: is(&[Form::Ratio]).then(|| reader.choice("to", RATIO_TO)).flatten(),
            step: is(&[Form::Ratio]).then(|| reader.number("step")).flatten(),
            at: is(&[Form::Curve]).then(|| reader.sourced("at", scalar)).flatten(),
            of: is(&[Form::Difference]).then(|| reader.all_texts("of")).flatten(),
            sweep: if is(&[Form::Sweep]) {
                SweepKeys {
                    start: two("start"),
                    end: two("end"),
                    time: reader.sourced("time", scalar),
                    largest_step: one("largest_step"),
                }
            } else {
                SweepKeys::default()
            },
            steps: if is(&[Form::Sequence]) {
                reader.tables("steps").iter().filter_map(SequenceStep::read).collect()
            } else {
                Vec::new()
            },
            columns: is(&[Form::TruthTable]).then(|| reader.all_texts("columns")).flatten(),
            rows: if is(&[Form::TruthTable]) {
                reader.tables("rows").iter().filter_map(TruthRow::read).collect()
            } else {
                Vec::new()
            },
            wave: if is(&[Form::Waveform]) { WaveKeys::read(reader) } else { WaveKeys::default() },
            place: reader.place.clone(),
            form,
        };
        expect.misread = expect.unread(reader);
        reader.finish();
        expect
    }

    /// Whether a key of its form is there, but not its value.
    fn unread(&self, reader: &Reader<'_>) -> bool {
        let keys = [
            ("from", self.from.is_some()),
            ("window", self.window.is_some()),
            ("least", self.least.is_some()),
            ("most", self.most.is_some()),
            ("to", self.to.is_some()),
            ("step", self.step.is_some()),
            ("at", self.at.is_some()),
            ("of", self.of.is_some()),
            ("start", self.sweep.start.is_some()),
            ("end", self.sweep.end.is_some()),
            ("steps", !self.steps.is_empty()),
            ("columns", self.columns.is_some()),
            ("rows", !self.rows.is_empty()),
            ("frequency", self.wave.frequency.is_some()),
            ("duty", self.wave.duty.is_some()),
        ];
        keys.into_iter().any(|(key, is_read)| reader.has(key) && !is_read)
    }
}

const RATIO_TO: &[(&str, RatioTo)] = &[("battery", RatioTo::Battery), ("reference", RatioTo::Reference)];

impl WaveKeys {
    fn read(reader: &Reader<'_>) -> Self {
        Self {
            frequency: reader.sourced("frequency", interval),
            duty: reader.sourced("duty", interval),
            high: reader.sourced("high", interval),
            low: reader.sourced("low", interval),
        }
    }
}

impl SequenceStep {
    fn read(reader: &Reader<'_>) -> Option<Self> {
        reader.require(&["event", "expect"]);
        let step = (
            reader.text("event"),
            reader.text("expect"),
            reader.sourced("after", interval),
            reader.sourced("within", scalar),
        );
        reader.finish();
        let (event, expect, after, within) = step;
        Some(Self { event: event?, expect: expect?, after, within })
    }
}

impl TruthRow {
    fn read(reader: &Reader<'_>) -> Option<Self> {
        reader.require(&["name", "values"]);
        let (name, values) = (reader.text("name"), reader.all_texts("values"));
        let place = reader.place.clone();
        reader.finish();
        Some(Self { name: name?, values: values?, place })
    }
}
