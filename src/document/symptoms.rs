//! The symptom index of a system: from a complaint to its checklist and the first tests.

use schemars::JsonSchema;
use serde::Serialize;

use super::checklist::Numbers;
use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::{Context, Data, Document, Listed, finish};
use crate::model::{Checklist, Model, Symptom};
use crate::words::{Message, Order, Words};

const TEMPLATE: &str = "symptoms.typ";

/// How many steps of a checklist's main way stand in the index.
const SHOWN: usize = 5;

/// Everything the index's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Index {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// How to use it.
    intro: String,
    /// A complaint each.
    rows: Vec<Row>,
}

impl Data for Index {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// A complaint.
#[derive(Debug, Serialize, JsonSchema)]
struct Row {
    /// The complaint, as a driver puts it.
    symptom: String,
    /// The checklist's id, or that there is none.
    checklist: String,
    /// How long that takes at most; empty without one.
    time: String,
    /// The first tests in their order.
    first: Vec<String>,
    /// The cards to have at hand.
    cards: String,
    /// Letters of its sources; may be empty.
    marks: String,
}

/// The systems that have an index, each with its index's id.
pub(super) fn indexed(model: &Model) -> impl Iterator<Item = (&str, String)> {
    let has = |system: &&String| {
        model.checklists.values().any(|checklist| checklist.system == **system)
            || model.symptoms.values().any(|symptom| symptom.system == **system)
    };
    // A full stop joins the two because no id can hold one.
    model.systems.keys().filter(has).map(|system| (system.as_str(), format!("{system}.SYMPTOMS")))
}

/// Composes the index of one system.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let system = model.systems.get(&listed.spec)?;
    let mut marks = Marks::of(context.units);
    let kind = Kind {
        word: "doc-symptoms",
        size: context.size_of(listed),
        title: words.say(&Message::new("check-index-title").with("system", &system.title)),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, &listed.spec, system, &mut marks);
    let symptoms: Vec<(&String, &Symptom)> =
        model.symptoms.iter().filter(|(_, symptom)| symptom.system == listed.spec).collect();
    let mut rows: Vec<Row> =
        symptoms.iter().map(|(id, symptom)| row(words, model, id, symptom, &mut marks)).collect();
    // A checklist that no symptom names stands there by its own.
    let named = |id: &String| symptoms.iter().any(|(_, symptom)| symptom.checklist.as_ref() == Some(id));
    let own = model
        .checklists
        .values()
        .filter(|checklist| checklist.system == listed.spec && !named(&checklist.id));
    rows.extend(own.map(|checklist| led(words, &checklist.symptom, checklist)));
    let order = Order::of(words.language());
    rows.sort_by(|one, other| order.compare(&one.symptom, &other.symptom));
    let data = Index { furniture, intro: words.word("check-index-intro"), rows };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

fn row(words: &Words, model: &Model, id: &str, symptom: &Symptom, marks: &mut Marks) -> Row {
    let checklist = symptom.checklist.as_ref().and_then(|checklist| model.checklists.get(checklist));
    let mut row = match checklist {
        Some(checklist) => led(words, &symptom.title, checklist),
        None => Row {
            symptom: symptom.title.clone(),
            checklist: words.word("check-no-checklist"),
            time: String::new(),
            first: Vec::new(),
            cards: String::new(),
            marks: String::new(),
        },
    };
    if !symptom.first.is_empty() {
        row.first = symptom.first.iter().filter_map(|test| test.written.clone()).collect();
        row.marks = marks.letters(words, &symptom.first);
    }
    if row.first.is_empty() {
        let missing = crate::model::Fact::new::<()>(format!("symptom.{id}.first"), "fact-first-tests", None);
        marks.mark(words, &missing);
        row.first.push(words.word("doc-not-given"));
    }
    if !symptom.cards.is_empty() {
        row.cards = symptom.cards.join(", ");
    }
    row
}

/// A row whose tests are the first steps of a checklist, as long as the answers are good.
fn led(words: &Words, symptom: &str, checklist: &Checklist) -> Row {
    let mut cards: Vec<&str> = Vec::new();
    for card in checklist.steps.iter().filter_map(|step| step.card.as_deref()) {
        if !cards.contains(&card) {
            cards.push(card);
        }
    }
    let numbers = Numbers::of(checklist);
    let steps = numbers.as_ref().map(|numbers| numbers.steps.as_slice()).unwrap_or_default();
    let first = steps.iter().take(SHOWN).map(|node| checklist.steps[*node].title.clone()).collect();
    let time = numbers.as_ref().map(|numbers| super::checklist::minutes(numbers.longest.weight));
    Row {
        symptom: symptom.to_owned(),
        checklist: checklist.id.clone(),
        time: time
            .map(|time| words.say(&Message::new("check-at-most").with("time", time)))
            .unwrap_or_default(),
        first,
        cards: cards.join(", "),
        marks: String::new(),
    }
}
