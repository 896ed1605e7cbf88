//! Reference flows: what each alternative buys and does for the functional unit of the whole order.

use faceload_core::inventory::What;
use faceload_core::order::Boundary;
use faceload_core::quantity::Kind;

use super::found::Found;
use super::node::{Node, aside, table};
use crate::figure::{Cell, Table};
use crate::words::number;

/// Rows of numbers, one column an alternative; a name met again adds to its row.
pub struct Rows {
    width: usize,
    list: Vec<(Vec<String>, Vec<f64>)>,
}

impl Rows {
    /// No rows yet, of so many alternatives.
    pub fn new(width: usize) -> Self {
        Self { width, list: Vec::new() }
    }

    /// Adds to the row of that name.
    pub fn add(&mut self, name: &[&str], at: usize, value: f64) {
        let known = self.list.iter_mut().find(|(known, _)| known.iter().map(String::as_str).eq(name.iter().copied()));
        match known {
            Some((_, values)) => values[at] += value,
            None => {
                let mut values = vec![0.0; self.width];
                values[at] = value;
                self.list.push((name.iter().map(|part| (*part).to_owned()).collect(), values));
            }
        }
    }

    /// As rows of a table, those that hold anything, in the order of their names.
    pub fn table_rows(mut self, sorted: bool) -> Vec<Vec<Cell>> {
        if sorted {
            self.list.sort_by(|x, y| x.0.cmp(&y.0));
        }
        let holding = self.list.into_iter().filter(|(_, values)| values.iter().any(|value| *value != 0.0));
        let row = |(name, values): (Vec<String>, Vec<f64>)| {
            let numbers = values.into_iter().map(|value| Cell::number(value, number(value)));
            name.into_iter().map(Cell::from).chain(numbers).collect()
        };
        holding.map(row).collect()
    }
}

/// Reference flows.
pub fn section(found: &Found<'_>) -> Node {
    let models = found.models();
    let mut bought = Rows::new(models.len());
    let mut done = Rows::new(models.len());
    for (at, model) in models.iter().enumerate() {
        bought.add(&["sign face in service", "m2"], at, model.m2.base());
        for part in &model.parts {
            let flows = part.plan.flows.iter().filter(|flow| !flow.blank || found.comparison.boundary == Boundary::FaceWithBlank);
            let mut asked = Vec::new();
            for flow in flows {
                asked.extend(flow.what.terms().0.iter().filter_map(|term| term.measure));
                if let What::Bought(..) = flow.what {
                    bought.add(&[&flow.label, "kg"], at, part.value(flow.what.terms()));
                }
            }
            // What nothing in the boundary asks for is not listed, such as the blank's.
            for (symbol, count) in part.activity.counts().iter().filter(|(symbol, _)| asked.contains(symbol)) {
                done.add(&[symbol.name, symbol.unit], at, *count);
            }
        }
    }
    let bought = Table {
        caption: "Bought for the whole order".to_owned(),
        columns: found.columns(&["what", "unit"]),
        rows: bought.table_rows(false),
        ..Table::default()
    };
    let done = Table {
        caption: "Counted from the order: facts and layout, nothing uncertain".to_owned(),
        columns: found.columns(&["what", "unit"]),
        rows: done.table_rows(true),
        ..Table::default()
    };
    super::section(
        "report-flows",
        found
            .own_lines()
            .into_iter()
            .chain([
                aside("What one order asks of each alternative. Lines that not all can make are left out here where all are compared."),
                table(&bought),
                table(&done),
            ])
            .collect(),
    )
}
