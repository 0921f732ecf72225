//! Moist and mixed air.
