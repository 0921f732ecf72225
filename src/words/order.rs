//! The order in which a language lists words.

use std::cmp::Ordering;

use icu_collator::options::CollatorOptions;
use icu_collator::{Collator, CollatorBorrowed};
use icu_locale_core::locale;

use super::Language;

/// Why there is always an order.
const BUILT_IN: &str = "the orders of all languages are part of the program";

/// Puts words into the order of a language: accents and capitals count only among words
/// that are spelt alike without them.
///
/// # Source
/// Unicode CLDR, the standard collation of each language, as `icu_collator` has it.
pub struct Order {
    collator: CollatorBorrowed<'static>,
}

impl Order {
    /// The order of a language.
    ///
    /// # Panics
    /// Never: every language's order is built in.
    #[must_use]
    pub fn of(language: Language) -> Self {
        let locale = match language {
            Language::English => locale!("en"),
            Language::German => locale!("de"),
            Language::French => locale!("fr"),
            Language::Spanish => locale!("es"),
        };
        let collator = Collator::try_new(locale.into(), CollatorOptions::default()).expect(BUILT_IN);
        Self { collator }
    }

    /// Which of two words comes first.
    #[must_use]
    pub fn compare(&self, one: &str, other: &str) -> Ordering {
        self.collator.compare(one, other)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn sorted(language: Language, words: &str) -> String {
        let order = Order::of(language);
        let mut words: Vec<&str> = words.split(' ').collect();
        words.sort_by(|one, other| order.compare(one, other));
        words.join(" ")
    }

    #[test]
    fn words_stand_where_a_dictionary_of_the_language_has_them() {
        // DIN 5007-1 (from memory): ä as a, ß as ss.
        assert_eq!(sorted(Language::German, "Ärger Zug Arbeit ölig Ofen Straße Strasse"), {
            "Arbeit Ärger Ofen ölig Strasse Straße Zug"
        });
        // Accents are looked at last, from the front (Unicode CLDR, fr; from the back in fr-CA only).
        assert_eq!(sorted(Language::French, "zone écran ecru côté cote coté côte"), {
            "cote coté côte côté écran ecru zone"
        });
        // Ortografía de la lengua española (2010, from memory): ñ follows n, ch and ll are no letters.
        assert_eq!(sorted(Language::Spanish, "ñandú nube oreja ácido cinta chapa"), {
            "ácido chapa cinta nube ñandú oreja"
        });
        assert_eq!(sorted(Language::English, "fan Air air Fan belt"), "air Air belt fan Fan");
    }
}
