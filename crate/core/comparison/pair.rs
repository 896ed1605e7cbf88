//! A pair: by how much one alternative loads more than another.
//!
//! Without draws nothing can be said about how sure a difference is, so a verdict only tells a
//! difference that is too small to matter from one that is not. Thresholds (judgement, grade D):
//! 5 % of the smaller load, and 1 MJ, 1 L, 1 g VOC, 0.02 kg waste, 0.05 kg CO2e per m2.

use crate::load::Indicator;

/// What single values say of a pair.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Verdict {
    /// The first loads less.
    FirstLess,
    /// The second loads less.
    SecondLess,
    /// About the same.
    AboutTheSame,
}

/// The difference of two loads.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Difference {
    /// The indicator.
    pub indicator: Indicator,
    /// The first load.
    pub first: f64,
    /// The second load.
    pub second: f64,
    /// What the single values say.
    pub verdict: Verdict,
}

/// Below this share of the smaller load, two loads are about the same.
pub const SMALL_SHARE: f64 = 0.05;

/// Below this much per m2, in the indicator's unit, two loads are about the same.
pub fn small_per_m2(indicator: Indicator) -> f64 {
    match indicator {
        Indicator::Energy | Indicator::Water => 1.0,
        Indicator::Solvent => 0.001,
        Indicator::Waste => 0.02,
        Indicator::Co2e => 0.05,
    }
}

impl Difference {
    /// Between two loads, each for so many m2.
    pub(super) fn between(indicator: Indicator, first: f64, second: f64, m2: f64) -> Self {
        let difference = second - first;
        let small = difference.abs() < small_per_m2(indicator) * m2 || difference.abs() <= SMALL_SHARE * first.min(second);
        let verdict = if small {
            Verdict::AboutTheSame
        } else if difference > 0.0 {
            Verdict::FirstLess
        } else {
            Verdict::SecondLess
        };
        Self { indicator, first, second, verdict }
    }

    /// Second less first.
    pub fn value(&self) -> f64 {
        self.second - self.first
    }

    /// The difference as a share of the smaller load; none where that is 0.
    pub fn share_of_smaller(&self) -> Option<f64> {
        let smaller = self.first.min(self.second);
        (smaller > 0.0).then(|| self.value().abs() / smaller)
    }
}
