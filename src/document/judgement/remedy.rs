//! The cheapest single change that would decide an undecided reading.

use super::{Case, text};
use crate::document::figures;
use crate::physics::decision::{Limits, Verdict};
use crate::physics::fault::{Instruments, Test};
use crate::physics::remedy::{
    Candidate, Change, Decides, Place, Situation, carried, cheapest, decides, largest_meter_part,
    largest_thermometer_limit,
};
use crate::quantity::{Ratio, Resistance, Rounding, Temperature, TemperatureDifference, Voltage, figure};
use crate::words::Message;

/// The effort of each change; only the order counts.
///
/// # Source
/// Common practice, no source: waiting costs nothing but time, another thermometer
/// is in the next bay, the sensor's own plug is a panel away, ice has to be made,
/// a better meter has to be bought.
const SOAK: u8 = 1;
const THERMOMETER: u8 = 2;
const PLACE: u8 = 3;
const TEMPERATURE: u8 = 4;
const METER: u8 = 5;

/// Temperatures that can be had: ice water, tap water, hot water.
const OTHERS: [f64; 4] = [0.0, 15.0, 40.0, 50.0];

impl Case<'_> {
    /// The remedy in words, or that no single change decides.
    pub(super) fn remedy(&self) -> String {
        let candidates = self.remedies();
        match cheapest(&candidates) {
            Some(candidate) => self.told_remedy(candidate),
            None => self.words.word("judge-no-remedy"),
        }
    }

    fn remedies(&self) -> Vec<Candidate> {
        let rule = self.rule;
        let with = |instruments: Instruments| self.situation(self.test, self.at, self.value, &instruments);
        let kelvins = |limit: Option<TemperatureDifference>,
                       change: fn(TemperatureDifference) -> Change,
                       cost,
                       put: fn(&mut Instruments, TemperatureDifference)| {
            let situation = |limit: TemperatureDifference| {
                let mut instruments = self.instruments;
                put(&mut instruments, limit);
                with(instruments)
            };
            let largest = largest_thermometer_limit(situation, limit?, self.value, rule)?;
            let verdict = decides(situation(largest), self.value, rule);
            // Less than a twentieth of a kelvin cannot be had in a workshop.
            (largest.kelvins() >= 0.05).then_some(Candidate {
                change: change(largest),
                cost,
                decides: verdict,
            })
        };
        let soak = kelvins(self.instruments.soak, Change::Soak, SOAK, |with, limit| with.soak = Some(limit));
        let thermometer =
            kelvins(self.instruments.thermometer, Change::Thermometer, THERMOMETER, |with, limit| {
                with.thermometer = Some(limit);
            });
        let range = self.bench.sensor.range;
        let others = OTHERS.map(Temperature::from_celsius).into_iter().filter(|at| range.contains(at));
        let elsewhere =
            others.filter_map(|at| self.elsewhere(self.test, at, Change::Temperature(at), TEMPERATURE));
        let meter = self.better_meter();
        let mut all: Vec<Candidate> = [soak, thermometer, self.other_place()].into_iter().flatten().collect();
        all.extend(elsewhere);
        all.extend(meter);
        all
    }

    /// Ohms at the sensor instead of volts at the unit, or the reverse.
    fn other_place(&self) -> Option<Candidate> {
        let (test, place) = match self.test {
            Test::VoltsAtUnit => (Test::OhmsAtSensor, Place::Component),
            Test::OhmsAtSensor => (Test::VoltsAtUnit, Place::ControlUnit),
            _ => return None,
        };
        self.elsewhere(test, self.at, Change::Place(place), PLACE)
    }

    fn elsewhere(&self, test: Test, at: Temperature, change: Change, cost: u8) -> Option<Candidate> {
        let reading = self.carried_to(test, at)?;
        let verdict = decides(self.situation(test, at, reading, &self.instruments), reading, self.rule);
        (verdict != Decides::No).then_some(Candidate { change, cost, decides: verdict })
    }

    /// A meter whose limit of error is a part of this one's.
    fn better_meter(&self) -> Option<Candidate> {
        let situation = |part: Ratio| {
            let instruments = Instruments {
                volts: self.instruments.volts.map(|ranges| ranges.scaled(part)),
                ohms: self.instruments.ohms.map(|ranges| ranges.scaled(part)),
                ..self.instruments
            };
            self.situation(self.test, self.at, self.value, &instruments)
        };
        let part = largest_meter_part(situation, self.value, self.rule)?;
        let verdict = decides(situation(part), self.value, self.rule);
        // A tenth of a workshop meter's error is a laboratory's.
        (part.part() >= 0.1).then_some(Candidate {
            change: Change::Meter(part),
            cost: METER,
            decides: verdict,
        })
    }

    fn situation(&self, test: Test, at: Temperature, reading: f64, with: &Instruments) -> Option<Situation> {
        let (_, window) = self.subject.reading(None, test, at, with)?;
        let window = window?;
        let limits = Limits::new(Some(window.low), Some(window.high)).ok()?;
        Some(Situation { limits, expanded: self.subject.uncertainty(reading, test, at, with)? })
    }

    /// What the part that gave this reading should read elsewhere, if it is merely
    /// off by the same part of its resistance.
    fn carried_to(&self, test: Test, at: Temperature) -> Option<f64> {
        let looks = match self.test {
            Test::OhmsAtSensor | Test::OhmsAtUnit => Resistance::from_ohms(self.value),
            Test::VoltsAtUnit => {
                let meter = self.instruments.meter(self.test);
                self.subject.circuit?.resistance(Voltage::from_volts(self.value), meter.as_ref())?
            }
            Test::VoltsAtSensor | Test::VoltsUnplugged => return None,
        };
        let there = carried(&self.bench.sensor.curve, looks, self.at, at).ok()?;
        if test.is_ohms() {
            return Some(there.ohms());
        }
        let meter = self.instruments.meter(test);
        Some(self.subject.circuit?.voltage(there, meter.as_ref()).volts())
    }

    fn told_remedy(&self, candidate: &Candidate) -> String {
        // A limit to buy to is rounded down: a better instrument still decides.
        let kelvins =
            |limit: TemperatureDifference| format!("± {} K", figure(limit.kelvins(), 2, Rounding::Down));
        let message = match candidate.change {
            Change::Soak(limit) => Message::new("judge-remedy-soak").with("limit", kelvins(limit)),
            Change::Thermometer(limit) => {
                Message::new("judge-remedy-thermometer").with("limit", kelvins(limit))
            }
            Change::Temperature(at) => Message::new("judge-remedy-temperature").with("at", text::celsius(at)),
            Change::Place(Place::Component) => Message::new("judge-remedy-at-sensor"),
            Change::Place(Place::ControlUnit) => Message::new("judge-remedy-at-unit"),
            Change::Meter(part) => {
                let percent = figures::trimmed((100.0 * part.part()).floor());
                Message::new("judge-remedy-meter").with("part", percent)
            }
        };
        let verdict = match candidate.decides {
            Decides::Yes(Verdict::Pass) => "judge-would-pass",
            _ => "judge-would-fail",
        };
        self.words.say(&message.with_word("verdict", verdict))
    }
}
