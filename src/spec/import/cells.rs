//! Lines and cells of a text of columns, with the place of each.

use csv::{ReaderBuilder, StringRecord};

use crate::diag::{FileId, Place};

/// What may stand between two cells, in the order in which it is looked for: a comma may
/// also be the decimal mark of a file whose cells are apart by something else.
pub(super) const SEPARATORS: [char; 4] = [';', '\t', '|', ','];

/// A cell without the space around it.
#[derive(Debug, Clone)]
pub(super) struct Cell {
    pub text: String,
    pub place: Place,
}

/// A line that is not empty; a cell in quotes may run over several lines of the file.
#[derive(Debug, Clone)]
pub(super) struct Line {
    pub cells: Vec<Cell>,
    pub place: Place,
}

impl Line {
    /// The cells that hold something.
    pub(super) fn filled(&self) -> impl Iterator<Item = &Cell> {
        self.cells.iter().filter(|cell| !cell.text.is_empty())
    }
}

/// The mark that most lines hold; the first in the order where several do.
pub(super) fn separator(text: &str) -> Option<char> {
    let lines = || text.lines().filter(|line| !line.trim().is_empty() && !line.starts_with('#'));
    let most = lines().count().div_ceil(2);
    SEPARATORS.into_iter().find(|mark| lines().filter(|line| line.contains(*mark)).count() >= most.max(1))
}

/// Every line with something in it; `#` begins a comment.
pub(super) fn lines(file: FileId, text: &str, separator: char) -> Vec<Line> {
    let mut reader = ReaderBuilder::new()
        .delimiter(u8::try_from(separator).unwrap_or(b','))
        .has_headers(false)
        .flexible(true)
        .comment(Some(b'#'))
        .from_reader(text.as_bytes());
    let mut lines = Vec::new();
    let mut record = StringRecord::new();
    let mut start = 0;
    // Text with lines of any length has nothing to fail at.
    while reader.read_record(&mut record).unwrap_or(false) {
        let from = record.position().map_or(start, |at| usize::try_from(at.byte()).unwrap_or(start));
        start = usize::try_from(reader.position().byte()).unwrap_or(text.len());
        let line = line(file, text, from..start.min(text.len()), &record);
        if line.filled().next().is_some() {
            lines.push(line);
        }
    }
    lines
}

fn line(file: FileId, text: &str, span: std::ops::Range<usize>, record: &StringRecord) -> Line {
    let raw = text.get(span.clone()).unwrap_or_default();
    let mut after = 0;
    let cells = record.iter().map(|cell| {
        let trimmed = cell.trim();
        // The cell as it stands in the file; one with doubled quotes is shown by its line.
        let found = raw.get(after..).and_then(|rest| rest.find(trimmed)).map(|at| after + at);
        let at = found.unwrap_or(after);
        let length = if found.is_some() { trimmed.len() } else { 0 };
        after = (at + length).min(raw.len());
        let start = span.start + at;
        // A head that was broken over two lines reads as one.
        let text = trimmed.split_whitespace().collect::<Vec<_>>().join(" ");
        Cell { text, place: Place { file, span: start..start + length } }
    });
    let cells = cells.collect();
    // The end of the line before may belong to the record.
    let start = span.start + raw.len() - raw.trim_start().len();
    Line { cells, place: Place { file, span: start..span.start + raw.trim_end().len() } }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diag::Sources;

    fn read(text: &str) -> Vec<Vec<String>> {
        let mut sources = Sources::default();
        sources.add("a.csv".to_owned(), text.to_owned());
        let (file, text) = sources.texts().next().expect("it was added");
        let mark = separator(text).expect("cells are apart");
        let lines = lines(file, text, mark);
        for cell in lines.iter().flat_map(|line| &line.cells) {
            let there = &text[cell.place.span.clone()];
            assert_eq!(there.split_whitespace().collect::<Vec<_>>().join(" "), cell.text);
        }
        lines.iter().map(|line| line.cells.iter().map(|cell| cell.text.clone()).collect()).collect()
    }

    #[test]
    fn a_comma_parts_cells_only_where_nothing_else_does() {
        assert_eq!(read("t;R\r\n0;6,42\r\n10;4,15\r\n")[1], ["0", "6,42"]);
        assert_eq!(read("t,R\n0,6.42\n"), [["t", "R"], ["0", "6.42"]]);
        assert_eq!(read("t\tR\n0\t6,42\n")[1], ["0", "6,42"]);
    }

    #[test]
    fn quotes_hold_separators_and_line_ends() {
        assert_eq!(read("\"Temp\n(°F)\",R\n32,\"6,420\"\n"), [["Temp (°F)", "R"], ["32", "6,420"]]);
    }
}
