//! Small plots of a table's curves, for a terminal: braille patterns, two dots wide and four
//! high in each character.

use crate::document::table::{Cell, Table};
use crate::words::{Message, Words};

/// How many characters a plot is wide and high; with its labels it fits 80 columns.
const WIDE: usize = 60;
const HIGH: usize = 8;

/// Dots of a character.
const DOTS_ACROSS: usize = 2;
const DOTS_DOWN: usize = 4;

/// Room for a figure to the left of a plot.
const LABEL: usize = 10;

/// The bits of a character's dots, rows from the top (Unicode, braille patterns).
const BITS: [[u32; DOTS_ACROSS]; DOTS_DOWN] = [[0x01, 0x08], [0x02, 0x10], [0x04, 0x20], [0x40, 0x80]];

/// No dot.
const EMPTY: u32 = 0x2800;

/// From this ratio of the greatest to the least the axis is logarithmic: a straight one would show
/// half of a thermistor's curve as a line along the bottom.
const LOGARITHMIC: f64 = 10.0;

/// The nominal curves of a table over its first column; none where it has no curves.
pub(super) fn plots(table: &Table, words: &Words) -> Vec<String> {
    let curves = (0..table.columns.len()).filter(|&index| {
        let key = &table.columns[index].key;
        key.contains("_nom_") && (key.ends_with("_ohm") || key.ends_with("_v"))
    });
    curves.filter_map(|index| plot(table, index, words)).flatten().collect()
}

fn plot(table: &Table, index: usize, words: &Words) -> Option<Vec<String>> {
    let number = |row: &[Cell], at: usize| match row.get(at) {
        Some(Cell::Number(number)) => Some(*number),
        _ => None,
    };
    let known: Vec<(usize, f64, f64)> = (table.rows.iter().enumerate())
        .filter_map(|(line, row)| Some((line, number(row, 0)?, number(row, index)?)))
        .collect();
    let (first, last) = (known.first()?, known.last()?);
    let least = known.iter().min_by(|a, b| a.2.total_cmp(&b.2))?;
    let most = known.iter().max_by(|a, b| a.2.total_cmp(&b.2))?;
    if first.1 >= last.1 || least.2 >= most.2 {
        return None;
    }
    let logarithmic = least.2 > 0.0 && most.2 / least.2 > LOGARITHMIC;
    let scaled = |value: f64| if logarithmic { libm::log(value) } else { value };
    let part = |value: f64, low: f64, high: f64| (value - low) / (high - low);
    let points: Vec<(f64, f64)> = (known.iter())
        .map(|(_, x, y)| (part(*x, first.1, last.1), part(scaled(*y), scaled(least.2), scaled(most.2))))
        .collect();
    let texts = table.texts();
    let text =
        |line: usize, at: usize| texts.get(line).and_then(|row| row.get(at)).cloned().unwrap_or_default();
    let head = table.columns[index].head.clone();
    let title = if logarithmic {
        words.say(&Message::new("table-plot-logarithmic").with("curve", head))
    } else {
        head
    };
    let mut lines = vec![String::new(), title];
    for (line, drawn) in canvas(&points).into_iter().enumerate() {
        let label = match line {
            0 => text(most.0, index),
            line if line + 1 == HIGH => text(least.0, index),
            _ => String::new(),
        };
        lines.push(format!("{label:>LABEL$} │{drawn}").trim_end_matches('\u{2800}').to_owned());
    }
    let unit = &table.columns[0].head;
    let (low, high) = (text(first.0, 0), format!("{} {unit}", text(last.0, 0)));
    let room = WIDE.saturating_sub(low.chars().count());
    lines.push(format!("{:>LABEL$}  {low}{high:>room$}", ""));
    Some(lines)
}

/// Points of the unit square, joined by straight lines.
fn canvas(points: &[(f64, f64)]) -> Vec<String> {
    let mut cells = vec![[EMPTY; WIDE]; HIGH];
    let mut set = |x: f64, y: f64| {
        let (across, down) = dot(x, y);
        if let Some(cell) = cells.get_mut(down / DOTS_DOWN).and_then(|row| row.get_mut(across / DOTS_ACROSS))
        {
            *cell |= BITS[down % DOTS_DOWN][across % DOTS_ACROSS];
        }
    };
    for pair in points.windows(2) {
        let [(x0, y0), (x1, y1)] = *pair else { continue };
        // More steps than dots: none is left out.
        let steps = 2 * (WIDE * DOTS_ACROSS + HIGH * DOTS_DOWN);
        for step in 0..=steps {
            let part = step as f64 / steps as f64;
            set(x0 + part * (x1 - x0), y0 + part * (y1 - y0));
        }
    }
    let drawn = |row: &[u32; WIDE]| row.iter().filter_map(|cell| char::from_u32(*cell)).collect();
    cells.iter().map(drawn).collect()
}

/// The dot of a point of the unit square, counted from the upper left.
fn dot(x: f64, y: f64) -> (usize, usize) {
    let of = |part: f64, dots: usize| (part.clamp(0.0, 1.0) * (dots - 1) as f64).round() as usize;
    (of(x, WIDE * DOTS_ACROSS), of(1.0 - y, HIGH * DOTS_DOWN))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Whether the dot of a point is set.
    fn is_set(lines: &[String], (x, y): (f64, f64)) -> bool {
        let (across, down) = dot(x, y);
        let cell = lines[down / DOTS_DOWN].chars().nth(across / DOTS_ACROSS).expect("a full line");
        u32::from(cell) & BITS[down % DOTS_DOWN][across % DOTS_ACROSS] != 0
    }

    #[test]
    fn every_point_has_its_dot_and_the_corners_are_where_they_belong() {
        let points: Vec<(f64, f64)> =
            (0..=16).map(|step| f64::from(step) / 16.0).map(|x| (x, libm::exp(-3.0 * x))).collect();
        let lines = canvas(&points);
        assert_eq!((lines.len(), lines[0].chars().count()), (HIGH, WIDE));
        assert!(points.iter().all(|point| is_set(&lines, *point)));
        // A falling curve: its first point is in the upper left, and nothing in the upper right.
        assert!(is_set(&lines, (0.0, 1.0)));
        assert!(!is_set(&lines, (1.0, 1.0)));
        // Joined: no column of dots is empty.
        let full = |across: usize| {
            (0..HIGH * DOTS_DOWN).any(|down| {
                let cell = lines[down / DOTS_DOWN].chars().nth(across / DOTS_ACROSS).expect("a full line");
                u32::from(cell) & BITS[down % DOTS_DOWN][across % DOTS_ACROSS] != 0
            })
        };
        assert!((0..WIDE * DOTS_ACROSS).all(full));
    }
}
