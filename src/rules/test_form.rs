//! The form of what a test expects has what it needs, and only once.

use crate::diag::{Finding, Findings, Place};
use crate::spec::{Entry, Expect, Form, Origin, Reads, Set, Test, Thing};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.tests {
        let Some(expect) = &entry.item.expect else { continue };
        let Some(form) = &expect.form else { continue };
        let rule = Rule { set, id, entry, expect, form: form.value, place: &form.place, findings };
        rule.check();
    }
}

struct Rule<'a> {
    set: &'a Set,
    id: &'a str,
    entry: &'a Entry<Test>,
    expect: &'a Expect,
    form: Form,
    place: &'a Place,
    findings: &'a Findings,
}

impl Rule<'_> {
    fn check(&self) {
        let Expect { from, window, least, most, .. } = self.expect;
        let written = [window.is_some(), least.is_some(), most.is_some()];
        let limits = written.iter().filter(|given| **given).count();
        match self.form {
            Form::Curve => self.curve(),
            Form::Window | Form::Ratio => {
                self.exactly_one(usize::from(from.is_some()) + limits, "`window`, `from`");
            }
            Form::Limit | Form::Difference => {
                self.exactly_one(usize::from(from.is_some()) + limits, "`least`, `most`, `from`");
            }
            Form::Sweep => {
                let ends = [&self.expect.sweep.start, &self.expect.sweep.end];
                let given = ends.iter().filter(|end| end.is_some()).count();
                match (from.is_some(), given) {
                    (true, 0) | (false, 2) => {}
                    (true, _) => self.exactly_one(2, "`start` and `end`, `from`"),
                    (false, _) => self.exactly_one(0, "`start` and `end`, `from`"),
                }
            }
            Form::Sequence => self.sequence(),
            Form::TruthTable => self.truth_table(),
            Form::Waveform => {
                let wave = &self.expect.wave;
                if wave.frequency.is_none() && wave.duty.is_none() {
                    self.lacks("`frequency`, `duty`");
                }
                let whole = |range: &crate::quantity::Interval<crate::quantity::Ratio>| {
                    range.low.part() >= 0.0 && range.high.part() <= 1.0
                };
                if let Some(duty) = wave.duty.as_ref().filter(|duty| !whole(&duty.value)) {
                    let message = Message::new("rule-test-duty").with("written", &duty.written);
                    let label = Message::new("wanted-duty");
                    self.findings.report(Finding::error(message, duty.place.clone(), label));
                }
                let slow = wave.frequency.as_ref().filter(|range| range.value.low.hertz() <= 0.0);
                if let Some(frequency) = slow {
                    let message = Message::new("rule-test-frequency").with("written", &frequency.written);
                    let label = Message::new("wanted-positive-frequency");
                    self.findings.report(Finding::error(message, frequency.place.clone(), label));
                }
            }
        }
        if self.form == Form::Ratio && self.expect.to.is_none() {
            self.lacks("`to`");
        }
        if self.form == Form::Difference && self.expect.of.as_ref().is_none_or(|of| of.len() != 2) {
            self.lacks("`of`");
        }
        self.origin();
    }

    fn curve(&self) {
        let test = &self.entry.item;
        let Some(component) = test.component.as_ref().and_then(|at| self.set.named_component(&at.value))
        else {
            return;
        };
        let reads = test.quantity.as_ref().map(|at| at.value);
        let fits = match component.thing {
            Thing::Sensor => matches!(reads, Some(Reads::Voltage | Reads::Resistance) | None),
            Thing::Driver => {
                let coil = self.set.drivers.get(component.id).is_some_and(|entry| entry.item.coil.is_some());
                coil && reads.is_none_or(|reads| reads == Reads::Resistance)
            }
            Thing::Transducer => {
                if self.expect.at.is_none() {
                    self.lacks("`at`");
                }
                reads.is_none_or(|reads| reads == Reads::Voltage)
            }
            _ => false,
        };
        if !fits {
            let message = Message::new("rule-test-no-curve").with("id", self.id);
            let finding = Finding::error(message, self.place.clone(), Message::new("wanted-with-curve"));
            let label = Message::new("label-component");
            self.findings.report(match &test.component {
                Some(at) => finding.because(at.place.clone(), label),
                None => finding,
            });
        }
    }

    fn sequence(&self) {
        let steps = &self.expect.steps;
        if steps.len() < 2 {
            self.lacks("`steps`");
        }
        let timed = |step: &&crate::spec::SequenceStep| step.after.is_some() || step.within.is_some();
        // The first step is what the delays are counted from.
        for step in steps.iter().skip(1).filter(|step| !timed(step)) {
            let message = Message::new("rule-test-no-delay").with("event", &step.event.value);
            let label = Message::new("wanted-delay");
            self.findings.report(Finding::error(message, step.event.place.clone(), label));
        }
        for step in steps.iter().filter(|step| step.after.is_some() && step.within.is_some()) {
            let message = Message::new("rule-test-two-delays").with("event", &step.event.value);
            self.findings.report(Finding::error(
                message,
                step.event.place.clone(),
                Message::new("wanted-delay"),
            ));
        }
    }

    fn truth_table(&self) {
        let Expect { from, columns, rows, .. } = self.expect;
        if from.is_some() {
            if columns.is_some() || !rows.is_empty() {
                self.exactly_one(2, "`columns` and `rows`, `from`");
            }
            return;
        }
        let Some(columns) = columns.as_ref().filter(|columns| !columns.is_empty() && !rows.is_empty()) else {
            return self.exactly_one(0, "`columns` and `rows`, `from`");
        };
        for row in rows.iter().filter(|row| row.values.len() != columns.len()) {
            let message = Message::new("rule-test-row-length")
                .with("name", &row.name.value)
                .with("found", row.values.len())
                .with("wanted", columns.len());
            let label = Message::new("wanted-row-length").with("wanted", columns.len());
            self.findings.report(Finding::error(message, row.place.clone(), label));
        }
    }

    /// Which component has which figure, and in which form it is one.
    fn origin(&self) {
        let Some(from) = &self.expect.from else { return };
        let (thing, forms): (Thing, &[Form]) = match from.value {
            Origin::Unplugged => (Thing::Sensor, &[Form::Window]),
            Origin::LowStop | Origin::HighStop => (Thing::Actuator, &[Form::Window, Form::Ratio]),
            Origin::Track | Origin::MotorCurrent => (Thing::Actuator, &[Form::Window]),
            Origin::Travel => (Thing::Actuator, &[Form::Sweep]),
            Origin::Contacts => (Thing::Actuator, &[Form::TruthTable]),
            Origin::Isolation | Origin::SupplyDrop | Origin::GroundDrop => (Thing::Driver, &[Form::Limit]),
            Origin::WireDrop => (Thing::Wire, &[Form::Limit]),
            Origin::BlowerStep => (Thing::Driver, &[Form::Ratio]),
            Origin::Span => (Thing::Light, &[Form::Difference]),
            Origin::Reference | Origin::Battery => (Thing::System, &[Form::Window]),
            Origin::Mode => (Thing::System, &[Form::TruthTable]),
        };
        let reads = match from.value {
            Origin::Track | Origin::Isolation => Some(Reads::Resistance),
            Origin::MotorCurrent => Some(Reads::Current),
            Origin::Contacts => Some(Reads::Contacts),
            Origin::Mode => Some(Reads::Observation),
            _ => Some(Reads::Voltage),
        };
        let test = &self.entry.item;
        let component = test.component.as_ref().and_then(|at| self.set.named_component(&at.value));
        let wrong = |label: Message, place: Option<&Place>, other: &'static str| {
            let message = Message::new("rule-test-origin").with("word", from.value.word());
            let finding = Finding::error(message, from.place.clone(), label);
            self.findings.report(match place {
                Some(place) => finding.because(place.clone(), Message::new(other)),
                None => finding,
            });
        };
        if component.is_some_and(|component| component.thing != thing) {
            let label = Message::new("wanted-origin-of").with("kind", thing.key());
            return wrong(label, test.component.as_ref().map(|at| &at.place), "label-component");
        }
        if !forms.contains(&self.form) {
            let words = forms.iter().map(|form| format!("`{}`", form.word())).collect::<Vec<_>>().join(", ");
            return wrong(
                Message::new("wanted-origin-form").with("words", words),
                Some(self.place),
                "label-form",
            );
        }
        if test.quantity.as_ref().is_some_and(|at| Some(at.value) != reads) {
            let label = Message::new("wanted-origin-quantity");
            return wrong(label, test.quantity.as_ref().map(|at| &at.place), "label-quantity");
        }
        match from.value {
            Origin::Mode if test.mode.is_none() => self.lacks("`mode`"),
            Origin::BlowerStep => self.blower_step(component.map(|component| component.id)),
            Origin::Contacts => {
                let coded = component
                    .and_then(|component| self.set.actuators.get(component.id))
                    .is_none_or(|entry| entry.item.contacts.is_some() || entry.item.ladder.is_some());
                if !coded {
                    wrong(
                        Message::new("wanted-coded-contacts"),
                        test.component.as_ref().map(|at| &at.place),
                        "label-component",
                    );
                }
            }
            _ => {}
        }
    }

    fn blower_step(&self, id: Option<&str>) {
        let Some(step) = &self.expect.step else { return self.lacks("`step`") };
        let blower = id.and_then(|id| self.set.drivers.get(id)?.item.blower.as_ref());
        let steps = blower.map_or(0, |blower| {
            let parts = blower.steps.as_ref().map_or(0, Vec::len);
            parts.max(blower.resistors.as_ref().map_or(0, Vec::len))
        });
        if crate::model::step_number(step.value).is_none_or(|number| number > steps) {
            let message = Message::new("rule-test-no-step").with("step", &step.written).with("steps", steps);
            let label = Message::new("wanted-step").with("steps", steps);
            self.findings.report(Finding::error(message, step.place.clone(), label));
        }
    }

    /// One of several ways to state limits, and not two of them.
    fn exactly_one(&self, found: usize, keys: &'static str) {
        let id = match found {
            0 => return self.lacks(keys),
            1 => return,
            _ => "rule-test-twice",
        };
        let message = Message::new(id).with("form", self.form.word());
        let label = Message::new("wanted-one-of").with("words", keys);
        self.findings.report(Finding::error(message, self.place.clone(), label));
    }

    fn lacks(&self, keys: &'static str) {
        // What could not be read has a finding already.
        if self.expect.misread {
            return;
        }
        let message = Message::new("rule-test-lacks").with("form", self.form.word());
        let label = Message::new("wanted-one-of").with("words", keys);
        self.findings.report(Finding::error(message, self.place.clone(), label));
    }
}
