//! Printed sheets: cards side by side with marks to cut them by, fronts and backs matched.
//!
//! A document is laid out once, as it is for a file of its own; its pages are then placed on
//! sheets as they are. What no one reads on a screen is left out of sheets: structure, links,
//! bookmarks. They are PDF/A-2u; a paper as large as the sheet stays a document of its own.

mod arrange;
mod bar;
mod leaf;
mod marks;
mod side;
mod spread;

use chrono::NaiveDate;
use serde::Serialize;
use typst::foundations::{Content, NativeElement};
use typst::introspection::{Location, Tag, TagFlags};
use typst::layout::{Frame, FrameItem, Point, Transform};
use typst::model::Document as _;
use typst::pdf::{ArtifactElem, ArtifactKind};
use typst_layout::{Page, PagedDocument};

use super::picture::refuse_blanks;
use super::world::World;
use super::{Failure, Job, KEPT, Piece, Printed, Typesetter, ink, layout, library, pieces};
use crate::model::Lamination;
use crate::words::Message;
use arrange::{Cell, arrange};
pub use leaf::Leaf;
use leaf::{alike, push, size, untagged};
use marks::Guides;
pub use side::Flip;
use side::{Side, moved};
use spread::UNPRINTABLE;

/// The template of the bar alone, and of a sheet's marks.
const BAR: &str = "bar.typ";
const SHEET: &str = "sheet.typ";

/// From a card to what is written beside its marks, mm.
const BESIDE_MARKS: f64 = 5.5;

/// How sheets are printed.
#[derive(Debug, Clone)]
pub struct Press {
    /// Width and height of a sheet, mm.
    pub sheet: (f64, f64),
    /// Over which edge the printer turns it.
    pub flip: Flip,
    /// What the shop does with the cards.
    pub lamination: Option<Lamination>,
    /// The language of what is written beside the cards, such as `en`.
    pub language: String,
    /// The date of issue.
    pub date: NaiveDate,
}

/// A document laid out for sheets.
#[derive(Debug, Clone)]
pub enum Laid {
    /// As large as the sheet: a file of its own. With the pages on which there is no room
    /// for the bar.
    Whole(Printed, Vec<usize>),
    /// Smaller: leaves for sheets. With the number of its pages.
    Leaves(Vec<Leaf>, usize),
}

/// Printed sheets.
#[derive(Debug, Clone)]
pub struct Imposed {
    /// The PDF file, whole.
    pub pdf: Vec<u8>,
    /// How many sheets it has, of two sides each.
    pub sheets: usize,
    /// Sides on which there is no room for the bar.
    pub without_bar: usize,
}

/// The bar of 100 mm.
#[derive(Debug, Clone)]
pub(super) struct Bar {
    frame: Frame,
}

impl Bar {
    fn size(&self) -> (f64, f64) {
        size(&self.frame)
    }
}

/// Leaves that lie on sheets in the same way.
struct Group {
    leaves: Vec<Leaf>,
    cells: Vec<Cell>,
}

/// What the template of a sheet receives.
#[derive(Serialize)]
struct SheetData {
    width: f64,
    height: f64,
    language: String,
    sides: Vec<SideData>,
}

#[derive(Serialize)]
struct SideData {
    guides: Guides,
    /// Where the bar stands, where no card has it: x, y, and whether it reads upwards.
    bar: Option<(f64, f64, bool)>,
    note: Option<Note>,
}

/// What is written beside the cards.
#[derive(Clone, Serialize)]
struct Note {
    x: f64,
    y: f64,
    upright: bool,
    number: usize,
    of: usize,
    front: bool,
    cut: [String; 2],
    /// Inside of the smallest pouch that seals the card.
    pouch: Option<[String; 2]>,
}

