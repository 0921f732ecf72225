//! Bar and symbol in the margin beside each text that changed since the revision before.
//!
//! Templates leave an empty place at either end of such a text
//! (`templates/parts/changes.typ`). Drawn here rather than there, because a place in the
//! margin is known only once the page is laid out: a template would have to lay it out
//! twice. They are artifacts: what they say stands in words under the title band.

use typst::introspection::Tag;
use typst::layout::{Abs, Frame, FrameItem, Point, Size, Transform};
use typst::model::Document as _;
use typst::syntax::Span;
use typst::visualize::{Color, Curve, Geometry};
use typst_layout::{Page, PagedDocument};

use super::geometry::{moved, size};
use super::impose::{UNPRINTABLE, artifact, kept};
use super::ink;
use crate::model::Lamination;

const FROM: &str = "changed-from";
const TO: &str = "changed-to";

/// Which artifacts of a page these are.
const KIND: u128 = 1;

/// From what is printed to the bar, the bar, from the bar to its symbol, the symbol, mm.
const WIDTHS: [f64; 4] = [0.5, 0.8, 0.25, 1.25];

/// How much larger they are where the margin is wide, at most; and how small they may be
/// where it is narrow.
const SCALES: [f64; 2] = [0.35, 1.4];

/// Where print reaches up to the quiet border, marks stand in it: to about what a printer cannot
/// reach, mm, and so much larger than the smallest, at most.
const EDGE: f64 = 4.0;
const NARROW: f64 = 0.5;

/// Bars that are nearer to each other than this become one, mm.
const APART: f64 = 1.2;

/// The least length of a bar, mm: the height of its symbol.
const SHORTEST: f64 = 1.8;

/// A changed text on its page: its middle, top and bottom, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Spot {
    x: f64,
    top: f64,
    bottom: f64,
}

/// The document with bars and symbols, as it is where nothing changed.
pub(super) fn drawn(document: PagedDocument, lamination: Option<&Lamination>) -> PagedDocument {
    let spots: Vec<Vec<Spot>> = document.pages().iter().map(|page| spots(&page.frame)).collect();
    if spots.iter().all(Vec::is_empty) {
        return document;
    }
    let page = |(index, (page, spots)): (usize, (&Page, Vec<Spot>))| {
        let mut page = page.clone();
        // Leaves have two sides: every other page is a back.
        mark(&mut page.frame, &spots, lamination, index);
        page
    };
    let pages: Vec<Page> = document.pages().iter().zip(spots).enumerate().map(page).collect();
    PagedDocument::new(pages.into_iter().collect(), document.info().clone())
}

/// Every changed text of a page.
fn spots(frame: &Frame) -> Vec<Spot> {
    let mut search = Search::default();
    search.walk(frame, Transform::identity());
    // The end of a text that goes on overleaf.
    search.done.extend(search.open);
    search.done
}

#[derive(Default)]
struct Search {
    /// Height of the capitals of the text before, mm.
    capital: f64,
    open: Vec<Spot>,
    done: Vec<Spot>,
}

impl Search {
    fn walk(&mut self, frame: &Frame, outer: Transform) {
        for (at, item) in frame.items() {
            let here = outer.pre_concat(Transform::translate(at.x, at.y));
            match item {
                FrameItem::Group(group) => self.walk(&group.frame, here.pre_concat(group.transform)),
                FrameItem::Text(text) => {
                    let stretched = libm::hypot(here.kx.get(), here.sy.get());
                    self.capital = text.font.metrics().cap_height.at(text.size).to_mm() * stretched;
                }
                FrameItem::Tag(Tag::Start(content, _)) => {
                    let label = content.label().map(|label| label.resolve());
                    match label.as_ref().map(|label| label.as_str()) {
                        Some(FROM) => self.open.push(self.spot(here)),
                        Some(TO) => self.close(here),
                        _ => {}
                    }
                }
                _ => {}
            }
        }
    }

    /// Around the text before a place: from above its capitals to below its line.
    fn spot(&self, here: Transform) -> Spot {
        let (x, y) = moved(here, (0.0, 0.0));
        Spot { x, top: y - 1.2 * self.capital, bottom: y + 0.3 * self.capital }
    }

