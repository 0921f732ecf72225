//! What a test expects, from its own table or its component's.

use super::super::super::fact::Fact;
use super::super::super::test::{Bounds, Expect, SequenceStep, Sweep, SweepGiven, TruthRow, Wave};
use crate::quantity::{Dimension, Interval, Measured, Scalar, measured, window};
use crate::spec::{self, Component, Form, Origin, Set, Sourced};

/// `None` where its form lacks what it needs.
pub(super) fn expect(set: &Set, component: Component<'_>, written: &spec::Expect) -> Option<Expect> {
    let origin = written.from.as_ref().map(|from| from.value);
    Some(match written.form.as_ref()?.value {
        Form::Curve => Expect::Curve(written.at.clone()),
        Form::Window => Expect::Window(bounds(set, component, written)?),
        Form::Limit => Expect::Limit(bounds(set, component, written)?),
        Form::Ratio => Expect::Ratio(written.to.as_ref()?.value, bounds(set, component, written)?),
        Form::Difference => {
            let [first, second] = &written.of.as_ref()?[..] else { return None };
            Expect::Difference([first.value.clone(), second.value.clone()], bounds(set, component, written)?)
        }
        Form::Sweep if origin == Some(Origin::Travel) => Expect::Sweep(Sweep::Travel),
        Form::Sweep => Expect::Sweep(Sweep::Given(Box::new(SweepGiven {
            start: written.sweep.start.clone()?,
            end: written.sweep.end.clone()?,
            time: written.sweep.time.clone(),
            largest_step: written.sweep.largest_step.clone(),
        }))),
        Form::Sequence => Expect::Sequence(written.steps.iter().map(step).collect()),
        Form::TruthTable => match origin {
            Some(origin) => Expect::TruthOf(origin),
            None => truth_table(written)?,
        },
        Form::Waveform => Expect::Wave(Wave {
            frequency: written.wave.frequency.as_ref().map(|range| range.value),
            duty: written.wave.duty.as_ref().map(|range| range.value),
            high: written.wave.high.as_ref().map(|range| range.value),
            low: written.wave.low.as_ref().map(|range| range.value),
        }),
    })
}

fn bounds(set: &Set, component: Component<'_>, written: &spec::Expect) -> Option<Bounds> {
    if let Some(from) = &written.from {
        return Some(match from.value {
            Origin::BlowerStep => Bounds::Step(step_number(written.step.as_ref()?.value)?),
            origin => match value(set, component, origin) {
                Some(value) => value.bounds,
                None => Bounds::Of(origin),
            },
        });
    }
    if let Some(window) = &written.window {
        return Some(within(window));
    }
    let (low, high) = (written.least.clone(), written.most.clone());
    (low.is_some() || high.is_some()).then_some(Bounds::Given { low, high })
}

fn within(window: &Sourced<Interval<Measured>>) -> Bounds {
    let end = |value: Measured| Some(window.map(value));
    Bounds::Given { low: end(window.value.low), high: end(window.value.high) }
}

/// A limit that stands in the component's own table.
struct Value {
    bounds: Bounds,
    fact: Fact,
}

/// The limit that a component's own table holds; `None` where it has to be computed.
fn value(set: &Set, component: Component<'_>, origin: Origin) -> Option<Value> {
    let id = component.id;
    let key = |part: &str| format!("{}.{id}.{part}", component.thing.key());
    let one = |part: &str, label, value: Option<Sourced<Measured>>, is_least: bool| {
        let fact = Fact::new(key(part), label, value.as_ref());
        let bounds = match is_least {
            true => Bounds::Given { low: value, high: None },
            false => Bounds::Given { low: None, high: value },
        };
        Some(Value { bounds, fact })
    };
    let driver = || Some(&set.drivers.get(id)?.item);
    match origin {
        Origin::Isolation => {
            let isolation = driver()?.coil.as_ref().and_then(|coil| again(coil.isolation.as_ref()));
            one("coil.isolation", "fact-isolation", isolation, true)
        }
        Origin::SupplyDrop => {
            let drop = driver()?.limits.as_ref().and_then(|limits| again(limits.supply_drop.as_ref()));
            one("limits.supply_drop", "fact-supply-drop", drop, false)
        }
        Origin::GroundDrop => {
            let drop = driver()?.limits.as_ref().and_then(|limits| again(limits.ground_drop.as_ref()));
            one("limits.ground_drop", "fact-ground-drop", drop, false)
        }
        Origin::WireDrop => {
            let drop = again(set.wires.get(id)?.item.drop_limit.as_ref());
            one("drop_limit", "fact-drop-limit", drop, false)
        }
        Origin::Span => {
            let span = again(set.lights.get(id)?.item.least_span.as_ref());
            one("least_span", "fact-least-span", span, true)
        }
        Origin::MotorCurrent => {
            let motor = set.actuators.get(id)?.item.motor.as_ref();
            let current = motor.and_then(|motor| motor.current.as_ref());
            let fact = Fact::new(key("motor.current"), "fact-free-run-current", current);
            let read = current.and_then(|current| {
                let ends = window(&current.written, Dimension::Current).ok()?;
                Some(within(&current.map(ends)))
            });
            Some(Value { bounds: read.unwrap_or(Bounds::Given { low: None, high: None }), fact })
        }
        _ => None,
    }
}

/// A value in the unit it was written in.
fn again<T: Scalar>(value: Option<&Sourced<T>>) -> Option<Sourced<Measured>> {
    let value = value?;
    Some(value.map(measured(&value.written, T::DIMENSION).ok()?))
}

/// The values of the component that the test's limits are taken from.
pub(super) fn component_facts(set: &Set, component: Component<'_>, test: &spec::Test) -> Option<Fact> {
    let origin = test.expect.as_ref()?.from.as_ref()?.value;
    value(set, component, origin).map(|value| value.fact)
}

/// A whole number from one on.
#[must_use]
pub fn step_number(number: f64) -> Option<usize> {
    (1..=u8::MAX).find(|&step| f64::from(step).total_cmp(&number).is_eq()).map(usize::from)
}

fn step(step: &spec::SequenceStep) -> SequenceStep {
    SequenceStep {
        event: step.event.value.clone(),
        expect: step.expect.value.clone(),
        least: step.after.as_ref().map(|after| after.value.low),
        most: step.after.as_ref().map(|after| after.value.high).or(step.within.as_ref().map(|at| at.value)),
    }
}

fn truth_table(written: &spec::Expect) -> Option<Expect> {
    let texts = |texts: &[spec::At<String>]| texts.iter().map(|text| text.value.clone()).collect();
    let row = |row: &spec::TruthRow| TruthRow { name: row.name.value.clone(), values: texts(&row.values) };
    Some(Expect::TruthTable(texts(written.columns.as_ref()?), written.rows.iter().map(row).collect()))
}
