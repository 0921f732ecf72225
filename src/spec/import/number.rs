//! Numbers as spreadsheets and manuals of any country write them.

use super::cells::Cell;

/// What may stand before a number: hyphen, minus, plus, dash.
const SIGNS: [char; 4] = ['-', '−', '+', '–'];

/// What parts thousands besides the other decimal mark: spaces and apostrophes.
const APART: [char; 5] = [' ', '\u{a0}', '\u{202f}', '\'', '’'];

/// What parts whole numbers from decimals.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decimal {
    /// 6.42, thousands with a comma.
    Point,
    /// 6,42, thousands with a point.
    Comma,
}

impl Decimal {
    fn mark(self) -> char {
        match self {
            Self::Point => '.',
            Self::Comma => ',',
        }
    }

    fn other(self) -> Self {
        match self {
            Self::Point => Self::Comma,
            Self::Comma => Self::Point,
        }
    }
}

/// What the numbers of a file say about its decimal mark.
#[derive(Debug)]
pub(super) enum Style<'a> {
    /// Every number can be read with this mark.
    Clear(Decimal),
    /// This cell could be either, and no other decides it: `2,252`.
    Either(&'a Cell),
    /// The first cell can only be read with a point, the second only with a comma.
    Mixed(&'a Cell, &'a Cell),
}

/// A cell's number without its unit, and the unit's text.
pub(super) fn split(text: &str) -> Option<(&str, &str)> {
    let part = |c: char| c.is_ascii_digit() || matches!(c, '.' | ',') || APART.contains(&c);
    let unsigned = text.trim_start_matches(SIGNS);
    let sign = text.len() - unsigned.len();
    let end = unsigned.find(|c| !part(c)).unwrap_or(unsigned.len());
    let number = unsigned[..end].trim_end();
    let is_number = number.starts_with(|c: char| c.is_ascii_digit()) || number.starts_with(['.', ',']);
    if !is_number || !number.contains(|c: char| c.is_ascii_digit()) || text[..sign].chars().count() > 1 {
        return None;
    }
    Some((text[..sign + number.len()].trim(), unsigned[end..].trim()))
}

/// Which mark the numbers of these cells are written with.
pub(super) fn style<'a>(cells: impl Iterator<Item = &'a Cell> + Clone) -> Style<'a> {
    let said =
        |wanted| cells.clone().find(|cell| split(&cell.text).and_then(|(n, _)| sure(n)) == Some(wanted));
    match (said(Decimal::Point), said(Decimal::Comma)) {
        (Some(point), Some(comma)) => return Style::Mixed(point, comma),
        (Some(_), None) => return Style::Clear(Decimal::Point),
        (None, Some(_)) => return Style::Clear(Decimal::Comma),
        (None, None) => {}
    }
    // Three digits behind a lone comma: thousands in one country, decimals in another. A
    // lone point is taken for what it is in every spec; the rows then tell if it was not.
    let unsure = |cell: &&Cell| split(&cell.text).is_some_and(|(number, _)| number.contains(','));
    match cells.clone().find(unsure) {
        Some(cell) => Style::Either(cell),
        None => Style::Clear(Decimal::Point),
    }
}

/// The mark that a number must have been written with, where it decides that.
fn sure(number: &str) -> Option<Decimal> {
    let last = number.rfind(['.', ','])?;
    let mark = if number[last..].starts_with('.') { Decimal::Point } else { Decimal::Comma };
    if number.contains(mark.other().mark()) {
        return Some(mark);
    }
    if number.matches(mark.mark()).count() > 1 {
        return Some(mark.other());
    }
    let (before, after) = (number[..last].trim_start_matches(SIGNS), &number[last + 1..]);
    let thousands = after.len() == 3 && (1..=3).contains(&before.len()) && !before.starts_with('0');
    (!thousands).then_some(mark)
}

/// The number as a spec has it, `1234.50`; `None` where it is none in this style.
pub(super) fn plain(number: &str, decimal: Decimal) -> Option<String> {
    let (whole, decimals) = match number.split_once(decimal.mark()) {
        Some((whole, decimals)) => (whole, Some(decimals)),
        None => (number, None),
    };
    let unsigned = whole.trim_start_matches(SIGNS);
    let negative = whole.starts_with(['-', '−', '–']);
    let apart = |c: char| c == decimal.other().mark() || APART.contains(&c);
    let groups: Vec<&str> = unsigned.split(apart).collect();
    let are_thousands = groups.len() == 1
        || (groups[0].len() <= 3
            && !groups[0].is_empty()
            && groups[1..].iter().all(|group| group.len() == 3));
    let digits = groups.concat();
    let all_digits = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    if !are_thousands || !all_digits(&digits) || !decimals.is_none_or(|d| all_digits(d) && !d.is_empty()) {
        return None;
    }
    let digits = if digits.is_empty() { "0" } else { &digits };
    let kept = digits.trim_start_matches('0');
    let whole = if kept.is_empty() { "0" } else { kept };
    let sign = if negative { "-" } else { "" };
    Some(decimals.map_or_else(|| format!("{sign}{whole}"), |decimals| format!("{sign}{whole}.{decimals}")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_of_every_country_are_one() {
        for (text, decimal, number) in [
            ("1.234,50", Decimal::Comma, "1234.50"),
            ("1,234.50", Decimal::Point, "1234.50"),
            ("1\u{202f}234,5", Decimal::Comma, "1234.5"),
            ("1'234.5", Decimal::Point, "1234.5"),
            ("−40", Decimal::Point, "-40"),
            ("007", Decimal::Point, "7"),
            (".5", Decimal::Point, "0.5"),
        ] {
            assert_eq!(plain(text, decimal).as_deref(), Some(number), "{text}");
        }
        for (text, decimal) in [("12,34", Decimal::Point), ("1.2.3", Decimal::Point), ("5,", Decimal::Comma)]
        {
            assert_eq!(plain(text, decimal), None, "{text}");
        }
    }

    #[test]
    fn a_unit_behind_a_number_is_split_off() {
        assert_eq!(split("2.2 kΩ"), Some(("2.2", "kΩ")));
        assert_eq!(split("-40°F"), Some(("-40", "°F")));
        assert_eq!(split("R at 25"), None);
        assert_eq!(split("—"), None);
        assert_eq!(split("--5"), None);
    }

    #[test]
    fn only_three_digits_behind_a_lone_mark_are_doubtful() {
        assert_eq!(sure("6,42"), Some(Decimal::Comma));
        assert_eq!(sure("0,815"), Some(Decimal::Comma));
        assert_eq!(sure("2,252"), None);
        assert_eq!(sure("1,747,920"), Some(Decimal::Point));
        assert_eq!(sure("1.747,9"), Some(Decimal::Comma));
        assert_eq!(sure("1600"), None);
    }
}
