//! Arguments of the commands that answer with figures.

use std::path::PathBuf;

use clap::{Args, ValueEnum};

use super::Specs;
use super::parse::{position, pressure, reading, second, step, temperature, units};
use crate::document::judgement::Reading;
use crate::quantity::{Pressure, Ratio, Step, Temperature, Units};

/// Arguments of `table`.
#[derive(Debug, Args)]
pub struct Table {
    /// Id of a sensor, card, sheet or any other thing with figures; `kind.id` where two kinds share an id
    #[arg(value_name = "ID")]
    pub id: String,

    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    /// First temperature; the lower end of the sensor's, or card's, range where not given
    #[arg(long, value_name = "TEMPERATURE", value_parser = temperature, allow_hyphen_values = true)]
    pub from: Option<Temperature>,

    /// Last temperature; the upper end of the sensor's, or card's, range where not given
    #[arg(long, value_name = "TEMPERATURE", value_parser = temperature, allow_hyphen_values = true)]
    pub to: Option<Temperature>,

    /// Step from row to row, such as "5 K" or "10 °F"; 5 K for a sensor where not given
    #[arg(long, value_name = "DIFFERENCE", value_parser = step)]
    pub step: Option<Step>,

    /// Bay temperature, for figures that depend on it, such as a thermocouple's cold junction
    #[arg(long, value_name = "TEMPERATURE", value_parser = temperature, allow_hyphen_values = true)]
    pub at: Option<Temperature>,

    /// Units of what is printed: metric, US or both; the shop's own where not given
    #[arg(long, value_name = "UNITS", value_parser = units)]
    pub units: Option<Units>,

    /// Form of the output
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub format: Format,

    /// Draw its curves below it; done without asking where the output is a terminal
    #[arg(long, conflicts_with = "format")]
    pub plot: bool,

    /// Write it as a spreadsheet instead, numbers unrounded, with its inputs and their sources
    #[arg(long, value_name = "FILE", conflicts_with_all = ["format", "plot"])]
    pub xlsx: Option<PathBuf>,
}

/// Arguments of `export`.
#[derive(Debug, Args)]
pub struct Export {
    /// The folder that the files go to
    #[arg(value_name = "DIR")]
    pub folder: PathBuf,

    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    /// Bay temperature, for a thermocouple's cold junction and the windows of test sheets
    #[arg(long, value_name = "TEMPERATURE", value_parser = temperature, allow_hyphen_values = true)]
    pub at: Option<Temperature>,

    /// Units of the figures: metric, US or both; the shop's own where not given
    #[arg(long, value_name = "UNITS", value_parser = units)]
    pub units: Option<Units>,

    /// Form of the files
    #[arg(long, value_enum, default_value_t = ExportFormat::Csv)]
    pub format: ExportFormat,
}

/// Forms of exported figures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum ExportFormat {
    /// Comma-separated values
    Csv,
    /// JSON
    Json,
    /// A spreadsheet
    Xlsx,
}

/// Arguments of `faults`.
#[derive(Debug, Args)]
pub struct Faults {
    /// Id of a sensor, actuator, driver, transducer or light sensor; `kind.id` where two kinds share an id
    #[arg(value_name = "ID")]
    pub id: String,

    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    /// Temperature of the sensor, or of the coil
    #[arg(long, value_name = "TEMPERATURE", value_parser = temperature, allow_hyphen_values = true)]
    pub at: Option<Temperature>,

    /// Where a sensor's readings are taken; at the control unit where not given
    #[arg(long, value_enum)]
    pub place: Option<FaultPlace>,

    /// Position of an actuator, as a percent of the travel between its stops; both stops where not given
    #[arg(long, value_name = "PERCENT", value_parser = position)]
    pub position: Option<Ratio>,

    /// Pressure at a transducer, absolute or gauge as the part measures; both ends of its line where not given
    #[arg(long, value_name = "PRESSURE", value_parser = pressure, allow_hyphen_values = true)]
    pub pressure: Option<Pressure>,

    /// Id of a multimeter or thermometer; those of a sheet, or card, of the system where none is named
    #[arg(long = "instrument", value_name = "ID")]
    pub instruments: Vec<String>,

    /// Units of what is printed: metric, US or both; the shop's own where not given
    #[arg(long, value_name = "UNITS", value_parser = units)]
    pub units: Option<Units>,

    /// Form of the output
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub format: Format,
}

/// Where the readings of faults are taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum FaultPlace {
    /// At the control unit's connector
    Unit,
    /// At the sensor's own plug
    Sensor,
}

/// Arguments of `judge`.
#[derive(Debug, Args)]
pub struct Judge {
    /// Id of a sensor
    #[arg(value_name = "ID")]
    pub id: String,

    #[command(flatten)]
    /// Where the specs are
    pub specs: Specs,

    /// What the meter shows, in V or Ω; OL for an open line
    #[arg(long, value_name = "READING", value_parser = reading, allow_hyphen_values = true)]
    pub reading: Reading,

    /// The sensor's temperature
    #[arg(long, value_name = "TEMPERATURE", value_parser = temperature, allow_hyphen_values = true)]
    pub at: Temperature,

    /// A second reading, at the same place and another temperature, such as "2.6 V@5 °C"
    #[arg(long, value_name = "READING@TEMPERATURE", value_parser = second, allow_hyphen_values = true)]
    pub second: Option<(Reading, Temperature)>,

    /// Where it was taken; volts at the unit and ohms at the sensor where not given
    #[arg(long, value_enum)]
    pub place: Option<ReadingPlace>,

    /// Id of a multimeter or thermometer; those of the sensor's sheet where none is named
    #[arg(long = "instrument", value_name = "ID")]
    pub instruments: Vec<String>,

    /// Form of the output
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub format: Format,
}

/// Where a reading was taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum ReadingPlace {
    /// At the control unit's connector: volts mated, ohms with the unit unmated
    Unit,
    /// At the sensor's own plug: volts mated, ohms of the sensor alone
    Sensor,
    /// Volts at the harness side of the sensor's plug, sensor unmated
    Unplugged,
}

/// Arguments of `fit`.
#[derive(Debug, Args)]
pub struct Fit {
    /// A file of points: CSV, or TOML
    #[arg(value_name = "FILE")]
    pub file: PathBuf,

    /// Form of the output
    #[arg(long, value_enum, default_value_t = Format::Text)]
    pub format: Format,
}

/// Forms of a table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, ValueEnum)]
pub enum Format {
    /// Aligned columns, rounded as on a card
    Text,
    /// Comma-separated values, unrounded
    Csv,
    /// JSON, unrounded
    Json,
}
