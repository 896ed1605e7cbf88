//! A column: one uncertain input's value in every draw.
//!
//! With u from the input's stream and z the normal quantile of u:
//!
//! - lognormal: x = m exp(sigma z), sigma = ln(high/low)/3.2897;
//! - triangular, split at the median m: x = m - (m - low)(1 - sqrt(2u)) below, mirrored above;
//! - uniform: x = low + (high - low) u.
//!
//! Bounds hold by narrowing: where a range passes what is physically possible, it ends there.

use faceload_numeric::{Stream, lognormals, triangular, triangulars, uniforms};

use crate::factors::{Input, Scope, Spread};
use crate::order::RouteName;
use crate::quantity::{exp, ln, normal_quantile};

/// Twice the 95 % point of the standard normal distribution: the width of the 90 % range.
const WIDTH_90: f64 = 3.289_707_253_902_945;

/// How an input is drawn; its unit's base is in it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Shape {
    /// Its logarithm is normal.
    Lognormal {
        /// The median.
        median: f64,
        /// The standard deviation of the logarithm.
        sigma: f64,
    },
    /// Split at the median.
    Triangular {
        /// The lower end.
        low: f64,
        /// The median.
        median: f64,
        /// The upper end.
        high: f64,
    },
    /// Every value alike.
    Uniform {
        /// The lower end.
        low: f64,
        /// The upper end.
        high: f64,
    },
}

impl Shape {
    /// The shape of an input; none where it is not drawn.
    pub fn of(input: &Input) -> Option<Self> {
        let base = input.unit.base();
        let median = input.value * base;
        let (low, high) = input.bounds();
        let (low, high) = (low * base, high * base);
        match input.spread {
            Spread::Fixed => None,
            // A choice that is not made: none of it.
            Spread::Lognormal if median == 0.0 => None,
            Spread::Lognormal => Some(Self::Lognormal { median, sigma: ln(high / low) / WIDTH_90 }),
            Spread::Triangular => Some(Self::Triangular { low: low.min(median), median, high: high.max(median) }),
            Spread::Uniform => Some(Self::Uniform { low, high }),
        }
    }

    /// The value at a number between 0 and 1.
    pub fn at(self, u: f64) -> f64 {
        match self {
            Self::Lognormal { median, sigma } => median * exp(sigma * normal_quantile(u)),
            Self::Triangular { low, median, high } => triangular(u, low, median, high),
            Self::Uniform { low, high } => low + (high - low) * u,
        }
    }

    /// Turns numbers between 0 and 1 into values, in place: the same as `at`, many at once.
    pub fn fill(self, numbers: &mut [f64]) {
        match self {
            Self::Lognormal { median, sigma } => lognormals(numbers, median, sigma),
            Self::Triangular { low, median, high } => triangulars(numbers, low, median, high),
            Self::Uniform { low, high } => uniforms(numbers, low, high),
        }
    }
}

/// Which draws an input shares with others of its id: all of them, or those of one route.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Drawn {
    /// The input's id.
    pub id: String,
    /// The route, where each route has draws of its own.
    pub route: Option<RouteName>,
}

impl Drawn {
    /// Of an input in an alternative of a route.
    pub fn of(input: &Input, route: RouteName) -> Self {
        Self { id: input.id.clone(), route: (input.scope == Scope::Route).then_some(route) }
    }

    /// The name of its stream.
    pub fn name(&self) -> String {
        self.route.map_or_else(|| self.id.clone(), |route| format!("{} {}", self.id, route.name()))
    }

    /// Its stream.
    pub fn stream(&self, settings: super::Settings) -> Stream {
        Stream::new(settings.seed, &self.name(), settings.design)
    }
}
