//! Light sensors: a photocurrent through a resistor or into a pull-up.
