//! `register.toml`: what is issued and who holds it, exactly as written.
//!
//! The program writes this file, people and version control merge it. So it is read as
//! carefully as a spec: every entry keeps its place, and what cannot be read is a finding.

use chrono::NaiveDate;
use toml::de::{DeTable, DeValue};

use super::reader::{File, Reader};
use super::set::is_id;
use super::syntax;
use super::value::{At, Sourced};
use crate::diag::{Finding, Findings, Place, Sources};
use crate::quantity::{Size, Temperature, Units, scalar};
use crate::words::{Language, Message};

/// Its name, at the top of the folder of specs.
pub const REGISTER_FILE: &str = "register.toml";

/// The newest form of the file that this program knows.
pub const REGISTER_FORMAT: u32 = 1;

/// How lines begin that a merge leaves where two people changed the same place.
const CONFLICT: [&str; 4] = ["<<<<<<<", "|||||||", "=======", ">>>>>>>"];

/// Everything a register says.
#[derive(Debug, Default)]
pub struct Register {
    /// Issues in the order of the file.
    pub issues: Vec<Issue>,
    /// `[[withdrawal]]`: revisions that are no longer valid, in the order of the file.
    pub withdrawals: Vec<Act>,
    /// Copies in the order of the file.
    pub copies: Vec<Held>,
}

/// What somebody did to a revision of a document, and why.
#[derive(Debug)]
pub struct Act {
    /// Its place in the file.
    pub place: Place,
    /// The document.
    pub id: At<String>,
    /// From 1.
    pub revision: At<u32>,
    /// Since when it holds.
    pub date: At<NaiveDate>,
    /// Who did it: initials.
    pub by: String,
    /// Why, in that person's words.
    pub why: String,
    /// Which pull list says what it made out of date: `2026-11-29/1`; none where nothing was.
    pub pull_list: Option<String>,
}

/// `[[issue]]`: one revision of one document.
#[derive(Debug)]
pub struct Issue {
    /// That it was issued.
    pub act: Act,
    /// The fingerprint of what it says.
    pub content: String,
    /// The fingerprint of how it looks.
    pub layout: String,
    /// The version of the program that made it.
    pub tool: String,
    /// The vehicle, where it is a paper of one.
    pub vehicle: Option<String>,
    /// The language it is in.
    pub language: Language,
    /// The units of its figures.
    pub units: Units,
    /// The size asked for, where one was.
    pub size: Option<Size>,
    /// The bay temperature asked for, where one was.
    pub at: Option<Sourced<Temperature>>,
}

/// `[[copy]]`: a printed copy in somebody's hands.
#[derive(Debug)]
pub struct Held {
    /// Its place in the file.
    pub place: Place,
    /// The document.
    pub id: At<String>,
    /// Which revision it is.
    pub revision: At<u32>,
    /// Whose it is, such as a bay, a van, a folder.
    pub holder: String,
    /// Where it hangs or lies.
    pub at: Option<String>,
    /// Since when.
    pub since: At<NaiveDate>,
    /// When it was taken down, where it was.
    pub until: Option<At<NaiveDate>>,
}

impl Register {
    /// Reads the one file of `sources`; what is wrong with it goes to `findings`.
    #[must_use]
    pub fn read(sources: &Sources, findings: &Findings) -> Self {
        let mut register = Self::default();
        for (id, text) in sources.texts() {
            let mut file = File::new(id, text, findings);
            if let Some(finding) = conflict(file) {
                findings.report(finding);
                continue;
            }
            let root = syntax::parse(&mut file);
            if !file.broken {
                register.read_root(file, root.get_ref());
            }
        }
        register
    }

    fn read_root(&mut self, file: File<'_>, table: &DeTable<'_>) {
        let top = Place { file: file.id, span: 0..0 };
        let reader = Reader::new(file, table, "register".to_owned(), top, None);
        reader.require(&["format"]);
        let format = reader.whole("format");
        if let Some(newer) = format.as_ref().filter(|format| format.value > REGISTER_FORMAT) {
            // What a newer program wrote may mean something else: not a word of it is read.
            let message = Message::new("register-newer").with("format", newer.value);
            let label = Message::new("wanted-register-format").with("known", REGISTER_FORMAT);
            let finding = Finding::error(message, newer.place.clone(), label);
            return file.findings.report(finding.help(Message::new("register-newer-help")));
        }
        self.issues = reader.tables("issue").iter().filter_map(Issue::read).collect();
        self.withdrawals = reader.tables("withdrawal").iter().filter_map(Act::alone).collect();
        self.copies = reader.tables("copy").iter().filter_map(Held::read).collect();
        reader.finish();
    }
}

