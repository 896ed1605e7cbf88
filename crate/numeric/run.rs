//! A run: steps that each make a number of those before, and loads that are sums of products of them, for a few draws at a time.

use std::cell::Cell;
use std::ops::Range;

use crate::lane::{Lane, WIDTH};
use crate::layout::{Deed, Layout, ONE, Place, of_column};
use crate::table::{TILE, Table};
use crate::{Form, wide};

/// Draws in a piece: what the widest registers hold, or the page's.
const PIECE: usize = if WIDTH == 1 { 8 } else { WIDTH };

type Piece = [Lane; PIECE / WIDTH];

/// What stands in a place. Cells, since what is made may stand where what it is made of stood; in line with what a processor
/// fetches at once.
#[repr(align(64))]
struct Row([Cell<Piece>; TILE / PIECE]);

/// What is made of steps before, by their places.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub enum Step {
    /// 1.
    One,
    /// A form of the column at a place.
    Form(u16, Form),
    /// The product of two.
    Times(u32, u32),
    /// Multiples of some, coefficients by their bits.
    Sum(Vec<(u32, u64)>),
}

/// A sum of products of two steps, each so many times.
pub type Load = Vec<(u32, u32, f64)>;

/// Works out every load in some draws, the first of which begins a tile, for columns of tables; `out` is one load after another.
#[inline(never)]
pub fn run(layout: &Layout, columns: &[(&Table, usize)], draws: Range<usize>, out: &mut [Vec<f64>]) {
    wide(
        #[inline(always)]
        || run_wide(layout, columns, draws, out),
    );
}

#[inline(always)]
fn run_wide(layout: &Layout, columns: &[(&Table, usize)], draws: Range<usize>, out: &mut [Vec<f64>]) {
    const NONE: Piece = [Lane::ZERO; PIECE / WIDTH];
    let rows: Vec<Row> = (0..layout.places).map(|_| Row(std::array::from_fn(|_| Cell::new(NONE)))).collect();
    let row = |place: Place| &rows[place as usize];
    set(row(ONE), |_| NONE.map(|_| Lane::from(1.0)));
    for first in draws.clone().step_by(TILE) {
        // In the order in which they lie: fetched ahead of their use.
        for (at, (table, column)) in columns.iter().take(layout.columns).enumerate() {
            let (pieces, _) = table.tile(*column, first / TILE).as_chunks::<PIECE>();
            set(row(of_column(at)), |at| lanes(&pieces[at]));
        }
        let mut out = out.iter_mut();
        for deed in &layout.deeds {
            match *deed {
                Deed::Form(x, form, to) => take(form, row(x), row(to)),
                Deed::Times(a, b, to) => {
                    let (a, b) = (row(a), row(b));
                    set(row(to), |at| times(a.at(at), b.at(at)));
                }
                Deed::Two([(x, by), (y, times)], to) => {
                    let (x, y) = (row(x), row(y));
                    set(row(to), |at| more(more(NONE, by, x.at(at)), times, y.at(at)));
                }
                Deed::Add(x, by, to) => {
                    let (x, to) = (row(x), row(to));
                    set(to, |at| more(to.at(at), by, x.at(at)));
                }
                Deed::Product(a, b, by, to) => {
                    let (a, b) = (row(a), row(b));
                    set(row(to), |at| more(NONE, by, times(a.at(at), b.at(at))));
                }
                Deed::AddProduct(a, b, by, to) => {
                    let (a, b, to) = (row(a), row(b), row(to));
                    set(to, |at| more(to.at(at), by, times(a.at(at), b.at(at))));
                }
                Deed::Out(from) => {
                    if let Some(out) = out.next() {
                        out.extend_from_slice(&numbers(row(from))[..TILE.min(draws.end - first)]);
                    }
                }
            }
        }
    }
}

impl Row {
    #[inline(always)]
    fn at(&self, piece: usize) -> Piece {
        self.0[piece].get()
    }
}

/// What stands in each piece of a row.
#[inline(always)]
fn set(row: &Row, of: impl Fn(usize) -> Piece) {
    for (at, piece) in row.0.iter().enumerate() {
        piece.set(of(at));
    }
}

#[inline(always)]
fn times(mut a: Piece, b: Piece) -> Piece {
    for (a, b) in a.iter_mut().zip(b) {
        *a = *a * b;
    }
    a
}

#[inline(always)]
fn more(mut sum: Piece, by: f64, x: Piece) -> Piece {
    let by = Lane::from(by);
    for (sum, x) in sum.iter_mut().zip(x) {
        *sum = *sum + by * x;
    }
    sum
}

#[inline(always)]
fn lanes(numbers: &[f64; PIECE]) -> Piece {
    let (lanes, _) = numbers.as_chunks::<WIDTH>();
    let mut piece = [Lane::ZERO; PIECE / WIDTH];
    for (piece, numbers) in piece.iter_mut().zip(lanes) {
        *piece = Lane::of(*numbers);
    }
    piece
}

#[inline(always)]
fn numbers(row: &Row) -> [f64; TILE] {
    let mut numbers = [0.0; TILE];
    let (pieces, _) = numbers.as_chunks_mut::<PIECE>();
    for (numbers, piece) in pieces.iter_mut().zip(&row.0) {
        numbers.copy_from_slice(piece.get().map(Lane::numbers).as_flattened());
    }
    numbers
}

/// The form of each: what `Form::at` makes of it.
#[inline(always)]
fn take(form: Form, x: &Row, to: &Row) {
    let one = Lane::from(1.0);
    match form {
        Form::PerOnePlus => set(to, |at| x.at(at).map(|x| one / (one + x))),
        Form::PerOneMinus => set(to, |at| x.at(at).map(|x| one / (one - x))),
        Form::Power(power) => set(to, |at| {
            let once = x.at(at);
            let product = (1..power.unsigned_abs()).fold(once, |product, _| times(product, once));
            if power < 0 { product.map(|product| one / product) } else { product }
        }),
    }
}
