//! A sensor in its circuit, good or faulty, and what a meter reads of it.

use super::Fault;
use crate::physics::Band;
use crate::physics::circuit::{Circuit, Disturbance, Meter, Probe, Topology};
use crate::physics::curve::Curve;
use crate::physics::tolerance::{self, Tolerance};
use crate::physics::uncertainty::{self, Doubt};
use crate::quantity::{
    Interval, MeterRanges, Resistance, Temperature, TemperatureDifference, Toleranced, Voltage,
};

/// Where the slope of a curve without a rated temperature turns: 25 °C, at which
/// most thermistors are rated (common practice, no source).
const USUAL_RATING: Temperature = Temperature::from_celsius(25.0);

/// A sensor with its circuit.
#[derive(Debug, Clone, Copy)]
pub struct Subject<'a> {
    /// Its curve.
    pub curve: &'a Curve,
    /// How far a good part may lie from it.
    pub tolerance: Option<&'a Tolerance>,
    /// How the control unit reads it.
    pub circuit: Option<&'a Circuit>,
    /// The other sensors of the set, which may be fitted by mistake.
    pub others: &'a [Other<'a>],
    /// What the battery gives; without it nothing is computed that needs it, and without
    /// its tolerance no limit.
    pub battery: Option<Toleranced<Voltage>>,
}

/// Another part that fits.
#[derive(Debug, Clone, Copy)]
pub struct Other<'a> {
    /// Its curve.
    pub curve: &'a Curve,
    /// How far a good one may lie from it.
    pub tolerance: Option<&'a Tolerance>,
}

/// What is measured, and where.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Test {
    /// Volts at the control unit's signal pin, all plugged in, key on.
    VoltsAtUnit,
    /// Volts at the sensor's plug, all plugged in, key on.
    VoltsAtSensor,
    /// Volts at the sensor's plug, harness side, sensor unplugged, key on.
    VoltsUnplugged,
    /// Ohms of the sensor itself, unplugged.
    OhmsAtSensor,
    /// Ohms at the control unit's plug, harness side, unit unplugged, sensor plugged in.
    OhmsAtUnit,
}

impl Test {
    /// Every test, the one of least effort first.
    ///
    /// # Source
    /// Common practice, no source: probing a plugged connector from behind is less
    /// work than unplugging the sensor, and that less than unplugging the unit.
    pub const ALL: [Self; 5] =
        [Self::VoltsAtUnit, Self::VoltsAtSensor, Self::VoltsUnplugged, Self::OhmsAtSensor, Self::OhmsAtUnit];

    /// Whether it reads ohms.
    #[must_use]
    pub fn is_ohms(self) -> bool {
        matches!(self, Self::OhmsAtSensor | Self::OhmsAtUnit)
    }
}

/// What the readings are taken with; what is not known is left out.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Instruments {
    /// Ranges of DC volts.
    pub volts: Option<MeterRanges>,
    /// Ranges of ohms.
    pub ohms: Option<MeterRanges>,
    /// Input resistance on DC volts.
    pub input: Option<Toleranced<Resistance>>,
    /// Resistance of the leads that may be in a reading of ohms.
    pub leads: Option<Resistance>,
    /// The thermometer's limit of error.
    pub thermometer: Option<TemperatureDifference>,
    /// How far sensor and thermometer may differ after settling.
    pub soak: Option<TemperatureDifference>,
}

