//! The table behind a picture, at full precision, row by row as drawn: what a table beside it or
//! a file of it is written from.

/// What a column holds; its words are the caller's.
#[derive(Clone, Debug, PartialEq)]
pub enum Column {
    /// The value drawn.
    Value,
    /// The point below which so many of a hundred draws lie.
    Percentile(u8),
    /// The difference at the input's low value.
    AtLow,
    /// The difference at the input's high value.
    AtHigh,
    /// The value of the input along the axis, in the input's own unit; percentiles beside it are
    /// of the input too.
    Input,
    /// Where a cell lies across.
    Across,
    /// Which alternative loads less.
    LoadsLess,
    /// The load of the alternative of this name.
    Alternative(String),
}

/// What stands in a column of a row.
#[derive(Clone, Debug, PartialEq)]
pub enum Cell {
    /// A number.
    Number(f64),
    /// Words of the panel.
    Words(String),
    /// Nothing: the row has no such number.
    Empty,
}

/// One row.
#[derive(Clone, Debug, PartialEq)]
pub struct BehindRow {
    /// The row's label.
    pub label: String,
    /// A cell for each column.
    pub cells: Vec<Cell>,
}

/// The table behind a picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Behind {
    /// The picture's title.
    pub title: String,
    /// The unit of every number, but those of an input.
    pub unit: String,
    /// The columns beside the label.
    pub columns: Vec<Column>,
    /// The rows, in the order drawn.
    pub rows: Vec<BehindRow>,
}

impl BehindRow {
    /// A row of numbers, some of them missing.
    pub(crate) fn numbers(label: &str, numbers: impl IntoIterator<Item = Option<f64>>) -> Self {
        let cells = numbers.into_iter().map(|n| n.map_or(Cell::Empty, Cell::Number));
        Self { label: label.to_owned(), cells: cells.collect() }
    }
}
