//! The two fonts of every page: DejaVu Sans Condensed, regular and bold.
//!
//! typst files the condensed faces under the family `DejaVu Sans` with a
//! stretch of 75 %; `templates/theme.typ` asks for them that way.

use typst::foundations::Bytes;
use typst::text::Font;

/// Loads the fonts from the bytes inside the binary; no system font is used.
pub(super) fn load() -> Vec<Font> {
    crate::fonts::data().into_iter().flat_map(|data| Font::iter(Bytes::new(data))).collect()
}
