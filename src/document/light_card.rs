//! The light sensor card: volts over irradiance, and what covers, breaks and shorts read.

use super::card::KeyFigure;
use super::caution;
use super::part_card::{self, Circuit, Part, pin, table_of, window};
use super::{Context, Document, Listed, said};
use crate::model::Light;
use crate::physics::light::LightTopology;
use crate::quantity::{Rounding, figure};
use crate::spec::{About, Role};
use crate::words::{Message, Words};

/// Composes one light sensor card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let light = model.lights.get(model.cards.get(&listed.spec)?.of(About::Light)?)?;
    let name = format!("light.{}", light.id);
    let part = Part {
        title: &light.title,
        system: &light.system,
        facts: &light.facts,
        pins: &light.pins,
        kind: "doc-light-card",
        template: "light-card.typ",
        direction: match light.sensor.as_ref().map(|sensor| sensor.topology) {
            Some(LightTopology::PullUp) => "card-direction-light-pull-up",
            Some(LightTopology::Load) => "card-direction-light-load",
            None => "card-direction-light",
        },
        key_figures: key_figures(context, light, &name),
        circuit: circuit(words, light),
        condition: ("irradiance_w_per_m2", "believed_irradiance_w_per_m2", "W/m²"),
        next: next(words, light),
        touches: caution::AT_WIRES.to_vec(),
        name,
    };
    part_card::compose(context, listed, part)
}

/// The windows in the dark and in the rated light, and the least difference.
fn key_figures(context: Context<'_>, light: &Light, name: &str) -> Vec<KeyFigure> {
    let words = context.words;
    let (Some(table), Some(sensor)) = (table_of(context, name), &light.sensor) else {
        return Vec::new();
    };
    let rated = format!("{} W/m²", figure(sensor.at.watts_per_square_metre(), 0, Rounding::Nearest));
    let dark = window(words, &table, 0, words.word("card-light-dark"), words.word("card-light-covered"));
    let last = table.rows.len().saturating_sub(1);
    let lit = window(words, &table, last, rated, words.word("card-light-sun"));
    let span = light.least_span.map(|span| KeyFigure {
        at: words.word("card-light-span"),
        value: format!("≥ {}", figure(span.volts(), 2, Rounding::Up)),
        unit: "V".to_owned(),
        also: words.word("card-light-span-of"),
    });
    [dark, lit, span].into_iter().flatten().collect()
}

fn circuit(words: &Words, light: &Light) -> Option<Circuit> {
    let (form, alt) = match light.sensor.as_ref()?.topology {
        LightTopology::PullUp => ("light-pull-up", "card-alt-light-pull-up"),
        LightTopology::Load => ("light-load", "card-alt-light-load"),
    };
    let fact = |labels: &[&str]| {
        let found = light.facts.iter().find(|fact| labels.contains(&fact.label));
        said(words, found)
    };
    let (reference, resistor) = (fact(&["fact-reference"]), fact(&["fact-pull-up", "fact-load-resistor"]));
    let alt = Message::new(alt).with("reference", &reference).with("resistor", &resistor);
    Some(Circuit {
        form,
        alt: words.say(&alt),
        reference_pin: pin(&light.pins, &[Role::Reference]),
        signal_pin: pin(&light.pins, &[Role::Signal]),
        return_pin: pin(&light.pins, &[Role::Return, Role::Ground]),
        reference,
        resistor,
    })
}

/// The lead's own next steps, or those that every light sensor has in common.
fn next(words: &Words, light: &Light) -> Vec<String> {
    if !light.next.is_empty() {
        return light.next.clone();
    }
    let covered = match light.least_span {
        Some(span) => words.say(&Message::new("card-next-light-span").with("span", span)),
        None => words.word("card-next-light"),
    };
    let still = match light.sensor.as_ref().map(|sensor| sensor.topology) {
        Some(LightTopology::PullUp) => Some("card-next-light-pull-up"),
        Some(LightTopology::Load) => Some("card-next-light-load"),
        None => None,
    };
    let still = still.map(|id| words.word(id));
    std::iter::once(covered).chain(still).chain([words.word("card-next-wires")]).collect()
}
