//! A run: steps that each make a number of those before, and loads that are sums of products of them, for a few draws at a time.

use crate::lane::{Lane, WIDTH};
use crate::{Form, wide};

/// Draws worked on at once.
const DRAWS: usize = 24;

type Lanes = [Lane; DRAWS / WIDTH];

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
#[inline(never)]
pub fn run(steps: &[Step], loads: &[Load], columns: &[&[f64]], draws: usize, out: &mut [Vec<f64>]) {
    wide(
        #[inline(always)]
        || run_wide(steps, loads, columns, draws, out),
    );
}

#[inline(always)]
fn run_wide(steps: &[Step], loads: &[Load], columns: &[&[f64]], draws: usize, out: &mut [Vec<f64>]) {
    let mut made: Vec<Lanes> = vec![all(1.0); steps.len()];
    for first in (0..draws).step_by(DRAWS) {
        let wide = DRAWS.min(draws - first);
        for (place, step) in steps.iter().enumerate() {
            let (before, own) = made.split_at_mut(place);
            let own = &mut own[0];
            match step {
                Step::One => {}
                Step::Form(column, form) => {
                    let column = &columns[usize::from(*column)][first..first + wide];
                    let (numbers, rest) = column.as_chunks::<WIDTH>();
                    for (own, numbers) in own.iter_mut().zip(numbers) {
                        *own = Lane::of(*numbers);
                    }
                    for number in rest {
                        own[numbers.len()] = Lane::from(*number);
                    }
                    take(*form, own);
                }
                Step::Times(a, b) => *own = times(&before[*a as usize], &before[*b as usize]),
                Step::Sum(list) => {
                    let mut sum: Lanes = all(0.0);
                    for (at, by) in list {
                        add(&mut sum, &before[*at as usize], f64::from_bits(*by));
                    }
                    *own = sum;
                }
            }
        }
        for (out, load) in out.iter_mut().zip(loads) {
            let mut sum: Lanes = all(0.0);
            for (amount, factor, by) in load {
                add(&mut sum, &times(&made[*amount as usize], &made[*factor as usize]), *by);
            }
            out.extend_from_slice(&sum.map(Lane::numbers).as_flattened()[..wide]);
        }
    }
}

#[inline(always)]
fn all(number: f64) -> Lanes {
    [number.into(); DRAWS / WIDTH]
}

/// The form of each, in place: what `Form::at` makes of it.
#[inline(always)]
fn take(form: Form, x: &mut Lanes) {
    match form {
        Form::PerOnePlus => reciprocals(x, |x| Lane::from(1.0) + x),
        Form::PerOneMinus => reciprocals(x, |x| Lane::from(1.0) - x),
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
fn reciprocals(x: &mut Lanes, of: impl Fn(Lane) -> Lane) {
    for x in x {
        *x = Lane::from(1.0) / of(*x);
    }
}

#[inline(always)]
fn times(a: &Lanes, b: &Lanes) -> Lanes {
    let mut product = *a;
    for (product, b) in product.iter_mut().zip(b) {
        *product = *product * *b;
    }
    product
}

#[inline(always)]
fn add(sum: &mut Lanes, x: &Lanes, by: f64) {
    let by = Lane::from(by);
    for (sum, x) in sum.iter_mut().zip(x) {
        *sum = *sum + by * *x;
    }
}