    fn close(&mut self, here: Transform) {
        let end = self.spot(here);
        let begun = self.open.pop().unwrap_or(end);
        // A text that reads upwards ends above its beginning.
        let (top, bottom) = (begun.top.min(end.top), begun.bottom.max(end.bottom));
        self.done.push(Spot { x: begun.x.midpoint(end.x), top, bottom });
    }
}

/// A bar, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Bar {
    on_left: bool,
    top: f64,
    bottom: f64,
}

fn mark(frame: &mut Frame, spots: &[Spot], lamination: Option<&Lamination>, index: usize) {
    if spots.is_empty() {
        return;
    }
    let (width, height) = size(frame);
    let quiet = lamination.map_or(UNPRINTABLE, |lamination| lamination.quiet.millimetres());
    let printed = ink::of(frame);
    let edges = printed.iter().filter(|ink| !ink.ground).map(|ink| ink.area);
    let (left, right) = edges.fold((width, 0.0_f64), |(l, r), area| (l.min(area[0]), r.max(area[2])));
    let mut holes = kept((width, height), lamination, index % 2 == 1);
    // A code needs its white border as much.
    holes.extend(printed.iter().filter(|ink| ink.ground).map(|ink| ink.area));
    let margins = Margins { left, right, width, quiet, holes };
    let bars = margins.bars(spots);
    let (start, end) = artifact(KIND, index);
    frame.push(Point::zero(), start);
    for bar in bars {
        margins.draw(frame, bar);
    }
    frame.push(Point::zero(), end);
}

/// What is free beside a page's print.
struct Margins {
    left: f64,
    right: f64,
    width: f64,
    quiet: f64,
    /// What is kept clear: holes, white grounds.
    holes: Vec<[f64; 4]>,
}

impl Margins {
    /// From the top, at the side that is nearest; neighbours joined.
    fn bars(&self, spots: &[Spot]) -> Vec<Bar> {
        let mut bars: Vec<Bar> = spots.iter().map(|spot| self.bar(*spot)).collect();
        bars.sort_by(|a, b| b.on_left.cmp(&a.on_left).then(a.top.total_cmp(&b.top)));
        let mut joined: Vec<Bar> = Vec::new();
        for bar in bars {
            match joined.last_mut() {
                Some(last) if last.on_left == bar.on_left && bar.top < last.bottom + APART => {
                    last.bottom = last.bottom.max(bar.bottom);
                }
                _ => joined.push(bar),
            }
        }
        joined.into_iter().flat_map(|bar| self.without_holes(bar)).collect()
    }

    fn bar(&self, spot: Spot) -> Bar {
        let short = (SHORTEST - (spot.bottom - spot.top)).max(0.0) / 2.0;
        let (top, bottom) = (spot.top - short, spot.bottom + short);
        let near = Bar { on_left: spot.x < self.width / 2.0, top, bottom };
        let far = Bar { on_left: !near.on_left, ..near };
        if self.is_punched(near) && !self.is_punched(far) { far } else { near }
    }

    /// Left and right of bar and symbol together.
    fn across(&self, on_left: bool) -> [f64; 2] {
        let reach = self.scale(on_left) * WIDTHS.iter().sum::<f64>();
        if on_left { [self.left - reach, self.left] } else { [self.right, self.right + reach] }
    }

    fn scale(&self, on_left: bool) -> f64 {
        let margin = if on_left { self.left } else { self.width - self.right };
        let whole = WIDTHS.iter().sum::<f64>();
        let scale = (margin - self.quiet) / whole;
        if scale < SCALES[0] {
            return ((margin - EDGE) / whole).clamp(SCALES[0], NARROW);
        }
        scale.min(SCALES[1])
    }

    fn holes_beside(&self, on_left: bool) -> impl Iterator<Item = [f64; 2]> {
        let [from, to] = self.across(on_left);
        let beside = self.holes.iter().filter(move |hole| hole[0] < to && hole[2] > from);
        beside.map(|hole| [hole[1], hole[3]])
    }

