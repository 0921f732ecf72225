//! Copper, coils, solenoids, blowers and wires.
