//! Two readings: how much is the sensor, how much a second fault.

use serde::Serialize;

use super::{Case, Reading, Test, text, value_of};
use crate::document::bench::fault;
use crate::physics::fault::{
    Kind, Pair, PairError, Reading as Looks, Second, looks_like, third_temperature, two_faults,
};
use crate::physics::tolerance::Tolerance;
use crate::quantity::{
    Interval, Ratio, Resistance, Rounding, Temperature, TemperatureDifference, Voltage, figure,
};
use crate::words::Message;

/// Every how many kelvins a third temperature is looked for.
const GRID: f64 = 5.0;

/// A shift and a second fault that give both readings.
#[derive(Debug, Clone, Serialize)]
pub struct Told {
    /// `series` or `leak`.
    pub second: &'static str,
    /// How far the sensor is off, percent: least and greatest.
    pub shift_low: f64,
    /// See `shift_low`.
    pub shift_high: f64,
    /// The size of the second fault in ohms; null where it has no bound.
    pub size_low: Option<f64>,
    /// See `size_low`.
    pub size_high: Option<f64>,
    /// Whether such a pair is inside reason.
    pub reasonable: bool,
    #[serde(skip)]
    pub(super) told: String,
}

impl Case<'_> {
    /// Both answers, and the third temperature that would tell which.
    pub(super) fn pairs(
        &self,
        (reading, at): (Reading, Temperature),
    ) -> Result<(Vec<Told>, Option<String>), Message> {
        let ohms = matches!(reading, Reading::Ohms(_));
        if ohms != self.test.is_ohms() {
            return Err(Message::new("run-judge-second-unit"));
        }
        // Two temperatures that the thermometer cannot tell apart are one.
        let limits = [self.instruments.thermometer, self.instruments.soak];
        let doubt: f64 = limits.into_iter().flatten().map(TemperatureDifference::kelvins).sum();
        if (at.celsius() - self.at.celsius()).abs() <= 2.0 * doubt {
            return Err(Message::new("run-judge-second-too-near"));
        }
        let first = self.looks(self.value, self.at)?;
        let second = self.looks(value_of(reading), at)?;
        let rating = match self.bench.sensor.tolerance {
            Some(Tolerance::Rated { beta, at, .. }) => (at, beta),
            _ => (self.at, Ratio::new(0.0)),
        };
        let pairs = two_faults(&self.bench.sensor.curve, rating, first, second).map_err(|error| {
            Message::new(match error {
                PairError::Outside => "run-judge-second-outside",
                PairError::TooNear => "run-judge-second-too-near",
            })
        })?;
        let third = self.third(&pairs);
        Ok((pairs.iter().map(|pair| self.told_pair(pair)).collect(), Some(third)))
    }

    /// What a reading makes the sensor look like, with the doubt of meter and circuit.
    fn looks(&self, value: f64, at: Temperature) -> Result<Looks, Message> {
        let outside = || Message::new("run-judge-second-outside");
        let limits =
            looks_like(&self.subject, value, self.test, at, &self.instruments).ok_or_else(outside)?;
        let resistance = self.sensor_of(value).ok_or_else(outside)?;
        Ok(Looks { at, resistance, limits })
    }

    /// The sensor's resistance behind a value, everything else nominal.
    pub(super) fn sensor_of(&self, value: f64) -> Option<Resistance> {
        let circuit = self.subject.circuit;
        match self.test {
            Test::OhmsAtSensor => Some(Resistance::from_ohms(value)),
            Test::OhmsAtUnit => {
                let series = circuit.and_then(|circuit| circuit.series);
                Some(Resistance::from_ohms(value - series.map_or(0.0, |series| series.nominal.ohms())))
            }
            Test::VoltsAtUnit => {
                circuit?.resistance(Voltage::from_volts(value), self.instruments.meter(self.test).as_ref())
            }
            Test::VoltsAtSensor | Test::VoltsUnplugged => None,
        }
    }

    fn third(&self, pairs: &[Pair; 2]) -> String {
        match pairs.map(|pair| pair.reasonable) {
            [false, false] => return self.words.word("judge-pairs-none"),
            [true, false] | [false, true] => return self.words.word("judge-pairs-one"),
            [true, true] => {}
        }
        let range = self.bench.sensor.range;
        let steps = std::iter::successors(Some(range.low.celsius()), |at| Some(at + GRID));
        let candidates: Vec<Temperature> = steps
            .take_while(|at| *at <= range.high.celsius())
            .take(1000)
            .map(Temperature::from_celsius)
            .collect();
        // The same meter and circuit: what a resistance there could be told to.
        let doubt = |ohms: Resistance, at: Temperature| {
            let reading = self.reading_of(ohms);
            let ends = looks_like(&self.subject, reading, self.test, at, &self.instruments);
            Resistance::from_ohms(
                ends.map_or(f64::INFINITY, |ends| 0.5 * (ends.high.ohms() - ends.low.ohms())),
            )
        };
        match third_temperature(&self.bench.sensor.curve, pairs, &candidates, doubt) {
            Some((at, looks)) => {
                let [series, leak] = looks.map(|ohms| text::value(self.reading_of(ohms), self.test));
                let message = Message::new("judge-third")
                    .with("at", text::celsius(at))
                    .with("series", series)
                    .with("leak", leak);
                self.words.say(&message)
            }
            None => self.words.word("judge-third-none"),
        }
    }

    /// What this test reads of a sensor that looks like this resistance.
    fn reading_of(&self, ohms: Resistance) -> f64 {
        let series = self.subject.circuit.and_then(|circuit| circuit.series);
        match (self.test, self.subject.circuit) {
            (Test::OhmsAtUnit, _) => ohms.ohms() + series.map_or(0.0, |series| series.nominal.ohms()),
            (Test::VoltsAtUnit | Test::VoltsAtSensor, Some(circuit)) => {
                circuit.voltage(ohms, self.instruments.meter(self.test).as_ref()).volts()
            }
            _ => ohms.ohms(),
        }
    }

    fn told_pair(&self, pair: &Pair) -> Told {
        let (kind, key, word) = match pair.second {
            Second::Series => (Kind::Series, "series", "judge-pair-series"),
            Second::Leak => (Kind::Leak, "leak", "judge-pair-leak"),
        };
        let finite = |ohms: Resistance| ohms.ohms().is_finite().then(|| ohms.ohms());
        let percent = |part: Ratio| 100.0 * part.part();
        let message = Message::new(word)
            .with("shift", fault::sized(Kind::ShiftedResistance, pair.shift.part(), Rounding::Nearest))
            .with("shift-low", figure(percent(pair.shifts.low), 1, Rounding::Down))
            .with("shift-high", figure(percent(pair.shifts.high), 1, Rounding::Up))
            .with("sizes", self.told_sizes(kind, pair.sizes))
            .with_word("reason", if pair.reasonable { "judge-reasonable" } else { "judge-not-reasonable" });
        Told {
            second: key,
            shift_low: percent(pair.shifts.low),
            shift_high: percent(pair.shifts.high),
            size_low: pair.sizes.and_then(|sizes| finite(sizes.low)),
            size_high: pair.sizes.and_then(|sizes| finite(sizes.high)),
            reasonable: pair.reasonable,
            told: self.words.say(&message),
        }
    }
    /// The sizes of a second fault: none that exists, any above, any below, or between.
    fn told_sizes(&self, kind: Kind, sizes: Option<Interval<Resistance>>) -> String {
        let Some(sizes) = sizes else { return self.words.word("judge-pair-impossible") };
        let end = |ohms: Resistance, rounding| fault::sized(kind, ohms.ohms(), rounding);
        let (low, high) = (end(sizes.low, Rounding::Down), end(sizes.high, Rounding::Up));
        let message = if sizes.low.ohms() <= 0.0 {
            Message::new("judge-up-to").with("high", high)
        } else if sizes.high.ohms().is_infinite() {
            Message::new("judge-from").with("low", low)
        } else {
            Message::new("judge-between").with("low", low).with("high", high)
        };
        self.words.say(&message)
    }
}
