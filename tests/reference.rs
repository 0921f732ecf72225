//! Published values against the crate: one file of numbers, one test.
//!
//! The tables lie in tests/reference; the `#` lines of each name the source,
//! the units and the agreement to demand, which every check repeats. A table
//! is never computed by this crate. New rows need no new code, only their count.

#[path = "reference/bench.rs"]
mod bench;
#[path = "reference/curves.rs"]
mod curves;
#[path = "reference/dividers.rs"]
mod dividers;
#[path = "reference/examples.rs"]
mod examples;
#[path = "reference/interpolation.rs"]
mod interpolation;
#[path = "reference/misprints.rs"]
mod misprints;
#[path = "reference/scales.rs"]
mod scales;
#[path = "reference/sheet.rs"]
mod sheet;
#[path = "reference/tolerances.rs"]
mod tolerances;
#[path = "reference/windows.rs"]
mod windows;
