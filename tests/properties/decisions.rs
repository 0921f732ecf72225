//! Uncertainty, decision rules and risks.
