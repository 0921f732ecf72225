//! Resistance and voltage drop of a wire.
