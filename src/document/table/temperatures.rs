//! Tables over temperature: at which temperatures their rows are, and the columns that say so.

use super::{Ask, Cell, Column, Show};
use crate::model::strip;
use crate::quantity::{Interval, Step, Temperature, Unit, Units, degrees, key_of};
use crate::words::Message;

/// More rows than anyone reads.
const MOST_ROWS: f64 = 1e5;

/// The temperatures of the rows: from one end to the other, a step apart; both ends are
/// rows, so that the last step may be shorter.
///
/// # Errors
/// When the ends change places or lie outside what is known of the thing, or
/// the step gives no table.
pub(super) fn temperatures(
    ask: &Ask<'_>,
    (id, usual, known): (&str, Interval<Temperature>, Interval<Temperature>),
    usual_step: Step,
) -> Result<Vec<Temperature>, Message> {
    let step = ask.units.step(ask.step.unwrap_or(usual_step));
    let round = round_ends(ask, usual, step);
    let (from, to) = (ask.from.unwrap_or(round.low), ask.to.unwrap_or(round.high));
    let shown = Temperature::to_hundredths;
    if let Some(end) = [from, to].into_iter().find(|end| !known.contains(end)) {
        return Err(Message::new("run-table-outside")
            .with("at", shown(end))
            .with("id", id)
            .with("low", shown(known.low))
            .with("high", shown(known.high)));
    }
    if from > to {
        return Err(Message::new("run-table-reversed").with("from", shown(from)).with("to", shown(to)));
    }
    let many = (to.celsius() - from.celsius()) / step.kelvins();
    if !(step.kelvins() > 0.0 && many <= MOST_ROWS) {
        return Err(Message::new("run-table-step").with("step", step));
    }
    let hair = 1e-9;
    let counted = std::iter::successors(Some(0.0), |index| Some(index + 1.0));
    let within = counted.take_while(|index| *index <= many + hair);
    // Whole multiples are computed as such: 50 °F is 10 °C to the last bit.
    let first = step.count_of(from);
    let first = if (first - first.round()).abs() <= hair { first.round() } else { first };
    let at = |index: f64| match ask.units {
        Units::Us | Units::Metric => step.multiple(first + index),
        Units::Both => Temperature::from_celsius(from.celsius() + index * step.kelvins()),
    };
    let mut all: Vec<Temperature> = within.map(at).collect();
    // The upper end is a row of its own where the steps do not meet it.
    if many - libm::floor(many + hair) > hair {
        all.push(to);
    }
    Ok(all)
}

/// The ends of a table that nobody asked for others of: where it has one scale the outermost
/// multiples of the step, since the range of the specs may be round on the other one.
fn round_ends(ask: &Ask<'_>, usual: Interval<Temperature>, step: Step) -> Interval<Temperature> {
    if ask.units == Units::Both || step.degrees() <= 0.0 {
        return usual;
    }
    let rows = strip::temperatures(usual, step);
    let ends = rows.first().zip(rows.last());
    ends.map_or(usual, |(low, high)| Interval { low: *low, high: *high })
}

/// A column for each scale of temperature; `name` is the key without its scale.
pub(in crate::document) fn temperature_columns(units: Units, name: &str, show: Show) -> Vec<Column> {
    let column = |scale: &Unit| Column::new(format!("{name}_{}", key_of(*scale)), scale.symbol(), show);
    units.scales().iter().map(column).collect()
}

/// The cells of those columns.
pub(in crate::document) fn temperature_cells(units: Units, at: Temperature) -> Vec<Cell> {
    units.scales().iter().map(|scale| Cell::from(degrees(at, *scale))).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rows(step: f64) -> Vec<f64> {
        let whole = Interval { low: Temperature::from_celsius(-20.0), high: Temperature::from_celsius(60.0) };
        let step = Step::of_kelvins(step);
        let rows = temperatures(&Ask::default(), ("demo", whole, whole), step);
        rows.expect("a table").into_iter().map(Temperature::celsius).collect()
    }

    #[test]
    fn the_upper_end_is_the_last_row_once() {
        assert_eq!(rows(40.0), [-20.0, 20.0, 60.0]);
        assert_eq!(rows(30.0), [-20.0, 10.0, 40.0, 60.0]);
        assert_eq!(rows(1000.0), [-20.0, 60.0]);
        // A tenth is no binary number, and 800 of them are still no row more.
        assert_eq!(rows(0.1).len(), 801);
    }
}
