//! Position contacts: which are closed at which position.
