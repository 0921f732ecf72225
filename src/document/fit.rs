//! What `bayleaf fit` says: fitted formulas, their residuals, the spec lines to paste.

use serde::{Serialize, Serializer};

use super::figures::celsius;
use super::table::{Cell, Column, Show, Table};
use crate::physics::curve::Curve;
use crate::physics::fit::{Fit, FitError, Model, Residual, fit};
use crate::quantity::{Resistance, Rounding, Temperature, Unit, decimals_for, figure};
use crate::rules::suspect_row;
use crate::spec::Row;
use crate::words::{Message, Words};

/// Everything that a fit of points found, unrounded.
#[derive(Debug, Serialize)]
pub struct Fitted {
    /// How many points there are.
    pub points: usize,
    /// The row that looks mistyped, if one does. The fits include it.
    pub suspect: Option<Doubted>,
    /// One for each formula, the one with fewest coefficients first.
    pub models: Vec<FittedModel>,
}

/// A row that looks mistyped.
#[derive(Debug, Serialize)]
pub struct Doubted {
    /// The row as written.
    pub row: String,
    /// Its temperature, °C.
    pub temperature_c: f64,
    /// What it says, Ω.
    pub resistance_ohm: f64,
    /// What the others lead to, Ω.
    pub expected_ohm: f64,
    /// The number that would fit, in the row's unit, where one slip explains it.
    pub would_fit: Option<String>,
    /// The same in words.
    #[serde(skip)]
    pub says: Vec<String>,
}

/// One formula and how far it misses the points; or why there is none.
#[derive(Debug, Serialize)]
pub struct FittedModel {
    /// Its name in a spec.
    pub model: &'static str,
    /// Why it has no coefficients.
    pub error: Option<String>,
    /// Its coefficients by their names, in Ω, °C, K and 1/K.
    #[serde(serialize_with = "by_name")]
    pub coefficients: Vec<Coefficient>,
    /// Root mean square of the residuals, K.
    pub rms_k: Option<f64>,
    /// Root mean square of the residuals, % of R.
    pub rms_percent: Option<f64>,
    /// Largest residual, K.
    pub largest_k: Option<f64>,
    /// Largest residual, % of R.
    pub largest_percent: Option<f64>,
    /// Lines for a spec, empty where there is no formula.
    pub spec: Vec<String>,
    /// Formula minus table, point by point.
    pub residuals: Vec<PointResidual>,
    /// Whether it has as many coefficients as there are points.
    pub exact: bool,
    /// The formula in words.
    #[serde(skip)]
    pub formula: String,
}

/// A named number of a formula.
#[derive(Debug)]
pub struct Coefficient {
    /// Its name, with its unit where it has one besides 1/K.
    pub name: &'static str,
    /// Its value to ten significant digits, as the spec line has it.
    pub value: f64,
}

fn by_name<S: Serializer>(coefficients: &[Coefficient], serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_map(coefficients.iter().map(|coefficient| (coefficient.name, coefficient.value)))
}

/// How far a formula misses one point.
#[derive(Debug, Serialize)]
pub struct PointResidual {
    /// The point's temperature, °C.
    pub temperature_c: f64,
    /// The point's resistance, Ω.
    pub resistance_ohm: f64,
    /// The formula's temperature at this resistance, less the point's, K.
    pub residual_k: f64,
    /// The formula's resistance at this temperature, less the point's, % of it.
    pub residual_percent: f64,
}

/// Fits every formula to the rows of a table; `unit` is that of their temperatures.
#[must_use]
pub fn compose(words: &Words, rows: &[Row], unit: Unit) -> Fitted {
    let points: Vec<(Temperature, Resistance)> =
        rows.iter().map(|row| (row.temperature, row.nominal)).collect();
    let models = Model::ALL.map(|model| of_model(words, model, rows, &points, unit));
    Fitted { points: rows.len(), suspect: doubted(words, rows), models: models.into() }
}

fn doubted(words: &Words, rows: &[Row]) -> Option<Doubted> {
    let found = suspect_row(rows)?;
    let row = rows.get(found.index)?;
    let expected = found.expected.ohms();
    let written = row.written.join(", ");
    let message = Message::new("rule-outlier")
        .with("row", row.said())
        .with("percent", figure(100.0 * found.off(row), 1, Rounding::Nearest));
    let near =
        Message::new("wanted-near").with("ohms", figure(expected, decimals_for(expected), Rounding::Nearest));
    Some(Doubted {
        row: written,
        temperature_c: row.temperature.celsius(),
        resistance_ohm: row.nominal.ohms(),
        expected_ohm: expected,
        would_fit: found.slip.as_ref().map(|(_, number)| number.clone()),
        says: [message, near, found.explanation()].iter().map(|message| words.say(message)).collect(),
    })
}

