//! The templates as they were when the binary was built.

/// Names one template and embeds its text.
macro_rules! template {
    ($path:literal) => {
        ($path, include_str!(concat!("../../templates/", $path)))
    };
}

/// Every built-in template: its path below `templates/` and its text.
pub const TEMPLATES: &[(&str, &str)] = &[
    template!("actuator-card.typ"),
    template!("driver-card.typ"),
    template!("parts/driver-circuit.typ"),
    template!("parts/actuator-circuit.typ"),
    template!("parts/block-diagram.typ"),
    template!("checklist.typ"),
    template!("connector-card.typ"),
    template!("index.typ"),
    template!("air-card.typ"),
    template!("mode-card.typ"),
    template!("request-card.typ"),
    template!("parts/caution.typ"),
    template!("parts/matrix.typ"),
    template!("parts/run.typ"),
    template!("parts/timeline.typ"),
    template!("parts/chart.typ"),
    template!("parts/code.typ"),
    template!("parts/far.typ"),
    template!("parts/face.typ"),
    template!("parts/evidence.typ"),
    template!("parts/fields.typ"),
    template!("parts/figures.typ"),
    template!("parts/furniture.typ"),
    template!("parts/lists.typ"),
    template!("parts/part-circuit.typ"),
    template!("parts/part-sides.typ"),
    template!("parts/pin-table.typ"),
    template!("parts/part.typ"),
    template!("parts/pins.typ"),
    template!("parts/place.typ"),
    template!("parts/plot.typ"),
    template!("parts/side2.typ"),
    template!("parts/signature.typ"),
    template!("parts/steps.typ"),
    template!("parts/strip.typ"),
    template!("strip-card.typ"),
    template!("parts/symbols.typ"),
    template!("parts/table.typ"),
    template!("parts/tests.typ"),
    template!("parts/topology.typ"),
    template!("proof.typ"),
    template!("light-card.typ"),
    template!("parts/waveform.typ"),
    template!("report.typ"),
    template!("sensor-card.typ"),
    template!("system-card.typ"),
    template!("symptoms.typ"),
    template!("test-sheet.typ"),
    template!("theme.typ"),
    template!("transducer-card.typ"),
    template!("wall-card.typ"),
];
