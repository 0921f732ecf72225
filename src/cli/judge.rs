//! `bayleaf judge`: one reading of one sensor.

use std::io;

use super::args::{Format, Judge as Arguments, ReadingPlace};
use super::load::{announce, answer};
use super::outcome::{Outcome, say};
use super::table::{for_people, input};
use crate::document::judgement::{Ask, Judgement, Place, judge, lines};
use crate::words::{Language, Words};

/// Runs the command.
pub(super) fn run(arguments: &Arguments, language: Option<Language>) -> Outcome {
    let place = arguments.place.map(|place| match place {
        ReadingPlace::Unit => Place::ControlUnit,
        ReadingPlace::Sensor => Place::Sensor,
        ReadingPlace::Unplugged => Place::Unplugged,
    });
    let ask = Ask {
        id: &arguments.id,
        reading: arguments.reading,
        at: arguments.at,
        second: arguments.second,
        place,
        instruments: &arguments.instruments,
    };
    answer(arguments.specs.specs.as_deref(), language, |loaded, words| {
        for_people(arguments.format, words, || {
            let judgement = judge(&loaded.model, words, &ask)?;
            let told = match arguments.format {
                Format::Text => announce(&loaded.from, words).and_then(|()| text(words, &judgement)),
                Format::Csv => csv(&judgement),
                Format::Json => json(&judgement),
            };
            Ok(Outcome::of_output(words, told))
        })
    })
}

fn text(words: &Words, judgement: &Judgement) -> io::Result<()> {
    let (lines, inputs) = lines(words, judgement);
    lines.iter().try_for_each(say)?;
    inputs.iter().try_for_each(|fact| say(input(words, fact)))
}

fn json(judgement: &Judgement) -> io::Result<()> {
    say(serde_json::to_string_pretty(judgement)?)
}

/// The judgement as one line of figures, then its causes as a table of their own.
fn csv(judgement: &Judgement) -> io::Result<()> {
    let number = |value: Option<f64>| value.map_or_else(String::new, |value| value.to_string());
    say("verdict,limit_low,limit_high,guard,unit,believed_temperature_c")?;
    say(format_args!(
        "{},{},{},{},{},{}",
        judgement.verdict,
        judgement.limit_low,
        judgement.limit_high,
        judgement.guard,
        judgement.unit,
        number(judgement.believed_temperature_c)
    ))?;
    say("")?;
    say("fault,size_low,size_high,unit,includes_none,part")?;
    judgement.causes.iter().try_for_each(|cause| {
        say(format_args!(
            "{},{},{},{},{},{}",
            cause.fault,
            number(cause.size_low),
            number(cause.size_high),
            cause.unit.unwrap_or_default(),
            cause.includes_none,
            cause.part.as_deref().unwrap_or_default()
        ))
    })
}
