//! How far a value may lie from its default, and where its 5 % and 95 % points are.
//!
//! - lognormal: the median is the default; low and high set the width of the 90 % range,
//!   sigma = ln(high/low)/3.2897, so its ends are default x sqrt(low/high) and default x sqrt(high/low);
//! - triangular: split, half of the probability on either side of the default;
//! - uniform; fixed.

/// The shape of an input's spread.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Spread {
    /// For positive values: ratios are what varies.
    Lognormal,
    /// For shares and ranges that begin at 0.
    Triangular,
    /// Every value between low and high alike.
    Uniform,
    /// No spread: a choice, a constant, a stated fact.
    Fixed,
}

impl Spread {
    /// Reads the word of the table.
    pub fn read(text: &str) -> Option<Self> {
        Some(match text {
            "lognormal" => Self::Lognormal,
            "triangular" => Self::Triangular,
            "uniform" => Self::Uniform,
            "fixed" => Self::Fixed,
            _ => return None,
        })
    }

    /// The word of the table.
    pub fn word(self) -> &'static str {
        match self {
            Self::Lognormal => "lognormal",
            Self::Triangular => "triangular",
            Self::Uniform => "uniform",
            Self::Fixed => "fixed",
        }
    }

    /// The 5 % and 95 % points.
    ///
    /// ```
    /// use faceload_core::factors::Spread;
    /// let (low, high) = Spread::Lognormal.ends(2.0, 1.0, 4.0);
    /// assert!((low - 1.0).abs() < 1e-12 && (high - 4.0).abs() < 1e-12);
    /// ```
    pub fn ends(self, default: f64, low: f64, high: f64) -> (f64, f64) {
        match self {
            Self::Lognormal => {
                let width = (high / low).sqrt();
                (default / width, default * width)
            }
            Self::Triangular => {
                // x(u) = d - (d - l)(1 - sqrt(2u)) below the default, mirrored above; u = 0.05.
                let tail = 0.1_f64.sqrt();
                (default - (default - low) * (1.0 - tail), default + (high - default) * (1.0 - tail))
            }
            Self::Uniform => (low + 0.05 * (high - low), high - 0.05 * (high - low)),
            Self::Fixed => (default, default),
        }
    }
}
