//! The arithmetic of one loaded track with exact values.

use super::{LoadTo, Stops};

/// Between these a resistance is one that somebody can measure.
const LEAST_OHMS: f64 = 1e-6;
const MOST_OHMS: f64 = 1e12;

/// One set of exact values: a nominal one or a corner.
#[derive(Debug, Clone, Copy)]
pub(super) struct Track {
    /// Ohms of the track, its two ends and the wiper's contact.
    pub(super) track: f64,
    pub(super) low_end: f64,
    pub(super) high_end: f64,
    pub(super) contact: f64,
    /// Conductances of the control unit's load at the pin.
    pub(super) to_ground: f64,
    pub(super) to_reference: f64,
    /// Conductance of the meter, to ground.
    pub(super) meter: f64,
}

impl Track {
    /// Sets the control unit's load.
    pub(super) fn load(&mut self, ohms: f64, to: LoadTo) {
        let (to_ground, to_reference) = match to {
            LoadTo::Ground => (1.0 / ohms, 0.0),
            LoadTo::Reference => (0.0, 1.0 / ohms),
        };
        (self.to_ground, self.to_reference) = (to_ground, to_reference);
    }

    /// Whether the values are those of a part that exists, with room for any arithmetic.
    pub(super) fn is_physical(&self) -> bool {
        let rest = [self.low_end, self.high_end, self.contact];
        let conductances = [self.to_ground, self.to_reference, self.meter];
        (LEAST_OHMS..=MOST_OHMS).contains(&self.track)
            && rest.iter().all(|ohms| (0.0..=MOST_OHMS).contains(ohms))
            && conductances.iter().all(|siemens| (0.0..=1.0 / LEAST_OHMS).contains(siemens))
    }

    /// The same without the meter.
    pub(super) fn unmetered(&self) -> Self {
        Self { meter: 0.0, ..*self }
    }

    pub(super) fn total(&self) -> f64 {
        self.low_end + self.track + self.high_end
    }

    /// Ohms below the wiper, without the contact.
    pub(super) fn below(&self, position: f64) -> f64 {
        self.low_end + position * self.track
    }

    /// All conductances at the pin.
    pub(super) fn conductance(&self) -> f64 {
        self.to_ground + self.to_reference + self.meter
    }

    /// The reading with the wiper at a part of the track.
    pub(super) fn ratio(&self, position: f64) -> f64 {
        self.at_share(self.below(position) / self.total())
    }

    /// The reading with a share of the whole ohms below the wiper.
    pub(super) fn at_share(&self, share: f64) -> f64 {
        self.pin(share, self.contact + self.total() * share * (1.0 - share))
    }

    /// The pin's part of the reference, fed from an open voltage through a resistance.
    pub(super) fn pin(&self, open: f64, source: f64) -> f64 {
        (open + source * self.to_reference) / (1.0 + source * self.conductance())
    }

    /// The share of the whole ohms below the wiper that gives a reading; `None` off 0 to 1.
    pub(super) fn share(&self, reading: f64) -> Option<f64> {
        if !(-super::HAIR..=1.0 + super::HAIR).contains(&reading) {
            return None;
        }
        let slope = reading * self.conductance() - self.to_reference;
        let bend = slope * self.total();
        let constant = reading + slope * self.contact;
        let linear = 1.0 - bend;
        let root = libm::sqrt(linear * linear + 4.0 * bend * constant);
        // The two forms of the same root; each is free of cancellation on its side.
        let share =
            if linear >= 0.0 { 2.0 * constant / (linear + root) } else { (root - linear) / (2.0 * bend) };
        let hair = super::HAIR;
        (-hair..=1.0 + hair).contains(&share).then_some(share)
    }

    /// The share of the whole ohms at a part of the travel between two stops.
    pub(super) fn between(&self, travel: f64, stops: Stops) -> Option<f64> {
        let (low, high) = (self.share(stops.low.part())?, self.share(stops.high.part())?);
        Some(low * (1.0 - travel) + high * travel)
    }

    /// Where the reading, as a function of the track's ohms, turns.
    ///
    /// It is a quotient of two quadratics in the track's T, (a + s′ g_r)/(S + s′ G)
    /// with s′ = R_contact S + a (S − a); its slope vanishes at the roots of
    /// (n₁d₀ − n₀d₁) + 2 (n₂d₀ − n₀d₂) T + (n₂d₁ − n₁d₂) T².
    pub(super) fn turning_tracks(&self, position: f64) -> Vec<f64> {
        let (below, above) = ((self.low_end, position), (self.high_end, 1.0 - position));
        let whole = (below.0 + above.0, 1.0);
        let source = [
            self.contact * whole.0 + below.0 * above.0,
            self.contact + below.0 * above.1 + below.1 * above.0,
            below.1 * above.1,
        ];
        let numerator = [below.0, below.1, 0.0];
        let denominator = [whole.0, whole.1, 0.0];
        let [n0, n1, n2] = plus(numerator, source, self.to_reference);
        let [d0, d1, d2] = plus(denominator, source, self.conductance());
        let (c, b, a) = (n1 * d0 - n0 * d1, 2.0 * (n2 * d0 - n0 * d2), n2 * d1 - n1 * d2);
        let square = b * b - 4.0 * a * c;
        if square < 0.0 {
            return Vec::new();
        }
        // q = −(b + sign(b) √…)/2: the roots q/a and c/q, neither of them by cancellation.
        let q = -0.5 * (b + libm::sqrt(square).copysign(b));
        [q / a, c / q].into_iter().filter(|root| root.is_finite()).collect()
    }
}

/// A quadratic plus a factor times another.
fn plus(a: [f64; 3], b: [f64; 3], factor: f64) -> [f64; 3] {
    [a[0] + factor * b[0], a[1] + factor * b[1], a[2] + factor * b[2]]
}
