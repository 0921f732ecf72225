//! Steps of a blower motor, and the heat in the transistor before it.

use std::fmt;

use crate::quantity::{Current, Power, Ratio, Resistance, Voltage};

/// A blower motor on a wheel: its current grows with its voltage as a power.
///
/// # Symbols
/// I(V) = I₀ (V/V₀)ⁿ with V the voltage across the motor, I₀ the current at V₀.
///
/// # Range
/// A model: n is 1 for a plain resistance, about 1.7 for a motor with a wheel
/// (common practice, no source). From 0 V to 1.5 V₀.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Motor {
    current: f64,
    at: f64,
    exponent: f64,
}

/// Why a figure of a blower was not computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BlowerError {
    /// A voltage, current, resistance or exponent that no blower has.
    NotPhysical,
    /// A motor voltage below zero or above the battery's.
    OutsideBattery,
}

impl fmt::Display for BlowerError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotPhysical => "not the data of a blower",
            Self::OutsideBattery => "the motor's voltage lies between zero and the battery's",
        })
    }
}

impl std::error::Error for BlowerError {}

/// How far above the voltage of its rated current the model is used.
const FARTHEST: f64 = 1.5;

/// The largest exponent that is taken for one: no wheel has a current of the fourth power.
pub const STEEPEST: f64 = 4.0;

impl Motor {
    /// A motor that takes `current` at `at` volts across it.
    ///
    /// # Errors
    /// When current or voltage is not above zero, or the exponent is not above 0 and at most 4.
    pub fn new(current: Current, at: Voltage, exponent: f64) -> Result<Self, BlowerError> {
        let (current, at) = (current.amperes(), at.volts());
        let positive = [current, at, exponent].iter().all(|value| value.is_finite() && *value > 0.0);
        if positive && exponent <= STEEPEST && (at * current).is_finite() {
            Ok(Self { current, at, exponent })
        } else {
            Err(BlowerError::NotPhysical)
        }
    }

    /// I(V), the current with `across` the motor.
    ///
    /// # Errors
    /// Below zero, or above 1.5 times the voltage of the rated current.
    pub fn current(&self, across: Voltage) -> Result<Current, BlowerError> {
        let volts = across.volts();
        if !(0.0..=FARTHEST * self.at).contains(&volts) {
            return Err(BlowerError::OutsideBattery);
        }
        Ok(Current::from_amperes(self.amperes(volts)))
    }

    fn amperes(&self, volts: f64) -> f64 {
        self.current * libm::pow(volts / self.at, self.exponent)
    }

    /// The power that the series element turns to heat: P = (Vb − Vm) I(Vm).
    ///
    /// Vb is the battery at the blower's feed, Vm the voltage across the motor.
    ///
    /// # Errors
    /// When Vm lies outside 0 to Vb, or Vb beyond the model.
    ///
    /// # Source
    /// The same current flows through both.
    pub fn series_heat(&self, battery: Voltage, across: Voltage) -> Result<Power, BlowerError> {
        self.current(battery)?;
        let (feed, motor) = (battery.volts(), across.volts());
        if !(0.0..=feed).contains(&motor) {
            return Err(BlowerError::OutsideBattery);
        }
        Ok(Power::from_watts((feed - motor) * self.amperes(motor)))
    }

    /// Where the transistor is hottest, and how hot: Vm = Vb n/(n + 1), P = Vb I(Vb) nⁿ/(n + 1)ⁿ⁺¹.
    ///
    /// Drops in the wires only lessen it.
    ///
    /// # Errors
    /// When Vb lies beyond the model.
    ///
    /// # Source
    /// dP/dVm = 0. n = 1 gives 25 % of the full power, n = 1.7 gives 16.9 %.
    ///
    /// # Example
    /// 51 W of 304 W at 13.8 V and 22 A.
    /// ```
    /// use bayleaf::physics::blower::Motor;
    /// use bayleaf::quantity::{Current, Voltage};
    /// let battery = Voltage::from_volts(13.8);
    /// let motor = Motor::new(Current::from_amperes(22.0), battery, 1.7)?;
    /// let (at, heat) = motor.hottest(battery)?;
    /// assert!((at.volts() / 13.8 - 0.63).abs() < 0.005 && (heat.watts() - 51.0).abs() < 0.5);
    /// # Ok::<(), bayleaf::physics::blower::BlowerError>(())
    /// ```
    pub fn hottest(&self, battery: Voltage) -> Result<(Voltage, Power), BlowerError> {
        let at = Voltage::from_volts(battery.volts() * self.exponent / (self.exponent + 1.0));
        Ok((at, self.series_heat(battery, at)?))
    }

