//! The command line: types only. Their comments are the help text.

mod figures;
mod paper;
mod parse;
mod register;

use std::path::PathBuf;

use clap::{Args, Parser, Subcommand, ValueEnum};

use super::import::{resistance_unit, temperature_unit};
use crate::quantity::{Unit, Units};
use crate::words::Language;
pub(super) use figures::{Export, ExportFormat, FaultPlace, Faults, Fit, Format, Judge, ReadingPlace, Table};
pub(super) use paper::{Edition, PaperFormat, Preview, Print, Watch};
pub(super) use parse::Share;
use parse::{language, units};
pub(super) use register::{
    Holders, HoldersAct, Issue, ListCopies, ReturnCopy, Status, StatusFormat, Verify, Withdraw,
};

/// Prints bay cards and test sheets for vehicle climate control from TOML specs
///
/// A spec set is a folder of `*.toml` files: sensors, connectors, instruments,
/// vehicles, and the cards and sheets to print of them. Without `--specs` the
/// folder `specs/` is read; where there is none, the invented demo set built
/// into the program is used, and the first line of output says so.
///
/// Exit codes: 0 done; 1 the specs have errors, nothing was written, or a template
/// of your own fails and all else was printed, or a verified paper is not the valid one;
/// 2 the run itself failed, such as an output folder that cannot be written; 3 papers are
/// due (`status`).
#[derive(Debug, Parser)]
#[command(version, propagate_version = true, disable_help_subcommand = true)]
pub struct Arguments {
    /// What to do
    #[command(subcommand)]
    pub command: Command,

    /// Language of papers, findings and answers: en, de, fr or es
    ///
    /// The shop's own where not given, and English where the shop has none.
    #[arg(long, global = true, value_name = "CODE", value_parser = language)]
    pub language: Option<Language>,
}

