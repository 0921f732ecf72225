//! The pressure transducer card: volts over pressure, and what each fault reads.

use super::card::KeyFigure;
use super::caution::{self, Touch};
use super::part_card::{self, Circuit, Part, pin, table_of, window};
use super::{Context, Document, Listed, said, table};
use crate::model::Transducer;
use crate::physics::transducer::Sense;
use crate::quantity::{Rounding, Unit, Units, figure};
use crate::spec::{About, Role};
use crate::words::{Message, Words};

/// Composes one transducer card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, units, .. } = context;
    let transducer = model.transducers.get(model.cards.get(&listed.spec)?.of(About::Transducer)?)?;
    let name = format!("transducer.{}", transducer.id);
    let part = Part {
        title: &transducer.title,
        system: &transducer.system,
        facts: &transducer.facts,
        pins: &transducer.pins,
        kind: "doc-transducer-card",
        template: "transducer-card.typ",
        direction: direction(transducer),
        key_figures: key_figures(context, &name),
        circuit: circuit(words, transducer),
        condition: match units {
            Units::Us => ("pressure_psi", "believed_pressure_psi", "psi"),
            _ => ("pressure_kpa", "believed_pressure_kpa", "kPa"),
        },
        next: next(words, transducer),
        touches: std::iter::once(Touch::Refrigerant).chain(caution::AT_WIRES.iter().copied()).collect(),
        name,
    };
    part_card::compose(context, listed, part)
}

fn direction(transducer: &Transducer) -> &'static str {
    let ends = transducer.line.as_ref().and_then(|line| {
        Some((line.ratio(line.range().low).ok()?.part(), line.ratio(line.range().high).ok()?.part()))
    });
    match (ends, transducer.sense) {
        (Some((low, high)), Sense::Absolute) if low < high => "card-direction-absolute-up",
        (Some((low, high)), Sense::Gauge) if low < high => "card-direction-gauge-up",
        (Some(_), Sense::Absolute) => "card-direction-absolute-down",
        (Some(_), Sense::Gauge) => "card-direction-gauge-down",
        (None, Sense::Absolute) => "card-direction-absolute",
        (None, Sense::Gauge) => "card-direction-gauge",
    }
}

/// The windows at both ends of the line and in its middle.
fn key_figures(context: Context<'_>, name: &str) -> Vec<KeyFigure> {
    let Context { words, units, .. } = context;
    let Some(table) = table_of(context, name) else { return Vec::new() };
    let mut rows = vec![0, table.rows.len() / 2, table.rows.len().saturating_sub(1)];
    rows.dedup();
    let at = |row: usize, unit: Unit| {
        let number = table.number(table.rows.get(row)?, &table::transducer::key(unit))?;
        let decimals = table::transducer::digits(unit);
        Some(format!("{} {}", figure(number, decimals, Rounding::Nearest), unit.symbol()))
    };
    let figure = |row: usize| {
        let (first, others) = units.pressures().split_first()?;
        let also = others.iter().map(|unit| at(row, *unit)).collect::<Option<Vec<_>>>()?;
        window(words, &table, row, at(row, *first)?, also.join(" · "))
    };
    rows.into_iter().filter_map(figure).collect()
}

fn circuit(words: &Words, transducer: &Transducer) -> Option<Circuit> {
    let signal_pin = pin(&transducer.pins, &[Role::Signal]);
    if signal_pin.is_empty() {
        return None;
    }
    let fact = transducer.facts.iter().find(|fact| fact.label == "fact-reference");
    let reference = said(words, fact);
    let alt = words.say(&Message::new("card-alt-transducer").with("reference", &reference));
    Some(Circuit {
        form: "transducer",
        reference,
        resistor: String::new(),
        reference_pin: pin(&transducer.pins, &[Role::Reference]),
        return_pin: pin(&transducer.pins, &[Role::Return, Role::Ground]),
        signal_pin,
        alt,
    })
}

/// The lead's own next steps, or those that every transducer has in common.
fn next(words: &Words, transducer: &Transducer) -> Vec<String> {
    if !transducer.next.is_empty() {
        return transducer.next.clone();
    }
    let steps = ["card-next-transducer-reference", "card-next-transducer-rest", "card-next-transducer-wires"];
    steps.iter().map(|id| words.word(id)).collect()
}
