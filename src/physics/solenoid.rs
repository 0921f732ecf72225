//! Mean and ripple current of a solenoid that is switched on and off.
