//! `[checklist.ID]`: from a symptom through questions to a named ending.

use super::Side;
use super::reader::Reader;
use super::value::{At, Sourced};
use crate::diag::Place;
use crate::quantity::{Duration, scalar};

/// A checklist.
#[derive(Debug, Clone)]
pub struct Checklist {
    /// What it is called.
    pub title: Option<At<String>>,
    /// The system it is for.
    pub system: Option<At<String>>,
    /// Only these vehicles of the system, where not all.
    pub vehicles: Option<Vec<At<String>>>,
    /// What a driver complains of.
    pub symptom: Option<At<String>>,
    /// The thermometer and the multimeter that the windows of its tests assume.
    pub thermometer: Option<At<String>>,
    /// See `thermometer`.
    pub meter: Option<At<String>>,
    /// What kind of work it leads to.
    pub work: Option<At<Work>>,
    /// The step it begins with.
    pub start: Option<At<String>>,
    /// Its questions, in the order of the file.
    pub steps: Vec<Question>,
    /// Where it can end, in the order of the file.
    pub endings: Vec<Ending>,
}

/// Who may do the work.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Work {
    /// Measuring at wires, doors and air: the refrigerant circuit stays closed.
    Electrical,
    /// For licensed people with recovery equipment.
    Refrigerant,
}

/// What a step costs besides its time, the cheapest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Cost {
    /// Eyes, ears and a hand.
    Look,
    /// A meter at wires that stay mated.
    Measure,
    /// A connector is unplugged.
    Unplug,
    /// Trim or a part comes out.
    Dismantle,
}

/// What a step's hands come near.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Near {
    /// Belts, fans, doors that move by themselves.
    Moving,
    /// Hot parts.
    Hot,
    /// A closed part of the refrigerant circuit.
    Refrigerant,
    /// A fitting of the refrigerant circuit that is opened.
    Fitting,
    /// Airbag wiring.
    Airbag,
}

/// One question.
#[derive(Debug, Clone)]
pub struct Question {
    /// Its name within the checklist.
    pub id: At<String>,
    /// What it is called, for the map.
    pub title: Option<At<String>>,
    /// The question.
    pub question: Option<At<String>>,
    /// What to do.
    pub action: Option<At<String>>,
    /// Where, in words.
    pub at: Option<At<String>>,
    /// Where: the pins, the meter's positive lead first.
    pub pins: Vec<Sourced<String>>,
    /// Which half of the connector is probed, where not the one that is drawn.
    pub half: Option<At<Side>>,
    /// Key, engine, panel, and what is mated.
    pub state: Option<At<String>>,
    /// The test whose computed window answers yes.
    pub test: Option<At<String>>,
    /// What answers yes, where no test says it.
    pub expect: Option<Sourced<String>>,
    /// The unit printed in the box for the reading; no box without it.
    pub unit: Option<At<String>>,
    /// How long it takes.
    pub time: Option<Sourced<Duration>>,
    /// What it costs besides.
    pub cost: Option<At<Cost>>,
    /// Why it stands before a cheaper one.
    pub because: Option<At<String>>,
    /// What the hands come near.
    pub near: Vec<At<Near>>,
    /// The card that has the figures.
    pub card: Option<At<String>>,
    /// Where each answer leads.
    pub exits: Vec<Exit>,
    /// Whether an exit stands there that could not be read.
    pub misread: bool,
}

/// An answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Answer {
    /// As expected.
    Yes,
    /// Not as expected.
    No,
    /// Neither can be said.
    Undecided,
}

/// Where an answer leads.
#[derive(Debug, Clone)]
pub struct Exit {
    /// The answer.
    pub answer: Answer,
    /// A step's or an ending's name.
    pub to: At<String>,
    /// What to do on the way.
    pub note: Option<At<String>>,
    /// Where the answer stands.
    pub place: Place,
}

/// How a checklist can end.
#[derive(Debug, Clone)]
pub struct Ending {
    /// Its name within the checklist.
    pub id: At<String>,
    /// Which of the five.
    pub kind: Option<At<EndingKind>>,
    /// The part, harness or unit, by name.
    pub what: Option<At<String>>,
    /// What to do.
    pub action: Option<At<String>>,
    /// The card that has the figures for the repair.
    pub card: Option<At<String>>,
}

/// The kinds of ending.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum EndingKind {
    /// A part is at fault.
    Part,
    /// Wires, pins or a connector.
    Harness,
    /// The control unit.
    ControlUnit,
    /// Licensed refrigerant work.
    Refer,
    /// Everything that was asked is good.
    NoFault,
}

