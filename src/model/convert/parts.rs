//! Actuators, light sensors and transducers as physics computes them.

use crate::physics::contacts::{self, ContactsError, TruthTable};
use crate::physics::ladder::{Ladder, Wiring};
use crate::physics::light::{LightSensor, LightTopology};
use crate::physics::potentiometer::{Feedback, LoadTo};
use crate::physics::transducer::{Point, Sense, Transducer, TransducerError};
use crate::quantity::{Resistance, Toleranced, Voltage};
use crate::spec::{self, Sourced};

/// The reference of a part: its own, or the system's.
type Reference<'a> = Option<&'a Sourced<Toleranced<Voltage>>>;

/// The feedback of an actuator; `None` where track or reference was not given.
pub(in crate::model) fn feedback(written: &spec::Feedback, reference: Reference<'_>) -> Option<Feedback> {
    let value = |part: &Option<Sourced<Toleranced<Resistance>>>| part.as_ref().map(|part| part.value);
    let to = written.load_to.as_ref().map(|to| match to.value {
        spec::LoadTo::Ground => LoadTo::Ground,
        spec::LoadTo::Reference => LoadTo::Reference,
    });
    Some(Feedback {
        track: value(&written.track)?,
        ends: value(&written.ends),
        contact: value(&written.contact),
        load: value(&written.load).zip(to),
        reference: written.reference.as_ref().or(reference)?.value,
    })
}

/// The codes of an actuator's positions; `None` where there are no names or no positions.
///
/// # Errors
/// Where a code is not for as many contacts as there are names: by its index.
pub fn truth_table(written: &spec::Contacts) -> Option<Result<TruthTable, ContactsError>> {
    let names = written.names.as_ref()?.len();
    if written.positions.is_empty() {
        return None;
    }
    let code = |(index, position): (usize, &spec::DoorPosition)| {
        let closed = position.code.closed(names).ok_or(ContactsError::Length(index))?;
        contacts::Code::new(&closed)
    };
    let codes: Result<Vec<contacts::Code>, ContactsError> =
        written.positions.iter().enumerate().map(code).collect();
    Some(codes.and_then(TruthTable::new))
}

/// How many contacts a ladder has; `None` where its kind or its chain was not given.
#[must_use]
pub fn ladder_contacts(written: &spec::Ladder) -> Option<usize> {
    let resistors = written.chain.as_ref()?.len();
    Some(match written.kind.as_ref()?.value {
        spec::LadderKind::Series => resistors + 1,
        spec::LadderKind::Parallel => resistors,
    })
}

/// A resistor ladder; `None` where kind, chain, pull-up or reference was not given.
#[must_use]
pub fn ladder(written: &spec::Ladder, reference: Reference<'_>) -> Option<Ladder> {
    let chain = written.chain.as_ref()?.iter().map(|part| part.value).collect();
    Some(Ladder {
        wiring: match written.kind.as_ref()?.value {
            spec::LadderKind::Series => {
                Wiring::Series { chain, end: written.end.as_ref().map(|end| end.value) }
            }
            spec::LadderKind::Parallel => Wiring::Parallel { chain },
        },
        pull_up: written.resistor.as_ref()?.value,
        reference: written.reference.as_ref().or(reference)?.value,
        contact: written.closed.as_ref().map(|closed| closed.value),
    })
}

/// A light sensor; `None` where its current or a part of its circuit was not given.
#[must_use]
pub fn light(written: &spec::Light, reference: Reference<'_>) -> Option<LightSensor> {
    let circuit = written.circuit.as_ref()?;
    Some(LightSensor {
        current: written.current.as_ref()?.value,
        at: written.at.as_ref()?.value,
        dark: written.dark.as_ref().map(|dark| dark.value),
        topology: match circuit.topology.as_ref()?.value {
            spec::LightTopology::PullUp => LightTopology::PullUp,
            spec::LightTopology::Load => LightTopology::Load,
        },
        resistor: circuit.resistor.as_ref()?.value,
        reference: circuit.reference.as_ref().or(reference)?.value,
    })
}

/// What a transducer's pressures are measured against.
pub(in crate::model) fn sense(written: &spec::Transducer) -> Option<Sense> {
    Some(match written.pressure.as_ref()?.value {
        spec::Sense::Absolute => Sense::Absolute,
        spec::Sense::Gauge => Sense::Gauge,
    })
}

/// A transducer's line; `None` where a part of one of its points was not given.
///
/// # Errors
/// Where the two points, the accuracy or the clamp make none.
pub fn transducer(written: &spec::Transducer) -> Option<Result<Transducer, TransducerError>> {
    let point = |point: &Option<spec::LinePoint>| {
        let point = point.as_ref()?;
        Some(Point { pressure: point.pressure.as_ref()?.value, ratio: point.ratio.as_ref()?.value })
    };
    let accuracy = written.accuracy.as_ref().map(|accuracy| accuracy.value);
    let clamp = written.clamp.as_ref().map(|clamp| clamp.value);
    Some(Transducer::new(sense(written)?, point(&written.low)?, point(&written.high)?, accuracy, clamp))
}