fn of_model(
    words: &Words,
    model: Model,
    rows: &[Row],
    points: &[(Temperature, Resistance)],
    unit: Unit,
) -> FittedModel {
    let (name, formula) = match model {
        Model::Beta => ("beta", "table-formula-beta"),
        Model::SteinhartHart => ("steinhart-hart", "table-formula-steinhart-hart"),
        Model::SteinhartHart4 => ("steinhart-hart-4", "table-formula-steinhart-hart-4"),
    };
    let none = FittedModel {
        model: name,
        error: None,
        coefficients: Vec::new(),
        rms_k: None,
        rms_percent: None,
        largest_k: None,
        largest_percent: None,
        spec: Vec::new(),
        residuals: Vec::new(),
        exact: points.len() == model.fewest_points(),
        formula: words.word(formula),
    };
    match fit(model, points) {
        Ok(fitted) => {
            let (rms, largest) = (fitted.rms(), fitted.largest());
            let coefficients = coefficients(&fitted.curve);
            FittedModel {
                rms_k: Some(rms.temperature.kelvins()),
                rms_percent: Some(percent(&rms)),
                largest_k: Some(largest.temperature.kelvins()),
                largest_percent: Some(percent(&largest)),
                spec: spec_lines(words, name, &coefficients, rows, unit),
                residuals: residuals(&fitted, points),
                coefficients,
                ..none
            }
        }
        Err(error) => FittedModel { error: Some(words.say(&reason(error, model))), ..none },
    }
}

fn reason(error: FitError, model: Model) -> Message {
    match error {
        FitError::TooFewPoints => Message::new("fit-few-points").with_count("needed", model.fewest_points()),
        FitError::NotPhysical => Message::new("fit-not-physical"),
        FitError::NotFalling => Message::new("fit-not-falling"),
        FitError::NoThermistor => Message::new("fit-no-thermistor"),
    }
}

fn percent(residual: &Residual) -> f64 {
    100.0 * residual.resistance.part()
}

fn residuals(fitted: &Fit, points: &[(Temperature, Resistance)]) -> Vec<PointResidual> {
    let residual = |(residual, (at, of)): (&Residual, &(Temperature, Resistance))| PointResidual {
        temperature_c: at.celsius(),
        resistance_ohm: of.ohms(),
        residual_k: residual.temperature.kelvins(),
        residual_percent: percent(residual),
    };
    fitted.residuals.iter().zip(points).map(residual).collect()
}

fn coefficients(curve: &Curve) -> Vec<Coefficient> {
    let named = |names: &[&'static str], values: &[f64]| {
        let both = names.iter().zip(values);
        both.map(|(name, value)| Coefficient { name, value: significant(*value) }).collect()
    };
    match curve {
        Curve::Beta(curve) => {
            let (rated, at, beta) = curve.parameters();
            named(&["resistance_ohm", "at_c", "beta_k"], &[rated.ohms(), at.celsius(), beta.kelvins()])
        }
        Curve::SteinhartHart(curve) => {
            let (a, b, c) = curve.coefficients();
            named(&["a", "b", "c"], &[a, b, c])
        }
        Curve::SteinhartHart4(curve) => named(&["a", "b", "c", "d"], &curve.coefficients()),
        // No fit has another curve.
        Curve::Platinum(_) | Curve::SiliconPtc(_) | Curve::Table(_) => Vec::new(),
    }
}

/// The lines to paste below a sensor's head: they read back to the fitted curve.
fn spec_lines(
    words: &Words,
    model: &str,
    coefficients: &[Coefficient],
    rows: &[Row],
    unit: Unit,
) -> Vec<String> {
    let value = |coefficient: &Coefficient| match coefficient.name {
        "resistance_ohm" => format!("resistance = \"{} Ω\"", coefficient.value),
        "at_c" => format!("at = \"{} °C\"", coefficient.value),
        "beta_k" => format!("beta = \"{} K\"", coefficient.value),
        name => format!("{name} = {:e}", coefficient.value),
    };
    let values: Vec<String> = coefficients.iter().map(value).collect();
    let written = |row: Option<&Row>| row.and_then(|row| row.written.first().cloned()).unwrap_or_default();
    let by_temperature = |a: &&Row, b: &&Row| a.temperature.celsius().total_cmp(&b.temperature.celsius());
    let low = written(rows.iter().min_by(by_temperature));
    let high = written(rows.iter().max_by(by_temperature));
    let note = Message::new("fit-spec-note").with_count("points", rows.len());
    vec![
        format!("# {}", words.say(&note)),
        format!("curve = {{ model = \"{model}\", {} }}", values.join(", ")),
        format!("range = \"{low} {symbol} to {high} {symbol}\"", symbol = unit.symbol()),
    ]
}

