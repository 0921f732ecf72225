//! The resistance of copper at a temperature: coils and wires.
