//! What today's tool makes of the specs inside a PDF, beside what is printed on it.

use serde_json::Value;

use super::{Enclosed, FOLDER, plain, words};
use crate::diag::{Findings, Sources};
use crate::document::{self, Context, Stamp, Trial};
use crate::model;
use crate::quantity::{Size, Temperature, Units};
use crate::rules;
use crate::spec::Set;
use crate::words::Message;

/// What became of a document's texts.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Comparison {
    /// Figures that read otherwise.
    pub figures: Vec<Differing>,
    /// How many texts without a figure do.
    pub wording: usize,
}

/// A text with figures that reads otherwise.
#[derive(Debug, Clone, PartialEq)]
pub struct Differing {
    /// Where it is in the document's data: names and numbers from 1.
    pub place: String,
    /// What is printed; empty where there was no such text.
    pub printed: String,
    /// What it would be today; empty where it would be gone.
    pub today: String,
    /// By how much at most, in units of the last printed digit, where the same figures
    /// stand in the same words.
    pub digits: Option<f64>,
}

/// Parts of the furniture that an issue or a version sets, not a figure.
const NOT_FIGURES: [&str; 3] = ["/furniture/code", "/furniture/fingerprint", "/furniture/changed"];

/// Computes the document again.
///
/// # Errors
/// When today's tool finds errors in the specs, or no such document.
pub fn compare(enclosed: &Enclosed) -> Result<Comparison, Message> {
    let record = &enclosed.record;
    let mut specs = Sources::default();
    for (path, text) in enclosed.specs.iter() {
        specs.add(format!("{FOLDER}{path}"), text.clone());
    }
    let findings = Findings::default();
    let set = Set::read(&specs, &findings);
    rules::check(&set, &findings);
    if findings.has_errors() {
        let first = findings.sorted().first().map(|finding| words(record).say(&finding.message));
        let message = Message::new("enclosed-findings").with("first", first.unwrap_or_default());
        return Err(message);
    }
    let missing = || Message::new("enclosed-no-document").with("id", &record.id);
    let model = model::build(&set).ok_or_else(missing)?;
    let mut listed = document::list(&model);
    listed.extend(document::proofs(&model));
    let listed = listed.into_iter().find(|listed| listed.id == record.id).ok_or_else(missing)?;
    let stamp = Stamp { revision: record.revision, date: record.date, by: record.by.clone(), since: None };
    let words = words(record);
    let unknown = || Message::new("enclosed-damaged");
    let context = Context {
        model: &model,
        words: &words,
        date: record.date,
        bay: record.bay.map(Temperature::from_kelvins),
        units: Units::of_word(&record.units).ok_or_else(unknown)?,
        size: record.size.as_deref().and_then(Size::named),
        trial: Trial::default(),
        codes: None,
        said: None,
    };
    let document = document::compose(context, &listed).ok_or_else(missing)?.issued(&words, &stamp);
    let mut comparison = Comparison::default();
    compared(&record.data, &plain(&document.data), "", &mut comparison);
    Ok(comparison)
}

fn compared(printed: &Value, today: &Value, pointer: &str, found: &mut Comparison) {
    if printed == today || NOT_FIGURES.contains(&pointer) {
        return;
    }
    match (printed, today) {
        (Value::Object(before), Value::Object(now)) => {
            let keys = before.keys().chain(now.keys().filter(|key| !before.contains_key(*key)));
            for key in keys {
                let of = |all: &serde_json::Map<String, Value>| all.get(key).cloned().unwrap_or_default();
                compared(&of(before), &of(now), &format!("{pointer}/{key}"), found);
            }
        }
        (Value::Array(before), Value::Array(now)) => {
            for index in 0..before.len().max(now.len()) {
                let of = |all: &[Value]| all.get(index).cloned().unwrap_or_default();
                compared(&of(before), &of(now), &format!("{pointer}/{}", index + 1), found);
            }
        }
        // A whole that is there on one side only: its texts one by one.
        (Value::Object(_) | Value::Array(_), _) => each(printed, pointer, &mut |text, at| {
            found.add(text, "", at);
        }),
        (_, Value::Object(_) | Value::Array(_)) => each(today, pointer, &mut |text, at| {
            found.add("", text, at);
        }),
        _ => found.add(&shown(printed), &shown(today), pointer),
    }
}

/// Every text of a value with its place.
fn each(value: &Value, pointer: &str, tell: &mut dyn FnMut(&str, &str)) {
    match value {
        Value::Array(values) => {
            for (index, value) in values.iter().enumerate() {
                each(value, &format!("{pointer}/{}", index + 1), tell);
            }
        }
        Value::Object(entries) => {
            for (key, value) in entries {
                each(value, &format!("{pointer}/{key}"), tell);
            }
        }
        other => tell(&shown(other), pointer),
    }
}

fn shown(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Null => String::new(),
        other => other.to_string(),
    }
}

impl Comparison {
    fn add(&mut self, printed: &str, today: &str, pointer: &str) {
        let has_figure = |text: &str| text.contains(|c: char| c.is_ascii_digit());
        if !has_figure(printed) && !has_figure(today) {
            self.wording += usize::from(printed != today);
            return;
        }
        self.figures.push(Differing {
            place: pointer.trim_start_matches('/').replace('/', " "),
            printed: printed.to_owned(),
            today: today.to_owned(),
            digits: apart(printed, today),
        });
    }
}

/// By how many units of the last digit the figures of two texts differ at most, where all
/// else is the same.
#[must_use]
pub fn apart(printed: &str, today: &str) -> Option<f64> {
    let ((one, words), (other, same)) = (figures(printed), figures(today));
    if words != same || one.len() != other.len() {
        return None;
    }
    let apart = one.iter().zip(&other).map(|(one, other)| {
        let digits = |text: &str| text.split_once(['.', ',']).map_or(0, |(_, after)| after.len());
        let value = |text: &str| text.replace(',', ".").parse::<f64>().ok();
        let unit = libm::pow(10.0, i32::try_from(digits(one)).map_or(0.0, f64::from));
        Some(((value(one)? - value(other)?).abs() * unit * 10.0).round() / 10.0)
    });
    apart.collect::<Option<Vec<f64>>>().map(|all| all.into_iter().fold(0.0, f64::max))
}

/// The figures of a text, and what stands around them. A space that groups digits is none.
fn figures(text: &str) -> (Vec<String>, String) {
    let (mut all, mut words, mut current) = (Vec::new(), String::new(), String::new());
    let characters: Vec<char> = text.chars().collect();
    for (index, c) in characters.iter().enumerate() {
        let next_is_digit = characters.get(index + 1).is_some_and(char::is_ascii_digit);
        let goes_on = !current.is_empty() && next_is_digit;
        match c {
            _ if c.is_ascii_digit() => current.push(*c),
            '.' | ',' if goes_on => current.push(*c),
            '\u{2009}' | '\u{202f}' if goes_on => {}
            _ => {
                if !current.is_empty() {
                    all.push(std::mem::take(&mut current));
                    words.push('#');
                }
                words.push(*c);
            }
        }
    }
    if !current.is_empty() {
        all.push(current);
        words.push('#');
    }
    (all, words)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn figures_differ_by_units_of_their_last_digit() {
        assert_eq!(apart("2.765–3.016 V", "2.766–3.016 V"), Some(1.0));
        assert_eq!(apart("1\u{2009}206", "1\u{2009}209"), Some(3.0));
        assert_eq!(apart("4,71", "4,75"), Some(4.0));
        assert_eq!(apart("4.71 V", "4.71 mV"), None);
        assert_eq!(apart("4.71", "4.7"), Some(1.0));
    }
}