    fn is_punched(&self, bar: Bar) -> bool {
        self.holes_beside(bar.on_left).any(|[top, bottom]| top < bar.bottom && bottom > bar.top)
    }

    /// A bar above and below a hole that it would run into.
    fn without_holes(&self, bar: Bar) -> Vec<Bar> {
        let mut pieces = vec![bar];
        for [top, bottom] in self.holes_beside(bar.on_left) {
            let cut = |bar: &Bar| {
                if top >= bar.bottom || bottom <= bar.top {
                    return vec![*bar];
                }
                let above = Bar { bottom: top, ..*bar };
                let below = Bar { top: bottom, ..*bar };
                // One that lies all within the hole's height stands above it.
                let shifted = Bar { top: top - SHORTEST, ..above };
                let mut left: Vec<Bar> =
                    [above, below].into_iter().filter(|piece| piece.bottom - piece.top >= SHORTEST).collect();
                if left.is_empty() {
                    left.push(shifted);
                }
                left
            };
            pieces = pieces.iter().flat_map(cut).collect();
        }
        pieces
    }

    /// A bar, and a triangle that points from it away to the paper's edge.
    fn draw(&self, frame: &mut Frame, bar: Bar) {
        let scale = self.scale(bar.on_left);
        let [clear, thick, space, symbol] = WIDTHS.map(|width| width * scale);
        // Outwards from the print.
        let out = |by: f64| if bar.on_left { self.left - by } else { self.right + by };
        let rectangle = Size::new(Abs::mm(thick), Abs::mm(bar.bottom - bar.top));
        let x = out(clear).min(out(clear + thick));
        let shape = Geometry::Rect(rectangle).filled(Color::BLACK);
        frame.push(Point::new(Abs::mm(x), Abs::mm(bar.top)), FrameItem::Shape(shape, Span::detached()));
        let (near, far) = (clear + thick + space, clear + thick + space + symbol);
        let middle = bar.top + (SHORTEST / 2.0).max((bar.bottom - bar.top).min(2.0 * SHORTEST) / 2.0);
        let half = SHORTEST / 2.0;
        let point = |x: f64, y: f64| Point::new(Abs::mm(x), Abs::mm(y));
        let mut triangle = Curve::new();
        triangle.move_(point(out(far), middle - half));
        triangle.line(point(out(near), middle));
        triangle.line(point(out(far), middle + half));
        triangle.close();
        let shape = Geometry::Curve(triangle).filled(Color::BLACK);
        frame.push(Point::zero(), FrameItem::Shape(shape, Span::detached()));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn margins(holes: &[[f64; 4]]) -> Margins {
        Margins { left: 8.0, right: 140.0, width: 148.0, quiet: 5.0, holes: holes.to_vec() }
    }

    const SPOT: Spot = Spot { x: 30.0, top: 100.0, bottom: 103.0 };

    #[test]
    fn neighbours_become_one_bar_and_each_side_has_its_own() {
        let below = Spot { top: 103.4, bottom: 106.4, ..SPOT };
        let right = Spot { x: 120.0, ..SPOT };
        let far = Spot { top: 150.0, bottom: 153.0, ..SPOT };
        let bars = margins(&[]).bars(&[far, right, SPOT, below]);
        let left = |top, bottom| Bar { on_left: true, top, bottom };
        let right = Bar { on_left: false, top: 100.0, bottom: 103.0 };
        assert_eq!(bars, [left(100.0, 106.4), left(150.0, 153.0), right]);
    }

    #[test]
    fn a_bar_dodges_a_hole() {
        let hole = [2.0, 98.0, 10.0, 106.0];
        assert!(!margins(&[hole]).bars(&[SPOT])[0].on_left);
        let both = [hole, [138.0, 98.0, 146.0, 106.0]];
        for bar in margins(&both).bars(&[SPOT]) {
            assert!(bar.bottom <= 98.0 || bar.top >= 106.0, "{bar:?}");
        }
    }

    #[test]
    fn bar_and_symbol_keep_out_of_the_quiet_border_of_a_card() {
        let [outer, inner] = margins(&[]).across(true);
        assert!(outer >= 5.0 && inner <= 8.0, "{outer} to {inner}");
    }
}
