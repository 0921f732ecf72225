//! Fits of coefficients to points.
