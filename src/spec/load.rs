//! Reads spec files from a folder, or from the demo set inside the binary.
//!
//! The only part of this room that touches the disk.

use std::fs;
use std::path::Path;

use walkdir::WalkDir;

use super::demo::DEMO;
use super::register::REGISTER_FILE;
use crate::diag::{FileId, Finding, Findings, Place, Sources, reason};
use crate::words::Message;

/// A spec larger than this is something else by mistake: a spec of a whole
/// fleet, typed by hand, stays below 100 kB.
const LARGEST: u64 = 1 << 20;

/// A folder with more in it than this is not a folder of specs.
const MOST_ENTRIES: usize = 20_000;

/// Reads every `*.toml` below `folder`, in the order of their names.
///
/// Hidden files and folders are passed over, as editors leave copies there; so is the
/// register, which is no spec.
#[must_use]
pub fn folder(folder: &Path, findings: &Findings) -> Sources {
    let mut sources = Sources::default();
    let mut seen = 0;
    let visible = |entry: &walkdir::DirEntry| {
        entry.depth() == 0 || !entry.file_name().to_string_lossy().starts_with('.')
    };
    let walk = WalkDir::new(folder).follow_links(true).sort_by_file_name();
    for (count, entry) in walk.into_iter().filter_entry(visible).enumerate() {
        if count > MOST_ENTRIES {
            let message = Message::new("load-too-many").with("most", MOST_ENTRIES);
            let finding = Finding::about_path(message, folder.display().to_string());
            findings.report(finding.help(Message::new("load-too-many-help")));
            return sources;
        }
        match entry {
            Ok(entry) if entry.depth() == 0 && !entry.file_type().is_dir() => {
                let message = Message::new("load-not-a-folder").with("path", folder.display());
                findings.report(Finding::about_path(message, folder.display().to_string()));
                return sources;
            }
            Ok(entry) if entry.file_type().is_file() => {
                let is_register = entry.depth() == 1 && entry.file_name() == REGISTER_FILE;
                let is_toml =
                    |path: &Path| path.extension().is_some_and(|ext| ext.eq_ignore_ascii_case("toml"));
                if !is_register && is_toml(entry.path()) {
                    seen += 1;
                    read_file(entry.path(), &mut sources, findings);
                }
            }
            Ok(_) => {}
            Err(error) => {
                seen += 1;
                let path = error.path().unwrap_or(folder).display().to_string();
                let reason = error.io_error().map_or_else(|| error.to_string(), reason);
                report_unreadable(&path, &reason, findings);
            }
        }
    }
    if seen == 0 {
        let message = Message::new("load-empty-folder").with("path", folder.display());
        let finding = Finding::about_path(message, folder.display().to_string());
        findings.report(finding.help(Message::new("load-empty-folder-help")));
    }
    sources
}

/// Reads one file, whatever its name.
#[must_use]
pub fn file(path: &Path, findings: &Findings) -> Sources {
    let mut sources = Sources::default();
    read_file(path, &mut sources, findings);
    sources
}

/// Reads the demo set that is built into the binary.
#[must_use]
pub fn demo() -> Sources {
    let mut sources = Sources::default();
    for (path, text) in DEMO {
        sources.add(format!("specs/{path}"), (*text).to_owned());
    }
    sources
}

fn read_file(path: &Path, sources: &mut Sources, findings: &Findings) {
    let shown = path.display().to_string();
    let size = match fs::metadata(path) {
        Ok(metadata) => metadata.len(),
        Err(error) => return report_unreadable(&shown, &reason(&error), findings),
    };
    if size > LARGEST {
        let message =
            Message::new("load-too-large").with("size", megabytes(size)).with("largest", megabytes(LARGEST));
        let finding = Finding::about_path(message, shown);
        return findings.report(finding.help(Message::new("load-too-large-help")));
    }
    match fs::read(path) {
        Ok(bytes) => {
            text(shown, bytes, sources, findings);
        }
        Err(error) => report_unreadable(&shown, &reason(&error), findings),
    }
}

/// Takes in a file's text; bytes that are not UTF-8 are a finding at their line.
pub fn text(path: String, bytes: Vec<u8>, sources: &mut Sources, findings: &Findings) -> Option<FileId> {
    match String::from_utf8(bytes) {
        Ok(text) => {
            // A byte order mark is what some editors put first; it means nothing here.
            let text = text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text);
            Some(sources.add(path, text))
        }
        Err(error) => {
            let bad = error.utf8_error().valid_up_to();
            let byte = error.as_bytes().get(bad).copied().unwrap_or_default();
            let shown = String::from_utf8_lossy(error.as_bytes()).into_owned();
            let file = sources.add_unreadable(path, shown);
            let place = Place { file, span: bad..bad + '\u{fffd}'.len_utf8() };
            let message = Message::new("load-not-utf8").with("byte", format!("0x{byte:02X}"));
            let finding = Finding::error(message, place, Message::new("wanted-utf8"));
            findings.report(finding.help(Message::new("load-not-utf8-help")));
            None
        }
    }
}

fn report_unreadable(path: &str, reason: &str, findings: &Findings) {
    let message = Message::new("load-unreadable").with("reason", reason);
    findings.report(Finding::about_path(message, path.to_owned()));
}

fn megabytes(bytes: u64) -> String {
    let tenths = bytes * 10 / 1_000_000;
    format!("{}.{} MB", tenths / 10, tenths % 10)
}
