//! Activity: what the shop does for an order, counted from facts and layout, linear in the lines.
//!
//! Whatever is made for stock is counted apart, since some of the stock is never used.

use std::marker::PhantomData;

use super::formula::{Formula, Symbol};
use crate::quantity::Kind;

/// One thing counted, such as faces printed: its name and unit.
#[derive(Debug, Clone, Copy)]
pub struct Measure<Q> {
    symbol: Symbol,
    kind: PhantomData<fn() -> Q>,
}

impl<Q: Kind> Measure<Q> {
    /// A measure with the words a reader sees and the unit of its base.
    pub const fn new(name: &'static str, unit: &'static str) -> Self {
        Self { symbol: Symbol::new(name, unit, false), kind: PhantomData }
    }

    /// The measure as a formula: itself, once.
    pub fn counted(&self) -> Formula<Q> {
        Formula::measure(self.symbol)
    }
}

/// The counts of one alternative.
#[derive(Debug, Clone, Default)]
pub struct Activity {
    counts: Vec<(Symbol, f64)>,
    stock: bool,
    /// Where the next measure is expected: every job is counted in the same order.
    next: usize,
}

impl Activity {
    /// One unit of one measure.
    pub fn one(symbol: Symbol) -> Self {
        Self { counts: vec![(symbol, 1.0)], ..Self::default() }
    }

    /// From now on, counts are of lines made for stock, or not.
    pub fn made_for_stock(&mut self, stock: bool) {
        self.stock = stock;
    }

    /// Adds to a measure.
    pub fn add<Q: Kind>(&mut self, measure: Measure<Q>, amount: Q) {
        self.add_base(Symbol { stock: self.stock, ..measure.symbol }, amount.base());
    }

    fn add_base(&mut self, symbol: Symbol, amount: f64) {
        let at = match self.counts.get(self.next) {
            Some((known, _)) if known.is(symbol) => Some(self.next),
            _ => self.counts.iter().position(|(known, _)| known.is(symbol)),
        };
        match at {
            Some(at) => self.counts[at].1 += amount,
            None => self.counts.push((symbol, amount)),
        }
        self.next = at.unwrap_or(self.counts.len() - 1) + 1;
    }

    /// Every measure with its count.
    pub fn counts(&self) -> &[(Symbol, f64)] {
        &self.counts
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
        let of_stock = |stock| self.count(Symbol { stock, ..measure.symbol });
        Q::from_base(of_stock(false) + of_stock(true))
    }
}