/// The commands.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Typeset cards and sheets as PDF
    ///
    /// Every document of the set is printed, or those that are named: by their
    /// own id, by the id of a sheet (for all its vehicles), or by the id of a
    /// vehicle (all its sheets). Files are written whole or not at all.
    ///
    /// Example: bayleaf print --at "31 °C" CUR-SENSORS
    ///
    /// Cards on sheets to be cut: bayleaf print --sheet A4
    Print(Print),

    /// Draw one document as one PNG, all its pages below one another
    ///
    /// Example: bayleaf preview CUR-EVAP
    Preview(Preview),

    /// Draw documents anew whenever a spec or template of theirs is saved
    ///
    /// Each document is one PNG, as `preview` draws it: those that are named, or all but
    /// the index. Findings are shown at every save; what they keep from being drawn stays
    /// as it was. Runs until it is interrupted.
    ///
    /// Example: bayleaf watch CUR-EVAP --specs specs
    Watch(Watch),

    /// Look for errors in the specs and print nothing
    ///
    /// Shows every finding, then lists the values that are missing and those
    /// without a source.
    ///
    /// Example: bayleaf check --specs specs
    Check(Check),

    /// Say what is due: which papers are new, changed, gone or as issued
    ///
    /// Compares every document with what the register says was issued of it: which values of
    /// the specs changed, which cells they moved and by how much, who holds a copy of the old
    /// one, and which vehicles have sheets with old figures. A better layout or a new version of
    /// this program changes no revision: it is told as such.
    ///
    /// Example: bayleaf status --specs specs
    Status(Status),

    /// Issue what is new or changed: final papers, the register, and what to take down where
    ///
    /// Each paper gets its next revision and goes into issued/ in the folder of output, with the
    /// changed cells marked; papers that say the same keep theirs. A pull list names every copy
    /// of an earlier revision with its holder and place. Nothing that was issued is overwritten.
    ///
    /// Example: bayleaf issue --by KM --why "pull-up corrected after recall 4"
    Issue(Issue),

    /// Withdraw issued papers that are not to be used any more, and say which copies to take down
    ///
    /// Example: bayleaf withdraw AMB-12 --by KM --why "vehicle sold"
    Withdraw(Withdraw),

    /// Keep account of who holds which copy: list, add, move, return
    ///
    /// Example: bayleaf holders add CUR-EVAP --holder "Bay 3" --place "wall"
    Holders(Holders),

    /// Say whether a paper is the valid one, from its printed code or from its PDF
    ///
    /// By the register: current, superseded, withdrawn, or unknown. A PDF carries inside the
    /// specs it was made from: they are computed again, and it is said whether this version
    /// computes the same figures. Ends with 1 where the paper is not the valid one or its figures
    /// differ, with 2 where the file cannot be verified: damaged, a draft, of another program.
    ///
    /// Example: bayleaf verify CUR-EVAP r2 RS5D-MKAG
    Verify(Verify),

    /// Show the figures of one thing of the specs as a table
    ///
    /// Limits are the exact worst case over all tolerances. Below the table stand
    /// the formulas and the values it rests on, each with its place in the specs and
    /// its source. CSV and JSON carry unrounded numbers; a value that cannot be
    /// computed stays empty (CSV) or null (JSON).
    ///
    /// Example: bayleaf table curlew-cabin --from "0 °C" --to "40 °C" --step "5 K" --format csv
    Table(Table),

    /// Write the figures of a whole set, and what they rest on, for other programs
    ///
    /// CSV: two files for each thing with figures, KIND.ID.csv with its numbers under
    /// keys that carry their unit, and KIND.ID.inputs.csv with the values that they rest
    /// on and their sources. JSON: one file for each, with formulas and notes. XLSX: one
    /// workbook, figures.xlsx, a sheet for each and one of all sources. Numbers are
    /// unrounded; a figure that cannot be computed stays empty, and a value that is
    /// missing says NOT GIVEN.
    ///
    /// Example: bayleaf export figures --format xlsx
    Export(Export),

    /// List what each fault of a sensor, feedback, coil or transducer would read
    ///
    /// Ohms, volts, and what the control unit would believe, for every fault of the
    /// dictionary; whether it can be told from a good part with these instruments,
    /// and which faults read alike. A sensor and a coil need their temperature, the
    /// others do not depend on it. The feedback of an actuator is listed at both
    /// stops, or at --position; a transducer at both ends of its line, or at
    /// --pressure; a light sensor in the dark and in its rated light.
    ///
    /// Example: bayleaf faults curlew-cabin --at "31 °C"
    Faults(Faults),

    /// Judge one reading: pass, fail or undecided, and what explains it
    ///
    /// Lists every single fault whose size, as an interval, explains the reading
    /// given the good part's own tolerance; says what would decide an undecided
    /// reading, and where to measure next. With a second reading at another
    /// temperature it solves for two faults at once.
    ///
    /// Example: bayleaf judge curlew-cabin --reading "1.42 V" --at "31 °C"
    Judge(Judge),

    /// Fit thermistor formulas to the points of a table
    ///
    /// FILE holds the points as a manual prints them. A file named *.toml has the
    /// keys of a table curve: temperature, resistance, points. Anything else is
    /// columns separated by commas, semicolons or tabs below a line that names
    /// their units, such as `°F,kΩ` or `temperature °C;min Ω;nominal Ω;max Ω`;
    /// lines that begin with # are comments.
    ///
    /// Fitted are the beta formula and Steinhart–Hart with three and with four
    /// terms, by least squares of 1/T in ln R. Shown are coefficients, residuals
    /// in K and %, the row that looks mistyped, and the lines for a spec. CSV has
    /// the residuals alone; JSON has all.
    ///
    /// Example: bayleaf fit points.csv
    #[command(verbatim_doc_comment)]
    Fit(Fit),

    /// Begin a set: a folder with a small, valid one, every line of it explained
    ///
    /// Its values are examples and every page says so. Nothing is overwritten: the
    /// folder must be new or empty.
    ///
    /// Example: bayleaf new specs
    New(New),

    /// Write the JSON Schema of a spec file, or of a template's data, for editors
    ///
    /// An editor that knows JSON Schema for TOML completes keys and words, shows what
    /// each means and in which units it is written, and marks mistakes while one types,
    /// where a spec begins with the line `#:schema spec.schema.json`. A set made by
    /// `bayleaf new` has both. What takes more than one table to see is found by
    /// `bayleaf check` alone.
    ///
    /// With --template, the schema says what data a template receives: every key, what it
    /// means, and how it is written. The data of a document itself:
    /// bayleaf print --format json ID
    ///
    /// Example: bayleaf schema > specs/spec.schema.json
    Schema(Schema),

    /// List the built-in templates, or hand them out to be changed
    ///
    /// Beside each lies the JSON Schema of the data it receives. Keep the ones you
    /// change and give their folder to print with --templates; the built-in ones do the
    /// rest. theme.typ alone restyles every paper.
    ///
    /// Example: bayleaf templates --write own
    Templates(Templates),

    /// Write what a shell needs to complete these commands
    ///
    /// Example: bayleaf completions bash > ~/.local/share/bash-completion/completions/bayleaf
    Completions(Completions),

    /// Write a manual page for each command into a folder
    ///
    /// Example: bayleaf man ~/.local/share/man/man1
    Man(Man),

    /// Turn a table as a spreadsheet has it into lines for a spec
    ///
    /// Heads, units, decimal mark and what parts the cells are guessed from the file
    /// and told as comments above the lines: °C, °F or K; Ω or kΩ; one resistance, or
    /// minimum, nominal and maximum. What cannot be decided is a finding that says
    /// which option decides it.
    ///
    /// Example: bayleaf import cabin.csv --id cabin --source "maint. manual 4, p. 31"
    Import(Import),
}

