//! Where to cut: marks beside the cards, and arcs for their round corners.

use schemars::JsonSchema;
use serde::Serialize;

use super::arrange::Cell;
use super::side::Side;
use super::spread::{ONE_CUT, UNPRINTABLE};
use crate::typeset::geometry::{moved, spanned};

/// From a card to the mark of its cut, mm, and the mark's length (common practice, no source).
const CLEAR: f64 = 1.0;
const LENGTH: f64 = 4.0;
/// Where two cards are near each other, and the shortest mark that can be seen.
const NEAR: f64 = 0.5;
const SHORTEST: f64 = 1.0;

/// Guides of one side of a sheet, mm.
#[derive(Debug, Clone, Default, PartialEq, Serialize, JsonSchema)]
pub(super) struct Guides {
    /// Lines on which to cut: from x, y to x, y.
    pub cuts: Vec<[f64; 4]>,
    /// Round corners: begin, the corner, end, as x, y each.
    pub arcs: Vec<[f64; 6]>,
    /// Holes to punch: centre x, y and diameter.
    pub holes: Vec<[f64; 3]>,
}

impl Guides {
    /// Cut marks and corners of the cards that lie in these places, as seen on a side.
    pub(super) fn of(sheet: (f64, f64), cells: &[Cell], corner: Option<f64>, side: Side) -> Self {
        let through = |point: (f64, f64)| moved(side.through(sheet), point);
        let mut cuts: Vec<[f64; 4]> = Vec::new();
        for line in cell_cuts(sheet, cells) {
            let line = spanned(through((line[0], line[1])), through((line[2], line[3])));
            let same = |other: &[f64; 4]| line.iter().zip(other).all(|(a, b)| (a - b).abs() < 0.01);
            if !cuts.iter().any(same) {
                cuts.push(line);
            }
        }
        let arcs = corner.filter(|radius| *radius > 0.0).map_or_else(Vec::new, |radius| {
            let corners = cells.iter().flat_map(|cell| corners(cell.edges()));
            let arc = |((x, y), (out_x, out_y)): ((f64, f64), (f64, f64))| {
                let points = [(x - out_x * radius, y), (x, y), (x, y - out_y * radius)].map(through);
                [points[0].0, points[0].1, points[1].0, points[1].1, points[2].0, points[2].1]
            };
            corners.map(arc).collect()
        });
        Self { cuts, arcs, holes: Vec::new() }
    }
}

/// The corners of a rectangle, and which way is out of it there.
fn corners([left, top, right, bottom]: [f64; 4]) -> [((f64, f64), (f64, f64)); 4] {
    [
        ((left, top), (-1.0, -1.0)),
        ((right, top), (1.0, -1.0)),
        ((left, bottom), (-1.0, 1.0)),
        ((right, bottom), (1.0, 1.0)),
    ]
}

/// Every mark on the front; some of them more than once.
fn cell_cuts(sheet: (f64, f64), cells: &[Cell]) -> Vec<[f64; 4]> {
    let mut marks = Vec::new();
    for (index, cell) in cells.iter().enumerate() {
        let rest: Vec<[f64; 4]> = cells
            .iter()
            .enumerate()
            .filter(|(other, _)| *other != index)
            .map(|(_, cell)| cell.edges())
            .collect();
        let [left, top, right, bottom] = cell.edges();
        for ((x, y), (out_x, out_y)) in corners(cell.edges()) {
            // The upright cut through this corner, outwards of it; then the level one, with
            // x and y changed over.
            let upright = mark((x, out_x), (y, out_y), bottom - top, sheet, &rest);
            marks.extend(upright.map(|[x, from, to]| [x, from, x, to]));
            let over: Vec<[f64; 4]> = rest.iter().map(|[l, t, r, b]| [*t, *l, *b, *r]).collect();
            let level = mark((y, out_y), (x, out_x), right - left, (sheet.1, sheet.0), &over);
            marks.extend(level.map(|[y, from, to]| [from, y, to, y]));
        }
    }
    marks
}

