//! Light sensors.
