//! Position feedback: a wiper on a track, and the circuit that reads it.
