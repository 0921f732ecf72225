//! The fault dictionary of an actuator's feedback potentiometer.

use super::Ask;
use super::dictionary::{self, Block, Dictionary, Entry, Good, widened};
use crate::document::bench::Kit;
use crate::document::figures;
use crate::document::table::{Cell, Column, Show, Table};
use crate::model::{Actuator, Model, RolePin, Stops};
use crate::physics::potentiometer::fault::{Fault, FaultReading, FaultWindow};
use crate::physics::potentiometer::{self, Feedback, Ohms};
use crate::physics::uncertainty::{Instruments, meter_ohms, meter_volts};
use crate::quantity::{Interval, Ratio, Resistance, Rounding, Toleranced, Voltage, figure};
use crate::spec::Role;
use crate::words::{Message, Words};

/// Volts, and ohms between two of the three wires: of what, and how it is called.
const TESTS: [&str; 4] = ["V", "sig–ret", "sig–ref", "ref–ret"];

/// Facts of an actuator that no reading of its feedback rests on.
const OTHER_FACTS: [&str; 6] = ["moves", "sweep.", "motor", "recalibration", "contacts.", "ladder."];

/// The dictionary of an actuator's feedback.
pub(super) fn of(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let actuator = model.actuators.get(id).ok_or_else(|| Message::new("run-no-faults").with("id", id))?;
    let without_feedback = actuator.feedback.is_none();
    if without_feedback && (actuator.contacts.is_some() || actuator.ladder.is_some()) {
        return Err(Message::new("run-faults-contacts").with("id", id));
    }
    let not_given = |key| Message::new("run-faults-not-given").with("id", id).with("what", key);
    let feedback = actuator.feedback.as_ref().ok_or_else(|| not_given("feedback"))?;
    let stops = actuator.stops.as_ref().ok_or_else(|| not_given("stops"))?;
    let kit = Kit::of_system(model, ask.instruments, &actuator.system)?;
    let known = kit.instruments();
    let pot = Pot {
        words,
        feedback,
        stops,
        meter: known.input,
        volts: Instruments { meter: known.volts, ..Instruments::default() },
        ohms: Instruments { meter: known.ohms, leads: known.leads, ..Instruments::default() },
    };
    let positions = ask.position.map_or_else(|| vec![Ratio::new(0.0), Ratio::new(1.0)], |at| vec![at]);
    let dictionary = Dictionary {
        condition: Some(Column::new(
            "position_percent",
            words.word("faults-position"),
            Show::Decimals(0, Rounding::Nearest),
        )),
        shown: pot.columns(),
        tests: TESTS.to_vec(),
        blocks: positions.iter().map(|at| pot.block(*at)).collect(),
    };
    let read = |pin: &&RolePin| matches!(pin.role, Role::Signal | Role::Reference | Role::Return);
    let pins = actuator.unit_pins().filter(read).flat_map(|pin| pin.pin.facts());
    Ok(Table {
        title: actuator.title.clone(),
        notes: pot.notes(actuator, &kit, &positions),
        columns: dictionary.columns(words),
        rows: dictionary.rows(words),
        formulas: ["faults-formula-reading", "faults-formula-position"]
            .into_iter()
            .chain(["faults-formula-separable", "faults-formula-sizes"])
            .map(|id| words.word(id))
            .collect(),
        inputs: dictionary::inputs(actuator.facts.iter().chain(pins), &OTHER_FACTS, &kit),
    })
}

struct Pot<'a> {
    words: &'a Words,
    feedback: &'a Feedback,
    stops: &'a Stops,
    meter: Option<Toleranced<Resistance>>,
    volts: Instruments,
    ohms: Instruments,
}

/// A nominal reading in each test, and what the control unit believes.
#[derive(Default, Clone, Copy)]
struct Nominal {
    volts: Option<f64>,
    /// In the order of [`TESTS`]; infinite is an open circuit.
    ohms: [Option<f64>; 3],
    believed: Option<f64>,
}

