//! The invented demo set, as it was when the binary was built.

/// Names one spec file and embeds its text.
macro_rules! spec {
    ($path:literal) => {
        ($path, include_str!(concat!("../../specs/", $path)))
    };
}

/// Every file of the demo set: its path below `specs/` and its text.
pub const DEMO: &[(&str, &str)] = &[
    spec!("curlew/air.toml"),
    spec!("curlew/actuators.toml"),
    spec!("curlew/checklists.toml"),
    spec!("curlew/connector-cards.toml"),
    spec!("curlew/connectors.toml"),
    spec!("curlew/drivers.toml"),
    spec!("curlew/mode-request-air-cards.toml"),
    spec!("curlew/modes.toml"),
    spec!("curlew/papers.toml"),
    spec!("curlew/request.toml"),
    spec!("curlew/part-cards.toml"),
    spec!("curlew/sensors.toml"),
    spec!("curlew/strip-cards.toml"),
    spec!("curlew/tests.toml"),
    spec!("heron/air.toml"),
    spec!("heron/actuators.toml"),
    spec!("heron/connector-cards.toml"),
    spec!("heron/checklists.toml"),
    spec!("heron/connectors.toml"),
    spec!("heron/drivers.toml"),
    spec!("heron/mode-request-air-cards.toml"),
    spec!("heron/modes.toml"),
    spec!("heron/papers.toml"),
    spec!("heron/part-cards.toml"),
    spec!("heron/platinum-and-silicon.toml"),
    spec!("heron/request.toml"),
    spec!("heron/sensors.toml"),
    spec!("heron/strip-cards.toml"),
    spec!("heron/tests.toml"),
    spec!("shop.toml"),
    spec!("teal/cabin.toml"),
    spec!("vehicles.toml"),
];
