//! Builds tests.

mod expect;
mod probes;

use super::super::fact::Fact;
use super::super::test::Test;
use super::{multimeter, text};
use crate::spec::{self, Set};
use expect::expect;
pub use expect::step_number;
pub use probes::probes;
use probes::{end, probe_use};

pub(super) fn build(set: &Set, id: &str, written: &spec::Test) -> Option<Test> {
    let named = &written.component.as_ref()?.value;
    let component = set.named_component(named)?;
    let title = component.title?.value.clone();
    let probes = probes(set, written).map(|probe| probe.and_then(|(key, pin)| probe_use(set, id, key, pin)));
    let mode = written.mode.as_ref().map(|mode| {
        let title = set.modes.get(&mode.value).and_then(|entry| text(&entry.item.title));
        title.map(|title| (mode.value.clone(), title))
    });
    let pairs =
        |first: &spec::At<String>, second: &spec::At<String>| (first.value.clone(), second.value.clone());
    let texts = |texts: &[spec::At<String>]| texts.iter().map(|text| text.value.clone()).collect();
    Some(Test {
        id: id.to_owned(),
        title: text(&written.title)?,
        thing: component.thing,
        component: component.id.to_owned(),
        component_title: title,
        system: component.system?.to_owned(),
        reads: written.quantity.as_ref()?.value,
        place: written.place.as_ref()?.value,
        mated: written.mated.as_ref().map(|mated| mated.value),
        end: probes.iter().flatten().find_map(|probe| end(set, probe)),
        probes,
        ignition: written.ignition.as_ref().map(|ignition| ignition.value),
        mode: match mode {
            Some(mode) => Some(mode?),
            None => None,
        },
        set_point: text(&written.set_point),
        blower: text(&written.blower),
        soak: written.soak.clone(),
        wait: written.wait.clone(),
        before: texts(&written.before),
        meter: written.meter.as_ref()?.value,
        instrument: multimeter(set, &written.instrument),
        expect: expect(set, component, written.expect.as_ref()?)?,
        differs: written.differs.iter().map(|row| pairs(&row.when, &row.expect)).collect(),
        faults: written.faults.iter().map(|row| pairs(&row.reads, &row.means)).collect(),
        next: texts(&written.next),
        built: [text(&written.built_from), text(&written.built_to)],
        facts: facts(id, written)
            .into_iter()
            .chain(expect::component_facts(set, component, written))
            .collect(),
    })
}

/// The values written in the test itself.
fn facts(id: &str, test: &spec::Test) -> Vec<Fact> {
    let mut facts = Vec::new();
    let key = |part: &str| format!("test.{id}.{part}");
    macro_rules! add {
        ($part:expr, $value:expr) => {
            if let Some(value) = $value {
                facts.push(Fact::new(key($part), "fact-test-value", Some(value)));
            }
        };
    }
    add!("soak", test.soak.as_ref());
    add!("wait", test.wait.as_ref());
    let Some(expect) = &test.expect else { return facts };
    add!("expect.window", expect.window.as_ref());
    add!("expect.least", expect.least.as_ref());
    add!("expect.most", expect.most.as_ref());
    add!("expect.at", expect.at.as_ref());
    add!("expect.start", expect.sweep.start.as_ref());
    add!("expect.end", expect.sweep.end.as_ref());
    add!("expect.time", expect.sweep.time.as_ref());
    add!("expect.largest_step", expect.sweep.largest_step.as_ref());
    add!("expect.frequency", expect.wave.frequency.as_ref());
    add!("expect.duty", expect.wave.duty.as_ref());
    add!("expect.high", expect.wave.high.as_ref());
    add!("expect.low", expect.wave.low.as_ref());
    for (index, step) in expect.steps.iter().enumerate() {
        add!(&format!("expect.steps.{}", index + 1), step.after.as_ref());
        add!(&format!("expect.steps.{}", index + 1), step.within.as_ref());
    }
    facts
}
