//! What is wrong with a cell, in every row where the same is wrong: where, what came, what was wanted, the way out.

use std::fmt;

use super::super::fault::plain;
use super::column::letters;
use crate::quantity::group;

/// One fault, with all rows that share it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RowFault {
    /// The file.
    pub file: String,
    /// The column, from 0; none where no column gives what was wanted.
    pub column: Option<usize>,
    /// The column's name.
    pub name: String,
    /// What came.
    pub came: String,
    /// What was wanted.
    pub wanted: String,
    /// The way out.
    pub help: String,
    /// Numbers of the rows, as a spreadsheet counts them.
    pub rows: Vec<usize>,
}

/// How many rows a message names.
const NAMED: usize = 4;

impl RowFault {
    /// Its column as a spreadsheet calls it, with its name.
    pub fn place(&self) -> String {
        match (self.column, self.name.as_str()) {
            (None, _) => "no column".to_owned(),
            (Some(column), "") => format!("column {}", letters(column)),
            (Some(column), name) => plain(&format!("column {} (`{name}`)", letters(column))),
        }
    }

    /// Its rows in words: `row 3`, `rows 3, 5 and 8`, `393 rows: 3, 5, 8, 9 and 389 more`.
    pub fn rows_in_words(&self) -> String {
        let numbers: Vec<String> = self.rows.iter().map(ToString::to_string).collect();
        match numbers.as_slice() {
            [one] => format!("row {one}"),
            [first @ .., last] if first.len() < NAMED => format!("rows {} and {last}", first.join(", ")),
            all => {
                let count = group(&all.len().to_string());
                let more = group(&(all.len().saturating_sub(NAMED)).to_string());
                format!("{count} rows: {} and {more} more", all[..NAMED.min(all.len())].join(", "))
            }
        }
    }

    /// What is wrong, without its place.
    pub fn words(&self) -> String {
        plain(&format!("{} where {} was wanted; {}", self.came, self.wanted, self.help))
    }
}

impl fmt::Display for RowFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&plain(&format!("{}, {}, {}: {}", self.file, self.rows_in_words(), self.place(), self.words())))
    }
}