impl Typesetter {
    /// Lays one document out for sheets.
    ///
    /// # Errors
    /// As [`pdf`](Self::pdf); also where it fits no sheet.
    pub fn for_sheet(&self, job: Job<'_>, press: &Press) -> Result<Laid, Failure> {
        let bar = self.bar().map_err(|messages| Failure { id: job.id.to_owned(), messages })?;
        let (laid, _) = self.made(job, |world, document| {
            let (wide, high) = press.sheet;
            let whole = |frame: &Frame| {
                let (width, height) = size(frame);
                alike((width, height), (wide, high)) || alike((width, height), (high, wide))
            };
            if document.pages().iter().any(|page| whole(&page.frame)) {
                if let Some(page) = document.pages().iter().find(|page| !whole(&page.frame)) {
                    return Err(vec![does_not_fit(size(&page.frame), press)]);
                }
                let (document, missing) = with_bars(document, bar);
                let pdf = self.export(world, job, &document)?;
                return Ok(Laid::Whole(Printed { pdf, pages: document.pages().len() }, missing));
            }
            refuse_blanks(document).map_err(library)?;
            let leaves = leaf::of(job.id, document, bar, job.lamination);
            for leaf in &leaves {
                if arrange(press.sheet, leaf.sides(), leaf.white).is_none() {
                    return Err(vec![does_not_fit(leaf.size, press)]);
                }
            }
            Ok(Laid::Leaves(leaves, document.pages().len()))
        })?;
        Ok(laid)
    }

    /// Parts leaves into those that fill whole sheets and those that are left over.
    #[must_use]
    pub fn full_sheets(leaves: Vec<Leaf>, press: &Press) -> (Vec<Leaf>, Vec<Leaf>) {
        let (mut full, mut rest) = (Vec::new(), Vec::new());
        for Group { mut leaves, cells } in grouped(leaves, press) {
            let last = leaves.split_off(leaves.len() / cells.len() * cells.len());
            full.extend(leaves);
            rest.extend(last);
        }
        (full, rest)
    }

    /// Places leaves on sheets, those of one size together.
    ///
    /// # Errors
    /// When the library reports an error or a warning.
    pub fn impose(&self, leaves: Vec<Leaf>, press: &Press) -> Result<Imposed, Failure> {
        let names: Vec<String> =
            leaves.iter().map(|leaf| format!("{}/{}", leaf.id, leaf.number + 1)).collect();
        let named = |messages| Failure { id: names.join(" "), messages };
        let (document, without_bar) = self.sheets(leaves, press).map_err(named)?;
        let world = World::new(&self.base, SHEET, b"{}", 0);
        let pdf = self.exported(&world, &names.join(" "), press.date, &document, false);
        let sheets = document.pages().len() / 2;
        Ok(Imposed { pdf: pdf.map_err(named)?, sheets, without_bar })
    }

    /// Where everything lies on sheets: fronts on odd pages, backs on even ones.
    ///
    /// # Errors
    /// As [`impose`](Self::impose).
    pub fn sheet_pieces(&self, leaves: Vec<Leaf>, press: &Press) -> Result<Vec<Piece>, Failure> {
        let sheets = self.sheets(leaves, press);
        let failed = |messages| Failure { id: String::new(), messages };
        sheets.map(|(document, _)| pieces::of(&document)).map_err(failed)
    }

    /// Every sheet's front and back, and on how many there is no bar.
    pub(super) fn sheets(
        &self,
        leaves: Vec<Leaf>,
        press: &Press,
    ) -> Result<(PagedDocument, usize), Vec<Message>> {
        let groups = grouped(leaves, press);
        let of = groups.iter().map(|group| group.leaves.len().div_ceil(group.cells.len())).sum();
        let (mut sides, mut frames, mut without_bar) = (Vec::new(), Vec::new(), 0);
        let mut number = 0;
        for group in &groups {
            for leaves in group.leaves.chunks(group.cells.len()) {
                number += 1;
                for side in [Side::Front, Side::Back(press.flip)] {
                    let printed = PrintedSide { press, side, cells: &group.cells, leaves };
                    frames.push(printed.cards());
                    let data = printed.data(self.bar()?.size(), (number, of));
                    without_bar += usize::from(
                        printed.pages().next().is_some() && !printed.has_bar() && data.bar.is_none(),
                    );
                    sides.push(data);
                }
            }
        }
        let (width, height) = press.sheet;
        let data = SheetData { width, height, language: press.language.clone(), sides };
        let data = serde_json::to_vec(&data).expect("numbers and texts are JSON");
        let laid = layout(&World::new(&self.base, SHEET, &data, 0));
        comemo::evict(KEPT);
        let marks = laid?;
        let page = |(mut frame, marked): (Frame, &Page)| {
            push(&mut frame, &untagged(&marked.frame), Transform::identity());
            Page { frame, ..marked.clone() }
        };
        let pages: Vec<Page> = frames.into_iter().zip(marks.pages()).map(page).collect();
        Ok((PagedDocument::new(pages.into_iter().collect(), marks.info().clone()), without_bar))
    }

