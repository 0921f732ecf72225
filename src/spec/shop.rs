//! The shop that prints, and the vehicle systems it serves.

use super::lamination::Lamination;
use super::paper_kind::PaperKind;
use super::reader::Reader;
use super::value::{At, Sourced};
use crate::diag::nearest;
use crate::quantity::{
    Length, Ratio, Size, TemperatureDifference, Toleranced, Units, Voltage, ratio, scalar, toleranced,
};
use crate::words::Language;

/// `[shop]`: whose paper this is.
#[derive(Debug, Clone)]
pub struct Shop {
    /// The shop's name, printed on every page.
    pub title: Option<At<String>>,
    /// The paper of test sheets.
    pub paper: Option<At<Paper>>,
    /// The units of what is printed, where no print says otherwise; both where left out.
    pub units: Option<At<Units>>,
    /// The sizes of single kinds of paper.
    pub sizes: Vec<(PaperKind, At<Size>)>,
    /// The language of its papers and of what the program says.
    pub language: Option<At<Language>>,
    /// A line printed in bold on every page, such as a mark of invented values.
    pub notice: Option<At<String>>,
    /// Its height above sea level: without it no gauge pressure is computed.
    pub elevation: Option<Sourced<Length>>,
    /// Whether an elevation stands there, readable or not.
    pub has_elevation: bool,
    /// How a reading near a limit is decided.
    pub decision: Option<At<Decision>>,
    /// The guard band as a part of the expanded uncertainty, where not all of it.
    pub guard: Option<Sourced<Ratio>>,
    /// How far a sensor may be from the thermometer beside it after soaking.
    pub soak: Option<Sourced<TemperatureDifference>>,
    /// How it laminates cards.
    pub lamination: Option<Lamination>,
}

/// A shop's decision rule.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decision {
    /// Inside the limits passes, outside fails.
    Simple,
    /// Within a guard band to either side of a limit nothing is decided.
    Guarded,
}

/// The paper that test sheets are printed on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Paper {
    /// 210 × 297 mm (ISO 216).
    A4,
    /// 215.9 × 279.4 mm.
    Letter,
}

/// The word that another usual name of units means, else the nearest one.
fn units_like(text: &str) -> Option<&'static str> {
    Units::meant_by(text)
        .map(Units::word)
        .or_else(|| nearest(text, Units::WORDS.iter().map(|(word, _)| *word)))
}

impl Shop {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "paper"]);
        Self {
            title: reader.text("title"),
            paper: reader.choice("paper", &[("A4", Paper::A4), ("letter", Paper::Letter)]),
            units: reader.choice_like("units", Units::WORDS, &|text| units_like(text)),
            sizes: sizes(reader),
            language: reader
                .choice_like("language", &languages(), &|text| Language::meant_by(text).map(Language::code)),
            notice: reader.text("notice"),
            elevation: reader.sourced("elevation", scalar),
            has_elevation: reader.has("elevation"),
            decision: reader
                .choice("decision", &[("guarded", Decision::Guarded), ("simple", Decision::Simple)]),
            guard: reader.sourced("guard", ratio),
            soak: reader.sourced("soak", scalar),
            lamination: reader.table("lamination").map(|lamination| Lamination::read(&lamination)),
        }
    }
}

/// `[shop.sizes]`: a kind of paper each.
fn sizes(reader: &Reader<'_>) -> Vec<(PaperKind, At<Size>)> {
    let Some(table) = reader.table("sizes") else { return Vec::new() };
    let read = |(key, kind, _): &(&'static str, PaperKind, _)| Some((*kind, table.size(key)?));
    let sizes = PaperKind::ALL.iter().filter_map(read).collect();
    table.finish();
    sizes
}

fn languages() -> Vec<(&'static str, Language)> {
    Language::ALL.iter().map(|language| (language.code(), *language)).collect()
}

/// `[system.ID]`: one kind of climate system, as fitted to a group of vehicles.
#[derive(Debug, Clone)]
pub struct System {
    /// The system's name.
    pub title: Option<At<String>>,
    /// Which vehicles it is fitted to, in the lead's own words.
    pub applicability: Option<Sourced<String>>,
    /// The reference voltage that its control unit feeds to sensors.
    pub reference: Option<Sourced<Toleranced<Voltage>>>,
    /// What the battery gives while sensors are measured; readings of faults need it.
    pub battery: Option<Sourced<Toleranced<Voltage>>>,
    /// Its high-voltage parts in the lead's own words: a STOP on every paper of the system.
    pub high_voltage: Option<Sourced<String>>,
}

impl System {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title"]);
        Self {
            title: reader.text("title"),
            applicability: reader.sourced_text("applicability"),
            reference: reader.sourced("reference", toleranced),
            battery: reader.sourced("battery", toleranced),
            high_voltage: reader.sourced_text("high_voltage"),
        }
    }
}
