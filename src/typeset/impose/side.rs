//! Which way a card lies on either side of a printed sheet.

use typst::layout::{Abs, Ratio, Transform};

use super::arrange::Cell;
use crate::typeset::geometry::{moved, spanned};

/// The edge over which the printer turns the sheet between its two sides.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Flip {
    /// Over a long edge, like a page of a book: what a printer does by itself.
    Long,
    /// Over a short edge, like a sheet of a pad.
    Short,
}

/// A side of a printed sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Side {
    /// Printed first.
    Front,
    /// Printed on the other side.
    Back(Flip),
}

/// Mirrors left and right at half this width.
fn mirrored_across(width: f64) -> Transform {
    Transform { sx: Ratio::new(-1.0), tx: Abs::mm(width), ..Transform::identity() }
}

/// Mirrors top and bottom at half this height.
fn mirrored_down(height: f64) -> Transform {
    Transform { sy: Ratio::new(-1.0), ty: Abs::mm(height), ..Transform::identity() }
}

impl Side {
    /// Where a point of the front lies on the page of this side, seen through the paper.
    pub(super) fn through(self, (width, height): (f64, f64)) -> Transform {
        match self {
            Self::Front => Transform::identity(),
            Self::Back(Flip::Long) => mirrored_across(width),
            Self::Back(Flip::Short) => mirrored_down(height),
        }
    }

    /// How a page of a card comes to lie on this side. Both pages of a card have
    /// their tops at the same edge: it is turned like a page of a book.
    pub(super) fn placed(self, sheet: (f64, f64), cell: &Cell, page: (f64, f64)) -> Transform {
        let [x, y, ..] = cell.area;
        let (width, height) = page;
        // A page that is wider than high lies upright in the place of a turned card.
        let turned = cell.turned != (width > height);
        let at = Transform::translate(Abs::mm(x), Abs::mm(y));
        let on_front = if turned {
            let quarter = Transform {
                sx: Ratio::zero(),
                ky: Ratio::one(),
                kx: -Ratio::one(),
                sy: Ratio::zero(),
                tx: Abs::mm(height),
                ty: Abs::zero(),
            };
            at.pre_concat(quarter)
        } else {
            at
        };
        match self {
            Self::Front => on_front,
            Self::Back(_) => self.through(sheet).pre_concat(on_front).pre_concat(mirrored_across(width)),
        }
    }

    /// The place of a card on this side: left, top, right and bottom.
    pub(super) fn edges(self, sheet: (f64, f64), cell: &Cell) -> [f64; 4] {
        let [left, top, right, bottom] = cell.edges();
        let through = self.through(sheet);
        spanned(moved(through, (left, top)), moved(through, (right, bottom)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Turns a printed sheet over in the hand: where a point of its back is seen from the front.
    fn seen_from_the_front((x, y): (f64, f64), (width, height): (f64, f64), flip: Flip) -> (f64, f64) {
        match flip {
            Flip::Long => (width - x, y),
            Flip::Short => (x, height - y),
        }
    }

    #[test]
    fn a_point_of_a_back_lies_behind_the_same_point_of_its_front() {
        let sheet = (210.0, 297.0);
        for flip in [Flip::Long, Flip::Short] {
            for (turned, page) in [(false, (100.0, 150.0)), (true, (100.0, 150.0)), (false, (150.0, 100.0))] {
                let lies = turned != (page.0 > page.1);
                let (wide, high) = if lies { (page.1, page.0) } else { page };
                let cell = Cell { area: [7.0, 11.0, wide, high], turned };
                let front = Side::Front.placed(sheet, &cell, page);
                let back = Side::Back(flip).placed(sheet, &cell, page);
                // A hole at (8, 9) from the left of the front is at 8 from the right of the back.
                let of_front = moved(front, (8.0, 9.0));
                let of_back = seen_from_the_front(moved(back, (page.0 - 8.0, 9.0)), sheet, flip);
                assert!((of_front.0 - of_back.0).abs() < 1e-9 && (of_front.1 - of_back.1).abs() < 1e-9);
                // Nothing is printed mirrored.
                let upright = back.sx.get() * back.sy.get() - back.kx.get() * back.ky.get();
                assert!((upright - 1.0).abs() < 1e-12, "{back:?}");
            }
        }
    }
}