/// Where the specs are.
#[derive(Debug, Args)]
pub struct Specs {
    /// Folder of the specs
    #[arg(long, value_name = "DIR")]
    pub specs: Option<PathBuf>,
}

/// Arguments of `check`.
#[derive(Debug, Args)]
pub struct Check {
    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,
}

/// Arguments of `completions`.
#[derive(Debug, Args)]
pub struct Completions {
    /// The shell
    #[arg(value_enum, value_name = "SHELL")]
    pub shell: clap_complete::Shell,
}

/// Arguments of `man`.
#[derive(Debug, Args)]
pub struct Man {
    /// Folder the pages go to
    #[arg(value_name = "DIR")]
    pub folder: PathBuf,
}

/// Arguments of `new`.
#[derive(Debug, Args)]
pub struct New {
    /// The folder to make
    #[arg(value_name = "DIR")]
    pub folder: PathBuf,

    /// Units of the shop's papers: metric, US or both; both where not given
    #[arg(long, value_name = "UNITS", value_parser = units)]
    pub units: Option<Units>,
}

/// Arguments of `schema`.
#[derive(Debug, Args)]
pub struct Schema {
    /// The template whose data are described, such as sensor-card.typ
    #[arg(long, value_name = "NAME")]
    pub template: Option<String>,
}

/// Arguments of `templates`.
#[derive(Debug, Args)]
pub struct Templates {
    /// Write them, and the schemas of their data, into this folder
    #[arg(long, value_name = "DIR")]
    pub write: Option<PathBuf>,

    /// Replace files there that differ
    #[arg(long, requires = "write")]
    pub overwrite: bool,
}

/// Arguments of `import`.
#[derive(Debug, Args)]
pub struct Import {
    /// A text file of columns, as a spreadsheet exports it
    #[arg(value_name = "FILE")]
    pub file: PathBuf,

    /// Id of the sensor; made from the file's name where not given
    #[arg(long, value_name = "ID")]
    pub id: Option<String>,

    /// Title of the sensor
    #[arg(long, value_name = "TEXT")]
    pub title: Option<String>,

    /// Id of its system
    #[arg(long, value_name = "ID")]
    pub system: Option<String>,

    /// Where the table comes from, as it is to be printed
    #[arg(long, value_name = "TEXT")]
    pub source: Option<String>,

    /// Unit of temperatures where the file names none: °C, °F or K
    #[arg(long, value_name = "UNIT", value_parser = temperature_unit)]
    pub temperature: Option<Unit>,

    /// Unit of resistances where the file names none: Ω or kΩ
    #[arg(long, value_name = "UNIT", value_parser = resistance_unit)]
    pub resistance: Option<Unit>,

    /// Decimal mark, where the numbers do not decide it
    #[arg(long, value_enum)]
    pub decimal: Option<Mark>,
}

/// A decimal mark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Mark {
    /// 6.42
    Point,
    /// 6,42
    Comma,
}
