//! The register: what it says, what it refuses, what it does to papers, and what it survives.

mod register {
    mod broken;
    mod shop;
    mod stories;
    mod survival;
}
