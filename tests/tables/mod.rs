//! The numbers of the tables against each other: ranges against the published values behind them,
//! evidence, constructions, and values that must stay out.

#![expect(clippy::disallowed_methods, reason = "a check outside the program: its last digits may differ")]

mod constructions;
mod evidence;
mod published_values;
mod regions;
mod traps;

use faceload_core::factors::{Input, Published, published};

use crate::shop::tables;

/// The row of that id.
fn row(id: &str) -> &'static Input {
    &tables().inputs[tables().find(id).unwrap_or_else(|| panic!("no row `{id}`"))]
}

/// The published values.
fn values() -> Vec<Published> {
    published(tables()).unwrap_or_else(|faults| panic!("{}", faults[0]))
}

/// The published value of that id.
fn value(id: &str) -> Published {
    values().into_iter().find(|one| one.id == id).unwrap_or_else(|| panic!("no published value `{id}`"))
}

/// The geometric mean, and the geometric standard deviation of a sample.
fn spread(values: &[f64]) -> (f64, f64) {
    let count = values.len() as f64;
    let mean = values.iter().map(|value| value.ln()).sum::<f64>() / count;
    let square: f64 = values.iter().map(|value| (value.ln() - mean).powi(2)).sum();
    (mean.exp(), (square / (count - 1.0)).sqrt().exp())
}
