//! Set-point scales of a panel in °C and °F.
