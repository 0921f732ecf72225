//! A panel's set-point scales, each kept as given.

use super::fact::Fact;
use crate::physics::scale::PrintedScales;
use crate::quantity::SetPoints;

/// A panel.
#[derive(Debug)]
pub struct Panel {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// The scale it shows in °C; never computed from the other one.
    pub celsius: Option<SetPoints>,
    /// The scale it shows in °F; never computed from the other one.
    pub fahrenheit: Option<SetPoints>,
    /// What the lower and the upper end mean: words, no temperatures.
    pub marks: [Option<String>; 2],
    /// Scales, marks, and whether they are said to be separate.
    pub facts: Vec<Fact>,
}

impl Panel {
    /// Both scales, where it has both.
    #[must_use]
    pub fn scales(&self) -> Option<PrintedScales> {
        Some(printed_scales(self.celsius?, self.fahrenheit?))
    }
}

/// Two scales of one panel, ready to be compared.
#[must_use]
pub fn printed_scales(celsius: SetPoints, fahrenheit: SetPoints) -> PrintedScales {
    PrintedScales {
        celsius: celsius.ends,
        celsius_digit: celsius.digit,
        fahrenheit: fahrenheit.ends,
        fahrenheit_digit: fahrenheit.digit,
    }
}