impl Pot<'_> {
    fn columns(&self) -> Vec<Column> {
        let ohms = |key, id: &str| Column::new(key, self.words.word(id), Show::Digits(Rounding::Nearest));
        // A faulty part may read anything between these, so they are rounded outward.
        let volts =
            |key, id: &str, rounding| Column::new(key, self.words.word(id), Show::Decimals(3, rounding));
        let percent = Show::Decimals(1, Rounding::Nearest);
        vec![
            ohms("resistance_ohm", "faults-ohms-to-return"),
            ohms("resistance_to_reference_ohm", "faults-ohms-to-reference"),
            ohms("resistance_end_to_end_ohm", "faults-ohms-end-to-end"),
            volts("voltage_min_v", "faults-volts-min", Rounding::Down),
            dictionary::voltage(self.words),
            volts("voltage_max_v", "faults-volts-max", Rounding::Up),
            dictionary::believed_temperature(),
            Column::new("believed_position_percent", self.words.word("faults-believed-position"), percent),
        ]
    }

    fn block(&self, at: Ratio) -> Block {
        Block {
            condition: Some(100.0 * at.part()),
            good: self.widened(self.window(None, at)),
            entries: Fault::dictionary().into_iter().map(|fault| self.entry(fault, at)).collect(),
        }
    }

    fn entry(&self, fault: Fault, at: Ratio) -> Entry {
        let nominal = self.nominal(fault, at);
        let window = self.window(Some(fault), at);
        let volts = self.volts_of(window);
        let ohms = |index: usize| dictionary::ohms(self.words, nominal.ohms[index]);
        let (key, id, size) = named(fault);
        Entry {
            fault: (key, self.words.word(id)),
            size,
            shown: vec![
                ohms(0),
                ohms(1),
                ohms(2),
                Cell::from(volts.map(|volts| volts.low)),
                Cell::from(nominal.volts),
                Cell::from(volts.map(|volts| volts.high)),
                Cell::Missing,
                Cell::from(nominal.believed),
            ],
            windows: self.widened(window),
        }
    }

    /// The nominal stops, where both were given.
    fn nominal_stops(&self) -> Option<potentiometer::Stops> {
        Some(potentiometer::Stops { low: self.stops.low.nominal?, high: self.stops.high.nominal? })
    }

    /// The nominal readings of a fault. Without nominal stops nobody knows where the
    /// wiper stands: what reads the same at both ends of the track is left.
    fn nominal(&self, fault: Fault, at: Ratio) -> Nominal {
        let read = |place: Ratio| {
            let read = |meter| self.feedback.with_fault(fault, place, self.nominal_stops(), meter).ok();
            Some((read(self.meter)?, read(None)?.believed))
        };
        let nominal = |found: Option<(FaultReading, Option<Ratio>)>| {
            let Some((reading, believed)) = found else { return Nominal::default() };
            let ohms = |ohms: Option<Resistance>| Some(ohms.map_or(f64::INFINITY, Resistance::ohms));
            Nominal {
                volts: reading.voltage.map(Voltage::volts),
                ohms: [ohms(reading.to_low), ohms(reading.to_high), ohms(reading.total)],
                believed: believed.map(|part| 100.0 * part.part()),
            }
        };
        if let Some(stops) = self.nominal_stops() {
            return nominal(self.feedback.place(at, stops).ok().and_then(read));
        }
        let [one, other] = [0.0, 1.0].map(|place| nominal(read(Ratio::new(place))));
        let same = |one: Option<f64>, other: Option<f64>| {
            one.zip(other).filter(|(one, other)| one.total_cmp(other).is_eq()).map(|(one, _)| one)
        };
        Nominal {
            volts: same(one.volts, other.volts),
            ohms: [0, 1, 2].map(|index| same(one.ohms[index], other.ohms[index])),
            believed: None,
        }
    }

    fn window(&self, fault: Option<Fault>, at: Ratio) -> Option<FaultWindow> {
        let stops = [self.stops.low.window, self.stops.high.window];
        self.feedback.fault_window(fault, at, stops, self.meter).ok().flatten()
    }

    fn volts_of(&self, window: Option<FaultWindow>) -> Option<Interval<f64>> {
        let (ratio, limits) = (window?.ratio?, self.feedback.reference.limits?);
        Some(Interval {
            low: ratio.low.part() * limits.low.volts(),
            high: ratio.high.part() * limits.high.volts(),
        })
    }

    /// Infinite where some, or all, read an open circuit.
    fn ohms_of(window: Option<FaultWindow>) -> [Option<Interval<f64>>; 3] {
        let open = Interval { low: f64::INFINITY, high: f64::INFINITY };
        let ohms = |ohms: Option<Interval<Resistance>>| {
            ohms.map_or(open, |ohms| Interval { low: ohms.low.ohms(), high: ohms.high.ohms() })
        };
        match window {
            None => [None; 3],
            Some(window) => [window.to_low, window.to_high, window.total].map(|w| Some(ohms(w))),
        }
    }

    fn widened(&self, window: Option<FaultWindow>) -> Vec<Option<Interval<f64>>> {
        let volts = self.volts_of(window).and_then(|window| widened(window, |end| self.doubt_volts(end)));
        let ohms = Self::ohms_of(window).map(|w| widened(w?, |end| self.doubt_ohms(end)));
        std::iter::once(volts).chain(ohms).collect()
    }

    fn doubt_volts(&self, reading: f64) -> Option<f64> {
        let doubt = meter_volts(Voltage::from_volts(reading), &self.volts).ok()?;
        Some(doubt.budget.expanded())
    }

    fn doubt_ohms(&self, reading: f64) -> Option<f64> {
        let doubt = meter_ohms(Resistance::from_ohms(reading), None, &self.ohms).ok()?;
        Some(doubt.budget.expanded())
    }

    /// What a good feedback reads at a position, test by test.
    fn good(&self, at: Ratio) -> Vec<String> {
        let place = self.nominal_stops().and_then(|stops| self.feedback.place(at, stops).ok());
        let ohms = place.and_then(|place| self.feedback.ohms(place).ok());
        let nominal_ohms = |of: fn(&Ohms) -> Resistance| ohms.as_ref().map(|ohms| of(ohms).ohms());
        let volts = place.and_then(|place| self.feedback.voltage(place, self.meter).ok());
        let window = self.window(None, at);
        let [to_low, to_high, total] = Self::ohms_of(window);
        // End to end the wiper's place does not matter.
        let whole = self.feedback.ohms(Ratio::new(0.0)).ok().map(|ohms| ohms.total.ohms());
        let good =
            |nominal: Option<f64>, window: Option<Interval<f64>>, doubt: fn(&Self, f64) -> Option<f64>| {
                let size = nominal.or(window.map(|window| window.high));
                Good { nominal, window, doubt: size.and_then(|size| doubt(self, size)) }
            };
        let readings = [
            good(volts.map(Voltage::volts), self.volts_of(window), Self::doubt_volts).told(self.words, "V"),
            good(nominal_ohms(|ohms| ohms.to_low), to_low, Self::doubt_ohms).told(self.words, "Ω"),
            good(nominal_ohms(|ohms| ohms.to_high), to_high, Self::doubt_ohms).told(self.words, "Ω"),
            good(whole, total, Self::doubt_ohms).told(self.words, "Ω"),
        ];
        let name = match () {
            () if at.part() <= 0.0 => self.stops.low.name.clone(),
            () if at.part() >= 1.0 => self.stops.high.name.clone(),
            () => None,
        };
        let percent = format!("{} %", figures::trimmed(100.0 * at.part()));
        let position = name.map_or(percent.clone(), |name| format!("{percent} ({name})"));
        let told = |(test, reading): (&&str, String)| {
            let message = Message::new("faults-good-at").with("position", &position);
            self.words.say(&message.with("test", test).with("reading", reading))
        };
        TESTS.iter().zip(readings).map(told).collect()
    }

    fn notes(&self, actuator: &Actuator, kit: &Kit<'_>, positions: &[Ratio]) -> Vec<String> {
        let mut notes = vec![self.words.word("faults-at-feedback"), self.words.word("faults-no-matter")];
        notes.extend(dictionary::instruments(self.words, kit));
        let ends = self.stops.low.name.as_ref().zip(self.stops.high.name.as_ref());
        notes.extend(ends.map(|(low, high)| {
            self.words.say(&Message::new("table-note-ends").with("low", low).with("high", high))
        }));
        if self.nominal_stops().is_none() {
            notes.push(self.words.word("faults-no-nominal-stops"));
        }
        notes.push(self.words.word("faults-wiper-contact"));
        if actuator.contacts.is_some() || actuator.ladder.is_some() {
            notes.push(self.words.say(&Message::new("faults-contacts-too").with("id", &actuator.id)));
        }
        notes.extend(positions.iter().flat_map(|at| self.good(*at)));
        notes
    }
}

