//! Swing: the difference of a pair with one input at its 5 % and at its 95 % point, everything
//! else at its median. An input that both alternatives share moves both at once.

use crate::comparison::Comparison;
use crate::factors::{Origin, Spread};
use crate::in_order;
use crate::inventory::{Book, InputId};
use crate::load::{Indicator, Model};

/// One input's swing of the difference b - a.
#[derive(Debug, Clone, PartialEq)]
pub struct Swing {
    /// The input.
    pub input: InputId,
    /// Its 5 % and 95 % points, in its unit.
    pub ends: (f64, f64),
    /// The difference at its 5 % point.
    pub at_low: f64,
    /// The difference at its 95 % point.
    pub at_high: f64,
}

impl Swing {
    /// How far the difference moves.
    pub fn width(&self) -> f64 {
        (self.at_high - self.at_low).abs()
    }

    /// Whether the difference changes sign: the ranking turns.
    pub fn turns(&self) -> bool {
        (self.at_low < 0.0) != (self.at_high < 0.0) && self.at_low != 0.0 && self.at_high != 0.0
    }
}

/// Every input that can move the difference b - a, the widest swing first.
pub fn swings(comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> Vec<Swing> {
    let mut swings = swings_of(comparison, a, b, indicator, |_| true);
    swings.retain(|swing| swing.width() > 0.0);
    in_order(&mut swings, |x, y| y.width().total_cmp(&x.width()).then(x.input.cmp(&y.input)));
    swings
}

/// The swings of the inputs that are wanted by id, in the order of the tables.
pub fn swings_of(comparison: &Comparison, a: usize, b: usize, indicator: Indicator, wanted: impl Fn(&str) -> bool) -> Vec<Swing> {
    let Some((first, second)) = comparison.of_pair(a, b) else { return Vec::new() };
    let Some(difference) = comparison.difference(a, b, indicator) else { return Vec::new() };
    let mut inputs = first.inputs_of(indicator, comparison.per);
    inputs.extend(second.inputs_of(indicator, comparison.per));
    let books: Vec<&Book> = [&first, &second].iter().flat_map(|model| model.parts.iter().map(|part| &part.plan.book)).collect();
    inputs
        .into_iter()
        .filter_map(|input| {
            // The row as the alternative has it that did not replace it.
            let row = books.iter().map(|book| book.input(input)).find(|row| row.spread != Spread::Fixed && wanted(&row.id))?;
            let ends = row.ends();
            // An alternative that states its own value keeps it.
            let change = |model: &Model, value: f64| {
                let base = value * model.book.input(input).unit.base();
                model.change(indicator, comparison.per, input, base, |part| part.plan.book.input(input).origin != Origin::Override)
            };
            let at = |value| difference.value() + change(&second, value) - change(&first, value);
            Some(Swing { input, ends, at_low: at(ends.0), at_high: at(ends.1) })
        })
        .collect()
}
