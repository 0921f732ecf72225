//! What must hold for every value, not only for the published ones.
//!
//! 256 cases each, the same ones in every run; `PROPTEST_CASES` asks for more
//! and `PROPTEST_RNG_SEED` for others.

use bayleaf::quantity::{Interval, Scalar, Toleranced};
use proptest::test_runner::{Config, RngSeed};

#[path = "properties/air.rs"]
mod air;
#[path = "properties/circuits.rs"]
mod circuits;
#[path = "properties/curves.rs"]
mod curves;
#[path = "properties/decisions.rs"]
mod decisions;
#[path = "properties/dictionaries.rs"]
mod dictionaries;
#[path = "properties/faults.rs"]
mod faults;
#[path = "properties/figures.rs"]
mod figures;
#[path = "properties/fits.rs"]
mod fits;
#[path = "properties/graphs.rs"]
mod graphs;
#[path = "properties/loads.rs"]
mod loads;
#[path = "properties/modes.rs"]
mod modes;
#[path = "properties/positions.rs"]
mod positions;
#[path = "properties/reading.rs"]
mod reading;
#[path = "properties/refrigerants.rs"]
mod refrigerants;
#[path = "properties/requests.rs"]
mod requests;

/// How often a property is tried. Nothing is written into the tree on a failure.
fn every_run() -> Config {
    let mut config = Config { failure_persistence: None, ..Config::default() };
    if config.rng_seed == RngSeed::Random {
        config.rng_seed = RngSeed::Fixed(0);
    }
    config
}

/// A nominal value with a part of it to either side.
fn plus_minus<T: Scalar>(nominal: f64, part: f64) -> Toleranced<T> {
    let limits =
        Interval { low: T::from_si(nominal * (1.0 - part)), high: T::from_si(nominal * (1.0 + part)) };
    Toleranced { nominal: T::from_si(nominal), limits: Some(limits) }
}
