//! A sum of products of drawn inputs: what a load is once an order is counted.
//!
//! Counts and inputs that are not drawn are folded into the coefficients, equal products are merged.
//! A load is a sum over flows of amount x factor; each of the two is a sum of products.

use std::collections::BTreeMap;

use crate::inventory::{Form, InputId, Terms};
use crate::load::{Indicator, Model, Part, Per};
use crate::order::RouteName;

use super::column::{Drawn, Shape};

/// The place of a column.
pub type ColumnId = u16;

/// The drawn inputs of some models, each once.
#[derive(Debug, Clone, Default)]
pub struct Columns {
    list: Vec<(Drawn, Shape)>,
    /// By the place of the input in the book and the route that has draws of its own.
    known: BTreeMap<(usize, Option<RouteName>), ColumnId>,
}

impl Columns {
    /// Every column.
    pub fn list(&self) -> &[(Drawn, Shape)] {
        &self.list
    }

    /// The column of an input of a part, and the median that stands apart; none where it is not drawn.
    fn of(&mut self, part: &Part, input: usize) -> Option<(ColumnId, f64)> {
        let row = part.plan.book.input(InputId::at(input));
        let (shape, median) = Shape::of(row)?;
        let drawn = Drawn::of(row, part.plan.alternative.route);
        let key = (input, drawn.route);
        let column = match self.known.get(&key) {
            Some(column) => *column,
            None => {
                let column = self.list.len() as ColumnId;
                self.list.push((drawn, shape));
                self.known.insert(key, column);
                column
            }
        };
        Some((column, median))
    }

    /// The values of all columns where every input is at its median.
    pub fn medians(&self) -> Vec<f64> {
        self.list.iter().map(|(_, shape)| shape.at(0.5)).collect()
    }
}

/// How a drawn value x stands in a product; a median that stands apart is a scale, kept by its bits
/// so that products have an order.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Way {
    /// x to a whole power.
    Power(i8),
    /// 1/(1 + scale x).
    PerOnePlus(u64),
    /// 1/(1 - scale x).
    PerOneMinus(u64),
}

impl Way {
    /// Its value at x.
    #[inline(always)]
    pub fn at(self, x: f64) -> f64 {
        match self {
            Self::Power(power) => Form::Power(power).at(x),
            Self::PerOnePlus(scale) => Form::PerOnePlus.at(f64::from_bits(scale) * x),
            Self::PerOneMinus(scale) => Form::PerOneMinus.at(f64::from_bits(scale) * x),
        }
    }

    /// The derivative of its logarithm by the logarithm of x.
    pub fn elasticity(self, x: f64) -> f64 {
        match self {
            Self::Power(power) => f64::from(power),
            Self::PerOnePlus(scale) => -f64::from_bits(scale) * x * self.at(x),
            Self::PerOneMinus(scale) => f64::from_bits(scale) * x * self.at(x),
        }
    }
}

/// What is multiplied in one product, sorted.
pub type Product = Vec<(ColumnId, Way)>;

/// The product of two products.
fn merged(left: &[(ColumnId, Way)], right: &[(ColumnId, Way)]) -> Product {
    let mut product = left.to_vec();
    for (column, way) in right {
        let twin = product.iter_mut().find(|(known, other)| known == column && matches!(other, Way::Power(_)));
        match (twin, way) {
            (Some((_, Way::Power(power))), Way::Power(more)) => *power += more,
            _ => product.push((*column, *way)),
        }
    }
    product.retain(|(_, way)| *way != Way::Power(0));
    product.sort_unstable();
    product
}

/// A sum of products.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Sum(pub BTreeMap<Product, f64>);

impl Sum {
    /// Terms with the counts of a part and the values that are not drawn.
    fn of(terms: &Terms, part: &Part, columns: &mut Columns) -> Self {
        let mut sum = Self::default();
        for term in &terms.0 {
            let mut coefficient = term.coefficient;
            if let Some(symbol) = term.measure {
                coefficient *= part.activity.count(symbol);
            }
            if coefficient == 0.0 {
                continue;
            }
            let mut product = Product::new();
            for (id, form) in &term.inputs {
                match columns.of(part, id.index()) {
                    None => coefficient *= form.at(part.plan.values()[id.index()]),
                    Some((column, median)) => {
                        let way = match form {
                            Form::Power(power) => {
                                coefficient *= form.at(median);
                                Way::Power(*power)
                            }
                            Form::PerOnePlus => Way::PerOnePlus(median.to_bits()),
                            Form::PerOneMinus => Way::PerOneMinus(median.to_bits()),
                        };
                        product.push((column, way));
                    }
                }
            }
            product.sort_unstable();
            sum.add(product, coefficient);
        }
        sum
    }

    fn add(&mut self, product: Product, coefficient: f64) {
        if coefficient != 0.0 {
            *self.0.entry(product).or_insert(0.0) += coefficient;
        }
    }

    /// Whether nothing is in it.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
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

/// One flow of a model: amount x factor, for the whole order, divided as loads are.
#[derive(Debug, Clone)]
pub struct Flow {
    /// How much flows.
    pub amount: Sum,
    /// What a unit of it loads.
    pub factor: Sum,
    /// One over what loads are divided by.
    pub by: f64,
}

/// The flows of a model that an indicator counts.
pub fn flows(model: &Model, indicator: Indicator, per: Per, columns: &mut Columns) -> Vec<Flow> {
    let mut flows = Vec::new();
    for part in &model.parts {
        let by = 1.0 / model.divisor(part, per);
        for one in part.plan.contributions_to(indicator, per) {
            let amount = Sum::of(&one.amount, part, columns);
            if amount.is_empty() {
                continue;
            }
            let factor = Sum::of(&one.factor, part, columns);
            if !factor.is_empty() {
                flows.push(Flow { amount, factor, by });
            }
        }
    }
    flows
}

/// A load as one sum of products.
pub fn load(model: &Model, indicator: Indicator, per: Per, columns: &mut Columns) -> Sum {
    let mut sum = Sum::default();
    for flow in flows(model, indicator, per, columns) {
        sum.plus(&flow.amount.times(&flow.factor, flow.by), 1.0);
    }
    sum
}
