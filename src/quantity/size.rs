//! The size of a printed page, as people name it: `A6 landscape`, `half letter`, `4x6 in`.

use std::fmt;

/// A format of paper, upright.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Format {
    /// 210 × 297 mm (ISO 216).
    A4,
    /// 8.5 × 11 in.
    Letter,
    /// 148 × 210 mm (ISO 216).
    A5,
    /// 5.5 × 8.5 in.
    HalfLetter,
    /// 105 × 148 mm (ISO 216).
    A6,
    /// 4 × 6 in.
    FourBySix,
    /// 100 × 150 mm.
    HundredBy150,
}

/// Millimetres in an inch.
const INCH: f64 = 25.4;

impl Format {
    /// Every one, the largest first.
    pub const ALL: [Self; 7] =
        [Self::A4, Self::Letter, Self::A5, Self::HalfLetter, Self::A6, Self::FourBySix, Self::HundredBy150];

    /// Width and height in millimetres.
    ///
    /// # Source
    /// ISO 216 for the three A formats (from memory); the others are what their names say, and
    /// letter is 8.5 × 11 in.
    #[must_use]
    pub fn millimetres(self) -> (f64, f64) {
        match self {
            Self::A4 => (210.0, 297.0),
            Self::Letter => (8.5 * INCH, 11.0 * INCH),
            Self::A5 => (148.0, 210.0),
            Self::HalfLetter => (5.5 * INCH, 8.5 * INCH),
            Self::A6 => (105.0, 148.0),
            Self::FourBySix => (4.0 * INCH, 6.0 * INCH),
            Self::HundredBy150 => (100.0, 150.0),
        }
    }
}

/// A format, upright or on its side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Size {
    /// The format.
    pub format: Format,
    /// Whether it lies on its side.
    pub landscape: bool,
}

/// Every size: how people write it, how the templates' theme names it.
const NAMES: [(&str, &str, Size); 14] = {
    const fn of(format: Format, landscape: bool) -> Size {
        Size { format, landscape }
    }
    [
        ("A4", "a4", of(Format::A4, false)),
        ("A4 landscape", "a4-landscape", of(Format::A4, true)),
        ("letter", "us-letter", of(Format::Letter, false)),
        ("letter landscape", "us-letter-landscape", of(Format::Letter, true)),
        ("A5", "a5", of(Format::A5, false)),
        ("A5 landscape", "a5-landscape", of(Format::A5, true)),
        ("half letter", "half-letter", of(Format::HalfLetter, false)),
        ("half letter landscape", "half-letter-landscape", of(Format::HalfLetter, true)),
        ("A6", "a6", of(Format::A6, false)),
        ("A6 landscape", "a6-landscape", of(Format::A6, true)),
        ("4x6 in", "4x6-in", of(Format::FourBySix, false)),
        ("4x6 in landscape", "4x6-in-landscape", of(Format::FourBySix, true)),
        ("100x150 mm", "100x150-mm", of(Format::HundredBy150, false)),
        ("100x150 mm landscape", "100x150-mm-landscape", of(Format::HundredBy150, true)),
    ]
};

impl Size {
    /// A format upright.
    #[must_use]
    pub const fn upright(format: Format) -> Self {
        Self { format, landscape: false }
    }

    /// Every size, the largest format first.
    pub fn all() -> impl DoubleEndedIterator<Item = Self> {
        NAMES.iter().map(|(.., size)| *size)
    }

    /// The names of every size, as they are written in a spec.
    pub fn names() -> impl Iterator<Item = &'static str> + Clone {
        NAMES.iter().map(|(name, ..)| *name)
    }

    /// Reads a name; capitals, spaces around a × and the word `portrait` change nothing.
    #[must_use]
    pub fn named(text: &str) -> Option<Self> {
        let plain = |text: &str| {
            let lower = text.to_lowercase().replace('×', "x");
            let words: Vec<&str> = lower.split_whitespace().collect();
            words.join(" ").replace(" x ", "x")
        };
        let wanted = plain(text);
        let wanted = wanted.strip_suffix(" portrait").unwrap_or(&wanted);
        NAMES.iter().find(|(name, ..)| plain(name) == wanted).map(|(.., size)| *size)
    }

    /// Its name in a spec.
    #[must_use]
    pub fn name(self) -> &'static str {
        NAMES.iter().find(|(.., size)| *size == self).map_or("", |(name, ..)| name)
    }

    /// Its name in the templates' theme.
    #[must_use]
    pub fn slug(self) -> &'static str {
        NAMES.iter().find(|(.., size)| *size == self).map_or("", |(_, slug, _)| slug)
    }

    /// Width and height in millimetres.
    #[must_use]
    pub fn millimetres(self) -> (f64, f64) {
        let (width, height) = self.format.millimetres();
        if self.landscape { (height, width) } else { (width, height) }
    }
}

impl fmt::Display for Size {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str(self.name())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_size_is_read_back_from_its_name() {
        for size in Size::all() {
            assert_eq!(Size::named(size.name()), Some(size));
            assert_eq!(Size::named(&size.name().to_uppercase()), Some(size));
        }
        assert_eq!(Size::named("4 × 6 in portrait"), Size::named("4x6 in"));
        assert_eq!(Size::named("A7"), None);
        assert_eq!(Size::named("portrait"), None);
    }

    #[test]
    fn formats_have_their_published_millimetres() {
        // ISO 216: each A format is the former folded once, its sides rounded down to whole
        // millimetres (from memory).
        for (larger, smaller) in [(Format::A4, Format::A5), (Format::A5, Format::A6)] {
            let ((width, height), folded) = (larger.millimetres(), smaller.millimetres());
            assert_eq!(((height / 2.0).floor(), width), folded, "{larger:?} folded is {smaller:?}");
        }
        // Letter folded once is half letter: 8.5 × 11 in.
        let ((width, height), half) = (Format::Letter.millimetres(), Format::HalfLetter.millimetres());
        assert!((height / 2.0 - half.0).abs() < 1e-9 && (width - half.1).abs() < 1e-9);
    }
}
