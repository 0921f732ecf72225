//! What one print decides beside the specs.

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};

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
#[serde(into = "Written", try_from = "Written")]
pub struct Edition {
    /// The language of the fixed words.
    pub language: Language,
    /// The units of the figures.
    pub units: Units,
    /// The size of every paper, where not the card's own or the shop's.
    pub size: Option<Size>,
    /// The bay temperature that windows are computed for.
    pub bay: Option<Temperature>,
}

/// An edition as it stands in a file: each part by its word.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Written {
    language: String,
    units: String,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    size: Option<String>,
    #[serde(default, skip_serializing_if = "Option::is_none")]
    bay: Option<String>,
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
        Context { model, words, date, bay, units, size, trial: Trial::default(), codes: None, said: None }
    }
}

impl Context<'_> {
    /// What this print decides beside the specs.
    #[must_use]
    pub fn edition(&self) -> Edition {
        Edition { language: self.words.language(), units: self.units, size: self.size, bay: self.bay }
    }
}

impl From<Edition> for Written {
    fn from(edition: Edition) -> Self {
        Self {
            language: edition.language.code().to_owned(),
            units: edition.units.word().to_owned(),
            size: edition.size.map(|size| size.name().to_owned()),
            // In °C, which is what it is kept in: no notation of a language, no rounding.
            bay: edition.bay.map(|bay| format!("{} °C", bay.celsius())),
        }
    }
}

impl TryFrom<Written> for Edition {
    type Error = String;

    fn try_from(written: Written) -> Result<Self, String> {
        Ok(Self {
            language: read(&written.language, "language", Language::of_code)?,
            units: read(&written.units, "unit system", Units::of_word)?,
            size: written.size.map(|text| read(&text, "size", Size::named)).transpose()?,
            bay: written.bay.map(|text| read(&text, "temperature", |text| scalar(text).ok())).transpose()?,
        })
    }
}

fn read<T>(text: &str, what: &str, of: impl FnOnce(&str) -> Option<T>) -> Result<T, String> {
    of(text).ok_or_else(|| format!("no {what}: {text}"))
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
