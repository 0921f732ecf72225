//! Preferred numbers: the resistor that can be bought.
