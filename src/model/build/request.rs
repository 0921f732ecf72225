//! Builds requests.

use super::{pin_use, text};
use crate::model::fact::Fact;
use crate::model::request::{Condition, Request, Scenario};
use crate::physics::request::{self, Trace};
use crate::spec::{self, Set};

pub(super) fn request(set: &Set, id: &str, written: &spec::Request) -> Option<Request> {
    let key = |part: &str| format!("request.{id}.{part}");
    let reads = |part: &str, label, value| Fact::new(key(&format!("reads.{part}")), label, value);
    let line = Fact::new(key("line"), "fact-request-line", written.line.as_ref());
    let conditions = written.conditions.iter().enumerate();
    let conditions: Vec<Condition> = conditions
        .map(|(index, written)| condition(&key(&format!("condition.{}", index + 1)), written))
        .collect::<Option<_>>()?;
    let scenario = match &written.scenario {
        Some(scenario) => Some(build_scenario(written, scenario)?),
        None => None,
    };
    Some(Request {
        id: id.to_owned(),
        title: text(&written.title)?,
        system: text(&written.system)?,
        line: pin_use(set, &written.line, line.clone()),
        hold: written.hold.as_ref().map(|hold| hold.value),
        reads: [
            reads("absent", "fact-reads-absent", written.absent.as_ref()),
            reads("waiting", "fact-reads-waiting", written.waiting.as_ref()),
            reads("granted", "fact-reads-granted", written.granted.as_ref()),
        ],
        conditions,
        scenario,
        facts: vec![line, Fact::new(key("hold"), "fact-hold", written.hold.as_ref())],
    })
}

fn condition(key: &str, written: &spec::Condition) -> Option<Condition> {
    let (watch, thing) = written.watch.first()?;
    let (effect, side) = (written.effect.as_ref()?.value, written.side.as_ref()?.value);
    let level = |level: &Option<spec::Sourced<spec::Level>>| level.as_ref().map(|level| level.value);
    let seconds = |time: &Option<spec::Sourced<_>>| {
        time.as_ref().map(|time: &spec::Sourced<crate::quantity::Duration>| time.value.seconds())
    };
    let levels = [level(&written.threshold), level(&written.release)];
    let delays = seconds(&written.delay).zip(seconds(&written.release_delay));
    let checked = match (levels, delays) {
        ([Some(threshold), Some(release)], Some(delays)) => {
            let levels = (threshold.number, release.number);
            Some(request::Condition::new((effect, side), levels, delays).ok()?)
        }
        _ => None,
    };
    let fact = |part: &str, label| (format!("{key}.{part}"), label);
    let (threshold, release) = (fact("threshold", "fact-threshold"), fact("release", "fact-release"));
    let (delay, after) = (fact("delay", "fact-delay"), fact("release_delay", "fact-release-delay"));
    Some(Condition {
        title: text(&written.title)?,
        effect,
        side,
        watch: *watch,
        thing: thing.value.clone(),
        dimension: written.quantity.as_ref()?.value,
        levels,
        facts: [
            Fact::new(threshold.0, threshold.1, written.threshold.as_ref()),
            Fact::new(release.0, release.1, written.release.as_ref()),
            Fact::new(delay.0, delay.1, written.delay.as_ref()),
            Fact::new(after.0, after.1, written.release_delay.as_ref()),
        ],
        checked,
    })
}

/// The scenario; a rule has seen that every condition has its trace.
fn build_scenario(request: &spec::Request, written: &spec::Scenario) -> Option<Scenario> {
    let trace = |condition: &spec::Condition| {
        let points = condition.trace.as_ref()?.iter();
        Trace::new(points.map(|point| (point.first.value.seconds(), point.second.value.number)).collect())
            .ok()
    };
    let requested = written.requested.as_ref()?.iter();
    Some(Scenario {
        title: text(&written.title)?,
        what: request::Scenario {
            length: written.length.as_ref()?.value.seconds(),
            requested: requested
                .map(|stretch| (stretch.value.low.seconds(), stretch.value.high.seconds()))
                .collect(),
            traces: request.conditions.iter().map(trace).collect::<Option<_>>()?,
        },
    })
}
