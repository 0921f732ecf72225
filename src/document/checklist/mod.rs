//! The checklist: numbered questions that a person follows with a finger, and their map.

mod chart;
mod numbers;
mod question;

use schemars::JsonSchema;
use serde::Serialize;

use super::caution::{self, Cautions, Room, Touch};
use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::write_on::{self, WriteOn};
use super::{Context, Data, Document, Listed, finish};
use crate::model::{Checklist, Ending};
use crate::quantity::Duration;
use crate::spec::{Cost, EndingKind, Near, Work};
use crate::words::{Message, Words};
pub(super) use numbers::Numbers;

const TEMPLATE: &str = "checklist.typ";

/// What to write down before the first question, with the unit printed in the box.
const BOXES: [(&str, &str); 6] = [
    ("check-box-vehicle", ""),
    ("sheet-box-odometer", "km"),
    ("sheet-box-bay", "°C"),
    ("sheet-box-battery-rest", "V"),
    ("sheet-box-technician", ""),
    ("sheet-box-date", ""),
];

const SIGN_OFF: [&str; 4] =
    ["check-box-reached", "sheet-sign-name", "sheet-sign-signature", "sheet-sign-date"];

/// Everything a checklist's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Page {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// The complaint that it begins with.
    symptom: String,
    /// How to walk it, and how long that takes at most.
    intro: String,
    /// Boxes to write vehicle and conditions in.
    boxes: Vec<WriteOn>,
    /// The caution box.
    cautions: Cautions,
    /// The numbered questions.
    steps: Vec<question::Block>,
    /// The lettered endings.
    endings: Vec<EndBlock>,
    /// Boxes for who signs.
    sign_off: Vec<WriteOn>,
    /// The map; null where it would be too large.
    chart: Option<chart::Drawing>,
}

impl Data for Page {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// An ending: which, what it means, what to do.
#[derive(Debug, Serialize, JsonSchema)]
struct EndBlock {
    /// Its letter: `A`.
    letter: String,
    /// What is at fault: a part, the harness, nothing found.
    kind: String,
    /// Which part or wire.
    what: String,
    /// What to do then.
    action: String,
    /// The card that tells more: `card CUR-EVAP`; may be empty.
    card: String,
    /// The steps that lead here.
    from: String,
    /// Whether nobody but a licensed person goes on.
    stop: bool,
}

/// Composes one checklist.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let checklist = model.checklists.get(&listed.spec)?;
    let system = model.systems.get(&checklist.system)?;
    let numbers = Numbers::of(checklist)?;
    let mut marks = Marks::of(context.units);
    let kind = Kind {
        word: "doc-checklist",
        size: context.size_of(listed),
        title: words
            .say(&Message::new("check-title").with("title", &checklist.title).with("system", &system.title)),
        id: listed.id.clone(),
    };
    let mut furniture = Furniture::new(context, kind, &checklist.system, system, &mut marks);
    if let Some(vehicles) = &checklist.vehicles {
        let titles =
            vehicles.iter().filter_map(|id| model.vehicles.get(id)).map(|vehicle| vehicle.title.as_str());
        let only = Message::new("check-only").with("vehicles", titles.collect::<Vec<_>>().join(", "));
        furniture.applicability = format!("{} · {}", furniture.applicability, words.say(&only));
    }
    let steps = (numbers.steps.iter())
        .filter_map(|node| question::block(context, checklist, &numbers, *node, &mut marks))
        .collect();
    let longest = minutes(numbers.longest.weight);
    let intro =
        Message::new("check-intro").with_count("steps", numbers.steps.len()).with("longest", &longest);
    let data = Page {
        furniture,
        symptom: checklist.symptom.clone(),
        intro: words.say(&intro),
        boxes: write_on::boxes(context, &BOXES),
        cautions: cautions(words, checklist),
        steps,
        endings: numbers.endings.iter().map(|node| ending(words, checklist, &numbers, *node)).collect(),
        sign_off: write_on::signatures(words, &SIGN_OFF),
        chart: chart::draw(words, checklist, &numbers),
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

/// What the steps have people touch: everything that no step rules out.
fn cautions(words: &Words, checklist: &Checklist) -> Cautions {
    let any = |asked: &dyn Fn(&crate::model::Question) -> bool| checklist.steps.iter().any(asked);
    let near = |what: Near| any(&|step| step.near.contains(&what));
    let touches = [
        (Touch::Dash, true),
        (Touch::Refrigerant, checklist.work == Work::Refrigerant),
        (Touch::MovingParts, near(Near::Moving)),
        (Touch::Running, near(Near::Moving)),
        (Touch::HotParts, near(Near::Hot)),
        (Touch::Unplugging, any(&|step| step.cost >= Cost::Unplug)),
        (Touch::Ohms, any(&|step| step.unit.as_deref().is_some_and(|unit| unit.ends_with('Ω')))),
        (Touch::Probing, any(&|step| !step.probes.is_empty())),
    ];
    let touches: Vec<Touch> = touches.into_iter().filter(|(_, met)| *met).map(|(touch, _)| touch).collect();
    caution::of(words, &touches, Room::Sheet)
}

/// Seconds as whole minutes, never fewer than they are.
pub(super) fn minutes(seconds: f64) -> String {
    let minutes = Duration::from_seconds(seconds).seconds() / 60.0;
    format!("{} min", crate::quantity::figure(minutes, 0, crate::quantity::Rounding::Up))
}

fn ending(words: &Words, checklist: &Checklist, numbers: &Numbers, node: usize) -> EndBlock {
    let ending: &Ending = &checklist.endings[node - checklist.ways.steps];
    EndBlock {
        letter: numbers.mark(node),
        kind: words.word(ending_word(ending.kind)),
        what: ending.what.clone().unwrap_or_default(),
        action: ending.action.clone(),
        card: ending.card.as_ref().map(|card| card_word(words, card)).unwrap_or_default(),
        from: question::from(words, checklist, numbers, node),
        stop: ending.kind == EndingKind::Refer,
    }
}

fn card_word(words: &Words, card: &str) -> String {
    words.say(&Message::new("check-card").with("card", card))
}

fn ending_word(kind: EndingKind) -> &'static str {
    match kind {
        EndingKind::Part => "check-ending-part",
        EndingKind::Harness => "check-ending-harness",
        EndingKind::ControlUnit => "check-ending-unit",
        EndingKind::Refer => "check-ending-refer",
        EndingKind::NoFault => "check-ending-no-fault",
    }
}
