//! A map: what the draws say of a pair over two things varied at once.

use super::draws::{Kept, Settings};
use super::finding::Finding;
use super::over::Axis;
use super::pair_draws::Pairing;

/// One value of each axis.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cell {
    /// The first's load.
    pub first: f64,
    /// The second's.
    pub second: f64,
    /// What the draws say.
    pub finding: Finding,
}

/// What the draws say, row by row: the second axis down, the first across. A cell is none where the two share no line.
#[derive(Debug, Clone)]
pub struct Map {
    /// The first axis, across.
    pub across: Axis,
    /// The second, down.
    pub down: Axis,
    /// The cells, a row for each value of the second axis.
    pub rows: Vec<Vec<Option<Cell>>>,
    /// Draws made in each cell.
    pub draws: usize,
}

/// Fills a map; `go_on` hears the share that is done. None where it was told to stop.
pub fn map(
    pairing: &Pairing<'_>,
    across: Axis,
    down: Axis,
    settings: Settings,
    kept: &mut Kept,
    mut go_on: impl FnMut(f64) -> bool,
) -> Option<Map> {
    let mut rows = Vec::new();
    for (done, y) in down.values.iter().enumerate() {
        let cell = |x: &f64| {
            let point = pairing.varied(&[(&across.over, *x), (&down.over, *y)], settings, kept)?;
            Some(Cell { first: point.first, second: point.second, finding: point.finding() })
        };
        rows.push(across.values.iter().map(cell).collect());
        if !go_on((done + 1) as f64 / down.values.len() as f64) {
            return None;
        }
    }
    Some(Map { across, down, rows, draws: settings.number })
}
