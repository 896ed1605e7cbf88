//! Drivers: which inputs move the difference of a pair, and whose its variance is.
//!
//! From the difference as one sum of products: its swing at each input's 5 % and 95 % points and at 10 % less and more, its
//! elasticity, the first-order and total share of its variance. An input with draws of its own in each route stands there
//! once for each.

use std::collections::BTreeMap;

use crate::comparison::Comparison;
use crate::factors::{Grade, Input};
use crate::in_order;
use crate::inventory::Form;
use crate::load::{Indicator, Model};

use super::column::Drawn;
use super::columns::{ColumnId, Columns};
use super::elasticity::gradient;
use super::sum::{Sum, load};
use super::variance::Moments;

/// One input of a difference.
#[derive(Debug, Clone, PartialEq)]
pub struct Driver {
    /// The input, and the route where each route has draws of its own.
    pub drawn: Drawn,
    /// Its row, as the alternative has it that did not replace it.
    pub input: Input,
    /// Its 5 % and 95 % points, in its unit.
    pub ends: (f64, f64),
    /// The difference at these.
    pub at_ends: (f64, f64),
    /// The difference at 10 % less and 10 % more.
    pub at_ten: (f64, f64),
    /// By how many per cent the difference changes with one per cent of the input; none where nothing differs.
    pub elasticity: Option<f64>,
    /// The share of the variance that is gone once the input is known.
    pub first: f64,
    /// The share that stays while it alone is unknown.
    pub total: f64,
}

impl Driver {
    /// How far the difference moves between the ends.
    pub fn width(&self) -> f64 {
        (self.at_ends.1 - self.at_ends.0).abs()
    }

    /// Whether the difference changes sign between the ends.
    pub fn turns(&self) -> bool {
        self.at_ends.0 * self.at_ends.1 < 0.0
    }
}

/// What moves the difference of a pair.
#[derive(Debug, Clone, PartialEq)]
pub struct Drivers {
    /// Second less first, every input at its median.
    pub headline: f64,
    /// Its mean.
    pub mean: f64,
    /// Its standard deviation.
    pub deviation: f64,
    /// The inputs, the largest total share of the variance first.
    pub rows: Vec<Driver>,
    /// The share of the variance that stays while only inputs of grade D are unknown.
    pub on_grade_d: f64,
    /// The same for grades C and D.
    pub on_weak: f64,
    /// How bad the weak data would have to be.
    pub weak: Weak,
}

/// All inputs of grade C and D moved together towards the ends that favour whoever loads more.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weak {
    /// How many inputs that are.
    pub inputs: usize,
    /// The difference with all of them at those ends.
    pub at_ends: f64,
    /// The share of the way to the ends at which the order turns; none where it does not.
    pub turns_at: Option<f64>,
}

/// The drivers of the difference b - a; none where the pair shares no line.
pub fn drivers(comparison: &Comparison, a: usize, b: usize, indicator: Indicator) -> Option<Drivers> {
    let (first, second) = comparison.of_pair(a, b)?;
    let mut columns = Columns::default();
    let mut sum = load(&second, indicator, comparison.per, &mut columns);
    sum.plus(&load(&first, indicator, comparison.per, &mut columns), -1.0);
    sum.0.retain(|_, coefficient| *coefficient != 0.0);
    let medians = columns.medians();
    let (headline, gradient) = gradient(&sum, &medians);
    let moments = Moments::of(&sum, &columns);
    let inputs: Vec<Input> = columns.list().iter().map(|(drawn, _)| row(drawn, [&first, &second])).collect();
    let grade = |column: ColumnId| inputs[usize::from(column)].grade;
    let (variance, [on_grade_d, on_weak]) = moments.variance_of([&|column| grade(column) == Grade::D, &|column| grade(column) >= Grade::C]);
    let mut rows: Vec<Driver> = variance
        .shares
        .iter()
        .map(|(column, (own, total))| {
            let (drawn, shape) = &columns.list()[usize::from(*column)];
            let input = inputs[usize::from(*column)].clone();
            let median = medians[usize::from(*column)];
            let at = |x: f64| value_at(&sum, &medians, *column, x);
            let (low, high) = (shape.at(0.05), shape.at(0.95));
            let in_unit = |x: f64| x / median * input.value;
            Driver {
                drawn: drawn.clone(),
                ends: (in_unit(low), in_unit(high)),
                at_ends: (at(low), at(high)),
                at_ten: (at(0.9 * median), at(1.1 * median)),
                elasticity: (headline != 0.0).then(|| gradient.get(column).map_or(0.0, |moved| moved / headline)),
                first: *own,
                total: *total,
                input,
            }
        })
        .collect();
    in_order(&mut rows, |x, y| y.total.total_cmp(&x.total).then_with(|| x.drawn.cmp(&y.drawn)));
    let mut weak: BTreeMap<ColumnId, f64> = BTreeMap::new();
    for (place, (_, shape)) in columns.list().iter().enumerate().filter(|(place, _)| inputs[*place].grade >= Grade::C) {
        let column = place as ColumnId;
        let (low, high) = (shape.at(0.05), shape.at(0.95));
        // The end at which the difference is less of what it is.
        let less = |x: f64| value_at(&sum, &medians, column, x) * headline.signum();
        weak.insert(column, if less(low) < less(high) { low } else { high });
    }
    Some(Drivers {
        headline,
        mean: variance.mean,
        deviation: variance.variance.max(0.0).sqrt(),
        on_grade_d,
        on_weak,
        weak: weak_data(&sum, &medians, &weak, headline),
        rows,
    })
}

/// The row of a drawn input, from a part that draws it.
fn row(drawn: &Drawn, models: [&Model; 2]) -> Input {
    let parts = models.into_iter().flat_map(|model| &model.parts);
    let rows = parts
        .filter(|part| drawn.route.is_none_or(|route| part.plan.alternative.route == route))
        .filter_map(|part| part.plan.book.row(&drawn.id));
    let mut rows = rows.collect::<Vec<_>>();
    in_order(&mut rows, |x, y| (x.origin == crate::factors::Origin::Override).cmp(&(y.origin == crate::factors::Origin::Override)));
    rows[0].clone()
}

/// The sum with one column at another value.
fn value_at(sum: &Sum, medians: &[f64], moved: ColumnId, x: f64) -> f64 {
    value(sum, &|column| if column == moved { x } else { medians[usize::from(column)] })
}

fn value(sum: &Sum, at: &dyn Fn(ColumnId) -> f64) -> f64 {
    let of = |product: &[(ColumnId, Form)]| product.iter().fold(1.0, |value, (column, way)| value * way.at(at(*column)));
    sum.0.iter().fold(0.0, |whole, (product, coefficient)| whole + coefficient * of(product))
}

fn weak_data(sum: &Sum, medians: &[f64], ends: &BTreeMap<ColumnId, f64>, headline: f64) -> Weak {
    let at = |share: f64| {
        value(sum, &|column| {
            let median = medians[usize::from(column)];
            ends.get(&column).map_or(median, |end| median + share * (end - median))
        })
    };
    let at_ends = at(1.0);
    let turned = |value: f64| value * headline < 0.0;
    let turns_at = turned(at_ends).then(|| {
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..40 {
            let middle = 0.5 * (low + high);
            if turned(at(middle)) { high = middle } else { low = middle }
        }
        high
    });
    Weak { inputs: ends.len(), at_ends, turns_at }
}