/// Rounded to ten significant digits: less than a millionth of a kelvin of any fit.
fn significant(value: f64) -> f64 {
    format!("{value:.9e}").parse().unwrap_or(value)
}

impl Fitted {
    /// The residuals as a table: a row for each point, two columns for each formula.
    #[must_use]
    pub fn table(&self, words: &Words, rows: &[Row]) -> Table {
        let fitted: Vec<&FittedModel> = self.models.iter().filter(|model| model.error.is_none()).collect();
        let column =
            |key, head: String, decimals| Column::new(key, head, Show::Decimals(decimals, Rounding::Nearest));
        let mut columns = vec![
            column("temperature_c", "°C".to_owned(), 2),
            Column::new("resistance_ohm", "Ω", Show::Digits(Rounding::Nearest)),
        ];
        for model in &fitted {
            let (kelvins, percent) = match model.model {
                "beta" => ("beta_residual_k", "beta_residual_percent"),
                "steinhart-hart" => ("steinhart_hart_residual_k", "steinhart_hart_residual_percent"),
                _ => ("steinhart_hart_4_residual_k", "steinhart_hart_4_residual_percent"),
            };
            columns.push(column(kelvins, format!("{} K", model.model), 3));
            columns.push(column(percent, format!("{} %", model.model), 3));
        }
        columns.push(column("suspect", words.word("fit-suspect-head"), 0));
        let suspect = self.suspect.as_ref().map(|suspect| suspect.row.as_str());
        let row = |(index, row): (usize, &Row)| {
            let own = [row.temperature.celsius(), row.nominal.ohms()].map(Cell::from);
            let misses = fitted.iter().filter_map(|model| model.residuals.get(index));
            let misses = misses.flat_map(|miss| [miss.residual_k, miss.residual_percent]).map(Cell::from);
            let doubted = suspect.is_some_and(|suspect| suspect == row.written.join(", "));
            let mark = if doubted { Cell::Text(words.word("fit-suspect")) } else { Cell::Missing };
            own.into_iter().chain(misses).chain([mark]).collect()
        };
        Table {
            title: words.word("fit-residuals"),
            notes: Vec::new(),
            columns,
            rows: rows.iter().enumerate().map(row).collect(),
            formulas: Vec::new(),
            inputs: Vec::new(),
        }
    }

    /// All but the residuals as lines of text.
    #[must_use]
    pub fn lines(&self, words: &Words) -> Vec<String> {
        let mut lines = vec![words.say(&Message::new("fit-points").with_count("points", self.points))];
        lines.push(words.word("fit-minimised"));
        match &self.suspect {
            Some(suspect) => {
                let [what, near, help] = &suspect.says[..] else { return lines };
                let said =
                    Message::new("fit-suspect-line").with("what", what).with("near", near).with("help", help);
                lines.push(words.say(&said));
            }
            None => lines.push(words.word("fit-no-suspect")),
        }
        for model in &self.models {
            lines.push(String::new());
            lines.push(format!("{}: {}", model.model, model.formula));
            lines.extend(model.error.clone());
            let figures = model.rms_k.zip(model.rms_percent).zip(model.largest_k.zip(model.largest_percent));
            let Some(((rms_k, rms_percent), (largest_k, largest_percent))) = figures else { continue };
            let shown = |value: f64| figure(value, 3, Rounding::Nearest);
            let message = Message::new("fit-misses")
                .with("rms-k", shown(rms_k))
                .with("rms-percent", shown(rms_percent))
                .with("largest-k", shown(largest_k))
                .with("largest-percent", shown(largest_percent));
            lines.push(words.say(&message));
            if model.exact {
                lines.push(words.word("fit-exact"));
            }
            lines.extend(model.spec.iter().map(|line| format!("    {line}")));
        }
        lines
    }
}

/// What to say of points that rise: these formulas are a thermistor's.
#[must_use]
pub fn rises(rows: &[Row]) -> Option<Message> {
    let cold = rows.iter().min_by(|a, b| a.temperature.celsius().total_cmp(&b.temperature.celsius()))?;
    let hot = rows.iter().max_by(|a, b| a.temperature.celsius().total_cmp(&b.temperature.celsius()))?;
    (cold.nominal < hot.nominal).then(|| {
        Message::new("fit-rises")
            .with("cold", celsius(cold.temperature))
            .with("hot", celsius(hot.temperature))
    })
}
