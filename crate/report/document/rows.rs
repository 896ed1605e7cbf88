//! Rows of numbers with a column for each alternative, gathered one by one.

use crate::figure::Cell;
use crate::words::number;
use faceload_core::in_order;

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
            in_order(&mut self.list, |x, y| x.0.cmp(&y.0));
        }
        let holding = self.list.into_iter().filter(|(_, values)| values.iter().any(|value| *value != 0.0));
        let row = |(name, values): (Vec<String>, Vec<f64>)| {
            let numbers = values.into_iter().map(|value| Cell::number(value, number(value)));
            name.into_iter().map(Cell::from).chain(numbers).collect()
        };
        holding.map(row).collect()
    }
}
