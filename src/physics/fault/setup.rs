//! A sensor at one condition: what no fault changes is computed once.

use super::subject::{Instruments, Subject, Test};
use super::{Condition, Fault};
use crate::physics::Band;
use crate::physics::circuit::{Circuit, Corners, Disturbance, Meter, Probe, Topology};
use crate::physics::curve::Curve;
use crate::physics::tolerance::{self, Tolerance};
use crate::physics::uncertainty::Response;
use crate::quantity::{Interval, Resistance, Temperature, Toleranced};

/// Where the slope of a curve without a rated temperature turns: 25 °C, at which
/// most thermistors are rated (common practice, no source).
const USUAL_RATING: Temperature = Temperature::from_celsius(25.0);

/// A sensor in its circuit at one temperature, and one test with its instruments.
#[derive(Debug, Clone)]
pub struct Setup<'a> {
    subject: Subject<'a>,
    test: Test,
    at: Temperature,
    /// The good part, and whether its limits are known.
    part: Band<f64>,
    limited: bool,
    meter: Meter,
    /// Of circuit and meter, where volts are read and all tolerances are known.
    corners: Option<Corners>,
    instruments: Instruments,
    response: Option<Response>,
}

/// What a test reads, and over what the reading may be spread.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Signature {
    /// With everything nominal.
    pub nominal: f64,
    /// The extremes over all tolerances of part and circuit; `None` where one was not given.
    pub window: Option<Interval<f64>>,
    /// The window widened by the expanded uncertainty of its own ends.
    pub widened: Option<Interval<f64>>,
}

impl Signature {
    /// Whether two read differently for certain: their widened windows do not meet.
    ///
    /// `None` where a tolerance is missing.
    ///
    /// # Source
    /// Common practice: readings that differ by more than twice the uncertainty are
    /// told apart; each reading carries its own U (JCGM 100, k = 2).
    #[must_use]
    pub fn is_apart_from(&self, other: &Self) -> Option<bool> {
        Some(super::apart(self.widened?, other.widened?))
    }
}

/// What a fault makes of sensor and circuit.
#[derive(Debug, Clone, Copy)]
struct Faulty {
    part: Band<f64>,
    /// Whether the part's limits are known.
    limited: bool,
    circuit: Disturbance,
}

impl<'a> Setup<'a> {
    pub(super) fn new(
        subject: &Subject<'a>,
        condition: Condition,
        instruments: &Instruments,
    ) -> Option<Self> {
        let Condition { test, at } = condition;
        let (part, limited) = band(subject.curve, subject.tolerance, at)?;
        // Without a meter the voltage at the sensor's plug still needs a place.
        let open = Resistance::from_ohms(f64::INFINITY);
        let ideal = Toleranced { nominal: open, limits: Some(Interval { low: open, high: open }) };
        let probe = if test == Test::VoltsAtUnit { Probe::ControlUnit } else { Probe::Sensor };
        let meter = instruments.meter(test).unwrap_or(Meter { input: ideal, at: probe });
        let circuit = subject.circuit.filter(|_| !test.is_ohms());
        Some(Self {
            subject: *subject,
            test,
            at,
            part,
            limited,
            meter,
            corners: circuit.and_then(|circuit| circuit.corners(Some(&meter))),
            instruments: *instruments,
            response: subject.response(condition, instruments),
        })
    }

    /// What the test reads, in ohms or volts: nominal, and the extremes over all
    /// tolerances of part and circuit.
    ///
    /// An open circuit reads infinite ohms. Without a fault (`None`) this is what a
    /// good sensor in a good circuit reads. The limits are `None` where a
    /// tolerance was not given; the whole is `None` where the test does not
    /// apply: no circuit, no battery voltage, a temperature outside the curve, or a
    /// fault that this topology does not have.
    #[must_use]
    pub fn reading(&self, fault: Option<&Fault>) -> Option<(f64, Option<Interval<f64>>)> {
        let faulty = self.faulty(fault)?;
        if self.test.is_ohms() {
            return self.ohms(fault, &faulty);
        }
        // That mistake can be made in ohms only.
        let circuit = self.subject.circuit.filter(|_| !matches!(fault, Some(Fault::UnitStillMated)))?;
        let unplugged = self.test == Test::VoltsUnplugged;
        let part = if unplugged {
            Band { low: f64::INFINITY, nominal: f64::INFINITY, high: f64::INFINITY }
        } else {
            faulty.part
        };
        let part = part.map(Resistance::from_ohms);
        let nominal = circuit.disturbed_voltage(part.nominal, &faulty.circuit, Some(&self.meter)).volts();
        let ends = Interval { low: part.low, high: part.high };
        let limited = faulty.limited || unplugged;
        let window = limited.then(|| self.window(ends, &faulty.circuit)).flatten();
        Some((nominal, window))
    }

