//! Coefficients of a thermistor from points of its table.
