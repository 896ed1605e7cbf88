//! A sum of products of drawn inputs: what a load is once an order is counted.
//!
//! Counts and inputs that are not drawn are folded into the coefficients, equal products are merged.
//! A load is a sum over flows of amount x factor; each of the two is a sum of products.

use std::collections::BTreeMap;

use crate::few_in_order;
use crate::inventory::{Form, Terms};
use crate::load::{Indicator, Model, Part, Per};

use super::columns::{ColumnId, Columns};

/// What is multiplied in one product, sorted.
pub type Product = Vec<(ColumnId, Form)>;

/// The product of two products.
fn merged(left: &[(ColumnId, Form)], right: &[(ColumnId, Form)]) -> Product {
    let mut product = left.to_vec();
    for (column, way) in right {
        let twin = product.iter_mut().find(|(known, other)| known == column && matches!(other, Form::Power(_)));
        match (twin, way) {
            (Some((_, Form::Power(power))), Form::Power(more)) => *power += more,
            _ => product.push((*column, *way)),
        }
    }
    product.retain(|(_, way)| *way != Form::Power(0));
    few_in_order(&mut product);
    product
}

/// A sum of products.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Sum(pub BTreeMap<Product, f64>);

impl Sum {
    /// Terms with the counts of a part and the values that are not drawn.
    fn of(terms: &Terms, part: &Part, columns: &mut Columns) -> Self {
        let (mut sum, mut product) = (Self::default(), Product::new());
        for term in &terms.0 {
            if let Some(coefficient) = columns.coefficient(term, part, &mut product) {
                sum.add(product.clone(), coefficient);
            }
        }
        sum
    }

    fn add(&mut self, product: Product, coefficient: f64) {
        if coefficient != 0.0 {
            *self.0.entry(product).or_insert(0.0) += coefficient;
        }
    }

    /// Adds another sum so many times.
    pub fn plus(&mut self, other: &Self, times: f64) {
        for (product, coefficient) in &other.0 {
            self.add(product.clone(), coefficient * times);
        }
    }

    fn times(&self, other: &Self, by: f64) -> Self {
        let mut sum = Self::default();
        for (left, a) in &self.0 {
            for (right, b) in &other.0 {
                sum.add(merged(left, right), a * b * by);
            }
        }
        sum
    }
}

/// A load as one sum of products.
pub fn load(model: &Model, indicator: Indicator, per: Per, columns: &mut Columns) -> Sum {
    let mut sum = Sum::default();
    for (part, one) in model.contributions_of(indicator, per) {
        let (amount, factor) = (Sum::of(&one.amount, part, columns), Sum::of(&one.factor, part, columns));
        sum.plus(&amount.times(&factor, 1.0 / model.divisor(part, per)), 1.0);
    }
    sum
}
