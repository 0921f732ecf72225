//! Arguments of the commands that make pages.

use std::path::PathBuf;

use chrono::{Local, NaiveDate};
use clap::{Args, ValueEnum};

use super::Specs;
use super::parse::{Share, pixels_per_inch, share, size, temperature, units};
use crate::document::{self, Context};
use crate::model::Model;
use crate::quantity::{Size, Temperature, Units};
use crate::spec::Paper;
use crate::typeset::Flip;
use crate::words::Words;

/// What decides, beside the specs, what a page says and how it looks.
#[derive(Debug, Args)]
pub struct Edition {
    /// Folder with templates of your own, each in place of the built-in one of its name
    #[arg(long, value_name = "DIR")]
    pub templates: Option<PathBuf>,

    /// Bay temperature that the windows of test sheets are computed for
    ///
    /// In °C, °F or K. Without it a sheet points to the strip table of the card.
    #[arg(long, value_name = "TEMPERATURE", value_parser = temperature, allow_hyphen_values = true)]
    pub at: Option<Temperature>,

    /// Units of what is printed: metric, US or both; the shop's own where not given
    #[arg(long, value_name = "UNITS", value_parser = units)]
    pub units: Option<Units>,

    /// Size of the pages: A4, A5, A6, letter, "half letter", "4x6 in", "100x150 mm", upright or
    /// with "landscape" behind it
    ///
    /// Wins over a card's own size and the shop's. A kind of paper that is not laid out for the
    /// size is refused, with those that it is laid out for.
    #[arg(long, value_name = "SIZE", value_parser = size)]
    pub size: Option<Size>,

    /// Date printed on the pages; today where not given
    #[arg(long, value_name = "YYYY-MM-DD")]
    pub date: Option<NaiveDate>,
}

impl Edition {
    /// The date printed on the pages.
    #[must_use]
    pub fn issued(&self) -> NaiveDate {
        self.date.unwrap_or_else(|| Local::now().date_naive())
    }

    /// What documents of a set are composed from: an option wins over the shop's own.
    #[must_use]
    pub fn context<'a>(&self, model: &'a Model, words: &'a Words) -> Context<'a> {
        let units = self.units.unwrap_or(model.shop.units);
        let edition = document::Edition { language: words.language(), units, size: self.size, bay: self.at };
        edition.context(model, words, self.issued())
    }
}

/// Arguments of `print`.
#[derive(Debug, Args)]
pub struct Print {
    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    #[command(flatten)]
    /// What decides what a page says
    pub edition: Edition,

    /// Folder the files go to
    #[arg(long, value_name = "DIR", default_value = "out")]
    pub out: PathBuf,

    /// Form of the files: whole documents as PDF, a picture of each page, or the data of its template
    #[arg(long, value_enum, default_value_t = PaperFormat::Pdf)]
    pub format: PaperFormat,

    /// Pixels to an inch of paper, for PNG
    #[arg(long, value_name = "N", value_parser = pixels_per_inch, default_value = "200")]
    pub ppi: f64,

    /// Place cards side by side on sheets of this paper, to be cut
    ///
    /// Whatever is smaller than the sheet goes, fronts and backs matched and with marks to cut
    /// by, into SET.SHEETS-1.pdf, SET.SHEETS-2.pdf …, and gets no file of its own; a paper as
    /// large as the sheet still does. Every printed page has a bar of 100 mm. Print the sheets on
    /// both sides and at 100 %.
    #[arg(long, value_enum, value_name = "PAPER", ignore_case = true, conflicts_with_all = ["shard", "format"])]
    pub sheet: Option<SheetPaper>,

    /// Edge over which the printer turns sheets between their two sides
    #[arg(long, value_enum, value_name = "EDGE", default_value_t = FlipEdge::Long, requires = "sheet")]
    pub flip: FlipEdge,

    /// Worker processes; as many as there are processors where not given
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=1024))]
    pub jobs: Option<u32>,

    /// Print one share of the documents: 2/8 is the second of eight
    ///
    /// All shares together give exactly the files of one run, so a batch
    /// scheduler can spread a fleet over machines.
    #[arg(long, value_name = "I/N", value_parser = share, default_value = "1/1")]
    pub shard: Share,

    /// Print the proof sheets too: every number of a card, and what it was rounded from
    ///
    /// CARD.PROOF asks for the one of a card.
    #[arg(long)]
    pub proofs: bool,

    /// Documents, sheets or vehicles to print; all where none is named
    #[arg(value_name = "ID")]
    pub ids: Vec<String>,

    /// This process's share among the workers of one run
    #[arg(long, hide = true, value_parser = share)]
    pub worker: Option<Share>,

    /// The digest of the set that the run began with
    #[arg(long, hide = true)]
    pub digest: Option<String>,
}

/// Papers that sheets are printed on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum SheetPaper {
    /// 210 × 297 mm
    #[value(name = "A4")]
    A4,
    /// 215.9 × 279.4 mm
    Letter,
}

impl SheetPaper {
    /// The paper.
    #[must_use]
    pub fn paper(self) -> Paper {
        match self {
            Self::A4 => Paper::A4,
            Self::Letter => Paper::Letter,
        }
    }
}

/// Edges of a sheet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum FlipEdge {
    /// Like a page of a book
    Long,
    /// Like a sheet of a pad
    Short,
}

impl From<FlipEdge> for Flip {
    fn from(edge: FlipEdge) -> Self {
        match edge {
            FlipEdge::Long => Self::Long,
            FlipEdge::Short => Self::Short,
        }
    }
}

/// Forms of printed files.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum PaperFormat {
    /// PDF/A-2a and PDF/UA-1: ID.pdf
    Pdf,
    /// Pixels: ID-1.png, ID-2.png
    Png,
    /// Lines: ID-1.svg, ID-2.svg
    Svg,
    /// What a document's template receives, and the name of its schema: ID.json
    Json,
}

/// Arguments of `preview`.
#[derive(Debug, Args)]
pub struct Preview {
    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    #[command(flatten)]
    /// What decides what a page says
    pub edition: Edition,

    /// The document
    #[arg(value_name = "ID")]
    pub id: String,

    /// The picture's file; ID.png where not given
    #[arg(long, value_name = "FILE")]
    pub out: Option<PathBuf>,

    /// Pixels to an inch of paper
    #[arg(long, value_name = "N", value_parser = pixels_per_inch, default_value = "120")]
    pub ppi: f64,
}

/// Arguments of `watch`.
#[derive(Debug, Args)]
pub struct Watch {
    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    #[command(flatten)]
    /// What decides what a page says
    pub edition: Edition,

    /// Folder the pictures go to
    #[arg(long, value_name = "DIR", default_value = "out")]
    pub out: PathBuf,

    /// Pixels to an inch of paper
    #[arg(long, value_name = "N", value_parser = pixels_per_inch, default_value = "120")]
    pub ppi: f64,

    /// Documents, sheets or vehicles to draw; all where none is named
    #[arg(value_name = "ID")]
    pub ids: Vec<String>,
}
