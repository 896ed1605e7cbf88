//! Activity: what the shop does for an order, counted from facts and layout, linear in the lines.
//!
//! Whatever is made for stock is counted apart, since some of the stock is never used.

use std::marker::PhantomData;

use super::formula::{Formula, Symbol};
use crate::quantity::Kind;

/// One thing counted, such as faces printed: its name and unit.
#[derive(Debug, Clone, Copy)]
pub struct Measure<Q> {
    name: &'static str,
    unit: &'static str,
    kind: PhantomData<fn() -> Q>,
}

impl<Q: Kind> Measure<Q> {
    /// A measure with the words a reader sees and the unit of its base.
    pub const fn new(name: &'static str, unit: &'static str) -> Self {
        Self { name, unit, kind: PhantomData }
    }

    /// The measure as a formula: itself, once.
    pub fn counted(&self) -> Formula<Q> {
        Formula::measure(Symbol { name: self.name, unit: self.unit, stock: false })
    }
}

/// The counts of one alternative.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Activity {
    counts: Vec<(Symbol, f64)>,
    stock: bool,
}

impl Activity {
    /// From now on, counts are of lines made for stock, or not.
    pub fn made_for_stock(&mut self, stock: bool) {
        self.stock = stock;
    }

    /// Adds to a measure.
    pub fn add<Q: Kind>(&mut self, measure: Measure<Q>, amount: Q) {
        self.add_base(Symbol { name: measure.name, unit: measure.unit, stock: self.stock }, amount.base());
    }

    fn add_base(&mut self, symbol: Symbol, amount: f64) {
        match self.counts.iter_mut().find(|(known, _)| *known == symbol) {
            Some((_, sum)) => *sum += amount,
            None => self.counts.push((symbol, amount)),
        }
    }

    /// What was counted under a symbol.
    pub fn count(&self, symbol: Symbol) -> f64 {
        self.counts.iter().find(|(known, _)| *known == symbol).map_or(0.0, |(_, sum)| *sum)
    }

    /// Whether anything is made for stock.
    pub fn has_stock(&self) -> bool {
        self.counts.iter().any(|(symbol, sum)| symbol.stock && *sum != 0.0)
    }

    /// A measure's count, stock and order together.
    pub fn total<Q: Kind>(&self, measure: Measure<Q>) -> Q {
        let of_stock = |stock| self.count(Symbol { name: measure.name, unit: measure.unit, stock });
        Q::from_base(of_stock(false) + of_stock(true))
    }
}
