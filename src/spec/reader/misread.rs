//! Turns a quantity that could not be read into a finding at its place.

use std::ops::Range;

use super::At;
use crate::diag::{Finding, Place, nearest};
use crate::quantity::{Dimension, Misread, Reason, Unit};
use crate::words::Message;

/// Where a part of a string value stands in the file.
///
/// Only a plain quoted string maps byte by byte; for one with escapes or
/// folded white space the whole value is shown.
pub(super) fn inside(file: &str, text: &At<String>, part: &Range<usize>) -> Range<usize> {
    let span = &text.place.span;
    let raw = file.get(span.clone()).unwrap_or_default();
    let plain = raw.len() == text.value.len() + 2 && raw.get(1..raw.len() - 1) == Some(&text.value);
    if plain && !part.is_empty() {
        span.start + 1 + part.start..span.start + 1 + part.end
    } else {
        span.clone()
    }
}

/// The finding for a misread value.
pub(in crate::spec) fn finding(key: &str, written: &str, misread: &Misread, place: Place) -> Finding {
    let message = |id| Message::new(id).with("key", key).with("written", written);
    let wanted = |dimension: Dimension| {
        Message::new("wanted-quantity")
            .with_word("dimension", dimension.word())
            .with("examples", dimension.examples())
    };
    let suggest = |text: &str| Message::new("did-you-mean").with("word", text);
    match &misread.reason {
        Reason::NotANumber => {
            Finding::error(message("misread-not-a-number"), place, Message::new("wanted-number"))
        }
        Reason::DecimalComma { suggestion } => {
            Finding::error(message("misread-decimal-comma"), place, Message::new("wanted-decimal-point"))
                .help(suggest(suggestion))
        }
        Reason::UnitMissing(dimension) => {
            Finding::error(message("misread-unit-missing"), place, wanted(*dimension))
        }
        Reason::UnitUnknown { found, wanted: dimension } => {
            let message = message("misread-unit-unknown").with("unit", found);
            let finding = Finding::error(message, place, wanted(*dimension));
            let near = nearest_unit(found, *dimension);
            match near {
                Some(near) => finding.help(suggest(near)),
                None => finding,
            }
        }
        Reason::WrongDimension { found, found_dimension, wanted: dimension } => {
            let message = message("misread-wrong-dimension")
                .with("unit", found)
                .with_word("found", found_dimension.word())
                .with_word("wanted", dimension.word());
            let finding = Finding::error(message, place, wanted(*dimension));
            match (dimension, found.as_str()) {
                (Dimension::Resistance, "K") => finding.help(suggest("kΩ")),
                _ => finding,
            }
        }
        Reason::TemperatureForDifference { suggestion } => Finding::error(
            message("misread-temperature-for-difference"),
            place,
            wanted(Dimension::TemperatureDifference),
        )
        .help(suggest(suggestion)),
        Reason::Trailing(rest) => {
            let message = message("misread-trailing").with("rest", rest);
            Finding::error(message, place, Message::new("wanted-nothing-more"))
        }
        Reason::Reversed { suggestion } => {
            Finding::error(message("misread-reversed"), place, Message::new("wanted-low-first"))
                .help(suggest(suggestion))
        }
        Reason::NotAnInterval(dimension) => {
            let label = Message::new("wanted-interval").with(
                "examples",
                match dimension {
                    Dimension::Temperature => "`-20 °C to 60 °C`",
                    Dimension::Ratio => "`8 % to 14 %`",
                    Dimension::Current => "`40 mA to 160 mA`",
                    _ => "`1.2 V to 3.4 V`",
                },
            );
            Finding::error(message("misread-not-an-interval"), place, label)
        }
        Reason::NegativeTolerance => {
            Finding::error(message("misread-negative"), place, Message::new("wanted-zero-or-more"))
        }
        Reason::Negative => {
            Finding::error(message("misread-below-zero"), place, Message::new("wanted-zero-or-more"))
        }
        Reason::Exponent => {
            Finding::error(message("misread-exponent"), place, Message::new("wanted-written-out"))
        }
        Reason::ToleranceTooLarge => Finding::error(
            message("misread-tolerance-too-large"),
            place,
            Message::new("wanted-smaller-tolerance"),
        ),
        Reason::NotAnAccuracy => {
            Finding::error(message("misread-not-an-accuracy"), place, Message::new("wanted-accuracy"))
        }
        Reason::OtherUnit { found, wanted } => {
            let message = message("misread-other-unit").with("unit", found);
            Finding::error(message, place, Message::new("wanted-unit").with("unit", wanted))
        }
    }
}

/// The nearest unit of the dimension that is wanted.
fn nearest_unit(found: &str, wanted: Dimension) -> Option<&'static str> {
    let of_dimension =
        |spelling: &&'static str| Unit::named(spelling).is_some_and(|unit| unit.measures(wanted));
    nearest(found, Unit::spellings().filter(of_dimension))
}
