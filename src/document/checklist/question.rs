//! One step on paper: what to do, where, in which state, what to expect, where to go.

use schemars::JsonSchema;
use serde::Serialize;

use super::{Numbers, card_word};
use crate::document::expectation::{self, Tools};
use crate::document::marks::Marks;
use crate::document::{Context, ends, figures, said};
use crate::model::{Checklist, Expect, Probes, Question, Test};
use crate::spec::{Answer, Cost, Side, View};
use crate::words::{Message, Words};

/// A longer expectation is not a window that the eye returns to, but a sentence to read.
const WINDOW: usize = 48;

/// A step.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Block {
    /// Its number: `1`.
    number: String,
    /// What it is about, in a few words.
    title: String,
    /// What it costs, and how long it takes.
    cost: String,
    /// The steps that lead here.
    from: String,
    /// What is to be answered.
    question: String,
    /// What to do, where, in which state, what to expect.
    lines: Vec<Line>,
    /// The unit in the box for the reading; empty where there is no box.
    unit: String,
    /// An answer each.
    exits: Vec<Way>,
    /// Why it comes before a cheaper step; may be empty.
    because: String,
}

/// A labelled line: do, where, state, expect.
#[derive(Debug, Serialize, JsonSchema)]
struct Line {
    /// `do`, `where`, `state` or `expect`, in the language of the page.
    label: String,
    /// What stands behind it.
    text: String,
    /// Whether it is found at a glance: the pins.
    strong: bool,
    /// Whether it is what the eye returns to after the meter.
    window: bool,
    /// Letters of its sources; may be empty.
    marks: String,
}

/// A box to tick, and where to go then.
#[derive(Debug, Serialize, JsonSchema)]
struct Way {
    /// `yes`, `no` or `undecided`, in the language of the page.
    answer: String,
    /// Where to go then: `go to 2`, `end A`.
    go: String,
    /// What is seen then; may be empty.
    note: String,
    /// Whether that is an ending.
    ends: bool,
}

/// A step by its node.
pub(super) fn block(
    context: Context<'_>,
    checklist: &Checklist,
    numbers: &Numbers,
    node: usize,
    marks: &mut Marks,
) -> Option<Block> {
    let words = context.words;
    let step = checklist.steps.get(node)?;
    let cost = Message::new("check-cost")
        .with_word("cost", cost_word(step.cost))
        .with("time", step.time_fact.shown().unwrap_or_default())
        .with("mark", marks.mark(words, &step.time_fact));
    Some(Block {
        number: numbers.mark(node),
        title: step.title.clone(),
        cost: words.say(&cost),
        from: from(words, checklist, numbers, node),
        question: step.question.clone(),
        lines: lines(context, checklist, step, marks),
        unit: step.unit.clone().unwrap_or_default(),
        exits: (step.exits.iter())
            .map(|exit| {
                let ends = checklist.ways.is_ending(exit.to);
                let go = Message::new(if ends { "check-go-end" } else { "check-go" });
                Way {
                    answer: words.word(answer_word(exit.answer)),
                    go: words.say(&go.with("mark", numbers.mark(exit.to))),
                    note: exit.note.clone().unwrap_or_default(),
                    ends,
                }
            })
            .collect(),
        because: step.because.clone().unwrap_or_default(),
    })
}

/// Which steps lead to a node.
pub(super) fn from(words: &Words, checklist: &Checklist, numbers: &Numbers, node: usize) -> String {
    if checklist.ways.start == Some(node) {
        return words.word("check-start");
    }
    let leads = |step: &&usize| checklist.steps[**step].exits.iter().any(|exit| exit.to == node);
    let steps: Vec<String> = numbers.steps.iter().filter(leads).map(|step| numbers.mark(*step)).collect();
    words.say(&Message::new("check-from").with("steps", steps.join(", ")))
}

