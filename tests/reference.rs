//! Published values against the crate: one file of numbers, one test.
//!
//! The tables lie in tests/reference; the `#` lines of each name the source,
//! the units and the agreement to demand, which every check repeats. A table
//! is never computed by this crate. New rows need no new code, only their count.

#[path = "reference/air.rs"]
mod air;
#[path = "reference/bench.rs"]
mod bench;
#[path = "reference/budgets.rs"]
mod budgets;
#[path = "reference/causes.rs"]
mod causes;
#[path = "reference/circuits.rs"]
mod circuits;
#[path = "reference/coils.rs"]
mod coils;
#[path = "reference/curves.rs"]
mod curves;
#[path = "reference/decisions.rs"]
mod decisions;
#[path = "reference/dividers.rs"]
mod dividers;
#[path = "reference/examples.rs"]
mod examples;
#[path = "reference/faults.rs"]
mod faults;
#[path = "reference/fits.rs"]
mod fits;
#[path = "reference/instruments.rs"]
mod instruments;
#[path = "reference/interpolation.rs"]
mod interpolation;
#[path = "reference/lights.rs"]
mod lights;
#[path = "reference/loads.rs"]
mod loads;
#[path = "reference/misprints.rs"]
mod misprints;
#[path = "reference/modes.rs"]
mod modes;
#[path = "reference/pairs.rs"]
mod pairs;
#[path = "reference/platinum.rs"]
mod platinum;
#[path = "reference/positions.rs"]
mod positions;
#[path = "reference/refrigerants.rs"]
mod refrigerants;
#[path = "reference/requests.rs"]
mod requests;
#[path = "reference/scales.rs"]
mod scales;
#[path = "reference/series.rs"]
mod series;
#[path = "reference/sheet.rs"]
mod sheet;
#[path = "reference/thermocouples.rs"]
mod thermocouples;
#[path = "reference/tolerances.rs"]
mod tolerances;
#[path = "reference/windows.rs"]
mod windows;
