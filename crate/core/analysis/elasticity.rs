//! Elasticity: by how many per cent a sum of products changes when one input changes by one per cent, every input
//! at its median; exact, from the derivative of each product.

use std::collections::BTreeMap;

use super::columns::{ColumnId, Columns};
use super::sum::Sum;
use crate::inventory::Form;

/// The derivative of a form's logarithm by the logarithm of x.
fn of_form(form: Form, x: f64) -> f64 {
    match form {
        Form::Power(power) => f64::from(power),
        Form::PerOnePlus => -x * form.at(x),
        Form::PerOneMinus => x * form.at(x),
    }
}

/// The value of a sum at given values of its columns, and x dD/dx for each column that stands in it.
pub fn gradient(sum: &Sum, values: &[f64]) -> (f64, BTreeMap<ColumnId, f64>) {
    let mut whole = 0.0;
    let mut moved: BTreeMap<ColumnId, f64> = BTreeMap::new();
    for (product, coefficient) in &sum.0 {
        let value = product.iter().fold(*coefficient, |value, (column, form)| value * form.at(values[usize::from(*column)]));
        whole += value;
        for (column, form) in product {
            *moved.entry(*column).or_insert(0.0) += value * of_form(*form, values[usize::from(*column)]);
        }
    }
    (whole, moved)
}

/// Elasticities at given values of the columns; none where the sum is 0.
pub fn elasticity_of(sum: &Sum, values: &[f64]) -> BTreeMap<ColumnId, f64> {
    let (whole, mut moved) = gradient(sum, values);
    if whole == 0.0 {
        return BTreeMap::new();
    }
    moved.values_mut().for_each(|moved| *moved /= whole);
    moved
}

/// Elasticities with every input at its median.
pub fn elasticities(sum: &Sum, columns: &Columns) -> BTreeMap<ColumnId, f64> {
    elasticity_of(sum, &columns.medians())
}
