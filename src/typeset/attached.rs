//! Files inside a PDF: what a page was computed from, for whoever asks later.
//!
//! Put in after layout, so that no template can lose them. With them a PDF is PDF/A-3a,
//! which is PDF/A-2a that may hold files of any form (ISO 19005-3).

use typst::foundations::{Bytes, Derived, NativeElement, PathOrStr};
use typst::introspection::{Location, Tag, TagFlags};
use typst::layout::{FrameItem, Point};
use typst::model::Document as _;
use typst::pdf::{AttachElem, AttachedFileRelationship};
use typst_layout::{Page, PagedDocument};

/// A file inside a PDF.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Attachment {
    /// Its name, with a slash between folders.
    pub name: String,
    /// What it holds.
    pub bytes: Vec<u8>,
    /// Its media type, such as `application/json`.
    pub mime: &'static str,
    /// What it is, in a few words.
    pub description: String,
    /// Whether the page was made from it; else it says the same as the page.
    pub is_source: bool,
}

/// The document with files in it.
pub(super) fn enclosed(document: PagedDocument, files: &[Attachment]) -> PagedDocument {
    let Some(first) = document.pages().first().filter(|_| !files.is_empty()) else { return document };
    let mut first = first.clone();
    for (index, file) in files.iter().enumerate() {
        let (start, end) = tags(index, file);
        first.frame.push(Point::zero(), start);
        first.frame.push(Point::zero(), end);
    }
    let rest = document.pages().iter().skip(1).cloned();
    let pages: Vec<Page> = std::iter::once(first).chain(rest).collect();
    PagedDocument::new(pages.into_iter().collect(), document.info().clone())
}

/// Begin and end of an element that is nowhere on the page.
fn tags(index: usize, file: &Attachment) -> (FrameItem, FrameItem) {
    let flags = TagFlags { introspectable: true, tagged: false };
    let location = Location::new(u128::MAX - 2).variant(index);
    let path = Derived::new(PathOrStr::Str(file.name.as_str().into()), file.name.as_str().into());
    let relationship = match file.is_source {
        true => AttachedFileRelationship::Source,
        false => AttachedFileRelationship::Alternative,
    };
    let element = AttachElem::new(path, Bytes::new(file.bytes.clone()))
        .with_relationship(Some(relationship))
        .with_mime_type(Some(file.mime.into()))
        .with_description(Some(file.description.as_str().into()));
    let start = Tag::Start(element.pack().located(location), flags);
    (FrameItem::Tag(start), FrameItem::Tag(Tag::End(location, 0, flags)))
}
