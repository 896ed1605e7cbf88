//! The normal quantile: M. J. Wichura, algorithm AS 241 (PPND16), Applied Statistics 37 (1988) 477.
//!
//! A quotient of polynomials in the middle 85 %, another one, of the tail's logarithm, outside it. Of many numbers the
//! first is worked out for all; then the tails, gathered, take their places. The bits are those of one by one.
//!
//! ```
//! use faceload_numeric::{normal_quantile, normal_quantiles};
//! assert!((normal_quantile(0.975) - 1.959963984540054).abs() < 1e-13);
//! let mut numbers = [0.975, 0.5, 1e-15];
//! normal_quantiles(&mut numbers);
//! assert_eq!(numbers, [0.975, 0.5, 1e-15].map(normal_quantile));
//! ```

use crate::lane::{Lane, each};

use super::exponential::{ln, polynomial};

/// Where the middle part ends, from one half.
const MIDDLE: f64 = 0.425;
/// A tail below e^-25 has polynomials of its own.
const FAR: f64 = 1.388_794_386_496_402e-11;
/// Numbers whose tails are gathered at once.
const GATHERED: usize = 256;
/// Tails worked out at once.
const LANES: usize = 8;

/// The value below which a standard normal variate lies with probability p, 0 < p < 1.
pub fn normal_quantile(p: f64) -> f64 {
    if is_tail(p) { outer(p) } else { middle(p.into()).numbers()[0] }
}

/// The same of many, in place.
#[inline(always)]
pub fn normal_quantiles(numbers: &mut [f64]) {
    for numbers in numbers.chunks_mut(GATHERED) {
        let (mut places, mut tails, mut found) = ([0; GATHERED], [0.5; GATHERED], 0);
        for (place, p) in numbers.iter().enumerate() {
            // Written over by the next one where this is no tail.
            (places[found], tails[found]) = (place, *p);
            found += usize::from(is_tail(*p));
        }
        each(numbers, middle);
        for (places, tails) in places[..found].chunks(LANES).zip(tails.chunks_exact(LANES)) {
            let mut z = [0.0; LANES];
            for (z, p) in z.iter_mut().zip(tails) {
                *z = near(*p);
            }
            for ((place, z), p) in places.iter().zip(z).zip(tails) {
                numbers[*place] = if tail(*p) < FAR { outer(*p) } else { z };
            }
        }
    }
}

#[inline(always)]
fn is_tail(p: f64) -> bool {
    (p - 0.5).abs() > MIDDLE
}

/// The probability of the tail beyond p.
#[inline(always)]
fn tail(p: f64) -> f64 {
    if p < 0.5 { p } else { 1.0 - p }
}

/// The quantile for |p - 0.5| <= 0.425.
#[inline(always)]
fn middle(p: Lane) -> Lane {
    let q = p - 0.5.into();
    let r = Lane::from(MIDDLE * MIDDLE) - q * q;
    q * polynomial(r, &MIDDLE_ABOVE) / polynomial(r, &MIDDLE_BELOW)
}

/// The quantile outside it.
fn outer(p: f64) -> f64 {
    if tail(p) >= FAR {
        return near(p);
    }
    let r = root(p) - 5.0;
    signed(p, polynomial(r, &FAR_ABOVE) / polynomial(r, &FAR_BELOW))
}

/// The quantile outside it where the tail is not a far one.
#[inline(always)]
fn near(p: f64) -> f64 {
    let r = root(p) - 1.6;
    signed(p, polynomial(r, &NEAR_ABOVE) / polynomial(r, &NEAR_BELOW))
}

#[inline(always)]
fn root(p: f64) -> f64 {
    (-ln(tail(p))).sqrt()
}

#[inline(always)]
fn signed(p: f64, size: f64) -> f64 {
    if p < 0.5 { -size } else { size }
}

const MIDDLE_ABOVE: [f64; 8] = [
    2.509_080_928_730_122_7e3,
    3.343_057_558_358_813e4,
    6.726_577_092_700_87e4,
    4.592_195_393_154_987e4,
    1.373_169_376_550_946e4,
    1.971_590_950_306_551_3e3,
    1.331_416_678_917_843_8e2,
    3.387_132_872_796_366_5,
];
const MIDDLE_BELOW: [f64; 8] = [
    5.226_495_278_852_545e3,
    2.872_908_573_572_194_3e4,
    3.930_789_580_009_271e4,
    2.121_379_430_158_659_7e4,
    5.394_196_021_424_751e3,
    6.871_870_074_920_579e2,
    4.231_333_070_160_091e1,
    1.0,
];
const NEAR_ABOVE: [f64; 8] = [
    7.745_450_142_783_414e-4,
    2.272_384_498_926_918_4e-2,
    2.417_807_251_774_506e-1,
    1.270_458_252_452_368_4,
    3.647_848_324_763_204_5,
    5.769_497_221_460_691,
    4.630_337_846_156_546,
    1.423_437_110_749_683_5,
];
const NEAR_BELOW: [f64; 8] = [
    1.050_750_071_644_416_9e-9,
    5.475_938_084_995_345e-4,
    1.519_866_656_361_645_7e-2,
    1.481_039_764_274_800_8e-1,
    6.897_673_349_851e-1,
    1.676_384_830_183_803_8,
    2.053_191_626_637_759,
    1.0,
];
const FAR_ABOVE: [f64; 8] = [
    2.010_334_399_292_288_1e-7,
    2.711_555_568_743_487_6e-5,
    1.242_660_947_388_078_4e-3,
    2.653_218_952_657_612_4e-2,
    2.965_605_718_285_048_7e-1,
    1.784_826_539_917_291_3,
    5.463_784_911_164_114,
    6.657_904_643_501_103,
];
const FAR_BELOW: [f64; 8] = [
    2.044_263_103_389_939_8e-15,
    1.421_511_758_316_446e-7,
    1.846_318_317_510_054_8e-5,
    7.868_691_311_456_133e-4,
    1.487_536_129_085_061_5e-2,
    1.369_298_809_227_358e-1,
    5.998_322_065_558_88e-1,
    1.0,
];
