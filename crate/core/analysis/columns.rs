//! Columns: the drawn inputs of some models, each once, and the terms of formulas in them.

use std::collections::BTreeMap;
use std::rc::Rc;

use crate::few_in_order;
use crate::inventory::{Form, InputId, Term};
use crate::load::{Part, Plan};
use crate::order::RouteName;

use super::column::{Drawn, Shape};

/// The place of a column.
pub type ColumnId = u16;

/// What is known of an input of a plan: nothing yet, that it is not drawn, or its column.
type Looked = Option<Option<ColumnId>>;

/// The drawn inputs of some models, each once.
#[derive(Debug, Clone, Default)]
pub struct Columns {
    list: Vec<(Drawn, Shape)>,
    /// By the place of the input in the book and the route that has draws of its own.
    known: BTreeMap<(usize, Option<RouteName>), ColumnId>,
    /// Of each plan, the inputs that were asked for.
    plans: Vec<(Rc<Plan>, Vec<Looked>)>,
    /// The plan that was asked for last.
    last: usize,
}

impl Columns {
    /// Every column.
    pub fn list(&self) -> &[(Drawn, Shape)] {
        &self.list
    }

    /// The column of an input of a part; none where it is not drawn.
    fn of(&mut self, part: &Part, input: usize) -> Option<ColumnId> {
        let is_it = |(plan, _): &(Rc<Plan>, _)| Rc::ptr_eq(plan, &part.plan);
        if !self.plans.get(self.last).is_some_and(is_it) {
            self.last = self.plans.iter().position(is_it).unwrap_or_else(|| {
                self.plans.push((Rc::clone(&part.plan), vec![None; part.plan.values().len()]));
                self.plans.len() - 1
            });
        }
        let plan = self.last;
        if let Some(known) = self.plans[plan].1[input] {
            return known;
        }
        let found = self.find(part, input);
        self.plans[plan].1[input] = Some(found);
        found
    }

    fn find(&mut self, part: &Part, input: usize) -> Option<ColumnId> {
        let row = part.plan.book.input(InputId::at(input));
        let shape = Shape::of(row)?;
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
        Some(column)
    }

    /// The values of all columns where every input is at its median.
    pub fn medians(&self) -> Vec<f64> {
        self.list.iter().map(|(_, shape)| shape.at(0.5)).collect()
    }

    /// A term with the counts of a part and the values that are not drawn folded into its coefficient; none where that
    /// comes to 0. What is multiplied, sorted, is left in `product`.
    pub(super) fn coefficient(&mut self, term: &Term, part: &Part, product: &mut Vec<(ColumnId, Form)>) -> Option<f64> {
        let mut coefficient = term.coefficient * term.measure.map_or(1.0, |symbol| part.activity.count(symbol));
        product.clear();
        if coefficient != 0.0 {
            for (id, form) in &term.inputs {
                match self.of(part, id.index()) {
                    None => coefficient *= form.at(part.plan.values()[id.index()]),
                    Some(column) => product.push((column, *form)),
                }
            }
            few_in_order(product);
        }
        (coefficient != 0.0).then_some(coefficient)
    }
}
