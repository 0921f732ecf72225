//! A sensor in its circuit, good or faulty, and what a meter reads of it.

use super::setup::Setup;
use super::{Condition, Fault};
use crate::physics::circuit::{Circuit, Meter, Probe};
use crate::physics::curve::Curve;
use crate::physics::tolerance::Tolerance;
use crate::physics::uncertainty::{Doubt, Errors, Response};
use crate::quantity::{
    Interval, MeterRanges, Resistance, Temperature, TemperatureDifference, Toleranced, Voltage,
};

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

    /// The limits of error behind a reading of this test.
    pub(super) fn errors(&self, test: Test, reading: f64) -> Errors {
        let meter = if test.is_ohms() { &self.ohms } else { &self.volts };
        let meter = meter.as_ref().map(|meter| meter.limit(reading));
        Errors { thermometer: self.thermometer, soak: self.soak, meter, leads: self.leads }
    }
}

impl<'a> Subject<'a> {
    /// The subject at one condition, for any number of faults.
    ///
    /// `None` for a temperature at which the part is not known.
    #[must_use]
    pub fn setup(&self, condition: Condition, instruments: &Instruments) -> Option<Setup<'a>> {
        Setup::new(self, condition, instruments)
    }

    /// What a test reads at a temperature with a fault, or with none: see
    /// [`Setup::reading`], which is cheaper where there are many faults.
    #[must_use]
    pub fn reading(
        &self,
        fault: Option<&Fault>,
        test: Test,
        at: Temperature,
        instruments: &Instruments,
    ) -> Option<(f64, Option<Interval<f64>>)> {
        self.setup(Condition { test, at }, instruments)?.reading(fault)
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
        let circuit = self.circuit.filter(|_| !test.is_ohms())?;
        let meter = instruments.meter(test);
        let nominal = circuit.voltage(resistor, meter.as_ref()).volts();
        let window = circuit.voltage_window(Interval { low: resistor, high: resistor }, meter.as_ref());
        let volts =
            |window: Interval<Voltage>| Interval { low: window.low.volts(), high: window.high.volts() };
        Some((nominal, window.map(volts)))
    }

    /// What the control unit believes: see [`Setup::believed`].
    #[must_use]
    pub fn believed(&self, fault: Option<&Fault>, at: Temperature) -> Option<Temperature> {
        let condition = Condition { test: Test::OhmsAtUnit, at };
        self.setup(condition, &Instruments::default())?.believed(fault)
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
    /// JCGM 100:2008, 5.1.2; see [`uncertainty`](crate::physics::uncertainty).
    #[must_use]
    pub fn doubt(
        &self,
        reading: f64,
        test: Test,
        at: Temperature,
        instruments: &Instruments,
    ) -> Option<Doubt> {
        self.response(Condition { test, at }, instruments)?.doubt(&instruments.errors(test, reading)).ok()
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

    /// What moves a good reading.
    pub(super) fn response(
        &self,
        Condition { test, at }: Condition,
        instruments: &Instruments,
    ) -> Option<Response> {
        match test {
            Test::OhmsAtSensor | Test::OhmsAtUnit => Response::of_ohms(self.curve, at).ok(),
            Test::VoltsAtUnit | Test::VoltsAtSensor => {
                Response::of_volts(self.curve, self.circuit?, instruments.meter(test).as_ref(), at).ok()
            }
            Test::VoltsUnplugged => Some(Response::UNPLUGGED),
        }
    }
}
