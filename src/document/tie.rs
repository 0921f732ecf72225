//! Typographic spaces and signs: a number and its unit stay on one line.

use crate::quantity::Unit;

/// No-break space.
const TIE: char = '\u{a0}';

/// Replaces the space between a number and its unit, and behind ±, by one that
/// does not break, and the hyphen before a number by a minus sign.
pub(super) fn tie(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + text.len() / 32);
    let mut done = 0;
    for (at, sign) in text.match_indices([' ', '-']) {
        let (before, after) = (text[..at].chars().next_back(), &text[at + 1..]);
        let binds = sign == " "
            && match before {
                Some('±') => true,
                Some(digit) if char::is_ascii_digit(&digit) => begins_with_unit(after),
                _ => false,
            };
        let negative = sign == "-"
            && matches!(before, Some(' ' | '"' | '(') | None)
            && after.starts_with(|next: char| next.is_ascii_digit());
        if binds || negative {
            out.push_str(&text[done..at]);
            out.push(if binds { TIE } else { '−' });
            done = at + 1;
        }
    }
    out.push_str(&text[done..]);
    out
}

fn begins_with_unit(text: &str) -> bool {
    let end =
        text.find(|c: char| c.is_whitespace() || matches!(c, ',' | '.' | ';' | ':' | ')' | ']' | '"' | '/'));
    let token = &text[..end.unwrap_or(text.len())];
    // Only a unit in its printed spelling: a lone `C` behind a number may be a name.
    Unit::named(token).is_some_and(|unit| unit.symbol() == token)
}

#[cfg(test)]
mod tests {
    use super::tie;

    #[test]
    fn a_negative_number_has_a_minus_sign_and_a_date_has_hyphens() {
        assert_eq!(tie("-20 to -5, AMB-12, 2026-11-24"), "−20 to −5, AMB-12, 2026-11-24");
    }

    #[test]
    fn numbers_hold_on_to_their_units() {
        assert_eq!(
            tie("5.00 V ± 2 % at 25 °C, pin 7 C"),
            "5.00\u{a0}V ±\u{a0}2\u{a0}% at 25\u{a0}°C, pin 7 C"
        );
    }
}
