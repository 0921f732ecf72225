//! Reads back what a PDF carries inside. The file is somebody else's: nothing of it is believed.

use std::collections::{BTreeMap, HashMap};
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::{Arc, Mutex, PoisonError};

use hayro_syntax::Pdf;
use hayro_syntax::object::{Array, Dict, Object, Stream, String as Text};
use miniz_oxide::inflate::decompress_to_vec_zlib_with_limit;
use serde::Deserialize;
use serde_json::Value;

use super::{FOLDER, FORMAT, RECORD, Record, SPECS, bundle};
use crate::spec::Texts;
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
    pub specs: Arc<Texts>,
}

/// Specs that were read before, by the file that carried them as it was packed: papers of one system
/// carry the same.
#[derive(Debug, Default)]
pub struct Known(Mutex<HashMap<Vec<u8>, Arc<Texts>>>);

impl Known {
    fn of(&self, packed: &Packed) -> Option<Arc<Texts>> {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).get(&packed.bytes).map(Arc::clone)
    }

    fn keep(&self, packed: Packed, specs: &Arc<Texts>) {
        self.0.lock().unwrap_or_else(PoisonError::into_inner).insert(packed.bytes, Arc::clone(specs));
    }
}

/// Reads a PDF.
///
/// # Errors
/// Why it cannot be verified: damaged, not of this tool, a draft, of a newer form.
pub fn read(bytes: &[u8]) -> Result<Enclosed, Message> {
    read_knowing(bytes, &Known::default())
}

/// Reads one of many PDFs.
///
/// # Errors
/// As [`read`].
pub fn read_knowing(bytes: &[u8], known: &Known) -> Result<Enclosed, Message> {
    if u64::try_from(bytes.len()).unwrap_or(u64::MAX) > LARGEST {
        return Err(Message::new("enclosed-huge").with("most", LARGEST >> 20));
    }
    if !bytes.windows(5).take(1024).any(|start| start == b"%PDF-") {
        return Err(Message::new("enclosed-no-pdf"));
    }
    let damaged = || Message::new("enclosed-damaged");
    // The reader promises not to panic, whatever a file holds; a promise of others.
    let opened = catch_unwind(AssertUnwindSafe(|| opened(bytes)));
    let (mut files, creator) = opened.unwrap_or(None).ok_or_else(damaged)?;
    let Some(record) = files.remove(RECORD) else {
        let is_ours = creator.is_some_and(|creator| creator.starts_with("bayleaf "));
        return Err(Message::new(if is_ours { "enclosed-draft" } else { "enclosed-foreign" }));
    };
    let mut left = MOST;
    let record = record_of(&record.content(&mut left).ok_or_else(damaged)?)?;
    let specs = specs(files, known, &mut left).ok_or_else(damaged)?;
    Ok(Enclosed { record, specs })
}

/// The specs among the attached files.
fn specs(mut files: BTreeMap<String, Packed>, known: &Known, left: &mut usize) -> Option<Arc<Texts>> {
    if let Some(packed) = files.remove(SPECS) {
        if let Some(specs) = known.of(&packed) {
            return Some(specs);
        }
        let specs = Arc::new(bundle::parted(&packed.text(left)?)?);
        known.keep(packed, &specs);
        return Some(specs);
    }
    let each = files.iter().filter_map(|(name, packed)| Some((name.strip_prefix(FOLDER)?, packed)));
    let each = each.map(|(path, packed)| Some((path.to_owned(), packed.text(left)?)));
    each.collect::<Option<Texts>>().map(Arc::new)
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

/// An attached file.
struct Packed {
    bytes: Vec<u8>,
    is_deflated: bool,
}

impl Packed {
    /// What it holds, at most so many bytes: a small file can be made to grow without end.
    fn content(&self, left: &mut usize) -> Option<Vec<u8>> {
        let content = if self.is_deflated {
            decompress_to_vec_zlib_with_limit(&self.bytes, *left).ok()?
        } else {
            self.bytes.clone()
        };
        *left = left.checked_sub(content.len())?;
        Some(content)
    }

    fn text(&self, left: &mut usize) -> Option<String> {
        String::from_utf8(self.content(left)?).ok()
    }
}

/// The attached files of this tool by name, and which program made the PDF. Many names may stand for one
/// stream: all copies together have their limit, too.
fn opened(bytes: &[u8]) -> Option<(BTreeMap<String, Packed>, Option<String>)> {
    let pdf = Pdf::new(bytes.to_vec()).ok()?;
    let creator = pdf.metadata().creator.as_ref().map(|creator| text(creator));
    let (mut files, mut left) = (BTreeMap::new(), MOST);
    for specification in specifications(&pdf) {
        let Some(embedded) = specification.get::<Dict<'_>>("EF") else { continue };
        let name = specification.get::<Text<'_>>("UF").or_else(|| specification.get::<Text<'_>>("F"));
        let stream = embedded.get::<Stream<'_>>("F").or_else(|| embedded.get::<Stream<'_>>("UF"));
        let (Some(name), Some(stream)) = (name, stream) else { continue };
        let name = text(name.as_bytes());
        if name != RECORD && name != SPECS && !name.starts_with(FOLDER) {
            continue;
        }
        let (raw, is_deflated) = (stream.raw_data(), stream.dict().contains_key("Filter"));
        left = left.checked_sub(raw.len())?;
        files.entry(name).or_insert_with(|| Packed { bytes: raw.into_owned(), is_deflated });
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
