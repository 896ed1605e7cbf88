//! How a number stands in a product.

/// How a number x stands in a product.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Form {
    /// x to a whole power.
    Power(i8),
    /// 1/(1 + x): what is ink in a thinned mixture.
    PerOnePlus,
    /// 1/(1 - x): what must be made so that one remains.
    PerOneMinus,
}

impl Form {
    /// The form's value at x.
    pub fn at(self, x: f64) -> f64 {
        match self {
            Self::Power(power) => {
                let mut product = 1.0;
                for _ in 0..power.unsigned_abs() {
                    product *= x;
                }
                if power < 0 { 1.0 / product } else { product }
            }
            Self::PerOnePlus => 1.0 / (1.0 + x),
            Self::PerOneMinus => 1.0 / (1.0 - x),
        }
    }
}
