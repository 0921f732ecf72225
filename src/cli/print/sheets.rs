//! Files of printed sheets: what is left over from them, and how they are called.

use std::collections::BTreeMap;
use std::fs;
use std::io;
use std::path::Path;

use serde::{Deserialize, Serialize};

use crate::cli::args::Print;
use crate::cli::why::Why;
use crate::diag::reason;
use crate::document::Context;
use crate::spec::Paper;
use crate::typeset::{Flip, Imposed, Leaf, Press};
use crate::words::{Message, Words};

/// What a process says about one file of sheets.
#[derive(Debug, Clone, Default, Serialize, Deserialize)]
pub(super) struct Bundled {
    /// The file's number.
    pub number: usize,
    pub sheets: usize,
    /// Sides without the bar of 100 mm.
    pub without_bar: usize,
    /// Leaves that fill no sheet: the document's id, and which of its leaves.
    pub left: Vec<(String, usize)>,
    /// Why it could not be made.
    pub failure: Option<Why>,
}

impl Bundled {
    pub(super) fn imposed(number: usize, imposed: &Imposed, written: io::Result<()>) -> Self {
        let failure = written.err().map(|error| Why::Run(reason(&error)));
        let (sheets, without_bar) = (imposed.sheets, imposed.without_bar);
        Self { number, sheets, without_bar, failure, ..Self::default() }
    }
}

/// How the sheets are printed; `None` where every document has a file of its own.
pub(super) fn press(arguments: &Print, context: Context<'_>) -> Option<Press> {
    let sheet = match arguments.sheet?.paper() {
        Paper::A4 => (210.0, 297.0),
        Paper::Letter => (215.9, 279.4),
    };
    let lamination = context.model.shop.lamination.clone();
    Some(Press {
        sheet,
        flip: Flip::from(arguments.flip),
        lamination,
        language: context.words.language(),
        date: context.date,
    })
}

/// The leaves that this process has laid out and put on no sheet.
#[derive(Default)]
pub(super) struct Kept(BTreeMap<(String, usize), Leaf>);

impl Kept {
    /// Keeps leaves; their names.
    pub(super) fn keep(&mut self, leaves: Vec<Leaf>) -> Vec<(String, usize)> {
        let names = leaves.iter().map(|leaf| (leaf.id.clone(), leaf.number)).collect();
        self.0.extend(leaves.into_iter().map(|leaf| ((leaf.id.clone(), leaf.number), leaf)));
        names
    }

    pub(super) fn take(&mut self, name: &(String, usize)) -> Option<Leaf> {
        self.0.remove(name)
    }
}

/// A file of sheets. No id of a spec holds a full stop, so no card's file is called so.
pub(super) fn file(number: usize) -> String {
    format!("SET.SHEETS-{number}.pdf")
}

/// Names the files that were written 1, 2, 3 in their order; how many there are. A bundle
/// of which no sheet was filled has none.
pub(super) fn close_gaps(out: &Path, bundled: &mut [Bundled]) -> io::Result<usize> {
    bundled.sort_by_key(|bundled| bundled.number);
    let mut files = 0;
    for bundled in bundled.iter_mut().filter(|bundled| bundled.sheets > 0 && bundled.failure.is_none()) {
        files += 1;
        if bundled.number != files {
            fs::rename(out.join(file(bundled.number)), out.join(file(files)))?;
            bundled.number = files;
        }
    }
    Ok(files)
}

/// Sheets of an earlier run that had more of them: whoever prints all files would print
/// old cards too.
pub(super) fn stale(out: &Path, files: usize) -> Vec<String> {
    (files + 1..).map(file).take_while(|name| out.join(name).exists()).collect()
}

/// What has been printed, in a line, and what to do with it.
pub(super) fn told(bundled: &[Bundled], files: usize, press: &Press, words: &Words) -> Option<String> {
    let sheets: usize = bundled.iter().map(|bundled| bundled.sheets).sum();
    if files == 0 {
        return None;
    }
    let edge = match press.flip {
        Flip::Long => "run-long-edge",
        Flip::Short => "run-short-edge",
    };
    let message = Message::new("run-sheets")
        .with_count("sheets", sheets)
        .with_count("files", files)
        .with("first", file(1))
        .with("last", file(files))
        .with_word("edge", edge);
    Some(words.say(&message))
}
