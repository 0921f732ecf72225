//! `rows`, `latch_side` and `keys` of a connector: its face as one looks at it.

use toml::Spanned;
use toml::de::DeValue;

use super::reader::{Item, Reader};
use super::value::At;
use crate::diag::{Finding, Place};
use crate::words::Message;

/// One row of a face, from left to right.
#[derive(Debug, Clone)]
pub struct FaceRow {
    /// The mark at each place; none where there is no pin hole.
    pub places: Vec<At<Option<String>>>,
    /// Where the row stands.
    pub place: Place,
}

/// An edge of a face.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Edge {
    /// The upper one.
    Top,
    /// The lower one.
    Bottom,
    /// The left one.
    Left,
    /// The right one.
    Right,
}

impl Edge {
    /// Every one, with its word in a spec.
    pub(super) const WORDS: &'static [(&'static str, Self)] =
        &[("top", Self::Top), ("bottom", Self::Bottom), ("left", Self::Left), ("right", Self::Right)];

    /// The same edge of the mirror image.
    #[must_use]
    pub fn mirrored(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
            other => other,
        }
    }
}

/// Where at an edge a key is: at one of its ends, or in its middle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Corner {
    /// The edge.
    pub edge: Edge,
    /// Its end, where it is not the middle: left or right of a level edge, top or bottom of an upright one.
    pub end: Option<Edge>,
}

impl Corner {
    /// Every one, with its word in a spec.
    pub(super) const WORDS: &'static [(&'static str, Self)] = &[
        ("top", Self::at(Edge::Top, None)),
        ("top left", Self::at(Edge::Top, Some(Edge::Left))),
        ("top right", Self::at(Edge::Top, Some(Edge::Right))),
        ("bottom", Self::at(Edge::Bottom, None)),
        ("bottom left", Self::at(Edge::Bottom, Some(Edge::Left))),
        ("bottom right", Self::at(Edge::Bottom, Some(Edge::Right))),
        ("left", Self::at(Edge::Left, None)),
        ("left top", Self::at(Edge::Left, Some(Edge::Top))),
        ("left bottom", Self::at(Edge::Left, Some(Edge::Bottom))),
        ("right", Self::at(Edge::Right, None)),
        ("right top", Self::at(Edge::Right, Some(Edge::Top))),
        ("right bottom", Self::at(Edge::Right, Some(Edge::Bottom))),
    ];

    const fn at(edge: Edge, end: Option<Edge>) -> Self {
        Self { edge, end }
    }

    /// The same place of the mirror image.
    #[must_use]
    pub fn mirrored(self) -> Self {
        Self { edge: self.edge.mirrored(), end: self.end.map(Edge::mirrored) }
    }
}

/// Marks from left to right, `""` where there is no pin hole.
const FACE_ROW: Item = Item::RowOf(&Item::OneOf(&[Item::Count, Item::Pattern("")]));

/// Reads `rows`: lists of marks, each a number or a text, empty where there is no pin hole.
pub(super) fn read_rows(reader: &Reader<'_>) -> Option<At<Vec<FaceRow>>> {
    let list = reader.list("rows", &FACE_ROW)?;
    // Every bad row is reported before the face as a whole is given up.
    let rows: Vec<Option<FaceRow>> = list.value.iter().map(|row| read_row(reader, row)).collect();
    Some(At { value: rows.into_iter().collect::<Option<_>>()?, place: list.place })
}

fn read_row<'a>(reader: &Reader<'a>, row: &'a Spanned<DeValue<'a>>) -> Option<FaceRow> {
    let place = reader.file().place(row);
    let Some(cells) = row.get_ref().as_array() else {
        let message = Message::new("spec-bad-face-row");
        reader.report(Finding::error(message, place, Message::new("wanted-face-row")));
        return None;
    };
    let marks: Vec<Option<At<Option<String>>>> = cells.iter().map(|cell| read_mark(reader, cell)).collect();
    Some(FaceRow { places: marks.into_iter().collect::<Option<_>>()?, place })
}

fn read_mark<'a>(reader: &Reader<'a>, cell: &'a Spanned<DeValue<'a>>) -> Option<At<Option<String>>> {
    let place = reader.file().place(cell);
    match cell.get_ref() {
        DeValue::Integer(number) if number.radix() == 10 && !number.as_str().starts_with(['-', '+']) => {
            Some(At { value: Some(number.as_str().replace('_', "")), place })
        }
        DeValue::String(text) if text.trim().is_empty() => Some(At { value: None, place }),
        DeValue::String(_) => {
            let mark = reader.text_of("rows", cell, "wanted-face-row")?;
            Some(At { value: Some(mark.value), place })
        }
        _ => {
            let message = Message::new("spec-bad-face-row");
            reader.report(Finding::error(message, place, Message::new("wanted-face-row")));
            None
        }
    }
}
