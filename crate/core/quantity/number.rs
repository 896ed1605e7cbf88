//! Numbers as people type and read them.
//!
//! A point is the decimal mark; groups of three may be set apart by a narrow space. `1,234` alone
//! is ambiguous (a thousand and more, or one and a bit), so it is refused, never guessed.

#![deny(clippy::disallowed_methods)]

use std::borrow::Cow;

/// Why a text is no number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum NumberFault {
    /// Nothing was written.
    Empty,
    /// A comma, which half of the readers take for a thousand and half for a decimal mark.
    Comma,
    /// Not finite, or beyond what an order can hold.
    TooLarge,
    /// Not a number at all.
    NotANumber,
}

/// The largest number taken from outside.
const LARGEST: f64 = 1e15;

/// Reads a finite number.
///
/// ```
/// use faceload_core::quantity::{read_number, NumberFault};
/// assert_eq!(read_number("1\u{202f}234.5"), Ok(1234.5));
/// assert_eq!(read_number("1,234"), Err(NumberFault::Comma));
/// assert_eq!(read_number("nan"), Err(NumberFault::NotANumber));
/// assert_eq!(read_number("1e999"), Err(NumberFault::TooLarge));
/// ```
pub fn read_number(text: &str) -> Result<f64, NumberFault> {
    let plain = text.trim();
    if !plain.is_empty() && plain.len() <= 15 && plain.bytes().all(|byte| byte.is_ascii_digit()) {
        // A short whole number is the usual case.
        return Ok(plain.bytes().fold(0.0, |number, digit| number * 10.0 + f64::from(digit - b'0')));
    }
    let digits = if plain.is_ascii() { Cow::Borrowed(plain) } else { Cow::Owned(in_ascii(plain)) };
    if digits.is_empty() {
        return Err(NumberFault::Empty);
    }
    if digits.contains(',') {
        return Err(NumberFault::Comma);
    }
    if !digits.chars().all(|c| c.is_ascii_digit() || matches!(c, '.' | '-' | '+' | 'e' | 'E')) {
        return Err(NumberFault::NotANumber);
    }
    match nearest(&digits) {
        Some(number) if number.abs() <= LARGEST => Ok(number),
        Some(_) => Err(NumberFault::TooLarge),
        None => Err(NumberFault::NotANumber),
    }
}

/// Without the narrow spaces that set groups apart, and with a hyphen for a minus.
fn in_ascii(text: &str) -> String {
    text.chars().filter(|c| !matches!(c, '\u{202f}' | '\u{2009}' | '\u{a0}')).map(|c| if c == '\u{2212}' { '-' } else { c }).collect()
}

/// The float nearest to a decimal number, infinite beyond the largest: what the standard library reads, by the reader
/// that JSON needs anyway, so that the page carries one table of powers and not two.
pub(crate) fn nearest(text: &str) -> Option<f64> {
    let (minus, plain) = match text.strip_prefix('-') {
        Some(rest) => ("-", rest),
        None => ("", text.strip_prefix('+').unwrap_or(text)),
    };
    let (digits, exponent) = plain.split_once(['e', 'E']).unwrap_or((plain, "0"));
    let (whole, part) = digits.split_once('.').unwrap_or((digits, ""));
    let all = |text: &str| text.bytes().all(|byte| byte.is_ascii_digit());
    let power = exponent.strip_prefix(['-', '+']).unwrap_or(exponent);
    if whole.len() + part.len() == 0 || power.is_empty() || ![whole, part, power].into_iter().all(all) {
        return None;
    }
    if let Some(size) = short(whole, part, exponent) {
        return Some(if minus.is_empty() { size } else { -size });
    }
    let (whole, part) = (whole.trim_start_matches('0'), part.trim_end_matches('0'));
    let or_zero = |text| if str::is_empty(text) { "0" } else { text };
    let json = format!("{minus}{}.{}e{exponent}", or_zero(whole), or_zero(part));
    // Its form is right, so all that can be wrong is its size.
    Some(serde_json::from_str(&json).unwrap_or(if minus.is_empty() { f64::INFINITY } else { f64::NEG_INFINITY }))
}

