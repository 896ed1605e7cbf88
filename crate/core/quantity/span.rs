//! Lengths of a layout: whole nanometres, so that 8 in goes three times into 24 in.
//!
//! 1/64 in is 396 875 nm exactly (inch: 25.4 mm exactly, NIST Handbook 44, Appendix C).
//! A `floor` on metres loses a lane: `(1.2_f64 / 0.4).floor()` is 2.

#![deny(clippy::disallowed_methods)]

use super::{NumberFault, read_number};

/// A length in whole nanometres.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Span(i64);

/// Why a text is no length.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum SpanFault {
    /// The number is at fault.
    Number(NumberFault),
    /// The unit is missing.
    NoUnit,
    /// The unit is none we know.
    Unit(String),
}

/// The units a length may be written in, in nanometres.
const UNITS: [(&str, i64); 12] = [
    ("mm", 1_000_000),
    ("cm", 10_000_000),
    ("m", 1_000_000_000),
    ("km", 1_000_000_000_000),
    ("um", 1_000),
    ("in", 25_400_000),
    ("\"", 25_400_000),
    ("[in_i]", 25_400_000),
    ("ft", 304_800_000),
    ("'", 304_800_000),
    ("yd", 914_400_000),
    ("mi", 1_609_344_000_000),
];

impl Span {
    /// No length.
    pub const ZERO: Self = Self(0);

    /// So many nanometres.
    pub const fn nanometres(count: i64) -> Self {
        Self(count)
    }

    /// The nearest whole nanometre.
    pub fn from_metres(metres: f64) -> Self {
        Self((metres * 1e9).round() as i64)
    }

    /// In metres.
    pub fn metres(self) -> f64 {
        self.0 as f64 / 1e9
    }

    /// In nanometres.
    pub const fn count(self) -> i64 {
        self.0
    }

    /// Reads `30 in`, `762mm`, `2.5 ft`.
    ///
    /// ```
    /// use faceload_core::quantity::Span;
    /// assert_eq!(Span::read("30 in").unwrap(), Span::read("762 mm").unwrap());
    /// assert_eq!(Span::read("24 in").unwrap() / Span::read("8 in").unwrap(), 3);
    /// ```
    pub fn read(text: &str) -> Result<Self, SpanFault> {
        let text = text.trim();
        let unit_at = text.find(|c: char| c.is_ascii_alphabetic() || matches!(c, '"' | '\'' | '[')).ok_or(SpanFault::NoUnit)?;
        let (number, unit) = text.split_at(unit_at);
        let unit = unit.trim();
        let (_, nanometres) = UNITS.iter().find(|(name, _)| *name == unit).ok_or_else(|| SpanFault::Unit(unit.to_owned()))?;
        let number = number.trim();
        let checked = read_number(number).map_err(SpanFault::Number)?;
        if checked.abs() * *nanometres as f64 > 1e17 {
            return Err(SpanFault::Number(NumberFault::TooLarge));
        }
        Ok(exact(number, *nanometres).unwrap_or(Self((checked * *nanometres as f64).round() as i64)))
    }
}

/// A plain decimal times a whole number, without a float in between; the nearest nanometre.
fn exact(number: &str, nanometres: i64) -> Option<Span> {
    let Some((whole, part)) = number.split_once('.') else {
        return number.parse::<i64>().ok()?.checked_mul(nanometres).map(Span);
    };
    let digits: i128 = format!("{whole}{part}").parse().ok()?;
    let scale = 10_i128.checked_pow(u32::try_from(part.len()).ok()?)?;
    let product = digits.checked_mul(i128::from(nanometres))?;
    let half = if product < 0 { -scale / 2 } else { scale / 2 };
    i64::try_from((product + half) / scale).ok().map(Span)
}

impl std::ops::Add for Span {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

impl std::ops::Sub for Span {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0.saturating_sub(other.0))
    }
}

impl std::ops::Mul<i64> for Span {
    type Output = Self;
    fn mul(self, times: i64) -> Self {
        Self(self.0.saturating_mul(times))
    }
}

/// How many times one goes into the other.
impl std::ops::Div for Span {
    type Output = i64;
    fn div(self, other: Self) -> i64 {
        if other.0 <= 0 { 0 } else { self.0.div_euclid(other.0) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_lane_is_not_lost() {
        assert_eq!((1.2_f64 / 0.4).floor(), 2.0, "what a float would say");
        assert_eq!(Span::read("24 in").unwrap() / Span::read("8 in").unwrap(), 3);
        assert_eq!(Span::read("1.2 m").unwrap() / Span::read("0.4 m").unwrap(), 3);
        assert_eq!(Span::read("0.015625 in").unwrap().count(), 396_875);
    }

    #[test]
    fn a_length_without_unit_is_refused() {
        assert_eq!(Span::read("30"), Err(SpanFault::NoUnit));
        assert_eq!(Span::read("30 furlong"), Err(SpanFault::Unit("furlong".to_owned())));
        assert_eq!(Span::read("3,0 in"), Err(SpanFault::Number(NumberFault::Comma)));
    }
}
