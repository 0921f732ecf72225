//! Whether a reading passes, fails or decides nothing, and at what risk.