impl Checklist {
    /// The names that an exit can lead to: those of its steps, then those of its endings.
    pub fn names(&self) -> impl Iterator<Item = &At<String>> {
        self.steps.iter().map(|step| &step.id).chain(self.endings.iter().map(|ending| &ending.id))
    }

    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "symptom", "work", "start", "step", "ending"]);
        let works = [("electrical", Work::Electrical), ("refrigerant", Work::Refrigerant)];
        let mut checklist = Self {
            title: reader.text("title"),
            system: reader.text("system"),
            vehicles: reader.texts("vehicles"),
            symptom: reader.text("symptom"),
            work: reader.choice("work", &works),
            thermometer: reader.text("thermometer"),
            meter: reader.text("meter"),
            start: reader.text("start"),
            steps: reader
                .named_tables("step")
                .into_iter()
                .map(|(id, step)| Question::read(id, &step))
                .collect(),
            endings: (reader.named_tables("ending").into_iter())
                .map(|(id, ending)| Ending::read(id, &ending))
                .collect(),
        };
        // Tables come by name; people wrote them in an order.
        checklist.steps.sort_by_key(|step| step.id.place.span.start);
        checklist.endings.sort_by_key(|ending| ending.id.place.span.start);
        checklist
    }
}

impl Question {
    fn read(id: At<String>, reader: &Reader<'_>) -> Self {
        reader.require(&["title", "question", "do", "state", "time", "cost"]);
        let costs = [
            ("look", Cost::Look),
            ("measure", Cost::Measure),
            ("unplug", Cost::Unplug),
            ("dismantle", Cost::Dismantle),
        ];
        let near = [
            ("moving parts", Near::Moving),
            ("hot parts", Near::Hot),
            ("refrigerant", Near::Refrigerant),
            ("refrigerant fitting", Near::Fitting),
            ("airbag", Near::Airbag),
        ];
        let answers = [("yes", Answer::Yes), ("no", Answer::No), ("undecided", Answer::Undecided)];
        let read_exit = |(key, answer)| Exit::read(reader, key, answer);
        let exits: Vec<_> = answers.into_iter().filter_map(read_exit).collect();
        let step = Self {
            title: reader.text("title"),
            question: reader.text("question"),
            action: reader.text("do"),
            at: reader.text("where"),
            pins: reader.sourced_list("pins", |text| Ok(text.to_owned())).unwrap_or_default(),
            half: reader.choice("half", Side::WORDS),
            state: reader.text("state"),
            test: reader.text("test"),
            expect: reader.sourced_text("expect"),
            unit: reader.text("unit"),
            time: reader.sourced("time", scalar),
            cost: reader.choice("cost", &costs),
            because: reader.text("because"),
            near: reader.choices("near", &near).unwrap_or_default(),
            card: reader.text("card"),
            misread: answers.iter().filter(|(key, _)| reader.has(key)).count() > exits.len(),
            exits,
            id,
        };
        reader.finish();
        step
    }

    /// The exit of an answer.
    #[must_use]
    pub fn exit(&self, answer: Answer) -> Option<&Exit> {
        self.exits.iter().find(|exit| exit.answer == answer)
    }
}

impl Exit {
    /// `no = "relay"`, or `no = { to = "relay", note = "…" }`.
    fn read(reader: &Reader<'_>, key: &'static str, answer: Answer) -> Option<Self> {
        let place = reader.key_place(key);
        match reader.text_or_table(key)? {
            Ok(to) => Some(Self { answer, to, note: None, place }),
            Err(table) => {
                table.require(&["to"]);
                let (to, note) = (table.text("to"), table.text("note"));
                table.finish();
                Some(Self { answer, to: to?, note, place })
            }
        }
    }
}

impl Ending {
    fn read(id: At<String>, reader: &Reader<'_>) -> Self {
        reader.require(&["kind", "do"]);
        let kinds = [
            ("part", EndingKind::Part),
            ("harness", EndingKind::Harness),
            ("control unit", EndingKind::ControlUnit),
            ("refer to licensed refrigerant work", EndingKind::Refer),
            ("no fault found", EndingKind::NoFault),
        ];
        let ending = Self {
            id,
            kind: reader.choice("kind", &kinds),
            what: reader.text("what"),
            action: reader.text("do"),
            card: reader.text("card"),
        };
        reader.finish();
        ending
    }
}
