//! Panel modes and set-point scales.
