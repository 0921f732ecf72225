//! Parses one file as TOML and goes on behind an error where it can.

use std::ops::Range;

use toml::Spanned;
use toml::de::DeTable;

use super::duplicate;
use super::reader::File;
use crate::diag::{Finding, Place};
use crate::words::Message;

/// What the TOML parser says when a key or header comes twice.
const DUPLICATE: &str = "duplicate key";

/// One slip can make a hundred errors; more than these help nobody.
const MOST_ERRORS: usize = 12;

/// Parses a file; every syntax error becomes a finding at its line, and marks
/// the file as broken.
pub(super) fn parse<'a>(file: &mut File<'a>) -> Spanned<DeTable<'a>> {
    let (root, mut errors) = DeTable::parse_recoverable(file.text);
    file.broken = !errors.is_empty();
    // Sixty brackets without an end are one mistake at one place.
    errors.dedup_by(|a, b| a.message() == b.message() && a.span() == b.span());
    // A table given twice repeats its keys: the header alone tells the story.
    let mut told_until = 0;
    let more = errors.split_off(errors.len().min(MOST_ERRORS));
    for error in errors {
        let span = error.span().unwrap_or(0..0);
        let place = Place { file: file.id, span: span.clone() };
        let word = file.text.get(span.clone()).unwrap_or_default();
        let is_duplicate = error.message() == DUPLICATE;
        if is_duplicate && span.start < told_until {
            continue;
        }
        if is_duplicate && let Some((name, first)) = earlier(file.text, span.start, word) {
            if name != word {
                told_until = next_header(file.text, span.start);
            }
            duplicate::report(*file, name, place, Place { file: file.id, span: first });
            continue;
        }
        let message = Message::new("spec-syntax").with("reason", error.message());
        file.findings.report(Finding::error(message, place, Message::new("wanted-toml")));
    }
    if let Some(next) = more.first() {
        let place = Place { file: file.id, span: next.span().unwrap_or(0..0) };
        let message = Message::new("spec-more-syntax").with("count", more.len());
        file.findings.report(Finding::error(message, place, Message::new("wanted-toml")));
    }
    root
}

/// Where the same header, or the same key below the same header, stood before.
///
/// Returns the name to report: the whole header, or the key.
fn earlier<'a>(text: &'a str, second: usize, word: &'a str) -> Option<(&'a str, Range<usize>)> {
    let line_start = text[..second].rfind('\n').map_or(0, |at| at + 1);
    let line = text[line_start..].lines().next().unwrap_or_default().trim();
    let before = &text[..line_start];
    if line.starts_with('[') {
        let at = lines_with_offsets(before).find(|(_, other)| other.trim() == line)?;
        let inside = at.1.find(word)?;
        let name = line.trim_matches(['[', ']', ' ']);
        return Some((name, at.0 + inside..at.0 + inside + word.len()));
    }
    let (offset, other) = lines_with_offsets(before)
        .filter(|(_, other)| {
            let other = other.trim_start();
            other.strip_prefix(word).is_some_and(|rest| rest.trim_start().starts_with(['=', '.']))
        })
        .last()?;
    let start = offset + other.find(word)?;
    Some((word, start..start + word.len()))
}

/// Where the next header after `from` begins.
fn next_header(text: &str, from: usize) -> usize {
    text[from..].find("\n[").map_or(text.len(), |length| from + length + 1)
}

fn lines_with_offsets(text: &str) -> impl Iterator<Item = (usize, &str)> {
    text.split_inclusive('\n').scan(0, |offset, line| {
        let start = *offset;
        *offset += line.len();
        Some((start, line))
    })
}
