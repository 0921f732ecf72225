//! Panel modes: the fewest that show every forced value.
