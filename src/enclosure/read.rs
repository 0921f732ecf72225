//! Reads back what a PDF carries inside. The file is somebody else's: nothing of it is believed.

use std::collections::BTreeMap;
use std::panic::{AssertUnwindSafe, catch_unwind};

use hayro_syntax::Pdf;
use hayro_syntax::object::{Array, Dict, Object, Stream, String as Text};
use miniz_oxide::inflate::decompress_to_vec_zlib_with_limit;
use serde::Deserialize;
use serde_json::Value;

use super::{FORMAT, RECORD, Record, SPECS};
use crate::diag::Sources;
use crate::words::Message;

/// The largest PDF that is looked into, bytes. An issued paper has a tenth of a megabyte.
pub const LARGEST: u64 = 64 << 20;

/// The most that all attached files together may hold, bytes.
const MOST: usize = 64 << 20;

/// The most files that are looked for.
const FILES: usize = 10_000;

/// What a PDF carries inside.
#[derive(Debug)]
pub struct Enclosed {
    /// What its pages say.
    pub record: Record,
    /// The specs they were made from.
    pub specs: Sources,
}

impl Enclosed {
    /// The specs by their paths below the folder of the set.
    #[must_use]
    pub fn texts(&self) -> BTreeMap<String, String> {
        let path = |file| self.specs.path(file).trim_start_matches(SPECS).to_owned();
        self.specs.texts().map(|(file, text)| (path(file), text.to_owned())).collect()
    }
}

/// Reads a PDF.
///
/// # Errors
/// Why it cannot be verified: damaged, not of this tool, a draft, of a newer form.
pub fn read(bytes: &[u8]) -> Result<Enclosed, Message> {
    if u64::try_from(bytes.len()).unwrap_or(u64::MAX) > LARGEST {
        return Err(Message::new("enclosed-huge").with("most", LARGEST >> 20));
    }
    if !bytes.windows(5).take(1024).any(|start| start == b"%PDF-") {
        return Err(Message::new("enclosed-no-pdf"));
    }
    // The reader promises not to panic, whatever a file holds; a promise of others.
    let opened = catch_unwind(AssertUnwindSafe(|| opened(bytes)));
    let (files, creator) = opened.unwrap_or(None).ok_or_else(|| Message::new("enclosed-damaged"))?;
    let record = files.iter().find(|(name, _)| name == RECORD);
    let Some((_, record)) = record else {
        let is_ours = creator.is_some_and(|creator| creator.starts_with("bayleaf "));
        return Err(Message::new(if is_ours { "enclosed-draft" } else { "enclosed-foreign" }));
    };
    let record = record.as_ref().ok_or_else(|| Message::new("enclosed-damaged"))?;
    let record = record_of(record)?;
    let mut specs = Sources::default();
    let mut texts: Vec<(String, String)> = Vec::new();
    for (name, content) in files {
        if name.starts_with(SPECS) {
            let text = content.and_then(|content| String::from_utf8(content).ok());
            texts.push((name, text.ok_or_else(|| Message::new("enclosed-damaged"))?));
        }
    }
    texts.sort();
    for (name, text) in texts {
        specs.add(name, text);
    }
    Ok(Enclosed { record, specs })
}

/// The record, where it is of a form that this tool knows.
fn record_of(bytes: &[u8]) -> Result<Record, Message> {
    /// What is looked at first: another form may have nothing else in common.
    #[derive(Deserialize)]
    struct Form {
        format: Option<Value>,
    }
    let damaged = |_| Message::new("enclosed-damaged");
    let form: Form = serde_json::from_slice(bytes).map_err(damaged)?;
    let format = form.format.as_ref().and_then(Value::as_u64);
    let format = format.ok_or_else(|| Message::new("enclosed-foreign"))?;
    if format > u64::from(FORMAT) {
        return Err(Message::new("enclosed-newer").with("format", format).with("known", FORMAT));
    }
    serde_json::from_slice(bytes).map_err(damaged)
}

/// A file's name and, where it can be read, what it holds.
type Named = (String, Option<Vec<u8>>);

/// The attached files, and which program made the PDF.
fn opened(bytes: &[u8]) -> Option<(Vec<Named>, Option<String>)> {
    let pdf = Pdf::new(bytes.to_vec()).ok()?;
    let creator = pdf.metadata().creator.as_ref().map(|creator| text(creator));
    let (mut files, mut left) = (Vec::new(), MOST);
    for specification in specifications(&pdf) {
        let Some(embedded) = specification.get::<Dict<'_>>("EF") else { continue };
        let name = specification.get::<Text<'_>>("UF").or_else(|| specification.get::<Text<'_>>("F"));
        let stream = embedded.get::<Stream<'_>>("F").or_else(|| embedded.get::<Stream<'_>>("UF"));
        let (Some(name), Some(stream)) = (name, stream) else { continue };
        let content = content(&stream, left);
        left = left.saturating_sub(content.as_ref().map_or(0, Vec::len));
        files.push((text(name.as_bytes()), content));
        if files.len() > FILES {
            return None;
        }
    }
    Some((files, creator))
}

/// What may be specifications of attached files: those that the catalogue names, as it has to in
/// PDF/A-3; where it names none, because another program saved the file again, all there is.
fn specifications(pdf: &Pdf) -> Vec<Dict<'_>> {
    let catalogue = pdf.xref().get::<Dict<'_>>(pdf.xref().root_id());
    let named = catalogue.and_then(|catalogue| catalogue.get::<Array<'_>>("AF"));
    let named: Vec<Dict<'_>> = named.iter().flat_map(Array::iter).collect();
    if !named.is_empty() {
        return named;
    }
    let all = pdf.objects().into_iter();
    all.filter_map(|object| if let Object::Dict(object) = object { Some(object) } else { None }).collect()
}

/// A stream's bytes, at most so many: a small file can be made to grow without end.
fn content(stream: &Stream<'_>, most: usize) -> Option<Vec<u8>> {
    let raw = stream.raw_data();
    if !stream.dict().contains_key("Filter") {
        return (raw.len() <= most).then(|| raw.into_owned());
    }
    decompress_to_vec_zlib_with_limit(&raw, most).ok()
}

/// A text string: UTF-16 where it begins with its mark, else ASCII.
fn text(bytes: &[u8]) -> String {
    match bytes.strip_prefix(&[0xfe, 0xff]) {
        Some(wide) => {
            let units = wide.chunks_exact(2).map(|pair| u16::from_be_bytes([pair[0], pair[1]]));
            char::decode_utf16(units).map(|c| c.unwrap_or(char::REPLACEMENT_CHARACTER)).collect()
        }
        None => String::from_utf8_lossy(bytes).into_owned(),
    }
}
