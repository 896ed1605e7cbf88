//! Intervals: what a list of draws says, as quantiles.
//!
//! The quantile p of n sorted values lies at (n - 1)p between two of them, in proportion (type 7 of
//! Hyndman and Fan, The American Statistician 50 (1996) 361). No p-values, no standard errors of means:
//! the number of draws is a choice, not a sample.

use faceload_numeric::order_statistics;

/// The median and the middle 50 and 90 % of some draws.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interval {
    /// The 5 % point.
    pub p5: f64,
    /// The 25 % point.
    pub p25: f64,
    /// The median.
    pub median: f64,
    /// The 75 % point.
    pub p75: f64,
    /// The 95 % point.
    pub p95: f64,
}

impl Interval {
    /// Of some draws; all 0 where there are none.
    ///
    /// ```
    /// use faceload_core::analysis::Interval;
    /// let interval = Interval::of(&[4.0, 0.0, 3.0, 1.0, 2.0]);
    /// assert_eq!((interval.p25, interval.median, interval.p95), (1.0, 2.0, 3.8));
    /// ```
    pub fn of(draws: &[f64]) -> Self {
        let [p5, p25, median, p75, p95] = quantiles(draws, [0.05, 0.25, 0.5, 0.75, 0.95]);
        Self { p5, p25, median, p75, p95 }
    }

    /// Half of the width of the middle 90 %.
    pub fn half_width(&self) -> f64 {
        0.5 * (self.p95 - self.p5)
    }

    /// Whether the middle 90 % leaves zero out.
    pub fn excludes_zero(&self) -> bool {
        self.p5 > 0.0 || self.p95 < 0.0
    }
}

/// Quantiles, their shares rising; all 0 where there are no draws.
pub fn quantiles<const N: usize>(draws: &[f64], shares: [f64; N]) -> [f64; N] {
    let Some(last) = draws.len().checked_sub(1) else { return [0.0; N] };
    let at = shares.map(|share| last as f64 * share);
    let places: Vec<usize> = at.iter().flat_map(|at| [*at as usize, last.min(*at as usize + 1)]).collect();
    let values = order_statistics(draws, &places);
    let mut found = at;
    for ((quantile, at), pair) in found.iter_mut().zip(at).zip(values.chunks_exact(2)) {
        *quantile = pair[0] + at.fract() * (pair[1] - pair[0]);
    }
    found
}

/// In how many of some draws a difference is above zero, a draw of no difference counted half.
pub fn share_above_zero(differences: &[f64]) -> f64 {
    share(differences, |one| *one > 0.0, |one| *one == 0.0)
}

/// In how many of some draws a value is below one, a draw of just that value counted half.
pub fn share_below(draws: &[f64], value: f64) -> f64 {
    share(draws, |one| *one < value, |one| *one == value)
}

fn share(draws: &[f64], whole: impl Fn(&f64) -> bool, half: impl Fn(&f64) -> bool) -> f64 {
    if draws.is_empty() {
        return 0.5;
    }
    let halves = draws.iter().fold(0, |sum, one| sum + 2 * u64::from(whole(one)) + u64::from(half(one)));
    halves as f64 / (2 * draws.len()) as f64
}

/// The sampling error of a share of n draws: Wilson's 95 % interval (J. Am. Stat. Assoc. 22 (1927) 209).
///
/// ```
/// use faceload_core::analysis::wilson;
/// let (low, high) = wilson(0.93, 1000);
/// assert!((low - 0.9124853518).abs() < 1e-9 && (high - 0.9442236359).abs() < 1e-9);
/// ```
pub fn wilson(share: f64, n: usize) -> (f64, f64) {
    const Z: f64 = 1.959_963_984_540_054;
    let n = n as f64;
    let middle = share + Z * Z / (2.0 * n);
    let half = Z * (share * (1.0 - share) / n + Z * Z / (4.0 * n * n)).sqrt();
    let whole = 1.0 + Z * Z / n;
    ((middle - half) / whole, (middle + half) / whole)
}

/// In how many draws each of some alternatives loads least, second least and so on; a tie is shared.
pub fn rank_shares(loads: &[&[f64]]) -> Vec<Vec<f64>> {
    let (alternatives, draws) = (loads.len(), loads.first().map_or(0, |load| load.len()));
    let mut shares = vec![vec![0.0; alternatives]; alternatives];
    for draw in 0..draws {
        for (one, share) in shares.iter_mut().enumerate() {
            let own = loads[one][draw];
            let less = loads.iter().filter(|load| load[draw] < own).count();
            let same = loads.iter().filter(|load| load[draw] == own).count();
            for rank in &mut share[less..less + same] {
                *rank += 1.0 / same as f64;
            }
        }
    }
    for rank in shares.iter_mut().flatten() {
        *rank /= draws.max(1) as f64;
    }
    shares
}
