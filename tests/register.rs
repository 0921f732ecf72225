//! The register: what it says, what it refuses, and what survives.

mod register {
    mod broken;
}