fn lines(context: Context<'_>, checklist: &Checklist, step: &Question, marks: &mut Marks) -> Vec<Line> {
    let words = context.words;
    let plain = |label, text: String| Line {
        label: words.word(label),
        text,
        strong: false,
        window: false,
        marks: String::new(),
    };
    let mut lines = vec![plain("check-do", step.action.clone())];
    if let Some(at) = &step.at {
        lines.push(plain("check-where", at.clone()));
    }
    let mut before = 0;
    for probes in &step.probes {
        let facts = probes.pins.iter().flat_map(|(pin, wire)| std::iter::once(pin).chain(wire));
        let marks = marks.letters(words, facts);
        let label = if step.at.is_none() { "check-where" } else { "check-pins" };
        lines.push(Line { strong: true, ..plain(label, pins(probes, before, step)) });
        before += probes.pins.len();
        lines.push(Line {
            label: String::new(),
            text: seen(words, probes, step),
            strong: false,
            window: false,
            marks,
        });
    }
    lines.push(plain("check-state", step.state.clone()));
    let test = step.test.as_ref().and_then(|test| context.model.tests.get(test));
    let (expect, mark) = match test {
        Some(test) => {
            let marks = marks.letters(words, expectation::facts(context, test));
            (tested(context, checklist, step, test), marks)
        }
        None => (said(words, &step.expect), marks.mark(words, &step.expect)),
    };
    let window = step.unit.is_some() && expect.chars().count() <= WINDOW;
    lines.push(Line { window, strong: true, marks: mark, ..plain("check-expect", expect) });
    if let Some(card) = &step.card {
        lines.push(plain("check-figures", card_word(words, card)));
    }
    lines
}

/// What a test expects, in the bay of today: the window with its unit, and what is said under it.
fn tested(context: Context<'_>, checklist: &Checklist, step: &Question, test: &Test) -> String {
    let tools = Tools {
        shop: &context.model.shop,
        thermometer: checklist.thermometer.as_ref(),
        meter: checklist.meter.as_ref(),
    };
    let found = expectation::of(context, test, tools, step.card.as_deref());
    let mut window = format!("{} {}", found.main, found.unit);
    // A window that moves with temperature says at which it holds.
    if let (Expect::Curve(_), Some(bay), false) = (&test.expect, context.bay, found.main.is_empty()) {
        let at = figures::tenths(context.units, bay);
        window = context.words.say(&Message::new("check-at").with("window", window).with("temperature", at));
    }
    let said = std::iter::once(window.trim()).chain(found.subs.iter().map(String::as_str));
    said.filter(|text| !text.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// `C2/7 + (GN 0.5 mm²)  C2/14 − (BN 0.5 mm²)`: the meter's leads have signs where they matter.
/// Where words say against what is measured, the negative lead stays there and every pin is
/// for the positive one. A clamp around a single wire has no leads.
///
/// `before` pins of other connectors stand before these.
fn pins(probes: &Probes, before: usize, step: &Question) -> String {
    let has_sign = match step.unit.as_deref() {
        Some("V" | "mV") => true,
        Some("A" | "mA") => before + probes.pins.len() > 1,
        _ => false,
    };
    let pin = |(place, (pin, wire)): (usize, &(crate::model::Fact, Option<crate::model::Fact>))| {
        let name = pin.written.as_deref().unwrap_or_default();
        let sign = match place {
            _ if !has_sign => "",
            _ if before + place == 0 || step.at.is_some() => "\u{a0}+",
            _ => "\u{a0}−",
        };
        let wire = wire.as_ref().and_then(|wire| wire.written.as_deref());
        // A pin, its sign and its wire stay on one line.
        wire.map_or_else(
            || format!("{name}{sign}"),
            |wire| format!("{name}{sign}\u{a0}({})", wire.replace(' ', "\u{a0}")),
        )
    };
    probes.pins.iter().enumerate().map(pin).collect::<Vec<_>>().join("  ")
}

/// How the connector is looked at. Of the other half than the drawn one only the half is
/// named: its view would be a mirror image. A mated plug is probed from its wires: a drawing
/// of its mating face is a mirror image then, and says so.
fn seen(words: &Words, probes: &Probes, step: &Question) -> String {
    let end = &probes.end;
    let mirrored = step.cost == Cost::Measure && end.view == Some(View::MatingFace);
    let view = match step.half {
        Some(half) if end.side != Some(half) => words.word(match half {
            Side::Harness => "sheet-harness-half",
            Side::Component => "sheet-component-half",
        }),
        _ if mirrored => words.say(&Message::new("check-mirrored").with("view", ends::view(words, end))),
        _ => ends::view(words, end),
    };
    format!("{}: {view}", ends::title(words, &end.connector, &end.title))
}

fn cost_word(cost: Cost) -> &'static str {
    match cost {
        Cost::Look => "check-cost-look",
        Cost::Measure => "check-cost-measure",
        Cost::Unplug => "check-cost-unplug",
        Cost::Dismantle => "check-cost-dismantle",
    }
}

/// The word of an answer.
pub(super) fn answer_word(answer: Answer) -> &'static str {
    match answer {
        Answer::Yes => "check-yes",
        Answer::No => "check-no",
        Answer::Undecided => "check-undecided",
    }
}
