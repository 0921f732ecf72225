//! The register: what it says, what it refuses, what it does to papers, and what it survives.

#[path = "pages/reader.rs"]
mod reader;

/// Without white space.
fn squeezed(text: &str) -> String {
    text.split_whitespace().collect()
}

mod register {
    mod broken;
    mod old;
    mod shop;
    mod stories;
    mod survival;
}
