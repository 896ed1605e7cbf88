//! A length in the other system of units, shown beside what was typed; what was typed stays.
//!
//! Lengths convert exactly (inch: 25.4 mm exactly, NIST Handbook 44, Appendix C) and print to a tenth of a millimetre or
//! a hundredth of an inch.

use faceload_core::quantity::{Span, group};

use crate::words::number;

/// A square foot in square metres, exactly.
const SQUARE_FOOT: f64 = 0.092_903_04;

/// A system of units.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Units {
    /// Millimetres and kilometres.
    Metric,
    /// Inches and miles.
    Customary,
}

impl Units {
    /// As the page writes it.
    pub const ALL: [(&'static str, Self); 2] = [("metric", Self::Metric), ("customary", Self::Customary)];

    /// Unit by size: name, nanometres, decimals.
    fn of(self, far: bool) -> (&'static str, i64, u32) {
        match (self, far) {
            (Self::Metric, false) => ("mm", 1_000_000, 1),
            (Self::Metric, true) => ("km", 1_000_000_000_000, 1),
            (Self::Customary, false) => ("in", 25_400_000, 2),
            (Self::Customary, true) => ("mi", 1_609_344_000_000, 1),
        }
    }
}

/// `30 in` or `24 x 30 in` in these units; nothing where it is in them already, or is no length.
///
/// ```
/// use faceload_report::other_units::{Units, length};
/// assert_eq!(length("24 x 30 in", Units::Metric).as_deref(), Some("609.6 x 762 mm"));
/// assert_eq!(length("600 mm", Units::Customary).as_deref(), Some("23.62 in"));
/// assert_eq!(length("600 mm", Units::Metric), None);
/// assert_eq!(length("large", Units::Metric), None);
/// ```
pub fn length(text: &str, units: Units) -> Option<String> {
    let parts: Vec<&str> = text.split(['x', 'X', '\u{d7}']).map(str::trim).collect();
    let unit: String = parts.last()?.chars().skip_while(|c| c.is_ascii_digit() || matches!(c, '.' | ' ')).collect();
    let is_metric = ["mm", "cm", "m", "km", "um"].contains(&unit.as_str());
    if parts.len() > 2 || is_metric == (units == Units::Metric) {
        return None;
    }
    let far = ["km", "mi"].contains(&unit.as_str());
    let (name, size, decimals) = units.of(far);
    let one = |part: &&str| {
        let whole = if part.ends_with(|c: char| c.is_ascii_digit()) { format!("{part} {unit}") } else { (*part).to_owned() };
        Span::read(&whole).ok().map(|span| written(span, size, decimals))
    };
    let numbers: Option<Vec<String>> = parts.iter().map(one).collect();
    Some(format!("{} {name}", numbers?.join(" x ")))
}

/// So many units, rounded half away from zero, without zeros at the end.
fn written(span: Span, size: i64, decimals: u32) -> String {
    let scale = 10_i128.pow(decimals);
    let (count, size) = (i128::from(span.count()) * scale, i128::from(size));
    let rounded = (count.abs() + size / 2) / size;
    let sign = if count < 0 { "\u{2212}" } else { "" };
    let whole = group(&(rounded / scale).to_string());
    let part = format!("{:0width$}", rounded % scale, width = decimals as usize);
    let part = part.trim_end_matches('0');
    if part.is_empty() { format!("{sign}{whole}") } else { format!("{sign}{whole}.{part}") }
}

/// An area of face in square feet.
pub fn square_feet(m2: f64) -> String {
    format!("{} ft2", number(m2 / SQUARE_FOOT))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_convert_exactly_and_print_short() {
        for (text, units, wanted) in [
            ("30 in", Units::Metric, "762 mm"),
            ("18 in", Units::Metric, "457.2 mm"),
            ("8 ft", Units::Metric, "2\u{202f}438.4 mm"),
            ("48 x 96 in", Units::Metric, "1\u{202f}219.2 x 2\u{202f}438.4 mm"),
            ("762 mm", Units::Customary, "30 in"),
            ("900 x 1200 mm", Units::Customary, "35.43 x 47.24 in"),
            ("60 km", Units::Customary, "37.3 mi"),
            ("100 mi", Units::Metric, "160.9 km"),
        ] {
            assert_eq!(length(text, units).as_deref(), Some(wanted), "{text}");
        }
        assert_eq!(square_feet(48.1), "518 ft2");
    }

    #[test]
    fn what_is_no_length_has_no_other_unit() {
        for text in ["", "30", "1,200 in", "a x b", "1 x 2 x 3 in", "30 stone", "<b>30 in</b>", "\u{202e}30 in"] {
            assert_eq!(length(text, Units::Metric), None, "{text}");
        }
    }
}
