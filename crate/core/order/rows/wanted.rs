//! How rows are to be taken, where a user says so.

use std::collections::BTreeMap;

use super::Field;

/// What a user chose; what is not chosen is found out, and shown.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Wanted {
    /// What stands between cells.
    pub separator: Option<char>,
    /// Whether the first row names the columns.
    pub header: Option<bool>,
    /// What columns are taken as, by their place from 0; none for nothing.
    pub columns: BTreeMap<usize, Option<Field>>,
    /// What holds where a row gives nothing.
    pub where_missing: BTreeMap<Field, String>,
    /// The unit of lengths without one.
    pub unit: Option<String>,
    /// Whether a comma is the decimal mark.
    pub decimal_comma: bool,
}
