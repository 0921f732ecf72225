//! The numbers within a printed text.

use std::ops::Range;

use crate::quantity::decimal_mark;

/// Where numbers stand in a text: digits with point and thousands' spaces, and a minus
/// sign before them. Digits of names (`C2/7`, `R-134a`) are no numbers.
pub(super) fn numbers(text: &str) -> Vec<Range<usize>> {
    let characters: Vec<(usize, char)> = text.char_indices().collect();
    let at = |index: usize| characters.get(index).map(|(_, character)| *character);
    let is_digit = |index: usize| at(index).is_some_and(|c| c.is_ascii_digit());
    let offset = |index: usize| characters.get(index).map_or(text.len(), |(offset, _)| *offset);
    let decimal = decimal_mark();
    let within = |c: char| c == decimal || c == '\u{202f}';
    let mut found = Vec::new();
    let mut index = 0;
    while index < characters.len() {
        if !is_digit(index) {
            index += 1;
            continue;
        }
        let mut end = index + 1;
        while is_digit(end) || (at(end).is_some_and(within) && is_digit(end + 1)) {
            end += 1;
        }
        let before = index.checked_sub(1).and_then(at);
        let joins = |c: char| c.is_alphanumeric() || matches!(c, '/' | '-' | '_' | '#');
        let in_name =
            before.is_some_and(joins) || at(end).is_some_and(|c| c.is_alphabetic() || matches!(c, '/' | '_'));
        if !in_name {
            let start = if before == Some('−') { index - 1 } else { index };
            found.push(offset(start)..offset(end));
        }
        index = end;
    }
    found
}

/// A number with so many whole words of its text as tell what it is.
pub(super) fn around(text: &str, number: &Range<usize>) -> String {
    const BEFORE: usize = 22;
    const AFTER: usize = 10;
    let is_gap = |c: char| c == ' ' || c == '\u{a0}';
    let cut = |part: String| part.trim_matches(is_gap).to_owned();
    let head: Vec<char> = text[..number.start].chars().collect();
    let tail: Vec<char> = text[number.end..].chars().collect();
    let head = match head.len().checked_sub(BEFORE) {
        None | Some(0) => head.iter().collect(),
        Some(from) => {
            let from = (from..head.len()).find(|at| is_gap(head[*at])).unwrap_or(from);
            let gap = if head.last().copied().is_some_and(is_gap) { " " } else { "" };
            format!("… {}{gap}", cut(head[from..].iter().collect()))
        }
    };
    let tail = if tail.len() <= AFTER {
        tail.iter().collect()
    } else {
        let to = (0..=AFTER).rev().find(|at| is_gap(tail[*at])).unwrap_or(AFTER);
        let gap = if tail.first().copied().is_some_and(is_gap) { " " } else { "" };
        format!("{gap}{} …", cut(tail[..to].iter().collect()))
    };
    format!("{head}{}{tail}", &text[number.clone()])
}

#[cfg(test)]
mod tests {
    use super::*;

    fn found(text: &str) -> Vec<&str> {
        numbers(text).into_iter().map(|range| &text[range]).collect()
    }

    #[test]
    fn numbers_have_signs_points_and_thousands() {
        assert_eq!(
            found("−4.32 to 17\u{202f}729 Ω, 1.272–1.438."),
            ["−4.32", "17\u{202f}729", "1.272", "1.438"]
        );
    }

    #[test]
    fn names_are_no_numbers() {
        assert_eq!(found("C2/7, R-134a, 24-way, T1"), ["24"]);
    }

    #[test]
    fn a_long_text_is_cut_between_words() {
        let text = "volts at the control unit with the meter 1.285 to 1.424 V, else go on";
        assert_eq!(around(text, &numbers(text)[0]), "… unit with the meter 1.285 to 1.424 …");
    }
}
