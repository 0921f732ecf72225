//! What a good sensor reads, and between which limits: pure functions.
//!
//! SI inside. This room knows no file, no text, no clock and no spec: the same
//! input gives the same bits on every machine, which is why it calls `libm`
//! and never the platform's logarithm.

pub mod air;
pub mod atmosphere;
pub mod blower;
pub mod circuit;
pub mod coil;
pub mod contacts;
pub mod copper;
pub mod curve;
pub mod decision;
pub mod fault;
pub mod fit;
pub mod ladder;
pub mod light;
pub mod modes;
pub mod potentiometer;
pub mod preferred;
pub mod refrigerant;
pub mod remedy;
pub mod request;
pub mod scale;
pub mod soak;
pub mod solenoid;
pub mod thermocouple;
pub mod tolerance;
pub mod transducer;
pub mod uncertainty;
pub mod wire;

/// A nominal value between its limits.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Band<T> {
    /// The lower limit.
    pub low: T,
    /// The nominal value.
    pub nominal: T,
    /// The upper limit.
    pub high: T,
}

impl<T> Band<T> {
    /// The same band of another quantity, or of plain numbers.
    #[must_use]
    pub fn map<U>(self, of: impl Fn(T) -> U) -> Band<U> {
        Band { low: of(self.low), nominal: of(self.nominal), high: of(self.high) }
    }
}
