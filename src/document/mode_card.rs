//! The mode card: what every panel mode forces, and the shortest run through them that shows all.

use schemars::JsonSchema;
use serde::Serialize;

use super::caution::{self, Cautions, Room, Touch};
use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::write_on::{self, WriteOn};
use super::{Context, Data, Document, Listed, finish};
use crate::model::{Control, Mode, ModeSet};
use crate::physics::modes::{self, Cover, Pair};
use crate::quantity::{Rounding, figure};
use crate::spec::About;
use crate::words::{Message, Words};

const TEMPLATE: &str = "mode-card.typ";

/// Everything a mode card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct ModeCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// How to walk through the modes, a text each.
    how: Vec<String>,
    /// The three shapes.
    legend: Vec<Legend>,
    /// Heads of the matrix: the control points.
    controls: Vec<String>,
    /// A row for each mode.
    modes: Vec<Row>,
    /// What is said of the run below.
    run_note: String,
    /// The shortest run that shows all, step by step.
    run: Vec<Step>,
    /// What no mode shows.
    hidden: String,
    /// How each control point is seen.
    seen: Vec<Seen>,
    /// Boxes to write vehicle, date and name in.
    boxes: Vec<WriteOn>,
    /// The caution box.
    cautions: Cautions,
}

impl Data for ModeCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// One of the three shapes and what it means.
#[derive(Debug, Serialize, JsonSchema)]
struct Legend {
    /// `forced`, `free` or `dont_care`.
    kind: &'static str,
    /// Its word.
    text: String,
    /// What it means.
    means: String,
}

/// A mode and what it does with every control point.
#[derive(Debug, Serialize, JsonSchema)]
struct Row {
    /// What the mode is called.
    title: String,
    /// How soon it shows: `within 4 s`.
    time: String,
    /// Letters of its sources, or that it has none.
    mark: String,
    /// Its number in the run; empty where it is in none.
    step: String,
    /// A cell for each control point.
    cells: Vec<Shown>,
}

/// One cell: its shape and its words.
#[derive(Debug, Serialize, JsonSchema)]
struct Shown {
    /// `forced`, `free` or `dont_care`.
    kind: &'static str,
    /// The value that the mode sets, or the shape's word.
    text: String,
}

/// A step of the run: the mode to choose, and what shows there for the first time.
#[derive(Debug, Serialize, JsonSchema)]
struct Step {
    /// Its number: `1`.
    number: String,
    /// The mode to choose.
    mode: String,
    /// What can be told for the first time, a text each.
    reveals: Vec<String>,
}

/// How the value of a control point is seen.
#[derive(Debug, Serialize, JsonSchema)]
struct Seen {
    /// Which control point.
    control: String,
    /// How to see, hear or feel it.
    how: String,
    /// Letters of its sources, or that it has none.
    mark: String,
}