/// A number of at most 15 digits times at most 10^22, or by it: both are floats without an error, so that their product or
/// quotient is the nearest one (W. D. Clinger, PLDI 1990, 92). Nearly every number of a table is one.
fn short(whole: &str, part: &str, exponent: &str) -> Option<f64> {
    const DIGITS: usize = 15;
    const TENS: i32 = 22;
    if whole.len() + part.len() > DIGITS || exponent.len() > 3 {
        return None;
    }
    let digits = whole.bytes().chain(part.bytes()).fold(0.0, |number, digit| number * 10.0 + f64::from(digit - b'0'));
    let power = exponent.parse::<i32>().ok()? - part.len() as i32;
    let tens = (0..power.abs().min(TENS)).fold(1.0, |product, _| product * 10.0);
    (power.abs() <= TENS).then(|| if power < 0 { digits / tens } else { digits * tens })
}

/// Writes a number with so many significant digits, half to even, groups set apart by a narrow space.
///
/// ```
/// use faceload_core::quantity::write_number;
/// assert_eq!(write_number(0.0375, 3), "0.0375");
/// assert_eq!(write_number(1234.567, 3), "1\u{202f}230");
/// assert_eq!(write_number(0.0, 3), "0");
/// assert_eq!(write_number(-0.0, 3), "0");
/// ```
pub fn write_number(value: f64, digits: usize) -> String {
    if value == 0.0 {
        return "0".to_owned();
    }
    let digits = digits.max(1);
    let scientific = format!("{value:.*e}", digits - 1);
    let (_, exponent) = scientific.split_once('e').unwrap_or((&scientific, "0"));
    let exponent: i32 = exponent.parse().unwrap_or(0);
    let rounded: f64 = nearest(&scientific).unwrap_or(value);
    let decimals = (digits as i32 - 1 - exponent).max(0) as usize;
    group(&format!("{rounded:.decimals$}"))
}

/// Sets groups of three digits before the decimal point apart, from five digits or a thousand on.
pub fn group(plain: &str) -> String {
    let (sign, rest) = plain.strip_prefix('-').map_or(("", plain), |rest| ("\u{2212}", rest));
    let (whole, part) = rest.split_once('.').map_or((rest, None), |(whole, part)| (whole, Some(part)));
    let mut grouped = String::new();
    for (index, digit) in whole.chars().enumerate() {
        if index > 0 && (whole.len() - index).is_multiple_of(3) {
            grouped.push('\u{202f}');
        }
        grouped.push(digit);
    }
    match part {
        Some(part) => format!("{sign}{grouped}.{part}"),
        None => format!("{sign}{grouped}"),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounds_half_to_even_at_the_last_digit() {
        assert_eq!(write_number(2.5, 1), "2");
        assert_eq!(write_number(99.96, 3), "100");
        assert_eq!(write_number(0.99951, 3), "1.00");
    }

    #[test]
    fn reads_as_the_standard_library_does() {
        let odd = [
            "1",
            "+1",
            "-1",
            "007",
            "-0",
            ".5",
            "5.",
            "0.1",
            "1e5",
            "1E+5",
            "1e-5",
            "4.9e-324",
            "2.4e-324",
            "1.7976931348623157e308",
            "1e999",
            "-1e999",
            "1e-999",
            "0e999",
            "9007199254740993",
            "2.2250738585072011e-308",
            "0.30000000000000004",
            "123456789012345678901234567890",
        ];
        let none = ["", "-", "+", ".", "e5", "1e", "1e+", "1.2.3", "--1", "+-1", "1e5.0", " 1", "0x10", "1_0"];
        for text in odd.into_iter().chain(none) {
            assert_eq!(nearest(text).map(f64::to_bits), text.parse().ok().map(f64::to_bits), "{text}");
        }
        // Bits that look random, written to 17 digits and to fewer.
        let mut bits = 1_u64;
        for turn in 0..20_000 {
            bits = bits.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            let number = f64::from_bits(bits);
            if number.is_finite() {
                let text = format!("{number:.*e}", turn % 20);
                assert_eq!(nearest(&text).map(f64::to_bits), text.parse().ok().map(f64::to_bits), "{text}");
            }
            // As tables write them: few digits, small powers; to one digit and one power more than the short way takes.
            let (digits, power) = (bits % 10_u64.pow(1 + turn as u32 % 16), (bits >> 32) as i32 % 24);
            let text = format!("{}.{:02}e{power}", digits / 100, digits % 100);
            assert_eq!(nearest(&text).map(f64::to_bits), text.parse().ok().map(f64::to_bits), "{text}");
        }
    }

    #[test]
    fn refuses_what_is_not_finite() {
        for text in ["inf", "-inf", "NaN", "1e400", "", " ", "1.2.3", "12 in", "0x10", "1_000"] {
            assert!(read_number(text).is_err(), "{text}");
        }
    }
}
