//! Printed sheets: cards side by side with marks to cut them by, fronts and backs matched.
//!
//! A document is laid out once, as it is for a file of its own; its pages are then placed on
//! sheets as they are. What no one reads on a screen is left out of sheets: structure, links,
//! bookmarks. They are PDF/A-2u; a paper as large as the sheet stays a document of its own.

mod arrange;
mod bar;
mod leaf;
mod marks;
mod printed;
mod side;
mod spread;

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;
use typst::foundations::{Content, NativeElement};
use typst::introspection::{Location, Tag, TagFlags};
use typst::layout::{Frame, FrameItem, Point, Transform};
use typst::model::Document as _;
use typst::pdf::{ArtifactElem, ArtifactKind};
use typst_layout::{Page, PagedDocument};

use super::geometry::size;
use super::picture::refuse_blanks;
use super::world::World;
use super::{Complaint, Failure, Job, Piece, Printed, Typesetter, cache, ink, layout, library, pieces};
use crate::document::schema_of;
use crate::model::Lamination;
use crate::words::{Language, Message};
use arrange::{Cell, arrange};
pub use leaf::Leaf;
pub(super) use leaf::kept;
use leaf::{alike, push, untagged};
use printed::{PrintedSide, SideData, millimetres};
pub use side::Flip;
use side::Side;
pub(super) use spread::UNPRINTABLE;

/// The template of the bar alone, and of a sheet's marks.
const BAR: &str = "bar.typ";
const SHEET: &str = "sheet.typ";

/// How sheets are printed.
#[derive(Debug, Clone)]
pub struct Press {
    /// Width and height of a sheet, mm.
    pub sheet: (f64, f64),
    /// Over which edge the printer turns it.
    pub flip: Flip,
    /// What the shop does with the cards.
    pub lamination: Option<Lamination>,
    /// The language of what is written beside the cards.
    pub language: Language,
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

/// What the template of a sheet receives, in millimetres from the top left corner.
#[derive(Serialize, JsonSchema)]
struct SheetData {
    /// Width of a sheet.
    width: f64,
    /// Height of a sheet.
    height: f64,
    /// The language's code: `en` (ISO 639-1).
    language: &'static str,
    /// Its sides, one after another.
    sides: Vec<SideData>,
}

/// The schema of a sheet's data.
pub(super) fn schema() -> (&'static str, Value) {
    (SHEET, schema_of::<SheetData>(SHEET))
}

impl Typesetter {
    /// Lays one document out for sheets.
    ///
    /// # Errors
    /// As [`pdf`](Self::pdf); also where it fits no sheet.
    pub fn for_sheet(&self, job: Job<'_>, press: &Press) -> Result<Laid, Failure> {
        let bar =
            self.bar().map_err(|complaints| Failure { id: job.id.to_owned(), complaints, crowded: false })?;
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
        let named = |complaints| Failure { id: names.join(" "), complaints, crowded: false };
        let (document, without_bar) = self.sheets(leaves, press).map_err(named)?;
        let world = World::new(&self.base, SHEET, b"{}", 0);
        let pdf =
            self.exported(&world, (&names.join(" "), press.date), &document, &self.sheet_standards, false);
        let sheets = document.pages().len() / 2;
        Ok(Imposed { pdf: pdf.map_err(named)?, sheets, without_bar })
    }

    /// Where everything lies on sheets: fronts on odd pages, backs on even ones.
    ///
    /// # Errors
    /// As [`impose`](Self::impose).
    pub fn sheet_pieces(&self, leaves: Vec<Leaf>, press: &Press) -> Result<Vec<Piece>, Failure> {
        let sheets = self.sheets(leaves, press);
        let failed = |complaints| Failure { id: String::new(), complaints, crowded: false };
        sheets.map(|(document, _)| pieces::of(&document)).map_err(failed)
    }

    /// Every sheet's front and back, and on how many there is no bar.
    pub(super) fn sheets(
        &self,
        leaves: Vec<Leaf>,
        press: &Press,
    ) -> Result<(PagedDocument, usize), Vec<Complaint>> {
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
        let data = SheetData { width, height, language: press.language.code(), sides };
        let data = serde_json::to_vec(&data).expect("numbers and texts are JSON");
        let laid = layout(&World::new(&self.base, SHEET, &data, 0));
        cache::done();
        let marks = laid?;
        let page = |(mut frame, marked): (Frame, &Page)| {
            push(&mut frame, &untagged(&marked.frame), Transform::identity());
            Page { frame, ..marked.clone() }
        };
        let pages: Vec<Page> = frames.into_iter().zip(marks.pages()).map(page).collect();
        Ok((PagedDocument::new(pages.into_iter().collect(), marks.info().clone()), without_bar))
    }

    /// The bar, laid out once.
    fn bar(&self) -> Result<&Bar, Vec<Complaint>> {
        let laid = self.bar.get_or_init(|| {
            let document = layout(&World::new(&self.base, BAR, b"{}", 0))?;
            let page = document.pages().first();
            page.map(|page| Bar { frame: untagged(&page.frame) }).ok_or_else(Vec::new)
        });
        laid.as_ref().map_err(Clone::clone)
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
                let (start, end) = artifact(BARS, index);
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

/// Which artifacts of a page the bars of 100 mm are.
const BARS: u128 = 0;

/// Begin and end of what is on the paper but not of the document.
pub(super) fn artifact(kind: u128, index: usize) -> (FrameItem, FrameItem) {
    let flags = TagFlags { introspectable: false, tagged: true };
    let location = Location::new(u128::MAX - kind).variant(index);
    let element = ArtifactElem::new(Content::empty()).with_kind(ArtifactKind::Page);
    let start = Tag::Start(element.pack().located(location), flags);
    (FrameItem::Tag(start), FrameItem::Tag(Tag::End(location, 0, flags)))
}

fn does_not_fit((width, height): (f64, f64), press: &Press) -> Complaint {
    let message = Message::new("run-sheet-too-small")
        .with("width", millimetres(width))
        .with("height", millimetres(height))
        .with("across", millimetres(press.sheet.0))
        .with("along", millimetres(press.sheet.1));
    Complaint::Page(message)
}