/// Composes one mode card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let panel = model.panels.get(model.cards.get(&listed.spec)?.of(About::Panel)?)?;
    let system = model.systems.get(&panel.system)?;
    let set = model.mode_sets.get(&panel.system)?;
    let mut marks = Marks::of(context.units);
    let title = Message::new("card-modes-title").with("panel", &panel.title);
    let kind = Kind {
        word: "doc-mode-card",
        size: context.size_of(listed),
        title: words.say(&title),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, &panel.system, system, &mut marks);
    let cover = set.table.smallest_cover();
    let rows =
        set.modes.iter().enumerate().map(|(index, mode)| row(words, set, &cover, (index, mode), &mut marks));
    let data = ModeCard {
        furniture,
        how: ["card-modes-how-choose", "card-modes-how-fault"].map(|id| words.word(id)).into(),
        legend: [
            ("forced", "card-forced", "card-forced-means"),
            ("free", "table-free", "card-free-means"),
            ("dont_care", "table-dont-care", "card-dont-care-means"),
        ]
        .map(|(kind, text, means)| Legend { kind, text: words.word(text), means: words.word(means) })
        .into(),
        controls: set.controls.iter().map(|control| control.title.clone()).collect(),
        modes: rows.collect(),
        run_note: run_note(words, set, &cover),
        run: run(words, set, &cover),
        hidden: hidden(words, set),
        seen: set.controls.iter().map(|control| seen(words, control, &mut marks)).collect(),
        boxes: write_on::signatures(words, &["card-box-vehicle", "card-box-date", "card-box-name"]),
        cautions: caution::of(
            words,
            &[Touch::MovingParts, Touch::Running, Touch::HotParts, Touch::Dash],
            Room::Card,
        ),
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

fn row(words: &Words, set: &ModeSet, cover: &Cover, (index, mode): (usize, &Mode), marks: &mut Marks) -> Row {
    let step = cover.modes.iter().position(|chosen| *chosen == index);
    let time = mode.time.map(|time| {
        let seconds = figure(time.seconds(), 1, Rounding::Nearest);
        words.say(&Message::new("card-mode-within").with("time", seconds.trim_end_matches(".0")))
    });
    let cells = mode.cells.iter().zip(&set.controls).map(|(cell, control)| match cell {
        modes::Cell::Forced(value) => Shown { kind: "forced", text: control.values[*value].clone() },
        modes::Cell::Free => Shown { kind: "free", text: words.word("table-free") },
        modes::Cell::DontCare => Shown { kind: "dont_care", text: words.word("table-dont-care") },
    });
    Row {
        title: mode.title.clone(),
        time: time.unwrap_or_else(|| words.word("card-time-not-given")),
        mark: marks.letters(words, &mode.facts),
        step: step.map(|step| (step + 1).to_string()).unwrap_or_default(),
        cells: cells.collect(),
    }
}

/// How short the run is, and whether a shorter one could exist.
fn run_note(words: &Words, set: &ModeSet, cover: &Cover) -> String {
    if cover.modes.is_empty() {
        return words.word("table-modes-nothing");
    }
    let message = if cover.is_proven() { "card-run-proven" } else { "card-run-not-proven" };
    let message = Message::new(message).with("count", cover.modes.len()).with("all", set.modes.len());
    words.say(&message.with("least", cover.at_least))
}

/// The run: at each of its modes the stuck control points that show there first, so that
/// each stands once.
fn run(words: &Words, set: &ModeSet, cover: &Cover) -> Vec<Step> {
    let faults = set.table.faults();
    let step = |(number, &mode): (usize, &usize)| {
        let first: Vec<Pair> = (faults.iter())
            .filter(|fault| fault.first_in(&cover.modes) == Some(mode))
            .map(|fault| fault.stuck_at)
            .collect();
        let reveals = set.controls.iter().enumerate().filter_map(|(index, control)| {
            let values: Vec<&str> = (first.iter())
                .filter(|pair| pair.control == index)
                .map(|pair| control.values[pair.value].as_str())
                .collect();
            let message = Message::new("card-stuck-at").with("control", &control.title);
            (!values.is_empty()).then(|| words.say(&message.with("values", values.join(", "))))
        });
        let mode = &set.modes[mode];
        let mut reveals: Vec<String> = reveals.collect();
        if reveals.is_empty() {
            reveals.push(words.word("card-reveals-again"));
        }
        Step { number: (number + 1).to_string(), mode: mode.title.clone(), reveals }
    };
    cover.modes.iter().enumerate().map(step).collect()
}

/// What stays hidden from every mode.
fn hidden(words: &Words, set: &ModeSet) -> String {
    let hidden = set.table.faults().into_iter().filter(|fault| fault.exposed_by.is_empty());
    let named: Vec<String> = hidden
        .map(|fault| {
            let control = &set.controls[fault.stuck_at.control];
            format!("{} {}", control.title, control.values[fault.stuck_at.value])
        })
        .collect();
    if named.is_empty() {
        return words.word("table-modes-none-hidden");
    }
    words.say(&Message::new("table-modes-hidden").with("values", named.join(", ")))
}

fn seen(words: &Words, control: &Control, marks: &mut Marks) -> Seen {
    let mark = marks.letters(words, &control.facts);
    let how = control.observe.clone().unwrap_or_else(|| words.word("doc-not-given"));
    Seen { control: control.title.clone(), how, mark }
}
