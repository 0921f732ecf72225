//! The result report: what was found, on which evidence, what was done, how it reads since.
//!
//! Filled in by hand; what is known of the vehicle, the windows of its test sheet and the
//! codes of the papers used are printed.

use schemars::JsonSchema;
use serde::Serialize;

use super::figures;
use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::test_sheet::group::{Quoted, quoted};
use super::test_sheet::header;
use super::write_on::{self, WriteOn};
use super::{Context, Data, Document, Listed, Paperwork, code_of, finish};
use crate::model::{Report, Sheet};
use crate::words::{Message, Words};

const TEMPLATE: &str = "report.typ";

/// As many readings as evidence asks for (TRADE practice: three with their windows).
const EVIDENCE: usize = 3;

/// What is written down before anything else, with the unit printed in the box.
const BOXES: [(&str, &str); 6] = [
    ("report-box-job", ""),
    ("sheet-box-technician", ""),
    ("sheet-box-date", ""),
    ("sheet-box-odometer", "km"),
    ("sheet-box-bay", "°C"),
    ("report-box-sheet-pages", ""),
];

const SIGN_OFF: [&str; 4] =
    ["report-sign-technician", "report-sign-checked", "report-sign-received", "report-sign-date"];

/// Everything a report's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct ResultReport {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// What is known of the vehicle.
    vehicle: Vec<header::Labelled>,
    /// Boxes for job, technician, date.
    boxes: Vec<WriteOn>,
    /// Label of the lines for the complaint.
    complaint: String,
    /// Label of the lines for the cause.
    cause: String,
    /// Label of the lines for what was done.
    action: String,
    /// Label of the lines for what is left open.
    open: String,
    /// Readings with their windows; blank lines for those the technician chooses.
    evidence: Vec<Quoted>,
    /// Which sheet, at which temperature.
    windows_of: String,
    /// The windows that readings were judged by.
    windows: Vec<Quoted>,
    /// The papers used.
    papers: Vec<PaperUsed>,
    /// How to correct an entry.
    corrections: String,
    /// Boxes for who signs.
    sign_off: Vec<WriteOn>,
}

impl Data for ResultReport {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// A paper that the work used, and the code it has today.
#[derive(Debug, Serialize, JsonSchema)]
struct PaperUsed {
    /// Its id.
    id: String,
    /// Its fingerprint: `0BS7-885E`.
    code: String,
}

/// Composes the report of one vehicle.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let Paperwork::Report { vehicle } = &listed.paperwork else { return None };
    let report = model.reports.get(&listed.spec)?;
    let sheet = model.sheets.get(&report.sheet)?;
    let vehicle = model.vehicles.get(vehicle)?;
    let system = model.systems.get(&sheet.system)?;
    let mut marks = Marks::of(context.units);
    let title = Message::new("sheet-title").with("title", &report.title).with("vehicle", &vehicle.title);
    let kind = Kind {
        word: "doc-report",
        size: context.size_of(listed),
        title: words.say(&title),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, &sheet.system, system, &mut marks);
    let identity = header::identity(words, vehicle, &system.title, &mut marks);
    // The letters of the sheet's values are explained on the sheet.
    let windows = quoted(context, sheet, vehicle, &mut Marks::default());
    let of_sheet = Listed {
        id: format!("{}.{}", sheet.id, vehicle.id),
        spec: sheet.id.clone(),
        paperwork: Paperwork::TestSheet { vehicle: vehicle.id.clone() },
    };
    let code = code_of(context, &of_sheet).unwrap_or_default();
    let data = ResultReport {
        furniture,
        vehicle: identity,
        boxes: write_on::boxes(context, &BOXES),
        complaint: words.word("report-complaint"),
        cause: words.word("report-cause"),
        action: words.word("report-action"),
        open: words.word("report-open"),
        evidence: evidence(report, &windows),
        windows_of: windows_of(context, &of_sheet.id, &code),
        windows,
        papers: papers(context, sheet),
        corrections: corrections(words),
        sign_off: write_on::signatures(words, &SIGN_OFF),
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

fn corrections(words: &Words) -> String {
    format!("{} {}", words.word("sheet-surface-paper"), words.word("sheet-corrections"))
}

/// The tests that the lead chose, then lines for those the technician does.
fn evidence(report: &Report, windows: &[Quoted]) -> Vec<Quoted> {
    let blank = || Quoted {
        number: String::new(),
        title: String::new(),
        window: String::new(),
        unit: String::new(),
        test: String::new(),
    };
    let chosen = report.evidence.iter().filter_map(|id| {
        let row = windows.iter().find(|row| row.test == *id)?;
        Some(Quoted {
            number: row.number.clone(),
            title: row.title.clone(),
            window: row.window.clone(),
            unit: row.unit.clone(),
            test: String::new(),
        })
    });
    chosen.chain(std::iter::repeat_with(blank)).take(EVIDENCE).collect()
}

fn windows_of(context: Context<'_>, sheet: &str, code: &str) -> String {
    let message = match context.bay {
        Some(at) => Message::new("report-now").with("temperature", figures::tenths(context.units, at)),
        None => Message::new("report-now-none"),
    };
    context.words.say(&message.with("sheet", sheet).with("code", code))
}

/// The cards of the sheet's rows, with the codes they have today.
fn papers(context: Context<'_>, sheet: &Sheet) -> Vec<PaperUsed> {
    let rows = sheet.groups.iter().flat_map(|group| &group.rows);
    let mut ids: Vec<&String> = rows.filter_map(|row| row.card.as_ref()).collect();
    ids.sort_unstable();
    ids.dedup();
    let used = |id: &String| {
        let card = context.model.cards.get(id)?;
        let listed = Listed { id: id.clone(), spec: id.clone(), paperwork: Paperwork::Card(card.about) };
        Some(PaperUsed { id: id.clone(), code: code_of(context, &listed)? })
    };
    ids.into_iter().filter_map(used).collect()
}
