//! One set of exact values of a circuit, solved by Kirchhoff's current law.

use super::{Disturbance, Probe, Topology};

/// A circuit with every value at one place inside its tolerance.
///
/// Two nodes, the control unit's pin and the sensor's signal pin, joined by the
/// line. Every other part leads from a node to a fixed voltage: the reference,
/// the unit's ground, the sensor's return, another unit's reference, the battery.
#[derive(Debug, Clone, Copy)]
pub(super) struct Network {
    pub topology: Topology,
    pub reference: f64,
    pub resistor: f64,
    pub series: f64,
    /// Infinite where there is none, as all below.
    pub parallel: f64,
    pub meter: f64,
    pub probe: Probe,
    pub reader: f64,
    /// What the other reader's resistor leads to.
    pub reader_reference: f64,
    /// The sensor's return above the unit's ground.
    pub offset: f64,
}

/// Everything that leads from one node to fixed voltages.
///
/// Conductances are multiples of the divider resistor's own, so that a resistor
/// alone gives its voltage to the last bit.
#[derive(Debug, Clone, Copy)]
struct Node {
    unit: f64,
    conductance: f64,
    /// Sum of conductance times voltage: the current into the node held at 0 V.
    current: f64,
    /// The voltage of a part of 0 Ω.
    pinned: Option<f64>,
}

impl Node {
    fn new(unit: f64) -> Self {
        Self { unit, conductance: 0.0, current: 0.0, pinned: None }
    }

    fn to(mut self, ohms: f64, volts: f64) -> Self {
        // Most parts are not there: they add nothing, and cost no division.
        if ohms.is_infinite() {
            return self;
        }
        if ohms > 0.0 {
            let conductance = self.unit / ohms;
            self.conductance += conductance;
            self.current += volts * conductance;
        } else {
            self.pinned = Some(volts);
        }
        self
    }
}

/// The voltages at both nodes.
#[derive(Debug, Clone, Copy)]
pub(super) struct Solved {
    pub pin: f64,
    pub sensor: f64,
}

/// A network with all but its sensor summed up, to be asked for many sensors.
#[derive(Debug, Clone, Copy)]
pub(super) struct Socket {
    pin: Node,
    end: Node,
    /// Conductance between the two nodes; infinite where they are one.
    line: f64,
    /// The voltage at the far end of the sensor.
    far: f64,
    probe: Probe,
}

impl Socket {
    /// The probed voltage with a sensor in it.
    pub(super) fn volts(&self, sensor: f64) -> f64 {
        let solved = self.solve(sensor);
        match self.probe {
            Probe::ControlUnit => solved.pin,
            Probe::Sensor => solved.sensor,
        }
    }

    /// How much the probed voltage rises for one ohm more of the sensor, in V/Ω.
    ///
    /// A little more conductance lets as much more current into the sensor's node
    /// as the voltage across the sensor drives through it; what that moves is the
    /// resistance that the node, or the pin beyond the line, looks back into.
    pub(super) fn slope(&self, sensor: f64) -> f64 {
        let across = self.far - self.solve(sensor).sensor;
        let (pin, end) = (self.pin, self.end_with(sensor));
        let per_conductance = if end.pinned.is_some() {
            0.0
        } else if self.line.is_infinite() {
            across / (pin.conductance + end.conductance)
        } else {
            let line = self.line;
            let seen = line * pin.conductance / (line + pin.conductance);
            let share = match self.probe {
                Probe::ControlUnit => line / (line + pin.conductance),
                Probe::Sensor => 1.0,
            };
            share * across / (end.conductance + seen)
        };
        // d(unit/R) = −unit/R² dR; two divisions keep R² from leaving the range of numbers.
        -per_conductance * (pin.unit / sensor) / sensor
    }

    fn solve(&self, sensor: f64) -> Solved {
        join(self.pin, self.end_with(sensor), self.line)
    }

    /// The sensor's node with a sensor; a short of something else outweighs it.
    fn end_with(&self, sensor: f64) -> Node {
        if self.end.pinned.is_some() { self.end } else { self.end.to(sensor, self.far) }
    }
}

impl Network {
    /// The probed voltage.
    pub(super) fn volts(&self, sensor: f64, disturbance: &Disturbance) -> f64 {
        self.socket(disturbance).volts(sensor)
    }

