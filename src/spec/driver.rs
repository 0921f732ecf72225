//! `[driver.ID]`: a load that the control unit switches: solenoid, clutch, relay, blower.

use super::reader::{Pair, Reader};
use super::roles::{self, RolePin};
use super::value::{At, Sourced};
use crate::physics::blower::Side;
use crate::physics::solenoid::Direction;
use crate::quantity::{
    Current, Frequency, Inductance, Interval, Ratio, Resistance, Temperature, Toleranced, Voltage, interval,
    ratio, scalar, toleranced,
};

/// A switched load.
#[derive(Debug, Clone)]
pub struct Driver {
    /// What it is.
    pub kind: Option<At<DriverKind>>,
    /// Its name.
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// Where in the vehicle it sits.
    pub location: Option<Sourced<String>>,
    /// On which side of the load the switch is.
    pub polarity: Option<Sourced<Side>>,
    /// The coil of a solenoid, clutch or relay.
    pub coil: Option<Coil>,
    /// What feeds and switches it.
    pub drive: Option<Drive>,
    /// What the control current does to the compressor.
    pub displacement: Option<Displacement>,
    /// The motor and its steps.
    pub blower: Option<Blower>,
    /// How much the wires and contacts may lose.
    pub limits: Option<Limits>,
    /// The pins at its own plug.
    pub pins: Vec<RolePin>,
    /// Its pins at the control unit.
    pub unit_pins: Vec<RolePin>,
    /// What to do next when a reading is out of its window, in steps.
    pub next: Option<Vec<At<String>>>,
}

/// What a switched load is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DriverKind {
    /// A valve's coil, switched quickly to set its mean current.
    Solenoid,
    /// The coil of a compressor clutch.
    Clutch,
    /// The coil of a relay.
    Relay,
    /// A blower motor.
    Blower,
}

/// A copper coil.
#[derive(Debug, Clone)]
pub struct Coil {
    /// Its resistance.
    pub resistance: Option<Sourced<Toleranced<Resistance>>>,
    /// The temperature that the resistance holds at.
    pub at: Option<Sourced<Temperature>>,
    /// How cold and how hot the coil gets in service.
    pub temperature: Option<Sourced<Interval<Temperature>>>,
    /// The least resistance from coil to case.
    pub isolation: Option<Sourced<Resistance>>,
}

/// What feeds and switches a load.
#[derive(Debug, Clone)]
pub struct Drive {
    /// The battery, from its lowest to its highest voltage in service.
    pub battery: Option<Sourced<Interval<Voltage>>>,
    /// The battery voltage that nominal figures are computed for.
    pub nominal: Option<Sourced<Voltage>>,
    /// Lost in the switch while it is on.
    pub switch_drop: Option<Sourced<Toleranced<Voltage>>>,
    /// Across the freewheel diode.
    pub diode_drop: Option<Sourced<Toleranced<Voltage>>>,
    /// How often it is switched.
    pub frequency: Option<Sourced<Frequency>>,
    /// The coil's inductance.
    pub inductance: Option<Sourced<Inductance>>,
    /// The duties to compute.
    pub steps: Option<Vec<Sourced<Ratio>>>,
}

/// Displacement against control current.
#[derive(Debug, Clone)]
pub struct Displacement {
    /// What more current does.
    pub more_current: Option<Sourced<Direction>>,
    /// Points of current and displacement.
    pub points: Option<Vec<Pair<Current, Ratio>>>,
    /// Where the points come from.
    pub source: Option<String>,
    /// Where the table stands.
    pub place: crate::diag::Place,
}

/// A blower motor and its steps.
#[derive(Debug, Clone)]
pub struct Blower {
    /// The current at `at` volts across the motor.
    pub current: Option<Sourced<Current>>,
    /// The voltage across the motor that `current` holds at.
    pub at: Option<Sourced<Voltage>>,
    /// The power of the voltage with which the current grows.
    pub exponent: Option<Sourced<f64>>,
    /// What sets the steps.
    pub control: Option<Sourced<BlowerControl>>,
    /// The voltage across the motor at each step, as a part of the battery's.
    pub steps: Option<Vec<Sourced<Ratio>>>,
    /// How far a step may be off, as a part of the battery's voltage.
    pub step_tolerance: Option<Sourced<Ratio>>,
    /// The series resistor of each step.
    pub resistors: Option<Vec<Sourced<Toleranced<Resistance>>>>,
    /// Lost in the relay that bypasses transistor or resistors at the highest step.
    pub bypass_drop: Option<Sourced<Voltage>>,
    /// The resistance of the blower's wires, out and return.
    pub wiring: Option<Sourced<Resistance>>,
}

/// What sets the steps of a blower.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BlowerControl {
    /// A power transistor in series.
    Transistor,
    /// Resistors in series, one for each step.
    ResistorPack,
}