    /// The same behind wires of resistance Rw: P = (Vb − Vm − Rw I) I, greatest where
    /// (n + 1) Vm + 2 n Rw I(Vm) = n Vb.
    ///
    /// With Rw = 0 Ω it is [`hottest`](Self::hottest).
    ///
    /// # Errors
    /// When the resistance is below zero or not finite, or Vb lies beyond the model.
    ///
    /// # Source
    /// dP/dVm = 0, with I = I₀ (Vm/V₀)ⁿ; solved by bisection, as the left side only rises.
    ///
    /// # Example
    /// 20 mΩ of wires leave 49.3 W of the 51 W at 13.8 V and 22 A.
    /// ```
    /// use bayleaf::physics::blower::Motor;
    /// use bayleaf::quantity::{Current, Resistance, Voltage};
    /// let battery = Voltage::from_volts(13.8);
    /// let motor = Motor::new(Current::from_amperes(22.0), battery, 1.7)?;
    /// let (_, heat) = motor.hottest_behind(battery, Resistance::from_ohms(0.02))?;
    /// assert!((heat.watts() - 49.3).abs() < 0.05);
    /// # Ok::<(), bayleaf::physics::blower::BlowerError>(())
    /// ```
    pub fn hottest_behind(
        &self,
        battery: Voltage,
        wiring: Resistance,
    ) -> Result<(Voltage, Power), BlowerError> {
        self.current(battery)?;
        let (feed, wires) = (battery.volts(), wiring.ohms());
        if !(wires.is_finite() && wires >= 0.0) {
            return Err(BlowerError::NotPhysical);
        }
        let n = self.exponent;
        let across =
            halved(feed, |volts| (n + 1.0) * volts + 2.0 * n * wires * self.amperes(volts) < n * feed);
        let amperes = self.amperes(across);
        let watts = (feed - across - wires * amperes).max(0.0) * amperes;
        Ok((Voltage::from_volts(across), Power::from_watts(watts)))
    }

    /// The voltage across the motor behind a series resistance: Vb − Vm = R I(Vm).
    ///
    /// The resistance is that of a resistor pack's step together with the wires.
    ///
    /// # Errors
    /// When the resistance is below zero or not finite, or Vb lies beyond the model.
    ///
    /// # Source
    /// Kirchhoff's voltage law, solved by bisection: the left side falls with
    /// Vm and the right side rises.
    pub fn behind(&self, battery: Voltage, series: Resistance) -> Result<Voltage, BlowerError> {
        self.current(battery)?;
        let ohms = series.ohms();
        if !(ohms.is_finite() && ohms >= 0.0) {
            return Err(BlowerError::NotPhysical);
        }
        let feed = battery.volts();
        Ok(Voltage::from_volts(halved(feed, |volts| feed - volts > ohms * self.amperes(volts))))
    }

    /// The series resistance that leaves `across` the motor, the inverse of [`behind`](Self::behind).
    ///
    /// # Errors
    /// When Vm is not above zero, or above Vb: no resistance stops a motor.
    ///
    /// # Source
    /// R = (Vb − Vm)/I(Vm).
    pub fn series_for(&self, battery: Voltage, across: Voltage) -> Result<Resistance, BlowerError> {
        let heat = self.series_heat(battery, across)?.watts();
        let amperes = self.amperes(across.volts());
        let ohms = heat / (amperes * amperes);
        if ohms.is_finite() { Ok(Resistance::from_ohms(ohms)) } else { Err(BlowerError::OutsideBattery) }
    }
}

/// The voltage from zero to `feed` at which `below` ends to hold.
fn halved(feed: f64, below: impl Fn(f64) -> bool) -> f64 {
    let (mut low, mut high) = (0.0, feed);
    // Each step gains a bit; 60 of them reach the last one of a voltage.
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if below(middle) {
            low = middle;
        } else {
            high = middle;
        }
    }
    high
}

/// The voltage across the motor at a step that is stated as a part of the battery's.
///
/// # Errors
/// When the part is not between 0 and 1, or the battery is below zero or not finite.
pub fn step(battery: Voltage, part: Ratio) -> Result<Voltage, BlowerError> {
    let volts = battery.volts() * part.part();
    if !(0.0..=1.0).contains(&part.part()) || battery.volts() < 0.0 {
        return Err(BlowerError::OutsideBattery);
    }
    if volts.is_finite() { Ok(Voltage::from_volts(volts)) } else { Err(BlowerError::NotPhysical) }
}

/// The voltage across the motor at the highest step: Vb less what relay and wires lose.
///
/// # Errors
/// When a drop is below zero, or they take more than the battery has.
pub fn full_speed(battery: Voltage, bypass: Voltage, wiring: Voltage) -> Result<Voltage, BlowerError> {
    let left = battery.volts() - bypass.volts() - wiring.volts();
    let valid = bypass.volts() >= 0.0 && wiring.volts() >= 0.0 && left >= 0.0 && left.is_finite();
    if valid { Ok(Voltage::from_volts(left)) } else { Err(BlowerError::OutsideBattery) }
}

/// On which side of the load the switching element sits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Between load and ground.
    Low,
    /// Between battery and load.
    High,
}

/// What a voltmeter shows from each terminal of the motor to ground.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ToGround {
    /// At the terminal towards the battery.
    pub positive: Voltage,
    /// At the terminal towards ground.
    pub negative: Voltage,
}

/// The trap of measuring a motor to ground instead of across.
///
/// With a low-side element the positive terminal shows the battery at every
/// step, also with the motor stopped, and the negative one shows what the motor
/// does *not* get.
///
/// # Errors
/// When Vm lies outside 0 to Vb.
///
/// # Source
/// Kirchhoff's voltage law; the trap is common practice, no source.
pub fn to_ground(side: Side, battery: Voltage, across: Voltage) -> Result<ToGround, BlowerError> {
    let (feed, motor) = (battery.volts(), across.volts());
    if !(feed.is_finite() && (0.0..=feed).contains(&motor)) {
        return Err(BlowerError::OutsideBattery);
    }
    Ok(match side {
        Side::Low => ToGround { positive: battery, negative: Voltage::from_volts(feed - motor) },
        Side::High => ToGround { positive: across, negative: Voltage::from_volts(0.0) },
    })
}