impl Act {
    /// Reads the keys of an act, of which the entry may have more.
    fn read(reader: &Reader<'_>) -> Option<Self> {
        reader.require(&["id", "revision", "date", "by", "why"]);
        // Every key is asked for before any of them gives the entry up.
        let (id, revision, date) = (reader.document(), reader.whole("revision"), reader.date("date"));
        let (by, why, pull_list) = (reader.plain("by"), reader.plain("why"), reader.pull_list());
        let place = reader.place.clone();
        Some(Self { place, id: id?, revision: revision?, date: date?, by: by?, why: why?, pull_list })
    }

    /// Reads an entry that has no more keys.
    fn alone(reader: &Reader<'_>) -> Option<Self> {
        let act = Self::read(reader);
        reader.finish();
        act
    }
}

impl Issue {
    fn read(reader: &Reader<'_>) -> Option<Self> {
        let act = Act::read(reader);
        reader.require(&["content", "layout", "tool", "language", "units"]);
        let languages: Vec<_> = Language::ALL.iter().map(|language| (language.code(), *language)).collect();
        let [content, layout, tool] = ["content", "layout", "tool"].map(|key| reader.plain(key));
        let language = reader.choice("language", &languages);
        let units = reader.choice("units", Units::WORDS);
        let (vehicle, size, at) =
            (reader.plain("vehicle"), reader.size("size"), reader.sourced("at", scalar));
        reader.finish();
        Some(Self {
            act: act?,
            content: content?,
            layout: layout?,
            tool: tool?,
            vehicle,
            language: language?.value,
            units: units?.value,
            size: size.map(|size| size.value),
            at,
        })
    }
}

impl Held {
    fn read(reader: &Reader<'_>) -> Option<Self> {
        reader.require(&["id", "revision", "holder", "since"]);
        let (id, revision) = (reader.document(), reader.whole("revision"));
        let (holder, at) = (reader.plain("holder"), reader.plain("place"));
        let (since, until) = (reader.date("since"), reader.date("until"));
        reader.finish();
        let place = reader.place.clone();
        Some(Self { place, id: id?, revision: revision?, holder: holder?, at, since: since?, until })
    }
}

impl Reader<'_> {
    /// A text whose place does not matter.
    fn plain(&self, key: &'static str) -> Option<String> {
        self.text(key).map(|text| text.value)
    }

    /// The id of a document: it names files, and so must be one of a spec, or two of them.
    fn document(&self) -> Option<At<String>> {
        let id = self.text("id")?;
        let mut parts = id.value.splitn(2, '.');
        if parts.all(is_id) {
            return Some(id);
        }
        let message = Message::new("register-no-id").with("id", &id.value);
        self.report(Finding::error(message, id.place, Message::new("wanted-document-id")));
        None
    }

    /// The number of a pull list: a day, and which one of that day.
    fn pull_list(&self) -> Option<String> {
        let number = self.text("pull-list")?;
        let (day, of_day) = number.value.split_once('/').unwrap_or_default();
        let is_day = NaiveDate::parse_from_str(day, "%Y-%m-%d").is_ok_and(|date| date.to_string() == day);
        if is_day && of_day.parse::<u32>().is_ok_and(|of_day| of_day > 0) {
            return Some(number.value);
        }
        let message = Message::new("register-no-pull-list").with("number", &number.value);
        self.report(Finding::error(message, number.place, Message::new("wanted-pull-list")));
        None
    }

    /// A number from 1.
    fn whole(&self, key: &'static str) -> Option<At<u32>> {
        let number = self.number(key)?;
        if let Ok(value @ 1..) = number.written.parse() {
            return Some(At { value, place: number.place });
        }
        let message = Message::new("register-no-number").with("key", key).with("written", &number.written);
        self.report(Finding::error(message, number.place, Message::new("wanted-whole")));
        None
    }

    /// A day, as a date of TOML or as text.
    fn date(&self, key: &'static str) -> Option<At<NaiveDate>> {
        let value = self.get(key)?;
        let place = self.file().place(value);
        let written = match value.get_ref() {
            DeValue::Datetime(date) => date.to_string(),
            DeValue::String(text) => text.to_string(),
            _ => String::new(),
        };
        if let Ok(value) = NaiveDate::parse_from_str(&written, "%Y-%m-%d") {
            return Some(At { value, place });
        }
        let message = Message::new("register-no-date").with("key", key);
        self.report(Finding::error(message, place, Message::new("wanted-date")));
        None
    }
}

/// The first line that a merge left to be settled.
fn conflict(file: File<'_>) -> Option<Finding> {
    let mut start = 0;
    for line in file.text.split_inclusive('\n') {
        if CONFLICT.iter().any(|mark| line.starts_with(mark)) {
            let place = Place { file: file.id, span: start..start + line.trim_end().len() };
            let message = Message::new("register-conflict");
            let finding = Finding::error(message, place, Message::new("wanted-register-entries"));
            return Some(finding.help(Message::new("register-conflict-help")));
        }
        start += line.len();
    }
    None
}
