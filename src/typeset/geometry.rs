//! Sizes and places on pages, in millimetres from the top left corner.

use typst::layout::{Abs, Frame, Point, Transform};

/// Width and height of a frame.
pub(super) fn size(frame: &Frame) -> (f64, f64) {
    (frame.width().to_mm(), frame.height().to_mm())
}

/// Where a point comes to lie.
pub(super) fn moved(by: Transform, (x, y): (f64, f64)) -> (f64, f64) {
    let to = Point::new(Abs::mm(x), Abs::mm(y)).transform(by);
    (to.x.to_mm(), to.y.to_mm())
}

/// Left, top, right and bottom of the upright rectangle around a moved one.
pub(super) fn around(by: Transform, [left, top, right, bottom]: [Abs; 4]) -> [f64; 4] {
    let corners = [(left, top), (right, top), (left, bottom), (right, bottom)]
        .map(|(x, y)| Point::new(x, y).transform(by));
    let least = |of: fn(&Point) -> Abs| corners.iter().map(of).fold(Abs::inf(), Abs::min).to_mm();
    let most = |of: fn(&Point) -> Abs| corners.iter().map(of).fold(-Abs::inf(), Abs::max).to_mm();
    [least(|p| p.x), least(|p| p.y), most(|p| p.x), most(|p| p.y)]
}

/// The rectangle with these corners, which lie across from each other.
pub(super) fn spanned(one: (f64, f64), other: (f64, f64)) -> [f64; 4] {
    [one.0.min(other.0), one.1.min(other.1), one.0.max(other.0), one.1.max(other.1)]
}

/// How far a rectangle keeps from the nearest edge of a page.
pub(super) fn to_edge((width, height): (f64, f64), [left, top, right, bottom]: [f64; 4]) -> f64 {
    left.min(top).min(width - right).min(height - bottom)
}
