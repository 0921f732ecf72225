//! Pressure transducers: volts in proportion to reference and pressure.
