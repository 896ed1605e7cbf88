//! A run: steps that each make a number of those before, and loads that are sums of products of them, for a few draws at a time.

use crate::{Form, wide};

/// Draws worked on at once.
const LANES: usize = 24;

type Lanes = [f64; LANES];

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

/// Works out every load for the draws of the columns, all of one length; `out` is one load after another.
pub fn run(steps: &[Step], loads: &[Load], columns: &[&[f64]], draws: usize, out: &mut [Vec<f64>]) {
    wide(
        #[inline(always)]
        || run_wide(steps, loads, columns, draws, out),
    );
}

#[inline(always)]
fn run_wide(steps: &[Step], loads: &[Load], columns: &[&[f64]], draws: usize, out: &mut [Vec<f64>]) {
    let mut made = vec![[1.0; LANES]; steps.len()];
    for first in (0..draws).step_by(LANES) {
        let wide = LANES.min(draws - first);
        for (place, step) in steps.iter().enumerate() {
            let (before, own) = made.split_at_mut(place);
            let own = &mut own[0];
            match step {
                Step::One => {}
                Step::Form(column, form) => {
                    own[..wide].copy_from_slice(&columns[usize::from(*column)][first..first + wide]);
                    take(*form, own);
                }
                Step::Times(a, b) => *own = times(&before[*a as usize], &before[*b as usize]),
                Step::Sum(list) => {
                    let mut sum = [0.0; LANES];
                    for (at, by) in list {
                        add(&mut sum, &before[*at as usize], f64::from_bits(*by));
                    }
                    *own = sum;
                }
            }
        }
        for (out, load) in out.iter_mut().zip(loads) {
            let mut sum = [0.0; LANES];
            for (amount, factor, by) in load {
                add(&mut sum, &times(&made[*amount as usize], &made[*factor as usize]), *by);
            }
            out.extend_from_slice(&sum[..wide]);
        }
    }
}

/// The form of each, in place: what `Form::at` makes of it.
#[inline(always)]
fn take(form: Form, x: &mut Lanes) {
    match form {
        Form::PerOnePlus => reciprocals(x, |x| 1.0 + x),
        Form::PerOneMinus => reciprocals(x, |x| 1.0 - x),
        Form::Power(power) => {
            let once = *x;
            for _ in 1..power.unsigned_abs() {
                *x = times(x, &once);
            }
            if power < 0 {
                reciprocals(x, |x| x);
            }
        }
    }
}

#[inline(always)]
fn reciprocals(x: &mut Lanes, of: impl Fn(f64) -> f64) {
    for x in x {
        *x = 1.0 / of(*x);
    }
}

#[inline(always)]
fn times(a: &Lanes, b: &Lanes) -> Lanes {
    let mut product = [0.0; LANES];
    for ((product, a), b) in product.iter_mut().zip(a).zip(b) {
        *product = a * b;
    }
    product
}

#[inline(always)]
fn add(sum: &mut Lanes, x: &Lanes, by: f64) {
    for (sum, x) in sum.iter_mut().zip(x) {
        *sum += by * x;
    }
}
