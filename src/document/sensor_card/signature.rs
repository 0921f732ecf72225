//! How the error of each fault grows over the temperature: its signature.
//!
//! Read at two temperatures, a fault in the wires and one in a part give themselves away.

use schemars::JsonSchema;
use serde::Serialize;

use super::faults;
use super::plot::{STEPS, inside};
use crate::document::Context;
use crate::document::axis::{Axis, Tick, tidy};
use crate::document::bench::Bench;
use crate::document::figures;
use crate::model::Card;
use crate::physics::fault::{Fault, Kind, Other};
use crate::quantity::{Rounding, figure};
use crate::words::Message;

/// Steps of a drawn line.
const PIECES: u32 = 24;

/// A size with no larger error than this is drawn if a family has one, K.
const MOST: f64 = 25.0;

/// Where even the smallest goes beyond that, the axis follows it to here; a line that leaves
/// it ends there, K.
const END: f64 = 60.0;

/// Two plots of errors: of faults in the wires, of faults in parts.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Signature {
    /// What is plotted.
    title: String,
    /// What is said with it, a text each.
    notes: Vec<String>,
    /// Faults in the wires, faults in parts.
    panels: Vec<Panel>,
}

/// One of the plots.
#[derive(Debug, Serialize, JsonSchema)]
struct Panel {
    /// Which faults.
    title: String,
    /// The axis of the temperature.
    x: Scale,
    /// The axis of the error.
    y: Scale,
    /// `°C`.
    x_unit: &'static str,
    /// `K`.
    y_unit: &'static str,
    /// Where no error is, in parts of the height.
    zero: f64,
    /// A line for each fault.
    lines: Vec<Line>,
    /// What it shows, for readers who cannot see it.
    alt: String,
}

/// What stands along an axis.
#[derive(Debug, Serialize, JsonSchema)]
struct Scale {
    /// Values along it.
    ticks: Vec<Tick>,
}

/// The error of one fault over the temperature.
#[derive(Debug, Serialize, JsonSchema)]
struct Line {
    /// The fault: `1.00 kΩ in the wires`.
    name: String,
    /// The error at the cold end and at the hot end.
    ends: [String; 2],
    /// Points, x and y each, 0 to 1.
    course: Vec<[f64; 2]>,
}

/// The families of each plot.
const FAMILIES: [(&str, [Kind; 3]); 2] = [
    ("card-signature-wires", [Kind::Series, Kind::Leak, Kind::LiftedReturn]),
    ("card-signature-parts", [Kind::ShiftedResistance, Kind::ShiftedSlope, Kind::WrongResistor]),
];