impl Instruments {
    /// The meter at the place of a test.
    #[must_use]
    pub fn meter(&self, test: Test) -> Option<Meter> {
        let at = if test == Test::VoltsAtUnit { Probe::ControlUnit } else { Probe::Sensor };
        self.input.map(|input| Meter { input, at })
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

impl Subject<'_> {
    /// What a test reads at a temperature, in ohms or volts: nominal, and the
    /// extremes over all tolerances of part and circuit.
    ///
    /// An open circuit reads infinite ohms. Without a fault (`None`) this is what a
    /// good sensor in a good circuit reads. The limits are `None` where a
    /// tolerance was not given; the whole is `None` where the test does not
    /// apply: no circuit, no battery voltage, a temperature outside the curve, or a
    /// fault that this topology does not have.
    #[must_use]
    pub fn reading(
        &self,
        fault: Option<&Fault>,
        test: Test,
        at: Temperature,
        instruments: &Instruments,
    ) -> Option<(f64, Option<Interval<f64>>)> {
        let faulty = self.faulty(fault, at)?;
        if test.is_ohms() {
            return self.ohms(fault, &faulty, test);
        }
        // That mistake can be made in ohms only.
        if matches!(fault, Some(Fault::UnitStillMated)) {
            return None;
        }
        let part = if test == Test::VoltsUnplugged {
            Band { low: f64::INFINITY, nominal: f64::INFINITY, high: f64::INFINITY }
        } else {
            faulty.part
        };
        let limited = faulty.limited || test == Test::VoltsUnplugged;
        self.volts(Faulty { part, limited, ..faulty }, test, instruments)
    }

    /// The volts with a resistor in the sensor's place, in a good circuit: nominal,
    /// and the extremes over the circuit's tolerances. The resistor counts as exact:
    /// it is measured before it is fitted.
    ///
    /// `None` for a test of ohms, and where there is no circuit.
    #[must_use]
    pub fn with_resistor(
        &self,
        resistor: Resistance,
        test: Test,
        instruments: &Instruments,
    ) -> Option<(f64, Option<Interval<f64>>)> {
        let ohms = resistor.ohms();
        let part = Band { low: ohms, nominal: ohms, high: ohms };
        let exactly = Faulty { part, limited: true, circuit: Disturbance::NONE };
        if test.is_ohms() { None } else { self.volts(exactly, test, instruments) }
    }

    fn volts(
        &self,
        faulty: Faulty,
        test: Test,
        instruments: &Instruments,
    ) -> Option<(f64, Option<Interval<f64>>)> {
        let circuit = self.circuit?;
        let meter = instruments.meter(test);
        // Without a meter the voltage at the sensor's plug still needs a place.
        let ideal = Toleranced {
            nominal: Resistance::from_ohms(f64::INFINITY),
            limits: Some(Interval {
                low: Resistance::from_ohms(f64::INFINITY),
                high: Resistance::from_ohms(f64::INFINITY),
            }),
        };
        let probe = if test == Test::VoltsAtUnit { Probe::ControlUnit } else { Probe::Sensor };
        let meter = meter.unwrap_or(Meter { input: ideal, at: probe });
        let part = faulty.part.map(Resistance::from_ohms);
        let nominal = circuit.disturbed_voltage(part.nominal, &faulty.circuit, Some(&meter)).volts();
        let ends = Interval { low: part.low, high: part.high };
        let window = faulty.limited.then(|| self.window(circuit, ends, &faulty.circuit, &meter)).flatten();
        Some((nominal, window))
    }

    /// The volts over all corners, of the battery too where it has a part in them.
    fn window(
        &self,
        circuit: &Circuit,
        sensor: Interval<Resistance>,
        disturbance: &Disturbance,
        meter: &Meter,
    ) -> Option<Interval<f64>> {
        let at = |battery| {
            let disturbance = Disturbance { battery, ..*disturbance };
            let window = circuit.disturbed_window(sensor, &disturbance, Some(meter))?;
            Some(Interval { low: window.low.volts(), high: window.high.volts() })
        };
        if disturbance.leak_to_battery.ohms().is_infinite() {
            return at(disturbance.battery);
        }
        let ends = self.battery?.limits?;
        let (one, other) = (at(ends.low)?, at(ends.high)?);
        Some(Interval { low: one.low.min(other.low), high: one.high.max(other.high) })
    }

    /// What the control unit believes: the temperature behind its own reading,
    /// with everything taken as nominal and nothing as wrong.
    ///
    /// `None` where the reading is one that no temperature of the curve gives.
    #[must_use]
    pub fn believed(&self, fault: Option<&Fault>, at: Temperature) -> Option<Temperature> {
        let circuit = self.circuit?;
        if matches!(fault, Some(Fault::UnitStillMated)) {
            return None;
        }
        let faulty = self.faulty(fault, at)?;
        let part = Resistance::from_ohms(faulty.part.nominal);
        let volts = circuit.disturbed_voltage(part, &faulty.circuit, None);
        self.curve.temperature(circuit.resistance(volts, None)?).ok()
    }

    /// How far a reading can be trusted, with the contributions that are known and
    /// the names of those that are not.
    ///
    /// Thermometer and soak enter through the slope of the good reading; without
    /// the sensor on the line they do not enter.
    ///
    /// `None` where the test does not apply, or the reading is no number.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.2; see [`uncertainty`].
    #[must_use]
    pub fn doubt(
        &self,
        reading: f64,
        test: Test,
        at: Temperature,
        instruments: &Instruments,
    ) -> Option<Doubt> {
        let with = uncertainty::Instruments {
            thermometer: instruments.thermometer,
            soak: instruments.soak,
            meter: if test.is_ohms() { instruments.ohms } else { instruments.volts },
            leads: instruments.leads,
        };
        match test {
            Test::OhmsAtSensor | Test::OhmsAtUnit => {
                uncertainty::ohms(self.curve, at, Resistance::from_ohms(reading), &with).ok()
            }
            Test::VoltsAtUnit | Test::VoltsAtSensor => {
                let (volts, meter) = (Voltage::from_volts(reading), instruments.meter(test));
                uncertainty::volts(self.curve, self.circuit?, meter.as_ref(), at, volts, &with).ok()
            }
            Test::VoltsUnplugged => uncertainty::meter_volts(Voltage::from_volts(reading), &with).ok(),
        }
    }

    /// The expanded uncertainty of a reading, k = 2, in its unit; 0 for an open
    /// circuit, which no meter misreads.
    #[must_use]
    pub fn uncertainty(
        &self,
        reading: f64,
        test: Test,
        at: Temperature,
        instruments: &Instruments,
    ) -> Option<f64> {
        if reading.is_infinite() {
            return Some(0.0);
        }
        self.doubt(reading, test, at, instruments).map(|doubt| doubt.budget.expanded())
    }

    /// The part's own resistance with a fault, and what is wrong around it.
    fn faulty(&self, fault: Option<&Fault>, at: Temperature) -> Option<Faulty> {
        let (part, limited) = band(self.curve, self.tolerance, at)?;
        let good = Faulty { part, limited, circuit: Disturbance::NONE };
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
                wired(Disturbance { leak_to_battery: short, battery: self.battery?.nominal, ..none })
            }
            Fault::Series(contact) => wired(Disturbance { contact, ..none }),
            Fault::Leak(leak_across) => wired(Disturbance { leak_across, ..none }),
            Fault::LeakToBattery(leak_to_battery) => {
                wired(Disturbance { leak_to_battery, battery: self.battery?.nominal, ..none })
            }
            Fault::LiftedReturn(lift) => {
                let pulled_up = self.circuit.is_some_and(|circuit| circuit.topology == Topology::PullUp);
                if pulled_up { wired(Disturbance { lift, ..none }) } else { None }
            }
            Fault::ShiftedResistance(by) => {
                Some(Faulty { part: part.map(|ohms| ohms * (1.0 + by.part())), ..good })
            }
            Fault::ShiftedSlope(by) => {
                let rated = self.curve.resistance(self.rating()).ok()?.ohms();
                let growth = libm::exp(by.part() * libm::log(part.nominal / rated));
                Some(Faulty { part: part.map(|ohms| ohms * growth), ..good })
            }
            Fault::OtherPart(index) => {
                let other = self.others.get(index)?;
                let (part, limited) = band(other.curve, other.tolerance, at)?;
                Some(Faulty { part, limited, ..good })
            }
            Fault::WrongResistor(by) => wired(Disturbance { resistor: 1.0 + by.part(), ..none }),
            Fault::UnitStillMated => self.circuit.map(|_| good),
        }
    }

    /// The temperature at which a wrong slope does not show.
    fn rating(&self) -> Temperature {
        match self.tolerance {
            Some(Tolerance::Rated { at, .. }) => *at,
            _ => match self.curve {
                Curve::Beta(curve) => curve.parameters().1,
                other if other.domain().contains(&USUAL_RATING) => USUAL_RATING,
                other => other.domain().low,
            },
        }
    }

    /// What an ohmmeter reads across the two pins, key off.
    fn ohms(
        &self,
        fault: Option<&Fault>,
        faulty: &Faulty,
        test: Test,
    ) -> Option<(f64, Option<Interval<f64>>)> {
        let series = self.circuit.and_then(|circuit| circuit.series);
        let at_unit = test == Test::OhmsAtUnit;
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
            let (circuit, probe) = (self.circuit?, if at_unit { Probe::ControlUnit } else { Probe::Sensor });
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
