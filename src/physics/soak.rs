//! Whether sensors that were left to settle together agree.
