//! The numbers behind a picture, at full precision, row by row as drawn: what a table beside it
//! or a file of it is written from.

/// One row of numbers.
#[derive(Clone, Debug, PartialEq)]
pub struct BehindRow {
    /// The row's label.
    pub label: String,
    /// Loads: the value, then low and high where an interval is shown. Swings: the difference at
    /// the input's low value and at its high value.
    pub numbers: Vec<f64>,
}

/// The numbers behind a picture.
#[derive(Clone, Debug, PartialEq)]
pub struct Behind {
    /// The picture's title.
    pub title: String,
    /// The unit of every number.
    pub unit: String,
    /// The rows, in the order drawn.
    pub rows: Vec<BehindRow>,
}
