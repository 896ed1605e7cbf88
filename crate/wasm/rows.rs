//! Rows of a spreadsheet, asked by the page: what was understood, the order they become, and the rows left out.

use faceload_core::order::rows::{Field, Rows, Wanted, left_out, order};
use faceload_report::row_report;
use serde::Deserialize;
use serde_json::Value;

use crate::door::{Fault, named, plain, with_tables};

/// What the page says of the rows.
#[derive(Deserialize)]
pub struct Asked {
    name: String,
    separator: Option<char>,
    header: Option<bool>,
    /// Columns by their place from 0, and the field each is taken as; no word is nothing.
    columns: Vec<(usize, String)>,
    missing: Vec<(String, String)>,
    unit: Option<String>,
    comma: bool,
}

impl Asked {
    fn wanted(&self) -> Wanted {
        let missing = self.missing.iter().filter_map(|(word, value)| Some((Field::read(word)?, value.clone())));
        let mut wanted = Wanted {
            separator: self.separator,
            header: self.header,
            unit: self.unit.clone(),
            decimal_comma: self.comma,
            ..Wanted::default()
        };
        wanted.columns.extend(self.columns.iter().map(|(place, word)| (*place, Field::read(word))));
        wanted.where_missing.extend(missing);
        wanted
    }
}

fn read<T>(bytes: &[u8], asked: &Asked, answer: impl FnOnce(Rows, &Wanted) -> Result<T, Vec<Fault>>) -> Result<T, Vec<Fault>> {
    let wanted = asked.wanted();
    with_tables(|tables| answer(Rows::read(&asked.name, bytes, &wanted, tables).map_err(|fault| named(vec![fault]))?, &wanted))
}

/// What was understood of the rows.
pub fn understood(bytes: &[u8], asked: &Asked) -> Result<String, Vec<Fault>> {
    read(bytes, asked, |rows, wanted| Ok(row_report::json(&rows, wanted, false).to_string()))
}

/// An order with the rows' lines, beside its own or in their place.
pub fn in_order(bytes: &[u8], asked: &Asked, before: &str, beside: bool) -> Result<String, Vec<Fault>> {
    let before: Value = serde_json::from_str(before).map_err(|error| vec![plain(error.to_string())])?;
    read(bytes, asked, |rows, _| Ok(order("", &rows.lines, Some((&before, beside))).to_string()))
}

/// The rows that could not be taken, as CSV with the reason behind each.
pub fn rest(bytes: &[u8], asked: &Asked) -> Result<String, Vec<Fault>> {
    read(bytes, asked, |rows, _| Ok(left_out(&rows)))
}
