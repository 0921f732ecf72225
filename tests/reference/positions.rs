//! Potentiometers, contacts and ladders.
