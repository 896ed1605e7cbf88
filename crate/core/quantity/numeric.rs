//! The one place for exponential, logarithm and the normal quantile.
//!
//! The standard library's differ between machines in the last bit; these are sums, products,
//! quotients, square roots and moves of bits only, so every machine finds the same bits. Loops over
//! them vectorise.
//!
//! - `exp`: x = k ln 2 + r, |r| <= ln 2 / 2, Taylor's polynomial of degree 13 in r, times 2^k;
//! - `ln`: x = 2^k m, s = (m - 1)/(m + 1), 2(s + s^3/3 + s^5/5 + ...);
//! - `normal_quantile`: M. J. Wichura, algorithm AS 241 (PPND16), Applied Statistics 37 (1988) 477.
//!
//! ```
//! use faceload_core::quantity::{exp, ln, normal_quantile};
//! assert!((exp(1.0) - std::f64::consts::E).abs() < 1e-15);
//! assert!((ln(10.0) - std::f64::consts::LN_10).abs() < 1e-15);
//! assert!((normal_quantile(0.975) - 1.959963984540054).abs() < 1e-13);
//! ```

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
    let x = x.clamp(-700.0, 700.0);
    let shifted = x * std::f64::consts::LOG2_E + ROUNDING;
    let k = shifted - ROUNDING;
    let r = (x - k * LN_2_HIGH) - k * LN_2_LOW;
    let sum = polynomial(r, &TAYLOR);
    sum * f64::from_bits(shifted.to_bits().wrapping_add(1023) << 52)
}

/// The natural logarithm of a positive, normal number.
pub fn ln(x: f64) -> f64 {
    let bits = x.to_bits();
    let mut exponent = ((bits >> 52) & 0x7ff) as i32 - 1023;
    let mut m = f64::from_bits((bits & 0x000f_ffff_ffff_ffff) | (1023 << 52));
    if m > std::f64::consts::SQRT_2 {
        m *= 0.5;
        exponent += 1;
    }
    let s = (m - 1.0) / (m + 1.0);
    let square = s * s;
    // |s| <= 0.1716, so that the 12th term is below 1e-17 of the first.
    let mut sum = 0.0;
    for odd in (1..=23).rev().step_by(2) {
        sum = sum * square + 1.0 / f64::from(odd);
    }
    let k = f64::from(exponent);
    k * LN_2_HIGH + (2.0 * s * sum + k * LN_2_LOW)
}

/// A polynomial, highest power first.
#[inline(always)]
fn polynomial<const N: usize>(x: f64, coefficients: &[f64; N]) -> f64 {
    let mut sum = coefficients[0];
    for next in &coefficients[1..] {
        sum = sum * x + next;
    }
    sum
}

const CENTRE_ABOVE: [f64; 8] = [
    2.509_080_928_730_122_7e3,
    3.343_057_558_358_813e4,
    6.726_577_092_700_87e4,
    4.592_195_393_154_987e4,
    1.373_169_376_550_946e4,
    1.971_590_950_306_551_3e3,
    1.331_416_678_917_843_8e2,
    3.387_132_872_796_366_5,
];
const CENTRE_BELOW: [f64; 8] = [
    5.226_495_278_852_545e3,
    2.872_908_573_572_194_3e4,
    3.930_789_580_009_271e4,
    2.121_379_430_158_659_7e4,
    5.394_196_021_424_751e3,
    6.871_870_074_920_579e2,
    4.231_333_070_160_091e1,
    1.0,
];
const TAIL_ABOVE: [f64; 8] = [
    7.745_450_142_783_414e-4,
    2.272_384_498_926_918_4e-2,
    2.417_807_251_774_506e-1,
    1.270_458_252_452_368_4,
    3.647_848_324_763_204_5,
    5.769_497_221_460_691,
    4.630_337_846_156_546,
    1.423_437_110_749_683_5,
];
const TAIL_BELOW: [f64; 8] = [
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

/// Where AS 241 leaves its central part.
pub const CENTRAL: f64 = 0.425;

/// The normal quantile of 0.5 + q, for |q| <= 0.425.
#[inline(always)]
pub fn central_quantile(q: f64) -> f64 {
    let r = CENTRAL * CENTRAL - q * q;
    q * polynomial(r, &CENTRE_ABOVE) / polynomial(r, &CENTRE_BELOW)
}

/// The value below which a standard normal variate lies with probability p, 0 < p < 1.
pub fn normal_quantile(p: f64) -> f64 {
    let q = p - 0.5;
    if q.abs() <= CENTRAL {
        return central_quantile(q);
    }
    let tail = if q < 0.0 { p } else { 1.0 - p };
    let r = (-ln(tail)).sqrt();
    let size = if r <= 5.0 {
        polynomial(r - 1.6, &TAIL_ABOVE) / polynomial(r - 1.6, &TAIL_BELOW)
    } else {
        polynomial(r - 5.0, &FAR_ABOVE) / polynomial(r - 5.0, &FAR_BELOW)
    };
    if q < 0.0 { -size } else { size }
}
