//! A pressure transducer's volts and ratios over pressure.

use super::actuator::volts;
use super::{Ask, Cell, Column, Show, Table, not_over_temperature};
use crate::model::{Model, Transducer};
use crate::physics::transducer::{Sense, Transducer as Line};
use crate::quantity::{Pressure, Ratio, Rounding, Unit, Units};
use crate::words::{Message, Words};

/// The most rows between the two ends.
const MOST_STEPS: f64 = 20.0;

/// The table of a transducer.
pub(super) fn of_transducer(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    not_over_temperature(ask)?;
    let missing = || Message::new("run-no-such-table").with("id", id);
    let transducer = model.transducers.get(id).ok_or_else(missing)?;
    let pins = transducer.pins.iter().flat_map(|pin| pin.pin.facts());
    let sense = match transducer.sense {
        Sense::Absolute => "table-note-absolute",
        Sense::Gauge => "table-note-gauge",
    };
    let decimals = |decimals| Show::Decimals(decimals, Rounding::Nearest);
    let volts = ["voltage_min_v", "voltage_nom_v", "voltage_max_v"];
    let ratios = ["ratio_min", "ratio_nom", "ratio_max"];
    let line = transducer.line.as_ref();
    let formulas = line.map(|_| ["table-formula-transducer", "table-formula-volts"]);
    Ok(Table {
        title: transducer.title.clone(),
        notes: [sense, "run-table-no-meter", "caution-transducer", "caution-refrigerant", "caution-law"]
            .map(|id| words.word(id))
            .to_vec(),
        columns: ask
            .units
            .pressures()
            .iter()
            .map(|unit| Column::new(key(*unit), unit.symbol(), decimals(digits(*unit))))
            .chain(Column::band(words, volts, "V", |rounding| Show::Decimals(3, rounding)))
            .chain(Column::band(words, ratios, "V/Vref", |rounding| Show::Decimals(4, rounding)))
            .collect(),
        rows: line.map(|line| rows(ask.units, transducer, line)).unwrap_or_default(),
        formulas: formulas.into_iter().flatten().map(|id| words.word(id)).collect(),
        inputs: transducer.facts.iter().chain(pins).cloned().collect(),
    })
}

/// The key of a unit's column.
pub(in crate::document) fn key(unit: Unit) -> String {
    format!("pressure_{}", unit.symbol().to_lowercase())
}

/// The decimals of a unit's column.
pub(in crate::document) fn digits(unit: Unit) -> usize {
    match unit {
        Unit::Bar => 2,
        Unit::PoundPerSquareInch => 1,
        _ => 0,
    }
}

fn rows(units: Units, transducer: &Transducer, line: &Line) -> Vec<Vec<Cell>> {
    let row = |at: Pressure| {
        let window = line.ratio_window(at).ok().flatten();
        let ratio = [window.map(|w| w.low), line.ratio(at).ok(), window.map(|w| w.high)];
        (units.pressures().iter().map(|unit| Cell::from(unit.count_of(at))))
            .chain(volts(ratio, transducer.reference).map(Cell::from))
            .chain(ratio.map(|ratio| Cell::from(ratio.map(Ratio::part))))
            .collect()
    };
    pressures(line, unit_of(units, transducer)).into_iter().map(row).collect()
}

/// The unit that the spec gives the line's ends in, where the edition has it; a mixture, or
/// another one, is taken in the edition's own.
fn unit_of(units: Units, transducer: &Transducer) -> Unit {
    let ends = ["fact-line-low-pressure", "fact-line-high-pressure"];
    let written: Vec<&str> = (transducer.facts.iter())
        .filter(|fact| ends.contains(&fact.label))
        .filter_map(|fact| fact.written.as_deref())
        .collect();
    let in_all = |unit: &Unit| written.iter().all(|text| text.trim_end().ends_with(unit.symbol()));
    let own = units.pressures().iter().copied().filter(|unit| *unit != Unit::Kilopascal);
    own.into_iter().find(in_all).unwrap_or(units.pressure())
}

/// Both ends of the line, and the round pressures between them.
fn pressures(line: &Line, unit: Unit) -> Vec<Pressure> {
    let one = unit.count_of(Pressure::from_pascals(1.0)).map_or(1.0, |count| 1.0 / count);
    let (low, high) = (line.range().low.pascals() / one, line.range().high.pascals() / one);
    let step = round_step((high - low) / MOST_STEPS);
    // Half a step from an end a row would only repeat it.
    let first = (low / step + 0.5).ceil();
    let count = ((high / step - 0.5).floor() - first).max(-1.0);
    let between = std::iter::successors(Some(0.0), |index| Some(index + 1.0))
        .take_while(|index| *index <= count)
        .map(|index| Pressure::from_pascals((first + index) * step * one));
    std::iter::once(line.range().low).chain(between).chain([line.range().high]).collect()
}

/// The first of 0.01, 0.02, 0.05, 0.1, 0.2 … that is no smaller.
fn round_step(least: f64) -> f64 {
    let tens = std::iter::successors(Some(0.01), |ten| Some(ten * 10.0));
    tens.flat_map(|ten| [ten, 2.0 * ten, 5.0 * ten]).find(|step| *step >= least).unwrap_or(least)
}

#[cfg(test)]
mod tests {
    use super::round_step;

    #[test]
    fn steps_are_round() {
        let steps = [0.3, 1.0, 1.1, 3.0, 6.0, 160_000.0].map(round_step);
        for (step, round) in steps.into_iter().zip([0.5, 1.0, 2.0, 5.0, 10.0, 200_000.0]) {
            assert!((step - round).abs() < 1e-9, "{step} for {round}");
        }
    }
}
