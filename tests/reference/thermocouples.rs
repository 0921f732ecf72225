//! Thermocouple reference functions.
