//! Saturation, superheat and subcooling.
