//! An input: one number of the model that somebody could question.

use super::{Grade, Spread};
use crate::quantity::UnitText;

/// Which alternatives share one value of an input.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Scope {
    /// One value for all alternatives.
    Shop,
    /// One value for all alternatives of a route.
    Route,
    /// A layout choice: fixed in a run, never varied.
    Choice,
}

impl Scope {
    pub(super) fn read(text: &str) -> Option<Self> {
        Some(match text {
            "shop" => Self::Shop,
            "route" => Self::Route,
            "choice" => Self::Choice,
            _ => return None,
        })
    }
}

/// Where the value comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Origin {
    /// `factors/practice.csv`.
    Practice,
    /// `factors/factors.csv`.
    Factor,
    /// Stated in the order.
    Order,
    /// Overridden by the order for one alternative.
    Override,
}

/// One number with its unit, spread, source and grade.
#[derive(Debug, Clone, PartialEq)]
pub struct Input {
    /// Its id, in dotted trade words.
    pub id: String,
    /// What it is.
    pub item: String,
    /// Its unit.
    pub unit: UnitText,
    /// The value in force, in its unit.
    pub value: f64,
    /// The median of its spread: the value, unless it was moved by hand.
    pub centre: f64,
    /// The low end of the range.
    pub low: f64,
    /// The high end of the range.
    pub high: f64,
    /// The shape of its spread.
    pub spread: Spread,
    /// Who shares it.
    pub scope: Scope,
    /// How good its evidence is.
    pub grade: Grade,
    /// The key of its source.
    pub source: String,
    /// The place in the source.
    pub place: String,
    /// Where the data are from, where it is said.
    pub region: String,
    /// The year of the data, where it is said.
    pub year: String,
    /// A note.
    pub note: String,
    /// Where the value comes from.
    pub origin: Origin,
}

impl Input {
    /// The ends of the range, in its unit, narrowed where they pass what is physically possible.
    pub fn bounds(&self) -> (f64, f64) {
        // A share stays a share.
        let most = if self.unit.text() == "1" && self.spread == Spread::Triangular { 1.0 } else { f64::MAX };
        (self.low.max(0.0), self.high.min(most))
    }

    /// The 5 % and 95 % points, in its unit.
    pub fn ends(&self) -> (f64, f64) {
        let (low, high) = self.bounds();
        self.spread.ends(self.centre, low, high)
    }
}
