//! From a curve and a tolerance as written to ones that can be computed.
//!
//! Rules call these too: a rule that needs the curve asks for it here and
//! stays silent where there is none, because another rule has said why.

mod parts;

pub(super) use parts::{feedback, sense};
pub use parts::{ladder, ladder_contacts, light, transducer, truth_table};

use crate::physics::circuit;
use crate::physics::curve::{
    BetaCurve, Curve, CurveError, Platinum, SiliconPtc, SteinhartHart, SteinhartHart4, Table,
};
use crate::physics::decision::Rule;
use crate::physics::tolerance::Tolerance;
use crate::quantity::{Ratio, Resistance, Temperature, Toleranced, Voltage};
use crate::spec;

/// The curve of a sensor; `None` where a part of it was not given.
///
/// # Errors
/// When the given parts make no curve.
pub fn curve(written: &spec::Curve) -> Option<Result<Curve, CurveError>> {
    Some(match written {
        spec::Curve::Beta { resistance, at, beta } => {
            let (resistance, at, beta) = (resistance.as_ref()?, at.as_ref()?, beta.as_ref()?);
            BetaCurve::new(resistance.value, at.value, beta.value).map(Curve::Beta)
        }
        spec::Curve::SteinhartHart { a, b, c } => {
            let (a, b, c) = (a.as_ref()?.value, b.as_ref()?.value, c.as_ref()?.value);
            SteinhartHart::new(a, b, c).map(Curve::SteinhartHart)
        }
        spec::Curve::SteinhartHart4 { resistance, a, b, c, d } => {
            let terms = [a.as_ref()?.value, b.as_ref()?.value, c.as_ref()?.value, d.as_ref()?.value];
            // Coefficients without a resistance are for R in ohms, as those of three terms are.
            let ohm = Resistance::from_ohms(1.0);
            let base = resistance.as_ref().map_or(ohm, |resistance| resistance.value);
            SteinhartHart4::new(terms, base).map(Curve::SteinhartHart4)
        }
        spec::Curve::Platinum { resistance } => {
            Platinum::new(resistance.as_ref()?.value).map(Curve::Platinum)
        }
        spec::Curve::SiliconPtc { resistance, at, a, b } => {
            let (resistance, at) = (resistance.as_ref()?.value, at.as_ref()?.value);
            SiliconPtc::new(resistance, at, a.as_ref()?.value, b.as_ref()?.value).map(Curve::SiliconPtc)
        }
        spec::Curve::Table { rows, .. } => column(rows, |row| row.nominal).map(Curve::Table),
    })
}

/// The tolerance of a sensor; `None` where it was not given whole.
///
/// A resistance tolerance holds at its rated temperature, and grows away from
/// it only as the B value's tolerance says. On a beta curve the rated
/// temperature is the curve's own; a B tolerance that was not given is not
/// taken for zero. On any other curve a resistance tolerance without `at` and
/// `beta` is meant for every temperature; a rising curve has no B value at all.
#[must_use]
pub fn tolerance(sensor: &spec::Sensor) -> Option<Tolerance> {
    let curve = &sensor.curve.as_ref()?.value;
    let Some(given) = sensor.tolerance.as_ref().map(|tolerance| &tolerance.value) else {
        return columns(curve);
    };
    if let Some(difference) = &given.temperature {
        return Some(Tolerance::Temperature(difference.value));
    }
    if let Some(class) = &given.class {
        let platinum = matches!(curve, spec::Curve::Platinum { .. });
        return platinum.then_some(Tolerance::Platinum(class.value));
    }
    let resistance = given.resistance.as_ref()?.value;
    let rated_by_curve: Option<Temperature> = match curve {
        spec::Curve::Beta { at, .. } => at.as_ref().map(|at| at.value),
        _ => None,
    };
    let rated = given.at.as_ref().map(|at| at.value).or(rated_by_curve);
    match (rated, &given.beta) {
        (Some(at), Some(beta)) => Some(Tolerance::Rated { resistance, beta: beta.value, at }),
        // The same part of R at every temperature: no growth, so any temperature
        // of the curve will do as the rated one.
        (None, None) => {
            let at = self::curve(curve)?.ok()?.domain().low;
            Some(Tolerance::Rated { resistance, beta: Ratio::new(0.0), at })
        }
        _ => None,
    }
}

/// The circuit of a sensor; `None` where resistor or reference was not given.
#[must_use]
pub fn circuit(
    written: &spec::Circuit,
    system_reference: Option<&spec::Sourced<Toleranced<Voltage>>>,
) -> Option<circuit::Circuit> {
    let reference = written.reference.as_ref().or(system_reference)?;
    let topology = match written.topology.as_ref()?.value {
        spec::Topology::PullUp => circuit::Topology::PullUp,
        spec::Topology::PullDown => circuit::Topology::PullDown,
    };
    let value = |part: &Option<spec::Sourced<_>>| part.as_ref().map(|part| part.value);
    let reader = match &written.reader {
        None => None,
        Some(reader) => Some(circuit::Reader {
            resistor: reader.resistor.as_ref()?.value,
            reference: reader.reference.as_ref().map(|reference| reference.value),
        }),
    };
    Some(circuit::Circuit {
        switched: value(&written.switched),
        series: value(&written.series),
        parallel: value(&written.parallel),
        reader,
        offset: written.return_offset.as_ref().map(|offset| offset.value),
        ..circuit::Circuit::divider(topology, written.resistor.as_ref()?.value, reference.value)
    })
}

/// The decision rule of a shop; `None` where it gave none.
///
/// A guard band is the whole expanded uncertainty, w = U, unless the shop says
/// which part of it: that is what the word means in ILAC-G8:09/2019 (as quoted).
pub(super) fn decision(shop: &spec::Shop) -> Option<Rule> {
    Some(match shop.decision.as_ref()?.value {
        spec::Decision::Simple => Rule::Simple,
        spec::Decision::Guarded => {
            let multiple = shop.guard.as_ref().map_or(Ratio::new(1.0), |guard| guard.value);
            Rule::Guarded { multiple }
        }
    })
}

/// The converter of a circuit; `None` where nothing of it was given.
pub(super) fn converter(written: &spec::Converter) -> Option<circuit::Converter> {
    let bits = written.bits.as_ref().and_then(|bits| bits_of(bits.value));
    let plausible = written.plausible.as_ref().map(|plausible| plausible.value);
    (bits.is_some() || plausible.is_some()).then_some(circuit::Converter { bits, plausible })
}

/// A whole number of bits that converters have.
#[must_use]
pub fn bits_of(number: f64) -> Option<circuit::Bits> {
    (0..=u8::MAX).find(|&bits| f64::from(bits).total_cmp(&number).is_eq()).and_then(circuit::Bits::new)
}

/// The min and max columns of a table, where it has them.
fn columns(curve: &spec::Curve) -> Option<Tolerance> {
    let spec::Curve::Table { rows, .. } = curve else { return None };
    if rows.is_empty() || rows.iter().any(|row| row.limits.is_none()) {
        return None;
    }
    let limit = |row: &spec::Row| row.limits.unwrap_or((row.nominal, row.nominal));
    Some(Tolerance::Columns {
        low: column(rows, |row| limit(row).0).ok()?,
        high: column(rows, |row| limit(row).1).ok()?,
    })
}

fn column(
    rows: &[spec::Row],
    of: impl Fn(&spec::Row) -> crate::quantity::Resistance,
) -> Result<Table, CurveError> {
    let points: Vec<_> = rows.iter().map(|row| (row.temperature, of(row))).collect();
    Table::new(&points)
}