/// A fault's key, the id of its name, and its size.
fn named(fault: Fault) -> (&'static str, &'static str, Option<String>) {
    match fault {
        Fault::WiperOpen => ("wiper open", "fault-wiper-open", None),
        Fault::TrackOpenAtLowEnd => ("track open to return", "fault-track-open-to-return", None),
        Fault::TrackOpenAtHighEnd => ("track open to reference", "fault-track-open-to-reference", None),
        Fault::TrackOpenAt(place) => {
            let place = format!("{} %", figures::trimmed(100.0 * place.part()));
            ("track open", "fault-track-open", Some(place))
        }
        Fault::ReferenceLost => ("reference lost", "fault-reference-lost", None),
        Fault::ReturnLost => ("return lost", "fault-return-lost", None),
        Fault::ShortToReturn => ("short to return", "fault-signal-to-return", None),
        Fault::ShortToReference => ("short to reference", "fault-short-to-reference", None),
        Fault::ContactResistance(ohms) => {
            ("contact resistance", "fault-contact-resistance", Some(dictionary::sized_ohms(ohms)))
        }
        Fault::Slipped(part) => {
            let number = figure(100.0 * part.part(), 0, Rounding::Nearest);
            let sign = if part.part() > 0.0 { "+" } else { "" };
            ("slipped", "fault-slipped", Some(format!("{sign}{number} %")))
        }
    }
}
