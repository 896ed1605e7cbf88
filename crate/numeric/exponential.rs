//! The one place for exponential and logarithm; the normal quantile beside it is made of them.
//!
//! The standard library's differ between machines in the last bit; these are sums, products,
//! quotients, square roots and moves of bits only, so every machine finds the same bits. Nothing
//! branches, so that loops over them vectorise.
//!
//! - `exp`: x = k ln 2 + r, |r| <= ln 2 / 2, Taylor's polynomial of degree 13 in r, times 2^k;
//! - `ln`: x = 2^k m, s = (m - 1)/(m + 1), 2(s + s^3/3 + s^5/5 + ...).
//!
//! ```
//! use faceload_numeric::{exp, ln};
//! assert!((exp(1.0) - std::f64::consts::E).abs() < 1e-15);
//! assert!((ln(10.0) - std::f64::consts::LN_10).abs() < 1e-15);
//! ```

use std::ops::{Add, Mul};

use crate::lane::Lane;

/// Added to a number below 2^51, leaves it rounded to a whole one in the low bits.
const ROUNDING: f64 = 6_755_399_441_055_744.0;
/// ln 2, its first 32 bits, and the rest.
const LN_2_HIGH: f64 = 6.931_471_803_691_238e-1;
const LN_2_LOW: f64 = 1.908_214_929_270_587_7e-10;

/// 1/n!, highest first, down to 1/0!.
const TAYLOR: [f64; 14] = [
    1.0 / 6_227_020_800.0,
    1.0 / 479_001_600.0,
    1.0 / 39_916_800.0,
    1.0 / 3_628_800.0,
    1.0 / 362_880.0,
    1.0 / 40_320.0,
    1.0 / 5_040.0,
    1.0 / 720.0,
    1.0 / 120.0,
    1.0 / 24.0,
    1.0 / 6.0,
    0.5,
    1.0,
    1.0,
];

/// e to the power x, for x from -700 to 700.
#[inline(always)]
pub fn exp(x: f64) -> f64 {
    exp_of(x.into()).numbers()[0]
}

/// The same of a lane.
#[inline(always)]
pub(super) fn exp_of(x: Lane) -> Lane {
    let x = x.within(-700.0, 700.0);
    let shifted = x * std::f64::consts::LOG2_E.into() + ROUNDING.into();
    let k = shifted - ROUNDING.into();
    let r = (x - k * LN_2_HIGH.into()) - k * LN_2_LOW.into();
    polynomial(r, &TAYLOR) * shifted.power_of_two()
}

/// 1/n for odd n, from 23 down to 1.
const ODD: [f64; 12] =
    [1.0 / 23.0, 1.0 / 21.0, 1.0 / 19.0, 1.0 / 17.0, 1.0 / 15.0, 1.0 / 13.0, 1.0 / 11.0, 1.0 / 9.0, 1.0 / 7.0, 1.0 / 5.0, 1.0 / 3.0, 1.0];

/// The natural logarithm of a positive, normal number.
#[inline(always)]
pub fn ln(x: f64) -> f64 {
    // Bits of 2^52 with a whole number in the low ones.
    const WHOLE: u64 = 0x4330_0000_0000_0000;
    let bits = x.to_bits();
    let exponent = f64::from_bits((bits >> 52) | WHOLE) - (f64::from_bits(WHOLE) + 1023.0);
    let m = f64::from_bits((bits & 0x000f_ffff_ffff_ffff) | (1023 << 52));
    let (m, k) = if m > std::f64::consts::SQRT_2 { (0.5 * m, exponent + 1.0) } else { (m, exponent) };
    let s = (m - 1.0) / (m + 1.0);
    // |s| <= 0.1716, so that the 12th term is below 1e-17 of the first.
    let sum = polynomial(s * s, &ODD);
    k * LN_2_HIGH + (2.0 * s * sum + k * LN_2_LOW)
}

/// A polynomial, highest power first.
#[inline(always)]
pub(super) fn polynomial<T, const N: usize>(x: T, coefficients: &[f64; N]) -> T
where
    T: Copy + From<f64> + Mul<Output = T> + Add<Output = T>,
{
    let mut sum = T::from(coefficients[0]);
    for next in &coefficients[1..] {
        sum = sum * x + T::from(*next);
    }
    sum
}
