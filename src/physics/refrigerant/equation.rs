//! The ancillary equations of saturation, one for each refrigerant.

use super::Refrigerant;

/// p = p_c exp[(T_c/T) Σ nᵢ θ^tᵢ] with θ = 1 − T/T_c.
#[derive(Debug)]
pub(super) struct Equation {
    /// T_c, the reducing temperature of the equation.
    pub critical_kelvins: f64,
    /// p_c.
    pub critical_pascals: f64,
    /// (nᵢ, tᵢ).
    pub terms: &'static [(f64, f64)],
}

/// R-134a.
///
/// # Source
/// Ancillary of CoolProp 8.0.0, refitted there to J. Phys. Chem. Ref. Data 23 (1994) 657;
/// within 0.0043 % of it from −30 °C to 80 °C (tests/reference/05b). The form printed in
/// the paper itself is 0.0139 % off, with constants that are known from memory only.
const R134A: Equation = Equation {
    critical_kelvins: 374.21,
    critical_pascals: 4_059_280.0,
    terms: &[
        (0.433_147_828_729_104_7, 0.845),
        (-9.090_302_559_074_352, 0.99),
        (2.147_607_412_521_770_3, 1.14),
        (-1.557_687_007_603_464, 2.651),
        (-3.502_032_897_269_860_4, 4.507),
        (14.958_442_337_201_044, 17.235),
    ],
};

/// R-1234yf.
///
/// # Source
/// Ancillary of CoolProp 8.0.0 with the exponents 1, 1.5, 2, 4, 9: within 0.0233 % of the
/// equation of state, Int. J. Thermophys. (2022), from −30 °C to 80 °C (tests/reference/05b).
/// It is stored there with a 3 where the 2 is, which is 21 % off at −30 °C; that the 2 is
/// meant is our reading, borne out by 05a and by the fluid's boiling point, −29.46 °C.
const R1234YF: Equation = Equation {
    critical_kelvins: 367.85,
    critical_pascals: 3_384_400.0,
    terms: &[(-7.4507, 1.0), (2.164, 1.5), (-1.674, 2.0), (-3.318, 4.0), (-1.617, 9.0)],
};

///
///
/// # Source
/// Ancillary of CoolProp 8.0.0, refitted there to J. Phys. Chem. Ref. Data 25 (1996) 1509;
/// within 0.001 % of it from −30 °C to 30 °C (tests/reference/05b). Equation 3.13 of the
/// paper itself is 0.0041 % off, with constants that are known from memory only.
const R744: Equation = Equation {
    critical_kelvins: 304.1282,
    critical_pascals: 7_377_300.0,
    terms: &[
        (-5.867_399_337_600_407, 0.983),
        (-7.109_695_500_152_74, 1.322),
        (11.022_781_986_239_263, 1.488),
        (4.826_076_405_021_999_5, 2.807),
        (-6.240_803_382_557_819, 3.571),
        (-6.700_964_257_243_9, 1.941),
    ],
};

/// Nearer than this to the critical point (0.3 mK) the slope stays what it is here: the
/// fitted exponents below 1 would make it infinite, which it is not.
const NEAREST: f64 = 1e-6;

impl Refrigerant {
    pub(super) fn equation(self) -> &'static Equation {
        match self {
            Self::R134a => &R134A,
            Self::R1234yf => &R1234YF,
            Self::R744 => &R744,
        }
    }
}

impl Equation {
    /// The saturation pressure in pascals at a temperature in kelvins.
    pub(super) fn pressure(&self, kelvins: f64) -> f64 {
        let theta = (1.0 - kelvins / self.critical_kelvins).max(0.0);
        let sum: f64 = self.terms.iter().map(|&(n, t)| n * libm::pow(theta, t)).sum();
        self.critical_pascals * libm::exp(self.critical_kelvins / kelvins * sum)
    }

    /// dp/dT in pascals per kelvin: −(p/T) [(T_c/T) Σ nᵢ θ^tᵢ + Σ nᵢ tᵢ θ^(tᵢ − 1)].
    pub(super) fn slope(&self, kelvins: f64) -> f64 {
        let theta = (1.0 - kelvins / self.critical_kelvins).max(NEAREST);
        let sum: f64 = self.terms.iter().map(|&(n, t)| n * libm::pow(theta, t)).sum();
        let rate: f64 = self.terms.iter().map(|&(n, t)| n * t * libm::pow(theta, t - 1.0)).sum();
        -self.pressure(kelvins) / kelvins * (self.critical_kelvins / kelvins * sum + rate)
    }
}
