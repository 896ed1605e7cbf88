//! The variance of a sum of products of independent inputs, and whose it is, without a single draw.
//!
//! With D = sum_t c_t prod_i f_ti(x_i), m_t its mean term and P_tt' = E[term t x term t']:
//!
//! - V = sum (P_tt' - m_t m_t');
//! - first-order share of x_i: the variance of E[D | x_i] over V: what is gone once x_i is known;
//! - total share of x_i: E[variance of D given all but x_i] over V: what stays while only x_i is unknown.
//!
//! Only pairs of terms that have an input in common add to V (I. M. Sobol', Math. Comput. Simul. 55 (2001) 271
//! for the two shares).

use std::collections::BTreeMap;

use super::columns::{ColumnId, Columns};
use super::moments::mean;
use super::sum::Sum;
use crate::inventory::Form;

/// A sum of products taken apart for its moments.
#[derive(Debug)]
pub struct Moments {
    terms: Vec<Term>,
    /// By column, the means of the forms in which it stands.
    inputs: BTreeMap<ColumnId, Forms>,
}

#[derive(Debug)]
struct Term {
    coefficient: f64,
    /// Each column with the number of its form.
    of: Vec<(ColumnId, usize)>,
}

/// One input that two terms share.
#[derive(Debug, Clone, Copy)]
struct Shared {
    column: ColumnId,
    /// E[f f'].
    both: f64,
    /// E[f] E[f'].
    apart: f64,
}

/// The forms in which one input stands in products.
#[derive(Debug, Default)]
struct Forms {
    list: Vec<Vec<Form>>,
    means: Vec<f64>,
    /// E[f f'], by the numbers of both.
    both: Vec<Vec<f64>>,
}

/// The mean and variance of a sum of products and its inputs' shares.
#[derive(Debug, Clone, PartialEq)]
pub struct Variance {
    /// The mean.
    pub mean: f64,
    /// The variance.
    pub variance: f64,
    /// By column: first-order and total share of the variance.
    pub shares: BTreeMap<ColumnId, (f64, f64)>,
}

impl Moments {
    /// Takes a sum apart.
    pub fn of(sum: &Sum, columns: &Columns) -> Self {
        Self::with(sum, |column, forms| mean(columns.list()[usize::from(column)].1, forms))
    }

    /// The same, where the mean of the forms in which an input stands is given.
    pub fn with(sum: &Sum, mean: impl Fn(ColumnId, &[Form]) -> f64) -> Self {
        let mut inputs: BTreeMap<ColumnId, Forms> = BTreeMap::new();
        let mut terms = Vec::new();
        for (product, coefficient) in &sum.0 {
            let mut by_column: BTreeMap<ColumnId, Vec<Form>> = BTreeMap::new();
            for (column, form) in product {
                by_column.entry(*column).or_default().push(*form);
            }
            let of = by_column.into_iter().map(|(column, forms)| (column, inputs.entry(column).or_default().number(forms)));
            terms.push(Term { coefficient: *coefficient, of: of.collect() });
        }
        for (column, forms) in &mut inputs {
            forms.work_out(|forms| mean(*column, forms));
        }
        Self { terms, inputs }
    }

    /// The mean.
    pub fn mean(&self) -> f64 {
        let of_term =
            |term: &Term| term.of.iter().fold(term.coefficient, |product, (column, form)| product * self.inputs[column].means[*form]);
        self.terms.iter().fold(0.0, |sum, term| sum + of_term(term))
    }

    /// The variance, and the share of it that is gone if one input were known, and that stays if it alone were unknown.
    pub fn variance(&self) -> Variance {
        self.variance_of([]).0
    }

    /// The share of the variance that stays while only some inputs are unknown.
    pub fn total_share_of(&self, group: impl Fn(ColumnId) -> bool) -> f64 {
        let [share] = self.variance_of([&group]).1;
        share
    }

