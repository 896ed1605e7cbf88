//! A comparison: every alternative on the lines that all of them can make.

use super::{Caution, Difference, caution};
use crate::factors::{TableFault, Tables};
use crate::inventory::{Gap, Layout};
use crate::load::{Indicator, Model, ModelFault, Per};
use crate::order::{Boundary, Job, Order, OrderFault, jobs};
use crate::route::{Reason, open_book, route};

/// A job that an alternative cannot make.
#[derive(Debug, Clone, PartialEq)]
pub struct Dropped {
    /// The label of its line.
    pub label: String,
    /// The alternative.
    pub alternative: String,
    /// Why.
    pub reason: Reason,
}

/// Alternatives compared on the same lines.
#[derive(Debug)]
pub struct Comparison {
    /// The order.
    pub order: Order,
    /// Per what loads are given.
    pub per: Per,
    /// What is counted.
    pub boundary: Boundary,
    /// The jobs that all alternatives can make.
    pub jobs: Vec<Job>,
    /// Lines of the order.
    pub lines: usize,
    /// Lines compared.
    pub lines_compared: usize,
    /// Every alternative's model.
    pub models: Vec<Model>,
    /// What was dropped, and why.
    pub dropped: Vec<Dropped>,
    /// Where an air flow is below the fire-protection floor.
    pub cautions: Vec<Caution>,
}

/// Why there is no comparison.
#[derive(Debug)]
pub enum CompareFault {
    /// The order is at fault.
    Order(Vec<OrderFault>),
    /// A table is at fault.
    Table(Vec<TableFault>),
    /// Mass does not close: a fault of the program.
    Mass(Vec<Gap>),
    /// No line can be made by every alternative.
    NothingInCommon(Vec<Dropped>),
}

/// Compares an order's alternatives.
pub fn compare(tables: &Tables, order: &Order, per: Per, boundary: Boundary) -> Result<Comparison, CompareFault> {
    let mut faults = Vec::new();
    let mut books = Vec::new();
    for alternative in &order.alternatives {
        match open_book(tables, order, alternative) {
            Ok(book) => books.push((alternative, Layout::read(&book), book)),
            Err(more) => faults.extend(more),
        }
    }
    if !faults.is_empty() {
        return Err(CompareFault::Order(faults));
    }
    let mut dropped = Vec::new();
    let all = jobs(&order.lines);
    let common: Vec<Job> = all
        .iter()
        .filter(|job| {
            let before = dropped.len();
            for (alternative, layout, book) in &books {
                if let Err(reason) = route(alternative.route).work(job, layout, book) {
                    dropped.push(Dropped { label: job.line.label.clone(), alternative: alternative.id.clone(), reason });
                }
            }
            dropped.len() == before
        })
        .cloned()
        .collect();
    if common.is_empty() {
        return Err(CompareFault::NothingInCommon(dropped));
    }
    let mut models = Vec::new();
    let mut cautions = Vec::new();
    for (alternative, layout, book) in books {
        let model = Model::build(order, alternative, book, &layout, &common, boundary).map_err(|fault| match fault {
            ModelFault::Table(faults) => CompareFault::Table(faults),
            ModelFault::Mass(gaps) => CompareFault::Mass(gaps),
        })?;
        cautions.extend(caution::cautions(&model));
        models.push(model);
    }
    let lines_compared = common.iter().map(|job| job.lines).sum();
    Ok(Comparison {
        order: order.clone(),
        per,
        boundary,
        lines: order.lines.len(),
        lines_compared,
        jobs: common,
        models,
        dropped,
        cautions,
    })
}

impl Comparison {
    /// The model of that alternative.
    pub fn model(&self, id: &str) -> Option<&Model> {
        self.models.iter().find(|model| model.alternative.id == id)
    }

    /// The pairs shown: the first alternative with each other route's first, then alternatives of
    /// one route.
    pub fn pairs(&self) -> Vec<(usize, usize)> {
        let mut pairs = Vec::new();
        for same_route in [false, true] {
            for a in 0..self.models.len() {
                for b in a + 1..self.models.len() {
                    if (self.models[a].alternative.route == self.models[b].alternative.route) == same_route {
                        pairs.push((a, b));
                    }
                }
            }
        }
        pairs
    }

    /// The difference b - a in an indicator.
    pub fn difference(&self, a: usize, b: usize, indicator: Indicator) -> Difference {
        let load = |index: usize| self.models[index].load(indicator, self.per).value;
        Difference::between(indicator, load(a), load(b), self.divided_by_m2())
    }

    /// Square metres that a load in this view is given for: thresholds are per m2.
    fn divided_by_m2(&self) -> f64 {
        match self.per {
            Per::M2 => 1.0,
            Per::Order => self.models.first().map_or(1.0, |model| model.divisor(Per::M2)),
            Per::M2Year => self.models.first().map_or(1.0, |model| 1.0 / model.life),
        }
    }
}
