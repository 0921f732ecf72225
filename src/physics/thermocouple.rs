//! The voltage of a thermocouple, and its temperature.