/// How much the wires and contacts of a load may lose, without its switch.
#[derive(Debug, Clone)]
pub struct Limits {
    /// On the way from battery positive, under current.
    pub supply_drop: Option<Sourced<Voltage>>,
    /// On the way to battery negative, under current.
    pub ground_drop: Option<Sourced<Voltage>>,
    /// Across the closed contact of a relay, under current.
    pub contact_drop: Option<Sourced<Voltage>>,
}

impl Driver {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["kind", "title", "system"]);
        let kinds = [
            ("solenoid", DriverKind::Solenoid),
            ("clutch", DriverKind::Clutch),
            ("relay", DriverKind::Relay),
            ("blower", DriverKind::Blower),
        ];
        let kind = reader.choice("kind", &kinds);
        // The keys of another kind stay unknown, so that a relay with a displacement is found.
        let is = |wanted| kind.as_ref().is_none_or(|kind| kind.value == wanted);
        let (solenoid, blower) = (is(DriverKind::Solenoid), is(DriverKind::Blower));
        let with_coil = kind.as_ref().is_none_or(|kind| kind.value != DriverKind::Blower);
        if kind.is_some() {
            reader.require(&[if with_coil { "coil" } else { "blower" }]);
        }
        let table = |wanted: bool, key| wanted.then(|| reader.table(key)).flatten();
        let sides = [("low side", Side::Low), ("high side", Side::High)];
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            location: reader.sourced_text("location"),
            polarity: reader.sourced_choice("polarity", &sides),
            coil: table(with_coil, "coil").map(|coil| Coil::read(&coil)),
            drive: reader.table("drive").map(|drive| Drive::read(&drive, solenoid)),
            displacement: table(solenoid, "displacement").map(|curve| Displacement::read(&curve)),
            blower: table(blower, "blower").map(|blower| Blower::read(&blower)),
            limits: reader.table("limits").map(|limits| Limits::read(&limits, is(DriverKind::Relay))),
            pins: roles::read(
                reader,
                "pins",
                if is(DriverKind::Relay) { roles::RELAY } else { roles::SWITCHED },
            ),
            unit_pins: roles::read(reader, "unit_pins", roles::SWITCHED),
            next: reader.texts("next"),
            kind,
        }
    }
}

impl Coil {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["resistance", "at"]);
        let coil = Self {
            resistance: reader.sourced("resistance", toleranced),
            at: reader.sourced("at", scalar),
            temperature: reader.sourced("temperature", interval),
            isolation: reader.sourced("isolation", scalar),
        };
        reader.finish();
        coil
    }
}

impl Drive {
    /// Only a solenoid is switched quickly enough to have more than a battery.
    fn read(reader: &Reader<'_>, switched: bool) -> Self {
        let drive = Self {
            battery: reader.sourced("battery", interval),
            nominal: reader.sourced("nominal", scalar),
            switch_drop: switched.then(|| reader.sourced("switch_drop", toleranced)).flatten(),
            diode_drop: switched.then(|| reader.sourced("diode_drop", toleranced)).flatten(),
            frequency: switched.then(|| reader.sourced("frequency", scalar)).flatten(),
            inductance: switched.then(|| reader.sourced("inductance", scalar)).flatten(),
            steps: switched.then(|| reader.quantities("steps", ratio)).flatten(),
        };
        reader.finish();
        drive
    }
}

impl Displacement {
    fn read(reader: &Reader<'_>) -> Self {
        // The direction could be guessed from the points; stated, it shows a slip in either.
        reader.require(&["more_current", "points"]);
        let directions = [
            ("less displacement", Direction::LessDisplacement),
            ("more displacement", Direction::MoreDisplacement),
        ];
        let displacement = Self {
            more_current: reader.sourced_choice("more_current", &directions),
            points: reader.pairs("points", scalar, ratio),
            source: reader.source(),
            place: reader.place.clone(),
        };
        reader.finish();
        displacement
    }
}

impl Blower {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["control"]);
        let controls =
            [("transistor", BlowerControl::Transistor), ("resistor pack", BlowerControl::ResistorPack)];
        let control = reader.sourced_choice("control", &controls);
        let pack = control.as_ref().is_none_or(|control| control.value == BlowerControl::ResistorPack);
        let blower = Self {
            current: reader.sourced("current", scalar),
            at: reader.sourced("at", scalar),
            exponent: reader.number("exponent"),
            steps: reader.quantities("steps", ratio),
            step_tolerance: reader.sourced("step_tolerance", ratio),
            resistors: pack.then(|| reader.quantities("resistors", toleranced)).flatten(),
            bypass_drop: reader.sourced("bypass_drop", scalar),
            wiring: reader.sourced("wiring", scalar),
            control,
        };
        reader.finish();
        blower
    }
}

impl Limits {
    /// Only a relay has a contact.
    fn read(reader: &Reader<'_>, relay: bool) -> Self {
        let limits = Self {
            supply_drop: reader.sourced("supply_drop", scalar),
            ground_drop: reader.sourced("ground_drop", scalar),
            contact_drop: relay.then(|| reader.sourced("contact_drop", scalar)).flatten(),
        };
        reader.finish();
        limits
    }
}
