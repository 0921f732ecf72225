//! Parses one file as TOML and goes on behind an error where it can.

use toml::Spanned;
use toml::de::DeTable;

use super::duplicate;
use super::reader::File;
use crate::diag::{Finding, Place};
use crate::words::Message;

/// What the TOML parser says when a key or header comes twice.
const DUPLICATE: &str = "duplicate key";

/// Parses a file; every syntax error becomes a finding at its line.
pub(super) fn parse(file: File<'_>) -> Spanned<DeTable<'_>> {
    let (root, errors) = DeTable::parse_recoverable(file.text);
    for error in errors {
        let span = error.span().unwrap_or(0..0);
        let place = Place { file: file.id, span: span.clone() };
        let word = file.text.get(span.clone()).unwrap_or_default();
        if error.message() == DUPLICATE
            && let Some(first) = earlier(file.text, span.start, word)
        {
            duplicate::report(file, word, place, Place { file: file.id, span: first });
            continue;
        }
        let message = Message::new("spec-syntax").with("reason", error.message());
        file.findings.report(Finding::error(message, place, Message::new("wanted-toml")));
    }
    root
}

/// Where the same header, or the same key below the same header, stood before.
fn earlier(text: &str, second: usize, word: &str) -> Option<std::ops::Range<usize>> {
    let line_start = text[..second].rfind('\n').map_or(0, |at| at + 1);
    let line = text[line_start..].lines().next().unwrap_or_default().trim();
    let before = &text[..line_start];
    if line.starts_with('[') {
        let at = lines_with_offsets(before).find(|(_, other)| other.trim() == line)?;
        let inside = at.1.find(word)?;
        return Some(at.0 + inside..at.0 + inside + word.len());
    }
    let (offset, other) = lines_with_offsets(before)
        .filter(|(_, other)| {
            let other = other.trim_start();
            other.strip_prefix(word).is_some_and(|rest| rest.trim_start().starts_with(['=', '.']))
        })
        .last()?;
    let start = offset + other.find(word)?;
    Some(start..start + word.len())
}

fn lines_with_offsets(text: &str) -> impl Iterator<Item = (usize, &str)> {
    text.split_inclusive('\n').scan(0, |offset, line| {
        let start = *offset;
        *offset += line.len();
        Some((start, line))
    })
}
