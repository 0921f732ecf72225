//! A minimal set to begin with: valid, every line explained, its values examples.

/// Its files by name.
pub const SCAFFOLD: &[(&str, &str)] = &[
    ("shop.toml", include_str!("scaffold/shop.toml")),
    ("system.toml", include_str!("scaffold/system.toml")),
    ("papers.toml", include_str!("scaffold/papers.toml")),
];