    /// The volts over all corners, of the battery too where it has a part in them.
    fn window(&self, sensor: Interval<Resistance>, disturbance: &Disturbance) -> Option<Interval<f64>> {
        let corners = self.corners.as_ref()?;
        let at = |battery| {
            let window = corners.disturbed_window(sensor, &Disturbance { battery, ..*disturbance });
            Interval { low: window.low.volts(), high: window.high.volts() }
        };
        if disturbance.leak_to_battery.ohms().is_infinite() {
            return Some(at(disturbance.battery));
        }
        let ends = self.subject.battery?.limits?;
        let (one, other) = (at(ends.low), at(ends.high));
        Some(Interval { low: one.low.min(other.low), high: one.high.max(other.high) })
    }

    /// The reading and its window, with and without the reading's uncertainty.
    ///
    /// `None` where the test does not apply, as in [`reading`](Self::reading).
    #[must_use]
    pub fn signature(&self, fault: Option<&Fault>) -> Option<Signature> {
        let (nominal, window) = self.reading(fault)?;
        let widen = |window: Interval<f64>| {
            let (below, above) = (self.uncertainty(window.low)?, self.uncertainty(window.high)?);
            Some(Interval { low: window.low - below, high: window.high + above })
        };
        Some(Signature { nominal, window, widened: window.and_then(widen) })
    }

    /// The expanded uncertainty of a reading: see [`Subject::uncertainty`].
    #[must_use]
    pub fn uncertainty(&self, reading: f64) -> Option<f64> {
        if reading.is_infinite() {
            return Some(0.0);
        }
        self.response?
            .doubt(&self.instruments.errors(self.test, reading))
            .ok()
            .map(|doubt| doubt.budget.expanded())
    }

    /// What the control unit believes: the temperature behind its own reading,
    /// with everything taken as nominal and nothing as wrong.
    ///
    /// `None` where the reading is one that no temperature of the curve gives.
    #[must_use]
    pub fn believed(&self, fault: Option<&Fault>) -> Option<Temperature> {
        let circuit = self.subject.circuit?;
        if matches!(fault, Some(Fault::UnitStillMated)) {
            return None;
        }
        let faulty = self.faulty(fault)?;
        let part = Resistance::from_ohms(faulty.part.nominal);
        let volts = circuit.disturbed_voltage(part, &faulty.circuit, None);
        self.subject.curve.temperature(circuit.resistance(volts, None)?).ok()
    }

    /// The part's own resistance with a fault, and what is wrong around it.
    fn faulty(&self, fault: Option<&Fault>) -> Option<Faulty> {
        let subject = &self.subject;
        let good = Faulty { part: self.part, limited: self.limited, circuit: Disturbance::NONE };
        let part = self.part;
        let Some(fault) = fault else { return Some(good) };
        let exactly =
            |ohms| Faulty { part: Band { low: ohms, nominal: ohms, high: ohms }, limited: true, ..good };
        let wired = |circuit| Some(Faulty { circuit, ..good });
        let none = Disturbance::NONE;
        let short = Resistance::from_ohms(0.0);
        match *fault {
            Fault::Open => Some(exactly(f64::INFINITY)),
            Fault::ShortToReturn => Some(exactly(0.0)),
            Fault::OpenWire => wired(Disturbance { contact: Resistance::from_ohms(f64::INFINITY), ..none }),
            Fault::ShortToGround => wired(Disturbance { leak_to_ground: short, ..none }),
            Fault::ShortToReference => wired(Disturbance { leak_to_reference: short, ..none }),
            Fault::ShortToBattery => {
                wired(Disturbance { leak_to_battery: short, battery: subject.battery?.nominal, ..none })
            }
            Fault::Series(contact) => wired(Disturbance { contact, ..none }),
            Fault::Leak(leak_across) => wired(Disturbance { leak_across, ..none }),
            Fault::LeakToBattery(leak_to_battery) => {
                wired(Disturbance { leak_to_battery, battery: subject.battery?.nominal, ..none })
            }
            Fault::LiftedReturn(lift) => {
                let pulled_up = subject.circuit.is_some_and(|circuit| circuit.topology == Topology::PullUp);
                if pulled_up { wired(Disturbance { lift, ..none }) } else { None }
            }
            Fault::ShiftedResistance(by) => {
                Some(Faulty { part: part.map(|ohms| ohms * (1.0 + by.part())), ..good })
            }
            Fault::ShiftedSlope(by) => {
                let rated = subject.curve.resistance(self.rating()).ok()?.ohms();
                let log = libm::log(part.nominal / rated);
                // A part at an end of its B tolerance has its own slope to be off from.
                let spread = match subject.tolerance {
                    Some(Tolerance::Rated { beta, .. }) => beta.part() * log.abs(),
                    _ => 0.0,
                };
                let grown = |ohms: f64, log: f64| ohms * libm::exp(by.part() * log);
                let shifted = Band {
                    low: grown(part.low, log - spread),
                    nominal: grown(part.nominal, log),
                    high: grown(part.high, log + spread),
                };
                Some(Faulty { part: shifted, ..good })
            }
            Fault::OtherPart(index) => {
                let other = subject.others.get(index)?;
                let (part, limited) = band(other.curve, other.tolerance, self.at)?;
                Some(Faulty { part, limited, ..good })
            }
            Fault::WrongResistor(by) => wired(Disturbance { resistor: 1.0 + by.part(), ..none }),
            Fault::UnitStillMated => subject.circuit.map(|_| good),
        }
    }

