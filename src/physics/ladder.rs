//! Resistor-coded contacts on one wire.
