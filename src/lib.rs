//! Bay cards and test sheets for the climate control of road vehicles.

pub mod cli;
pub mod diag;
pub mod document;
pub mod enclosure;
pub mod fonts;
pub mod graph;
pub mod model;
pub mod physics;
pub mod quantity;
pub mod register;
pub mod rules;
pub mod spec;
pub mod typeset;
pub mod words;