    /// The temperature at which a wrong slope does not show.
    fn rating(&self) -> Temperature {
        match self.subject.tolerance {
            Some(Tolerance::Rated { at, .. }) => *at,
            _ => match self.subject.curve {
                Curve::Beta(curve) => curve.parameters().1,
                other if other.domain().contains(&USUAL_RATING) => USUAL_RATING,
                other => other.domain().low,
            },
        }
    }

    /// What an ohmmeter reads across the two pins, key off.
    fn ohms(&self, fault: Option<&Fault>, faulty: &Faulty) -> Option<(f64, Option<Interval<f64>>)> {
        let circuit = self.subject.circuit;
        let series = circuit.and_then(|circuit| circuit.series);
        let at_unit = self.test == Test::OhmsAtUnit;
        let of = |part: f64, series: f64| {
            if !at_unit {
                return part;
            }
            // A fault to ground, reference or battery lies outside the two pins.
            let leak = faulty.circuit.leak_across.ohms();
            let end =
                if part.is_infinite() || leak.is_infinite() { part.min(leak) } else { beside(part, leak) };
            end + series + faulty.circuit.contact.ohms()
        };
        if matches!(fault, Some(Fault::UnitStillMated)) {
            let (circuit, probe) = (circuit?, if at_unit { Probe::ControlUnit } else { Probe::Sensor });
            let mated = circuit.ohms_while_mated(Resistance::from_ohms(faulty.part.nominal), probe);
            let window = mated_window(circuit, faulty.part, probe).filter(|_| faulty.limited);
            return Some((mated.ohms(), window));
        }
        let nominal = of(faulty.part.nominal, series.map_or(0.0, |series| series.nominal.ohms()));
        let limits = match series {
            _ if !at_unit => Some((0.0, 0.0)),
            None => Some((0.0, 0.0)),
            Some(series) => series.limits.map(|limits| (limits.low.ohms(), limits.high.ohms())),
        };
        let window = limits
            .filter(|_| faulty.limited)
            .map(|(low, high)| Interval { low: of(faulty.part.low, low), high: of(faulty.part.high, high) });
        Some((nominal, window))
    }
}

/// The band of a part, and whether its limits are known.
fn band(curve: &Curve, tolerance: Option<&Tolerance>, at: Temperature) -> Option<(Band<f64>, bool)> {
    // A tolerance that reaches beyond the end of a table leaves the limits unknown there.
    if let Some(band) = tolerance.and_then(|tolerance| tolerance::band(curve, tolerance, at).ok()) {
        return Some((band.map(Resistance::ohms), true));
    }
    let nominal = curve.resistance(at).ok()?.ohms();
    Some((Band { low: nominal, nominal, high: nominal }, false))
}

/// Two resistances in parallel, neither of them infinite.
fn beside(a: f64, b: f64) -> f64 {
    if a + b > 0.0 { a * b / (a + b) } else { 0.0 }
}

/// The least and greatest ohms with the unit plugged in, over its tolerances: it
/// rises with every part.
fn mated_window(circuit: &Circuit, part: Band<f64>, probe: Probe) -> Option<Interval<f64>> {
    let at_end = |ohms: f64, high: bool| {
        let end = |part: Toleranced<Resistance>| {
            part.limits.map(|limits| {
                let value = if high { limits.high } else { limits.low };
                Toleranced { nominal: value, limits: None }
            })
        };
        let optional = |part: Option<Toleranced<Resistance>>| match part {
            None => Some(None),
            Some(part) => end(part).map(Some),
        };
        let reader = match circuit.reader {
            None => None,
            Some(mut reader) => {
                reader.resistor = end(reader.resistor)?;
                Some(reader)
            }
        };
        let corner = Circuit {
            resistor: end(circuit.resistor)?,
            series: optional(circuit.series)?,
            parallel: optional(circuit.parallel)?,
            reader,
            ..*circuit
        };
        Some(corner.ohms_while_mated(Resistance::from_ohms(ohms), probe).ohms())
    };
    Some(Interval { low: at_end(part.low, false)?, high: at_end(part.high, true)? })
}
