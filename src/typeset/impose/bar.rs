//! Where the bar of 100 mm stands: in the white border of a page.
//!
//! A printer that was told to fit pages to its paper shrinks them by some percent, and
//! nobody sees it. A ruler held to the bar does.

use typst::layout::{Abs, Ratio, Transform};

use super::spread::UNPRINTABLE;
use crate::typeset::geometry::{moved, spanned};
use crate::typeset::ink::Ink;

/// Around the bar, mm.
const CLEAR: f64 = 0.3;

/// Puts a bar of this size into the border of a page, outside of its ink and `kept`
/// clear, at least `quiet` from its edges: at the foot, else at the head, else along a side.
pub(super) fn place(
    (width, height): (f64, f64),
    (long, high): (f64, f64),
    quiet: f64,
    ink: &[Ink<'_>],
    kept: &[[f64; 4]],
) -> Option<Transform> {
    let edge = quiet.max(UNPRINTABLE);
    // Where it may begin along a side: in the middle, else at either end.
    let along = |side: f64| {
        let left = side - 2.0 * edge - long;
        let ends = [side / 2.0 - long / 2.0, edge, side - edge - long];
        ends.into_iter().filter(move |_| left >= -1e-6)
    };
    let level = |y: f64| along(width).map(move |x| Transform::translate(Abs::mm(x), Abs::mm(y)));
    // Read from below upwards.
    let upright = |x: f64| {
        along(height).map(move |y| Transform {
            sx: Ratio::zero(),
            ky: -Ratio::one(),
            kx: Ratio::one(),
            sy: Ratio::zero(),
            tx: Abs::mm(x),
            ty: Abs::mm(y + long),
        })
    };
    let foot = level(height - edge - high);
    let head = level(edge);
    let left = upright(edge);
    let right = upright(width - edge - high);
    let free = |place: &Transform| {
        let [left, top, right, bottom] = spanned(moved(*place, (0.0, 0.0)), moved(*place, (long, high)));
        let area = [left - CLEAR, top - CLEAR, right + CLEAR, bottom + CLEAR];
        let clear = |[left, top, right, bottom]: [f64; 4]| {
            left >= area[2] || right <= area[0] || top >= area[3] || bottom <= area[1]
        };
        !ink.iter().any(|ink| ink.touches(area)) && kept.iter().all(|kept| clear(*kept))
    };
    foot.chain(head).chain(left).chain(right).find(free)
}

#[cfg(test)]
mod tests {
    use super::*;

    const BAR: (f64, f64) = (100.0, 2.6);

    #[test]
    fn it_stands_at_the_foot_where_that_is_white() {
        let page = (148.0, 210.0);
        let text = Ink { area: [8.0, 8.0, 140.0, 202.0], text: None, ground: false };
        let at = place(page, BAR, 5.0, &[text], &[]).expect("8 mm are white");
        let (x, y) = moved(at, (0.0, 0.0));
        assert!((x - 24.0).abs() < 1e-9 && (y - 202.4).abs() < 1e-9, "{x} {y}");
        // A hole in the middle of the foot: to the head.
        let at = place(page, BAR, 5.0, &[text], &[[70.0, 200.0, 78.0, 208.0]]).expect("it has a head");
        assert!((moved(at, (0.0, 0.0)).1 - 5.0).abs() < 1e-9);
    }

    #[test]
    fn it_stands_along_a_side_of_a_narrow_page_or_nowhere() {
        let text = Ink { area: [8.0, 8.0, 66.0, 140.0], text: None, ground: false };
        let at = place((74.0, 148.0), BAR, 5.0, &[text], &[]).expect("its sides are long enough");
        let [(x, top), (right, bottom)] = [(100.0, 0.0), (0.0, 2.6)].map(|point| moved(at, point));
        assert!((x - 5.0).abs() < 1e-9 && (right - 7.6).abs() < 1e-9 && (bottom - top - 100.0).abs() < 1e-9);
        let full = Ink { area: [6.0, 6.0, 68.0, 142.0], text: None, ground: false };
        assert_eq!(place((74.0, 148.0), BAR, 5.0, &[full], &[]), None);
        assert_eq!(place((74.0, 105.0), BAR, 5.0, &[], &[]), None);
    }
}
