//! What one print decides beside the specs.

use chrono::NaiveDate;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

use super::{Context, Trial};
use crate::model::Model;
use crate::quantity::{Size, Temperature, Units, scalar};
use crate::words::{Language, Words};

/// The language, units, size and bay temperature of a print: with a set and a date they decide
/// every word and figure of a page.
///
/// Written to a file and read back it is the same, to the last bit of the temperature.
///
/// # Example
/// ```
/// use bayleaf::document::Edition;
/// let edition: Edition = serde_json::from_str(r#"{"language": "de", "units": "US", "bay": "31 °C"}"#)?;
/// let text = serde_json::to_string(&edition)?;
/// assert_eq!(text, r#"{"language":"de","units":"US","bay":"31 °C"}"#);
/// # Ok::<(), serde_json::Error>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Edition {
    /// The language of the fixed words.
    #[serde(serialize_with = "code_of", deserialize_with = "language")]
    pub language: Language,
    /// The units of the figures.
    #[serde(serialize_with = "word_of", deserialize_with = "units")]
    pub units: Units,
    /// The size of every paper, where not the card's own or the shop's.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        serialize_with = "name_of",
        deserialize_with = "size"
    )]
    pub size: Option<Size>,
    /// The bay temperature that windows are computed for.
    #[serde(
        default,
        skip_serializing_if = "Option::is_none",
        serialize_with = "celsius_of",
        deserialize_with = "bay"
    )]
    pub bay: Option<Temperature>,
}

impl Edition {
    /// What a shop prints where nobody asks for anything else.
    #[must_use]
    pub fn of(model: &Model, words: &Words) -> Self {
        Self { language: words.language(), units: model.shop.units, size: None, bay: None }
    }

    /// What its documents are composed from; the words are those of its language.
    #[must_use]
    pub fn context<'a>(self, model: &'a Model, words: &'a Words, date: NaiveDate) -> Context<'a> {
        let Self { units, size, bay, .. } = self;
        Context { model, words, date, bay, units, size, trial: Trial::default(), stamp: None }
    }
}

impl Context<'_> {
    /// What this print decides beside the specs.
    #[must_use]
    pub fn edition(&self) -> Edition {
        Edition { language: self.words.language(), units: self.units, size: self.size, bay: self.bay }
    }
}

fn code_of<S: Serializer>(language: &Language, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(language.code())
}

fn word_of<S: Serializer>(units: &Units, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(units.word())
}

fn name_of<S: Serializer>(size: &Option<Size>, serializer: S) -> Result<S::Ok, S::Error> {
    size.map(Size::name).serialize(serializer)
}

/// In °C, which is what it is kept in: no notation of a language, no rounding.
fn celsius_of<S: Serializer>(bay: &Option<Temperature>, serializer: S) -> Result<S::Ok, S::Error> {
    bay.map(|bay| format!("{} °C", bay.celsius())).serialize(serializer)
}

fn language<'de, D: Deserializer<'de>>(from: D) -> Result<Language, D::Error> {
    read(from, "language", Language::of_code)
}

fn units<'de, D: Deserializer<'de>>(from: D) -> Result<Units, D::Error> {
    read(from, "unit system", Units::of_word)
}

fn size<'de, D: Deserializer<'de>>(from: D) -> Result<Option<Size>, D::Error> {
    read(from, "size", Size::named).map(Some)
}

fn bay<'de, D: Deserializer<'de>>(from: D) -> Result<Option<Temperature>, D::Error> {
    read(from, "temperature", |text| scalar(text).ok()).map(Some)
}

fn read<'de, D: Deserializer<'de>, T>(
    from: D,
    what: &str,
    of: impl FnOnce(&str) -> Option<T>,
) -> Result<T, D::Error> {
    let text = String::deserialize(from)?;
    of(&text).ok_or_else(|| serde::de::Error::custom(format_args!("no {what}: {text}")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_edition_is_written_and_read_back_to_the_last_bit() {
        for (at, units) in [(31.0, Units::Metric), ((88.0 - 32.0) / 1.8, Units::Us), (-0.1, Units::Both)] {
            for size in [None, Size::named("4x6 in landscape")] {
                let bay = Some(Temperature::from_celsius(at));
                let edition = Edition { language: Language::French, units, size, bay };
                let text = serde_json::to_string(&edition).expect("it is plain data");
                let read: Edition = serde_json::from_str(&text).expect("it is an edition");
                assert_eq!(read, edition, "{text}");
            }
        }
    }

    #[test]
    fn what_is_no_edition_is_refused() {
        for wrong in [
            r#"{"language":"xx","units":"US"}"#,
            r#"{"language":"en","units":"imperial"}"#,
            r#"{"language":"en","units":"US","bay":"31"}"#,
            r#"{"language":"en","units":"US","size":"A9"}"#,
            r#"{"language":"en","units":"US","colour":"red"}"#,
        ] {
            assert!(serde_json::from_str::<Edition>(wrong).is_err(), "{wrong}");
        }
    }
}