    /// The bar, laid out once.
    fn bar(&self) -> Result<&Bar, Vec<Message>> {
        let laid = self.bar.get_or_init(|| {
            let document = layout(&World::new(&self.base, BAR, b"{}", 0))?;
            let page = document.pages().first();
            page.map(|page| Bar { frame: untagged(&page.frame) }).ok_or_else(Vec::new)
        });
        laid.as_ref().map_err(Clone::clone)
    }
}

/// One side of a sheet with its cards.
struct PrintedSide<'a> {
    press: &'a Press,
    side: Side,
    cells: &'a [Cell],
    leaves: &'a [Leaf],
}

impl PrintedSide<'_> {
    /// The pages on this side, each with its place; a leaf without a back has none there.
    fn pages(&self) -> impl Iterator<Item = (&leaf::Page, &Leaf, &Cell)> {
        let face = usize::from(self.side != Side::Front);
        let placed = self.leaves.iter().zip(self.cells);
        placed.filter_map(move |(leaf, cell)| Some((leaf.pages[face].as_ref()?, leaf, cell)))
    }

    fn has_bar(&self) -> bool {
        self.pages().any(|(page, ..)| page.has_bar)
    }

    /// The cards alone.
    fn cards(&self) -> Frame {
        let (width, height) = self.press.sheet;
        let mut frame = Frame::hard(typst::layout::Size::new(
            typst::layout::Abs::mm(width),
            typst::layout::Abs::mm(height),
        ));
        for (page, leaf, cell) in self.pages() {
            push(&mut frame, &page.frame, self.side.placed(self.press.sheet, cell, leaf.size));
        }
        frame
    }

    /// The marks, and what is written beside the cards. A side without a page is left blank.
    fn data(&self, bar: (f64, f64), (number, of): (usize, usize)) -> SideData {
        if self.pages().next().is_none() {
            return SideData { guides: Guides::default(), bar: None, note: None };
        }
        let sheet = self.press.sheet;
        let lamination = self.press.lamination.as_ref();
        let cells = &self.cells[..self.leaves.len().min(self.cells.len())];
        let corner = lamination.and_then(|lamination| lamination.corner).map(|corner| corner.metres() * 1e3);
        let mut guides = Guides::of(sheet, cells, corner, self.side);
        for punch in lamination.map_or(&[][..], |lamination| &lamination.punches) {
            let holes = self.leaves.iter().zip(cells).map(|(leaf, cell)| {
                let on_front =
                    moved(Side::Front.placed(sheet, cell, leaf.size), punch.centre(leaf.size, false));
                let (x, y) = moved(self.side.through(sheet), on_front);
                [x, y, punch.diameter.metres() * 1e3]
            });
            guides.holes.extend(holes);
        }
        let mut strips = self.strips(cells, bar.1).into_iter();
        let bar = if self.has_bar() { None } else { strips.next() };
        let size = self.leaves.first().map_or((0.0, 0.0), |leaf| leaf.size);
        let note = strips.next().map(|(x, y, upright)| {
            let pouch = lamination.map(|lamination| {
                let seal = 2.0 * lamination.seal.metres() * 1e3;
                [size.0 + seal, size.1 + seal].map(millimetres)
            });
            let cut = [size.0, size.1].map(millimetres);
            Note { x, y, upright, number, of, front: self.side == Side::Front, cut, pouch }
        });
        SideData { guides, bar, note }
    }

    /// Where a line of this height can stand clear of cards and marks, as far out as is
    /// printed: its middle, and whether it reads upwards. At the foot, the head, the sides.
    fn strips(&self, cells: &[Cell], high: f64) -> Vec<(f64, f64, bool)> {
        let (width, height) = self.press.sheet;
        let mut around = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
        for cell in cells {
            let [left, top, right, bottom] = self.side.edges(self.press.sheet, cell);
            around = [around[0].min(left), around[1].min(top), around[2].max(right), around[3].max(bottom)];
        }
        let [left, top, right, bottom] = around;
        let (out, room) = (UNPRINTABLE + high / 2.0, UNPRINTABLE + high + BESIDE_MARKS);
        let strips = [
            (height - bottom, (width / 2.0, height - out, false)),
            (top, (width / 2.0, out, false)),
            (left, (out, height / 2.0, true)),
            (width - right, (width - out, height / 2.0, true)),
        ];
        strips.into_iter().filter(|(free, _)| *free >= room).map(|(_, place)| place).collect()
    }
}

