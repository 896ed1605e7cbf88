//! A finding: what the draws say of a pair in one indicator.
//!
//! - *clear*: the middle 90 % of the paired difference excludes zero and its median is at least 5 % of the
//!   smaller load and not too small to matter;
//! - *about the same*: the whole of that interval lies within 5 % of the smaller load or within what is too small to
//!   matter per m2, or it excludes zero and its median is too small to matter;
//! - *no clear difference*: otherwise.
//!
//! The 5 % and the small amounts per m2 are judgement, grade D; they stand in `comparison/pair.rs`.

use crate::comparison::{Comparison, SMALL_SHARE};
use crate::load::Indicator;

use super::draws::Draws;
use super::interval::{Interval, share_above_zero, share_below};

/// What the draws say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Finding {
    /// The first loads less.
    FirstLess,
    /// The second loads less.
    SecondLess,
    /// About the same.
    AboutTheSame,
    /// No clear difference.
    NoClearDifference,
}

impl Finding {
    /// Its name in results.
    pub fn name(self) -> &'static str {
        match self {
            Self::FirstLess => "first-less",
            Self::SecondLess => "second-less",
            Self::AboutTheSame => "about-the-same",
            Self::NoClearDifference => "no-clear-difference",
        }
    }
}

/// A pair in one indicator, as the draws have it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PairSpread {
    /// The indicator.
    pub indicator: Indicator,
    /// Second less first, every input at its median.
    pub headline: f64,
    /// The first's loads.
    pub first: Interval,
    /// The second's.
    pub second: Interval,
    /// Second less first, draw by draw.
    pub difference: Interval,
    /// In what share of the draws the first loads less, a tie counted half.
    pub first_less: f64,
    /// At what share of the draws' differences the headline lies.
    pub headline_at: f64,
    /// What the draws say.
    pub finding: Finding,
}

impl PairSpread {
    /// Of a pair on the lines both can make; none where they share no line, or no draws were made of them.
    pub fn of(comparison: &Comparison, draws: &Draws, a: usize, b: usize, indicator: Indicator) -> Option<Self> {
        let pair = draws.pair(comparison, a, b, indicator)?;
        let single = comparison.difference(a, b, indicator)?;
        let (model, _) = comparison.of_pair(a, b)?;
        let differences = pair.differences();
        let [first, second, difference] = draws.pair_intervals(comparison, a, b, indicator)?;
        Some(Self {
            indicator,
            headline: single.value(),
            first,
            second,
            difference,
            first_less: share_above_zero(&differences),
            headline_at: share_below(&differences, single.value()),
            finding: finding(&difference, first.median.min(second.median), comparison.matters(indicator, &model)),
        })
    }

    /// Whether the headline stands for the draws: it lies between their 20 % and 80 % points, or nothing differs.
    pub fn headline_stands(&self) -> bool {
        (0.2..=0.8).contains(&self.headline_at) || (self.difference.p5 == 0.0 && self.difference.p95 == 0.0)
    }
}

/// What an interval of a difference says, given the smaller load and what is too small to matter.
pub fn finding(difference: &Interval, smaller: f64, matters: f64) -> Finding {
    let bar = matters.max(SMALL_SHARE * smaller);
    let clear = difference.excludes_zero();
    if clear && difference.median.abs() >= bar {
        return if difference.median > 0.0 { Finding::FirstLess } else { Finding::SecondLess };
    }
    let within = difference.p5 >= -bar && difference.p95 <= bar;
    if within || (clear && difference.median.abs() < matters) { Finding::AboutTheSame } else { Finding::NoClearDifference }
}
