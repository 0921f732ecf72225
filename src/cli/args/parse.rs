//! What the values of options are read as.

use crate::diag::nearest;
use crate::document::judgement::Reading;
use crate::quantity::{Pressure, Ratio, Resistance, Size, Step, Temperature, Units, Voltage, scalar};
use crate::words::Language;

/// One of several equal shares.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Share {
    /// Which one, from 0.
    pub index: usize,
    /// Of how many.
    pub of: usize,
}

impl Share {
    /// Whether the item with this number belongs to the share.
    #[must_use]
    pub fn has(self, number: usize) -> bool {
        number % self.of == self.index
    }
}

pub(super) fn share(text: &str) -> Result<Share, String> {
    let parts = text.split_once('/');
    let numbers = parts.and_then(|(index, of)| Some((index.parse().ok()?, of.parse().ok()?)));
    match numbers {
        Some((index @ 1.., of)) if index <= of => Ok(Share { index: index - 1, of }),
        _ => Err("expected a share such as 2/8: a number from 1, a slash, how many".to_owned()),
    }
}

pub(super) fn language(text: &str) -> Result<Language, String> {
    let codes = || Language::ALL.iter().map(|language| language.code()).collect::<Vec<_>>().join(", ");
    let meant = || match Language::meant_by(text) {
        Some(near) => format!("; did you mean {}?", near.code()),
        None => String::new(),
    };
    Language::of_code(text).ok_or_else(|| format!("expected one of {}{}", codes(), meant()))
}

pub(super) fn temperature(text: &str) -> Result<Temperature, String> {
    let above_absolute_zero = |at: &Temperature| at.kelvins() > 0.0;
    let read = scalar::<Temperature>(text).ok().filter(above_absolute_zero);
    read.ok_or_else(|| "expected a temperature with its unit, such as \"31 °C\" or \"88 °F\"".to_owned())
}

pub(super) fn size(text: &str) -> Result<Size, String> {
    Size::named(text).ok_or_else(|| {
        let all: Vec<&str> = Size::names().collect();
        let near = nearest(text, all.iter().copied());
        let near = near.map(|near| format!("did you mean \"{near}\"? ")).unwrap_or_default();
        format!("{near}expected one of {}", all.join(", "))
    })
}

pub(super) fn pixels_per_inch(text: &str) -> Result<f64, String> {
    let read = text.parse().ok().filter(|ppi: &f64| (20.0..=1200.0).contains(ppi));
    read.ok_or_else(|| "expected a number from 20 to 1200".to_owned())
}

pub(super) fn position(text: &str) -> Result<Ratio, String> {
    let read = scalar::<Ratio>(text).ok().filter(|at| (0.0..=1.0).contains(&at.part()));
    read.ok_or_else(|| "expected a position from \"0 %\" to \"100 %\"".to_owned())
}

pub(super) fn pressure(text: &str) -> Result<Pressure, String> {
    let read = scalar::<Pressure>(text).ok();
    read.ok_or_else(|| "expected a pressure with its unit, such as \"300 kPa\" or \"45 psi\"".to_owned())
}

pub(super) fn reading(text: &str) -> Result<Reading, String> {
    if text.trim().eq_ignore_ascii_case("OL") {
        return Ok(Reading::Ohms(Resistance::from_ohms(f64::INFINITY)));
    }
    let volts = scalar::<Voltage>(text).map(Reading::Volts);
    let read = volts.or_else(|_| scalar::<Resistance>(text).map(Reading::Ohms)).ok();
    let possible = |reading: &Reading| !matches!(reading, Reading::Ohms(ohms) if ohms.ohms() < 0.0);
    read.filter(possible).ok_or_else(|| {
        "expected a reading with its unit, such as \"1.42 V\" or \"1.75 kΩ\", or OL".to_owned()
    })
}

pub(super) fn second(text: &str) -> Result<(Reading, Temperature), String> {
    let (read, at) = text
        .split_once('@')
        .ok_or_else(|| "expected a reading, an @ and a temperature, such as \"2.6 V@5 °C\"".to_owned())?;
    Ok((reading(read)?, temperature(at)?))
}

pub(super) fn step(text: &str) -> Result<Step, String> {
    let read = scalar::<Step>(text).ok();
    read.ok_or_else(|| "expected a temperature difference, such as \"5 K\" or \"10 °F\"".to_owned())
}

pub(super) fn units(text: &str) -> Result<Units, String> {
    let is_meant = |(word, _): &&(&str, Units)| word.eq_ignore_ascii_case(text);
    if let Some((_, units)) = Units::WORDS.iter().find(is_meant) {
        return Ok(*units);
    }
    let words = Units::WORDS.iter().map(|(word, _)| *word);
    let all = words.clone().collect::<Vec<_>>().join(", ");
    let near = Units::meant_by(text).map(Units::word).or_else(|| nearest(text, words));
    let near = near.map(|near| format!("; did you mean {near}?"));
    Err(format!("expected one of {all}{}", near.unwrap_or_default()))
}

/// A line of text: neither empty nor of several lines.
pub(super) fn line(text: &str) -> Result<String, String> {
    let text = text.trim();
    let is_line = !text.is_empty() && !text.chars().any(char::is_control);
    is_line.then(|| text.to_owned()).ok_or_else(|| "expected some text on one line".to_owned())
}
