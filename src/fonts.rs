//! The two fonts of every page, and which characters they have.
//!
//! A room of its own before all others, because a spec is told at once when it holds a
//! character that no page could show.

use std::sync::LazyLock;

use ttf_parser::Face;

/// Regular and bold of DejaVu Sans Condensed, as they are inside the binary.
#[must_use]
pub fn data() -> [&'static [u8]; 2] {
    [dejavu::sans_condensed::regular(), dejavu::sans_condensed::bold()]
}

static FACES: LazyLock<Vec<Face<'static>>> =
    LazyLock::new(|| data().into_iter().filter_map(|data| Face::parse(data, 0).ok()).collect());

/// Whether both fonts can show a character.
///
/// Control characters and marks that only change direction or join are refused
/// even where a font has an empty glyph for them.
///
/// # Example
/// ```
/// use bayleaf::fonts::can_show;
/// assert!("Ω ± µ → é Ж".chars().all(can_show));
/// assert!(!can_show('🚑') && !can_show('\u{7}') && !can_show('\u{202e}'));
/// ```
#[must_use]
pub fn can_show(c: char) -> bool {
    // Nearly all of a spec, which is looked through character by character.
    if matches!(c, ' '..='~') {
        return true;
    }
    let invisible = c.is_control()
        || matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{206f}' | '\u{feff}');
    let private = matches!(c, '\u{e000}'..='\u{f8ff}');
    !invisible && !private && FACES.iter().all(|face| face.glyph_index(c).is_some())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_printable_character_of_ascii_has_a_glyph_in_both_fonts() {
        assert_eq!(FACES.len(), 2);
        assert!((' '..='~').all(|c| FACES.iter().all(|face| face.glyph_index(c).is_some())));
    }
}
