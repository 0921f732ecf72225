//! The pressure of the air at a height above sea level.
