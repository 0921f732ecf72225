//! The languages that there are tables of words for.

/// A language of papers and findings.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Language {
    /// English, the language of the keys of specs, too.
    #[default]
    English,
    /// German.
    German,
    /// French.
    French,
    /// Spanish.
    Spanish,
}

/// Names that somebody may write in place of a code, so that the right one can be offered.
const NAMES: &[(&str, Language)] = &[
    ("english", Language::English),
    ("englisch", Language::English),
    ("anglais", Language::English),
    ("inglés", Language::English),
    ("german", Language::German),
    ("deutsch", Language::German),
    ("allemand", Language::German),
    ("alemán", Language::German),
    ("french", Language::French),
    ("französisch", Language::French),
    ("français", Language::French),
    ("francés", Language::French),
    ("spanish", Language::Spanish),
    ("spanisch", Language::Spanish),
    ("espagnol", Language::Spanish),
    ("español", Language::Spanish),
];

impl Language {
    /// All of them.
    pub const ALL: &[Self] = &[Self::English, Self::German, Self::French, Self::Spanish];

    /// Its code in ISO 639-1, which is what a spec or a command names it by.
    #[must_use]
    pub const fn code(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
            Self::French => "fr",
            Self::Spanish => "es",
        }
    }

    /// Its table of words, as it was when the binary was built.
    #[must_use]
    pub const fn table(self) -> &'static str {
        match self {
            Self::English => include_str!("en.ftl"),
            Self::German => include_str!("de.ftl"),
            Self::French => include_str!("fr.ftl"),
            Self::Spanish => include_str!("es.ftl"),
        }
    }

    /// Its decimal mark, and from how many digits on it parts whole numbers in groups of three:
    /// groups from ISO 80000-1, but not of four digits in Spanish (Unicode CLDR 45,
    /// `minimumGroupingDigits`, from memory).
    #[must_use]
    pub const fn numbers(self) -> (char, usize) {
        match self {
            Self::English => ('.', 4),
            Self::Spanish => (',', 5),
            _ => (',', 4),
        }
    }

    /// The form of its dates, as `strftime` has it; English has that of ISO 8601.
    #[must_use]
    pub const fn dates(self) -> &'static str {
        match self {
            Self::English => "%Y-%m-%d",
            Self::German => "%d.%m.%Y",
            _ => "%d/%m/%Y",
        }
    }

    /// The language of a code.
    #[must_use]
    pub fn of_code(code: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|language| language.code() == code)
    }

    /// The language that is most likely meant by what is no code: `de-AT`, `German`.
    ///
    /// # Example
    /// ```
    /// use bayleaf::words::Language;
    /// assert_eq!(Language::meant_by("ES-mx"), Some(Language::Spanish));
    /// assert_eq!(Language::meant_by("Espanol"), Some(Language::Spanish));
    /// assert_eq!(Language::meant_by("xx"), None);
    /// ```
    #[must_use]
    pub fn meant_by(text: &str) -> Option<Self> {
        let lower = text.trim().to_lowercase();
        let code = lower.split(['-', '_', '.']).next().unwrap_or_default();
        let by_name = || {
            let like = |(name, language): &(&str, Self)| (strsim::jaro_winkler(&lower, name), *language);
            let near = NAMES.iter().map(like).filter(|(similarity, _)| *similarity >= NEAR);
            near.max_by(|one, other| one.0.total_cmp(&other.0)).map(|(_, language)| language)
        };
        Self::of_code(code).or_else(by_name)
    }
}

/// From this similarity on a name is taken for the one that was meant.
const NEAR: f64 = 0.8;
