//! A program: the loads of models in every draw, whatever they share worked out once.
//!
//! Steps make amounts and factors of the drawn columns; a load is the sum of amounts times factors. Flows of a part that
//! have the same factors in every indicator are one amount.

use std::rc::Rc;

use faceload_numeric::{Layout, Load, Step, Table, run};

use crate::in_order;
use crate::inventory::{Form, Terms as Formula};
use crate::load::{Contribution, Indicator, Model, Part, Per, Plan};

use super::columns::Columns;
use super::steps::{Scaled, Steps, Terms};

/// The factors of a flow, by indicator; none where it is not counted.
type Factors = [Option<Scaled>; Indicator::ALL.len()];

/// The steps, and what makes each load: an amount, its factor, and how many times.
#[derive(Debug, Clone, Default)]
pub struct Program {
    steps: Steps,
    /// Sums that were taken apart.
    known: Vec<(Terms, Scaled)>,
    loads: Vec<Load>,
}

impl Program {
    /// Adds a model's loads in some indicators.
    pub fn push(&mut self, model: &Model, indicators: &[Indicator], per: Per, columns: &mut Columns) {
        let mut loads = vec![Vec::new(); indicators.len()];
        for part in &model.parts {
            let by = 1.0 / model.divisor(part, per);
            for (factors, amount) in self.amounts(part, indicators, per, columns) {
                let (amount, times) = self.sum(amount);
                for (load, indicator) in loads.iter_mut().zip(indicators) {
                    load.extend(factors[*indicator as usize].map(|(factor, scale)| (amount, factor, times * scale * by)));
                }
            }
        }
        self.loads.extend(loads);
    }

    /// What flows in a part, by the factors it has.
    fn amounts(&mut self, part: &Part, indicators: &[Indicator], per: Per, columns: &mut Columns) -> Vec<(Factors, Terms)> {
        let mut amounts: Vec<(Factors, Terms)> = Vec::new();
        let counts = |one: &&Contribution| indicators.contains(&one.indicator) && Plan::counts(one.stage, per);
        let counted: Vec<&Contribution> = part.plan.contributions.iter().filter(counts).collect();
        for flow in counted.chunk_by(|one, next| Rc::ptr_eq(&one.amount, &next.amount)) {
            let amount = self.terms(&flow[0].amount, part, columns);
            if amount.is_empty() {
                continue;
            }
            let mut factors = Factors::default();
            for one in flow {
                let factor = self.terms(&one.factor, part, columns);
                factors[one.indicator as usize] = (!factor.is_empty()).then(|| self.sum(factor));
            }
            match amounts.iter_mut().find(|(known, _)| *known == factors) {
                Some((_, terms)) => terms.extend(amount),
                None => amounts.push((factors, amount)),
            }
        }
        amounts
    }

    fn terms(&mut self, formula: &Formula, part: &Part, columns: &mut Columns) -> Terms {
        let (mut terms, mut product) = (Terms::new(), Vec::new());
        for term in &formula.0 {
            if let Some(coefficient) = columns.coefficient(term, part, &mut product) {
                terms.push((product.iter().map(|form| self.steps.form(*form)).collect(), coefficient));
            }
        }
        terms
    }

    /// The steps of a sum, its equal products put together.
    fn sum(&mut self, mut terms: Terms) -> Scaled {
        in_order(&mut terms, |a, b| a.0.cmp(&b.0));
        terms.dedup_by(|next, kept| {
            let same = next.0 == kept.0;
            if same {
                kept.1 += next.1;
            }
            same
        });
        terms.retain(|(_, coefficient)| *coefficient != 0.0);
        if let Some((_, known)) = self.known.iter().find(|(known, _)| *known == terms) {
            return *known;
        }
        let made = self.steps.sum(terms.clone());
        self.known.push((terms, made));
        made
    }

    /// How many loads it works out.
    pub fn loads(&self) -> usize {
        self.loads.len()
    }

    /// How many steps it takes.
    pub fn steps(&self) -> usize {
        self.steps.list().len() + self.loads.iter().map(Vec::len).sum::<usize>()
    }

    /// The steps and the loads in words, one a line: for those who want to run the same elsewhere.
    pub fn listing(&self) -> Vec<String> {
        let step = |step: &Step| match step {
            Step::One => "one".to_owned(),
            Step::Form(column, Form::Power(power)) => format!("power {column} {power}"),
            Step::Form(column, Form::PerOnePlus) => format!("per-one-plus {column}"),
            Step::Form(column, Form::PerOneMinus) => format!("per-one-minus {column}"),
            Step::Times(a, b) => format!("times {a} {b}"),
            Step::Sum(list) => list.iter().fold("sum".to_owned(), |line, (at, by)| format!("{line} {at} {}", f64::from_bits(*by))),
        };
        let load = |load: &Load| load.iter().fold("load".to_owned(), |line, (a, b, by)| format!("{line} {a} {b} {by}"));
        self.steps.list().iter().map(step).chain(self.loads.iter().map(load)).collect()
    }

    /// The steps in the order that they are run in.
    pub fn laid(&self) -> Layout {
        Layout::of(self.steps.list(), &self.loads)
    }

    /// Works out every load for the draws of the columns, all of one length; `out` is one load after another.
    pub fn run(&self, columns: &[&[f64]], draws: usize, out: &mut [Vec<f64>]) {
        let mut table = Table::new(columns.len(), draws);
        for (at, values) in columns.iter().enumerate() {
            table.put(at, 0, values);
        }
        let columns: Vec<(&Table, usize)> = (0..columns.len()).map(|at| (&table, at)).collect();
        run(&self.laid(), &columns, 0..draws, out);
    }
}
