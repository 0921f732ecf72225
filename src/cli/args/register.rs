//! Arguments of the commands that work with the register.

use std::path::PathBuf;

use chrono::NaiveDate;
use clap::{Args, Subcommand, ValueEnum};

use super::Specs;
use super::paper::Edition;
use super::parse::line;

/// Where issued papers are.
#[derive(Debug, Args)]
pub struct Out {
    /// Folder of output: issued papers lie in `issued/` below it
    #[arg(long, value_name = "DIR", default_value = "out")]
    pub out: PathBuf,
}

/// Arguments of `status`.
#[derive(Debug, Args)]
pub struct Status {
    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    #[command(flatten)]
    /// Where issued papers are
    pub out: Out,

    #[command(flatten)]
    /// What wins over the edition that was issued
    pub edition: Edition,

    /// Form of the output
    #[arg(long, value_enum, default_value_t = StatusFormat::Text)]
    pub format: StatusFormat,
}

/// Forms of a status.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum StatusFormat {
    /// Lines for people
    Text,
    /// JSON
    Json,
}

/// Who acts, and why.
#[derive(Debug, Args)]
pub struct Because {
    /// Initials of who does it
    #[arg(long, value_name = "INITIALS", value_parser = line)]
    pub by: String,

    /// Why, as it is to stand on the papers and in the register
    #[arg(long, value_name = "TEXT", value_parser = line)]
    pub why: String,
}

/// Arguments of `issue`.
#[derive(Debug, Args)]
pub struct Issue {
    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    #[command(flatten)]
    /// Where issued papers go
    pub out: Out,

    #[command(flatten)]
    /// Who acts, and why
    pub because: Because,

    #[command(flatten)]
    /// What wins over the edition that was issued
    pub edition: Edition,

    /// Reissue papers too that say the same and look otherwise
    #[arg(long)]
    pub layout: bool,

    /// Say what would be issued, and write nothing
    #[arg(long)]
    pub dry_run: bool,

    /// Documents, sheets or vehicles to issue; all that are new or changed where none is named
    #[arg(value_name = "ID")]
    pub ids: Vec<String>,
}

/// Arguments of `withdraw`.
#[derive(Debug, Args)]
pub struct Withdraw {
    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    #[command(flatten)]
    /// Where issued papers are
    pub out: Out,

    #[command(flatten)]
    /// Who acts, and why
    pub because: Because,

    /// Date of the withdrawal; today where not given
    #[arg(long, value_name = "YYYY-MM-DD")]
    pub date: Option<NaiveDate>,

    /// Folder with templates of your own, each in place of the built-in one of its name
    #[arg(long, value_name = "DIR")]
    pub templates: Option<PathBuf>,

    /// Say what would be withdrawn, and write nothing
    #[arg(long)]
    pub dry_run: bool,

    /// Issued documents, or a vehicle for all of its sheets
    #[arg(value_name = "ID", required = true)]
    pub ids: Vec<String>,
}

/// Arguments of `holders`.
#[derive(Debug, Args)]
pub struct Holders {
    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    /// What to do; lists the copies where nothing is named
    #[command(subcommand)]
    pub act: Option<HoldersAct>,
}

/// What `holders` does.
#[derive(Debug, Subcommand)]
pub enum HoldersAct {
    /// List who holds which copy
    ///
    /// Example: bayleaf holders list --outdated
    List(ListCopies),

    /// Write down that somebody holds a copy
    ///
    /// Example: bayleaf holders add CUR-EVAP --holder "Bay 3" --place "wall"
    Add(AddCopy),

    /// Write down that a copy is elsewhere now
    ///
    /// Example: bayleaf holders move CUR-EVAP --holder "Bay 3" --to "Van 2" --to-place "door"
    Move(MoveCopy),

    /// Write down that copies were taken down
    ///
    /// Without an id, every copy of what is not valid any more: all that pull lists name.
    ///
    /// Example: bayleaf holders return CUR-EVAP --holder "Bay 3"
    Return(ReturnCopy),
}

/// Arguments of `holders list`.
#[derive(Debug, Args, Default)]
pub struct ListCopies {
    /// Only copies of what is not valid any more
    #[arg(long)]
    pub outdated: bool,

    /// Documents; all where none is named
    #[arg(value_name = "ID")]
    pub ids: Vec<String>,
}

/// Arguments of `holders add`.
#[derive(Debug, Args)]
pub struct AddCopy {
    /// Issued documents
    #[arg(value_name = "ID", required = true)]
    pub ids: Vec<String>,

    /// Whose it is: a bay, a van, a folder, a person
    #[arg(long, value_name = "TEXT", value_parser = line)]
    pub holder: String,

    /// Where it hangs or lies
    #[arg(long, value_name = "TEXT", value_parser = line)]
    pub place: Option<String>,

    /// Which revision it is; the valid one where not given
    #[arg(long, value_name = "N")]
    pub revision: Option<u32>,

    /// Since when; today where not given
    #[arg(long, value_name = "YYYY-MM-DD")]
    pub date: Option<NaiveDate>,
}

/// Arguments of `holders move`.
#[derive(Debug, Args)]
pub struct MoveCopy {
    /// The document
    #[arg(value_name = "ID")]
    pub id: String,

    /// Whose it was
    #[arg(long, value_name = "TEXT", value_parser = line)]
    pub holder: String,

    /// Where it was, where this holder has several
    #[arg(long, value_name = "TEXT", value_parser = line)]
    pub place: Option<String>,

    /// Whose it is now; the same holder's where not given
    #[arg(long, value_name = "TEXT", value_parser = line, required_unless_present = "to_place")]
    pub to: Option<String>,

    /// Where it is now
    #[arg(long, value_name = "TEXT", value_parser = line)]
    pub to_place: Option<String>,

    /// Since when; today where not given
    #[arg(long, value_name = "YYYY-MM-DD")]
    pub date: Option<NaiveDate>,
}

/// Arguments of `holders return`.
#[derive(Debug, Args)]
pub struct ReturnCopy {
    /// Documents; every copy of what is not valid any more where none is named
    #[arg(value_name = "ID")]
    pub ids: Vec<String>,

    /// Only copies of this holder
    #[arg(long, value_name = "TEXT", value_parser = line)]
    pub holder: Option<String>,

    /// Only copies at this place
    #[arg(long, value_name = "TEXT", value_parser = line)]
    pub place: Option<String>,

    /// When; today where not given
    #[arg(long, value_name = "YYYY-MM-DD")]
    pub date: Option<NaiveDate>,
}

/// Arguments of `verify`.
#[derive(Debug, Args)]
pub struct Verify {
    /// The code printed on a paper, such as "CUR-EVAP r2 RS5D-MKAG" or its last part alone, or
    /// the PDF file of an issued paper
    #[arg(value_name = "CODE|FILE", required = true)]
    pub what: Vec<String>,

    #[command(flatten)]
    /// Where the specs and their register are
    pub specs: Specs,
}