    /// Both voltages, to the unit's ground.
    pub(super) fn solve(&self, sensor: f64, disturbance: &Disturbance) -> Solved {
        self.socket(disturbance).solve(sensor)
    }

    /// Everything but the sensor, summed up.
    pub(super) fn socket(&self, disturbance: &Disturbance) -> Socket {
        let (pin, end) = self.nodes(disturbance);
        let line = self.series + disturbance.contact.ohms();
        Socket {
            pin,
            end,
            line: if line <= 0.0 { f64::INFINITY } else { pin.unit / line },
            far: self.sensor_end(disturbance),
            probe: self.probe,
        }
    }

    /// The sensor's resistance that gives this voltage at the pin; `None` where
    /// none does.
    ///
    /// Not for a line that is open: the pin then says nothing of the sensor.
    pub(super) fn sensor_behind(&self, volts: f64, disturbance: &Disturbance) -> Option<f64> {
        let (pin, end) = self.nodes(disturbance);
        let into_line = pin.current - pin.conductance * volts;
        let line = (self.series + disturbance.contact.ohms()) / pin.unit;
        let at_sensor = volts - into_line * line;
        let into_sensor = into_line + end.current - end.conductance * at_sensor;
        let ohms = (at_sensor - self.sensor_end(disturbance)) / into_sensor * pin.unit;
        (ohms.is_finite() && ohms > 0.0).then_some(ohms)
    }

    /// The voltage across the sensor itself.
    pub(super) fn across_sensor(&self, sensor: f64, disturbance: &Disturbance) -> f64 {
        self.solve(sensor, disturbance).sensor - self.sensor_end(disturbance)
    }

    /// The resistance that the pin looks back into, all sources taken as shorts.
    pub(super) fn source_resistance(&self, sensor: f64, disturbance: &Disturbance) -> f64 {
        let (pin, end) = self.nodes(disturbance);
        let end = end.to(sensor, self.sensor_end(disturbance));
        let line = self.series + disturbance.contact.ohms();
        let behind = if end.pinned.is_some() { 0.0 } else { pin.unit / end.conductance };
        pin.unit / (pin.conductance + pin.unit / (line + behind))
    }

    /// The voltage at the far end of the sensor.
    fn sensor_end(&self, disturbance: &Disturbance) -> f64 {
        match self.topology {
            Topology::PullUp => self.offset + disturbance.lift.volts(),
            Topology::PullDown => self.reference,
        }
    }

    /// Pin and sensor's node without the sensor.
    fn nodes(&self, disturbance: &Disturbance) -> (Node, Node) {
        let at = |probe| if self.probe == probe { self.meter } else { f64::INFINITY };
        let resistor = self.resistor * disturbance.resistor;
        let (resistor_end, parallel_end) = match self.topology {
            Topology::PullUp => (self.reference, 0.0),
            Topology::PullDown => (0.0, self.reference),
        };
        let pin = Node::new(resistor)
            .to(resistor, resistor_end)
            .to(self.parallel, parallel_end)
            .to(self.reader, self.reader_reference)
            .to(at(Probe::ControlUnit), 0.0);
        let end = Node::new(resistor)
            .to(at(Probe::Sensor), 0.0)
            .to(disturbance.leak_across.ohms(), self.sensor_end(disturbance))
            .to(disturbance.leak_to_ground.ohms(), 0.0)
            .to(disturbance.leak_to_reference.ohms(), self.reference)
            .to(disturbance.leak_to_battery.ohms(), disturbance.battery.volts());
        (pin, end)
    }
}

/// Joins two nodes by a conductance; an open line leaves each to itself.
fn join(pin: Node, end: Node, line: f64) -> Solved {
    if line.is_infinite() {
        let both = (pin.current + end.current) / (pin.conductance + end.conductance);
        let volts = end.pinned.unwrap_or(both);
        return Solved { pin: volts, sensor: volts };
    }
    if let Some(volts) = end.pinned {
        let pin = (pin.current + line * volts) / (pin.conductance + line);
        return Solved { pin, sensor: volts };
    }
    let through = line + end.conductance;
    if through <= 0.0 {
        // The line is open and nothing holds its end: a meter there would read nothing.
        return Solved { pin: pin.current / pin.conductance, sensor: 0.0 };
    }
    let share = line / through;
    let volts = (pin.current + share * end.current) / (pin.conductance + share * end.conductance);
    Solved { pin: volts, sensor: (end.current + line * volts) / through }
}
