//! A minimal set to begin with: valid, every line explained, its values examples.

/// The file of the schema beside a set: the first line of each spec names it, for editors.
pub const SCHEMA_FILE: &str = "spec.schema.json";

/// Its files by name.
pub const SCAFFOLD: &[(&str, &str)] = &[
    ("shop.toml", include_str!("scaffold/shop.toml")),
    ("system.toml", include_str!("scaffold/system.toml")),
    ("papers.toml", include_str!("scaffold/papers.toml")),
];
