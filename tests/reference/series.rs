//! Preferred numbers.
