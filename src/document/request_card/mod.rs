//! The request card: what permits and inhibits a request, and a timeline to see it work.

mod lanes;
mod levels;

use schemars::JsonSchema;
use serde::Serialize;

use super::caution::{self, Cautions, Room, Touch};
use super::furniture::{Furniture, Kind};
use super::grid::{Column, Grid};
use super::marks::Marks;
use super::{Context, Data, Document, Listed, beside, finish, said, table};
use crate::model::{Card, Fact, Request, request};
use crate::physics::request::Effect;
use crate::spec::{About, Watch};
use crate::words::{Message, Words};
use lanes::Timeline;

const TEMPLATE: &str = "request-card.typ";

/// Everything a request card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct RequestCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// Line, hold time and the like.
    key_facts: Vec<Told>,
    /// What one reads in each state of the request.
    stages: Grid,
    /// What permits and inhibits it, in the order in which it is looked at.
    conditions: Grid,
    /// What is said with it, a text each.
    notes: Vec<String>,
    /// The example over time; null where the spec has none.
    timeline: Option<Timeline>,
    /// The same as a table; null where there is no timeline.
    states: Option<Grid>,
    /// What happens in the example; may be empty.
    scenario: String,
    /// The caution box.
    cautions: Cautions,
}

impl Data for RequestCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// A line of its own: what it is, its value, its source.
#[derive(Debug, Serialize, JsonSchema)]
struct Told {
    /// What it is.
    what: String,
    /// Its value with its source's letter: `2 s [b]`.
    value: String,
}

/// Composes one request card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let card = model.cards.get(&listed.spec)?;
    let request = model.requests.get(card.of(About::Request)?)?;
    let system = model.systems.get(&request.system)?;
    let mut marks = Marks::of(context.units);
    let kind = Kind {
        word: "doc-request-card",
        size: context.size_of(listed),
        title: request.title.clone(),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, &request.system, system, &mut marks);
    let states = table::request::table(words, request);
    let has_states = !states.rows.is_empty();
    let scenario = match (&request.scenario, has_states) {
        (Some(scenario), true) => scenario.title.clone(),
        _ => states.notes.join(" "),
    };
    let data = RequestCard {
        furniture,
        key_facts: key_facts(words, request, &mut marks),
        stages: stages(words, request, &mut marks),
        conditions: conditions(context, (card, request), &mut marks),
        notes: notes(words, request),
        timeline: lanes::compose(context, request),
        states: has_states.then(|| {
            let mut grid = Grid::of_table(words, "card-request-states", &states);
            grid.notes = states.formulas.clone();
            grid
        }),
        scenario,
        cautions: caution::of(
            words,
            &[
                Touch::MovingParts,
                Touch::Running,
                Touch::Dash,
                Touch::HotParts,
                Touch::Unplugging,
                Touch::Probing,
            ],
            Room::Sheet,
        ),
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

/// The request's line with its wire, and its hold time.
fn key_facts(words: &Words, request: &Request, marks: &mut Marks) -> Vec<Told> {
    let wire = request.line.as_ref().and_then(|line| line.wire.as_ref());
    let facts = request.facts.iter().chain(wire);
    facts.map(|fact| Told { what: words.word(fact.label), value: marks.shown(words, fact) }).collect()
}

/// What a technician reads in each state.
fn stages(words: &Words, request: &Request, marks: &mut Marks) -> Grid {
    let states = ["card-stage-absent", "card-stage-waiting", "card-stage-granted"];
    let row = |(state, fact): (&str, &Fact)| vec![words.word(state), marks.shown(words, fact)];
    Grid {
        title: String::new(),
        notes: Vec::new(),
        columns: ["card-stage", "card-stage-reads"].map(|id| Column::words(words.word(id))).into(),
        rows: states.into_iter().zip(&request.reads).map(row).collect(),
    }
}

/// The conditions in the order in which they are looked at.
fn conditions(context: Context<'_>, (card, request): (&Card, &Request), marks: &mut Marks) -> Grid {
    let Context { model, words, units, .. } = context;
    let set = |sub: &str| Column::figures(words.word("card-condition-set"), words.word(sub));
    let release = |sub: &str| Column::figures(words.word("card-condition-release"), words.word(sub));
    let columns = vec![
        Column::words(words.word("card-condition-number")),
        Column::words(words.word("card-condition")),
        Column::words(words.word("card-condition-effect")),
        Column::words(words.word("card-condition-watch")),
        set("card-condition-at"),
        set("card-condition-volts"),
        set("card-condition-after"),
        release("card-condition-at"),
        release("card-condition-volts"),
        release("card-condition-after"),
        Column::words(words.word("card-condition-source")),
    ];
    let row = |(index, condition): (usize, &request::Condition)| {
        let levels = levels::of(model, card, condition);
        let [threshold, release, delay, after] = &condition.facts;
        // As the document gives it, and below it the same in the edition's unit.
        let signed = |fact: &Fact, sign: &str| match (&fact.written, fact.shown()) {
            (Some(written), Some(shown)) => {
                let other = beside::converted(units, fact.label, written);
                let below = other.map(|other| format!("\n({other})")).unwrap_or_default();
                format!("{sign} {}{below}", shown.replace('-', "−"))
            }
            _ => words.word("doc-not-given"),
        };
        let (past, back) = levels::signs(condition.side);
        let [set_volts, release_volts] = levels.volts;
        vec![
            (index + 1).to_string(),
            condition.title.clone(),
            words.word(match condition.effect {
                Effect::Permits => "card-permits",
                Effect::Inhibits => "card-inhibits",
            }),
            levels.watch,
            signed(threshold, past),
            set_volts,
            said(words, delay),
            signed(release, back),
            release_volts,
            said(words, after),
            marks.letters(words, &condition.facts),
        ]
    };
    let grid = Grid {
        title: String::new(),
        notes: Vec::new(),
        columns,
        rows: request.conditions.iter().enumerate().map(row).collect(),
    };
    grid.without_blanks()
}

/// How to read the table of conditions.
fn notes(words: &Words, request: &Request) -> Vec<String> {
    let mut notes = vec![words.word("card-request-how")];
    if request.conditions.iter().any(|condition| condition.watch != Watch::Reading) {
        notes.push(words.word("card-request-volts"));
    }
    let waits = Message::new("card-request-wait");
    notes.push(words.say(&waits));
    notes
}
