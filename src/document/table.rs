//! A sensor's table as numbers for other programs: unrounded, one row per step.

use serde::Serialize;

use super::sensor_card::reading::Readings;
use crate::model::{Multimeter, Sensor};
use crate::physics::Band;
use crate::quantity::{Interval, Ratio, Resistance, Temperature, TemperatureDifference, Voltage};

/// One row. A field is `None` where its value cannot be computed: a limit
/// without a tolerance, a voltage without a circuit.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TableRow {
    /// Temperature, °C.
    pub temperature_c: f64,
    /// Temperature, °F.
    pub temperature_f: f64,
    /// Least resistance of a good part, Ω.
    pub resistance_min_ohm: Option<f64>,
    /// Nominal resistance, Ω.
    pub resistance_nom_ohm: Option<f64>,
    /// Greatest resistance of a good part, Ω.
    pub resistance_max_ohm: Option<f64>,
    /// Least voltage of a good part in a good circuit, V.
    pub voltage_min_v: Option<f64>,
    /// Nominal voltage, V.
    pub voltage_nom_v: Option<f64>,
    /// Greatest voltage of a good part in a good circuit, V.
    pub voltage_max_v: Option<f64>,
    /// Least part of the reference.
    pub ratio_min: Option<f64>,
    /// Nominal part of the reference.
    pub ratio_nom: Option<f64>,
    /// Greatest part of the reference.
    pub ratio_max: Option<f64>,
    /// Slope (1/R) dR/dT, %/K.
    pub slope_percent_per_k: Option<f64>,
}

/// The names of the columns, in their order.
pub const COLUMNS: [&str; 12] = [
    "temperature_c",
    "temperature_f",
    "resistance_min_ohm",
    "resistance_nom_ohm",
    "resistance_max_ohm",
    "voltage_min_v",
    "voltage_nom_v",
    "voltage_max_v",
    "ratio_min",
    "ratio_nom",
    "ratio_max",
    "slope_percent_per_k",
];

/// Rows from the lower end of `range` to the upper, a step apart.
pub fn rows(
    sensor: &Sensor,
    meter: Option<&Multimeter>,
    range: Interval<Temperature>,
    step: TemperatureDifference,
) -> impl Iterator<Item = TableRow> {
    let readings = Readings::new(sensor, meter);
    let hair = 1e-9;
    let steps = (range.high.celsius() - range.low.celsius()) / step.kelvins() + hair;
    let mut index = 0.0;
    std::iter::from_fn(move || {
        let at = range.low.celsius() + index * step.kelvins();
        let row = (index <= steps).then(|| row(&readings, Temperature::from_celsius(at)));
        index += 1.0;
        row
    })
}

fn row(readings: &Readings<'_>, at: Temperature) -> TableRow {
    let ohms = readings.ohm_band(at);
    let volts = readings.volt_band(at);
    let ratio = readings.ratio_band(at);
    let of = |band: Option<Band<f64>>, nominal: Option<f64>| {
        (band.map(|b| b.low), band.map(|b| b.nominal).or(nominal), band.map(|b| b.high))
    };
    let (resistance_min_ohm, resistance_nom_ohm, resistance_max_ohm) =
        of(ohms.map(|band| band.map(Resistance::ohms)), readings.ohms(at).map(|ohms| ohms.ohms()));
    let nominal = readings.volts(at).map(|volts| volts.volts());
    let (voltage_min_v, voltage_nom_v, voltage_max_v) =
        of(volts.map(|band| band.map(Voltage::volts)), nominal);
    let reference = readings.circuit().map(|circuit| circuit.reference.nominal.volts());
    let (ratio_min, ratio_nom, ratio_max) = of(
        ratio.map(|band| band.map(Ratio::part)),
        nominal.zip(reference).map(|(volts, reference)| volts / reference),
    );
    TableRow {
        temperature_c: at.celsius(),
        temperature_f: at.fahrenheit(),
        resistance_min_ohm,
        resistance_nom_ohm,
        resistance_max_ohm,
        voltage_min_v,
        voltage_nom_v,
        voltage_max_v,
        ratio_min,
        ratio_nom,
        ratio_max,
        slope_percent_per_k: readings.sensor.curve.slope(at).ok().map(|slope| 100.0 * slope),
    }
}
