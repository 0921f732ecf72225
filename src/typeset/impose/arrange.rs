//! Where cards of one size lie on a sheet: as many as fit, turned where more fit.

use super::spread::{ONE_CUT, Spread, spread};

/// A card's place on the front of a sheet, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Cell {
    /// Left, top, width and height of what the card covers.
    pub area: [f64; 4],
    /// Whether the card's shorter side stands upright.
    pub turned: bool,
}

impl Cell {
    /// Left, top, right and bottom.
    pub(super) fn edges(&self) -> [f64; 4] {
        let [x, y, width, height] = self.area;
        [x, y, x + width, y + height]
    }
}

/// Rows of cards that all lie the same way.
#[derive(Debug, Clone, Copy)]
struct Block {
    columns: usize,
    rows: usize,
    turned: bool,
}

/// Where to lay cards with these sides on a sheet; `None` where not even one fits.
/// `white`: see [`spread`].
///
/// Cards lie in one block of rows, or in two of which the second is turned, so that straight
/// cuts part them all. More on a sheet wins, then room for gutters, then fewer blocks.
pub(super) fn arrange(
    (width, height): (f64, f64),
    (short, long): (f64, f64),
    white: bool,
) -> Option<Vec<Cell>> {
    // Beside one another is below one another on a sheet turned over its diagonal.
    let below = best((width, height), (short, long), white);
    let beside = best((height, width), (long, short), white).map(|(rank, cells)| {
        let cells = cells.into_iter().map(|cell| {
            let [x, y, width, height] = cell.area;
            Cell { area: [y, x, height, width], turned: cell.turned }
        });
        let mut cells: Vec<Cell> = cells.collect();
        let near =
            |a: f64, b: f64| if (a - b).abs() < 1e-6 { std::cmp::Ordering::Equal } else { a.total_cmp(&b) };
        cells.sort_by(|a, b| near(a.area[1], b.area[1]).then(near(a.area[0], b.area[0])));
        (rank, cells)
    });
    match (below, beside) {
        (Some(below), Some(beside)) => Some(if beside.0 > below.0 { beside.1 } else { below.1 }),
        (one, other) => one.or(other).map(|(_, cells)| cells),
    }
}

/// What speaks for a layout: how many cards, how many sides with room, how few blocks.
type Rank = (usize, i32, i32);

/// The best layout of rows below one another; `upright` are width and height of a card.
fn best(sheet: (f64, f64), upright: (f64, f64), white: bool) -> Option<(Rank, Vec<Cell>)> {
    let (wide, high) = upright;
    let most = |whole: f64, side: f64| (1..).take_while(|n| f64::from(*n) * side <= whole + 1e-6).count();
    let (upright_rows, turned_rows) = (most(sheet.1, high), most(sheet.1, wide));
    let mut best: Option<(Rank, Vec<Cell>)> = None;
    for first in 0..=upright_rows {
        for second in 0..=turned_rows {
            let columns = |side: f64| {
                let fit = |n: &usize| spread(sheet.0, &vec![side; *n], white).is_some();
                (1..=most(sheet.0, side)).rev().find(fit)
            };
            let block = |rows: usize, side: f64, turned: bool| {
                (rows > 0).then(|| Some(Block { columns: columns(side)?, rows, turned }))
            };
            let blocks = [block(first, wide, false), block(second, high, true)];
            // A block of which no row fits the width is no layout.
            let Some(blocks) = blocks.into_iter().flatten().collect::<Option<Vec<Block>>>() else { continue };
            let Some((rank, cells)) = laid(sheet, upright, &blocks, white) else { continue };
            if best.as_ref().is_none_or(|(known, _)| rank > *known) {
                best = Some((rank, cells));
            }
        }
    }
    best
}

/// Places the cards of these blocks, one block below the other.
fn laid(
    sheet: (f64, f64),
    (wide, high): (f64, f64),
    blocks: &[Block],
    white: bool,
) -> Option<(Rank, Vec<Cell>)> {
    let sides = |block: &Block| if block.turned { (high, wide) } else { (wide, high) };
    let rows: Vec<&Block> = blocks.iter().flat_map(|block| std::iter::repeat_n(block, block.rows)).collect();
    let heights: Vec<f64> = rows.iter().map(|block| sides(block).1).collect();
    let down = spread(sheet.1, &heights, white)?;
    // Two blocks have different cuts: between them there has to be room for both.
    if blocks.len() > 1 && down.gutter < ONE_CUT {
        return None;
    }
    let mut tight = usize::from(down.tight);
    let mut cells = Vec::new();
    let mut y = down.edge;
    for (block, height) in rows.iter().zip(&heights) {
        let width = sides(block).0;
        let across: Spread = spread(sheet.0, &vec![width; block.columns], white)?;
        tight += usize::from(across.tight);
        for column in 0..block.columns {
            let x = across.edge + column as f64 * (width + across.gutter);
            cells.push(Cell { area: [x, y, width, *height], turned: block.turned });
        }
        y += height + down.gutter;
    }
    let less = |count: usize| -i32::try_from(count).unwrap_or(i32::MAX);
    Some(((cells.len(), less(tight), less(blocks.len())), cells))
}

#[cfg(test)]
mod tests {
    use super::*;

    const A4: (f64, f64) = (210.0, 297.0);
    const LETTER: (f64, f64) = (215.9, 279.4);

    #[test]
    fn as_many_fit_as_a_rule_and_scissors_find() {
        // Counted by hand from the sizes of ISO 216 and from inches.
        for (sheet, card, count) in [
            (A4, (148.0, 210.0), 2),
            (LETTER, (148.0, 210.0), 1),
            (LETTER, (139.7, 215.9), 2),
            (A4, (139.7, 215.9), 1),
            (A4, (105.0, 148.0), 4),
            (LETTER, (105.0, 148.0), 3),
            (A4, (101.6, 152.4), 3),
            (LETTER, (101.6, 152.4), 3),
            (A4, (100.0, 150.0), 3),
            (LETTER, (100.0, 150.0), 3),
            (A4, (210.0, 297.0), 1),
            // Four by three, and two turned in the 57 mm that are left.
            (A4, (50.0, 80.0), 14),
        ] {
            let cells = arrange(sheet, card, true).unwrap_or_default();
            assert_eq!(cells.len(), count, "{card:?} on {sheet:?}: {cells:?}");
        }
    }

    #[test]
    fn cards_lie_on_the_sheet_and_not_on_each_other() {
        for sheet in [A4, LETTER] {
            for card in
                [(148.0, 210.0), (105.0, 148.0), (101.6, 152.4), (100.0, 150.0), (60.0, 90.0), (74.0, 105.0)]
            {
                for white in [false, true] {
                    let cells = arrange(sheet, card, white).unwrap_or_default();
                    for (index, cell) in cells.iter().enumerate() {
                        let [left, top, right, bottom] = cell.edges();
                        let least = if white { 0.0 } else { 5.0 };
                        assert!(left >= least - 1e-6 && top >= least - 1e-6, "{cell:?}");
                        assert!(
                            right <= sheet.0 - least + 1e-6 && bottom <= sheet.1 - least + 1e-6,
                            "{cell:?}"
                        );
                        for other in &cells[index + 1..] {
                            let [l, t, r, b] = other.edges();
                            let apart = right <= l + 1e-6
                                || r <= left + 1e-6
                                || bottom <= t + 1e-6
                                || b <= top + 1e-6;
                            assert!(apart, "{cell:?} {other:?}");
                        }
                    }
                }
            }
        }
    }
}
