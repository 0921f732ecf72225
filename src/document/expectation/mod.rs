//! What a test expects as text: the window, what stands under it, what is written down.
//!
//! One `Expectation` for every form, so that a sheet, a checklist and a report say the same.

#[cfg(test)]
mod inward;
mod limits;
mod sensor;
mod steps;
mod wave;

use schemars::JsonSchema;
use serde::Serialize;

use super::Context;
use super::sensor_card::reading::Readings;
use crate::model::{Bounds, Expect, Fact, Multimeter, Shop, Test, TestSweep, Thermometer};
use crate::physics::circuit::Probe;
use crate::spec::{Measure, Origin, RatioTo, Reads, Spot, Thing, Where};
use crate::words::{Message, Words};
use limits::Shown;
pub(super) use sensor::{Asked, facts_with_pins, unit_of};
pub(super) use steps::StepRow;
pub(super) use wave::Sketch;

/// The instruments that ± assumes.
#[derive(Clone, Copy)]
pub(super) struct Tools<'a> {
    pub shop: &'a Shop,
    pub thermometer: Option<&'a Thermometer>,
    pub meter: Option<&'a Multimeter>,
}

/// What a test expects.
#[derive(Debug, Default)]
pub(super) struct Expectation {
    /// The window, to be the boldest thing of its row.
    pub main: String,
    /// Its unit; empty where there is no figure.
    pub unit: String,
    /// Lines under it.
    pub subs: Vec<String>,
    /// The unit in the box of the row; `None` where no one reading stands for the test.
    pub reading: Option<String>,
    /// What else is written down.
    pub fields: Vec<Field>,
    /// Rows of their own, each with a box.
    pub steps: Vec<StepRow>,
    /// A switched line as it should look.
    pub sketch: Option<Sketch>,
}

/// One more box to write in.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema)]
pub(super) struct Field {
    /// What belongs into it.
    pub label: String,
    /// What is expected there; empty where it is only needed for the result.
    pub window: String,
    /// The unit printed in it: `V`.
    pub unit: String,
}

/// What a test expects in a bay of the context's temperature.
pub(super) fn of(context: Context<'_>, test: &Test, tools: Tools<'_>, card: Option<&str>) -> Expectation {
    let Context { words, .. } = context;
    let tools = Tools { meter: test.instrument.as_ref().or(tools.meter), ..tools };
    let asked = Form { context, test, tools };
    match &test.expect {
        Expect::Curve(_) => asked.curve(card),
        Expect::Window(Bounds::Of(Origin::Unplugged)) => asked.of_sensor(Measure::OpenVoltage, card),
        Expect::Window(bounds) | Expect::Limit(bounds) => asked.limited(bounds),
        Expect::Ratio(to, bounds) => asked.ratio(*to, bounds),
        Expect::Difference(of, bounds) => asked.difference(of, bounds),
        Expect::Sweep(sweep) => asked.sweep(sweep),
        Expect::Sequence(events) => asked.in_steps(steps::of_sequence(words, events)),
        Expect::TruthTable(columns, rows) => asked.in_steps(steps::of_rows(columns, rows)),
        Expect::TruthOf(Origin::Mode) => asked.in_steps(steps::of_mode(context, test)),
        Expect::TruthOf(_) => asked.in_steps(steps::of_contacts(context, test)),
        Expect::Wave(wave) => wave::of(words, wave),
    }
}