/// The mark of the cut at `across`, at the end of a card's edge that lies at `end`:
/// where the cut is, from where and to where along it. `length` is that of the edge.
fn mark(
    (across, out): (f64, f64),
    (end, away): (f64, f64),
    length: f64,
    (wide, high): (f64, f64),
    rest: &[[f64; 4]],
) -> Option<[f64; 3]> {
    // An edge of the sheet needs no cut.
    if across < ONE_CUT / 2.0 || across > wide - ONE_CUT / 2.0 {
        return None;
    }
    // A card right beside this one is parted from it by one cut between both.
    let beside = rest.iter().find_map(|[left, top, right, bottom]| {
        let level = *top < end.max(end - away * length) && *bottom > end.min(end - away * length);
        let gap = if out > 0.0 { left - across } else { across - right };
        (level && (-0.01..ONE_CUT).contains(&gap)).then_some(gap)
    });
    let cut = across + out * beside.unwrap_or(0.0) / 2.0;
    // How far it is to the next card, or to where nothing is printed.
    let paper = if away > 0.0 { high - UNPRINTABLE - end } else { end - UNPRINTABLE };
    let card = rest.iter().filter(|[left, _, right, _]| *left - 0.01 <= cut && cut <= *right + 0.01);
    let gap = card.map(|[_, top, _, bottom]| if away > 0.0 { top - end } else { end - bottom });
    let gap = gap.filter(|gap| *gap >= -0.01).fold(f64::MAX, f64::min);
    let clear = if gap < 2.0 * CLEAR + LENGTH / 2.0 { NEAR } else { CLEAR };
    let to = (clear + LENGTH).min(paper).min(gap - clear);
    if to - clear >= SHORTEST {
        return Some([cut, end + away * clear, end + away * to]);
    }
    // No room outside: on the line of the cut itself, as far out as is printed.
    let from = (-paper).max(0.0);
    (from + LENGTH <= length / 2.0).then_some([cut, end - away * from, end - away * (from + LENGTH)])
}

#[cfg(test)]
mod tests {
    use super::super::arrange::arrange;
    use super::super::side::Flip;
    use super::*;

    const SHEETS: [(f64, f64); 2] = [(210.0, 297.0), (215.9, 279.4)];
    const CARDS: [(f64, f64); 6] =
        [(148.0, 210.0), (139.7, 215.9), (105.0, 148.0), (101.6, 152.4), (100.0, 150.0), (60.0, 90.0)];

    /// Every layout of the cards at hand.
    fn layouts() -> impl Iterator<Item = ((f64, f64), Vec<Cell>)> {
        let all = SHEETS.into_iter().flat_map(|sheet| CARDS.map(|card| (sheet, card)));
        all.filter_map(|(sheet, card)| Some((sheet, arrange(sheet, card, true)?)))
    }

    #[test]
    fn marks_are_printable_and_enter_no_card() {
        for (sheet, cells) in layouts() {
            for side in [Side::Front, Side::Back(Flip::Long), Side::Back(Flip::Short)] {
                for [left, top, right, bottom] in Guides::of(sheet, &cells, None, side).cuts {
                    let inside =
                        left >= 4.99 && top >= 4.99 && right <= sheet.0 - 4.99 && bottom <= sheet.1 - 4.99;
                    assert!(inside, "{sheet:?} {left} {top} {right} {bottom}");
                    for cell in &cells {
                        let [l, t, r, b] = side.edges(sheet, cell);
                        let enters =
                            left < r - 0.01 && right > l + 0.01 && top < b - 0.01 && bottom > t + 0.01;
                        assert!(!enters, "{sheet:?} {cell:?}: {left} {top} {right} {bottom}");
                    }
                }
            }
        }
    }

    #[test]
    fn every_edge_that_is_cut_has_a_mark_at_both_ends() {
        for (sheet, cells) in layouts() {
            let cuts = Guides::of(sheet, &cells, None, Side::Front).cuts;
            for cell in &cells {
                let [left, top, right, bottom] = cell.edges();
                for (x, _) in
                    [(left, 0), (right, 1)].into_iter().filter(|(x, _)| *x > 1.0 && *x < sheet.0 - 1.0)
                {
                    for end in [top, bottom] {
                        let near = |cut: &&[f64; 4]| {
                            (cut[0] - x).abs() <= 0.53
                                && (cut[1] - end).abs().min((cut[3] - end).abs()) <= 10.0
                        };
                        assert!(cuts.iter().any(|cut| near(&cut)), "{sheet:?} {cell:?}: {x} at {end}");
                    }
                }
            }
        }
    }
}
