//! How a door actuator moves: time, current, sweep; and what it means where it does not.

use super::front::amperes;
use crate::document::figures;
use crate::document::grid::{Column, Grid};
use crate::document::marks::Marks;
use crate::model::Actuator;
use crate::quantity::{Ratio, Rounding, decimals_for, figure};
use crate::spec::Role;
use crate::words::{Message, Words};

/// What, how much, and what a figure outside it means: all that is known of this actuator.
pub(super) fn compose(words: &Words, actuator: &Actuator, marks: &mut Marks) -> Grid {
    let at_most = |value: String| words.say(&Message::new("card-act-at-most").with("value", value));
    let missing = || words.word("doc-not-given");
    let percent = |part: Option<Ratio>| {
        part.map(|part| at_most(format!("{} %", figures::trimmed(100.0 * part.part()))))
    };
    let current = |current| {
        let (value, unit) = amperes(current);
        format!("{value} {unit}")
    };
    let sweep = &actuator.sweep;
    let time =
        sweep.time.map_or_else(missing, |time| at_most(format!("{} s", figures::trimmed(time.seconds()))));
    let track = actuator.feedback.as_ref().and_then(|feedback| feedback.total_window()).map(|total| {
        let decimals = decimals_for(total.low.ohms());
        let low = figure(total.low.ohms(), decimals, Rounding::Up);
        format!("{low}–{} Ω", figure(total.high.ohms(), decimals, Rounding::Down))
    });
    let contacts = actuator.contacts.as_ref().and_then(|contacts| contacts.closed);
    let closed = contacts.or(actuator.ladder.as_ref().and_then(|ladder| ladder.ladder.contact));
    let closed = closed.map(|closed| at_most(format!("{} Ω", figures::trimmed(closed.ohms()))));
    let held = actuator.stall_current.map(current);
    let fed = words.word(match actuator.plain_dc {
        Some(true) => "card-act-fed-yes",
        Some(false) => "card-act-fed-no",
        None => "card-act-fed-unknown",
    });
    let moves = if actuator.plain_dc == Some(true) { "card-act-fed-else" } else { "card-act-fed-never" };
    let rows = [
        ("card-act-time", Some(time), "card-act-time-else"),
        (
            "card-act-current",
            Some(actuator.motor_current.map_or_else(missing, current)),
            "card-act-current-else",
        ),
        ("card-act-stall", held, "card-act-stall-else"),
        ("card-act-fed", Some(fed), moves),
        ("card-act-step", percent(sweep.step), "card-act-step-else"),
        ("card-act-dead-band", percent(sweep.dead_band), "card-act-dead-band-else"),
        ("card-act-hysteresis", percent(sweep.hysteresis), "card-act-hysteresis-else"),
        ("card-act-track", track, "card-act-track-else"),
        ("card-act-contact", closed, "card-act-contact-else"),
    ];
    let row = |(what, value, other): (&str, Option<String>, &str)| {
        Some(vec![words.word(what), value?, words.word(other)])
    };
    let heads = ["card-act-what", "card-act-good", "card-act-else"];
    Grid {
        title: match &actuator.moves {
            Some(moves) => {
                let fact = actuator.facts.iter().find(|fact| fact.label == "fact-moves");
                let mark = fact.map(|fact| format!("[{}]", marks.mark(words, fact))).unwrap_or_default();
                words.say(&Message::new("card-act-motion").with("moves", moves).with("mark", mark))
            }
            None => words.word("card-act-motion-unknown"),
        },
        notes: Vec::new(),
        columns: heads.map(|head| Column::words(words.word(head))).into(),
        rows: rows.into_iter().filter_map(row).collect(),
    }
}

/// How the control unit learns the stops again, and that nothing is judged meanwhile.
pub(super) fn recalibration(words: &Words, actuator: &Actuator, marks: &mut Marks) -> Vec<String> {
    let fact = actuator.facts.iter().find(|fact| fact.label == "fact-recalibration");
    let how = fact.map_or_else(|| words.word("doc-not-given"), |fact| marks.shown(words, fact));
    vec![how, words.word("card-act-learning")]
}

/// The lead's own steps, or those that any actuator of this form calls for.
pub(super) fn next(words: &Words, actuator: &Actuator) -> Vec<String> {
    if !actuator.next.is_empty() {
        return actuator.next.clone();
    }
    let pin = |role, id| {
        let pin = actuator.unit_pins().find(|pin| pin.role == role);
        pin.map_or_else(|| words.word(id), |pin| pin.pin.name.clone())
    };
    let usual: &[&str] = match () {
        () if actuator.stops.is_some() => &["card-act-next-both", "card-act-next-one", "card-act-next-sweep"],
        () if actuator.ladder.is_some() => {
            &["card-act-next-ladder", "card-act-next-between", "card-act-next-dirty"]
        }
        () if actuator.contacts.is_some() => &["card-act-next-code", "card-act-next-common"],
        () => &["card-act-next-silent", "card-act-next-volts"],
    };
    let closed = actuator.contacts.as_ref().and_then(|contacts| contacts.closed);
    let closed = closed.map(|closed| format!("{} Ω", figures::trimmed(closed.ohms())));
    let say = |id: &&'static str| {
        let message = Message::new(id)
            .with("reference", pin(Role::Reference, "card-pin-reference"))
            .with("return", pin(Role::Return, "card-pin-return"))
            .with("common", pin(Role::Common, "card-pin-common"))
            .with("closed", closed.clone().unwrap_or_else(|| words.word("doc-not-given")));
        words.say(&message)
    };
    usual.iter().map(say).collect()
}