/// The facts behind what a test expects: its own, and those of its component.
pub(super) fn facts<'a>(context: Context<'a>, test: &'a Test) -> Vec<&'a Fact> {
    let model = context.model;
    let wanted: &[&str] = match &test.expect {
        Expect::Curve(_) if test.thing == Thing::Sensor => return with_sensor(context, test),
        Expect::Window(Bounds::Of(Origin::Unplugged)) => return with_sensor(context, test),
        Expect::Curve(_) => &[
            "fact-rated-resistance",
            "fact-rated-temperature",
            "fact-line-low-pressure",
            "fact-line-low-ratio",
            "fact-line-high-pressure",
            "fact-line-high-ratio",
            "fact-span-accuracy",
            "fact-reference",
        ],
        Expect::Window(Bounds::Of(Origin::LowStop)) | Expect::Ratio(_, Bounds::Of(Origin::LowStop)) => {
            &["fact-stop-low", "fact-reference", "fact-reference-tolerance"]
        }
        Expect::Window(Bounds::Of(Origin::HighStop)) | Expect::Ratio(_, Bounds::Of(Origin::HighStop)) => {
            &["fact-stop-high", "fact-reference", "fact-reference-tolerance"]
        }
        Expect::Window(Bounds::Of(Origin::Track)) => &["fact-track", "fact-track-ends"],
        Expect::Ratio(_, Bounds::Step(_)) => &[
            "fact-blower-steps",
            "fact-step-tolerance",
            "fact-blower-resistors",
            "fact-motor-current",
            "fact-blower-wiring",
        ],
        Expect::Sweep(TestSweep::Travel) => {
            &["fact-stop-low", "fact-stop-high", "fact-reference", "fact-sweep-time", "fact-sweep-step"]
        }
        Expect::TruthOf(Origin::Contacts) => &[
            "fact-positions",
            "fact-contact-closed",
            "fact-pull-up",
            "fact-ladder-resistor",
            "fact-reference",
        ],
        _ => &[],
    };
    let of_component: &[Fact] = match test.thing {
        Thing::Actuator => model.actuators.get(&test.component).map_or(&[], |part| &part.facts),
        Thing::Driver => model.drivers.get(&test.component).map_or(&[], |part| &part.facts),
        Thing::Light => model.lights.get(&test.component).map_or(&[], |part| &part.facts),
        Thing::Transducer => model.transducers.get(&test.component).map_or(&[], |part| &part.facts),
        _ => &[],
    };
    let of_mode = test.mode.as_ref().filter(|_| matches!(test.expect, Expect::TruthOf(Origin::Mode)));
    let of_mode = of_mode.and_then(|(id, _)| {
        model
            .mode_sets
            .get(&test.system)?
            .modes
            .iter()
            .find(|mode| mode.id == *id)
            .map(|mode| &mode.facts[..])
    });
    let of_component = of_component.iter().filter(|fact| wanted.contains(&fact.label));
    test.facts
        .iter()
        .chain(of_component)
        .chain(of_mode.unwrap_or_default())
        .chain(probe_facts(test))
        .collect()
}

fn probe_facts(test: &Test) -> impl Iterator<Item = &Fact> {
    let pins = test.probes.iter().flatten().map(|probe| &probe.fact);
    pins.chain(test.end.iter().flat_map(|end| &end.missing))
}

fn with_sensor<'a>(context: Context<'a>, test: &'a Test) -> Vec<&'a Fact> {
    let Some(sensor) = context.model.sensors.get(&test.component) else { return Vec::new() };
    let measure = if matches!(test.expect, Expect::Curve(_)) && test.reads == Reads::Resistance {
        Measure::Resistance
    } else if matches!(test.expect, Expect::Curve(_)) {
        Measure::Voltage
    } else {
        Measure::OpenVoltage
    };
    let behind = sensor::facts(sensor, measure);
    test.facts.iter().chain(behind).chain(probe_facts(test)).collect()
}

/// One test, about to be said.
struct Form<'a> {
    context: Context<'a>,
    test: &'a Test,
    tools: Tools<'a>,
}