    /// Both, for some groups of inputs, in one look at every two terms.
    pub fn variance_of<const N: usize>(&self, groups: [&dyn Fn(ColumnId) -> bool; N]) -> (Variance, [f64; N]) {
        let columns = 0..self.columns() as ColumnId;
        let members = groups.map(|group| columns.clone().map(group).collect::<Vec<bool>>());
        let mut variance = 0.0;
        let mut total = vec![0.0; self.columns()];
        let mut unknown = [0.0; N];
        self.pairs(|rest, shared| {
            let whole = both(shared);
            variance += rest * (whole - shared.iter().fold(1.0, |product, one| product * one.apart));
            for (place, one) in shared.iter().enumerate() {
                let others = both(&shared[..place]) * both(&shared[place + 1..]);
                total[usize::from(one.column)] += rest * others * (one.both - one.apart);
            }
            for (unknown, member) in unknown.iter_mut().zip(&members) {
                let known = |one: &Shared| if member[usize::from(one.column)] { one.apart } else { one.both };
                *unknown += rest * (whole - shared.iter().fold(1.0, |product, one| product * known(one)));
            }
        });
        let share = |part: f64| if variance > 0.0 { part / variance } else { 0.0 };
        let of = |column: ColumnId| (share(self.first_order(column)), share(total[usize::from(column)]));
        let mut shares = BTreeMap::new();
        shares.extend(self.inputs.keys().map(|column| (*column, of(*column))));
        (Variance { mean: self.mean(), variance, shares }, unknown.map(share))
    }

    fn columns(&self) -> usize {
        self.inputs.keys().next_back().map_or(0, |last| usize::from(*last) + 1)
    }

    /// The variance of the mean given one input.
    fn first_order(&self, column: ColumnId) -> f64 {
        let forms = &self.inputs[&column];
        let mut by_form = vec![0.0; forms.list.len()];
        for term in &self.terms {
            if let Some((_, form)) = term.of.iter().find(|(known, _)| *known == column) {
                let others = term.of.iter().filter(|(known, _)| *known != column);
                by_form[*form] += others.fold(term.coefficient, |product, (other, form)| product * self.inputs[other].means[*form]);
            }
        }
        let mut variance = 0.0;
        for (form, left) in by_form.iter().enumerate() {
            for (other, right) in by_form.iter().enumerate() {
                variance += left * right * (forms.both[form][other] - forms.means[form] * forms.means[other]);
            }
        }
        variance
    }

    /// Calls `each` with every two terms that share an input: all that is not shared multiplied, twice where the two
    /// differ, and what they share.
    fn pairs(&self, mut each: impl FnMut(f64, &[Shared])) {
        let none = Forms::default();
        let forms: Vec<&Forms> = (0..self.columns()).map(|column| self.inputs.get(&(column as ColumnId)).unwrap_or(&none)).collect();
        let mean = |(column, form): &(ColumnId, usize)| forms[usize::from(*column)].means[*form];
        let mut shared: Vec<Shared> = Vec::new();
        for (place, left) in self.terms.iter().enumerate() {
            for right in &self.terms[place..] {
                shared.clear();
                let mut rest = left.coefficient * right.coefficient * if std::ptr::eq(left, right) { 1.0 } else { 2.0 };
                let mut others = right.of.iter().peekable();
                for own in &left.of {
                    while let Some(other) = others.next_if(|other| other.0 < own.0) {
                        rest *= mean(other);
                    }
                    match others.next_if(|other| other.0 == own.0) {
                        Some(other) => {
                            let both = forms[usize::from(own.0)].both[own.1][other.1];
                            shared.push(Shared { column: own.0, both, apart: mean(own) * mean(other) });
                        }
                        None => rest *= mean(own),
                    }
                }
                if !shared.is_empty() {
                    each(others.fold(rest, |rest, other| rest * mean(other)), &shared);
                }
            }
        }
    }
}

fn both(shared: &[Shared]) -> f64 {
    shared.iter().fold(1.0, |product, one| product * one.both)
}

impl Forms {
    fn number(&mut self, forms: Vec<Form>) -> usize {
        self.list.iter().position(|known| *known == forms).unwrap_or_else(|| {
            self.list.push(forms);
            self.list.len() - 1
        })
    }

    fn work_out(&mut self, mean: impl Fn(&[Form]) -> f64) {
        self.means = self.list.iter().map(|forms| mean(forms)).collect();
        let both = |left: &[Form]| self.list.iter().map(|right| mean(&[left, right].concat())).collect();
        self.both = self.list.iter().map(|left| both(left)).collect();
    }
}
