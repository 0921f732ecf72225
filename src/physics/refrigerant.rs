//! Saturation of a refrigerant, superheat and subcooling.
