//! The resistors and references of actuators, light sensors and transducers, for
//! the rules that ask the same of each.

use crate::quantity::{Resistance, Toleranced, Voltage};
use crate::spec::{Set, Sourced};

/// Every resistor of an actuator, a light sensor or their circuits.
pub(super) fn resistors(set: &Set) -> impl Iterator<Item = &Sourced<Toleranced<Resistance>>> {
    let of_feedbacks = (set.actuators.values())
        .filter_map(|actuator| actuator.item.feedback.as_ref())
        .flat_map(|feedback| [&feedback.track, &feedback.ends, &feedback.contact, &feedback.load]);
    let ladders = || set.actuators.values().filter_map(|actuator| actuator.item.ladder.as_ref());
    let of_ladders = ladders().flat_map(|ladder| [&ladder.resistor, &ladder.end]);
    let of_chains = ladders().flat_map(|ladder| ladder.chain.iter().flatten());
    let of_lights = set.lights.values().filter_map(|light| light.item.circuit.as_ref());
    let of_lights = of_lights.map(|circuit| &circuit.resistor);
    of_feedbacks.chain(of_ladders).chain(of_lights).flatten().chain(of_chains)
}

/// Every reference of an actuator, a light sensor or a transducer that is not the system's.
pub(super) fn references(set: &Set) -> impl Iterator<Item = &Sourced<Toleranced<Voltage>>> {
    let actuators = set.actuators.values().flat_map(|actuator| {
        let feedback = actuator.item.feedback.as_ref().and_then(|feedback| feedback.reference.as_ref());
        [feedback, actuator.item.ladder.as_ref().and_then(|ladder| ladder.reference.as_ref())]
    });
    let lights = set.lights.values().map(|light| light.item.circuit.as_ref()?.reference.as_ref());
    let transducers = set.transducers.values().map(|transducer| transducer.item.reference.as_ref());
    actuators.chain(lights).chain(transducers).flatten()
}