impl Form<'_> {
    fn curve(&self, card: Option<&str>) -> Expectation {
        match self.test.thing {
            Thing::Sensor if self.test.reads == Reads::Resistance => {
                self.of_sensor(Measure::Resistance, card)
            }
            Thing::Sensor => self.of_sensor(Measure::Voltage, card),
            Thing::Driver if self.context.bay.is_none() => Expectation {
                main: String::new(),
                subs: vec![self.words().word("sheet-no-bay-coil")],
                reading: Some("Ω".to_owned()),
                ..Expectation::default()
            },
            _ => match limits::of_curve(self.context, self.test) {
                Some(shown) => self.window(shown),
                None => self.not_given(limits::unit_of(self.context.units, self.test.reads)),
            },
        }
    }

    fn of_sensor(&self, measure: Measure, card: Option<&str>) -> Expectation {
        let Context { model, words, bay, units, .. } = self.context;
        let Some(sensor) = model.sensors.get(&self.test.component) else { return Expectation::default() };
        let place = match self.test.place {
            Where::Component => Spot::Sensor,
            _ => Spot::ControlUnit,
        };
        let probe = match place {
            Spot::Sensor => Probe::Sensor,
            Spot::ControlUnit => Probe::ControlUnit,
        };
        let readings = Readings::at(sensor, self.tools.meter, probe);
        let asked = Asked { words, units, tools: self.tools, readings: &readings, measure, place, card };
        let found = asked.expected(bay);
        let unit = sensor::unit_of(measure);
        let subs = [found.sub, found.sub2, found.sub3].into_iter().filter(|sub| !sub.is_empty());
        Expectation {
            unit: if found.is_window { unit.to_owned() } else { String::new() },
            main: found.main,
            subs: subs.collect(),
            reading: Some(unit.to_owned()),
            ..Expectation::default()
        }
    }

    fn limited(&self, bounds: &Bounds) -> Expectation {
        match limits::of(self.context, self.test, bounds) {
            Some(shown) => self.window(shown),
            None => self.not_given(limits::unit_of(self.context.units, self.test.reads)),
        }
    }

    fn window(&self, shown: Shown) -> Expectation {
        let doubt = shown.undecided(self.words(), self.test.reads, self.tools);
        Expectation {
            main: shown.text(),
            reading: Some(shown.unit.clone()),
            unit: shown.unit,
            subs: doubt.into_iter().collect(),
            ..Expectation::default()
        }
    }

    fn not_given(&self, unit: &str) -> Expectation {
        Expectation {
            main: self.words().word("doc-not-given"),
            reading: Some(unit.to_owned()),
            ..Expectation::default()
        }
    }

    fn ratio(&self, to: RatioTo, bounds: &Bounds) -> Expectation {
        let words = self.words();
        let whole = words.word(match to {
            RatioTo::Battery => "sheet-of-battery",
            RatioTo::Reference => "sheet-of-reference",
        });
        let mut all = match limits::of_ratio(self.context, self.test, bounds) {
            Some(shown) => Expectation { main: shown.text(), unit: "%".to_owned(), ..Expectation::default() },
            None => Expectation { main: words.word("doc-not-given"), ..Expectation::default() },
        };
        all.subs = vec![words.say(&Message::new("sheet-ratio").with("whole", &whole))];
        all.reading = Some("%".to_owned());
        let field = |label: String| Field { label, window: String::new(), unit: "V".to_owned() };
        let (first, second) = ("sheet-field-a", "sheet-field-b");
        all.fields = vec![
            field(words.say(&Message::new(first).with("what", words.word("sheet-reading-here")))),
            field(words.say(&Message::new(second).with("what", whole))),
        ];
        all
    }

    fn difference(&self, of: &[String; 2], bounds: &Bounds) -> Expectation {
        let words = self.words();
        let mut all = self.limited(bounds);
        let unit = all.reading.clone().unwrap_or_default();
        let signed = matches!(bounds, Bounds::Given { low: Some(_), high: Some(_) });
        // The uncertainty of a difference is not that of one reading: it is not printed.
        all.subs = vec![words.word(if signed { "sheet-difference-signed" } else { "sheet-difference" })];
        let field = |id: &'static str, what: &String| Field {
            label: words.say(&Message::new(id).with("what", what)),
            window: String::new(),
            unit: unit.clone(),
        };
        all.fields = vec![field("sheet-field-a", &of[0]), field("sheet-field-b", &of[1])];
        all
    }

    fn sweep(&self, sweep: &TestSweep) -> Expectation {
        let words = self.words();
        let found = limits::of_sweep(self.context, self.test, sweep);
        let not_given = || words.word("doc-not-given");
        let field = |label: &str, what: Option<&String>, shown: Option<&Shown>| {
            let label = words.word(label);
            Field {
                label: what.map_or(label.clone(), |what| format!("{label}, {what}")),
                window: shown.map_or_else(not_given, Shown::with_unit),
                unit: shown.map_or("V", |shown| &shown.unit).to_owned(),
            }
        };
        let mut fields = vec![
            field("sheet-sweep-start", found.names[0].as_ref(), found.start.as_ref()),
            field("sheet-sweep-end", found.names[1].as_ref(), found.end.as_ref()),
        ];
        if let Some(step) = &found.largest_step {
            fields.push(field("sheet-sweep-step", None, Some(step)));
        }
        Expectation {
            main: found.time.as_ref().map_or_else(not_given, Shown::text),
            unit: found.time.as_ref().map(|time| time.unit.clone()).unwrap_or_default(),
            subs: vec![words.word(if found.rises { "sheet-sweep-rises" } else { "sheet-sweep-falls" })],
            reading: Some("s".to_owned()),
            fields,
            ..Expectation::default()
        }
    }

    fn in_steps(&self, (head, rows): (String, Vec<StepRow>)) -> Expectation {
        let words = self.words();
        let (Some(first), Some(last)) = (rows.first(), rows.last()) else {
            return Expectation { main: words.word("doc-not-given"), ..Expectation::default() };
        };
        let all = Message::new("sheet-all-steps").with("first", &first.mark).with("last", &last.mark);
        let main = words.say(&all);
        let subs = if head.is_empty() { Vec::new() } else { vec![head] };
        Expectation { main, subs, steps: rows, ..Expectation::default() }
    }

    fn words(&self) -> &Words {
        self.context.words
    }
}
