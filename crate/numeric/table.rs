//! A table of values: some columns in some draws, kept in tiles of a few draws in which one column stands after another. So what
//! is worked on at once lies together.

/// Draws in a tile: those worked on at once.
pub const TILE: usize = 64;

/// The values of some columns.
///
/// ```
/// use faceload_numeric::{TILE, Table};
/// let mut table = Table::new(2, TILE + 1);
/// table.put(1, TILE - 1, &[3.0, 4.0]);
/// assert_eq!((table.tile(1, 0)[TILE - 1], table.tile(1, 1)[0]), (3.0, 4.0));
/// ```
#[derive(Debug, Clone)]
pub struct Table {
    columns: usize,
    tiles: Vec<[f64; TILE]>,
}

impl Table {
    /// All 0.
    pub fn new(columns: usize, draws: usize) -> Self {
        Self { columns, tiles: vec![[0.0; TILE]; columns * draws.div_ceil(TILE)] }
    }

    /// Puts the values of a column from a draw on.
    pub fn put(&mut self, column: usize, mut draw: usize, mut values: &[f64]) {
        while !values.is_empty() {
            let (tile, from) = (draw / TILE, draw % TILE);
            let (now, rest) = values.split_at(values.len().min(TILE - from));
            self.tiles[tile * self.columns + column][from..from + now.len()].copy_from_slice(now);
            draw += now.len();
            values = rest;
        }
    }

    /// The values of a column in a tile; those beyond the last draw mean nothing.
    pub fn tile(&self, column: usize, tile: usize) -> &[f64; TILE] {
        &self.tiles[tile * self.columns + column]
    }
}