/// Composes both plots; `None` where circuit or range allow none.
pub(super) fn compose(context: Context<'_>, bench: &Bench<'_>, card: &Card) -> Option<Signature> {
    let Context { words, units, .. } = context;
    bench.sensor.circuit.as_ref()?;
    let range = card.range_of(bench.sensor);
    let (cold, hot) = (units.degrees(range.low), units.degrees(range.high));
    // Over less than this nothing shows how an error grows.
    if hot - cold < 5.0 * units.per_kelvin() {
        return None;
    }
    let others: Vec<Other<'_>> = bench.others.iter().map(|(_, other)| *other).collect();
    let subject = bench.subject(&others);
    let error = |fault: &Fault, share: f64| {
        let at = inside(units.temperature(cold + share * (hot - cold)), range);
        let believed = subject.believed(Some(fault), at)?;
        let plausible = subject.curve.resistance(believed).is_ok_and(|ohms| bench.is_plausible(ohms));
        plausible.then(|| units.degrees(believed) - units.degrees(at))
    };
    let end_of_axis = END * units.per_kelvin();
    let sizes = Fault::dictionary(0);
    let panel = |(title, family): (&'static str, [Kind; 3])| {
        let drawn = |kind: Kind| {
            let of_kind = sizes.iter().filter(|fault| fault.kind() == Some(kind));
            largest_drawn(
                of_kind.map(|fault| (*fault, course(|share| error(fault, share)))).collect(),
                MOST * units.per_kelvin(),
            )
        };
        let lines: Vec<(Fault, Vec<(f64, f64)>)> = family.into_iter().filter_map(drawn).collect();
        let within = |end: fn(f64, f64) -> f64| {
            let errors = lines.iter().flat_map(|(_, points)| points).map(|(_, error)| *error);
            errors.fold(0.0, end).clamp(-end_of_axis, end_of_axis)
        };
        let (low, high) = (within(f64::min), within(f64::max));
        if high - low < 0.1 * units.per_kelvin() {
            return None;
        }
        let x = Axis::exactly(cold, hot, STEPS)?;
        let y = Axis::around(low, high, STEPS)?;
        let line = |(fault, points): &(Fault, Vec<(f64, f64)>)| {
            let inside = |(_, error): &&(f64, f64)| y.holds(*error);
            let course = points.iter().filter(inside).map(|(x, error)| [tidy(*x), y.part(*error)]);
            let end = |at: Option<&(f64, f64)>, share: f64| {
                let known = at.filter(|(x, _)| (x - share).abs() < 1e-9);
                known.map_or_else(|| "–".to_owned(), |(_, error)| shown(*error))
            };
            Line {
                name: faults::name(words, fault, bench),
                ends: [end(points.first(), 0.0), end(points.last(), 1.0)],
                course: course.collect(),
            }
        };
        let lines: Vec<Line> = lines.iter().map(line).collect();
        let unit = units.difference_unit().symbol();
        let told: Vec<String> = lines
            .iter()
            .map(|line| format!("{}: {} … {} {unit}", line.name, line.ends[0], line.ends[1]))
            .collect();
        let alt = Message::new("card-alt-signature")
            .with("title", words.word(title))
            .with("cold", figures::temperature(units, range.low))
            .with("hot", figures::temperature(units, range.high))
            .with("lines", told.join("; "));
        Some(Panel {
            title: words.word(title),
            x: Scale { ticks: x.ticks() },
            zero: y.part(0.0),
            y: Scale { ticks: y.ticks() },
            x_unit: units.symbol(),
            y_unit: unit,
            lines,
            alt: words.say(&alt),
        })
    };
    let panels: Vec<Panel> = FAMILIES.into_iter().filter_map(panel).collect();
    if panels.is_empty() {
        return None;
    }
    let ends = Message::new("card-signature-ends")
        .with("cold", figures::temperature(units, range.low))
        .with("hot", figures::temperature(units, range.high));
    Some(Signature {
        title: words.word("card-signature"),
        notes: vec![words.word("card-signature-note"), words.say(&ends)],
        panels,
    })
}

/// The error along the range; where the unit believes nothing there is none.
fn course(error: impl Fn(f64) -> Option<f64>) -> Vec<(f64, f64)> {
    let share = |piece: u32| f64::from(piece) / f64::from(PIECES);
    (0..=PIECES).filter_map(|piece| Some((share(piece), error(share(piece))?))).collect()
}

/// Of one family the size with the largest error that stays on the axis, else the one with
/// the smallest.
fn largest_drawn(family: Vec<(Fault, Vec<(f64, f64)>)>, most: f64) -> Option<(Fault, Vec<(f64, f64)>)> {
    let largest = |points: &[(f64, f64)]| points.iter().map(|(_, error)| error.abs()).fold(0.0, f64::max);
    let mut family: Vec<_> = family.into_iter().filter(|(_, points)| points.len() > 1).collect();
    family.sort_by(|(_, one), (_, other)| largest(one).total_cmp(&largest(other)));
    let inside = family.iter().rposition(|(_, points)| largest(points) <= most).unwrap_or(0);
    (inside < family.len()).then(|| family.swap_remove(inside))
}

/// An error with its sign.
fn shown(error: f64) -> String {
    let text = figure(error, 1, Rounding::Nearest);
    let sign = if error > 0.0 && text != "0.0" { "+" } else { "" };
    format!("{sign}{text}")
}