/// Leaves of one size together, in the order in which the sizes are met.
fn grouped(leaves: Vec<Leaf>, press: &Press) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    for leaf in leaves {
        let same = |group: &&mut Group| {
            let first = &group.leaves[0];
            alike(first.sides(), leaf.sides()) && first.white == leaf.white
        };
        match groups.iter_mut().find(same) {
            Some(group) => group.leaves.push(leaf),
            None => {
                let cells = arrange(press.sheet, leaf.sides(), leaf.white);
                let cells = cells.expect("a leaf that fits no sheet is refused where it is laid out");
                groups.push(Group { leaves: vec![leaf], cells });
            }
        }
    }
    groups
}

/// The document with the bar on each page that has room for it, and the pages without.
fn with_bars(document: &PagedDocument, bar: &Bar) -> (PagedDocument, Vec<usize>) {
    let mut missing = Vec::new();
    let page = |(index, page): (usize, &Page)| {
        let size = size(&page.frame);
        let mut page = page.clone();
        let place = bar::place(size, bar.size(), UNPRINTABLE, &ink::of(&page.frame), &[]);
        match place {
            Some(place) => {
                // No part of what the document says: an artifact of the page.
                let (start, end) = artifact(index);
                page.frame.push(Point::zero(), start);
                push(&mut page.frame, &bar.frame, place);
                page.frame.push(Point::zero(), end);
            }
            None => missing.push(index + 1),
        }
        page
    };
    let pages: Vec<Page> = document.pages().iter().enumerate().map(page).collect();
    (PagedDocument::new(pages.into_iter().collect(), document.info().clone()), missing)
}

/// Begin and end of what is on the paper but not of the document.
fn artifact(index: usize) -> (FrameItem, FrameItem) {
    let flags = TagFlags { introspectable: false, tagged: true };
    let location = Location::new(u128::MAX).variant(index);
    let element = ArtifactElem::new(Content::empty()).with_kind(ArtifactKind::Page);
    let start = Tag::Start(element.pack().located(location), flags);
    (FrameItem::Tag(start), FrameItem::Tag(Tag::End(location, 0, flags)))
}

fn does_not_fit((width, height): (f64, f64), press: &Press) -> Message {
    Message::new("run-sheet-too-small")
        .with("width", millimetres(width))
        .with("height", millimetres(height))
        .with("across", millimetres(press.sheet.0))
        .with("along", millimetres(press.sheet.1))
}

/// A length as a ruler shows it.
fn millimetres(length: f64) -> String {
    let text = format!("{length:.1}");
    text.strip_suffix(".0").map_or(text.clone(), str::to_owned)
}
