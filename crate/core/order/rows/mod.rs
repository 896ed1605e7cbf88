//! Rows of a spreadsheet as lines of an order: an inventory with one sign a row, or a list with quantities.
//!
//! Text is cut into cells (`text`, `grid`), each column is taken as something (`field`, `column`), each cell is read as people
//! write it (`cell`, `size`, `code`, `colours`), each row becomes a sign or a fault (`sign`), and equal signs are added up (`lines`).
//! No row vanishes: it is in a line, or listed with its faults, or empty and counted.

mod cell;
mod code;
pub(super) mod colours;
mod column;
mod fault;
mod field;
mod grid;
mod left_out;
mod lines;
mod sign;
mod size;
mod text;
mod wanted;

pub use column::{Column, How, letters};
pub use fault::RowFault;
pub use field::Field;
pub use grid::SEPARATORS;
pub use left_out::left_out;
pub use lines::{Facts, Rows, order};
pub use text::Encoding;
pub use wanted::Wanted;
