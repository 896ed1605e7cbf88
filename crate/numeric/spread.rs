//! From numbers between 0 and 1 to values of a distribution, in place.

use crate::exponential::exp_of;
use crate::lane::{Lane, each};
use crate::{normal_quantiles, wide};

/// Values whose logarithm is normal.
#[inline(never)]
pub fn lognormals(numbers: &mut [f64], median: f64, sigma: f64) {
    wide(
        #[inline(always)]
        || {
            normal_quantiles(numbers);
            each(numbers, |z| Lane::from(median) * exp_of(Lane::from(sigma) * z));
        },
    );
}

/// Values of a triangle on either side of the median.
#[inline(never)]
pub fn triangulars(numbers: &mut [f64], low: f64, median: f64, high: f64) {
    wide(
        #[inline(always)]
        || {
            for u in numbers {
                *u = triangular(*u, low, median, high);
            }
        },
    );
}

/// One of them.
#[inline(always)]
pub fn triangular(u: f64, low: f64, median: f64, high: f64) -> f64 {
    let below = u < 0.5;
    let (end, part) = if below { (low, u) } else { (high, 1.0 - u) };
    median + (end - median) * (1.0 - (2.0 * part).sqrt())
}

/// Values that are all alike likely.
#[inline(never)]
pub fn uniforms(numbers: &mut [f64], low: f64, high: f64) {
    wide(
        #[inline(always)]
        || {
            each(numbers, |u| Lane::from(low) + Lane::from(high - low) * u);
        },
    );
}
